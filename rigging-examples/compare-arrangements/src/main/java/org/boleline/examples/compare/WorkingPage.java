package org.boleline.examples.compare;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.boleline.limits.Checks;
import org.boleline.statics.ArrangementResult;
import org.boleline.working.Line;
import org.boleline.working.PlanWorksheets;
import org.boleline.working.Worksheet;

/** The results as hand calculations. */
final class WorkingPage {
  private WorkingPage() {}

  /** Returns the worksheets of a plan, with what has to be read beside them at the end. */
  static String print(Checks checks, UnitSystem units, Glyphs glyphs) {
    List<Worksheet> sheets = new ArrayList<>(PlanWorksheets.of(checks));
    sheets.add(Worksheet.of("To be read with these worksheets", notes(checks, units)));
    return sheets.stream()
        .map(sheet -> glyphs.shown(sheet.withUnits(units.ofWorksheets()).plainText()))
        .collect(Collectors.joining("\n"));
  }

  private static List<Line> notes(Checks checks, UnitSystem units) {
    List<Line> lines = new ArrayList<>();
    List<String> ids = new ArrayList<>();
    for (ArrangementResult result : checks.statics().arrangements()) {
      ids.add((ids.size() + 1) + " " + result.id());
    }
    lines.add(new Line.Remark("Arrangements: " + String.join("; ", ids) + "."));
    for (ArrangementResult result : checks.statics().arrangements()) {
      if (result.solution().isEmpty()) {
        lines.add(
            new Line.Remark(
                "Arrangement "
                    + result.id()
                    + " has no worksheets. Outcome: "
                    + result.outcome().text()
                    + "."));
      }
    }
    lines.add(new Line.Remark("Cautions, with the numbers of the arrangements:"));
    lines.addAll(remarks(Notes.cautions(checks, units)));
    lines.add(new Line.Remark("Taken without being stated:"));
    checks.drops().ifPresent(drops -> lines.addAll(remarks(Notes.taken(drops, units))));
    lines.add(new Line.Remark(Comparison.STANDING));
    return lines;
  }

  private static List<Line> remarks(List<Entry> entries) {
    List<Line> lines = new ArrayList<>();
    for (Entry entry : entries) {
      String text = entry.label().isEmpty() ? entry.text() : entry.label() + ": " + entry.text();
      lines.add(new Line.Remark(text.replace(Scale.HARD_BLANK, " ")));
    }
    return lines;
  }
}
