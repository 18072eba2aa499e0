package org.boleline.drop;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.boleline.Tolerances.EXACT;
import static org.boleline.Tolerances.SOLVED_CASE;
import static org.boleline.Tolerances.absolute;
import static org.boleline.Tolerances.relative;
import static org.boleline.drop.CatchNumbers.j;
import static org.boleline.drop.CatchNumbers.m;
import static org.boleline.drop.CatchNumbers.n;
import static org.boleline.units.Amounts.degrees;
import static org.boleline.units.Amounts.gigapascals;
import static org.boleline.units.Amounts.kilograms;
import static org.boleline.units.Amounts.kilogramsPerCubicMetre;
import static org.boleline.units.Amounts.kilonewtons;
import static org.boleline.units.Amounts.metres;
import static org.boleline.units.Amounts.newtons;
import static org.boleline.units.Amounts.seconds;

import java.util.List;
import java.util.concurrent.CancellationException;
import java.util.function.UnaryOperator;
import org.boleline.explain.Caution;
import org.boleline.explain.CautionCode;
import org.boleline.explain.PlanRefusedException;
import org.boleline.explain.Source;
import org.boleline.geometry.Heading;
import org.boleline.geometry.Turn;
import org.boleline.geometry.Vector;
import org.boleline.plan.Arrangement;
import org.boleline.plan.Contact;
import org.boleline.plan.DropSpec;
import org.boleline.plan.Piece;
import org.boleline.plan.Plan;
import org.boleline.plan.Tail;
import org.boleline.rope.FrictionRing;
import org.boleline.rope.Hardware;
import org.boleline.rope.Motion;
import org.boleline.rope.Rope;
import org.boleline.rope.Sheave;
import org.boleline.rope.StretchPoint;
import org.boleline.statics.StaticResult;
import org.boleline.statics.Statics;
import org.boleline.stem.Diameters;
import org.boleline.stem.Stem;
import org.boleline.stem.StemShape;
import org.boleline.units.Kind;
import org.boleline.units.Si;
import org.boleline.wood.WoodProperties;
import org.junit.jupiter.api.Test;

/**
 * Plans with drops against catches put together by hand. All plans are invented.
 *
 * <p>The spar is plumb, weightless and all but rigid, so that the rope runs where the plan puts it:
 * up to a ring at 10 m, 0.3 m off the axis, and straight back down.
 */
class DropsTest {
  private static final double G = 9.80665;
  private static final double WEIGHT = 100 * G;
  private static final Hardware RING = new FrictionRing(0.2);
  private static final Contact TOP =
      Contact.of("spar", metres(10), RING).withOffset(metres(0.3)).withSling(metres(0));
  private static final Tail FOOT = Tail.Point.of(Vector.ofSi(Kind.LENGTH, 0.3, 0, 0));
  private static final Tail.Device DEVICE =
      Tail.Device.of("spar", metres(1), 0.15, 1.5).withOffset(metres(0.3));
  private static final DropSpec LOCKED = DropSpec.of(metres(1), DropSpec.Locked.LOCKED);
  private static final List<StretchPoint> SLOW =
      List.of(StretchPoint.of(kilonewtons(5), 0.04), StretchPoint.of(kilonewtons(12), 0.07));
  private static final List<StretchPoint> FAST =
      List.of(StretchPoint.of(kilonewtons(8), 0.03), StretchPoint.of(kilonewtons(20), 0.06));

  private static Stem spar(double lengthMetres, double outerMetres, double modulusGigapascals) {
    return Stem.builder("spar")
        .shape(StemShape.Straight.of(Heading.of(degrees(0), degrees(0)), metres(lengthMetres)))
        .diameters(
            Diameters.tapering(metres(lengthMetres), metres(outerMetres), metres(outerMetres)))
        .wood(WoodProperties.of(gigapascals(modulusGigapascals), kilogramsPerCubicMetre(1000)))
        .ownWeight(false)
        .build();
  }

  private static Arrangement way(DropSpec drop, Tail tail, Contact... contacts) {
    return Arrangement.builder("way")
        .motion(Motion.LOWERING)
        .contacts(List.of(contacts))
        .tail(tail)
        .drop(drop)
        .build();
  }

  private static Plan plan(Arrangement way) {
    return Plan.builder()
        .stems(List.of(spar(12, 1, 9000)))
        .piece(Piece.of(kilograms(100)))
        .rope(Rope.UNSTATED.withStretch(SLOW))
        .arrangements(List.of(way))
        .build();
  }

  private static DropAnswer answer(Plan plan) {
    return Drops.analyse(Statics.analyse(plan)).drop("way").orElseThrow();
  }

  private static DropFound found(DropSpec drop, Tail tail, Contact... contacts) {
    return (DropFound) answer(plan(way(drop, tail, contacts)));
  }

  private static DropFound found(Rope rope) {
    return (DropFound) answer(plan(way(LOCKED, FOOT, TOP)).toBuilder().rope(rope).build());
  }

  /** The same catch put together by hand: 1 m, half a turn, 10 m. */
  private static RopeCatch byHand(Hardware hardware, List<StretchPoint> curve) {
    return byHand(hardware, curve, point -> point, 10);
  }

  private static RopeCatch byHand(
      Hardware hardware,
      List<StretchPoint> curve,
      UnaryOperator<CatchPoint> change,
      double secondLegMetres) {
    CatchPoint point = change.apply(CatchPoint.of(hardware, Turn.HALF));
    return RopeCatch.of(
        kilograms(100),
        metres(1),
        RopeStretch.forDrop(TabulatedStretch.of(curve), Source.PLAN),
        CatchPath.of(metres(1)).over(point, metres(secondLegMetres)));
  }

  private static void same(DropFound found, Caught expected) {
    assertThat(n(found.loads().loadLeg())).isCloseTo(n(expected.peak()), relative(SOLVED_CASE));
    assertThat(n(found.loads().points().get(0).magnitude()))
        .isCloseTo(n(expected.loads().points().get(0).magnitude()), relative(SOLVED_CASE));
    assertThat(found.overWeightRatio())
        .isCloseTo(expected.overWeightRatio(), relative(SOLVED_CASE));
    assertThat(m(found.stretch())).isCloseTo(m(expected.stretch()), relative(SOLVED_CASE));
    assertThat(m(found.clearanceNeeded()))
        .isCloseTo(m(expected.clearanceNeeded()), relative(SOLVED_CASE));
    assertThat(j(found.energy().orElseThrow().storedInRope()))
        .isCloseTo(j(expected.energy().storedInRope()), relative(SOLVED_CASE));
  }

  private static List<CautionCode> codes(DropAnswer answer) {
    return answer.cautions().stream().map(Caution::code).toList();
  }

  private static List<String> places(DropAnswer answer, CautionCode code) {
    return answer.cautions().stream().filter(c -> c.code() == code).map(Caution::place).toList();
  }

  @Test
  void a_plan_gives_what_a_catch_put_together_by_hand_gives() {
    DropFound found = found(LOCKED, FOOT, TOP);

    same(found, byHand(RING, SLOW).locked());
    assertThat(found.levelUsed()).isEqualTo(DropSpec.Level.GIVING_POINTS);
    assertThat(found.spec().level()).isEqualTo(DropSpec.Level.GIVING_POINTS);
    assertThat(found.knownBias()).contains("Not compared with measured drops");
    assertThat(found.contacts()).containsExactly(0);
    assertThat(found.legsFrom()).containsExactly("piece", "contacts/0");
    assertThat(found.legsTo()).containsExactly("contacts/0", "tail");
    assertThat(found.letRun()).isEmpty();
    assertThat(found.energy().orElseThrow().residualShare()).isLessThan(EXACT);
  }

  /** Both legs pull straight down 0.3 m off the axis; the fixed point at the foot is no stem. */
  @Test
  void the_base_moment_is_the_force_on_the_ring_times_its_arm() {
    DropFound found = found(LOCKED, FOOT, TOP);
    CatchLoads loads = found.loads();

    assertThat(found.baseMoments(loads)).hasSize(1);
    assertThat(Si.value(found.baseMoments(loads).get(0).magnitude(), Kind.MOMENT, "moment"))
        .isCloseTo(0.3 * (n(loads.legs().get(0)) + n(loads.legs().get(1))), relative(SOLVED_CASE));
  }

  /** What the rope does to itself between ring and device closes on the stem. */
  @Test
  void with_a_device_on_the_stem_the_load_leg_alone_turns_the_base() {
    DropFound found = found(LOCKED, DEVICE, TOP);

    assertThat(Si.value(found.baseMoments(found.loads()).get(0).magnitude(), Kind.MOMENT, "moment"))
        .isCloseTo(0.3 * n(found.loads().loadLeg()), relative(SOLVED_CASE));
    assertThat(found.legsTo()).containsExactly("contacts/0", "device");
    same(found, byHand(RING, SLOW, point -> point, 9).locked());
  }

  @Test
  void a_tail_straight_down_ends_at_the_lowest_base_and_says_so() {
    Plan plan = plan(way(LOCKED, Tail.Down.DOWN, TOP));
    DropResult result = Drops.analyse(Statics.analyse(plan));

    same((DropFound) result.drop("way").orElseThrow(), byHand(RING, SLOW).locked());
    assertThat(result.taken())
        .anySatisfy(
            datum -> {
              assertThat(datum.name()).isEqualTo("/arrangements/0/tail/endHeight");
              assertThat(datum.value()).isEqualTo("0 m");
              assertThat(datum.source().title()).contains("assumption", "no source");
            });
    assertThat(Drops.analyse(Statics.analyse(plan(way(LOCKED, FOOT, TOP)))).taken())
        .noneMatch(datum -> datum.name().equals("/arrangements/0/tail/endHeight"));
  }

  @Test
  void the_load_leg_is_as_long_as_the_fall_and_at_least_half_a_metre_unless_it_is_stated() {
    assertThat(m(LOCKED.loadLeg())).isEqualTo(1);
    assertThat(m(DropSpec.of(metres(0), DropSpec.Locked.LOCKED).loadLeg())).isEqualTo(0.5);
    assertThat(plan(way(LOCKED, FOOT, TOP)).taken())
        .anySatisfy(
            datum -> {
              assertThat(datum.name()).isEqualTo("/arrangements/0/drop/loadLeg");
              assertThat(datum.value()).isEqualTo("1 m");
              assertThat(datum.source().title()).contains("assumption", "no source");
            });
    DropSpec longer = LOCKED.withLoadLeg(metres(3));
    assertThat(plan(way(longer, FOOT, TOP)).taken())
        .noneMatch(datum -> datum.name().endsWith("/loadLeg"));
    assertThat(n(found(longer, FOOT, TOP).loads().loadLeg()))
        .isLessThan(n(found(LOCKED, FOOT, TOP).loads().loadLeg()));
  }

  @Test
  void the_curve_of_a_drop_goes_before_the_slow_one() {
    DropFound slow = found(Rope.UNSTATED.withStretch(SLOW));
    DropFound fast = found(Rope.UNSTATED.withStretch(SLOW).withDropStretch(FAST));

    same(fast, byHand(RING, FAST).locked());
    assertThat(codes(slow)).contains(CautionCode.SLOW_STRETCH_CURVE);
    assertThat(codes(fast)).doesNotContain(CautionCode.SLOW_STRETCH_CURVE);
    assertThat(places(slow, CautionCode.SLOW_STRETCH_CURVE)).containsExactly("/rope");
    assertThat(places(slow, CautionCode.CATCH_BY_ENERGY)).containsExactly("/arrangements/0/drop");
  }

  @Test
  void friction_in_a_catch_goes_before_the_slow_one() {
    Contact sheave = Contact.of("spar", metres(10), new Sheave(0.95)).withOffset(metres(0.3));
    DropFound slow = found(LOCKED, FOOT, sheave);
    DropFound stated = found(LOCKED, FOOT, sheave.withHardwareInCatch(RING));

    same(slow, byHand(new Sheave(0.95), SLOW).locked());
    same(stated, byHand(RING, SLOW).locked());
    assertThat(places(slow, CautionCode.CATCH_FRICTION_SLOW))
        .containsExactly("/arrangements/0/contacts/0/hardware");
    assertThat(codes(stated)).doesNotContain(CautionCode.CATCH_FRICTION_SLOW);
  }

  @Test
  void a_sling_that_stretches_is_a_spring_unless_the_points_are_to_be_rigid() {
    Contact springy = TOP.withSlingStiffness(Si.of(2e5, Kind.STIFFNESS));
    DropFound giving = found(LOCKED, FOOT, springy);
    DropFound rigid = found(LOCKED.withLevel(DropSpec.Level.RIGID_POINTS), FOOT, springy);
    DropFound inTime = found(LOCKED.withLevel(DropSpec.Level.IN_TIME), FOOT, springy);

    same(
        giving,
        byHand(RING, SLOW, point -> point.withStiffness(Si.of(2e5, Kind.STIFFNESS)), 10).locked());
    same(rigid, byHand(RING, SLOW).locked());
    assertThat(giving.levelUsed()).isEqualTo(DropSpec.Level.GIVING_POINTS);
    assertThat(rigid.levelUsed()).isEqualTo(DropSpec.Level.RIGID_POINTS);
    assertThat(inTime.spec().level()).isEqualTo(DropSpec.Level.IN_TIME);
    assertThat(inTime.levelUsed()).isEqualTo(DropSpec.Level.IN_TIME);
    assertThat(inTime.loads().loadLeg()).isEqualTo(giving.loads().loadLeg());
    assertThat(codes(giving)).contains(CautionCode.SPRINGS_WITHOUT_MASS);
  }

  /**
   * On a spar that hardly moves, the first pulse in time is the peak by energy, but for rope that
   * takes its stretch along (here counted where it is).
   */
  @Test
  void in_time_a_spar_that_hardly_moves_gives_the_catch_by_energy() {
    DropFound found = found(LOCKED.inTime(0.03, seconds(1)), FOOT, TOP);
    TimedCatch.Followed inTime = found.inTime().orElseThrow();

    double peak = n(byHand(RING, SLOW).withPassingRope(true).locked().peak());
    assertThat(n(inTime.loadLeg().firstPulse())).isCloseTo(peak, relative(1e-4));
    assertThat(inTime.locked()).isSameAs(inTime);
    assertThat(found.legsInTimeFrom()).containsExactly("piece", "contacts/0");
    assertThat(found.legsInTimeTo()).containsExactly("contacts/0", "tail");
    assertThat(codes(found)).contains(CautionCode.CATCH_IN_TIME, CautionCode.CATCH_BY_ENERGY);
  }

  @Test
  void in_time_a_run_has_the_locked_rope_beside_it() {
    DropSpec slips = DropSpec.of(metres(1), DropSpec.Slipping.of(newtons(1200)));
    DropFound found = found(slips.withLevel(DropSpec.Level.IN_TIME), FOOT, TOP);
    TimedCatch.Followed inTime = found.inTime().orElseThrow();

    double running = n(found.letRun().orElseThrow().loads().loadLeg());
    assertThat(n(inTime.loadLeg().firstPulse())).isCloseTo(running, relative(1e-4));
    assertThat(n(inTime.locked().loadLeg().firstPulse())).isGreaterThan(1.5 * running);
    assertThat(m(inTime.run())).isPositive();
    assertThat(m(inTime.locked().run())).isZero();
  }

  @Test
  void it_can_be_given_up_before_a_drop_and_in_the_middle_of_one() {
    StaticResult slow = Statics.analyse(plan(way(LOCKED.inTime(0.03, seconds(600)), FOOT, TOP)));
    for (int last : new int[] {0, 1, 5}) {
      int[] asked = {0};
      assertThatExceptionOfType(CancellationException.class)
          .isThrownBy(() -> Drops.analyse(slow, () -> asked[0]++ == last));
      assertThat(asked[0]).isEqualTo(last + 1);
    }
  }

  /** Source: deflection of a cantilever by a load at its end, L^3 / (3 E I) (textbook). */
  @Test
  void a_stem_gives_way_as_a_cantilever_does() {
    double modulus = 9e9;
    double secondMoment = Math.PI / 64 * Math.pow(0.3, 4);
    double give = Math.pow(10, 3) / (3 * modulus * secondMoment);
    Stem stem = spar(10, 0.3, 9);
    // A light piece, so that the slow load hardly bends the stem.
    Tail aside = Tail.Point.of(Vector.ofSi(Kind.LENGTH, -10, 0, 10));
    Plan plan =
        plan(way(LOCKED, aside, Contact.of("spar", metres(10), RING))).toBuilder()
            .stems(List.of(stem))
            .piece(Piece.of(kilograms(1)))
            .build();
    DropFound found = (DropFound) answer(plan);

    double[][] c = {{give, 0, 0}, {0, give, 0}, {0, 0, 0}};
    CatchPoint top =
        CatchPoint.between(
            RING, Vector.ofSi(Kind.LENGTH, 0, 0, -1), Vector.ofSi(Kind.LENGTH, -1, 0, 0));
    CatchPath path =
        CatchPath.of(metres(1))
            .over(top, metres(10))
            .withGive(PointGive.of(c, metres(1), newtons(1)));
    Caught expected =
        RopeCatch.of(
                kilograms(1),
                metres(1),
                RopeStretch.forDrop(TabulatedStretch.of(SLOW), Source.PLAN),
                path)
            .locked();
    assertThat(n(found.loads().loadLeg())).isCloseTo(n(expected.peak()), relative(1e-3));
    assertThat(m(found.stretch())).isCloseTo(m(expected.stretch()), relative(1e-3));
    assertThat(found.levelUsed()).isEqualTo(DropSpec.Level.GIVING_POINTS);
  }

  @Test
  void a_slack_sling_is_passed_by() {
    Contact slack =
        Contact.of("spar", metres(5), RING).withOffset(metres(0.3)).withSling(metres(0.5));
    DropFound found = found(LOCKED, FOOT, TOP, slack);

    assertThat(found.contacts()).containsExactly(0);
    assertThat(found.legsTo()).containsExactly("contacts/0", "tail");
    same(found, byHand(RING, SLOW).locked());
  }

  @Test
  void cautions_of_points_stand_at_the_contacts_of_the_plan() {
    Contact slack =
        Contact.of("spar", metres(11), RING).withOffset(metres(0.3)).withSling(metres(1.5));
    Contact rough = Contact.of("spar", metres(10), new FrictionRing(0.9)).withOffset(metres(0.3));
    DropFound found = found(LOCKED, FOOT, slack, rough);

    assertThat(found.contacts()).doesNotContain(0);
    assertThat(places(found, CautionCode.OUTSIDE_RANGE))
        .containsExactly("/arrangements/0/contacts/1/hardware");
  }

  /** Closed form: m (g + v^2 / (2 s)) with v^2 = 2 g h is W (1 + h / s). */
  @Test
  void a_constant_force_needs_no_stretch_and_is_shared_by_friction_alone() {
    DropSpec stop = LOCKED.withConstantForceOver(metres(0.4));
    Plan plan = plan(way(stop, FOOT, TOP)).toBuilder().rope(Rope.UNSTATED).build();
    DropFound found = (DropFound) answer(plan);
    double force = WEIGHT * (1 + 1 / 0.4);

    assertThat(n(found.loads().loadLeg())).isCloseTo(force, relative(EXACT));
    assertThat(n(found.loads().legs().get(1)))
        .isCloseTo(force / Math.exp(0.2 * Math.PI), relative(SOLVED_CASE));
    assertThat(found.overWeightRatio()).isCloseTo(3.5, relative(EXACT));
    assertThat(m(found.clearanceNeeded())).isCloseTo(1.4, relative(EXACT));
    assertThat(found.levelUsed()).isEqualTo(DropSpec.Level.CONSTANT_FORCE);
    assertThat(found.knownBias()).contains("least that stops");
    assertThat(found.rope()).isEmpty();
    assertThat(found.energy()).isEmpty();
    assertThat(found.running(metres(1))).isEmpty();
  }

  @Test
  void a_run_stands_beside_the_locked_rope() {
    DropSpec slips = DropSpec.of(metres(1), DropSpec.Slipping.of(newtons(1200)));
    DropFound found = found(slips, FOOT, TOP);
    LetRun expected = byHand(RING, SLOW).letRun(DropSpec.Slipping.of(newtons(1200)));

    same(found, byHand(RING, SLOW).locked());
    LetRun.Stopped run = (LetRun.Stopped) found.letRun().orElseThrow();
    assertThat(m(run.run())).isCloseTo(m(((LetRun.Stopped) expected).run()), relative(SOLVED_CASE));
    assertThat(n(run.loads().loadLeg())).isLessThan(n(found.loads().loadLeg()));
    assertThat(places(found, CautionCode.LET_RUN_MAY_FAIL)).containsExactly("/arrangements/0/drop");
    assertThat(codes(found)).doesNotHaveDuplicates();
  }

  @Test
  void that_it_never_stops_is_an_answer() {
    DropFound found = found(DropSpec.of(metres(1), DropSpec.Slipping.of(newtons(100))), FOOT, TOP);

    assertThat(found.letRun().orElseThrow()).isInstanceOf(LetRun.NeverStops.class);
    assertThat(n(found.loads().loadLeg())).isGreaterThan(WEIGHT);
  }

  /** Euler-Eytelwein: over 1.5 wraps the device holds exp(mu 3 pi) times the hand. */
  @Test
  void a_hand_holds_behind_the_wraps_of_the_device_with_its_friction_in_a_catch() {
    DropSpec hand = DropSpec.of(metres(1), DropSpec.ByHand.of(newtons(200), seconds(0.2)));
    DropFound slow = found(hand, DEVICE, TOP);
    DropFound stated = found(hand, DEVICE.withFrictionInCatch(0.25), TOP);

    assertThat(n(slow.letRun().orElseThrow().slipTension()))
        .isCloseTo(200 * Math.exp(0.15 * 3 * Math.PI), relative(EXACT));
    assertThat(n(stated.letRun().orElseThrow().slipTension()))
        .isCloseTo(200 * Math.exp(0.25 * 3 * Math.PI), relative(EXACT));
    assertThat(places(slow, CautionCode.CATCH_FRICTION_SLOW))
        .contains("/arrangements/0/tail/device/friction");
    assertThat(places(stated, CautionCode.CATCH_FRICTION_SLOW))
        .containsExactly("/arrangements/0/contacts/0/hardware");
  }

  @Test
  void a_hand_needs_a_device() {
    DropSpec hand = DropSpec.of(metres(1), DropSpec.ByHand.of(newtons(200), seconds(0.2)));

    assertThatExceptionOfType(PlanRefusedException.class)
        .isThrownBy(() -> way(hand, FOOT, TOP))
        .withMessageContaining("/drop/device");
  }

  /** While it slips, T - W does the work that is left: (T - W) s = W (h + x) - A(T). */
  @Test
  void a_run_of_given_length_is_just_so_long() {
    DropFound found = found(LOCKED, FOOT, TOP);
    double before = n(found.loads().loadLeg());
    for (double asked : new double[] {0.01, 1, 2, 3, 50}) {
      LetRun.Stopped run = found.running(metres(asked)).orElseThrow();
      double tension = n(run.loads().loadLeg());
      double second = tension / Math.exp(0.2 * Math.PI);
      StretchCurve curve = TabulatedStretch.of(SLOW);
      double work =
          j(curve.energy(metres(1), newtons(tension)))
              + Math.exp(0.2 * Math.PI) * j(curve.energy(metres(10), newtons(second)));
      double stretch =
          m(curve.stretch(metres(1), newtons(tension)))
              + m(curve.stretch(metres(10), newtons(second)));

      assertThat(m(run.run())).isCloseTo(asked, relative(EXACT));
      assertThat((tension - WEIGHT) * asked + work)
          .isCloseTo(WEIGHT * (1 + stretch), relative(SOLVED_CASE));
      assertThat(m(run.clearanceNeeded())).isCloseTo(1 + stretch + asked, relative(SOLVED_CASE));
      assertThat(tension).isLessThan(before).isGreaterThan(WEIGHT);
      before = tension;
    }
  }

  @Test
  void no_run_is_the_locked_rope() {
    DropFound found = found(LOCKED, FOOT, TOP);
    LetRun.Stopped run = found.running(metres(0)).orElseThrow();

    assertThat(n(run.loads().loadLeg())).isCloseTo(n(found.loads().loadLeg()), relative(EXACT));
    assertThat(m(run.run())).isCloseTo(0, absolute(EXACT));
  }

  @Test
  void gravity_of_the_plan_counts() {
    DropFound found =
        (DropFound)
            answer(
                plan(way(LOCKED, FOOT, TOP)).toBuilder()
                    .gravity(Si.of(5, Kind.ACCELERATION))
                    .build());

    same(found, byHand(RING, SLOW).withGravity(Si.of(5, Kind.ACCELERATION)).locked());
  }

  @Test
  void no_stretch_and_no_stable_state_are_told_and_not_refused() {
    DropAnswer noStretch =
        answer(plan(way(LOCKED, FOOT, TOP)).toBuilder().rope(Rope.UNSTATED).build());
    DropAnswer unstable =
        answer(
            plan(way(LOCKED, Tail.Down.DOWN, Contact.of("spar", metres(12), RING))).toBuilder()
                .stems(List.of(spar(12, 0.02, 9)))
                .build());

    for (DropAnswer answer : List.of(noStretch, unstable)) {
      assertThat(answer).isInstanceOf(DropNotAnalysed.class);
      assertThat(answer.id()).isEqualTo("way");
      assertThat(places(answer, CautionCode.DROP_NOT_ANALYSED))
          .containsExactly("/arrangements/0/drop");
    }
    assertThat(noStretch.cautions().get(0).sentence()).contains("no stretch of the rope");
    assertThat(unstable.cautions().get(0).sentence()).contains("slow state");
  }

  @Test
  void drops_that_were_worked_out_are_not_called_left_out() {
    Plan plan = plan(way(LOCKED, FOOT, TOP));
    DropResult result = Drops.analyse(Statics.analyse(plan));

    assertThat(result.statics().cautions())
        .extracting(Caution::code)
        .contains(CautionCode.DROP_NOT_ANALYSED);
    assertThat(result.cautions())
        .extracting(Caution::code)
        .contains(CautionCode.SLOW_AND_STEADY)
        .doesNotContain(CautionCode.DROP_NOT_ANALYSED);
    assertThat(result.drops()).hasSize(1);
    assertThat(result.drop("another")).isEmpty();
  }

  @Test
  void a_way_that_is_too_long_is_told() {
    Tail far = Tail.Point.of(Vector.ofSi(Kind.LENGTH, 5000, 0, 0));
    DropAnswer answer = answer(plan(way(LOCKED, far, TOP)));

    assertThat(answer).isInstanceOf(DropNotAnalysed.class);
    assertThat(answer.cautions().get(0).sentence()).contains("goes beyond what is computed");
  }
}
