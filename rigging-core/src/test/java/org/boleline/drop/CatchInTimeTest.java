package org.boleline.drop;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.boleline.Tolerances.CATCH_IN_TIME;
import static org.boleline.Tolerances.SIX_FIGURES;
import static org.boleline.Tolerances.absolute;
import static org.boleline.units.Amounts.degrees;
import static org.boleline.units.Amounts.kilograms;
import static org.boleline.units.Amounts.metres;
import static org.boleline.units.Amounts.newtons;
import static org.boleline.units.Amounts.radians;
import static org.boleline.units.Amounts.seconds;

import java.util.ArrayList;
import java.util.List;
import javax.measure.quantity.Length;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.boleline.Tolerances;
import org.boleline.explain.CautionCode;
import org.boleline.explain.PlanRefusedException;
import org.boleline.explain.Source;
import org.boleline.geometry.Heading;
import org.boleline.geometry.Turn;
import org.boleline.geometry.Vector;
import org.boleline.plan.DropSpec;
import org.boleline.rope.FrictionRing;
import org.boleline.rope.Hardware;
import org.boleline.rope.Ideal;
import org.boleline.units.Kind;
import org.boleline.units.Si;
import org.junit.jupiter.api.Test;

class CatchInTimeTest {
  private static final double G = 9.80665;
  private static final Vector<Length> TOP = at(0, 0, 20);

  private static Vector<Length> at(double x, double y, double z) {
    return Vector.ofSi(Kind.LENGTH, x, y, z);
  }

  private static RopeStretch linear(double modulus) {
    return RopeStretch.forDrop(LinearStretch.of(newtons(modulus)), Source.PLAN);
  }

  /** A piece under the top, that falls h until a load leg of some length is taut. */
  private static FallingPiece under(Vector<Length> top, double mass, double h, double leg) {
    double[] p = top.in(Kind.LENGTH);
    return FallingPiece.point(kilograms(mass), at(p[0], p[1], p[2] - leg + h));
  }

  private static TimedCatch.Followed followed(CatchInTime.Builder builder) {
    TimedCatch found = builder.build().follow();
    assertThat(found).isInstanceOf(TimedCatch.Followed.class);
    TimedCatch.Followed caught = (TimedCatch.Followed) found;
    assertThat(caught.energy().residualShare()).isLessThan(Tolerances.ENERGY_ACCOUNT);
    return caught;
  }

  private static double first(TimedPeak<javax.measure.quantity.Force> peak) {
    return Si.value(peak.firstPulse(), Kind.FORCE, "peak");
  }

  private static double overall(TimedPeak<javax.measure.quantity.Force> peak) {
    return Si.value(peak.overall(), Kind.FORCE, "peak");
  }

  private static RopeLine over(List<? extends Hardware> hardware, double... heights) {
    List<Vector<Length>> points = new ArrayList<>();
    for (int j = 0; j < heights.length - 1; j++) {
      points.add(at(0.01 * j * j, 0.02 * (j % 2), heights[j]));
    }
    return RopeLine.of(points, hardware, at(0.5, 0, heights[heights.length - 1]));
  }

  /** Source: a solution with independent code, printed to six figures. */
  @Test
  void it_finds_the_printed_catch_over_a_ring_with_a_slipping_device() {
    RopeLine line = RopeLine.of(List.of(TOP), List.of(new FrictionRing(0.1)), at(1e-7, 0, 7));
    TimedCatch.Followed caught =
        followed(
            CatchInTime.builder(under(TOP, 200, 2, 2), linear(250e3), line, metres(2))
                .countingRopeWhereItLay()
                .slipping(DropSpec.Slipping.of(newtons(3000))));
    assertThat(first(caught.loadLeg())).isCloseTo(4107.32, absolute(4107.32 * SIX_FIGURES));
    assertThat(first(caught.points().get(0))).isCloseTo(7107.32, absolute(7107.32 * SIX_FIGURES));
    assertThat(Si.value(caught.run(), Kind.LENGTH, "run")).isCloseTo(1.81977, absolute(1e-5));
    assertThat(Si.value(caught.energy().takenAtDeviceAtMost(), Kind.ENERGY, "heat"))
        .isCloseTo(5459.3, absolute(0.1));
    assertThat(caught.ropeStillRuns()).isFalse();
    assertThat(first(caught.locked().loadLeg())).isGreaterThan(10_000);
    assertThat(caught.cautions())
        .anyMatch(caution -> caution.code() == CautionCode.LET_RUN_MAY_FAIL)
        .anyMatch(caution -> caution.code() == CautionCode.CATCH_IN_TIME);
  }

  /** Points that do not move: both are exact for the same model, rope counted either way. */
  @Property(tries = 40)
  void with_points_that_do_not_move_it_is_the_catch_by_energy(
      @ForAll @DoubleRange(min = 20, max = 600) double mass,
      @ForAll @DoubleRange(min = 0, max = 1) double fallShare,
      @ForAll @DoubleRange(min = 0.5, max = 6) double leg,
      @ForAll @DoubleRange(min = 5e4, max = 2e6) double modulus,
      @ForAll @DoubleRange(min = 0, max = 0.4) double friction,
      @ForAll @IntRange(min = 1, max = 5) int points,
      @ForAll boolean whereItIs) {
    double[] heights = new double[points + 1];
    List<Hardware> rings = new ArrayList<>();
    for (int j = 0; j <= points; j++) {
      heights[j] = 20 * (1 - (double) j / (points + 1));
      if (j < points) {
        rings.add(friction == 0 ? Ideal.INSTANCE : new FrictionRing(friction));
      }
    }
    RopeLine line = over(rings, heights);
    double h = fallShare * leg * 0.99;
    RopeStretch rope = linear(modulus);
    CatchInTime.Builder builder =
        CatchInTime.builder(under(TOP, mass, h, leg), rope, line, metres(leg)).over(seconds(4));
    if (!whereItIs) {
      builder.countingRopeWhereItLay();
    }
    TimedCatch.Followed caught = followed(builder);
    Caught energy =
        RopeCatch.of(kilograms(mass), metres(h), rope, line.path(metres(leg)))
            .withPassingRope(whereItIs)
            .locked();
    double peak = Si.value(energy.peak(), Kind.FORCE, "peak");
    assertThat(first(caught.loadLeg())).isCloseTo(peak, absolute(CATCH_IN_TIME * peak));
    for (int j = 0; j < points; j++) {
      double force = Si.value(energy.loads().points().get(j).magnitude(), Kind.FORCE, "force");
      assertThat(first(caught.points().get(j))).isCloseTo(force, absolute(CATCH_IN_TIME * peak));
    }
  }

  /** Source: any text: a load that is let go on a taut linear rope pulls with twice its weight. */
  @Test
  void without_a_fall_the_peak_is_twice_the_weight() {
    RopeLine line = over(List.of(Ideal.INSTANCE), 20, 0);
    TimedCatch.Followed caught =
        followed(
            CatchInTime.builder(under(TOP, 100, 0, 3), linear(3e5), line, metres(3))
                .countingRopeWhereItLay());
    assertThat(overall(caught.loadLeg())).isCloseTo(200 * G, absolute(CATCH_IN_TIME * 200 * G));
  }

  @Property(tries = 10)
  void lengths_and_fall_doubled_leave_the_peak(
      @ForAll @DoubleRange(min = 50, max = 300) double mass,
      @ForAll @DoubleRange(min = 0.2, max = 2) double h,
      @ForAll @DoubleRange(min = 0, max = 0.3) double friction) {
    double[] peaks = new double[2];
    for (int twice = 0; twice < 2; twice++) {
      double size = 1 + twice;
      RopeLine line =
          RopeLine.of(
              List.of(at(0, 0, 10 * size), at(0.3 * size, 0.1 * size, 6 * size)),
              List.of(new FrictionRing(friction), new FrictionRing(friction)),
              at(0, 0, size));
      Vector<Length> top = at(0, 0, 10 * size);
      peaks[twice] =
          first(
              followed(
                      CatchInTime.builder(
                              under(top, mass, h * size, 2.5 * size),
                              linear(2e5),
                              line,
                              metres(2.5 * size))
                          .over(seconds(2)))
                  .loadLeg());
    }
    assertThat(peaks[1]).isCloseTo(peaks[0], absolute(CATCH_IN_TIME * peaks[0]));
  }

  @Property(tries = 10)
  void another_frame_sees_the_same_forces(
      @ForAll @DoubleRange(min = -3, max = 3) double angle,
      @ForAll @DoubleRange(min = 0, max = 0.3) double friction) {
    double[][] seen = new double[2][];
    for (int k = 0; k < 2; k++) {
      double a = k * angle;
      Heading leaning = Heading.of(radians(0.7), radians(0.4 + a));
      FallingPiece log =
          FallingPiece.log(
                  kilograms(120), metres(2), metres(0.3), turned(a, 0.6, 0.3, 8.4), leaning)
              .tiedAt(metres(0.7));
      RopeLine line =
          RopeLine.of(
              List.of(turned(a, 0, 0, 10), turned(a, 0.3, 0.2, 6)),
              List.of(new FrictionRing(friction), new FrictionRing(friction)),
              turned(a, -1, 0.5, 1));
      TimedCatch.Followed caught =
          followed(CatchInTime.builder(log, linear(2e5), line, metres(2.5)).over(seconds(1.5)));
      seen[k] = caught.legs().stream().mapToDouble(CatchInTimeTest::overall).toArray();
    }
    for (int i = 0; i < seen[0].length; i++) {
      assertThat(seen[1][i]).isCloseTo(seen[0][i], absolute(CATCH_IN_TIME * seen[0][0]));
    }
  }

  private static Vector<Length> turned(double a, double x, double y, double z) {
    return at(x * Math.cos(a) - y * Math.sin(a), x * Math.sin(a) + y * Math.cos(a), z);
  }

  @Test
  void a_device_that_slips_at_any_tension_is_locked() {
    RopeLine line = over(List.of(new FrictionRing(0.2)), 20, 1);
    CatchInTime.Builder builder =
        CatchInTime.builder(under(TOP, 100, 1, 2), linear(2e5), line, metres(2))
            .slipping(DropSpec.Slipping.of(newtons(1e8)));
    TimedCatch.Followed caught = followed(builder);
    assertThat(overall(caught.loadLeg())).isEqualTo(overall(caught.locked().loadLeg()));
    assertThat(Si.value(caught.run(), Kind.LENGTH, "run")).isZero();
  }

  @Test
  void a_device_that_slips_below_the_weight_never_stops_it() {
    RopeLine line = over(List.of(new FrictionRing(0.2)), 20, 1);
    TimedCatch.Followed caught =
        followed(
            CatchInTime.builder(under(TOP, 100, 1, 2), linear(2e5), line, metres(2))
                .slipping(DropSpec.Slipping.of(newtons(200)))
                .over(seconds(1)));
    assertThat(caught.ropeStillRuns()).isTrue();
    assertThat(caught.locked().ropeStillRuns()).isFalse();
  }

  /** Free fall during the delay, then as a device that slips: the catch by energy says the same. */
  @Test
  void a_hand_that_holds_late_is_the_catch_by_energy() {
    RopeLine line = RopeLine.of(List.of(TOP), List.of(new FrictionRing(0.1)), at(1e-7, 0, 7));
    DropSpec.ByHand hand = DropSpec.ByHand.of(newtons(150), seconds(0.2));
    FrictionRing post = new FrictionRing(0.2);
    TimedCatch.Followed caught =
        followed(
            CatchInTime.builder(under(TOP, 200, 1, 2), linear(250e3), line, metres(2))
                .byHand(hand, post, Turn.ofWraps(2.5)));
    LetRun energy =
        RopeCatch.of(kilograms(200), metres(1), linear(250e3), line.path(metres(2)))
            .withPassingRope(true)
            .letRun(hand, post, Turn.ofWraps(2.5));
    double tension = Si.value(energy.loads().loadLeg(), Kind.FORCE, "tension");
    assertThat(first(caught.loadLeg())).isCloseTo(tension, absolute(CATCH_IN_TIME * tension));
    assertThat(energy).isInstanceOf(LetRun.Stopped.class);
    // Runs are of rope without stretch here, and at the load there: compare the way down.
    double down = Si.value(((LetRun.Stopped) energy).clearanceNeeded(), Kind.LENGTH, "clearance");
    assertThat(Si.value(caught.depth().firstPulse(), Kind.LENGTH, "depth"))
        .isCloseTo(down, absolute(CATCH_IN_TIME * down));
  }

  /** Source: T = m g (3 cos a - 2 cos a0), physics texts; with a rope so stiff that it counts. */
  @Test
  void a_swing_pulls_as_in_the_textbook() {
    double a0 = Math.PI / 3;
    RopeLine line = over(List.of(Ideal.INSTANCE), 20, 19);
    FallingPiece piece =
        FallingPiece.point(kilograms(100), at(4 * Math.sin(a0), 0, 20 - 4 * Math.cos(a0)));
    TimedCatch.Followed caught =
        followed(
            CatchInTime.builder(piece, linear(1e8), line, metres(4))
                .countingRopeWhereItLay()
                .over(seconds(1.5))
                .sampled(seconds(0.001)));
    // The stiff rope rings, 80 times a second, about the tension of the swing.
    double[] tension = caught.history().tensions(0, Kind.FORCE);
    double[][] place = caught.history().piece(Kind.LENGTH);
    int lowest = 0;
    for (int i = 0; i < place.length; i++) {
      lowest = place[i][2] < place[lowest][2] ? i : lowest;
    }
    double mean = 0;
    for (int i = lowest - 62; i <= lowest + 63; i++) {
      mean += tension[i] / 126;
    }
    assertThat(mean).isCloseTo(2 * 100 * G, absolute(100 * G * 0.01));
  }

  /** A log falls over its hinge: its speed is that of the turning body, its axis turns with it. */
  @Test
  void a_log_leaves_its_hinge_as_a_turning_body_does() {
    double length = 2;
    double radius = 0.15;
    Heading upright = Heading.of(degrees(1), degrees(90));
    Vector<Length> hinge = at(0, 0, 5);
    Vector<Length> middle = at(0, Math.sin(Math.toRadians(1)), 5 + Math.cos(Math.toRadians(1)));
    FallingPiece log =
        FallingPiece.log(kilograms(80), metres(length), metres(2 * radius), middle, upright)
            .tiedAt(metres(-0.5))
            .overHinge(hinge, degrees(89), Si.of(G, Kind.ACCELERATION));
    double down = Math.cos(Math.toRadians(1));
    double inertia = 80 * (3 * radius * radius + length * length) / 12 + 80;
    double rate = Math.sqrt(2 * 80 * G * down / inertia);
    assertThat(log.velocity().in(Kind.SPEED)[2]).isCloseTo(-rate, absolute(1e-12));
    assertThat(log.centre().in(Kind.LENGTH))
        .usingComparatorWithPrecision(1e-12)
        .containsExactly(0.0, 1.0, 5.0);
    assertThat(log.tiePlace()).usingComparatorWithPrecision(1e-12).containsExactly(0.0, 0.5, 5.0);
    assertThat(log.spin()[2]).isCloseTo(0, absolute(1e-12));
    // And it goes on turning at that rate while nothing pulls.
    RopeLine line = over(List.of(Ideal.INSTANCE), 20, 0);
    TimedCatch.Followed flight =
        followed(
            CatchInTime.builder(log, linear(1e5), line, metres(100))
                .over(seconds(0.3))
                .sampled(seconds(0.1)));
    double[] lean = flight.history().lean(Kind.ANGLE);
    assertThat(lean[3]).isCloseTo(Math.PI / 2 + 0.3 * rate, absolute(1e-7));
    assertThat(flight.tautAt()).isEmpty();
  }

  @Test
  void a_hinge_over_which_nothing_comes_down_is_refused() {
    FallingPiece log =
        FallingPiece.log(
            kilograms(80), metres(2), metres(0.3), at(0, 0, 6), Heading.of(degrees(0), degrees(0)));
    assertThatThrownBy(() -> log.overHinge(at(0, 0, 5), degrees(60), Si.of(G, Kind.ACCELERATION)))
        .isInstanceOf(PlanRefusedException.class)
        .hasMessageContaining("hinge");
  }

  @Test
  void a_load_leg_that_does_not_reach_is_refused_with_all_else() {
    RopeLine line = over(List.of(Ideal.INSTANCE), 20, 0);
    assertThatThrownBy(
            () ->
                CatchInTime.builder(under(TOP, 100, -1, 2), linear(1e5), line, metres(2))
                    .over(seconds(-1))
                    .losing(2, 0.01)
                    .build())
        .isInstanceOf(PlanRefusedException.class)
        .hasMessageContaining("loadLeg")
        .hasMessageContaining("duration")
        .hasMessageContaining("fullLossRatio");
  }

  /** Unloading below the curve takes energy from the rebound and leaves the first peak alone. */
  @Test
  void losses_in_the_rope_come_after_the_first_peak() {
    RopeLine line = over(List.of(Ideal.INSTANCE), 20, 0);
    CatchInTime.Builder plain =
        CatchInTime.builder(under(TOP, 100, 1, 2), linear(2e5), line, metres(2));
    CatchInTime.Builder losing =
        CatchInTime.builder(under(TOP, 100, 1, 2), linear(2e5), line, metres(2))
            .losing(0.4, 0.005)
            .sampled(seconds(0.001));
    TimedCatch.Followed lossy = followed(losing);
    assertThat(first(lossy.loadLeg())).isCloseTo(first(followed(plain).loadLeg()), absolute(1e-3));
    assertThat(Si.value(lossy.energy().lostInRope(), Kind.ENERGY, "loss")).isGreaterThan(100);
    double[] tension = lossy.history().tensions(0, Kind.FORCE);
    double[] times = lossy.history().times(Kind.TIME);
    double taut = Si.value(lossy.tautAt().orElseThrow(), Kind.TIME, "taut");
    for (int i = 1; i < times.length; i++) {
      if (times[i] < taut + 0.02) {
        assertThat(tension[i] - tension[i - 1])
            .as("no jump where the rope takes hold")
            .isLessThan(700);
      }
    }
  }
}
