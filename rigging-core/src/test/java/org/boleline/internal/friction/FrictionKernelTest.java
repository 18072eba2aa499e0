package org.boleline.internal.friction;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.boleline.Tolerances.CENTRAL_DIFFERENCE;
import static org.boleline.Tolerances.EXACT;
import static org.boleline.Tolerances.INTEGRATED;
import static org.boleline.Tolerances.ROUNDING;
import static org.boleline.Tolerances.absolute;
import static org.boleline.Tolerances.relative;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Scale;
import org.hipparchus.ode.ODEState;
import org.hipparchus.ode.OrdinaryDifferentialEquation;
import org.hipparchus.ode.nonstiff.DormandPrince853Integrator;
import org.hipparchus.util.FastMath;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class FrictionKernelTest {
  // Sheave

  @Property
  void a_sheave_balances_moments_about_its_pin(
      @ForAll @Scale(15) @DoubleRange(min = 0.05, max = 1) double e,
      @ForAll @Scale(15) @DoubleRange(min = 0.05, max = Math.PI) double w) {
    double t = FrictionKernel.sheave(e, w);
    double c = (1 - e) / (1 + e);
    // The two tensions as vectors: 1 along +x, t turned by pi - w from it.
    double x = 1 + t * Math.cos(Math.PI - w);
    double y = t * Math.sin(Math.PI - w);
    assertThat(t - 1).isCloseTo(c * Math.sqrt(x * x + y * y), absolute(EXACT * t));
  }

  @Property
  void a_sheave_satisfies_the_quadratic_of_its_definition(
      @ForAll @Scale(15) @DoubleRange(min = 0.05, max = 1) double e,
      @ForAll @Scale(15) @DoubleRange(min = 0, max = Math.PI) double w) {
    double t = FrictionKernel.sheave(e, w);
    double c = (1 - e) / (1 + e);
    double a = 1 - c * c;
    double b = 1 - c * c * Math.cos(w);
    assertThat(a * t * t - 2 * b * t + a).isCloseTo(0, absolute(ROUNDING * t * t));
  }

  @Property
  void a_sheave_agrees_with_the_area_function_of_a_reference_library(
      @ForAll @Scale(15) @DoubleRange(min = 1e-6, max = 1) double e,
      @ForAll @Scale(15) @DoubleRange(min = 0, max = Math.PI) double w) {
    // Hipparchus: the ratio is exp(2 asinh(h)).
    double h = (1 - e) / (2 * FastMath.sqrt(e)) * FastMath.sin(w / 2);
    assertThat(FrictionKernel.sheave(e, w))
        .isCloseTo(FastMath.exp(2 * FastMath.asinh(h)), relative(ROUNDING));
  }

  @Property
  void a_sheave_does_nothing_at_no_turn_and_all_it_can_at_a_half_turn(
      @ForAll @Scale(15) @DoubleRange(min = 1e-6, max = 1) double e) {
    assertThat(FrictionKernel.sheave(e, 0)).isEqualTo(1);
    assertThat(FrictionKernel.sheave(e, Math.PI)).isCloseTo(1 / e, relative(ROUNDING));
  }

  @Property
  void the_ratio_of_a_sheave_rises_with_the_turn_and_with_the_losses(
      @ForAll @Scale(15) @DoubleRange(min = 0.05, max = 0.999) double e,
      @ForAll @Scale(15) @DoubleRange(min = 0, max = 3.1) double w) {
    double t = FrictionKernel.sheave(e, w);
    assertThat(FrictionKernel.sheave(e, w + 0.01)).isGreaterThan(t);
    assertThat(FrictionKernel.sheave(e * 0.99, w + 0.01)).isGreaterThan(t);
  }

  @Test
  void a_sheave_without_losses_is_ideal_at_every_turn() {
    for (double w = 0; w < 4; w += 0.1) {
      assertThat(FrictionKernel.sheave(1, w)).isEqualTo(1);
    }
  }

  @ParameterizedTest
  @ValueSource(doubles = {1e-12, 1e-9, 1e-6})
  void a_sheave_keeps_its_digits_at_small_turns(double w) {
    // First order: t = 1 + k w with k = (1 - e) / (2 sqrt(e)); the next term is below rounding.
    double k = 0.1 / (2 * Math.sqrt(0.9));
    assertThat(FrictionKernel.sheave(0.9, w)).isCloseTo(1 + k * w, absolute(ROUNDING));
    assertThat(FrictionKernel.ratioSlope(FrictionKernel.SHEAVE, 0.9, w))
        .isCloseTo(k, absolute(ROUNDING + w));
  }

  // Slopes

  @Property
  void the_slope_of_each_law_is_its_central_difference(
      @ForAll @IntRange(min = 0, max = 2) int law,
      @ForAll @Scale(15) @DoubleRange(min = 0.05, max = 1) double parameter,
      @ForAll @Scale(15) @DoubleRange(min = 0.01, max = 3.1) double w) {
    double step = 1e-5 * w;
    double difference =
        (FrictionKernel.ratio(law, parameter, w + step)
                - FrictionKernel.ratio(law, parameter, w - step))
            / (2 * step);
    assertThat(FrictionKernel.ratioSlope(law, parameter, w))
        .isCloseTo(
            difference, absolute(CENTRAL_DIFFERENCE * FrictionKernel.ratio(law, parameter, w)));
  }

  @ParameterizedTest
  @ValueSource(doubles = {4, 6, 7, 9, 12})
  void the_slope_of_a_sheave_holds_beyond_a_half_turn_too(double w) {
    double step = 1e-5;
    double difference =
        (FrictionKernel.sheave(0.8, w + step) - FrictionKernel.sheave(0.8, w - step)) / (2 * step);
    assertThat(FrictionKernel.ratioSlope(FrictionKernel.SHEAVE, 0.8, w))
        .isCloseTo(difference, absolute(CENTRAL_DIFFERENCE));
  }

  @Property
  void a_round_contact_multiplies_over_turns_laid_one_after_another(
      @ForAll @Scale(15) @DoubleRange(min = 0, max = 1) double mu,
      @ForAll @Scale(15) @DoubleRange(min = 0, max = 12) double first,
      @ForAll @Scale(15) @DoubleRange(min = 0, max = 12) double second) {
    assertThat(FrictionKernel.capstan(mu, first) * FrictionKernel.capstan(mu, second))
        .isCloseTo(FrictionKernel.capstan(mu, first + second), relative(ROUNDING));
  }

  @Test
  void the_ideal_contact_has_the_ratio_one_and_no_slope() {
    assertThat(FrictionKernel.ratio(FrictionKernel.IDEAL, 0.3, 2)).isEqualTo(1);
    assertThat(FrictionKernel.ratioSlope(FrictionKernel.IDEAL, 0.3, 2)).isZero();
  }

  @Test
  void an_unknown_law_is_refused() {
    assertThatIllegalArgumentException().isThrownBy(() -> FrictionKernel.ratio(3, 0, 0));
    assertThatIllegalArgumentException().isThrownBy(() -> FrictionKernel.ratioSlope(-1, 0, 0));
  }

  // Friction that depends on the load

  @Property(tries = 200)
  void load_dependent_friction_solves_its_differential_equation(
      @ForAll @Scale(15) @DoubleRange(min = 10, max = 5000) double slack,
      @ForAll @Scale(15) @DoubleRange(min = 0.05, max = 0.5) double mu,
      @ForAll @Scale(15) @DoubleRange(min = 0.5, max = 1) double n,
      @ForAll @Scale(15) @DoubleRange(min = 0.01, max = 0.3) double r,
      @ForAll @Scale(15) @DoubleRange(min = 0.1, max = 7) double w) {
    double p = 20_000;
    // dT/ds = mu p (T / (r p))^n over the length ds = r dw: integrated by Hipparchus.
    OrdinaryDifferentialEquation law =
        new OrdinaryDifferentialEquation() {
          @Override
          public int getDimension() {
            return 1;
          }

          @Override
          public double[] computeDerivatives(double turn, double[] tension) {
            return new double[] {r * mu * p * FastMath.pow(tension[0] / (r * p), n)};
          }
        };
    double integrated =
        new DormandPrince853Integrator(1e-8, 1, 1e-12, 1e-12)
            .integrate(law, new ODEState(0, new double[] {slack}), w)
            .getPrimaryState()[0];
    assertThat(FrictionKernel.loadDependentTight(slack, mu, p, n, r, w))
        .isCloseTo(integrated, relative(INTEGRATED));
  }

  @Property
  void slack_from_tight_undoes_tight_from_slack(
      @ForAll @Scale(15) @DoubleRange(min = 10, max = 5000) double slack,
      @ForAll @Scale(15) @DoubleRange(min = 0, max = 0.5) double mu,
      @ForAll @Scale(15) @DoubleRange(min = 0.5, max = 1.05) double n,
      @ForAll @Scale(15) @DoubleRange(min = 0, max = 6) double w) {
    double tight = FrictionKernel.loadDependentTight(slack, mu, 20_000, n, 0.03, w);
    assertThat(FrictionKernel.loadDependentSlack(tight, mu, 20_000, n, 0.03, w))
        .isCloseTo(slack, relative(EXACT));
  }

  @ParameterizedTest
  @ValueSource(doubles = {-1e-2, -1e-6, -1e-10, -1e-14, 0, 1e-14, 1e-10, 1e-6, 1e-2})
  void load_dependent_friction_runs_into_the_round_contact_at_exponent_one(double off) {
    // Around n = 1 the tension moves by about mu w |ln(T / (r p))| + (mu w)^2 / 2 times 1 - n,
    // relative: 2.4 here. What is more would be lost digits.
    double n = 1 + off;
    double ratio = FrictionKernel.capstan(0.2, Math.PI);
    double bound = 3 * Math.abs(off) + ROUNDING;
    assertThat(FrictionKernel.loadDependentTight(1000, 0.2, 1000, n, 0.03, Math.PI))
        .isCloseTo(1000 * ratio, relative(bound));
    assertThat(FrictionKernel.loadDependentSlack(1000, 0.2, 1000, n, 0.03, Math.PI))
        .isCloseTo(1000 / ratio, relative(bound));
  }

  @Test
  void below_exponent_one_friction_alone_may_hold_the_tight_side() {
    // n = 0: a constant friction force for each length, here 0.2 x 1000 N/m over 0.1 m x pi.
    double held = 0.2 * 1000 * 0.1 * Math.PI;
    assertThat(FrictionKernel.loadDependentSlack(held * 0.99, 0.2, 1000, 0, 0.1, Math.PI)).isZero();
    assertThat(FrictionKernel.loadDependentSlack(held + 5, 0.2, 1000, 0, 0.1, Math.PI))
        .isCloseTo(5, relative(EXACT));
    assertThat(FrictionKernel.loadDependentTight(0, 0.2, 1000, 0, 0.1, Math.PI))
        .isCloseTo(held, relative(ROUNDING));
    assertThat(FrictionKernel.loadDependentTight(0, 0.2, 1000, 1, 0.1, Math.PI)).isZero();
    assertThat(FrictionKernel.loadDependentSlack(0, 0.2, 1000, 0.8, 0.1, Math.PI)).isZero();
  }

  @Property
  void the_local_friction_is_the_slope_of_the_tension(
      @ForAll @Scale(15) @DoubleRange(min = 10, max = 5000) double tension,
      @ForAll @Scale(15) @DoubleRange(min = 0.5, max = 1) double n) {
    double w = 1e-5;
    double tight = FrictionKernel.loadDependentTight(tension, 0.2, 20_000, n, 0.03, w);
    double local = FrictionKernel.loadDependentFriction(tension, 0.2, 20_000, n, 0.03);
    // ln(T_tight / T_slack) / w tends to the local friction; first order in w.
    assertThat(Math.log(tight / tension) / w).isCloseTo(local, relative(w));
  }
}
