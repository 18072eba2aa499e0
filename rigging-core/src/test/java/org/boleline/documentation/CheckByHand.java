package org.boleline.documentation;

import static java.util.Locale.ROOT;
import static org.boleline.units.Amounts.degrees;
import static org.boleline.units.Amounts.newtons;

import java.io.PrintStream;
import java.util.List;
import org.boleline.explain.Caution;
import org.boleline.explain.PlanRefusedException;
import org.boleline.explain.Step;
import org.boleline.geometry.IncludedAngle;
import org.boleline.geometry.Turn;
import org.boleline.rope.FrictionRing;
import org.boleline.rope.Motion;
import org.boleline.working.Worksheet;
import org.boleline.working.Worksheets;
import org.boleline.working.check.HandCheck;
import org.boleline.working.check.HandSheet;
import org.boleline.working.check.HandStep;
import org.boleline.working.check.Tolerance;

/** The code of docs/how-to/check-a-hand-calculation.md. */
final class CheckByHand {
  private CheckByHand() {}

  static Worksheet sheet() {
    // region sheet
    Turn turn = Turn.between(IncludedAngle.of(degrees(30)));
    Worksheet sheet =
        Worksheets.ofChain(
            Motion.LOWERING, newtons(931.6), List.of(new FrictionRing(0.25)), List.of(turn));
    // endregion
    return sheet;
  }

  static void names(PrintStream out) {
    // region names
    for (Step step : sheet().steps()) {
      out.println(step.formula());
    }
    // endregion
  }

  static HandCheck checked() {
    Worksheet sheet = sheet();
    // region check
    List<HandStep> steps =
        List.of(
            HandStep.of("t", "1.924").roundedTo(4),
            HandStep.of("T_slack", "484.2 N").roundedTo(4),
            HandStep.of("FOR-1", "1800 N").roundedTo(4));
    HandCheck check = HandCheck.of(sheet, steps, Tolerance.relative(0.005));
    // endregion
    return check;
  }

  static void finding(PrintStream out) {
    // region finding
    out.println(checked().finding());
    // endregion
  }

  static void whole(PrintStream out) {
    // region whole
    out.print(checked().worksheet().plainText());
    // endregion
  }

  static void table(PrintStream out) {
    Worksheet sheet = sheet();
    // region table
    String table =
        """
        step,value,figures
        T_slack,0.8173 kN,4
        """;
    HandCheck check = HandCheck.of(sheet, HandSheet.read(table), Tolerance.relative(0.005));
    out.println(check.finding());
    // endregion
  }

  static void spread(PrintStream out) {
    Worksheet sheet = sheet();
    // region spread
    Tolerance spread = Tolerance.relative(0.005).orWithinSpread("mu", "0.2", "0.3");
    HandStep tension = HandStep.of("T_slack", "520 N");
    out.println(HandCheck.of(sheet, List.of(tension), spread).finding());
    // endregion
  }

  static void refused(PrintStream out) {
    Worksheet sheet = sheet();
    // region refused
    List<HandStep> steps = List.of(HandStep.of("T_tail", "484 N"), HandStep.of("T_slack", "49 kg"));
    try {
      HandCheck.of(sheet, steps, Tolerance.relative(0.005));
    } catch (PlanRefusedException e) {
      e.refusals().forEach(refusal -> out.println(refusal.sentence()));
    }
    // endregion
  }

  static void cautions(PrintStream out) {
    // region cautions
    Step rough = new FrictionRing(0.9).step(Turn.HALF);
    for (Caution caution : rough.cautions("sheet, line 1")) {
      out.printf(ROOT, "%s: %s%n", caution.place(), caution.sentence());
    }
    // endregion
  }
}
