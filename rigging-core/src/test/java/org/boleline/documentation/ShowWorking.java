package org.boleline.documentation;

import static org.boleline.units.Amounts.centimetres;
import static org.boleline.units.Amounts.kilogramsPerCubicMetre;
import static org.boleline.units.Amounts.metres;
import static org.boleline.units.Amounts.poundsForce;

import java.io.IOException;
import java.io.PrintStream;
import java.io.UncheckedIOException;
import org.boleline.drop.Drops;
import org.boleline.geometry.Turn;
import org.boleline.json.PlanReader;
import org.boleline.limits.Checks;
import org.boleline.plan.Plan;
import org.boleline.rope.ContactTensions;
import org.boleline.rope.FrictionRing;
import org.boleline.statics.Solution;
import org.boleline.statics.Statics;
import org.boleline.wood.Log;
import org.boleline.working.Line;
import org.boleline.working.PlanWorksheets;
import org.boleline.working.RigWorksheets;
import org.boleline.working.RuleCompared;
import org.boleline.working.RulesOfThumb;
import org.boleline.working.UnitSystem;
import org.boleline.working.Worksheet;
import org.boleline.working.Worksheets;

/** The code of docs/how-to/show-the-working.md. */
final class ShowWorking {
  private ShowWorking() {}

  static void contact(PrintStream out) {
    // region contact
    ContactTensions tensions =
        ContactTensions.fromTight(new FrictionRing(0.2), Turn.HALF, poundsForce(450));
    Worksheet sheet = Worksheets.of(tensions).withUnits(UnitSystem.FOOT_POUND).withFigures(3);
    out.print(sheet.plainText());
    // endregion
  }

  static void log(PrintStream out) {
    // region log
    Log log = Log.of(metres(2.4), centimetres(45), centimetres(38), kilogramsPerCubicMetre(950));
    for (Line line : Worksheets.of(log).lines()) {
      if (line instanceof Line.TwoRoutes two) {
        out.println(two.what() + ": " + two.firstRoute() + " " + two.first().result());
        out.println("  " + two.secondRoute() + " " + two.second().result());
        out.println(
            "  relative difference below 1e-12: " + (Math.abs(two.differenceRatio()) < 1e-12));
      }
    }
    // endregion
  }

  private static Plan firstPlan() {
    try {
      return PlanReader.read(Docs.file("docs/learn/first-plan.json"));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static Solution solution() {
    return Statics.analyse(firstPlan()).arrangements().get(2).solution().orElseThrow();
  }

  static void cut(PrintStream out) {
    Solution solution = solution();
    // region cut
    Worksheet sheet = RigWorksheets.ofCut(solution, "hornbeam", metres(3));
    String text = sheet.plainText();
    // endregion
    // without the last digits, which hang on the machine
    out.print(text.substring(0, text.indexOf("2. Arms")).replaceAll("(?m)^    difference.*\n", ""));
  }

  static void rules(PrintStream out) {
    Solution solution = solution();
    // region rules
    for (RuleCompared rule : RulesOfThumb.of(solution)) {
      out.println(rule.rule().words() + ", " + rule.where() + ".");
      out.println("  " + rule.sentence());
    }
    // endregion
  }

  static void plan(PrintStream out) {
    Plan plan = firstPlan();
    // region plan
    Checks checks = Checks.of(Drops.analyse(Statics.analyse(plan)));
    for (Worksheet sheet : PlanWorksheets.of(checks)) {
      out.println(sheet.title());
    }
    // endregion
  }

  static String forms(Worksheet sheet) {
    // region forms
    String markdown = sheet.markdown();
    String part = sheet.html();
    String page = sheet.htmlPage();
    // endregion
    return markdown + part + page;
  }
}
