package org.boleline.limits;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.boleline.Tolerances.EXACT;
import static org.boleline.Tolerances.ROUNDING;
import static org.boleline.Tolerances.relative;
import static org.boleline.units.Amounts.metres;
import static org.boleline.units.Amounts.newtonMetres;
import static org.boleline.units.Amounts.newtons;
import static org.boleline.units.Amounts.pascals;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.boleline.units.Kind;
import org.boleline.units.Si;
import org.junit.jupiter.api.Test;

/** The least diameter against closed forms, and put back into the stress. */
class LeastDiameterTest {
  private static double solid(double moment, double pressing, double stress) {
    return Si.value(
        LeastDiameter.solid(newtonMetres(moment), newtons(pressing), pascals(stress)),
        Kind.LENGTH,
        "diameter");
  }

  private static double hollow(double moment, double pressing, double stress, double cavity) {
    return Si.value(
        LeastDiameter.hollow(
            newtonMetres(moment), newtons(pressing), pascals(stress), metres(cavity)),
        Kind.LENGTH,
        "diameter");
  }

  /** Strength of materials: s = 32 M / (pi D^3). */
  @Test
  void in_bending_alone_it_is_the_cube_root() {
    assertThat(solid(20e3, 0, 16e6))
        .isCloseTo(Math.cbrt(32 * 20e3 / (Math.PI * 16e6)), relative(ROUNDING));
  }

  /** Strength of materials: s = 4 P / (pi D^2). */
  @Test
  void in_compression_alone_it_is_the_square_root() {
    assertThat(solid(0, 50e3, 16e6))
        .isCloseTo(Math.sqrt(4 * 50e3 / (Math.PI * 16e6)), relative(ROUNDING));
  }

  /** Wall of a tube under compression: D^2 = d^2 + 4 P / (pi s). */
  @Test
  void about_a_cavity_in_compression_alone_it_is_the_area() {
    assertThat(hollow(0, 50e3, 16e6, 0.2))
        .isCloseTo(Math.sqrt(0.04 + 4 * 50e3 / (Math.PI * 16e6)), relative(EXACT));
  }

  @Test
  void without_load_nothing_is_needed() {
    assertThat(solid(0, 0, 16e6)).isZero();
    assertThat(hollow(0, 0, 16e6, 0.2)).isEqualTo(0.2);
  }

  @Property(tries = 300)
  void at_that_diameter_the_stress_is_the_one_to_keep_to(
      @ForAll @DoubleRange(min = 1, max = 1e6) double moment,
      @ForAll @DoubleRange(min = 0, max = 1e6) double pressing,
      @ForAll @DoubleRange(min = 1e5, max = 1e8) double stress,
      @ForAll @DoubleRange(min = 0.01, max = 2) double cavity) {
    double solid = solid(moment, pressing, stress);
    double hollow = hollow(moment, pressing, stress, cavity);

    assertThat(LimitFormulas.PRESSED.value(-pressing, moment, solid, 0))
        .isCloseTo(stress, relative(EXACT));
    // a thin shell: the stress goes by D - d, which has lost digits
    double lost = Math.max(1, hollow / (hollow - cavity));
    assertThat(LimitFormulas.PRESSED.value(-pressing, moment, hollow, cavity))
        .isCloseTo(stress, relative(EXACT * lost));
    assertThat(hollow).isGreaterThanOrEqualTo(solid * (1 - ROUNDING)).isGreaterThan(cavity);
  }

  @Property(tries = 200)
  void more_load_needs_more_and_more_strength_less(
      @ForAll @DoubleRange(min = 1, max = 1e5) double moment,
      @ForAll @DoubleRange(min = 0, max = 1e5) double pressing,
      @ForAll @DoubleRange(min = 1e6, max = 1e8) double stress,
      @ForAll @DoubleRange(min = 0, max = 0.5) double cavity) {
    double found = hollow(moment, pressing, stress, cavity);

    assertThat(hollow(1.1 * moment, pressing, stress, cavity)).isGreaterThan(found);
    assertThat(hollow(moment, pressing + 1e4, stress, cavity)).isGreaterThan(found);
    assertThat(hollow(moment, pressing, 1.1 * stress, cavity)).isLessThan(found);
  }

  @Test
  void refuses_a_stress_of_nothing_and_forces_below_zero() {
    assertThatIllegalArgumentException().isThrownBy(() -> solid(1, 1, 0));
    assertThatIllegalArgumentException().isThrownBy(() -> solid(1, -1, 1));
    assertThatIllegalArgumentException().isThrownBy(() -> hollow(-1, 1, 1, 0));
  }
}
