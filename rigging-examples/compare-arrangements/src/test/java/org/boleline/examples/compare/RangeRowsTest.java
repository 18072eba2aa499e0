package org.boleline.examples.compare;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.boleline.json.PlanReader;
import org.boleline.picture.PictureSpec;
import org.boleline.picture.RangePlot;
import org.boleline.plan.Arrangement;
import org.boleline.plan.Plan;
import org.boleline.rope.Motion;
import org.boleline.statics.Statics;
import org.boleline.study.RangeResult;
import org.junit.jupiter.api.Test;

class RangeRowsTest {
  private static final Plan FEW =
      PlanReader.read(Plans.text("hornbeam.json").replace("\"samples\": 64", "\"samples\": 16"));

  /** A guess at the mass as a distribution; nothing else is a range. */
  private static Plan pole(String spread) {
    return PlanReader.read(
        Plans.text("pole.json")
            .replaceFirst(
                "\"piece\"",
                "\"ranges\": [{\"input\": \"/piece/mass\", "
                    + spread
                    + ", \"source\": \"invented\"}], \"rangeStudy\": {\"samples\": 64}, \"piece\""));
  }

  @Test
  void each_arrangement_shows_its_headline_figures_within_their_ends() {
    Table table = RangeRows.table(RangeRows.study(FEW), UnitSystem.SI);
    List<Table.Row> rows = table.rows().stream().filter(row -> !row.cells().isEmpty()).toList();

    assertThat(table.headings()).containsExactly("as planned", "least", "greatest");
    assertThat(rows).hasSize(6 * 5);
    assertThat(rows.subList(0, 5))
        .extracting(Table.Row::label)
        .containsExactly(
            "  Load leg",
            "  Force on point 1",
            "  Tension at the tail",
            "  Base moment",
            "  Movement of the tip");
    for (Table.Row row : rows) {
      double planned = Double.parseDouble(row.cells().get(0));
      assertThat(planned)
          .isBetween(
              Double.parseDouble(row.cells().get(1)), Double.parseDouble(row.cells().get(2)));
    }
    // the load leg is the weight alone: 80 to 115 kg times 9.80665 m/s2
    assertThat(rows.get(0).cells()).containsExactly("932", "785", "1128");
  }

  @Test
  void says_of_intervals_that_no_chance_follows() {
    List<RangeResult> results = RangeRows.study(FEW);

    assertThat(RangeRows.text(results)).startsWith("16 samples").contains("no chance follows");
    assertThat(RangeRows.stated(results, UnitSystem.SI))
        .extracting(Entry::text)
        .first()
        .isEqualTo("interval, 80 kg to 115 kg (invented: twigs and leaves are guessed)");
    // 80 and 115 over 0.45359237; 4e5 and 2e6 over 1.3558179, a pound-force foot
    assertThat(RangeRows.stated(results, UnitSystem.US))
        .extracting(entry -> entry.text().replace(Scale.HARD_BLANK, " "))
        .contains(
            "interval, 176.4 lb to 253.5 lb (invented: twigs and leaves are guessed)",
            "interval, 295000 lbf·ft/rad to 1475000 lbf·ft/rad (invented)");
  }

  @Test
  void of_distributions_it_shows_percents_and_counts_samples_without_a_figure() {
    List<RangeResult> results =
        RangeRows.study(pole("\"distribution\": {\"normal\": {\"variation\": 0.6}}"));

    assertThat(RangeRows.text(results)).contains("percent");
    assertThat(RangeRows.table(results, UnitSystem.SI).headings())
        .containsExactly("as planned", "least", "5%", "50%", "95%", "greatest");
    assertThat(RangeRows.stated(results, UnitSystem.SI))
        .extracting(Entry::text)
        .anyMatch(text -> text.contains("samples of") && text.contains("have no result"));
  }

  @Test
  void bars_tell_what_a_spread_comes_from_where_it_is_widest() {
    Findings findings = Findings.withCauses(Statics.analyse(Plans.HORNBEAM));
    List<RangeRows.Bars> bars = RangeRows.bars(findings);

    assertThat(bars)
        .extracting(RangeRows.Bars::title)
        .containsExactly(
            "Load leg",
            "Force on point 1",
            "Tension at the tail",
            "Base moment",
            "Movement of the tip");
    assertThat(bars).allSatisfy(one -> assertThat(one.spreads()).hasSize(6));
    // the load leg is the weight alone; a stem with no tail on it moves most, by a weak root
    assertThat(bars.get(0).causes()).containsExactly(new RangePlot.Cause("mass of the piece", 1.0));
    assertThat(bars.get(4).widest()).isEqualTo("arrangement 1");
    assertThat(bars.get(4).causes().get(0).name()).startsWith("root stiffness");
    // friction multiplies what rings carry to the tail, and more in raising
    assertThat(bars.get(2).widest()).isEqualTo("arrangement 6");
    assertThat(bars.get(2).causes().get(0).name()).startsWith("friction of the ring");
    assertThat(bars.get(2).causes())
        .allSatisfy(cause -> assertThat(cause.share()).isBetween(0.05, 1.0));
  }

  @Test
  void of_a_held_load_the_end_is_named() {
    Plan lowered = pole("\"interval\": [\"1 kg\", \"2 kg\"]");
    Arrangement held = lowered.arrangements().get(0).toBuilder().motion(Motion.HELD).build();
    Plan plan = lowered.toBuilder().arrangements(List.of(held)).build();
    Table table = RangeRows.table(RangeRows.study(plan), UnitSystem.SI);
    Findings findings = Findings.of(Statics.analyse(plan));

    assertThat(table.rows().get(0).label()).endsWith(", held");
    assertThat(table.rows().subList(1, table.rows().size()))
        .isNotEmpty()
        .allSatisfy(row -> assertThat(row.label()).endsWith(", about to run"));
    assertThat(RangeRows.bars(findings))
        .allSatisfy(
            one ->
                assertThat(
                        RangePlot.of(
                                one.title(),
                                one.spreads(),
                                one.widest(),
                                one.causes(),
                                PictureSpec.STANDARD)
                            .svg())
                    .contains("1 about to run: " + held.id()));
  }

  @Test
  void bars_without_a_study_of_causes_have_none() {
    Findings findings = Findings.of(Statics.analyse(FEW));

    assertThat(RangeRows.bars(findings))
        .isNotEmpty()
        .allSatisfy(one -> assertThat(one.causes()).isEmpty());
  }

  @Test
  void a_plan_without_ranges_shows_none() {
    assertThat(RangeRows.study(Plans.POLE)).isEmpty();
    assertThat(RangeRows.table(List.of(), UnitSystem.SI).rows()).isEmpty();
    assertThat(RangeRows.text(List.of())).isEmpty();
  }
}
