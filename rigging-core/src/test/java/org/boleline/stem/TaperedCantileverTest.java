package org.boleline.stem;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.boleline.Tolerances.BY_SLICES;
import static org.boleline.Tolerances.EXACT;
import static org.boleline.Tolerances.relative;
import static org.boleline.units.Amounts.gigapascals;
import static org.boleline.units.Amounts.metres;
import static org.boleline.units.Amounts.newtons;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.boleline.units.Kind;
import org.boleline.units.Si;
import org.junit.jupiter.api.Test;

class TaperedCantileverTest {
  private static final double LENGTH = 8;
  private static final double FORCE = 500;
  private static final double MODULUS = 9e9;

  private static TaperedCantilever of(double base, double tip) {
    return TaperedCantilever.of(
        metres(LENGTH), metres(base), metres(tip), gigapascals(9), newtons(FORCE));
  }

  /** Source: P L^3 / (3 E I) and P L^2 / (2 E I) of a uniform cantilever, in every text. */
  @Test
  void without_taper_it_is_the_uniform_cantilever() {
    TaperedCantilever beam = of(0.3, 0.3);
    double ei = MODULUS * Math.PI / 64 * Math.pow(0.3, 4);

    assertThat(Si.value(beam.tipDeflection(), Kind.LENGTH, ""))
        .isCloseTo(FORCE * Math.pow(LENGTH, 3) / (3 * ei), relative(EXACT));
    assertThat(Si.value(beam.tipSlope(), Kind.ANGLE, ""))
        .isCloseTo(FORCE * LENGTH * LENGTH / (2 * ei), relative(EXACT));
    assertThat(Si.value(beam.greatestStressFromTip(), Kind.LENGTH, "")).isEqualTo(LENGTH);
    assertThat(beam.greatestStress()).isEqualTo(beam.baseStress());
    assertThat(beam.greatestStressStep()).isEmpty();
  }

  /** Source: worked exercise with a base twice as thick as the tip: greatest at mid length. */
  @Test
  void a_base_twice_as_thick_puts_the_greatest_stress_at_mid_length() {
    assertThat(Si.value(of(0.4, 0.2).greatestStressFromTip(), Kind.LENGTH, ""))
        .isCloseTo(LENGTH / 2, relative(EXACT));
  }

  /** The beam equation, summed: deflection and slope from M / EI over thin slices. */
  @Property(tries = 50)
  void it_is_the_sum_of_moment_over_rigidity(
      @ForAll @DoubleRange(min = 0.1, max = 0.5) double tip,
      @ForAll @DoubleRange(min = 1, max = 4) double taper) {
    TaperedCantilever beam = of(tip * taper, tip);
    int slices = 20000;
    double deflection = 0;
    double slope = 0;
    double greatest = 0;
    for (int i = 0; i < slices; i++) {
      double a = LENGTH * (i + 0.5) / slices;
      double d = tip + (tip * taper - tip) * a / LENGTH;
      double turn = FORCE * a / (MODULUS * Math.PI / 64 * Math.pow(d, 4)) * LENGTH / slices;
      slope += turn;
      deflection += turn * a;
      greatest = Math.max(greatest, FORCE * a / (Math.PI / 32 * Math.pow(d, 3)));
    }

    assertThat(Si.value(beam.tipDeflection(), Kind.LENGTH, ""))
        .isCloseTo(deflection, relative(BY_SLICES));
    assertThat(Si.value(beam.tipSlope(), Kind.ANGLE, "")).isCloseTo(slope, relative(BY_SLICES));
    assertThat(Si.value(beam.greatestStress(), Kind.PRESSURE, ""))
        .isBetween(greatest * (1 - 1e-12), greatest * 1.001);
    beam.greatestStressStep()
        .ifPresent(
            step ->
                assertThat(step.result())
                    .isCloseTo(
                        Si.value(beam.greatestStress(), Kind.PRESSURE, ""), relative(EXACT)));
  }

  @Test
  void a_tip_thicker_than_the_base_is_refused() {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> of(0.2, 0.3))
        .withMessageContaining("tip: wants 0.001 m to 0.2 m, got 0.3 m");
  }
}
