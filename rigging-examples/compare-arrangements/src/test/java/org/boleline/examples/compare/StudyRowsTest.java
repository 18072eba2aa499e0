package org.boleline.examples.compare;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.boleline.drop.DropFound;
import org.boleline.drop.Drops;
import org.boleline.statics.Statics;
import org.boleline.study.Study;
import org.boleline.study.StudyPlan;
import org.boleline.study.WrapsWindow;
import org.boleline.units.Amounts;
import org.boleline.units.Kind;
import org.boleline.units.Si;
import org.junit.jupiter.api.Test;

class StudyRowsTest {
  private static final List<StudyRows.Told> TOLD = told(Plans.ASKING, UnitSystem.SI);

  private static List<StudyRows.Told> told(StudyPlan plan, UnitSystem units) {
    return StudyRows.of(plan.answers(), plan.plan(), units);
  }

  private static StudyRows.Told of(String kind, List<StudyRows.Told> told) {
    List<String> kinds = Plans.ASKING.studies().stream().map(Study::kind).toList();
    return told.get(kinds.indexOf(kind));
  }

  private static StudyRows.Told of(String kind) {
    return of(kind, TOLD);
  }

  private static String entry(StudyRows.Told told, String label) {
    return told.entries().stream()
        .filter(entry -> entry.label().equals(label))
        .map(entry -> entry.text().replace(Scale.HARD_BLANK, " "))
        .findFirst()
        .orElseThrow();
  }

  private static Table.Row row(StudyRows.Told told, String label) {
    return told.table().rows().stream()
        .filter(row -> row.label().equals(label))
        .findFirst()
        .orElseThrow();
  }

  private static double first(String text) {
    return Double.parseDouble(text.substring(0, text.indexOf(' ')));
  }

  /** Source: the capstan equation: the logarithm of the tensions' ratio over the turn. */
  @Test
  void friction_of_a_trial_is_that_of_the_capstan_equation() {
    double turn = Math.toRadians(170);
    StudyRows.Told trial = of("frictionTrial");
    assertThat(Double.parseDouble(entry(trial, "coefficient of friction")))
        .isCloseTo(Math.log(1200.0 / 700) / turn, within(5e-4));
    assertThat(Double.parseDouble(entry(trial, "least, within the error")))
        .isCloseTo(Math.log(1180.0 / 720) / turn, within(5e-4));
    assertThat(Double.parseDouble(entry(trial, "greatest, within the error")))
        .isCloseTo(Math.log(1220.0 / 680) / turn, within(5e-4));
  }

  @Test
  void a_sweep_goes_through_the_numbers_of_the_plan() {
    StudyRows.Told sweep = of("sweep");
    String friction = "Friction of the ring of point 1, arrangement 2";
    assertThat(row(sweep, friction).cells()).containsExactly("0.1", "0.15", "0.2", "0.25", "0.3");
    Table planned = Rows.table(Statics.analyse(Plans.SPRUCE), UnitSystem.SI);
    String force =
        planned.rows().stream()
            .filter(row -> row.label().startsWith("Force on point 1 "))
            .findFirst()
            .orElseThrow()
            .cells()
            .get(1);
    assertThat(row(sweep, "Force on point 1").cells().get(2)).isEqualTo(force);
    assertThat(row(sweep, "Force on point 1").unit()).isEqualTo("N");
    // over neighbours: 100 % times the difference of logarithms, of readings and of inputs
    List<String> catches = row(sweep, "Load leg of the catch, made fast").cells();
    double slope =
        Math.log(Double.parseDouble(catches.get(3)) / Double.parseDouble(catches.get(1)))
            / Math.log(0.25 / 0.15);
    int below = sweep.table().rows().indexOf(row(sweep, "Load leg of the catch, made fast")) + 1;
    assertThat(Double.parseDouble(sweep.table().rows().get(below).cells().get(2)))
        .isCloseTo(slope, within(0.02));
  }

  @Test
  void rope_that_is_let_run_as_far_as_told_keeps_to_the_limit() {
    StudyRows.Told told = of("runNeeded");
    assertThat(told.question().replace(Scale.HARD_BLANK, " "))
        .isEqualTo(
            "How far the rope must run in arrangement 2 for at most 3000 N at the load leg of the"
                + " catch");
    double run = first(entry(told, "rope let run"));
    DropFound drop =
        (DropFound) Drops.analyse(Statics.analyse(Plans.SPRUCE)).drop("ring").orElseThrow();
    assertThat(
            Si.value(
                drop.running(Amounts.metres(run)).orElseThrow().loads().loadLeg(),
                Kind.FORCE,
                "load leg"))
        .isCloseTo(3000, within(3.0));
    assertThat(entry(told, "if it is not let run")).contains("may fail");
  }

  @Test
  void the_limit_that_comes_first_is_named() {
    StudyRows.Told biggest = of("biggestPiece");
    assertThat(entry(biggest, "biggest")).endsWith("kg; a little more breaks a limit of the study");
    assertThat(entry(biggest, "Load leg of the catch, made fast"))
        .isEqualTo("12000 N, wanted at most 12000 N; this limit comes first");
    assertThat(entry(biggest, "Force on point 1")).endsWith(", wanted at most 5000 N");
  }

  @Test
  void differences_and_their_shares_add_up() {
    StudyRows.Told changed = of("whatChanged");
    List<String> moment = row(changed, "Tension at the tail").cells();
    double difference = Double.parseDouble(moment.get(2));
    assertThat(Double.parseDouble(moment.get(1)) - Double.parseDouble(moment.get(0)))
        .isCloseTo(difference, within(1.5));
    assertThat(changed.entries())
        .extracting(entry -> entry.text().replace(Scale.HARD_BLANK, " "))
        .anySatisfy(
            text ->
                assertThat(text)
                    .startsWith("Tension at the tail " + moment.get(2) + " N: friction -"));
  }

  @Test
  void wraps_are_those_of_the_answer() {
    WrapsWindow.Answer answer =
        Plans.ASKING.answers().stream()
            .filter(WrapsWindow.Answer.class::isInstance)
            .map(WrapsWindow.Answer.class::cast)
            .findFirst()
            .orElseThrow();
    StudyRows.Told window = of("window");
    assertThat(Double.parseDouble(entry(window, "least to hold")))
        .isCloseTo(answer.leastWraps().figure().orElseThrow().ratio(), within(5e-3));
    assertThat(Double.parseDouble(entry(window, "most to still run")))
        .isCloseTo(answer.mostWraps().figure().orElseThrow().ratio(), within(5e-3));
    assertThat(window.entries()).hasSize(2);
  }

  @Test
  void cuts_follow_each_other_from_the_tip_down() {
    StudyRows.Told cuts = of("cutPlan");
    List<Double> at = numbers(row(cuts, "Cut, along the stem"));
    List<Double> lengths = numbers(row(cuts, "Length of the piece"));
    assertThat(lengths).containsExactly(1.0, 1.5, 1.0);
    assertThat(at.get(0) - at.get(1)).isCloseTo(lengths.get(1), within(0.06));
    assertThat(at.get(1) - at.get(2)).isCloseTo(lengths.get(2), within(0.06));
    assertThat(row(cuts, "  in two halves, the greater").cells()).hasSize(3);
  }

  private static List<Double> numbers(Table.Row row) {
    return row.cells().stream().map(Double::valueOf).toList();
  }

  @Test
  void points_are_counted_with_the_first() {
    StudyRows.Told best = of("bestStations");
    assertThat(best.table().headings())
        .containsExactly("1 point", "2 points", "3 points", "4 points");
    assertThat(row(best, "Point 2, along the stem").cells().get(0)).isEqualTo("–");
    assertThat(entry(best, "enough")).isEqualTo("1 point comes within a thousandth of the least");
  }

  @Test
  void a_measured_movement_gives_the_stiffness_that_gives_it_back() {
    StudyRows.Told trial = of("trial");
    String value = entry(trial, "value");
    StudyPlan back =
        Plans.asking(
            "spruce.json",
            "[{\"kind\": \"sweep\", \"arrangement\": \"ring\","
                + " \"input\": \"/stems/0/wood/modulusOfElasticity\", \"from\": \""
                + value
                + "\", \"to\": \"40 GPa\", \"steps\": 1,"
                + " \"readings\": [\"/stems/0/tip/movementMagnitude\"]}]");
    assertThat(row(told(back, UnitSystem.SI).get(0), "Movement of the tip").cells().get(0))
        .isEqualTo("7.00");
  }

  @Test
  void a_fork_is_told_to_open_or_close() {
    StudyPlan fork =
        Plans.asking(
            "sycamore.json",
            "[{\"kind\": \"forkPull\", \"arrangement\": \"sheave on A, sheave high on B\","
                + " \"first\": 0, \"second\": 1}]");
    StudyRows.Told told = told(fork, UnitSystem.SI).get(0);
    assertThat(told.question())
        .isEqualTo(
            "Whether the rope opens or closes the fork between points 1 and 2 of arrangement 2");
    // a rope over both, with the load on one side, pulls one toward the other
    assertThat(entry(told, "on the fork")).startsWith("-").endsWith("N, closes it");
  }

  @Test
  void of_a_held_load_the_end_is_named() {
    StudyPlan held =
        Plans.asking(
            "mixed.json",
            "[{\"kind\": \"sweep\", \"arrangement\": \"held\", \"input\": \"/piece/mass\","
                + " \"from\": \"100 kg\", \"to\": \"150 kg\", \"steps\": 1,"
                + " \"readings\": [\"/tail/tension\", \"/aboutToRise/tail/tension\"]}]");
    StudyRows.Told told = told(held, UnitSystem.SI).get(0);
    List<Double> run = numbers(row(told, "Tension at the tail, about to run"));
    List<Double> rise = numbers(row(told, "Tension at the tail, about to rise"));
    // 150 kg at 9.80665 m/s2 lies between both ends
    assertThat(run.get(1)).isLessThan(1471);
    assertThat(rise.get(1)).isGreaterThan(1471);
  }

  @Test
  void inputs_of_a_sweep_are_without_noise_of_the_last_digits() {
    // 200 lb and 230 lb, of 0.45359237 kg each: in between 0.1 + 0.2 is no 0.3
    StudyPlan pounds =
        Plans.asking(
            "mixed.json",
            "[{\"kind\": \"sweep\", \"arrangement\": \"held\", \"input\": \"/piece/mass\","
                + " \"from\": \"200 lb\", \"to\": \"230 lb\", \"steps\": 3,"
                + " \"readings\": [\"/tail/tension\"]}]");
    assertThat(told(pounds, UnitSystem.SI).get(0).table().rows().get(0).cells())
        .containsExactly("90.7185", "95.2544", "99.7903", "104.326");
    assertThat(told(pounds, UnitSystem.US).get(0).table().rows().get(0).cells())
        .containsExactly("200", "210", "220", "230");
  }

  @Test
  void what_has_no_answer_says_why() {
    StudyRows.Told fork = of("forkPull");
    assertThat(entry(fork, "no answer")).contains("on two stems");
    StudyPlan heavy =
        Plans.asking(
            "pole.json",
            "[{\"kind\": \"sweep\", \"arrangement\": \"high\", \"input\": \"/piece/mass\","
                + " \"from\": \"1 kg\", \"to\": \"61 kg\", \"steps\": 1,"
                + " \"readings\": [\"/stems/0/tip/movementMagnitude\"]}]");
    StudyRows.Told sweep = told(heavy, UnitSystem.SI).get(0);
    assertThat(row(sweep, "Mass of the piece").cells()).containsExactly("1", "61");
    assertThat(row(sweep, "Mass of the piece").unit()).isEqualTo("kg");
    assertThat(row(sweep, "Movement of the tip").cells().get(1)).isEqualTo("–");
    assertThat(entry(sweep, "2")).startsWith("Movement of the tip: unstable at 0.");
  }

  @Test
  void pounds_and_feet_are_the_same_answers() {
    List<StudyRows.Told> us = told(Plans.ASKING, UnitSystem.US);
    // 0.3048 m and 4.4482216152605 N: international foot and pound-force
    assertThat(first(entry(of("runNeeded", us), "rope let run")) * 0.3048)
        .isCloseTo(first(entry(of("runNeeded"), "rope let run")), within(2e-3));
    assertThat(
            numbers(row(of("cutPlan", us), "Load leg of the catch, made fast")).get(0)
                * 4.4482216152605)
        .isCloseTo(
            numbers(row(of("cutPlan"), "Load leg of the catch, made fast")).get(0), within(3.0));
    assertThat(of("frictionTrial", us).question().replace(Scale.HARD_BLANK, " "))
        .startsWith("Friction, if 269.8 lbf on one side and 157.4 lbf");
  }

  @Test
  void the_page_shows_them_and_without_studies_says_nothing_of_them() {
    Findings findings = Findings.of(Statics.analyse(Plans.SPRUCE));
    String page =
        Page.print(Comparison.of(findings.answering(Plans.ASKING), UnitSystem.SI), Glyphs.UNICODE);
    assertThat(page.lines()).allMatch(line -> Page.width(line) <= Page.WIDTH);
    assertThat(page.replaceAll("\\s+", " "))
        .contains(
            "Studies that the plan asks for",
            "this limit comes first",
            "150 N at the hand, 5 N of rope");
    assertThat(Page.print(Comparison.of(findings, UnitSystem.SI), Glyphs.UNICODE))
        .doesNotContain("Studies");
  }
}
