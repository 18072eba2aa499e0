package org.boleline.documentation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.boleline.Tolerances.ROUNDING;
import static org.boleline.Tolerances.SOLVED_CASE;
import static org.boleline.Tolerances.relative;
import static org.boleline.documentation.FirstPlan.in;

import java.util.List;
import java.util.Optional;
import org.boleline.explain.Source;
import org.boleline.geometry.Vector;
import org.boleline.plan.Plan;
import org.boleline.statics.ArrangementResult;
import org.boleline.statics.ContactResult;
import org.boleline.statics.Share;
import org.boleline.statics.Solution;
import org.boleline.statics.Statics;
import org.boleline.statics.StemResult;
import org.boleline.units.Kind;
import org.boleline.units.Units;
import org.junit.jupiter.api.Test;

/** What docs/learn/01-first-plan.md says of its numbers. */
class FirstPlanTest {
  private static final double LOAD = 95 * 9.80665;

  private static List<Solution> compared() {
    Plan plan = FirstPlan.comparison();
    return Statics.analyse(plan).arrangements().stream()
        .map(ArrangementResult::solution)
        .map(Optional::orElseThrow)
        .toList();
  }

  @Test
  void the_load_leg_carries_the_weight_and_the_point_nearly_twice_that() {
    ContactResult point = FirstPlan.solution().contacts().get(0);

    assertThat(in(Units.NEWTON, point.tensionIn())).isCloseTo(LOAD, relative(ROUNDING));
    assertThat(in(Units.NEWTON, point.forceMagnitude()) / LOAD).isBetween(1.9, 2.0);
  }

  @Test
  void the_tail_straight_down_costs_as_much_moment_as_the_load() {
    // Both legs are plumb at one point: equal arms, tensions 1 and 0.95 (the sheave at a half
    // turn).
    StemResult stem = FirstPlan.solution().stem("hornbeam").orElseThrow();
    double load = moment(stem, Share.Origin.LOAD);
    double tail = moment(stem, Share.Origin.TAIL);

    assertThat(tail / load).isCloseTo(0.95, relative(SOLVED_CASE));
  }

  @Test
  void the_shares_of_the_base_moment_bend_the_same_way_and_add_up() {
    StemResult stem = FirstPlan.solution().stem("hornbeam").orElseThrow();
    double sum = stem.shares().stream().mapToDouble(FirstPlanTest::size).sum();

    assertThat(sum)
        .isCloseTo(in(Units.NEWTON_METRE, stem.base().momentMagnitude()), relative(SOLVED_CASE));
  }

  @Test
  void a_tail_that_ends_on_the_stem_leaves_load_times_reach_and_own_weight() {
    for (Solution solution : compared().subList(1, 3)) {
      StemResult stem = solution.stem("hornbeam").orElseThrow();
      ContactResult first = solution.contacts().get(0);
      double reach = first.position().in(Kind.LENGTH)[0];

      assertThat(in(Units.NEWTON_METRE, stem.riggingBase().momentMagnitude()))
          .isCloseTo(LOAD * reach, relative(SOLVED_CASE));
    }
  }

  @Test
  void the_rings_nearly_halve_the_tail_and_the_outer_point_moves_about_half_as_far() {
    List<Solution> compared = compared();

    assertThat(tail(compared.get(2)) / tail(compared.get(1))).isBetween(0.5, 0.6);
    assertThat(moved(compared.get(1)) / moved(compared.get(0))).isBetween(0.45, 0.55);
  }

  @Test
  void all_of_them_balance() {
    assertThat(compared()).allSatisfy(solution -> assertThat(solution.check()).isEmpty());
  }

  @Test
  void what_was_taken_has_sources() {
    assertThat(FirstPlan.plan().taken())
        .allSatisfy(datum -> assertThat(datum.source()).isNotEqualTo(Source.PLAN));
  }

  private static double tail(Solution solution) {
    return in(Units.NEWTON, solution.tailTension());
  }

  private static double moved(Solution solution) {
    Vector<?> movement = solution.stem("hornbeam").orElseThrow().marks().get(0).movement();
    return movement.magnitude().getValue().doubleValue();
  }

  private static double moment(StemResult stem, Share.Origin origin) {
    return stem.shares().stream()
        .filter(share -> share.origin() == origin)
        .mapToDouble(FirstPlanTest::size)
        .sum();
  }

  private static double size(Share share) {
    return in(Units.NEWTON_METRE, share.moment().magnitude());
  }
}
