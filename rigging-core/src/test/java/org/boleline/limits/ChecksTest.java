package org.boleline.limits;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.boleline.Tolerances.ALL_BUT_RIGID;
import static org.boleline.Tolerances.BETWEEN_STATIONS;
import static org.boleline.Tolerances.EXACT;
import static org.boleline.Tolerances.SOLVED_CASE;
import static org.boleline.Tolerances.STIFF_SPAR;
import static org.boleline.Tolerances.relative;
import static org.boleline.units.Amounts.degrees;
import static org.boleline.units.Amounts.gigapascals;
import static org.boleline.units.Amounts.kilograms;
import static org.boleline.units.Amounts.kilogramsPerCubicMetre;
import static org.boleline.units.Amounts.kilonewtons;
import static org.boleline.units.Amounts.megapascals;
import static org.boleline.units.Amounts.metres;
import static org.boleline.units.Amounts.millimetres;
import static org.boleline.units.Amounts.newtonMetres;
import static org.boleline.units.Amounts.newtons;
import static org.boleline.units.Amounts.seconds;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.boleline.drop.DropFound;
import org.boleline.drop.DropResult;
import org.boleline.drop.Drops;
import org.boleline.explain.Caution;
import org.boleline.explain.CautionCode;
import org.boleline.geometry.Heading;
import org.boleline.geometry.IncludedAngle;
import org.boleline.limits.Check.State;
import org.boleline.plan.Arrangement;
import org.boleline.plan.AskedFactor;
import org.boleline.plan.Contact;
import org.boleline.plan.DropSpec;
import org.boleline.plan.Hitch;
import org.boleline.plan.Limits;
import org.boleline.plan.PartLimit;
import org.boleline.plan.PartLimit.CapacityIs;
import org.boleline.plan.PartLimit.Demand;
import org.boleline.plan.PartLimit.Part;
import org.boleline.plan.Piece;
import org.boleline.plan.Plan;
import org.boleline.plan.Reduction;
import org.boleline.plan.Tail;
import org.boleline.rope.FrictionRing;
import org.boleline.rope.Motion;
import org.boleline.rope.Rope;
import org.boleline.rope.StretchPoint;
import org.boleline.statics.Solution;
import org.boleline.statics.Statics;
import org.boleline.stem.Diameters;
import org.boleline.stem.Stem;
import org.boleline.stem.StemShape;
import org.boleline.units.Kind;
import org.boleline.units.Si;
import org.boleline.wood.WoodProperties;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/**
 * Checks of plans against closed forms. All plans are invented.
 *
 * <p>The spar is plumb, weightless and all but rigid: the rope runs up to a ring at 9 m, 0.3 m off
 * the axis, and straight back down, so that the tail has the load over exp(mu pi), the ring carries
 * both legs and the spar bends by that force times 0.3 m from the ring down.
 */
class ChecksTest {
  private static final double G = 9.80665;
  private static final double WEIGHT = 100 * G;
  private static final double TAIL = WEIGHT / Math.exp(0.2 * Math.PI);
  private static final double ON_RING = WEIGHT + TAIL;
  private static final double OUTER = 0.4;
  private static final Contact RING =
      Contact.of("spar", metres(9), new FrictionRing(0.2)).withOffset(metres(0.3));
  private static final Tail.Device DEVICE =
      Tail.Device.of("spar", metres(1), 0.15, 1.5).withOffset(metres(0.3));
  private static final Rope ROPE =
      Rope.UNSTATED
          .withMinimumBreakingStrength(kilonewtons(55))
          .withDiameter(millimetres(14))
          .withStretch(List.of(StretchPoint.of(kilonewtons(5.5), 0.05)));

  private static Stem spar(double outerMetres, double leanDegrees) {
    return Stem.builder("spar")
        .shape(StemShape.Straight.of(Heading.of(degrees(leanDegrees), degrees(0)), metres(10)))
        .diameters(Diameters.tapering(metres(10), metres(outerMetres), metres(outerMetres)))
        .wood(
            WoodProperties.builder()
                .modulusOfElasticity(gigapascals(10_000))
                .density(kilogramsPerCubicMetre(1000))
                .compressionStrength(megapascals(16))
                .build())
        .ownWeight(false)
        .build();
  }

  private static Plan plan(Limits limits, Tail tail, Motion motion, Optional<DropSpec> drop) {
    Arrangement.Builder way =
        Arrangement.builder("one").motion(motion).contacts(List.of(RING)).tail(tail);
    drop.ifPresent(way::drop);
    return Plan.builder()
        .stems(List.of(spar(OUTER, 0)))
        .piece(Piece.of(kilograms(100)))
        .rope(ROPE)
        .arrangements(List.of(way.build()))
        .limits(limits)
        .build();
  }

  private static Checks checks(Plan plan) {
    return Checks.of(Drops.analyse(Statics.analyse(plan)));
  }

  private static List<Check> slow(Limits limits) {
    return checks(plan(limits, DEVICE, Motion.LOWERING, Optional.empty()))
        .arrangements()
        .get(0)
        .checks();
  }

  private static Limits parts(PartLimit.Builder... parts) {
    return Limits.of(List.of())
        .withParts(List.of(parts).stream().map(PartLimit.Builder::build).toList());
  }

  private static Limits asking(double factor, PartLimit.Builder part) {
    return Limits.of(List.of(AskedFactor.of("it", factor, "an invented rule")))
        .withParts(List.of(part.build()));
  }

  private static PartLimit.Builder rope() {
    return PartLimit.builder(Part.ROPE, "it");
  }

  private static PartLimit.Builder block(double newtons) {
    return PartLimit.builder(Part.HARDWARE, "it").force(newtons(newtons), CapacityIs.STRENGTH);
  }

  private static double force(Check check) {
    return Si.value(check.demand(Kind.FORCE), Kind.FORCE, "demand");
  }

  private static double capacity(Check check) {
    return Si.value(check.capacity(Kind.FORCE), Kind.FORCE, "capacity");
  }

  private static double stress(Check check) {
    return Si.value(check.demand(Kind.PRESSURE), Kind.PRESSURE, "demand");
  }

  private static double moment(Check check) {
    return Si.value(check.demand(Kind.MOMENT), Kind.MOMENT, "demand");
  }

  private static List<CautionCode> codes(List<Caution> cautions) {
    return cautions.stream().map(Caution::code).toList();
  }

  // Demands

  @Test
  void the_rope_carries_the_load_at_the_piece_and_less_at_the_device() {
    List<Check> found =
        slow(
            parts(
                rope().name("piece").place("piece"),
                rope().name("point").place("contacts/0"),
                rope().name("tail").place("tail"),
                rope().name("all")));

    assertThat(force(found.get(0))).isCloseTo(WEIGHT, relative(EXACT));
    assertThat(force(found.get(1))).isCloseTo(WEIGHT, relative(EXACT));
    assertThat(force(found.get(2))).isCloseTo(TAIL, relative(ALL_BUT_RIGID));
    assertThat(force(found.get(3))).isCloseTo(WEIGHT, relative(EXACT));
    assertThat(found)
        .extracting(Check::place)
        .containsExactly(
            "/piece", "/arrangements/0/contacts/0", "/arrangements/0/tail/device", "/rope");
  }

  /** Block makers' rigging pages: a block's limit is for the resultant, not for the line pull. */
  @Test
  void block_and_sling_are_compared_with_the_force_of_both_legs() {
    List<Check> found =
        slow(
            parts(
                block(30e3).name("block"),
                PartLimit.builder(Part.SLING, "sling")
                    .force(kilonewtons(20), CapacityIs.STRENGTH)
                    .hitch(Hitch.Vertical.VERTICAL)));

    for (Check check : found) {
      assertThat(force(check)).isCloseTo(ON_RING, relative(ALL_BUT_RIGID));
      assertThat(force(check)).isGreaterThan(1.5 * WEIGHT);
    }
  }

  @Test
  void the_device_takes_the_leg_into_it_and_the_hand_what_the_wraps_leave() {
    List<Check> found =
        slow(
            Limits.of(newtons(150), List.of())
                .withParts(
                    List.of(
                        PartLimit.builder(Part.DEVICE, "device")
                            .force(kilonewtons(10), CapacityIs.WORKING_LOAD_LIMIT)
                            .build())));

    assertThat(force(found.get(0))).isCloseTo(TAIL, relative(ALL_BUT_RIGID));
    assertThat(found.get(1).part()).isEqualTo(Part.HAND);
    assertThat(force(found.get(1)))
        .isCloseTo(TAIL / Math.exp(0.15 * 3 * Math.PI), relative(ALL_BUT_RIGID));
  }

  /** Statics of a post: N / A + M / Z with both legs 0.3 m off the axis, below the ring. */
  @Test
  void stem_and_root_carry_both_legs_at_their_arm() {
    Plan plan =
        plan(
            parts(
                PartLimit.builder(Part.STEM, "stem"),
                PartLimit.builder(Part.STEM, "foot").stem("spar").station(metres(0.5)),
                PartLimit.builder(Part.ANCHORAGE, "root").moment(newtonMetres(50e3))),
            Tail.Down.DOWN,
            Motion.LOWERING,
            Optional.empty());
    List<Check> found = checks(plan).arrangements().get(0).checks();
    double expected =
        ON_RING / (Math.PI / 4 * OUTER * OUTER)
            + 0.3 * ON_RING / (Math.PI / 32 * Math.pow(OUTER, 3));

    assertThat(stress(found.get(0))).isCloseTo(expected, relative(STIFF_SPAR));
    assertThat(stress(found.get(1))).isCloseTo(expected, relative(STIFF_SPAR));
    assertThat(moment(found.get(2))).isCloseTo(0.3 * ON_RING, relative(STIFF_SPAR));
    Solution solution = Statics.analyse(plan).arrangements().get(0).solution().orElseThrow();
    assertThat(stress(found.get(0)))
        .isCloseTo(
            Si.value(solution.stems().get(0).compressionStress().value(), Kind.PRESSURE, "stress"),
            relative(BETWEEN_STATIONS));
  }

  @Property(tries = 10)
  void a_heavier_piece_uses_more_of_every_part(
      @ForAll @DoubleRange(min = 20, max = 400) double mass) {
    Limits limits =
        parts(
            rope().name("rope"),
            block(30e3).name("block"),
            PartLimit.builder(Part.STEM, "stem"),
            PartLimit.builder(Part.ANCHORAGE, "root").moment(newtonMetres(50e3)));
    Plan plan = plan(limits, Tail.Down.DOWN, Motion.LOWERING, Optional.empty());
    List<Check> light =
        checks(plan.toBuilder().piece(Piece.of(kilograms(mass))).build())
            .arrangements()
            .get(0)
            .checks();
    List<Check> heavy =
        checks(plan.toBuilder().piece(Piece.of(kilograms(mass + 10))).build())
            .arrangements()
            .get(0)
            .checks();

    for (int i = 0; i < light.size(); i++) {
      assertThat(heavy.get(i).usedShare()).isGreaterThan(light.get(i).usedShare());
    }
  }

  // Capacities

  @ParameterizedTest
  @EnumSource(Reduction.Combined.class)
  void losses_are_stacked_or_the_worst_alone_counts(Reduction.Combined combined) {
    Check check =
        slow(parts(
                rope()
                    .reductions(
                        List.of(
                            Reduction.of("knot", 0.7),
                            Reduction.of("wear", 0.9),
                            Reduction.of("wet", 0.8)))
                    .combined(combined)))
            .get(0);

    double kept = combined == Reduction.Combined.STACKED ? 0.7 * 0.9 * 0.8 : 0.7;
    assertThat(capacity(check)).isCloseTo(kept * 55e3, relative(EXACT));
  }

  @Test
  void a_bend_keeps_what_its_table_says_at_the_ratio_of_bend_and_rope() {
    List<Reduction.AtRatio> table =
        List.of(new Reduction.AtRatio(4, 0.8), new Reduction.AtRatio(8, 0.96));

    // 84 mm over 14 mm is 6, half way; 14 times is beyond the last
    for (double[] pair : new double[][] {{84, 0.88}, {56, 0.8}, {196, 0.96}}) {
      Check check =
          slow(parts(
                  rope()
                      .reductions(List.of(Reduction.ofBend("bend", millimetres(pair[0]), table)))))
              .get(0);
      assertThat(capacity(check)).isCloseTo(pair[1] * 55e3, relative(EXACT));
    }
  }

  /** Arborist trade text: 8 to 1 preferred, 4 to 1 acceptable for braided rigging lines. */
  @Test
  void a_bend_is_met_by_its_ratio_whatever_the_load() {
    PartLimit.Builder bend = PartLimit.builder(Part.BEND, "it").diameter(millimetres(56));

    Check met = slow(asking(4, bend)).get(0);
    assertThat(met.factorFound().getAsDouble()).isCloseTo(4, relative(EXACT));
    assertThat(met.met()).contains(true);
    assertThat(met.state()).isEmpty();
    assertThat(slow(asking(8, bend)).get(0).met()).contains(false);
  }

  @Test
  void slings_take_what_their_hitch_leaves() {
    PartLimit.Builder sling =
        PartLimit.builder(Part.SLING, "it").force(newtons(1000), CapacityIs.STRENGTH);

    assertThat(capacity(slow(parts(sling.hitch(Hitch.Vertical.VERTICAL))).get(0))).isEqualTo(1000);
    assertThat(capacity(slow(parts(sling.hitch(Hitch.Choker.of(0.8)))).get(0))).isEqualTo(800);
    assertThat(
            capacity(slow(parts(sling.hitch(Hitch.Choker.of(0.8).withAngle(degrees(100))))).get(0)))
        .isCloseTo(0.87 * 800, relative(EXACT));
    assertThat(
            capacity(
                slow(parts(sling.hitch(new Hitch.Basket(IncludedAngle.of(degrees(60)))))).get(0)))
        .isCloseTo(1000 * Math.sqrt(3), relative(EXACT));
  }

  // Factors

  @Test
  void a_capacity_that_just_meets_the_factor_meets_it_and_one_a_hair_below_does_not() {
    double demand = force(slow(asking(10, block(1))).get(0));

    Check just = slow(asking(10, block(10 * demand))).get(0);
    Check below = slow(asking(10, block(Math.nextDown(10 * demand)))).get(0);

    assertThat(just.met()).contains(true);
    assertThat(just.sentence()).endsWith("meets the factor 10 asked by an invented rule.");
    assertThat(below.met()).contains(false);
    assertThat(below.sentence()).endsWith("does not meet the factor 10 asked by an invented rule.");
    assertThat(below.askedBy().orElseThrow().id()).isEqualTo("an invented rule");
  }

  @Test
  void where_nobody_asks_there_is_no_factor_and_no_answer() {
    Check check = slow(parts(block(1))).get(0);

    assertThat(check.factorAsked()).isEmpty();
    assertThat(check.askedBy()).isEmpty();
    assertThat(check.met()).isEmpty();
    assertThat(check.leastDiameter()).isEmpty();
    assertThat(check.sentence()).endsWith("no factor asked.");
  }

  @Test
  void a_factor_for_a_name_goes_before_one_for_all_of_its_kind() {
    List<AskedFactor> factors =
        List.of(AskedFactor.of("hardware", 5, "all"), AskedFactor.of("ring", 7, "one"));
    List<Check> found =
        slow(
            Limits.of(factors)
                .withParts(List.of(block(1).name("ring").build(), block(1).name("x").build())));

    assertThat(found.get(0).factorAsked()).hasValue(7);
    assertThat(found.get(1).factorAsked()).hasValue(5);
  }

  @Test
  void a_working_load_limit_is_not_asked_the_factor_of_a_strength() {
    Limits limits =
        Limits.of(List.of(AskedFactor.of("hardware", 5, "all")))
            .withParts(
                List.of(
                    PartLimit.builder(Part.HARDWARE, "block")
                        .force(kilonewtons(30), CapacityIs.WORKING_LOAD_LIMIT)
                        .build()));
    Checks checks = checks(plan(limits, DEVICE, Motion.LOWERING, Optional.empty()));

    assertThat(checks.arrangements().get(0).checks().get(0).factorAsked()).isEmpty();
    assertThat(checks.cautions())
        .filteredOn(c -> c.code() == CautionCode.FACTOR_ASKED_OF_NOTHING)
        .singleElement()
        .satisfies(
            c -> {
              assertThat(c.place()).isEqualTo("/limits/factors/0");
              assertThat(c.sentence()).contains("the factor 5 of \"hardware\"");
            });
  }

  @Test
  void limits_that_were_checked_are_no_longer_cautioned_about() {
    Plan plan = plan(asking(10, rope()), DEVICE, Motion.LOWERING, Optional.empty());

    assertThat(codes(Statics.analyse(plan).cautions())).contains(CautionCode.LIMITS_NOT_CHECKED);
    assertThat(codes(Checks.of(Statics.analyse(plan)).cautions()))
        .doesNotContain(CautionCode.LIMITS_NOT_CHECKED);
  }

  @Test
  void a_rope_with_nothing_taken_off_is_cautioned_about() {
    Plan plain = plan(parts(rope()), DEVICE, Motion.LOWERING, Optional.empty());
    Plan knotted =
        plan(
            parts(rope().reductions(List.of(Reduction.of("knot", 0.7)))),
            DEVICE,
            Motion.LOWERING,
            Optional.empty());

    assertThat(codes(checks(plain).arrangements().get(0).cautions()))
        .containsExactly(CautionCode.STRENGTH_NOT_REDUCED);
    assertThat(checks(knotted).arrangements().get(0).cautions()).isEmpty();
  }

  // Order

  @Test
  void the_weakest_link_has_the_greatest_demand_over_capacity() {
    Checks checks =
        checks(
            plan(
                parts(
                    block(40e3).name("block"),
                    rope().name("rope"),
                    PartLimit.builder(Part.DEVICE, "device")
                        .force(newtons(1000), CapacityIs.STRENGTH),
                    PartLimit.builder(Part.BEND, "bend").diameter(millimetres(15))),
                DEVICE,
                Motion.LOWERING,
                Optional.empty()));
    ArrangementChecks one = checks.arrangement("one").orElseThrow();

    assertThat(one.weakest().orElseThrow().name()).isEqualTo("device");
    assertThat(one.byUse()).extracting(Check::name).containsExactly("device", "block", "rope");
    assertThat(one.notMet()).isEmpty();
  }

  // States

  @Test
  void a_held_load_is_checked_at_both_ends() {
    List<Check> found =
        checks(
                plan(
                    Limits.of(newtons(1), List.of())
                        .withParts(List.of(rope().place("tail").build())),
                    DEVICE,
                    Motion.HELD,
                    Optional.empty()))
            .arrangements()
            .get(0)
            .checks();

    assertThat(found)
        .extracting(c -> c.state().orElseThrow())
        .containsExactly(State.ABOUT_TO_RUN, State.ABOUT_TO_RISE, State.ABOUT_TO_RUN);
    assertThat(force(found.get(0))).isCloseTo(TAIL, relative(ALL_BUT_RIGID));
    assertThat(force(found.get(1)))
        .isCloseTo(WEIGHT * Math.exp(0.2 * Math.PI), relative(ALL_BUT_RIGID));
  }

  @Test
  void an_arrangement_that_loses_stability_is_not_checked_and_says_so() {
    Plan plan = plan(parts(rope()), Tail.Down.DOWN, Motion.LOWERING, Optional.empty());
    Stem soft =
        spar(0.05, 0).toBuilder()
            .wood(WoodProperties.of(gigapascals(1), kilogramsPerCubicMetre(1000)))
            .build();
    ArrangementChecks found =
        checks(plan.toBuilder().stems(List.of(soft)).piece(Piece.of(kilograms(2000))).build())
            .arrangements()
            .get(0);

    assertThat(found.checks()).isEmpty();
    assertThat(found.whyNot()).contains("stability");
    assertThat(found.weakest()).isEmpty();
  }

  private static final DropSpec LOCKED = DropSpec.of(metres(1), DropSpec.Locked.LOCKED);
  private static final DropSpec SLIPPING =
      DropSpec.of(metres(1), DropSpec.Slipping.of(newtons(1500)));

  private static DropResult drops(DropSpec drop, PartLimit.Builder... parts) {
    return Drops.analyse(
        Statics.analyse(plan(parts(parts), DEVICE, Motion.LOWERING, Optional.of(drop))));
  }

  private static DropFound found(DropResult drops) {
    return (DropFound) drops.drop("one").orElseThrow();
  }

  @Test
  void without_word_of_it_a_part_is_compared_with_slow_motion_and_the_locked_catch() {
    DropResult drops = drops(LOCKED, rope().place("piece"));
    List<Check> checks = Checks.of(drops).arrangements().get(0).checks();

    assertThat(checks)
        .extracting(c -> c.state().orElseThrow())
        .containsExactly(State.SLOW, State.LOCKED);
    assertThat(force(checks.get(1)))
        .isEqualTo(Si.value(found(drops).loads().loadLeg(), Kind.FORCE, "peak"));
    assertThat(checks.get(1).otherDemand(Kind.FORCE)).isEmpty();
  }

  @Test
  void a_peak_is_that_of_the_locked_catch_with_the_run_beside_it_unless_the_limit_says_run() {
    DropResult drops =
        drops(
            SLIPPING,
            rope().name("locked").place("piece").demand(Demand.PEAK),
            rope().name("run").place("piece").demand(Demand.RUN));
    List<Check> checks = Checks.of(drops).arrangements().get(0).checks();
    double locked = Si.value(found(drops).loads().loadLeg(), Kind.FORCE, "locked");
    double run = Si.value(found(drops).letRun().orElseThrow().loads().loadLeg(), Kind.FORCE, "run");

    assertThat(checks)
        .extracting(c -> c.state().orElseThrow())
        .containsExactly(State.LOCKED, State.RUN);
    assertThat(force(checks.get(0))).isEqualTo(locked).isGreaterThan(run);
    assertThat(force(checks.get(1))).isEqualTo(run);
    assertThat(Si.value(checks.get(0).otherDemand(Kind.FORCE).orElseThrow(), Kind.FORCE, "run"))
        .isEqualTo(run);
    assertThat(Si.value(checks.get(1).otherDemand(Kind.FORCE).orElseThrow(), Kind.FORCE, "locked"))
        .isEqualTo(locked);
  }

  @Test
  void a_limit_for_a_run_takes_the_locked_catch_where_nothing_runs_or_it_never_stops() {
    for (DropSpec drop :
        List.of(
            LOCKED,
            DropSpec.of(metres(1), DropSpec.Slipping.of(newtons(1))),
            DropSpec.of(metres(1), DropSpec.ByHand.of(newtons(0), seconds(0))))) {
      ArrangementChecks found =
          Checks.of(drops(drop, rope().demand(Demand.RUN))).arrangements().get(0);

      assertThat(found.checks().get(0).state()).contains(State.LOCKED);
      assertThat(codes(found.cautions())).contains(CautionCode.LIMIT_TAKES_LOCKED);
    }
  }

  @Test
  void a_limit_for_a_peak_is_not_compared_where_there_is_none() {
    ArrangementChecks found =
        checks(plan(parts(rope().demand(Demand.PEAK)), DEVICE, Motion.LOWERING, Optional.empty()))
            .arrangements()
            .get(0);

    assertThat(found.checks()).isEmpty();
    assertThat(codes(found.cautions())).containsExactly(CautionCode.LIMIT_WITHOUT_PEAK);
  }

  /** Statics of a post, with the forces of the catch in place of the slow ones. */
  @Test
  void at_the_peak_stem_and_root_carry_what_the_catch_puts_on_the_ring() {
    DropResult drops =
        Drops.analyse(
            Statics.analyse(
                plan(
                    parts(
                        PartLimit.builder(Part.STEM, "stem").demand(Demand.PEAK),
                        PartLimit.builder(Part.ANCHORAGE, "root")
                            .moment(newtonMetres(50e3))
                            .demand(Demand.PEAK)),
                    Tail.Down.DOWN,
                    Motion.LOWERING,
                    Optional.of(LOCKED))));
    ArrangementChecks checks = Checks.of(drops).arrangements().get(0);
    double ring =
        Si.value(found(drops).loads().points().get(0).magnitude(), Kind.FORCE, "on the ring");

    assertThat(ring).isGreaterThan(2 * ON_RING);
    assertThat(stress(checks.checks().get(0)))
        .isCloseTo(
            ring / (Math.PI / 4 * OUTER * OUTER) + 0.3 * ring / (Math.PI / 32 * Math.pow(OUTER, 3)),
            relative(STIFF_SPAR));
    assertThat(moment(checks.checks().get(1))).isCloseTo(0.3 * ring, relative(STIFF_SPAR));
    assertThat(codes(checks.cautions()))
        .containsExactly(CautionCode.PEAK_ON_STEM_AT_REST, CautionCode.PEAK_ON_STEM_AT_REST);
  }

  @Test
  void in_time_too_the_greater_of_both_answers_counts() {
    DropSpec inTime = LOCKED.withLevel(DropSpec.Level.IN_TIME);
    DropResult drops = drops(inTime, rope().place("piece").demand(Demand.PEAK));
    double energy = Si.value(found(drops).loads().loadLeg(), Kind.FORCE, "peak");
    double timed =
        Si.value(
            found(drops).inTime().orElseThrow().locked().loadLeg().overall(), Kind.FORCE, "peak");

    assertThat(force(Checks.of(drops).arrangements().get(0).checks().get(0)))
        .isEqualTo(Math.max(energy, timed));
  }

  // Least diameter

  /** Moment and axial force of the weightless spar hardly change with its diameter. */
  @Test
  void a_stem_of_the_least_diameter_just_has_the_factor_asked() {
    Limits limits = asking(50, PartLimit.builder(Part.STEM, "it"));
    Plan plan = plan(limits, Tail.Down.DOWN, Motion.LOWERING, Optional.empty());
    Check check = checks(plan).arrangements().get(0).checks().get(0);
    double least = Si.value(check.leastDiameter().orElseThrow(), Kind.LENGTH, "least diameter");

    Check again =
        checks(plan.toBuilder().stems(List.of(spar(least, 0))).build())
            .arrangements()
            .get(0)
            .checks()
            .get(0);
    assertThat(again.factorFound().getAsDouble()).isCloseTo(50, relative(STIFF_SPAR));
    assertThat(Math.abs(least - OUTER)).isGreaterThan(0.01);
  }

  @Test
  void the_pulled_side_is_compared_with_the_bending_strength_without_a_diameter() {
    Stem both =
        spar(OUTER, 0).toBuilder()
            .wood(
                WoodProperties.builder()
                    .modulusOfElasticity(gigapascals(10_000))
                    .density(kilogramsPerCubicMetre(1000))
                    .compressionStrength(megapascals(16))
                    .bendingStrength(megapascals(40))
                    .build())
            .build();
    Plan plan =
        plan(
                asking(2, PartLimit.builder(Part.STEM, "it")),
                Tail.Down.DOWN,
                Motion.LOWERING,
                Optional.empty())
            .toBuilder()
            .stems(List.of(both))
            .build();
    List<Check> found = checks(plan).arrangements().get(0).checks();

    assertThat(found).hasSize(2);
    assertThat(stress(found.get(1)))
        .isCloseTo(
            0.3 * ON_RING / (Math.PI / 32 * Math.pow(OUTER, 3))
                - ON_RING / (Math.PI / 4 * OUTER * OUTER),
            relative(STIFF_SPAR));
    assertThat(found.get(0).leastDiameter()).isPresent();
    assertThat(found.get(1).leastDiameter()).isEmpty();
  }

  // Words

  @Test
  void no_sentence_judges() {
    List<Check> found =
        Checks.of(
                drops(
                    SLIPPING,
                    rope().name("rope"),
                    block(1).name("block"),
                    PartLimit.builder(Part.STEM, "stem"),
                    PartLimit.builder(Part.BEND, "bend").diameter(millimetres(15))))
            .arrangements()
            .get(0)
            .checks();

    for (Check check : found) {
      assertThat(check.sentence().toLowerCase(Locale.ROOT))
          .doesNotContain("safe", "approved", "compliant")
          .startsWith(check.name())
          .contains(check.where());
    }
    assertThat(found.get(1).sentence())
        .startsWith("rope where it pulls hardest, peak of the locked catch: ");
  }

  @Test
  void a_check_gives_its_numbers_in_its_own_kind_alone() {
    Check check = slow(parts(block(1))).get(0);

    assertThatIllegalArgumentException()
        .isThrownBy(() -> check.demand(Kind.MOMENT))
        .withMessageContaining("wants force");
    assertThat(check.steps().get(0).result())
        .isCloseTo(check.factorFound().getAsDouble(), relative(SOLVED_CASE));
  }
}
