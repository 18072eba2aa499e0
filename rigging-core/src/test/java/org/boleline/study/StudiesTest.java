package org.boleline.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;
import static org.boleline.Tolerances.EXACT;
import static org.boleline.Tolerances.ROUNDING;
import static org.boleline.Tolerances.SOLVED_CASE;
import static org.boleline.Tolerances.relative;
import static org.boleline.units.Amounts.kilograms;
import static org.boleline.units.Amounts.kilogramsPerCubicMetre;
import static org.boleline.units.Amounts.metres;
import static org.boleline.units.Amounts.newtons;
import static org.boleline.units.Amounts.radians;

import java.util.List;
import java.util.Map;
import javax.measure.quantity.Length;
import org.boleline.drop.DropFound;
import org.boleline.drop.LetRun;
import org.boleline.geometry.Heading;
import org.boleline.geometry.Vector;
import org.boleline.limits.Checks;
import org.boleline.plan.Arrangement;
import org.boleline.plan.Contact;
import org.boleline.plan.Piece;
import org.boleline.plan.Plan;
import org.boleline.plan.Tail;
import org.boleline.rope.Ideal;
import org.boleline.rope.Motion;
import org.boleline.statics.Statics;
import org.boleline.stem.PointMass;
import org.boleline.stem.Stem;
import org.boleline.stem.StemShape;
import org.boleline.units.Kind;
import org.boleline.wood.Log;
import org.junit.jupiter.api.Test;

/** Closed forms and laws of the studies; all plans are invented. */
class StudiesTest {
  private static final double NAN = Double.NaN;

  private static Figure kg(double kilograms) {
    return Figure.of(kilograms(kilograms), Kind.MASS);
  }

  private static Figure n(double newtons) {
    return Figure.of(newtons(newtons), Kind.FORCE);
  }

  private static final Figure HALF = Figure.of(Math.PI, Kind.ANGLE);

  private static CutPlan cutPlan(List<Double> lengths, Reading reading) {
    return new CutPlan(
        Plans.RIGID,
        lengths.stream().map(length -> Figure.of(length, Kind.LENGTH)).toList(),
        Figure.of(0.3, Kind.LENGTH),
        Figure.of(0.2, Kind.LENGTH),
        reading);
  }

  // What changed it

  @Test
  void two_changes_share_their_interplay_in_halves() {
    // by hand: v = 10, a alone 13, b alone 15, both 24: a = (3 + 9) / 2, b = (5 + 11) / 2
    assertThat(WhatChanged.Shapley.shares(2, new double[] {10, 13, 15, 24}))
        .isEqualTo(Map.of(1, 6.0, 2, 8.0));
  }

  @Test
  void three_changes_share_by_their_six_orders() {
    // by hand: worth 1 once a and one of b, c are there. In the 6 orders a completes it 4 times; b
    // and c each do once, when a comes first and the other last
    double[] worth = {0, 0, 0, 1, 0, 1, 0, 1};
    Map<Integer, Double> shares = WhatChanged.Shapley.shares(3, worth);
    assertThat(shares.get(1)).isCloseTo(2.0 / 3, relative(ROUNDING));
    assertThat(shares.get(2)).isCloseTo(1.0 / 6, relative(ROUNDING));
    assertThat(shares.get(4)).isCloseTo(1.0 / 6, relative(ROUNDING));
  }

  @Test
  void changes_whose_mixture_has_no_number_are_taken_together() {
    // b without a has none: so a and b go together, and c stands alone
    double[] values = {1, 2, NAN, 4, 5, 6, NAN, 9};
    Map<Integer, Double> shares = WhatChanged.Shapley.shares(3, values);
    assertThat(shares.keySet()).containsExactly(0b011, 0b100);
    // by hand: (4 - 1 + 9 - 5) / 2 and (5 - 1 + 9 - 4) / 2
    assertThat(shares.values()).containsExactly(3.5, 4.5);
  }

  @Test
  void the_shares_between_two_arrangements_add_up_to_the_difference() {
    WhatChanged.Answer answer =
        new WhatChanged(
                "away",
                "two points",
                List.of(Reading.baseMoment(0), Reading.tail(), Reading.contactForce(0)))
            .answer(Plans.bending());
    assertThat(answer.changes()).containsExactly("place of tail", "motion", "number of points");
    for (WhatChanged.Row row : answer.rows()) {
      double sum = row.parts().stream().mapToDouble(p -> p.share().si()).sum();
      assertThat(row.parts()).hasSize(3);
      assertThat(sum).isCloseTo(row.difference().si(), relative(EXACT));
      assertThat(row.before()).isEqualTo(row.reading().value(Plans.bending(), "away"));
      assertThat(row.after()).isEqualTo(row.reading().value(Plans.bending(), "two points"));
    }
  }

  @Test
  void a_heavier_piece_alone_explains_all_of_the_difference() {
    Plan heavy = Input.pieceMass().with(Plans.bending(), 150);
    WhatChanged.Answer answer =
        new WhatChanged("away", "away", List.of(Reading.baseMoment(0)))
            .answer(Plans.bending(), heavy);
    assertThat(answer.changes()).containsExactly("piece");
    WhatChanged.Row row = answer.rows().get(0);
    assertThat(row.parts().get(0).share()).isEqualTo(row.difference().figure().orElseThrow());
  }

  @Test
  void nothing_changed_has_no_shares() {
    WhatChanged.Answer answer =
        new WhatChanged("away", "away", List.of(Reading.tail())).answer(Plans.bending());
    assertThat(answer.changes()).isEmpty();
    assertThat(answer.rows().get(0).difference().si()).isZero();
    assertThat(answer.rows().get(0).parts()).isEmpty();
  }

  // Sweep

  @Test
  void the_load_leg_rises_with_gravity_for_each_kilogram() {
    Sweep.Answer answer =
        new Sweep(Plans.RIGID, Input.pieceMass(), kg(50), kg(250), 4, List.of(Reading.loadLeg()))
            .answer(Plans.rigid());
    assertThat(answer.points()).hasSize(5);
    for (Sweep.Point point : answer.points()) {
      Sweep.Row row = point.rows().get(0);
      // W = m g: slope g, elasticity 1
      assertThat(row.value().si()).isCloseTo(Plans.G * point.input().si(), relative(SOLVED_CASE));
      assertThat(row.slope().si()).isCloseTo(Plans.G, relative(SOLVED_CASE));
      assertThat(row.elasticity().si()).isCloseTo(1, relative(SOLVED_CASE));
    }
  }

  @Test
  void friction_moves_the_tail_as_the_exponential_does() {
    Sweep.Answer answer =
        new Sweep(
                Plans.RIGID,
                Input.ringFriction(0, 0),
                Figure.ofRatio(0.1),
                Figure.ofRatio(0.3),
                2,
                List.of(Reading.tail()))
            .answer(Plans.rigid());
    for (Sweep.Point point : answer.points()) {
      double friction = point.input().si();
      double tail = 100 * Plans.G * Math.exp(-friction * Math.PI);
      Sweep.Row row = point.rows().get(0);
      // half a turn: T = W exp(-mu pi), so dT/dmu = -pi T and the elasticity is -pi mu; the
      // difference over 1e-3 of the range is off by its square
      assertThat(row.value().si()).isCloseTo(tail, relative(SOLVED_CASE));
      assertThat(row.slope().si()).isCloseTo(-Math.PI * tail, relative(SOLVED_CASE));
      assertThat(row.elasticity().si()).isCloseTo(-Math.PI * friction, relative(SOLVED_CASE));
    }
  }

  @Test
  void past_the_end_of_the_stem_there_is_no_slope() {
    Sweep.Answer answer =
        new Sweep(
                "away",
                Input.station(0, 0),
                Figure.of(metres(10), Kind.LENGTH),
                Figure.of(metres(12), Kind.LENGTH),
                1,
                List.of(Reading.baseMoment(0)))
            .answer(Plans.bending());
    Sweep.Row last = answer.points().get(1).rows().get(0);
    assertThat(last.value().figure()).isPresent();
    assertThat(last.slope().figure()).isEmpty();
    assertThat(last.elasticity().reason()).isPresent();
  }

  // Biggest piece

  @Test
  void on_a_point_that_stays_the_biggest_piece_follows_from_one_division() {
    Keep keep = Keep.atMost(Reading.contactForce(0), n(3000));
    BiggestPiece.Answer answer =
        new BiggestPiece(Plans.RIGID, BiggestPiece.Size.MASS, kg(10), kg(1000), List.of(keep))
            .answer(Plans.rigid());
    // half a turn: force = W (1 + exp(-mu pi))
    double mass = 3000 / Plans.G / (1 + Math.exp(-0.2 * Math.PI));
    assertThat(answer.outcome()).isEqualTo(BiggestPiece.Outcome.FOUND);
    assertThat(answer.biggest().si()).isCloseTo(mass, relative(SOLVED_CASE));
    assertThat(answer.governing()).hasValue(keep);
  }

  @Test
  void the_biggest_piece_just_keeps_to_its_limits_and_a_little_more_does_not() {
    List<Keep> keeps =
        List.of(
            Keep.atMost(Reading.baseMoment(0), Figure.of(4e4, Kind.MOMENT)),
            Keep.atLeast(Reading.loadFactorToStrength(0), Figure.ofRatio(2)));
    BiggestPiece study =
        new BiggestPiece("device", BiggestPiece.Size.MASS, kg(10), kg(2000), keeps);
    BiggestPiece.Answer answer = study.answer(Plans.bending());
    assertThat(answer.outcome()).isEqualTo(BiggestPiece.Outcome.FOUND);
    double mass = answer.biggest().si();
    assertThat(meets(keeps, mass)).isTrue();
    assertThat(meets(keeps, mass * (1 + SOLVED_CASE))).isFalse();
  }

  private static boolean meets(List<Keep> keeps, double mass) {
    Plan plan = Input.pieceMass().with(Plans.bending(), mass);
    return keeps.stream().allMatch(k -> k.beyond(k.reading().value(plan, "device")) <= 0);
  }

  @Test
  void checks_of_the_plans_limits_can_be_limits_too() {
    Keep keep = Keep.atMost(Reading.mostUsedOfAsked(), Figure.ofRatio(1));
    BiggestPiece.Answer answer =
        new BiggestPiece(Plans.RIGID, BiggestPiece.Size.MASS, kg(10), kg(1000), List.of(keep))
            .answer(Plans.limited());
    // a tenth of 50 kN hangs on the rope at the piece
    assertThat(answer.biggest().si()).isCloseTo(5000 / Plans.G, relative(SOLVED_CASE));
    assertThat(answer.governing()).hasValue(keep);
    Plan plan = Input.pieceMass().with(Plans.limited(), answer.biggest().si());
    assertThat(Checks.of(Statics.analyse(plan)).arrangements().get(0).notMet()).isEmpty();
    Plan more = Input.pieceMass().with(plan, answer.biggest().si() * (1 + SOLVED_CASE));
    assertThat(Checks.of(Statics.analyse(more)).arrangements().get(0).notMet()).hasSize(1);
  }

  @Test
  void without_limits_in_the_plan_not_even_the_least_piece_keeps_to_them() {
    BiggestPiece.Answer answer =
        new BiggestPiece(
                Plans.RIGID,
                BiggestPiece.Size.MASS,
                kg(10),
                kg(1000),
                List.of(Keep.atMost(Reading.mostUsed(), Figure.ofRatio(1))))
            .answer(Plans.rigid());
    assertThat(answer.outcome()).isEqualTo(BiggestPiece.Outcome.NOT_EVEN_THE_LEAST);
    assertThat(answer.values().get(0).reason().orElseThrow()).contains("no limits");
  }

  @Test
  void a_cut_plan_can_read_the_checks_of_limits() {
    CutPlan.Cut cut =
        cutPlan(List.of(2.0), Reading.checkUsed(0)).answer(Plans.limited()).cuts().get(0);
    // plain wood of 1 kg/m3, 1 m thick
    assertThat(cut.value().si()).isCloseTo(2 * Math.PI / 4 * Plans.G / 50e3, relative(SOLVED_CASE));
  }

  @Test
  void the_last_cut_has_no_room_for_a_point_below_it() {
    CutPlan.Cut cut =
        cutPlan(List.of(11.9), Reading.lockedLoadLeg()).answer(Plans.rigid()).cuts().get(0);
    assertThat(cut.value().reason().orElseThrow()).contains("below the foot");
    assertThat(cut.fall().reason().orElseThrow()).contains("below the foot");
  }

  @Test
  void a_range_that_keeps_or_breaks_all_limits_says_so() {
    List<Keep> loose = List.of(Keep.atMost(Reading.loadLeg(), n(1e6)));
    List<Keep> tight = List.of(Keep.atMost(Reading.loadLeg(), n(1)));
    assertThat(
            new BiggestPiece(Plans.RIGID, BiggestPiece.Size.MASS, kg(10), kg(1000), loose)
                .answer(Plans.rigid())
                .outcome())
        .isEqualTo(BiggestPiece.Outcome.ALL_OF_THE_RANGE);
    BiggestPiece.Answer none =
        new BiggestPiece(Plans.RIGID, BiggestPiece.Size.MASS, kg(10), kg(1000), tight)
            .answer(Plans.rigid());
    assertThat(none.outcome()).isEqualTo(BiggestPiece.Outcome.NOT_EVEN_THE_LEAST);
    assertThat(none.biggest().figure()).isEmpty();
  }

  @Test
  void a_length_to_cut_is_a_mass_by_the_cylinder() {
    Log log = Log.of(metres(5), metres(0.4), metres(0.4), kilogramsPerCubicMetre(900));
    Plan plan = Plans.rigid().toBuilder().piece(Piece.of(log)).build();
    BiggestPiece.Answer answer =
        new BiggestPiece(
                Plans.RIGID,
                BiggestPiece.Size.CUT_LENGTH,
                Figure.of(metres(0.1), Kind.LENGTH),
                Figure.of(metres(5), Kind.LENGTH),
                List.of(Keep.atMost(Reading.loadLeg(), n(2000))))
            .answer(plan);
    // m = rho pi d^2 / 4 L
    double length = 2000 / Plans.G / (900 * Math.PI / 4 * 0.16);
    assertThat(answer.biggest().si()).isCloseTo(length, relative(SOLVED_CASE));
    assertThat(answer.mass().si()).isCloseTo(2000 / Plans.G, relative(SOLVED_CASE));
  }

  @Test
  void peaks_of_a_catch_can_be_limits_too() {
    BiggestPiece.Answer answer =
        new BiggestPiece(
                Plans.RIGID,
                BiggestPiece.Size.MASS,
                kg(1),
                kg(1000),
                List.of(Keep.atMost(Reading.lockedLoadLeg(), n(8000))))
            .answer(Plans.rigid());
    assertThat(answer.values().get(0).si()).isCloseTo(8000, relative(SOLVED_CASE));
  }

  // Wraps

  @Test
  void the_window_of_wraps_follows_from_two_logarithms() {
    WrapsWindow.Answer answer =
        new WrapsWindow(Plans.RIGID, kg(50), n(150), n(5), 0.15, 0.25).answer(Plans.rigid());
    double ring = Math.exp(-0.2 * Math.PI);
    double hold = Math.log(100 * Plans.G * ring / 150) / (2 * Math.PI * 0.15);
    double run = Math.log(50 * Plans.G * ring / 5) / (2 * Math.PI * 0.25);
    assertThat(answer.leastWraps().si()).isCloseTo(hold, relative(SOLVED_CASE));
    assertThat(answer.mostWraps().si()).isCloseTo(run, relative(SOLVED_CASE));
    assertThat(answer.isEmpty()).isEqualTo(hold > run);
  }

  @Test
  void the_window_is_one_of_lowering_whatever_the_arrangement_does() {
    Plan plan = Plans.rigid();
    Plan raising =
        plan.toBuilder()
            .arrangements(
                List.of(plan.arrangements().get(0).toBuilder().motion(Motion.RAISING).build()))
            .build();
    WrapsWindow study = new WrapsWindow(Plans.RIGID, kg(50), n(150), n(5), 0.15, 0.25);
    assertThat(study.answer(raising).leastWraps()).isEqualTo(study.answer(plan).leastWraps());
    assertThat(study.answer(raising).mostWraps()).isEqualTo(study.answer(plan).mostWraps());
  }

  @Test
  void a_window_may_be_empty() {
    WrapsWindow.Answer answer =
        new WrapsWindow(Plans.RIGID, kg(5), n(50), n(20), 0.1, 0.3).answer(Plans.rigid());
    assertThat(answer.isEmpty()).isTrue();
  }

  // Stations

  @Test
  void more_points_do_not_lower_the_load_leg() {
    // the load leg carries the weight wherever the points are
    BestStations.Answer answer =
        new BestStations(
                "device",
                Reading.loadLeg(),
                Figure.of(metres(3), Kind.LENGTH),
                Figure.of(metres(9), Kind.LENGTH),
                1)
            .answer(Plans.bending());
    assertThat(answer.enoughIndex()).isZero();
  }

  @Test
  void no_station_in_the_range_is_better_than_the_best_one() {
    Reading force = Reading.contactForce(0);
    BestStations study =
        new BestStations(
            "device",
            force,
            Figure.of(metres(3), Kind.LENGTH),
            Figure.of(metres(9), Kind.LENGTH),
            1);
    BestStations.Answer answer = study.answer(Plans.bending());
    double best = answer.byCount().get(1).value().si();
    Plan two = Plans.bending();
    // the plan of two points in lowering, read at stations of an own grid
    for (double station = 3; station <= 9; station += 0.37) {
      Plan there = Input.station(2, 1).with(two, station);
      Plan lowering =
          there.toBuilder()
              .arrangements(
                  List.of(there.arrangements().get(2).toBuilder().motion(Motion.LOWERING).build()))
              .build();
      assertThat(force.value(lowering, "two points").si()).isGreaterThan(best * (1 - SOLVED_CASE));
    }
  }

  // Why

  @Test
  void the_base_moment_is_the_sum_of_forces_by_their_arms() {
    var stem =
        Statics.analyse(Plans.bending(), "device")
            .orElseThrow()
            .solution()
            .orElseThrow()
            .stems()
            .get(0);
    Why why = Why.of(stem);
    double sum = why.parts().stream().mapToDouble(p -> p.moment().si()).sum();
    double byArms = why.parts().stream().mapToDouble(p -> p.force().si() * p.arm().si()).sum();
    double moment = Reading.baseMoment(0).value(Plans.bending(), "device").si();
    assertThat(sum).isCloseTo(moment, relative(EXACT));
    assertThat(byArms).isCloseTo(moment, relative(EXACT));
    assertThat(why.sentence()).startsWith("base moment ").contains(" = load ");
  }

  // Trials

  /** The modulus of the stem of {@link Plans#bending}, from the movement of its mark. */
  private static Trial modulusTrial(Figure measured, Figure error) {
    return new Trial(
        "away",
        Input.modulusOfElasticity(0),
        Figure.of(2e9, Kind.PRESSURE),
        Figure.of(3e10, Kind.PRESSURE),
        Reading.markMovement(0, 0),
        measured,
        error);
  }

  @Test
  void a_modulus_comes_back_from_the_movement_it_gives() {
    Plan plan = Plans.bending();
    Reading mark = Reading.markMovement(0, 0);
    Figure measured = mark.value(plan, "away").figure().orElseThrow();
    Trial.Answer trial =
        modulusTrial(measured, Figure.of(0.05 * measured.si(), Kind.LENGTH)).answer(plan);
    assertThat(trial.value().si()).isCloseTo(8e9, relative(SOLVED_CASE));
    // a stem of twice the stiffness moves about half: the interval holds the value
    assertThat(trial.least().si()).isLessThan(8e9).isGreaterThan(7e9);
    assertThat(trial.most().si()).isGreaterThan(8e9).isLessThan(9e9);
  }

  /** A fifth of the movement wants about five times the stiffness: beyond the range. */
  @Test
  void an_interval_that_leaves_the_range_has_its_other_end_in_place() {
    Plan plan = Plans.bending();
    Reading mark = Reading.markMovement(0, 0);
    Figure measured = mark.value(plan, "away").figure().orElseThrow();
    Trial.Answer trial =
        modulusTrial(measured, Figure.of(0.8 * measured.si(), Kind.LENGTH)).answer(plan);
    assertThat(trial.value().si()).isCloseTo(8e9, relative(SOLVED_CASE));
    assertThat(trial.least().si()).isLessThan(8e9);
    assertThat(trial.most().reason().orElseThrow()).startsWith("nothing in the range");
  }

  @Test
  void a_movement_that_nothing_gives_has_no_modulus() {
    Trial.Answer trial =
        modulusTrial(Figure.of(metres(5), Kind.LENGTH), Figure.of(metres(0), Kind.LENGTH))
            .answer(Plans.bending());
    assertThat(trial.value().reason().orElseThrow()).startsWith("nothing in the range");
  }

  @Test
  void friction_comes_back_from_two_tensions() {
    FrictionTrial.Answer trial =
        new FrictionTrial(n(1000 * Math.exp(0.2 * Math.PI)), n(1000), n(10), HALF).answer();
    assertThat(trial.value().si()).isCloseTo(0.2, relative(EXACT));
    // to first order the error is (10/1000 + 10/1874) / pi = 0.0049
    assertThat(trial.most().si() - 0.2).isCloseTo(0.0049, within(1e-4));
    assertThat(0.2 - trial.least().si()).isCloseTo(0.0049, within(1e-4));
    assertThatIllegalArgumentException()
        .isThrownBy(() -> new FrictionTrial(n(1), n(2), n(0), HALF));
  }

  // Forks

  @Test
  void a_level_rope_between_two_spars_closes_them_with_the_weight() {
    Plan plan = Plans.rigid();
    Stem spar = plan.stems().get(0);
    Stem other =
        spar.toBuilder().id("other").base(Vector.of(metres(3), metres(0), metres(0))).build();
    Plan fork =
        plan.toBuilder()
            .stems(List.of(spar, other))
            .arrangements(
                List.of(
                    Arrangement.builder("fork")
                        .motion(Motion.LOWERING)
                        .contacts(
                            List.of(
                                Contact.of("spar", metres(10), Ideal.INSTANCE),
                                Contact.of("other", metres(10), Ideal.INSTANCE)))
                        .tail(Tail.Down.DOWN)
                        .build()))
            .build();
    ForkPull.Answer pull = new ForkPull("fork", 0, 1).answer(fork);
    // by hand: the level leg pulls each spar toward the other with the weight; the spars, all but
    // rigid, turn the line between the points by some micrometres
    assertThat(pull.opening().si()).isCloseTo(-100 * Plans.G, relative(1e-5));
    assertThat(pull.sway().si()).isCloseTo(0, within(1e-5 * 100 * Plans.G));
  }

  // Run

  @Test
  void the_run_that_is_needed_keeps_the_limit() {
    Evaluation rigid = Evaluation.of(Plans.rigid(), Plans.RIGID);
    DropFound drop = (DropFound) rigid.drop().orElseThrow();
    double limit = 0.6 * Reading.lockedPointForce(0).value(rigid).si();
    RunNeeded.Answer needed =
        new RunNeeded(Plans.RIGID, Keep.atMost(Reading.lockedPointForce(0), n(limit)))
            .answer(Plans.rigid());
    assertThat(needed.run().si()).isPositive();
    // the same run asked of the catch itself gives that force
    LetRun.Stopped stopped = drop.running(metres(needed.run().si())).orElseThrow();
    assertThat(Figure.of(stopped.loads().points().get(0).magnitude(), Kind.FORCE).si())
        .isCloseTo(limit, relative(SOLVED_CASE));
  }

  @Test
  void no_run_is_needed_below_the_limit_and_none_helps_below_the_weight() {
    assertThat(
            new RunNeeded(Plans.RIGID, Keep.atMost(Reading.lockedLoadLeg(), n(1e6)))
                .answer(Plans.rigid())
                .run()
                .si())
        .isZero();
    assertThat(
            new RunNeeded(Plans.RIGID, Keep.atMost(Reading.lockedLoadLeg(), n(500)))
                .answer(Plans.rigid())
                .run()
                .reason())
        .isPresent();
    assertThatIllegalArgumentException()
        .isThrownBy(() -> new RunNeeded(Plans.RIGID, Keep.atMost(Reading.loadLeg(), n(500))));
  }

  // Cut plan

  @Test
  void the_pieces_of_a_cut_plan_are_cylinders_of_the_spar() {
    Plan plan = Input.density(0).with(Plans.rigid(), 900);
    CutPlan.Answer cuts = cutPlan(List.of(1.0, 2.0), Reading.lockedLoadLeg()).answer(plan);
    // by hand: 900 pi / 4 for each metre
    assertThat(cuts.cuts().get(0).mass().si()).isCloseTo(900 * Math.PI / 4, relative(EXACT));
    assertThat(cuts.cuts().get(1).mass().si()).isCloseTo(900 * Math.PI / 2, relative(EXACT));
    assertThat(cuts.cuts().get(1).at().si()).isCloseTo(9, relative(EXACT));
    // CUT-7 by hand: 2 (attachment + the higher of balance point and tie) on a plumb stem
    Plan onAxis = Input.offset(0, 0).with(plan, 0);
    CutPlan.Answer plumb = cutPlan(List.of(1.0, 2.0), Reading.lockedLoadLeg()).answer(onAxis);
    assertThat(plumb.cuts().get(1).fall().si()).isCloseTo(2 * (0.2 + 1), relative(EXACT));
  }

  @Test
  void what_hangs_on_a_piece_comes_down_with_it() {
    Plan bare = Input.offset(0, 0).with(Input.density(0).with(Plans.rigid(), 900), 0);
    List<PointMass> hung = List.of(hung(12, 10), hung(11.8, 40), hung(11, 70), hung(3, 20));
    Plan plan =
        bare.toBuilder()
            .stems(List.of(bare.stems().get(0).toBuilder().masses(hung).build()))
            .build();
    List<CutPlan.Cut> cuts =
        cutPlan(List.of(1.0, 2.0), Reading.lockedLoadLeg()).answer(plan).cuts();
    // by hand: 900 pi / 4 for each metre; what hangs at a cut stays below it
    double metre = 900 * Math.PI / 4;
    assertThat(cuts.get(0).mass().si()).isCloseTo(metre + 50, relative(EXACT));
    assertThat(cuts.get(1).mass().si()).isCloseTo(2 * metre + 70, relative(EXACT));
    // CUT-7 by hand, about each cut
    double first = (metre * 0.5 + 10 * 1 + 40 * 0.8) / (metre + 50);
    double second = (2 * metre * 1 + 70 * 2) / (2 * metre + 70);
    assertThat(cuts.get(0).fall().si()).isCloseTo(2 * (0.2 + first), relative(EXACT));
    assertThat(cuts.get(1).fall().si()).isCloseTo(2 * (0.2 + second), relative(EXACT));
  }

  private static PointMass hung(double at, double mass) {
    return PointMass.of(metres(at), kilograms(mass));
  }

  @Test
  void a_cut_plan_is_the_same_however_the_line_of_the_stem_is_stated() {
    Plan plan = Input.density(0).with(Plans.rigid(), 900);
    Stem spar = plan.stems().get(0);
    Heading heading = Heading.of(radians(0.1), radians(0.5));
    Vector<Length> half =
        Vector.of(
            metres(6 * Math.sin(0.1) * Math.cos(0.5)),
            metres(6 * Math.sin(0.1) * Math.sin(0.5)),
            metres(6 * Math.cos(0.1)));
    double[] h = half.in(Kind.LENGTH);
    Vector<Length> whole = Vector.ofSi(Kind.LENGTH, 2 * h[0], 2 * h[1], 2 * h[2]);
    Vector<Length> base = Vector.ofSi(Kind.LENGTH, 0, 0, 0);
    List<StemShape> same =
        List.of(
            StemShape.ByStations.of(
                List.of(
                    StemShape.Station.of(metres(0), heading),
                    StemShape.Station.of(metres(9), heading),
                    StemShape.Station.of(metres(12), heading))),
            StemShape.ByPoints.of(List.of(base, half, whole)));
    CutPlan asked = cutPlan(List.of(1.0, 2.0, 4.0), Reading.lockedLoadLeg());
    List<CutPlan.Cut> straight =
        asked.answer(shaped(plan, spar, StemShape.Straight.of(heading, metres(12)))).cuts();
    for (StemShape shape : same) {
      List<CutPlan.Cut> cuts = asked.answer(shaped(plan, spar, shape)).cuts();
      for (int i = 0; i < straight.size(); i++) {
        assertThat(cuts.get(i).fall().si())
            .isCloseTo(straight.get(i).fall().si(), relative(SOLVED_CASE));
        assertThat(cuts.get(i).value().si())
            .isCloseTo(straight.get(i).value().si(), relative(SOLVED_CASE));
      }
    }
  }

  private static Plan shaped(Plan plan, Stem stem, StemShape shape) {
    return plan.toBuilder().stems(List.of(stem.toBuilder().shape(shape).build())).build();
  }

  @Test
  void a_stump_ends_at_the_cut_and_points_as_the_stem_does_there() {
    // turning by 1 rad over 10 m, stated at two stations: half way it has turned by half
    Stump bent =
        Stump.of(
            StemShape.ByStations.of(
                List.of(
                    StemShape.Station.of(metres(0), Heading.of(radians(0), radians(0))),
                    StemShape.Station.of(metres(10), Heading.of(radians(1), radians(0))))),
            5);
    assertThat(bent.shape().length(Kind.LENGTH)).isEqualTo(5);
    assertThat(bent.heading()).isEqualTo(Heading.of(radians(0.5), radians(0)));
    // plumb for 3 m, then level toward +y: 2 m out, and just past the kink
    StemShape kinked =
        StemShape.ByPoints.of(
            List.of(
                Vector.ofSi(Kind.LENGTH, 1, 0, 0),
                Vector.ofSi(Kind.LENGTH, 1, 0, 3),
                Vector.ofSi(Kind.LENGTH, 1, 4, 3)));
    Stump level = Stump.of(kinked, 5);
    assertThat(level.heading().lean()).isEqualTo(radians(Math.PI / 2));
    assertThat(level.heading().azimuth()).isEqualTo(radians(Math.PI / 2));
    assertThat(level.shape())
        .isEqualTo(
            StemShape.ByPoints.of(
                List.of(
                    Vector.ofSi(Kind.LENGTH, 1, 0, 0),
                    Vector.ofSi(Kind.LENGTH, 1, 0, 3),
                    Vector.ofSi(Kind.LENGTH, 1, 2, 3))));
    // a kink nearer to the cut than points of a line may be is left out
    Stump near = Stump.of(kinked, 3.0005);
    assertThat(near.shape().length(Kind.LENGTH)).isCloseTo(3.0005, within(1e-3));
    assertThat(((StemShape.ByPoints) near.shape()).points()).hasSize(2);
    assertThat(Stump.of(kinked, 3).heading().lean()).isEqualTo(radians(0));
  }

  @Test
  void half_a_piece_pulls_less() {
    for (CutPlan.Cut cut :
        cutPlan(List.of(2.0, 3.0), Reading.lockedLoadLeg()).answer(Plans.rigid()).cuts()) {
      assertThat(cut.value().figure()).isPresent();
      assertThat(cut.halved().si()).isLessThan(cut.value().si());
    }
  }

  @Test
  void the_formulas_have_ids_in_order() {
    assertThat(StudyFormulas.all().stream().map(f -> f.id()))
        .containsExactly("STU-1", "STU-2", "STU-3", "STU-4", "STU-5", "STU-6", "STU-7");
  }
}
