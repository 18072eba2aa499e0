package org.boleline.drop;

import static org.assertj.core.api.Assertions.assertThat;
import static org.boleline.Tolerances.absolute;

import java.util.Arrays;
import java.util.List;
import java.util.concurrent.CancellationException;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.boleline.Tolerances;
import org.boleline.drop.ReferenceMotion.Given;
import org.boleline.internal.motion.CatchMotion;
import org.boleline.internal.motion.MotionRecord;
import org.boleline.internal.motion.MotionSpec;
import org.junit.jupiter.api.Assertions;
import org.junit.jupiter.api.Test;

/** The motion from event to event against small equal steps, which share no idea with it. */
class CatchMotionTest {
  private static final double EVERY = 1e-3;

  /**
   * The small steps notice that the rope is taut a step of 2e-5 s late, at up to 15 m/s; metres.
   */
  private static final double STEP_LATE = 3e-4;

  @Provide
  Arbitrary<Given> catches() {
    return RandomMotions.catches();
  }

  @Property(tries = 60)
  void it_agrees_with_small_equal_steps(@ForAll("catches") Given given) {
    double duration = 0.8;
    ReferenceMotion steps = new ReferenceMotion(given, 2e-5, duration, 50);
    MotionRecord record = CatchMotion.follow(spec(given), List.of(), duration, EVERY, () -> false);

    assertThat(record.ending()).isNotEqualTo(MotionRecord.Ending.GAVE_UP);
    assertThat(record.residualShare()).isLessThan(Tolerances.ENERGY_ACCOUNT);
    double greatest = steps.greatestTension[0];
    // A hand's delay runs from a step that may be late: an error of first order in the step.
    double late = given.device == ReferenceMotion.Device.BY_HAND ? 10 : 2;
    double near =
        late * Tolerances.STEPS_OF_RANDOM_CATCHES * (greatest + given.mass * given.gravity);
    for (int i = 0; i <= given.points.length; i++) {
      assertThat(record.peaks()[i]).isCloseTo(steps.greatestTension[i], absolute(near));
      assertThat(record.peaks()[given.points.length + 1 + i])
          .isCloseTo(steps.greatestForce[i], absolute(2 * near));
    }
    for (MotionRecord.Sample sample : record.samples()) {
      ReferenceMotion.Moment moment = steps.moments.get((int) Math.round(sample.time() / EVERY));
      assertThat(moment.time()).isCloseTo(sample.time(), absolute(1e-9));
      for (int i = 0; i <= given.points.length; i++) {
        assertThat(sample.tension()[i])
            .as("leg %d at %s", i, moment.time())
            .isCloseTo(moment.tensions()[i], absolute(10 * near));
      }
      assertThat(sample.position())
          .usingComparatorWithPrecision(STEP_LATE)
          .containsExactly(moment.centre());
      assertThat(sample.run()).isCloseTo(moment.fed(), absolute(STEP_LATE));
    }
    double[] heat = Arrays.copyOf(record.heats(), given.points.length);
    for (int j = 0; j < heat.length; j++) {
      assertThat(heat[j]).isCloseTo(steps.energies().points()[j], absolute(1e-3 * record.given()));
    }
  }

  @Property(tries = 60)
  void the_account_closes_over_many_bounces(@ForAll("catches") Given given) {
    MotionRecord record = CatchMotion.follow(spec(given), List.of(), 5, 0, () -> false);
    assertThat(record.ending()).isNotEqualTo(MotionRecord.Ending.GAVE_UP);
    assertThat(record.residualShare()).isLessThan(Tolerances.ENERGY_ACCOUNT);
  }

  @Test
  void a_point_slips_to_the_side_whose_ratio_is_reached_while_both_tensions_fall() {
    List<Double> numbers =
        List.of(
            0.03, 0.45, 0.47, 0.07, 0.67, 0.78, 0.26, 0.05, 0.08, 0.18, 0.22, 0.12, 0.28, 0.05, 0.0,
            0.01, 0.34, 0.01, 0.08, 0.0, 0.31, 0.01, 0.16, 0.21, 0.0, 0.14, 1.0, 0.22, 0.04, 0.75,
            0.04, 0.28, 0.11, 0.0, 0.27, 0.24, 0.06, 0.07, 0.27, 0.45, 0.94, 0.01, 0.0, 0.28, 0.3,
            0.01, 1.0, 0.23, 0.0, 0.77, 0.12, 0.15, 0.06, 0.0, 0.05, 0.29, 0.02, 0.76, 1.0, 0.06);
    Given given =
        RandomMotions.given(
            new RandomMotions.Choice(
                4, false, 3, ReferenceMotion.Device.LOCKED, 1, false, true, numbers));
    MotionRecord record = CatchMotion.follow(spec(given), List.of(), 5, 0, () -> false);

    // it jumped from slipping one way to slipping the other: 4e-4 of the energy was lost
    assertThat(record.residualShare()).isLessThan(Tolerances.ENERGY_ACCOUNT);
  }

  @Test
  void a_rope_that_goes_slack_with_none_to_spare_comes_taut_after_it_was_slackest() {
    List<Double> numbers =
        List.of(
            0.01, 0.72, 0.0, 0.04, 0.0, 0.06, 0.9, 0.0, 0.0, 0.08, 0.0, 0.23, 0.57, 0.72, 0.85, 0.0,
            0.07, 0.76, 0.12, 0.11, 0.02, 0.07, 0.21, 0.2, 1.0, 0.38, 0.0, 0.46, 0.09, 0.25, 0.08,
            0.33, 0.77, 0.08, 0.21, 0.24, 0.88, 0.22, 0.09, 0.38, 0.08, 0.16, 0.39, 1.0, 0.02, 0.71,
            0.05, 0.08, 0.52, 0.28, 0.15, 0.08, 0.23, 0.09, 0.31, 0.17, 0.03, 0.03, 0.0, 0.09);
    Given given =
        RandomMotions.given(
            new RandomMotions.Choice(
                5, true, 1, ReferenceMotion.Device.LOCKED, 1, true, true, numbers));
    MotionRecord record = CatchMotion.follow(spec(given), List.of(), 5, 0, () -> false);

    // it came taut at the moment at which it went slack, over and over, until the steps ran out
    assertThat(record.ending()).isEqualTo(MotionRecord.Ending.HELD);
    assertThat(record.residualShare()).isLessThan(Tolerances.ENERGY_ACCOUNT);
  }

  @Test
  void where_rates_bend_sharply_finer_steps_close_the_account() {
    List<Double> numbers =
        List.of(
            0.38, 0.16, 0.89, 0.06, 0.37, 0.51, 0.88, 0.26, 0.29, 0.5, 0.44, 0.39, 0.65, 0.0, 0.91,
            0.45, 0.65, 0.91, 0.44, 0.66, 0.62, 0.07, 0.27, 0.47, 0.63, 0.93, 0.38, 0.37, 0.35,
            0.64, 0.22, 0.0, 0.06, 0.18, 0.38, 0.04, 0.57, 0.73, 0.78, 0.22, 0.56, 0.2, 0.38, 0.87,
            0.67, 0.09, 0.07, 0.07, 0.84, 0.91, 0.55, 0.56, 0.28, 0.69, 0.09, 0.73, 0.48, 0.63,
            0.64, 0.87);
    Given given =
        RandomMotions.given(
            new RandomMotions.Choice(
                4, true, 2, ReferenceMotion.Device.SLIPS, 1, true, true, numbers));
    MotionRecord record = CatchMotion.follow(spec(given), List.of(), 0.8, 0, () -> false);

    // with the first steps 3.5e-6 of the energy was missing
    assertThat(record.ending()).isNotEqualTo(MotionRecord.Ending.GAVE_UP);
    assertThat(record.residualShare()).isLessThan(Tolerances.ENERGY_ACCOUNT);
  }

  @Test
  void it_stops_when_cancelled() {
    Given given =
        Given.piece(100, 0, 0, -1)
            .over(1, 0, 0, 0)
            .to(0, 0, -5)
            .rope(LinearStretch.of(org.boleline.units.Amounts.newtons(1e5)), 2, 5);
    int[] asked = {0};
    Assertions.assertThrows(
        CancellationException.class,
        () -> CatchMotion.follow(spec(given), List.of(), 600, 0, () -> ++asked[0] > 3));
    assertThat(asked[0]).isEqualTo(4);
  }

  /** The same catch for the kernel: axis of the body is its third. */
  static MotionSpec spec(Given given) {
    double[] z = given.axis;
    double[] x = square(z);
    double[] y = {z[1] * x[2] - z[2] * x[1], z[2] * x[0] - z[0] * x[2], z[0] * x[1] - z[1] * x[0]};
    int n = given.points.length;
    double[] place = new double[3 * n + 3];
    for (int j = 0; j <= n; j++) {
      System.arraycopy(j < n ? given.points[j] : given.end, 0, place, 3 * j, 3);
    }
    int modes = given.modes.size();
    double[] frequency = new double[modes];
    double[] damping = new double[modes];
    double[][] shape = new double[modes][3 * n + 3];
    for (int k = 0; k < modes; k++) {
      ReferenceMotion.Mode mode = given.modes.get(k);
      frequency[k] = mode.frequency();
      damping[k] = mode.damping();
      for (int j = 0; j <= n; j++) {
        System.arraycopy(j < n ? mode.atPoints()[j] : mode.atEnd(), 0, shape[k], 3 * j, 3);
      }
    }
    boolean locked = given.device == ReferenceMotion.Device.LOCKED;
    return new MotionSpec(
        given.mass,
        given.axialInertia,
        given.transverseInertia,
        inBody(given.tie, x, y, z),
        given.centre,
        given.velocity,
        quaternion(x, y, z),
        inBody(given.spin, x, y, z),
        StretchKernels.of(given.curve),
        given.lay == null ? given.natural : given.lay,
        !given.whereItLay,
        given.hysteresis,
        given.hysteresisStrain,
        given.ratios,
        place,
        frequency,
        damping,
        shape,
        locked ? Double.POSITIVE_INFINITY : given.slipTension,
        0,
        given.device == ReferenceMotion.Device.BY_HAND ? given.delay : 0,
        given.gravity);
  }

  private static double[] square(double[] z) {
    double[] x = Math.abs(z[0]) < 0.9 ? new double[] {1, 0, 0} : new double[] {0, 1, 0};
    double along = x[0] * z[0] + x[1] * z[1] + x[2] * z[2];
    double size = 0;
    for (int d = 0; d < 3; d++) {
      x[d] -= along * z[d];
      size += x[d] * x[d];
    }
    for (int d = 0; d < 3; d++) {
      x[d] /= Math.sqrt(size);
    }
    return x;
  }

  private static double[] inBody(double[] v, double[] x, double[] y, double[] z) {
    return new double[] {
      v[0] * x[0] + v[1] * x[1] + v[2] * x[2],
      v[0] * y[0] + v[1] * y[1] + v[2] * y[2],
      v[0] * z[0] + v[1] * z[1] + v[2] * z[2]
    };
  }

  /** Of the rotation whose columns are x, y and z; not half a turn here. */
  private static double[] quaternion(double[] x, double[] y, double[] z) {
    double w = 0.5 * Math.sqrt(Math.max(0, 1 + x[0] + y[1] + z[2]));
    return new double[] {
      w, (y[2] - z[1]) / (4 * w), (z[0] - x[2]) / (4 * w), (x[1] - y[0]) / (4 * w)
    };
  }
}
