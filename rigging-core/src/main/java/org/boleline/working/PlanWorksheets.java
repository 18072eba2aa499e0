package org.boleline.working;

import java.util.ArrayList;
import java.util.List;
import org.boleline.drop.DropAnswer;
import org.boleline.drop.DropFound;
import org.boleline.limits.ArrangementChecks;
import org.boleline.limits.Check;
import org.boleline.limits.Checks;
import org.boleline.statics.ArrangementResult;
import org.boleline.statics.Solution;
import org.boleline.statics.StemResult;
import org.jspecify.annotations.Nullable;

/** All worksheets of a plan that was analysed, in the order in which a person would read them. */
public final class PlanWorksheets {
  private PlanWorksheets() {}

  /**
   * Makes the worksheets of a plan: for each arrangement that was solved the rope, the base of each
   * stem, the drop, the checks of limits, and the rules of thumb beside the model. A load that is
   * held has rope, bases and rules for both ends of what is possible at rest.
   *
   * @param checks the checks, which hold the analysis they were made of
   * @return the worksheets; none for an arrangement that is unstable or was not solved
   */
  public static List<Worksheet> of(Checks checks) {
    List<Worksheet> all = new ArrayList<>();
    List<ArrangementResult> results = checks.statics().arrangements();
    for (int i = 0; i < results.size(); i++) {
      if (results.get(i) instanceof Solution solution) {
        int index = i;
        DropAnswer drop = checks.drops().flatMap(d -> d.drops().get(index)).orElse(null);
        all.addAll(
            of(solution, checks.arrangements().get(i), drop instanceof DropFound f ? f : null));
      }
    }
    return List.copyOf(all);
  }

  private static List<Worksheet> of(
      Solution solution, ArrangementChecks checks, @Nullable DropFound drop) {
    List<Worksheet> all = new ArrayList<>();
    if (solution.otherEnd().isEmpty()) {
      all.addAll(balance(solution, ""));
    } else {
      all.addAll(balance(solution, RulesOfThumb.ABOUT_TO_RUN));
      all.addAll(balance(solution.otherEnd().get(), RulesOfThumb.ABOUT_TO_RISE));
    }
    List<RuleCompared> rules = new ArrayList<>(RulesOfThumb.of(solution));
    if (drop != null) {
      all.add(Worksheets.of(drop));
      rules.addAll(RulesOfThumb.of(drop));
    }
    if (!checks.checks().isEmpty()) {
      all.add(of(checks));
    }
    if (!rules.isEmpty()) {
      all.add(
          Worksheet.of(
              "Rules of thumb beside arrangement " + solution.id(),
              RulesOfThumb.worksheet(rules).lines()));
    }
    return all;
  }

  private static List<Worksheet> balance(Solution solution, String end) {
    List<Worksheet> all = new ArrayList<>();
    all.add(ended(RigWorksheets.ofRope(solution), end));
    for (StemResult stem : solution.stems()) {
      all.add(ended(RigWorksheets.ofBase(solution, stem.id()), end));
    }
    return all;
  }

  private static Worksheet ended(Worksheet sheet, String end) {
    return Worksheet.of(sheet.title() + end, sheet.lines());
  }

  private static Worksheet of(ArrangementChecks checks) {
    List<Line> lines = new ArrayList<>();
    for (Check check : checks.checks()) {
      Worksheet one = Worksheets.of(check);
      lines.add(new Line.Remark(one.title() + ":"));
      lines.addAll(one.lines());
    }
    return Worksheet.of("Limits of arrangement " + checks.id(), lines);
  }
}
