package org.boleline.working;

import org.boleline.explain.Formula;
import org.boleline.explain.Step;
import org.boleline.explain.Symbol;
import org.boleline.internal.notation.Equation;

/** A worksheet in Markdown with LaTeX math. */
final class MarkdownSheet {
  private final Worksheet sheet;
  private final StringBuilder text = new StringBuilder();

  MarkdownSheet(Worksheet sheet) {
    this.sheet = sheet;
  }

  String text() {
    text.append("# ").append(escaped(sheet.title())).append('\n');
    int number = 0;
    for (Line line : sheet.lines()) {
      text.append('\n');
      if (line instanceof Line.Remark remark) {
        text.append(paragraph(remark.text())).append('\n');
      } else {
        number++;
        if (line instanceof Line.Calculation calculation) {
          Shown shown = new Shown(calculation.step(), sheet);
          String meaning = shown.formula().result().meaning();
          String what = calculation.what();
          heading(number, what.isEmpty() ? meaning : what + ": " + meaning);
          body(shown);
        } else if (line instanceof Line.TwoRoutes two) {
          heading(number, two.what() + ", by two routes");
          route("First: ", two.firstRoute(), two.first());
          route("Second: ", two.secondRoute(), two.second());
          text.append("Difference: ").append(escaped(Shown.difference(two, sheet)));
          text.append(".\n");
        } else {
          table(number, (Line.Table) line);
        }
      }
    }
    return text.toString();
  }

  private void route(String which, String route, Step step) {
    int line = sheet.lineOf(step);
    if (line > 0) {
      String same = Shown.asInLine(new Shown(step, sheet), line);
      text.append(which).append(escaped(route + ": " + same)).append(".\n\n");
    } else {
      text.append(which).append(escaped(route)).append(".\n\n");
      body(new Shown(step, sheet));
      text.append('\n');
    }
  }

  private void heading(int number, String words) {
    text.append("## ")
        .append(number)
        .append(". ")
        .append(escaped(Shown.capital(words)))
        .append("\n\n");
  }

  private void body(Shown shown) {
    Formula formula = shown.formula();
    text.append(formula.id()).append(": $").append(shown.equation().latex()).append("$\n\n");
    text.append("| symbol | meaning | number | range |\n|---|---|---|---|\n");
    shown.inputs().forEach(this::row);
    row(shown.result());
    text.append("\n$").append(shown.put().latex()).append("$\n\n");
    text.append("Result: **").append(escaped(shown.rounded())).append("** (");
    text.append(shown.figures()).append("); unrounded ");
    text.append(escaped(shown.result().value())).append(".\n\n");
    text.append("Holds for: ").append(escaped(formula.validity())).append(".\n\n");
    text.append("Source: ").append(escaped(Shown.source(formula.source()))).append(".\n");
  }

  private void row(Shown.Amount number) {
    text.append("| $").append(latex(number.symbol())).append("$ | ");
    text.append(escaped(number.symbol().meaning())).append(" | ").append(escaped(number.value()));
    if (!number.otherwise().isEmpty()) {
      text.append(" = ").append(escaped(number.otherwise()));
    }
    text.append(" | ").append(escaped(number.range())).append(" |\n");
  }

  private static String latex(Symbol symbol) {
    return Equation.latexName(symbol.name());
  }

  private void table(int number, Line.Table table) {
    heading(number, table.title());
    for (Formula formula : table.formulas()) {
      text.append(formula.id()).append(": $");
      text.append(Equation.parse(formula.text()).latex());
      text.append("$ (").append(escaped(Shown.source(formula.source()))).append(")\n\n");
    }
    text.append("| |");
    for (Symbol symbol : table.columns()) {
      text.append(" $").append(latex(symbol)).append("$ ");
      String unit = Shown.unit(symbol, sheet);
      text.append(unit.equals("1") ? "" : "(" + unit + ") ").append("|");
    }
    text.append("\n|---|").append("--:|".repeat(table.columns().size())).append('\n');
    for (int row = 0; row < table.names().size(); row++) {
      text.append("| ").append(escaped(table.names().get(row))).append(" |");
      for (int column = 0; column < table.columns().size(); column++) {
        text.append(' ').append(Shown.cell(table, row, column, sheet)).append(" |");
      }
      text.append('\n');
    }
    text.append('\n');
    for (Symbol symbol : table.columns()) {
      text.append("- $").append(latex(symbol)).append("$ ");
      text.append(escaped(symbol.meaning())).append('\n');
    }
  }

  /** Words that begin neither a list nor a rule nor a heading. */
  private static String paragraph(String words) {
    return escaped(words).strip().replaceFirst("^([0-9]*)([-=.)])", "$1\\\\$2");
  }

  /** Words in which Markdown and math see no marks. */
  private static String escaped(String words) {
    return Shown.oneLine(words)
        .replaceAll("([\\\\`*_{}<>#+!|$~&^])", "\\\\$1")
        // behind a backslash brackets would begin math
        .replace("[", "&#91;")
        .replace("]", "&#93;");
  }
}
