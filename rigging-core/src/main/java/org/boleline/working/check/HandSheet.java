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
    int columns = 0;
    for (int i = 0; i < lines.size(); i++) {
      if (lines.get(i).isBlank()) {
        continue;
      }
      Refusals at = refusals.at("line " + (i + 1));
      Optional<List<String>> fields = fields(lines.get(i));
      if (fields.isEmpty()) {
        at.add(Refusal.Code.WRONG_FORMAT, "fields with closed quotes", Written.got(lines.get(i)));
      } else if (headed) {
        step(fields.get(), columns, at).ifPresent(steps::add);
      } else if (isHeader(fields.get())) {
        columns = fields.get().size();
      } else {
        at.add(
            Refusal.Code.WRONG_FORMAT,
            "the header \"step,value\" or \"step,value,figures\"",
            Written.got(lines.get(i)));
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
        && fields.size() <= HEADER.size()
        && HEADER.subList(0, fields.size()).equals(fields);
  }

  private static Optional<HandStep> step(List<String> fields, int columns, Refusals at) {
    if (fields.size() < LEAST_FIELDS || fields.size() > columns) {
      String wants = columns == LEAST_FIELDS ? "two fields" : "two or three fields";
      String got = fields.size() == 1 ? "1 field" : fields.size() + " fields";
      String comma = fields.size() > columns ? "; a decimal mark is a point" : "";
      at.add(Refusal.Code.WRONG_FORMAT, wants + " as in the header" + comma, got);
      return Optional.empty();
    }
    String figures = fields.size() == HEADER.size() ? fields.get(2) : "";
    if (figures.isEmpty()) {
      return Optional.of(HandStep.of(fields.get(0), fields.get(1)));
    }
    if (!figures.matches("[1-9][0-9]?")) {
      at.at("figures")
          .add(
              Refusal.Code.WRONG_TYPE,
              "a whole number, 1 to " + HandStep.MOST_FIGURES + ", or nothing",
              Written.got(figures));
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
