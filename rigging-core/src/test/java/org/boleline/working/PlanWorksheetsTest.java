package org.boleline.working;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.boleline.units.Amounts.degrees;
import static org.boleline.units.Amounts.gigapascals;
import static org.boleline.units.Amounts.kilograms;
import static org.boleline.units.Amounts.kilogramsPerCubicMetre;
import static org.boleline.units.Amounts.metres;

import java.util.List;
import org.boleline.drop.Drops;
import org.boleline.geometry.Heading;
import org.boleline.limits.Checks;
import org.boleline.plan.Arrangement;
import org.boleline.plan.Contact;
import org.boleline.plan.Piece;
import org.boleline.plan.Plan;
import org.boleline.plan.Tail;
import org.boleline.rope.Ideal;
import org.boleline.rope.Motion;
import org.boleline.statics.Outcome;
import org.boleline.statics.Solution;
import org.boleline.statics.StaticResult;
import org.boleline.statics.Statics;
import org.boleline.stem.Diameters;
import org.boleline.stem.Stem;
import org.boleline.stem.StemShape;
import org.boleline.units.Kind;
import org.boleline.units.Si;
import org.boleline.wood.WoodProperties;
import org.junit.jupiter.api.Test;

/** Invented plans. */
class PlanWorksheetsTest {
  private static List<String> titles(List<Worksheet> sheets) {
    return sheets.stream().map(Worksheet::title).toList();
  }

  @Test
  void every_arrangement_that_was_solved_has_its_worksheets() {
    Checks checks = Checks.of(Drops.analyse(Sheets.solved()));
    List<Worksheet> sheets = PlanWorksheets.of(checks);

    assertThat(titles(sheets))
        .doesNotHaveDuplicates()
        .contains(
            "Rope of arrangement device, contact by contact",
            "Base of stem oak of arrangement device",
            "Drop of arrangement device",
            "Limits of arrangement device",
            "Rules of thumb beside arrangement device");
    Worksheet limits =
        sheets.stream()
            .filter(sheet -> sheet.title().equals("Limits of arrangement device"))
            .findFirst()
            .orElseThrow();
    checks
        .arrangement("device")
        .orElseThrow()
        .checks()
        .forEach(check -> assertThat(limits.lines()).contains(new Line.Remark(check.sentence())));
  }

  @Test
  void a_held_load_has_both_ends() {
    StaticResult result = Sheets.solved();
    Solution held =
        result.arrangements().stream()
            .flatMap(one -> one.solution().stream())
            .filter(one -> one.otherEnd().isPresent())
            .findFirst()
            .orElseThrow();
    List<Worksheet> sheets = PlanWorksheets.of(Checks.of(result));
    String rope = "Rope of arrangement " + held.id() + ", contact by contact";

    assertThat(titles(sheets))
        .doesNotHaveDuplicates()
        .contains(rope + ", about to run", rope + ", about to rise")
        .noneMatch(title -> title.startsWith("Drop"));
    for (Solution end : List.of(held, held.otherEnd().orElseThrow())) {
      String name = end == held ? ", about to run" : ", about to rise";
      double tail = Si.value(end.contacts().get(0).tensionOut(), Kind.FORCE, "tail");
      assertThat(
              sheets.stream()
                  .filter(sheet -> sheet.title().equals(rope + name))
                  .flatMap(sheet -> sheet.steps().stream())
                  .anyMatch(step -> Math.abs(step.result() - tail) <= 1e-9 * tail))
          .isTrue();
      double force = Si.value(end.contacts().get(0).forceMagnitude(), Kind.FORCE, "force");
      assertThat(RulesOfThumb.of(held))
          .filteredOn(rule -> rule.rule() == RuleOfThumb.DOUBLE_LOAD)
          .filteredOn(rule -> rule.where().equals("contact 1 of arrangement " + held.id() + name))
          .singleElement()
          .satisfies(
              rule ->
                  assertThat(rule.ratioToModel())
                      .isCloseTo(rule.step().result() / force, within(1e-12)));
    }
  }

  @Test
  void a_stem_that_buckles_has_none() {
    Stem stem =
        Stem.builder("reed")
            .shape(StemShape.Straight.of(Heading.of(degrees(1), degrees(0)), metres(10)))
            .diameters(Diameters.tapering(metres(10), metres(0.03), metres(0.03)))
            .wood(WoodProperties.of(gigapascals(9), kilogramsPerCubicMetre(900)))
            .ownWeight(false)
            .build();
    Arrangement one =
        Arrangement.builder("one")
            .motion(Motion.LOWERING)
            .contacts(List.of(Contact.of("reed", metres(10), Ideal.INSTANCE)))
            .tail(Tail.Down.DOWN)
            .build();
    StaticResult result =
        Statics.analyse(
            Plan.builder()
                .title("reed")
                .stems(List.of(stem))
                .piece(Piece.of(kilograms(100)))
                .arrangements(List.of(one))
                .build());

    assertThat(result.arrangements().get(0).outcome()).isNotEqualTo(Outcome.STABLE);
    assertThat(PlanWorksheets.of(Checks.of(result))).isEmpty();
  }
}
