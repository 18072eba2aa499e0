package org.boleline.drop;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatNullPointerException;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.boleline.Tolerances.EXACT;
import static org.boleline.Tolerances.ROUNDING;
import static org.boleline.Tolerances.absolute;
import static org.boleline.Tolerances.printedTo;
import static org.boleline.Tolerances.relative;
import static org.boleline.units.Amounts.degrees;
import static org.boleline.units.Amounts.feet;
import static org.boleline.units.Amounts.kilograms;
import static org.boleline.units.Amounts.metres;
import static org.boleline.units.Amounts.metresPerSecond;
import static org.boleline.units.Amounts.radians;

import javax.measure.Quantity;
import net.jqwik.api.Assume;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.boleline.explain.CautionCode;
import org.boleline.explain.PlanRefusedException;
import org.boleline.explain.Refusal;
import org.boleline.explain.Step;
import org.boleline.geometry.Vector;
import org.boleline.units.Kind;
import org.boleline.units.Si;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SwingTest {
  private static final double G = 9.80665;
  private static final double MASS = 120;
  private static final double WEIGHT = MASS * G;

  /**
   * Tension at the bottom over weight, by angle of release: T = m g (3 cos a - 2 cos a0) as a
   * physics teaching page gives it, the numbers worked out from it.
   */
  @ParameterizedTest
  @CsvSource({"15, 1.06815", "30, 1.26795", "60, 2.00000", "90, 3.00000"})
  void the_bottom_of_a_released_swing_takes_what_physics_texts_give(double angle, double printed) {
    Swing swing = Swing.of(kilograms(MASS), metres(6), degrees(angle));
    assertThat(si(swing.greatestTension(), Kind.FORCE) / WEIGHT)
        .isCloseTo(printed, printedTo(0.00001))
        .isCloseTo(3 - 2 * Math.cos(Math.toRadians(angle)), relative(EXACT));
    assertThat(si(swing.angleOfGreatestTension(), Kind.ANGLE)).isZero();
    assertThat(SwingFormulas.BOTTOM_TENSION.value(MASS, G, Math.toRadians(angle)) / WEIGHT)
        .isCloseTo(printed, printedTo(0.00001));
  }

  /** T = m g (1 + a^2 / l^2) for a small amplitude a: a physics problem page. */
  @ParameterizedTest
  @CsvSource({"0.001", "0.01", "0.1", "0.3"})
  void a_small_swing_adds_the_square_of_its_angle(double angle) {
    Swing swing = Swing.of(kilograms(MASS), metres(6), radians(angle));
    double small = SwingFormulas.SMALL_SWING.value(MASS, G, angle);
    double over = small - si(swing.greatestTension(), Kind.FORCE);
    // 3 - 2 cos a = 1 + a^2 - a^4 / 12 + a^6 / 360 - ...
    assertThat(over)
        .isBetween(
            WEIGHT * (Math.pow(angle, 4) / 12 - Math.pow(angle, 6) / 360 - EXACT),
            WEIGHT * (Math.pow(angle, 4) / 12 + EXACT));
  }

  @Test
  void at_plumb_with_a_taut_rope_it_hangs() {
    Swing swing = Swing.of(kilograms(MASS), metres(6), degrees(0));
    assertThat(si(swing.greatestTension(), Kind.FORCE)).isCloseTo(WEIGHT, relative(ROUNDING));
    assertThat(si(swing.turningAngle().orElseThrow(), Kind.ANGLE)).isZero();
    assertThat(swing.catches()).isEmpty();
    assertThat(swing.cautions()).isEmpty();
    assertThat(si(swing.reachOut(), Kind.LENGTH)).isZero();
  }

  @Test
  void straight_below_the_point_slack_is_a_fall_of_that_height() {
    Swing swing = Swing.of(kilograms(MASS), metres(6), degrees(0)).withSlack(metres(2));
    SwingCatch only = swing.catches().get(0);
    assertThat(swing.catches()).hasSize(1);
    assertThat(si(only.fallHeight(), Kind.LENGTH)).isCloseTo(2, relative(EXACT));
    assertThat(si(only.radialSpeed(), Kind.SPEED)).isCloseTo(Math.sqrt(2 * G * 2), relative(EXACT));
    assertThat(si(only.flightTime(), Kind.TIME)).isCloseTo(Math.sqrt(2 * 2 / G), relative(EXACT));
    assertThat(si(only.energy(), Kind.ENERGY)).isCloseTo(WEIGHT * 2, relative(EXACT));
    assertThat(si(only.tensionAfter(), Kind.FORCE)).isCloseTo(WEIGHT, relative(EXACT));
    assertThat(si(swing.greatestTension(), Kind.FORCE)).isCloseTo(WEIGHT, relative(EXACT));
    assertThat(swing.cautions()).hasSize(1);
    assertThat(swing.cautions().get(0).code()).isEqualTo(CautionCode.ROPE_COMES_TAUT);
    assertThat(swing.cautions().get(0).sentence())
        .isEqualTo(
            "The rope goes slack and comes taut 1 times, at most with 6.26 m/s along it, like a"
                + " fall of 2 m: how hard it pulls then is not in the tensions of the swing.");
  }

  /**
   * Let go above the level of the point it falls along a chord. By hand for 120 degrees: it comes
   * down by the length of the rope, v^2 = 2 g L, and meets the rope at 60 degrees from plumb, so
   * v_r^2 = v^2 cos^2 60 and v_t^2 = v^2 sin^2 60.
   */
  @Test
  void above_the_level_of_the_point_it_falls_to_the_mirrored_place() {
    Swing swing = Swing.of(kilograms(MASS), metres(6), degrees(120));
    SwingCatch first = swing.catches().get(0);
    assertThat(si(first.angle(), Kind.ANGLE)).isCloseTo(Math.PI / 3, relative(EXACT));
    assertThat(si(first.fallHeight(), Kind.LENGTH)).isCloseTo(6 * 0.25, relative(EXACT));
    assertThat(si(first.tangentialSpeed(), Kind.SPEED))
        .isCloseTo(-Math.sqrt(2 * G * 6 * 0.75), relative(EXACT));
    assertThat(si(first.tensionAfter(), Kind.FORCE)).isCloseTo(2 * WEIGHT, relative(EXACT));
    assertThat(si(swing.release().z(), Kind.LENGTH)).isCloseTo(3, relative(EXACT));
  }

  /**
   * Pushed at the bottom with v^2 = 5 g L the rope just stays taut over the top, and pulls with six
   * times the weight at the bottom: the vertical loop of physics texts, here from the balance.
   */
  @Test
  void above_five_g_l_it_goes_round_and_below_it_falls_off_the_circle() {
    double least = Math.sqrt(5 * G * 6);
    Swing round =
        Swing.of(kilograms(MASS), metres(6), degrees(0))
            .withPush(metresPerSecond(least * 1.000001));
    assertThat(round.outcome()).isEqualTo(SwingOutcome.GOES_ROUND);
    assertThat(round.turningAngle()).isEmpty();
    assertThat(si(round.greatestTension(), Kind.FORCE) / WEIGHT)
        .isCloseTo(1 + 5 * 1.000001 * 1.000001, relative(EXACT));
    assertThat(si(round.extents().most().z(), Kind.LENGTH)).isCloseTo(6, relative(EXACT));
    assertThat(si(round.extents().least().z(), Kind.LENGTH)).isCloseTo(-6, relative(EXACT));

    Swing falls =
        Swing.of(kilograms(MASS), metres(6), degrees(0))
            .withPush(metresPerSecond(least * 0.999999));
    assertThat(falls.catches()).isNotEmpty();
  }

  @Test
  void a_push_that_all_but_lifts_it_to_the_level_of_the_point_pulls_with_three_times_the_weight() {
    // v^2 = 2 g L turns at a right angle; at the bottom m g + m v^2 / L = 3 m g.
    double share = 0.999;
    Swing swing =
        Swing.of(kilograms(MASS), metres(6), degrees(0))
            .withPush(metresPerSecond(Math.sqrt(share * 2 * G * 6)));
    assertThat(si(swing.greatestTension(), Kind.FORCE))
        .isCloseTo((1 + 2 * share) * WEIGHT, relative(EXACT));
    assertThat(Math.cos(si(swing.turningAngle().orElseThrow(), Kind.ANGLE)))
        .isCloseTo(1 - share, absolute(EXACT));
  }

  @Test
  void a_velocity_square_to_the_rope_is_a_push() {
    Swing pushed = Swing.of(kilograms(MASS), metres(6), degrees(30)).withPush(metresPerSecond(2));
    Swing moving =
        Swing.of(kilograms(MASS), metres(6), degrees(30))
            .withVelocity(
                metresPerSecond(2 * Math.cos(Math.toRadians(30))),
                metresPerSecond(2 * Math.sin(Math.toRadians(30))));
    assertThat(moving.catches()).isEmpty();
    assertThat(si(moving.greatestTension(), Kind.FORCE))
        .isCloseTo(si(pushed.greatestTension(), Kind.FORCE), relative(ROUNDING));
    // By hand: v^2 = 4 + 2 g L (1 - cos 30), T = m (v^2 / L + g).
    assertThat(si(pushed.greatestTension(), Kind.FORCE))
        .isCloseTo(MASS * ((4 + 2 * G * 6 * (1 - Math.sqrt(0.75))) / 6 + G), relative(EXACT));
    assertThat(si(pushed.speedAtGreatestTension(), Kind.SPEED))
        .isCloseTo(Math.sqrt(4 + 2 * G * 6 * (1 - Math.sqrt(0.75))), relative(EXACT));
  }

  @Property
  void energy_is_kept_but_for_what_the_catches_take(
      @ForAll @Scale(15) @DoubleRange(min = 0, max = Math.PI) double angle,
      @ForAll @Scale(9) @DoubleRange(min = 0, max = 0.9) double slack,
      @ForAll @Scale(9) @DoubleRange(min = -3, max = 3) double level,
      @ForAll @Scale(9) @DoubleRange(min = -3, max = 3) double up) {
    Swing swing =
        Swing.of(kilograms(MASS), metres(5), radians(angle))
            .withSlack(metres(5 * slack))
            .withVelocity(metresPerSecond(level), metresPerSecond(up));
    Assume.that(swing.outcome() == SwingOutcome.STAYS_TAUT);
    double taken = 0;
    for (SwingCatch one : swing.catches()) {
      taken += si(one.energy(), Kind.ENERGY);
      assertThat(si(one.radialSpeed(), Kind.SPEED)).isGreaterThan(-EXACT);
    }
    double turn = si(swing.turningAngle().orElseThrow(), Kind.ANGLE);
    double input =
        WEIGHT * (si(swing.release().z(), Kind.LENGTH) + 5) + MASS * (level * level + up * up) / 2;
    assertThat(taken + WEIGHT * 5 * (1 - Math.cos(turn)))
        .isCloseTo(input, absolute(EXACT * WEIGHT * 5));
  }

  @Property
  void twice_the_lengths_leave_the_tensions_as_they_are(
      @ForAll @Scale(15) @DoubleRange(min = 0, max = Math.PI) double angle,
      @ForAll @Scale(9) @DoubleRange(min = 0, max = 0.9) double slack,
      @ForAll @Scale(9) @DoubleRange(min = 0.1, max = 10) double factor) {
    Swing one = Swing.of(kilograms(MASS), metres(5), radians(angle)).withSlack(metres(5 * slack));
    Swing other =
        Swing.of(kilograms(MASS), metres(5 * factor), radians(angle))
            .withSlack(metres(5 * factor * slack));
    Assume.that(one.outcome() == SwingOutcome.STAYS_TAUT);
    assertThat(other.outcome()).isEqualTo(one.outcome());
    assertThat(si(other.greatestTension(), Kind.FORCE))
        .isCloseTo(si(one.greatestTension(), Kind.FORCE), relative(EXACT));
    assertThat(other.catches()).hasSameSizeAs(one.catches());
    for (int i = 0; i < one.catches().size(); i++) {
      assertThat(si(other.catches().get(i).fallHeight(), Kind.LENGTH))
          .isCloseTo(
              factor * si(one.catches().get(i).fallHeight(), Kind.LENGTH),
              absolute(EXACT * 5 * factor));
    }
  }

  @Property
  void another_azimuth_turns_the_places_and_leaves_the_numbers(
      @ForAll @Scale(9) @DoubleRange(min = 0, max = 2.5) double angle,
      @ForAll @Scale(9) @DoubleRange(min = -4, max = 4) double azimuth) {
    Swing one = Swing.of(kilograms(MASS), metres(5), radians(angle)).withSlack(metres(0.5));
    Swing other = one.withAzimuth(radians(azimuth));
    assertThat(other.greatestTension()).isEqualTo(one.greatestTension());
    assertThat(other.reachOut()).isEqualTo(one.reachOut());
    assertThat(other.reachBack()).isEqualTo(one.reachBack());
    double[] a = one.catches().get(0).position().in(Kind.LENGTH);
    double[] b = other.catches().get(0).position().in(Kind.LENGTH);
    assertThat(b[0]).isCloseTo(a[0] * Math.cos(azimuth), absolute(EXACT));
    assertThat(b[1]).isCloseTo(a[0] * Math.sin(azimuth), absolute(EXACT));
    assertThat(b[2]).isEqualTo(a[2]);
  }

  @Property
  void the_two_ways_to_the_tension_are_one(
      @ForAll @Scale(9) @DoubleRange(min = 0, max = 1.57) double release,
      @ForAll @Scale(9) @DoubleRange(min = -1, max = 1) double share) {
    double angle = share * release;
    double speed = SwingFormulas.SPEED_AT.value(0, G, 6, release, angle);
    assertThat(SwingFormulas.TENSION_AT.value(MASS, speed, 6, G, angle))
        .isCloseTo(
            SwingFormulas.RELEASED_TENSION.value(MASS, G, release, angle),
            absolute(EXACT * WEIGHT));
    assertThat(SwingFormulas.TURNING_ANGLE.value(speed, G, 6, angle))
        .isCloseTo(release, absolute(EXACT));
  }

  @Property
  void where_the_rope_goes_slack_there_is_no_tension(
      @ForAll @Scale(9) @DoubleRange(min = 1.42, max = 2.23) double factor) {
    // Pushed at plumb with v^2 between 2 g L and 5 g L.
    double v = factor * Math.sqrt(G * 6);
    double angle = SwingFormulas.SLACK_ANGLE.value(v, G, 6, 0);
    double there = SwingFormulas.SPEED_AT.value(v, G, 6, 0, angle);
    assertThat(SwingFormulas.TENSION_AT.value(MASS, there, 6, G, angle))
        .isCloseTo(0, absolute(EXACT * WEIGHT));
  }

  /** Whatever is stated, within and beyond what a site has. */
  @Property
  void every_swing_has_its_numbers_and_stays_within_its_rope(
      @ForAll @Scale(15) @DoubleRange(min = 0, max = Math.PI) double angle,
      @ForAll @Scale(15) @DoubleRange(min = 0, max = 1) double slack,
      @ForAll @Scale(9) @DoubleRange(min = 1e-3, max = 1000) double length,
      @ForAll @Scale(9) @DoubleRange(min = 1e-3, max = 1000) double gravity,
      @ForAll @Scale(15) @DoubleRange(min = -1, max = 1) double level,
      @ForAll @Scale(15) @DoubleRange(min = -1, max = 1) double up,
      @ForAll @Scale(9) @DoubleRange(min = 0, max = 40) double speed) {
    double scale = Math.min(1000, speed * Math.sqrt(gravity * length));
    Swing swing =
        Swing.of(kilograms(MASS), metres(length), radians(angle))
            .withSlack(metres(length * slack))
            .withVelocity(metresPerSecond(level * scale), metresPerSecond(up * scale))
            .withGravity(Si.of(gravity, Kind.ACCELERATION));
    assertThat(si(swing.greatestTension(), Kind.FORCE)).isPositive();
    for (SwingCatch one : swing.catches()) {
      assertThat(si(one.radialSpeed(), Kind.SPEED)).isGreaterThan(-EXACT * (1 + scale));
      assertThat(si(one.position().magnitude(), Kind.LENGTH))
          .isCloseTo(length, absolute(EXACT * length));
    }
    for (double coordinate : swing.extents().least().in(Kind.LENGTH)) {
      assertThat(coordinate).isGreaterThan(-length * (1 + EXACT));
    }
    for (double coordinate : swing.extents().most().in(Kind.LENGTH)) {
      assertThat(coordinate).isLessThan(length * (1 + EXACT));
    }
    assertThat(si(swing.reachOut(), Kind.LENGTH)).isLessThan(length * (1 + EXACT));
  }

  @Test
  void numbers_are_those_of_their_steps() {
    Swing swing = Swing.of(kilograms(MASS), metres(6), degrees(70)).withSlack(metres(1));
    assertThat(swing.steps()).hasSize(2);
    assertThat(swing.steps().get(1).result()).isEqualTo(si(swing.greatestTension(), Kind.FORCE));
    assertThat(swing.steps().get(1).input(1)).isEqualTo(swing.steps().get(0).result());
    SwingCatch only = swing.catches().get(0);
    assertThat(only.steps().stream().map(Step::result))
        .containsExactly(
            si(only.flightTime(), Kind.TIME),
            si(only.radialSpeed(), Kind.SPEED),
            si(only.tangentialSpeed(), Kind.SPEED),
            si(only.fallHeight(), Kind.LENGTH),
            si(only.energy(), Kind.ENERGY),
            si(only.tensionAfter(), Kind.FORCE));
    assertThat(swing.steps().get(0).input(0)).isEqualTo(only.steps().get(2).result());
  }

  @Test
  void less_gravity_pulls_less() {
    Swing moon =
        Swing.of(kilograms(MASS), metres(6), degrees(60))
            .withGravity(Si.of(1.62, Kind.ACCELERATION));
    assertThat(si(moon.greatestTension(), Kind.FORCE)).isCloseTo(2 * MASS * 1.62, relative(EXACT));
  }

  @Test
  void feet_and_metres_are_one() {
    assertThat(Swing.of(kilograms(MASS), feet(10), degrees(60)))
        .isEqualTo(Swing.of(kilograms(MASS), metres(3.048), degrees(60)));
  }

  @Test
  void all_that_is_wrong_is_said_at_once() {
    assertThat(refused(() -> Swing.of(kilograms(0), metres(0.0009), degrees(181))).refusals())
        .extracting(Refusal::place)
        .containsExactly("/mass", "/length", "/angle");
    Swing swing = Swing.of(kilograms(MASS), metres(6), degrees(60));
    assertThat(
            refused(() -> swing.withVelocity(metresPerSecond(-1001), metresPerSecond(2000)))
                .refusals())
        .extracting(Refusal::place)
        .containsExactly("/level", "/up");
    assertThat(refused(() -> swing.withSlack(metres(6.1)))).hasMessageContaining("6 m");
    assertThat(refused(() -> swing.withSlack(metres(-0.1)))).hasMessageContaining("slack");
    assertThat(refused(() -> swing.withPush(metresPerSecond(1001)))).hasMessageContaining("push");
    assertThat(refused(() -> swing.withAzimuth(radians(101)))).hasMessageContaining("azimuth");
    assertThat(refused(() -> swing.withGravity(Si.of(0, Kind.ACCELERATION))))
        .hasMessageContaining("gravity");
    assertThat(refused(() -> swing.withPoint(Vector.of(metres(0), metres(0), metres(1.1e5)))))
        .hasMessageContaining("point");
    assertThatNullPointerException().isThrownBy(() -> Swing.of(null, metres(1), degrees(1)));
  }

  @Test
  void equality_is_exact() {
    Swing swing = Swing.of(kilograms(MASS), metres(6), degrees(60)).withSlack(metres(1));
    Swing same = Swing.of(kilograms(MASS), metres(6), degrees(60)).withSlack(metres(1));
    assertThat(swing).isEqualTo(same).hasSameHashCodeAs(same);
    assertThat(swing.catches()).isEqualTo(same.catches());
    assertThat(swing).isNotEqualTo(same.withSlack(metres(1.1)));
    assertThat(Swing.of(kilograms(MASS), metres(6), degrees(60)))
        .hasToString("120 kg on 6 m of rope from 1.05 rad: at most 2350 N");
  }

  private static PlanRefusedException refused(ThrowingCallable call) {
    return catchThrowableOfType(PlanRefusedException.class, call);
  }

  private static <Q extends Quantity<Q>> double si(Quantity<Q> quantity, Kind<Q> kind) {
    return Si.value(quantity, kind, kind.name());
  }
}
