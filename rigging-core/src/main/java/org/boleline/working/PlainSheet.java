package org.boleline.working;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.boleline.explain.Formula;
import org.boleline.explain.Step;
import org.boleline.explain.Symbol;

/** A worksheet in plain text. */
final class PlainSheet {
  static final int WIDTH = 80;
  private static final int INDENT = 4;
  private static final int GAP = 2;

  private final Worksheet sheet;
  private final StringBuilder text = new StringBuilder();

  PlainSheet(Worksheet sheet) {
    this.sheet = sheet;
  }

  String text() {
    wrap(0, 0, Shown.oneLine(sheet.title()));
    text.append("=".repeat(Math.min(WIDTH, Math.max(1, Shown.oneLine(sheet.title()).length()))));
    text.append('\n');
    int number = 0;
    for (Line line : sheet.lines()) {
      text.append('\n');
      if (line instanceof Line.Remark remark) {
        wrap(0, 0, Shown.oneLine(remark.text()));
      } else {
        number++;
        if (line instanceof Line.Calculation calculation) {
          calculation(number, calculation);
        } else if (line instanceof Line.TwoRoutes two) {
          twoRoutes(number, two);
        } else {
          table(number, (Line.Table) line);
        }
      }
    }
    return text.toString();
  }

  private void calculation(int number, Line.Calculation line) {
    Shown shown = new Shown(line.step(), sheet);
    String meaning = shown.formula().result().meaning();
    heading(number, line.what().isEmpty() ? meaning : line.what() + ": " + meaning);
    body(shown);
  }

  private void heading(int number, String words) {
    String start = number + ". ";
    wrap(0, start.length(), start + Shown.oneLine(Shown.capital(words)));
  }

  private void body(Shown shown) {
    Formula formula = shown.formula();
    wrap(INDENT, INDENT + 4, "[" + formula.id() + "] " + shown.equation().text());
    int width = widest(formula);
    shown.inputs().forEach(input -> symbol(input, width));
    String name = formula.result().name();
    String put = shown.put().text();
    if (shown.equation().solved()) {
      // the name has been shown, its column is kept
      put = pad(name, width) + put.substring(name.length());
    } else {
      put = pad(name, width) + " = " + shown.result().value() + ", so that " + put;
    }
    wrap(INDENT, INDENT + width + 3, put);
    Shown.Amount result = shown.result();
    wrap(INDENT, INDENT + width + 3, pad("", width) + " = " + result.value() + " (unrounded)");
    if (!result.otherwise().isEmpty()) {
      wrap(INDENT, INDENT + width + 3, pad("", width) + " = " + result.otherwise());
    }
    wrap(
        INDENT,
        INDENT + width + 3,
        pad("", width) + " = " + shown.rounded() + " (" + shown.figures() + ")");
    if (result.range().endsWith("OUTSIDE")) {
      wrap(INDENT + width + 3, INDENT + width + 3, "range " + result.range());
    }
    wrap(INDENT, INDENT + 2, "Holds for: " + Shown.oneLine(formula.validity()) + ".");
    wrap(INDENT, INDENT + 2, "Source: " + Shown.oneLine(Shown.source(formula.source())) + ".");
  }

  private void symbol(Shown.Amount input, int width) {
    int column = INDENT + width + 3;
    String value = pad(input.symbol().name(), width) + " = " + input.value();
    if (!input.otherwise().isEmpty()) {
      value += " (" + input.otherwise() + ")";
    }
    wrap(INDENT, column, value);
    String meaning = Shown.oneLine(input.symbol().meaning());
    wrap(column, column, input.range().isEmpty() ? meaning : meaning + "; range " + input.range());
  }

  private void twoRoutes(int number, Line.TwoRoutes two) {
    heading(number, two.what() + ", by two routes");
    route("First: " + two.firstRoute(), two.first());
    route("Second: " + two.secondRoute(), two.second());
    wrap(INDENT, INDENT + 2, "Difference: " + Shown.difference(two, sheet) + ".");
  }

  private void route(String route, Step step) {
    int line = sheet.lineOf(step);
    Shown shown = new Shown(step, sheet);
    if (line > 0) {
      wrap(INDENT, INDENT + 2, Shown.oneLine(route) + ": " + Shown.asInLine(shown, line) + ".");
    } else {
      wrap(INDENT, INDENT + 2, Shown.oneLine(route) + ".");
      body(shown);
    }
  }

  private void table(int number, Line.Table table) {
    heading(number, table.title());
    for (Formula formula : table.formulas()) {
      wrap(INDENT, INDENT + 4, "[" + formula.id() + "] " + formula.text());
      wrap(
          INDENT + 4, INDENT + 4, "Source: " + Shown.oneLine(Shown.source(formula.source())) + ".");
    }
    List<List<String>> rows = new ArrayList<>();
    List<String> names = new ArrayList<>(List.of(""));
    List<String> units = new ArrayList<>(List.of(""));
    for (Symbol symbol : table.columns()) {
      names.add(symbol.name());
      units.add(Shown.unit(symbol, sheet));
    }
    rows.add(names);
    rows.add(units);
    for (int row = 0; row < table.names().size(); row++) {
      List<String> cells = new ArrayList<>(List.of(Shown.oneLine(table.names().get(row))));
      for (int column = 0; column < table.columns().size(); column++) {
        cells.add(Shown.cell(table, row, column, sheet));
      }
      rows.add(cells);
    }
    int[] widths = new int[names.size()];
    rows.forEach(
        row -> {
          for (int i = 0; i < widths.length; i++) {
            widths[i] = Math.max(widths[i], row.get(i).length());
          }
        });
    int from = 1;
    while (from < widths.length) {
      int to = from + 1;
      int width = INDENT + widths[0] + GAP + widths[from];
      while (to < widths.length && width + GAP + widths[to] <= WIDTH) {
        width += GAP + widths[to];
        to++;
      }
      columns(rows, widths, from, to);
      from = to;
    }
    String meanings =
        table.columns().stream()
            .map(symbol -> symbol.name() + " " + symbol.meaning())
            .collect(Collectors.joining("; "));
    wrap(INDENT, INDENT + 2, Shown.oneLine(meanings) + ".");
  }

  /** Columns that fit into a line, with the names of the rows. */
  private void columns(List<List<String>> rows, int[] widths, int from, int to) {
    for (List<String> row : rows) {
      StringBuilder line = new StringBuilder(" ".repeat(INDENT)).append(pad(row.get(0), widths[0]));
      for (int i = from; i < to; i++) {
        line.append(" ".repeat(GAP + widths[i] - row.get(i).length())).append(row.get(i));
      }
      text.append(line.toString().stripTrailing()).append('\n');
    }
  }

  private static int widest(Formula formula) {
    int width = formula.result().name().length();
    for (Symbol symbol : formula.inputs()) {
      width = Math.max(width, symbol.name().length());
    }
    return width;
  }

  private static String pad(String words, int width) {
    return words + " ".repeat(Math.max(0, width - words.length()));
  }

  /** Adds words, broken at blanks so that no line is too long. */
  private void wrap(int first, int others, String words) {
    StringBuilder line = new StringBuilder(" ".repeat(first));
    boolean empty = true;
    for (String word : split(words, WIDTH - Math.max(first, others) - 1)) {
      if (!empty && line.length() + 1 + word.length() > WIDTH) {
        text.append(line.toString().stripTrailing()).append('\n');
        line.setLength(0);
        line.append(" ".repeat(others));
        empty = true;
      }
      if (!empty) {
        line.append(' ');
      }
      line.append(word);
      empty = false;
    }
    text.append(line.toString().stripTrailing()).append('\n');
  }

  /** The words; blanks that align columns stay, and a word wider than a line is cut. */
  private static List<String> split(String words, int most) {
    List<String> all = new ArrayList<>();
    for (String word : words.split(" ", -1)) {
      String rest = word;
      while (rest.length() > most) {
        all.add(rest.substring(0, most));
        rest = rest.substring(most);
      }
      all.add(rest);
    }
    return all;
  }
}
