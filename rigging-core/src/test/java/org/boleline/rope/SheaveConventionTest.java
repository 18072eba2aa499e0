package org.boleline.rope;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.boleline.Tolerances.ROUNDING;
import static org.boleline.Tolerances.ROUNDING_ABSOLUTE;
import static org.boleline.Tolerances.absolute;
import static org.boleline.Tolerances.printedTo;
import static org.boleline.Tolerances.relative;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class SheaveConventionTest {
  @Property
  void every_convention_gives_back_the_sheave_it_describes(
      @ForAll SheaveConvention convention,
      @ForAll @Scale(15) @DoubleRange(min = 0.3, max = 1) double efficiency) {
    double figure = convention.publishedFactor(new Sheave(efficiency));
    assertThat(convention.sheave(figure).efficiency()).isCloseTo(efficiency, relative(ROUNDING));
  }

  /**
   * The same sheave in two published conventions: factor 1.09 and 1.04 in the Wire Rope Users
   * Manual, 4th ed., p. 88; efficiency 0.917 and 0.962 in the Pipeline Rules of Thumb Handbook, p.
   * 6.
   */
  @ParameterizedTest
  @CsvSource({"1.09, 0.917", "1.04, 0.962"})
  void two_handbooks_mean_the_same_sheave(double factor, double efficiency) {
    Sheave sheave = SheaveConvention.FRICTION_FACTOR.sheave(factor);
    assertThat(sheave.efficiency()).isCloseTo(efficiency, printedTo(0.001));
    assertThat(SheaveConvention.FRICTION_PERCENT.publishedFactor(sheave))
        .isCloseTo(100 * (factor - 1), absolute(100 * ROUNDING_ABSOLUTE));
  }

  @Test
  void two_percent_and_an_efficiency_of_two_percent_less_are_nearly_but_not_the_same() {
    // 0.98 for each sheave: wire rope maker's technical note; K = 1.02: rigging handbooks.
    Sheave byPercent = SheaveConvention.FRICTION_PERCENT.sheave(2);
    Sheave byEfficiency = SheaveConvention.EFFICIENCY.sheave(0.98);
    assertThat(byPercent.efficiency()).isGreaterThan(byEfficiency.efficiency());
    assertThat(byPercent.efficiency()).isCloseTo(byEfficiency.efficiency(), printedTo(0.001));
  }

  @ParameterizedTest
  @ValueSource(doubles = {0.99, -1, Double.NaN, Double.POSITIVE_INFINITY})
  void a_factor_below_one_is_refused_with_the_convention(double figure) {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> SheaveConvention.FRICTION_FACTOR.sheave(figure))
        .withMessageContaining("FRICTION_FACTOR");
  }

  @Test
  void figures_outside_their_convention_are_refused() {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> SheaveConvention.EFFICIENCY.sheave(1.045));
    assertThatIllegalArgumentException()
        .isThrownBy(() -> SheaveConvention.FRICTION_PERCENT.sheave(-1))
        .withMessageContaining("FRICTION_PERCENT");
    assertThatIllegalArgumentException()
        .isThrownBy(
            () -> SheaveConvention.FRICTION_FACTOR.publishedFactor(new Sheave(Double.MIN_VALUE)));
  }
}
