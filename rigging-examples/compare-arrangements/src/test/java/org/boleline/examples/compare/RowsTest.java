package org.boleline.examples.compare;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.boleline.geometry.Vector;
import org.boleline.plan.Plan;
import org.boleline.statics.Solution;
import org.boleline.statics.StaticResult;
import org.boleline.statics.Statics;
import org.boleline.units.Kind;
import org.boleline.units.Si;
import org.junit.jupiter.api.Test;

class RowsTest {
  /** Standard gravity: exact by the third General Conference on Weights and Measures, 1901. */
  private static final double WEIGHT = 95 * 9.80665;

  private static Table table(Plan plan) {
    return Rows.table(Statics.analyse(plan), UnitSystem.SI);
  }

  private static Table.Row row(Table table, String label, int which) {
    return table.rows().stream().filter(r -> r.label().equals(label)).toList().get(which);
  }

  private static double cell(Table table, String label, int which, int column) {
    return Double.parseDouble(row(table, label, which).cells().get(column));
  }

  private static Solution solution(StaticResult result, int index) {
    return result.arrangements().get(index).solution().orElseThrow();
  }

  @Test
  void numbers_are_those_of_the_result_to_the_last_figure_shown() {
    StaticResult result = Statics.analyse(Plans.HORNBEAM);
    Table table = Rows.table(result, UnitSystem.SI);

    assertThat(table.headings()).containsExactly("1", "2", "3", "4", "5", "6");
    for (int i = 0; i < 6; i++) {
      Solution solution = solution(result, i);
      var stem = solution.stems().get(0);
      var point = solution.contacts().get(0);
      assertThat(cell(table, "Tension at the tail", 0, i))
          .isCloseTo(Si.value(solution.tailTension(), Kind.FORCE, "tail"), within(0.5));
      assertThat(cell(table, "Force on point 1 at 11.6 m", 0, i))
          .isCloseTo(Si.value(point.forceMagnitude(), Kind.FORCE, "force"), within(0.5));
      assertThat(cell(table, "  across the stem", 0, i))
          .isCloseTo(Si.value(point.across(), Kind.FORCE, "across"), within(0.5));
      assertThat(cell(table, "Movement of the outer point (1)", 0, i))
          .isCloseTo(1000 * length(point.movement()), within(0.5));
      assertThat(cell(table, "Base moment", 0, i))
          .isCloseTo(
              Si.value(stem.base().momentMagnitude(), Kind.MOMENT, "moment") / 1000, within(0.05));
      assertThat(cell(table, "Greatest fibre stress, pressed side", 0, i))
          .isCloseTo(
              Si.value(stem.compressionStress().value(), Kind.PRESSURE, "stress") / 1e6,
              within(0.005));
      assertThat(cell(table, "Load factor to strength", 0, i))
          .isCloseTo(stem.strengthReach().orElseThrow().loadFactor(), within(0.005));
    }
  }

  private static double length(Vector<javax.measure.quantity.Length> vector) {
    return Si.value(vector.magnitude(), Kind.LENGTH, "length");
  }

  /**
   * By its definition, a sheave of efficiency 0.95 passes 0.95 of the tension on at a half turn.
   */
  @Test
  void a_tail_straight_down_from_a_sheave_carries_its_efficiency_times_the_weight() {
    assertThat(cell(table(Plans.HORNBEAM), "Tension at the tail", 0, 0))
        .isCloseTo(0.95 * WEIGHT, within(0.5));
  }

  /** Euler-Eytelwein: over two wraps of friction 0.18 tension falls by exp(0.18 x 4 pi). */
  @Test
  void the_hand_holds_what_the_wraps_leave() {
    StaticResult result = Statics.analyse(Plans.HORNBEAM);
    double tail = Si.value(solution(result, 1).tailTension(), Kind.FORCE, "tail");

    assertThat(cell(Rows.table(result, UnitSystem.SI), "  behind the wraps, at the hand", 0, 1))
        .isCloseTo(tail / Math.exp(0.18 * 4 * Math.PI), within(0.5));
  }

  /** A moment is a force times its arm; the load leg hangs plumb under the outer point. */
  @Test
  void load_times_reach_is_the_weight_times_the_level_distance_of_the_outer_point() {
    StaticResult result = Statics.analyse(Plans.HORNBEAM);
    Table table = Rows.table(result, UnitSystem.SI);
    for (int i = 0; i < 6; i++) {
      double reach = solution(result, i).contacts().get(0).position().in(Kind.LENGTH)[0];
      assertThat(cell(table, "  load × reach", 0, i))
          .isCloseTo(WEIGHT * reach / 1000, within(0.05));
    }
  }

  @Test
  void parts_of_a_base_moment_add_up_to_it() {
    for (Plan plan : List.of(Plans.HORNBEAM, Plans.SYCAMORE, Plans.MIXED)) {
      for (var answer : Statics.analyse(plan).arrangements()) {
        for (var stem : answer.solution().orElseThrow().stems()) {
          BaseMoment moment = BaseMoment.of(stem);
          double sum = 0;
          for (var share : stem.shares()) {
            sum += moment.part(share.origin());
          }
          double whole = Si.value(stem.base().momentMagnitude(), Kind.MOMENT, "moment");
          assertThat(sum).isCloseTo(whole, within(1e-9 * whole));
          assertThat(moment.total()).isEqualTo(sum);
        }
      }
    }
  }

  @Test
  void a_held_load_has_a_column_for_each_end() {
    StaticResult result = Statics.analyse(Plans.MIXED);
    Table table = Rows.table(result, UnitSystem.SI);
    Solution held = solution(result, 1);

    assertThat(table.headings())
        .containsExactly("1", "2 run", "2 rise", "3", "4", "5", "6", "7 run", "7 rise");
    assertThat(cell(table, "Tension at the tail", 0, 1))
        .isCloseTo(Si.value(held.tailTension(), Kind.FORCE, "tail"), within(0.5));
    assertThat(cell(table, "Tension at the tail", 0, 2))
        .isCloseTo(
            Si.value(held.otherEnd().orElseThrow().tailTension(), Kind.FORCE, "tail"), within(0.5));
    // A held load lies between the lowered and the raised one, which come before and after it.
    assertThat(row(table, "Tension at the tail", 0).cells().get(1))
        .isEqualTo(row(table, "Tension at the tail", 0).cells().get(0));
    assertThat(row(table, "Tension at the tail", 0).cells().get(2))
        .isEqualTo(row(table, "Tension at the tail", 0).cells().get(3));
  }

  @Test
  void a_point_that_does_not_bear_shows_no_numbers() {
    Table table = table(Plans.MIXED);

    assertThat(table.rows()).noneMatch(row -> row.label().startsWith("Force on point 2"));
  }

  @Test
  void lost_stability_shows_where_and_no_numbers_beside() {
    Table table = table(Plans.POLE);

    assertThat(row(table, "Outcome", 0).cells()).containsExactly("UNSTABLE", "stable");
    assertThat(cell(table, "  lost at this share of the load", 0, 0)).isBetween(0.0, 1.0);
    table.rows().stream()
        .filter(row -> !row.cells().isEmpty())
        .filter(row -> !row.label().equals("Outcome") && !row.label().contains("lost at"))
        .forEach(row -> assertThat(row.cells().get(0)).as(row.label()).isEqualTo("–"));
  }

  @Test
  void an_arrangement_that_was_not_solved_shows_no_numbers() {
    Table table = Rows.table(Plans.notSolved(Plans.SPRUCE), UnitSystem.SI);

    assertThat(row(table, "Outcome", 0).cells()).containsExactly("unsolved", "stable", "stable");
    assertThat(row(table, "Tension at the tail", 0).cells().get(0)).isEqualTo("–");
  }

  @Test
  void no_stated_strength_gives_no_factor() {
    assertThat(row(table(Plans.SYCAMORE), "Load factor to strength of A", 0).cells())
        .containsOnly("–");
  }

  /** 1 lbf = 4.4482216152605 N, 1 in = 25.4 mm, 1 ft = 0.3048 m: exact by definition. */
  @Test
  void us_units_are_the_same_numbers_converted() {
    StaticResult result = Statics.analyse(Plans.HORNBEAM);
    Table us = Rows.table(result, UnitSystem.US);
    for (int i = 0; i < 6; i++) {
      Solution solution = solution(result, i);
      double moment =
          Si.value(solution.stems().get(0).base().momentMagnitude(), Kind.MOMENT, "moment");
      assertThat(cell(us, "Tension at the tail", 0, i))
          .isCloseTo(
              Si.value(solution.tailTension(), Kind.FORCE, "tail") / 4.4482216152605, within(0.5));
      assertThat(cell(us, "Movement of the outer point (1)", 0, i))
          .isCloseTo(length(solution.contacts().get(0).movement()) / 0.3048, within(5e-4));
      assertThat(cell(us, "Base moment", 0, i))
          .isCloseTo(moment / 4.4482216152605 / 0.3048, within(0.5));
    }
    assertThat(us.rows().stream().map(Table.Row::unit).distinct())
        .containsExactlyInAnyOrder("lbf", "lbf·ft", "psi", "ft", "");
  }
}
