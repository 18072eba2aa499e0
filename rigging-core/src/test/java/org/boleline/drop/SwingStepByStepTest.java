package org.boleline.drop;

import static org.assertj.core.api.Assertions.assertThat;
import static org.boleline.Tolerances.SOLVED_CASE;
import static org.boleline.Tolerances.absolute;
import static org.boleline.Tolerances.relative;
import static org.boleline.units.Amounts.degrees;
import static org.boleline.units.Amounts.kilograms;
import static org.boleline.units.Amounts.metres;
import static org.boleline.units.Amounts.metresPerSecond;

import java.util.Collections;
import java.util.List;
import org.boleline.units.Kind;
import org.boleline.units.Si;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The swing against the same motion integrated step by step. */
class SwingStepByStepTest {
  private static final double MASS = 120;

  private static void expectTheSame(Swing swing, double length, double[] start, double duration) {
    PendulumSteps steps = new PendulumSteps(MASS, length);
    steps.follow(start, duration);

    assertThat(swing.outcome()).isEqualTo(SwingOutcome.STAYS_TAUT);
    assertThat(steps.catches).hasSameSizeAs(swing.catches());
    expectTheSameCatches(swing, steps);
    assertThat(Si.value(swing.greatestTension(), Kind.FORCE, "force"))
        .isCloseTo(Collections.max(steps.pulls), relative(SOLVED_CASE));
    double turn = Si.value(swing.turningAngle().orElseThrow(), Kind.ANGLE, "angle");
    double last = steps.turns.get(steps.turns.size() - 1);
    assertThat(-length * Math.cos(turn)).isCloseTo(last, absolute(SOLVED_CASE * length));
  }

  private static void expectTheSameCatches(Swing swing, PendulumSteps steps) {
    List<SwingCatch> catches = swing.catches();
    for (int i = 0; i < steps.catches.size(); i++) {
      assertThat(Si.value(catches.get(i).radialSpeed(), Kind.SPEED, "speed"))
          .isCloseTo(steps.catches.get(i)[0], relative(SOLVED_CASE));
      assertThat(Si.value(catches.get(i).angle(), Kind.ANGLE, "angle"))
          .isCloseTo(steps.catches.get(i)[1], absolute(SOLVED_CASE));
    }
  }

  @ParameterizedTest
  @CsvSource({
    // length, angle, push
    "6, 5, 0",
    "6, 40, 0",
    "2.5, 75, 0",
    "11, 89, 0",
    "6, 0, 3",
    "6, 30, -4",
    "6, 30, 4"
  })
  void a_taut_swing_is_that_of_a_mass_on_a_cord(double length, double angle, double push) {
    double a = Math.toRadians(angle);
    Swing swing =
        Swing.of(kilograms(MASS), metres(length), degrees(angle)).withPush(metresPerSecond(push));

    expectTheSame(
        swing,
        length,
        new double[] {
          length * Math.sin(a), -length * Math.cos(a), push * Math.cos(a), push * Math.sin(a)
        },
        12);
    assertThat(swing.catches()).isEmpty();
  }

  @ParameterizedTest
  @CsvSource({
    // length, angle, slack, level speed, upward speed, catches
    "6, 40, 1, 0, 0, 1",
    "6, 0, 2, 1.5, 0, 1",
    "6, 70, 0.5, -1, 2, 1",
    "8, 0, 8, 0.5, -0.2, 1",
    "8, 150, 0, 0, 0, 1",
    "5, 140, 1.2, 0, 0, 1",
    "5, 170, 0.1, 0.4, 0, 1",
    "6, 60, 2, 4, 3, 1",
    "6, 30, 0, 3, -4, 1",
    "6, 30, 0, -3, 4, 1"
  })
  void a_swing_with_slack_is_that_of_a_mass_on_a_cord(
      double length, double angle, double slack, double level, double up, int catches) {
    double a = Math.toRadians(angle);
    double distance = length - slack;
    Swing swing =
        Swing.of(kilograms(MASS), metres(length), degrees(angle))
            .withSlack(metres(slack))
            .withVelocity(metresPerSecond(level), metresPerSecond(up));

    assertThat(swing.catches()).hasSize(catches);
    expectTheSame(
        swing,
        length,
        new double[] {distance * Math.sin(a), -distance * Math.cos(a), level, up},
        15);
  }

  /** Pushed so hard that it rises above the point on the other side, but not over the top. */
  @ParameterizedTest
  @CsvSource({"6, 0, 15", "6, 40, -14", "3, 80, 8"})
  void a_swing_that_goes_slack_on_the_way_up_is_that_of_a_mass_on_a_cord(
      double length, double angle, double push) {
    double a = Math.toRadians(angle);
    Swing swing =
        Swing.of(kilograms(MASS), metres(length), degrees(angle)).withPush(metresPerSecond(push));

    assertThat(swing.catches()).isNotEmpty();
    expectTheSame(
        swing,
        length,
        new double[] {
          length * Math.sin(a), -length * Math.cos(a), push * Math.cos(a), push * Math.sin(a)
        },
        30);
  }

  /** Each catch takes so little that it rises above the point again and again. */
  @ParameterizedTest
  @CsvSource({"8, 95", "6, 100", "3, 92"})
  void a_release_little_above_the_level_of_the_point_comes_taut_again_and_again(
      double length, double angle) {
    double a = Math.toRadians(angle);
    Swing swing = Swing.of(kilograms(MASS), metres(length), degrees(angle));
    PendulumSteps steps = new PendulumSteps(MASS, length);
    steps.follow(new double[] {length * Math.sin(a), -length * Math.cos(a), 0, 0}, 30);

    assertThat(swing.outcome()).isEqualTo(SwingOutcome.NOT_FOLLOWED);
    assertThat(swing.turningAngle()).isEmpty();
    assertThat(steps.catches).hasSizeBetween(5, swing.catches().size());
    expectTheSameCatches(swing, steps);
    assertThat(Si.value(swing.greatestTension(), Kind.FORCE, "force"))
        .isCloseTo(Collections.max(steps.pulls), relative(SOLVED_CASE));
  }
}
