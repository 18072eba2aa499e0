package org.boleline.examples.compare;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import org.boleline.drop.DropFound;
import org.boleline.drop.DropResult;
import org.boleline.drop.Drops;
import org.boleline.drop.LetRun;
import org.boleline.limits.Checks;
import org.boleline.plan.Arrangement;
import org.boleline.plan.DropSpec;
import org.boleline.plan.Plan;
import org.boleline.rope.Rope;
import org.boleline.statics.Statics;
import org.boleline.units.Amounts;
import org.boleline.units.Kind;
import org.boleline.units.Si;
import org.junit.jupiter.api.Test;

class CatchRowsTest {
  private static DropResult drops(Plan plan) {
    return Drops.analyse(Statics.analyse(plan));
  }

  private static Plan with(Plan plan, DropSpec drop) {
    Arrangement first = plan.arrangements().get(0).toBuilder().drop(drop).build();
    return plan.toBuilder().arrangements(List.of(first)).build();
  }

  private static Table.Row row(Table table, String label, int which) {
    return table.rows().stream().filter(r -> r.label().equals(label)).toList().get(which);
  }

  private static double cell(Table table, String label, int which, int column) {
    return Double.parseDouble(row(table, label, which).cells().get(column));
  }

  @Test
  void numbers_are_those_of_the_result_to_the_last_figure_shown() {
    DropResult result = drops(Plans.SPRUCE);
    Table table = CatchRows.table(result, UnitSystem.SI);

    assertThat(table.headings().stream().map(h -> h.replace(Scale.HARD_BLANK, " ")))
        .containsExactly("locked", "run 1 m", "run 2 m", "run 3 m");
    for (int i = 0; i < 3; i++) {
      DropFound drop = (DropFound) result.drops().get(i).orElseThrow();
      var loads = drop.loads();
      assertThat(cell(table, "  Load leg", i, 0))
          .isCloseTo(Si.value(loads.loadLeg(), Kind.FORCE, "load leg"), within(0.5));
      assertThat(cell(table, "  Force on point 1", i, 0))
          .isCloseTo(Si.value(loads.points().get(0).magnitude(), Kind.FORCE, "point"), within(0.5));
      assertThat(cell(table, "  Room needed below its start", i, 0))
          .isCloseTo(Si.value(drop.clearanceNeeded(), Kind.LENGTH, "room"), within(0.005));
      assertThat(cell(table, "  Base moment", i, 0))
          .isCloseTo(
              Si.value(drop.baseMoments(loads).get(0).magnitude(), Kind.MOMENT, "moment") / 1000,
              within(0.005));
      LetRun.Stopped two = drop.running(Amounts.metres(2)).orElseThrow();
      assertThat(cell(table, "  Tension at the device", i, 2))
          .isCloseTo(Si.value(two.slipTension(), Kind.FORCE, "slip"), within(0.5));
    }
  }

  @Test
  void arrangements_without_a_drop_have_no_rows() {
    assertThat(CatchRows.table(drops(Plans.SYCAMORE), UnitSystem.SI).rows()).isEmpty();
    assertThat(
            CatchRows.table(drops(Plans.HORNBEAM), UnitSystem.SI).rows().stream()
                .filter(row -> row.label().equals("  Load leg")))
        .hasSize(4);
  }

  @Test
  void a_run_that_the_plan_states_has_a_column_of_its_own() {
    DropSpec slips = DropSpec.of(Amounts.metres(1), DropSpec.Slipping.of(Amounts.kilonewtons(2)));
    Table table = CatchRows.table(drops(with(Plans.HORNBEAM, slips)), UnitSystem.SI);

    assertThat(table.headings()).hasSize(5).endsWith("as stated");
    assertThat(cell(table, "  Tension at the tail", 0, 4)).isEqualTo(2000);
    assertThat(table.rows().get(0).label().replace(Scale.HARD_BLANK, " "))
        .isEqualTo("1  one point, tail straight down; falls 1 m; stated: slips at 2000 N");
  }

  @Test
  void a_device_that_never_stops_it_says_so_and_changes_no_exit_status() {
    DropSpec slips = DropSpec.of(Amounts.metres(1), DropSpec.Slipping.of(Amounts.newtons(200)));
    Table table = CatchRows.table(drops(with(Plans.HORNBEAM, slips)), UnitSystem.SI);

    assertThat(row(table, "  Room needed below its start", 0).cells().get(4)).isEqualTo("no stop");
    String plan =
        Plans.text("spruce.json")
            .replace("\"device\": \"locked\"", "\"device\": {\"slipTension\": \"10 N\"}");
    Run run = Run.of(plan, java.nio.charset.StandardCharsets.UTF_8, "-");
    assertThat(run.status()).isZero();
    assertThat(run.out()).contains("no stop");
  }

  @Test
  void a_drop_that_was_not_worked_out_is_told_among_the_cautions() {
    Plan plan = Plans.SPRUCE.toBuilder().rope(Rope.UNSTATED).build();
    DropResult result = drops(plan);

    assertThat(CatchRows.table(result, UnitSystem.SI).rows()).isEmpty();
    assertThat(Notes.cautions(Checks.of(result), UnitSystem.SI))
        .filteredOn(entry -> entry.text().contains("not worked out"))
        .singleElement()
        .satisfies(entry -> assertThat(entry.label()).isEqualTo("1–3"));
  }

  @Test
  void a_constant_force_has_no_runs() {
    DropSpec stop =
        DropSpec.of(Amounts.metres(1), DropSpec.Locked.LOCKED)
            .withConstantForceOver(Amounts.metres(0.5));
    Table table = CatchRows.table(drops(with(Plans.HORNBEAM, stop)), UnitSystem.SI);

    assertThat(row(table, "  Load leg", 0).cells()).element(1).isEqualTo("–");
    // W (1 + h / s), closed form, with standard gravity
    assertThat(cell(table, "  Load leg", 0, 0)).isCloseTo(3 * 95 * 9.80665, within(0.5));
  }

  /** 1 lbf = 4.4482216152605 N, 1 ft = 0.3048 m: exact by definition. */
  @Test
  void us_units_are_the_same_numbers_converted() {
    DropResult result = drops(Plans.SPRUCE);
    Table us = CatchRows.table(result, UnitSystem.US);
    DropFound drop = (DropFound) result.drops().stream().flatMap(Optional::stream).toList().get(0);

    assertThat(cell(us, "  Load leg", 0, 0))
        .isCloseTo(
            Si.value(drop.loads().loadLeg(), Kind.FORCE, "load leg") / 4.4482216152605,
            within(0.5));
    assertThat(cell(us, "  Room needed below its start", 0, 0))
        .isCloseTo(Si.value(drop.clearanceNeeded(), Kind.LENGTH, "room") / 0.3048, within(0.05));
  }
}
