package org.boleline.drop;

import static org.assertj.core.api.Assertions.assertThat;
import static org.boleline.Tolerances.SOLVED_CASE;
import static org.boleline.Tolerances.relative;
import static org.boleline.drop.CatchNumbers.j;
import static org.boleline.drop.CatchNumbers.m;
import static org.boleline.drop.CatchNumbers.n;
import static org.boleline.units.Amounts.kilograms;
import static org.boleline.units.Amounts.kilonewtons;
import static org.boleline.units.Amounts.metres;
import static org.boleline.units.Amounts.newtons;

import java.util.List;
import java.util.stream.Stream;
import org.boleline.explain.Source;
import org.boleline.geometry.Turn;
import org.boleline.rope.StretchPoint;
import org.hipparchus.ode.ODEState;
import org.hipparchus.ode.ODEStateAndDerivative;
import org.hipparchus.ode.OrdinaryDifferentialEquation;
import org.hipparchus.ode.nonstiff.DormandPrince853Integrator;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * The energy balance against the equation of motion, integrated step by step (Dormand-Prince 8(5,3)
 * of another library).
 *
 * <p>Newton's law for the piece; every leg has its own strain; the strains grow so that the
 * tensions keep their ratios and the legs together follow the piece. No energy is used, and the
 * stretch curve only as tension at a strain.
 */
class CatchStepByStepTest {
  private static final double G = 9.80665;

  /** Longest step in seconds: the third derivative of a table jumps at its points. */
  private static final double LONGEST_STEP = 2e-4;

  private static final int LOOKS = 10;

  private record Case(
      String name,
      StretchCurve curve,
      double mass,
      double fall,
      double[] lengths,
      double[] ratios) {
    @Override
    public String toString() {
      return name;
    }
  }

  static Stream<Case> cases() {
    StretchCurve linear = LinearStretch.of(kilonewtons(250));
    StretchCurve table =
        TabulatedStretch.of(
            List.of(
                StretchPoint.of(newtons(4000), 0.03),
                StretchPoint.of(newtons(11000), 0.05),
                StretchPoint.of(newtons(40000), 0.1)));
    StretchCurve softening =
        TabulatedStretch.of(
            List.of(
                StretchPoint.of(newtons(5000), 0.011),
                StretchPoint.of(newtons(10000), 0.017),
                StretchPoint.of(newtons(15000), 0.027)));
    double[] three = {2, 13, 4};
    double[] ratios = {1.6, 1.2};
    return Stream.of(
        new Case("linear, one leg", linear, 200, 2, new double[] {10}, new double[0]),
        new Case("linear, three legs", linear, 200, 2, three, ratios),
        new Case("table, one leg", table, 120, 3, new double[] {8}, new double[0]),
        new Case("table, three legs", table, 200, 2, three, ratios),
        new Case("table, three legs, without fall", table, 200, 0, three, ratios),
        new Case("softening table, three legs, left", softening, 260, 3, three, ratios));
  }

  /** State: strain of each leg, speed, travel, heat at each point. */
  private record Motion(Case given) implements OrdinaryDifferentialEquation {
    @Override
    public int getDimension() {
      return given.lengths().length + 2 + given.ratios().length;
    }

    @Override
    public double[] computeDerivatives(double time, double[] y) {
      int legs = given.lengths().length;
      double speed = y[legs];
      double[] slopes = new double[legs];
      double[] tensions = new double[legs];
      double product = 1;
      double give = 0;
      for (int i = 0; i < legs; i++) {
        if (i > 0) {
          product *= given.ratios()[i - 1];
        }
        double strain = Math.max(0, y[i]);
        tensions[i] = n(given.curve().tension(strain));
        slopes[i] = product * slope(given.curve(), strain);
        give += given.lengths()[i] / slopes[i];
      }
      double rate = speed / give;
      double[] change = new double[y.length];
      double passed = 0;
      for (int i = legs - 1; i >= 0; i--) {
        change[i] = rate / slopes[i];
        if (i < legs - 1) {
          change[legs + 2 + i] = (tensions[i] - tensions[i + 1]) * passed;
        }
        passed += given.lengths()[i] * change[i];
      }
      change[legs] = G - tensions[0] / given.mass();
      change[legs + 1] = speed;
      return change;
    }
  }

  /** Slope of the curve by a difference over a millionth of strain, ahead at the start. */
  private static double slope(StretchCurve curve, double strain) {
    double half = 1e-6;
    if (strain < half) {
      // Three points ahead: exact for parabolas.
      double a = n(curve.tension(strain));
      double b = n(curve.tension(strain + half));
      double c = n(curve.tension(strain + 2 * half));
      return (4 * b - 3 * a - c) / (2 * half);
    }
    return (n(curve.tension(strain + half)) - n(curve.tension(strain - half))) / (2 * half);
  }

  @ParameterizedTest
  @MethodSource("cases")
  void the_greatest_tension_is_that_of_the_motion(Case given) {
    CatchPath path = CatchPath.of(metres(given.lengths()[0]));
    for (int i = 0; i < given.ratios().length; i++) {
      path =
          path.over(
              CatchPoint.ofRatio(given.ratios()[i], Turn.HALF), metres(given.lengths()[i + 1]));
    }
    Caught caught =
        RopeCatch.of(
                kilograms(given.mass()),
                metres(given.fall()),
                RopeStretch.forDrop(given.curve(), Source.PLAN),
                path)
            .locked();

    int legs = given.lengths().length;
    double[] start = new double[new Motion(given).getDimension()];
    start[legs] = Math.sqrt(2 * G * given.fall());
    double[] best = new double[start.length];
    DormandPrince853Integrator integrator =
        new DormandPrince853Integrator(1e-12, LONGEST_STEP, 1e-12, 1e-11);
    integrator.addStepHandler(
        interpolator -> {
          double from = interpolator.getPreviousState().getTime();
          double to = interpolator.getCurrentState().getTime();
          for (int look = 1; look <= LOOKS; look++) {
            ODEStateAndDerivative state =
                interpolator.getInterpolatedState(from + (to - from) * look / LOOKS);
            double[] y = state.getPrimaryState();
            if (y[legs + 1] > best[legs + 1]) {
              System.arraycopy(y, 0, best, 0, y.length);
            }
          }
        });
    // Half a second holds the first rise of every case, and part of the way back up.
    integrator.integrate(new Motion(given), new ODEState(0, start), 0.5);

    assertThat(best[legs]).as("the piece has turned").isLessThan(0.02);
    assertThat(n(caught.peak()))
        .isCloseTo(n(given.curve().tension(best[0])), relative(SOLVED_CASE));
    assertThat(m(caught.stretch())).isCloseTo(best[legs + 1], relative(SOLVED_CASE));
    for (int i = 0; i < given.ratios().length; i++) {
      assertThat(j(caught.energy().heatAtPoints().get(i)))
          .isCloseTo(best[legs + 2 + i], relative(SOLVED_CASE));
    }
  }
}
