package org.boleline.rope;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.boleline.Tolerances.EXACT;
import static org.boleline.Tolerances.ROUNDING;
import static org.boleline.Tolerances.relative;
import static org.boleline.units.Amounts.millimetres;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import org.boleline.geometry.Turn;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SheaveGeometryTest {
  /**
   * Tread and axle radius in mm of three arborist blocks: Donzelli, Journal of Arboriculture 25(2),
   * 1999, table 1. The ratio is worked here by hand from the balance about the pin, tight (R - f) =
   * slack (R + f) with R the radius of the rope's centre line and f that of the friction circle,
   * for a rope of 6.35 mm radius and friction 0.1 (both taken here).
   */
  @ParameterizedTest
  @CsvSource({"27.559, 9.525", "52.324, 9.525", "29.21, 9.3898"})
  void blocks_of_known_size_balance_about_their_pin(double tread, double axle) {
    SheaveGeometry block =
        SheaveGeometry.of(millimetres(tread), millimetres(axle), millimetres(6.35), 0.1);
    double centreLine = tread + 6.35;
    double frictionCircle = axle * 0.1 / Math.sqrt(1 + 0.1 * 0.1);
    double byHand = (centreLine + frictionCircle) / (centreLine - frictionCircle);
    assertThat(block.sheave().tensionRatio(Turn.HALF)).isCloseTo(byHand, relative(EXACT));
    assertThat(block.efficiency()).isCloseTo(1 / byHand, relative(ROUNDING));
    assertThat(block.steps().get(1).result()).isEqualTo(block.efficiency());
  }

  @Property
  void a_larger_sheave_a_thinner_axle_or_a_better_bearing_loses_less(
      @ForAll @Scale(9) @DoubleRange(min = 20, max = 60) double tread,
      @ForAll @Scale(9) @DoubleRange(min = 4, max = 15) double axle,
      @ForAll @Scale(9) @DoubleRange(min = 0.04, max = 0.3) double friction) {
    double efficiency = of(tread, axle, friction);
    assertThat(of(tread * 1.1, axle, friction)).isGreaterThan(efficiency);
    assertThat(of(tread, axle * 0.9, friction)).isGreaterThan(efficiency);
    assertThat(of(tread, axle, friction * 0.9)).isGreaterThan(efficiency);
    assertThat(of(tread, axle, 0)).isEqualTo(1);
  }

  private static double of(double tread, double axle, double friction) {
    return SheaveGeometry.of(millimetres(tread), millimetres(axle), millimetres(6), friction)
        .efficiency();
  }

  @Test
  void radii_that_mean_nothing_are_refused() {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> SheaveGeometry.of(millimetres(20), millimetres(30), millimetres(6), 0.1))
        .withMessageContaining("axle radius: wants less than tread and rope radius");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> SheaveGeometry.of(millimetres(0), millimetres(3), millimetres(6), 0.1))
        .withMessageContaining("tread radius");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> SheaveGeometry.of(millimetres(20), millimetres(3), millimetres(-1), 0.1))
        .withMessageContaining("rope radius");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> SheaveGeometry.of(millimetres(20), millimetres(3), millimetres(6), -0.1))
        .withMessageContaining("friction");
  }

  @Test
  void equality_is_exact() {
    SheaveGeometry block = SheaveGeometry.of(millimetres(27), millimetres(9), millimetres(6), 0.1);
    SheaveGeometry same = SheaveGeometry.of(millimetres(27), millimetres(9), millimetres(6), 0.1);
    assertThat(block).isEqualTo(same).hasSameHashCodeAs(same);
    assertThat(block)
        .isNotEqualTo(SheaveGeometry.of(millimetres(27), millimetres(9), millimetres(6), 0.11));
    assertThat(block.toString()).contains("SHV-1").contains("SHV-2");
  }
}
