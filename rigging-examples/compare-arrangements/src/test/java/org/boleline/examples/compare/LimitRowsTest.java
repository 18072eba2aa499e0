package org.boleline.examples.compare;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.boleline.drop.Drops;
import org.boleline.limits.Check;
import org.boleline.limits.Checks;
import org.boleline.plan.Plan;
import org.boleline.statics.Statics;
import org.junit.jupiter.api.Test;

class LimitRowsTest {
  private static Checks checks(Plan plan) {
    return Checks.of(Drops.analyse(Statics.analyse(plan)));
  }

  @Test
  void each_part_is_shown_once_for_each_arrangement_the_most_used_first() {
    Checks checks = checks(Plans.HORNBEAM);
    List<Table.Row> rows = LimitRows.table(checks, UnitSystem.SI).rows();
    List<String> used =
        rows.stream()
            .filter(row -> !row.cells().isEmpty())
            .limit(5)
            .map(row -> row.cells().get(2))
            .toList();
    List<Integer> percents =
        used.stream().map(cell -> Integer.valueOf(cell.replaceAll("[^0-9]", ""))).toList();

    assertThat(percents).isSortedAccordingTo((a, b) -> b - a);
    assertThat(rows.stream().filter(row -> row.label().startsWith("  root"))).hasSize(6);
    assertThat(rows.stream().filter(row -> row.label().startsWith("  block or ring"))).hasSize(6);
  }

  @Test
  void the_weakest_link_stands_first_and_is_named_with_who_asks() {
    Checks checks = checks(Plans.HORNBEAM);
    List<Entry> weakest = LimitRows.weakest(checks, UnitSystem.SI);

    assertThat(weakest).hasSize(6);
    for (int i = 0; i < 6; i++) {
      Check expected = checks.arrangements().get(i).weakest().orElseThrow();
      assertThat(weakest.get(i).label()).isEqualTo(Integer.toString(i + 1));
      assertThat(weakest.get(i).text())
          .startsWith(expected.name())
          .contains(" against ", "the factor", "asked by");
    }
  }

  @Test
  void who_asks_for_a_factor_is_named() {
    assertThat(LimitRows.asked(checks(Plans.HORNBEAM)))
        .contains(new Entry("rope", "10, asked by rule 4 of the invented crew"));
  }

  @Test
  void a_plan_without_limits_shows_none() {
    Checks checks = checks(Plans.POLE);

    assertThat(LimitRows.table(checks, UnitSystem.SI).rows()).isEmpty();
    assertThat(LimitRows.weakest(checks, UnitSystem.SI)).isEmpty();
  }

  @Test
  void no_word_judges() {
    String page =
        Page.print(
            Comparison.of(Findings.of(Statics.analyse(Plans.HORNBEAM)), UnitSystem.SI),
            Glyphs.UNICODE);

    assertThat(page).contains("Limits that the plan states", "Weakest link", "Factors asked");
    assertThat(page.toLowerCase(java.util.Locale.ROOT))
        .doesNotContain("safe", "approved", "compliant");
  }
}
