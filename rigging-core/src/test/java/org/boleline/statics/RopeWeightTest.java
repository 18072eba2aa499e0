package org.boleline.statics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.boleline.units.Amounts.kilogramsPerCubicMetre;
import static org.boleline.units.Amounts.kilogramsPerMetre;
import static org.boleline.units.Amounts.pascals;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.LongStream;
import org.boleline.Tolerances;
import org.boleline.explain.Caution;
import org.boleline.explain.CautionCode;
import org.boleline.explain.PlanRefusedException;
import org.boleline.plan.Arrangement;
import org.boleline.plan.Contact;
import org.boleline.plan.Plan;
import org.boleline.rope.FrictionRing;
import org.boleline.rope.Ideal;
import org.boleline.rope.Motion;
import org.boleline.rope.Rope;
import org.boleline.stem.Stem;
import org.boleline.units.Kind;
import org.boleline.wood.WoodProperties;
import org.hipparchus.analysis.UnivariateFunction;
import org.hipparchus.analysis.solvers.BracketingNthOrderBrentSolver;
import org.junit.jupiter.api.Test;

/** Legs whose weight counts, against the catenary and against sums. */
class RopeWeightTest {
  private static final double LOAD = 900;
  private static final Rope HEAVY = Rope.UNSTATED.withLinearDensity(kilogramsPerMetre(0.4));

  /** Weight of each length of that rope, N/m. */
  private static final double WEIGHT = 0.4 * Rigs.GRAVITY;

  /** So stiff that the axis stays where it is: a matter of the rope alone. */
  private static Stem.Builder stiff() {
    return Rigs.straight(
        12,
        Math.toRadians(25),
        0,
        0.36,
        0.16,
        WoodProperties.of(pascals(1e13), kilogramsPerCubicMetre(1)));
  }

  private static Plan weighed(Plan plan) {
    List<Arrangement> arrangements = new ArrayList<>();
    for (Arrangement arrangement : plan.arrangements()) {
      List<Contact> contacts =
          arrangement.contacts().stream().map(contact -> contact.withRopeWeight(true)).toList();
      arrangements.add(arrangement.toBuilder().contacts(contacts).build());
    }
    return plan.toBuilder().rope(HEAVY).arrangements(arrangements).build();
  }

  private static Solution hung(Arrangement.Builder arrangement) {
    return Rigs.sound(weighed(Rigs.plan(stiff(), arrangement, LOAD)));
  }

  /**
   * Horizontal part of the tension of a catenary between two places, from the tension at its
   * beginning and its steepness there.
   *
   * <p>Source: the catenary in any text on statics: y = a cosh(x / a), T = weight y.
   */
  private static double[] catenaryPull(double across, double up, double tension) {
    UnivariateFunction gap =
        slope -> {
          double level = tension / Math.hypot(1, slope);
          double a = level / WEIGHT;
          double start = Math.log(slope + Math.hypot(1, slope));
          return a * (Math.cosh(start + across / a) - Math.cosh(start)) - up;
        };
    double straight = up / across;
    double slope =
        new BracketingNthOrderBrentSolver(1e-15, 1e-14, 1e-14, 5)
            .solve(1000, gap, straight - 0.3, straight + 0.1);
    double level = tension / Math.hypot(1, slope);
    return new double[] {level, slope * level};
  }

  @Test
  void a_leg_pulls_at_both_ends_as_a_catenary_does() {
    Solution found =
        hung(Rigs.through(Ideal.INSTANCE, 11).tail(Rigs.point(-9, 0, 1)).motion(Motion.LOWERING));
    Leg leg = found.legs().get(1);
    double[] begin = leg.begin().orElseThrow().in(Kind.LENGTH);
    double[] pull = leg.pull().in(Kind.FORCE);
    double across = begin[0] + 9;
    double[] wanted = catenaryPull(across, 1 - begin[2], LOAD);

    double share = WEIGHT * Math.hypot(across, begin[2] - 1) / LOAD;
    double allowed = Tolerances.TAUT_CATENARY * share * share * LOAD;
    assertThat(Rigs.newtons(leg.tension()))
        .isCloseTo(LOAD, Tolerances.relative(Tolerances.ROUNDING));
    assertThat(-pull[0]).isCloseTo(wanted[0], within(allowed));
    assertThat(pull[2]).isCloseTo(wanted[1], within(allowed));
    // Along a catenary tension differs by the weight of a length of rope as long as the rise.
    assertThat(Rigs.newtons(leg.tensionAtEnd()))
        .isCloseTo(LOAD + WEIGHT * (1 - begin[2]), within(allowed));
  }

  @Test
  void points_carry_load_tail_and_the_weight_of_the_rope() {
    Solution found =
        hung(
            Rigs.through(new FrictionRing(0.2), 11, 8, 4)
                .tail(Rigs.point(3, 2, 0))
                .motion(Motion.LOWERING));
    double[] sum = Rigs.total(found);
    double rope =
        found.legs().stream()
            .skip(1)
            .mapToDouble(
                leg ->
                    WEIGHT
                        * Plain.size(
                            Plain.minus(
                                leg.end().orElseThrow().in(Kind.LENGTH),
                                leg.begin().orElseThrow().in(Kind.LENGTH))))
            .sum();
    double[] tail = found.legs().get(3).pullAtEnd().in(Kind.FORCE);
    assertThat(sum[2] + tail[2]).isCloseTo(-LOAD - rope, Tolerances.relative(Tolerances.EXACT));
    assertThat(Math.hypot(sum[0] + tail[0], sum[1] + tail[1]))
        .isLessThan(Tolerances.RESIDUAL * LOAD);
  }

  @Test
  void a_light_rope_is_no_rope_weight_at_all() {
    Arrangement.Builder arrangement =
        Rigs.through(new FrictionRing(0.2), 11, 8, 4).tail(Rigs.point(3, 2, 0));
    Plan plan = Rigs.plan(stiff(), arrangement, LOAD);
    Solution without = Rigs.sound(plan);
    Solution light =
        Rigs.sound(
            weighed(plan).toBuilder()
                .rope(Rope.UNSTATED.withLinearDensity(kilogramsPerMetre(1e-12)))
                .build());
    assertThat(Rigs.newtons(light.tailTension()))
        .isCloseTo(Rigs.newtons(without.tailTension()), Tolerances.relative(Tolerances.EXACT));
  }

  @Test
  void a_leg_heavier_than_its_tension_is_refused_at_its_member() {
    Plan plan =
        weighed(
            Rigs.plan(stiff(), Rigs.through(Ideal.INSTANCE, 11).tail(Rigs.point(-40, 0, 10)), 40));
    assertThatThrownBy(() -> Statics.analyse(plan))
        .isInstanceOf(PlanRefusedException.class)
        .hasMessageContaining("/arrangements/0/contacts/0/ropeWeight");
  }

  /** A plumb leg heavier than its tension would have to push at its lower end. */
  @Test
  void a_plumb_leg_that_would_have_to_push_is_refused() {
    Plan plan =
        weighed(
            Rigs.plan(stiff(), Rigs.through(Ideal.INSTANCE, 11).tail(Rigs.point(4.7, 0, 0)), 35));
    assertThatThrownBy(() -> Statics.analyse(plan))
        .isInstanceOf(PlanRefusedException.class)
        .hasMessageContaining("/arrangements/0/contacts/0/ropeWeight");
  }

  @Test
  void a_leg_that_weighs_much_of_its_tension_is_cautioned() {
    Plan plan =
        weighed(
            Rigs.plan(stiff(), Rigs.through(Ideal.INSTANCE, 11).tail(Rigs.point(-20, 0, 10)), 200));
    Solution found = Rigs.sound(plan);
    assertThat(found.cautions()).extracting(Caution::code).contains(CautionCode.ROPE_SAGS);
    assertThat(found.cautions())
        .extracting(Caution::code)
        .doesNotContain(CautionCode.ROPE_WEIGHT_LEFT_OUT);
  }

  /** Bending stems, slings and friction as drawn, and every leg weighed. */
  @Test
  void random_arrangements_with_weighed_legs_are_in_balance() {
    List<String> wrong =
        LongStream.range(1, 101).mapToObj(RopeWeightTest::wrong).flatMap(List::stream).toList();
    assertThat(wrong).isEmpty();
  }

  private static List<String> wrong(long seed) {
    try {
      ArrangementResult result =
          Statics.analyse(weighed(RandomPlans.of(seed))).arrangements().get(0);
      List<String> wrong = new ArrayList<>();
      result.solution().ifPresent(solution -> wrong.addAll(EquilibriumCheck.of(solution)));
      result
          .solution()
          .ifPresent(solution -> solution.check().forEach(w -> wrong.add(w.toString())));
      if (result instanceof NotSolved notSolved) {
        wrong.add(notSolved.reason());
      }
      return wrong.stream().map(text -> "seed " + seed + ": " + text).toList();
    } catch (PlanRefusedException e) {
      return List.of();
    }
  }
}
