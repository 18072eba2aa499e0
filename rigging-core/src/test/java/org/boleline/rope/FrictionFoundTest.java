package org.boleline.rope;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.boleline.Tolerances.EXACT;
import static org.boleline.Tolerances.ROUNDING;
import static org.boleline.Tolerances.absolute;
import static org.boleline.Tolerances.relative;
import static org.boleline.units.Amounts.newtons;
import static org.boleline.units.Amounts.radians;

import javax.measure.Quantity;
import javax.measure.quantity.Force;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import org.boleline.geometry.Turn;
import org.boleline.units.Kind;
import org.boleline.units.Si;
import org.junit.jupiter.api.Test;

class FrictionFoundTest {
  @Property
  void friction_and_load_that_made_a_pair_are_found_again(
      @ForAll @Scale(15) @DoubleRange(min = 0, max = 0.6) double friction,
      @ForAll @Scale(15) @DoubleRange(min = 0.1, max = 12) double turn,
      @ForAll @Scale(9) @DoubleRange(min = 10, max = 1e4) double load) {
    Turn w = Turn.of(radians(turn));
    HoldRange pair = HoldRange.of(newtons(load)).past(new FrictionRing(friction), w);
    FrictionFound found = FrictionFound.from(pair.most(), pair.least(), w);
    assertThat(found.friction()).isCloseTo(friction, absolute(EXACT));
    assertThat(n(found.load())).isCloseTo(load, relative(ROUNDING));
    assertThat(found.steps().get(0).result()).isEqualTo(found.friction());
    assertThat(found.steps().get(1).result()).isEqualTo(n(found.load()));
  }

  @Test
  void equal_tensions_mean_no_friction() {
    FrictionFound none = FrictionFound.from(newtons(500), newtons(500), Turn.HALF);
    assertThat(none.friction()).isZero();
    assertThat(n(none.load())).isCloseTo(500, relative(ROUNDING));
  }

  @Test
  void a_pair_that_means_nothing_is_refused() {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> FrictionFound.from(newtons(300), newtons(500), Turn.HALF))
        .withMessageContaining("raising: wants at least the lowering tension");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> FrictionFound.from(newtons(300), newtons(0), Turn.HALF))
        .withMessageContaining("lowering");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> FrictionFound.from(newtons(300), newtons(200), Turn.NONE))
        .withMessageContaining("turn");
  }

  @Test
  void equality_is_exact() {
    FrictionFound found = FrictionFound.from(newtons(880), newtons(350), Turn.HALF);
    assertThat(found)
        .isEqualTo(FrictionFound.from(newtons(880), newtons(350), Turn.HALF))
        .hasSameHashCodeAs(FrictionFound.from(newtons(880), newtons(350), Turn.HALF))
        .isNotEqualTo(FrictionFound.from(newtons(881), newtons(350), Turn.HALF));
    assertThat(found.toString()).contains("FRI-14").contains("FRI-15");
  }

  private static double n(Quantity<Force> force) {
    return Si.value(force, Kind.FORCE, "force");
  }
}
