package org.boleline.drop;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.boleline.Tolerances.EXACT;
import static org.boleline.Tolerances.absolute;
import static org.boleline.units.Amounts.degrees;
import static org.boleline.units.Amounts.kilograms;
import static org.boleline.units.Amounts.metres;
import static org.boleline.units.Amounts.metresPerSecond;
import static org.boleline.units.Amounts.radians;

import java.util.function.DoubleFunction;
import net.jqwik.api.Assume;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import org.boleline.geometry.Box;
import org.boleline.geometry.Vector;
import org.boleline.units.Kind;
import org.boleline.units.Si;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The envelope of a swing and its clearance to boxes. */
class SwingClearanceTest {
  private static final double G = 9.80665;

  /** From level on 5 m of rope under a point 10 m up: a half circle in the plane y = 0. */
  private static final Swing HALF_CIRCLE =
      Swing.of(kilograms(100), metres(5), degrees(90))
          .withPoint(Vector.ofSi(Kind.LENGTH, 0, 0, 10));

  private static Box box(double... corners) {
    return Box.between(
        Vector.ofSi(Kind.LENGTH, corners[0], corners[1], corners[2]),
        Vector.ofSi(Kind.LENGTH, corners[3], corners[4], corners[5]));
  }

  private static double clearance(Swing swing, Box box, double radius) {
    return Si.value(swing.clearance(box, metres(radius)).clearance(), Kind.LENGTH, "clearance");
  }

  /** By hand: a circle of 5 m about (0, 0, 10), its lower half. */
  @ParameterizedTest
  @CsvSource({
    // a wall beyond the reach, a floor below, a box aside
    "6, -1, 9, 7, 1, 11, 1",
    "-1, -1, 0, 1, 1, 4, 1",
    "-1, 3, 4, 1, 5, 6, 3",
    // an edge along y at (6, 2): 10 from the point; the same as a corner, 4 aside
    "6, -1, 0, 9, 1, 2, 5",
    "6, 4, 0, 9, 5, 2, 6.4031242374328485",
    // a mast inside the circle: its foot (0, 0, 8) is 3 above the bottom
    "0, 0, 8, 0, 0, 12, 3",
    // above the level where it turns: 2 over the end
    "4, -1, 12, 6, 1, 13, 2",
    // in the way
    "-1, -1, 4, 1, 1, 6, 0",
    "2.9, -1, 5.9, 3.1, 1, 6.1, 0"
  })
  void distances_to_faces_edges_and_corners_are_those_worked_by_hand(
      double x0, double y0, double z0, double x1, double y1, double z1, double byHand) {
    Box box = box(x0, y0, z0, x1, y1, z1);
    assertThat(clearance(HALF_CIRCLE, box, 0)).isCloseTo(byHand, absolute(EXACT));
    assertThat(clearance(HALF_CIRCLE, box, 0.75)).isCloseTo(byHand - 0.75, absolute(EXACT));
    assertThat(HALF_CIRCLE.clearance(box, metres(0.75)).isHit()).isEqualTo(byHand == 0);
  }

  @Test
  void the_place_is_where_it_is_nearest() {
    SwingClearance wall = HALF_CIRCLE.clearance(box(6, -1, 9, 7, 1, 11), metres(0));
    double[] place = wall.position().in(Kind.LENGTH);
    assertThat(place[0]).isCloseTo(5, absolute(EXACT));
    assertThat(place[2]).isBetween(9.0, 10 + EXACT);
    assertThat(wall).isEqualTo(HALF_CIRCLE.clearance(box(6, -1, 9, 7, 1, 11), metres(0)));
  }

  @Test
  void the_extents_are_those_of_the_circle() {
    Swing swing =
        Swing.of(kilograms(100), metres(6), degrees(60))
            .withPoint(Vector.ofSi(Kind.LENGTH, 1, 2, 10));
    double sine = Math.sqrt(0.75);
    double[] least = swing.extents().least().in(Kind.LENGTH);
    double[] most = swing.extents().most().in(Kind.LENGTH);
    assertThat(least).containsExactly(new double[] {1 - 6 * sine, 2, 4}, absolute(EXACT));
    assertThat(most).containsExactly(new double[] {1 + 6 * sine, 2, 7}, absolute(EXACT));
    assertThat(Si.value(swing.reachOut(), Kind.LENGTH, "out")).isCloseTo(6 * sine, absolute(EXACT));
    assertThat(Si.value(swing.reachBack(), Kind.LENGTH, "back"))
        .isCloseTo(6 * sine, absolute(EXACT));
  }

  @Test
  void the_extents_hold_the_top_of_a_throw() {
    // Thrown up by 3 m/s from 4 m below the point: v^2 / (2 g) higher.
    Swing swing =
        Swing.of(kilograms(100), metres(6), degrees(0))
            .withSlack(metres(2))
            .withVelocity(metresPerSecond(0.5), metresPerSecond(3));
    assertThat(Si.value(swing.extents().most().z(), Kind.LENGTH, "top"))
        .isCloseTo(-4 + 9 / (2 * G), absolute(EXACT));
  }

  @Property
  void a_quarter_turn_of_all_leaves_the_clearance(
      @ForAll @Scale(9) @DoubleRange(min = 0, max = 2.5) double angle,
      @ForAll @Scale(9) @DoubleRange(min = -3, max = 3) double azimuth,
      @ForAll @Scale(9) @DoubleRange(min = -6, max = 6) double x,
      @ForAll @Scale(9) @DoubleRange(min = -6, max = 6) double y,
      @ForAll @Scale(9) @DoubleRange(min = -6, max = 6) double z) {
    Swing swing =
        Swing.of(kilograms(100), metres(5), radians(angle))
            .withSlack(metres(0.7))
            .withAzimuth(radians(azimuth));
    Swing turned = swing.withAzimuth(radians(azimuth + Math.PI / 2));
    double here = clearance(swing, box(x, y, z, x + 1, y + 2, z + 3), 0.5);
    double there = clearance(turned, box(-y, x, z, -y - 2, x + 1, z + 3), 0.5);
    assertThat(there).isCloseTo(here, absolute(5 * EXACT));
  }

  @Property
  void another_place_of_all_leaves_the_clearance(
      @ForAll @Scale(9) @DoubleRange(min = -50, max = 50) double x,
      @ForAll @Scale(9) @DoubleRange(min = -50, max = 50) double z) {
    double there =
        clearance(
            HALF_CIRCLE.withPoint(Vector.ofSi(Kind.LENGTH, x, 7, z)),
            box(x + 6, 6, z - 10, x + 9, 8, z - 8),
            0);
    assertThat(there).isCloseTo(5, absolute(50 * EXACT));
  }

  /**
   * The same by search: the way written out from release, flight time and turning angle, in 2000
   * places, and from each that is nearer than its neighbours a golden-section search.
   */
  @Property
  void the_clearance_is_the_least_distance_along_the_way(
      @ForAll @Scale(9) @DoubleRange(min = 0, max = 3) double angle,
      @ForAll @Scale(9) @DoubleRange(min = 0, max = 4) double slack,
      @ForAll @Scale(9) @DoubleRange(min = -2, max = 2) double level,
      @ForAll @Scale(9) @DoubleRange(min = -2, max = 2) double up,
      @ForAll @Scale(9) @DoubleRange(min = -6, max = 6) double x,
      @ForAll @Scale(9) @DoubleRange(min = -3, max = 3) double y,
      @ForAll @Scale(9) @DoubleRange(min = -6, max = 6) double z) {
    double azimuth = 0.4;
    Swing swing =
        Swing.of(kilograms(100), metres(5), radians(angle))
            .withSlack(metres(slack))
            .withVelocity(metresPerSecond(level), metresPerSecond(up))
            .withAzimuth(radians(azimuth));
    Assume.that(swing.outcome() == SwingOutcome.STAYS_TAUT && swing.catches().size() <= 1);
    Box box = box(x, y, z, x + 0.8, y + 1.5, z + 2);
    double turn = Si.value(swing.turningAngle().orElseThrow(), Kind.ANGLE, "turn");
    double least =
        least(box, -turn, turn, a -> inSpace(5 * Math.sin(a), -5 * Math.cos(a), azimuth));
    if (!swing.catches().isEmpty()) {
      double time = Si.value(swing.catches().get(0).flightTime(), Kind.TIME, "time");
      double x0 = (5 - slack) * Math.sin(angle);
      double z0 = -(5 - slack) * Math.cos(angle);
      least =
          Math.min(
              least,
              least(
                  box,
                  0,
                  time,
                  t -> inSpace(x0 + level * t, z0 + up * t - G / 2 * t * t, azimuth)));
    }
    assertThat(clearance(swing, box, 0)).isCloseTo(least, absolute(5 * EXACT));
  }

  private static double[] inSpace(double level, double height, double azimuth) {
    return new double[] {level * Math.cos(azimuth), level * Math.sin(azimuth), height};
  }

  private static double away(Box box, double[] place) {
    double[] least = box.least().in(Kind.LENGTH);
    double[] most = box.most().in(Kind.LENGTH);
    double square = 0;
    for (int i = 0; i < 3; i++) {
      double nearest = Math.min(most[i], Math.max(least[i], place[i]));
      square += (place[i] - nearest) * (place[i] - nearest);
    }
    return Math.sqrt(square);
  }

  private static double least(Box box, double from, double to, DoubleFunction<double[]> way) {
    int count = 2000;
    double[] at = new double[count + 1];
    for (int i = 0; i <= count; i++) {
      at[i] = away(box, way.apply(from + (to - from) * i / count));
    }
    double best = Math.min(at[0], at[count]);
    for (int i = 0; i <= count; i++) {
      boolean low = (i == 0 || at[i] <= at[i - 1]) && (i == count || at[i] <= at[i + 1]);
      if (low) {
        double a = from + (to - from) * Math.max(0, i - 1) / count;
        double b = from + (to - from) * Math.min(count, i + 1) / count;
        best = Math.min(best, goldenSection(box, a, b, way));
      }
    }
    return best;
  }

  private static double goldenSection(
      Box box, double from, double to, DoubleFunction<double[]> way) {
    double ratio = (Math.sqrt(5) - 1) / 2;
    double a = from;
    double b = to;
    double best = Double.POSITIVE_INFINITY;
    for (int i = 0; i < 60; i++) {
      double c = b - ratio * (b - a);
      double d = a + ratio * (b - a);
      double atC = away(box, way.apply(c));
      double atD = away(box, way.apply(d));
      best = Math.min(best, Math.min(atC, atD));
      if (atC <= atD) {
        b = d;
      } else {
        a = c;
      }
    }
    return best;
  }

  @Test
  void a_radius_below_zero_is_refused() {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> HALF_CIRCLE.clearance(box(0, 0, 0, 1, 1, 1), metres(-1)))
        .withMessageContaining("radius");
  }
}
