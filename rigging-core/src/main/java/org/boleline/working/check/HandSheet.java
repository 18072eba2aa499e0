package org.boleline.working.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.boleline.explain.Refusal;
import org.boleline.explain.Refusals;

/**
 * A person's calculation as a table of text, one number in each line.
 *
 * <p>Comma-separated values as RFC 4180 has them: a header {@code step,value} or {@code
 * step,value,figures}, then one line for each number. A field may stand in double quotes. Lines may
 * end with a line feed alone; empty lines are passed over.
 *
 * <pre>{@code
 * step,value,figures
 * FRI-2,1.924,4
 * T_slack,484 N,3
 * }</pre>
 */
public final class HandSheet {
  private static final List<String> HEADER = List.of("step", "value", "figures");
  private static final int LEAST_FIELDS = 2;
  private static final int MOST_LINES = 10_000;

  private HandSheet() {}

  /**
   * Reads the steps of a table.
   *
   * @param text the table
   * @return the steps, in order
   * @throws org.boleline.explain.PlanRefusedException with all that is wrong, each with its line
   */
  public static List<HandStep> read(String text) {
    return Refusals.check(refusals -> read(text, refusals));
  }

  private static List<HandStep> read(String text, Refusals refusals) {
    List<HandStep> steps = new ArrayList<>();
    // a byte order mark is what some spreadsheets put first
    List<String> lines = text.replaceFirst("^\uFEFF", "").lines().toList();
    if (lines.size() > MOST_LINES) {
      refusals.add(
          Refusal.Code.TOO_LARGE, "at most " + MOST_LINES + " lines", lines.size() + " lines");
      return steps;
    }
    boolean headed = false;
    for (int i = 0; i < lines.size(); i++) {
      if (lines.get(i).isBlank()) {
        continue;
      }
      Refusals at = refusals.at("line " + (i + 1));
      Optional<List<String>> fields = fields(lines.get(i));
      if (fields.isEmpty()) {
        at.add(Refusal.Code.WRONG_FORMAT, "fields with closed quotes", lines.get(i));
      } else if (headed) {
        step(fields.get(), at).ifPresent(steps::add);
      } else if (!isHeader(fields.get())) {
        at.add(
            Refusal.Code.WRONG_FORMAT,
            "the header \"step,value\" or \"step,value,figures\"",
            "\"" + lines.get(i) + "\"");
        return steps;
      }
      headed = true;
    }
    if (!headed) {
      refusals.add(Refusal.Code.MISSING, "the header \"step,value,figures\"", "nothing");
    }
    return steps;
  }

  private static boolean isHeader(List<String> fields) {
    return fields.size() >= LEAST_FIELDS
        && HEADER.subList(0, Math.min(fields.size(), 3)).equals(fields);
  }

  private static Optional<HandStep> step(List<String> fields, Refusals at) {
    if (fields.size() < LEAST_FIELDS || fields.size() > HEADER.size()) {
      String got = fields.size() == 1 ? "1 field" : fields.size() + " fields";
      at.add(Refusal.Code.WRONG_FORMAT, "two or three fields", got);
      return Optional.empty();
    }
    String figures = fields.size() == HEADER.size() ? fields.get(2) : "";
    if (figures.isEmpty()) {
      return Optional.of(HandStep.of(fields.get(0), fields.get(1)));
    }
    if (!figures.matches("[0-9]{1,2}")) {
      at.at("figures").add(Refusal.Code.WRONG_TYPE, "a whole number or nothing", figures);
      return Optional.empty();
    }
    return Optional.of(new HandStep(fields.get(0), fields.get(1), Integer.parseInt(figures)));
  }

  /** The fields of a line, or nothing if a quote does not close. */
  private static Optional<List<String>> fields(String line) {
    List<String> fields = new ArrayList<>();
    StringBuilder field = new StringBuilder();
    boolean quoted = false;
    for (int i = 0; i < line.length(); i++) {
      char c = line.charAt(i);
      if (quoted && c == '"' && i + 1 < line.length() && line.charAt(i + 1) == '"') {
        field.append(c);
        i++;
      } else if (c == '"') {
        quoted = !quoted;
      } else if (c == ',' && !quoted) {
        fields.add(field.toString().strip());
        field.setLength(0);
      } else {
        field.append(c);
      }
    }
    fields.add(field.toString().strip());
    return quoted ? Optional.empty() : Optional.of(fields);
  }
}
