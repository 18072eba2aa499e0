package org.boleline.examples.compare;

import java.util.ArrayList;
import java.util.List;
import org.boleline.drop.DropResult;
import org.boleline.limits.Checks;
import org.boleline.plan.Arrangement;
import org.boleline.plan.Plan;
import org.boleline.rope.Motion;
import org.boleline.statics.StaticResult;
import org.boleline.study.RangeResult;
import org.boleline.units.Kind;
import org.boleline.units.Si;

/**
 * What the page says, before it is laid out.
 *
 * @param title title of the plan
 * @param setting what hangs and on what
 * @param arrangements what each arrangement is
 * @param table the numbers side by side
 * @param catchText what the table of catches shows
 * @param catches the drops, locked and let run; without rows if the plan has none
 * @param limitText what the table of limits shows
 * @param weakest the weakest link of each arrangement; none if nothing was checked
 * @param limits demand against capacity; without rows if nothing was checked
 * @param asked who asks for which factor
 * @param rangeText what the table of ranges shows
 * @param ranges how far figures may be off; without rows if the plan states no ranges
 * @param stated the ranges of inputs
 * @param studies the studies that the plan asks for
 * @param shares what each change adds to a figure
 * @param changes one sentence for each pair of neighbours
 * @param cautions what is to be read with care
 * @param taken what was used without being stated
 * @param standing what holds always
 */
record Comparison(
    String title,
    String setting,
    List<Entry> arrangements,
    Table table,
    String catchText,
    Table catches,
    String limitText,
    List<Entry> weakest,
    Table limits,
    List<Entry> asked,
    String rangeText,
    Table ranges,
    List<Entry> stated,
    List<StudyRows.Told> studies,
    List<Entry> shares,
    List<Entry> changes,
    List<Entry> cautions,
    List<Entry> taken,
    String standing) {
  static final String STANDING =
      "These are numbers calculated from what the plan states. They do not say whether work may be"
          + " done: local codes, the makers' instructions and the competent person on site do.";

  static Comparison of(Findings findings, UnitSystem units) {
    Plan plan = findings.plan();
    StaticResult result = findings.statics();
    DropResult drops = findings.drops();
    Checks checks = findings.checks();
    List<RangeResult> ranges = findings.ranges();
    return new Comparison(
        plan.title().isBlank() ? "Rigging plan" : Page.clean(plan.title()),
        setting(plan, units),
        arrangements(plan, units),
        Rows.table(result, units),
        CatchRows.text(drops),
        CatchRows.table(drops, units),
        LimitRows.text(),
        LimitRows.weakest(checks, units),
        LimitRows.table(checks, units),
        LimitRows.asked(checks),
        RangeRows.text(ranges),
        RangeRows.table(ranges, units),
        RangeRows.stated(ranges, units),
        StudyRows.of(findings.answers(), plan, units),
        ShareRows.of(plan, units),
        Changes.of(result, units),
        Notes.cautions(checks, units),
        Notes.taken(drops, units),
        STANDING);
  }

  private static String setting(Plan plan, UnitSystem units) {
    double mass = Si.value(plan.piece().mass(), Kind.MASS, "mass");
    double weight = mass * Si.value(plan.gravity(), Kind.ACCELERATION, "gravity");
    List<String> stems = plan.stems().stream().map(stem -> Page.clean(stem.id())).toList();
    return "Piece of "
        + units.oneMass(mass)
        + ", weight "
        + units.oneForce(weight)
        + ", on "
        + (stems.size() > 1 ? "stems " : "stem ")
        + Wording.join(stems)
        + ". Slow, steady motion"
        + (plan.arrangements().stream().anyMatch(way -> way.drop().isPresent())
            ? "; drops stand by themselves below."
            : ".");
  }

  private static List<Entry> arrangements(Plan plan, UnitSystem units) {
    Wording wording = new Wording(plan, units);
    List<Entry> entries = new ArrayList<>();
    for (Arrangement arrangement : plan.arrangements()) {
      String held =
          arrangement.motion() == Motion.HELD
              ? " (two columns: about to run, and about to rise)"
              : "";
      entries.add(
          new Entry(
              Integer.toString(entries.size() + 1),
              Page.clean(arrangement.id()) + ": " + wording.arrangement(arrangement) + held));
    }
    return entries;
  }
}
