package org.boleline.working;

import org.boleline.explain.Formula;
import org.boleline.explain.Step;
import org.boleline.explain.Symbol;
import org.boleline.internal.notation.Equation;

/** A worksheet in HTML with MathML; also well-formed as XML. */
final class HtmlSheet {
  private final Worksheet sheet;
  private final StringBuilder text = new StringBuilder();

  HtmlSheet(Worksheet sheet) {
    this.sheet = sheet;
  }

  String page() {
    String title = escaped(sheet.title());
    return """
        <!DOCTYPE html>
        <html lang="en">
        <head>
        <meta charset="utf-8"/>
        <meta name="viewport" content="width=device-width, initial-scale=1"/>
        <title>%s</title>
        <style>
        body { max-width: 50em; margin: 1em auto; padding: 0 1em; font-family: sans-serif; }
        table { border-collapse: collapse; }
        th, td { border: 1px solid; padding: 0.2em 0.5em; text-align: left; }
        .wide { overflow-x: auto; }
        </style>
        </head>
        <body>
        <main>
        """
            .replace("%s", title)
        + section()
        + "</main>\n</body>\n</html>\n";
  }

  String section() {
    text.append("<section>\n<h1>").append(escaped(sheet.title())).append("</h1>\n");
    int number = 0;
    for (Line line : sheet.lines()) {
      if (line instanceof Line.Remark remark) {
        paragraph(remark.text());
        continue;
      }
      number++;
      if (line instanceof Line.Calculation calculation) {
        Shown shown = new Shown(calculation.step(), sheet);
        String meaning = shown.formula().result().meaning();
        String what = calculation.what();
        heading(number, what.isEmpty() ? meaning : what + ": " + meaning);
        body(shown);
      } else if (line instanceof Line.TwoRoutes two) {
        heading(number, two.what() + ", by two routes");
        route("First: " + two.firstRoute(), two.first());
        route("Second: " + two.secondRoute(), two.second());
        paragraph("Difference: " + Shown.difference(two, sheet) + ".");
      } else {
        table(number, (Line.Table) line);
      }
    }
    return text.append("</section>\n").toString();
  }

  private void route(String route, Step step) {
    int line = sheet.lineOf(step);
    Shown shown = new Shown(step, sheet);
    if (line > 0) {
      paragraph(route + ": " + Shown.asInLine(shown, line) + ".");
    } else {
      paragraph(route + ".");
      body(shown);
    }
  }

  private void heading(int number, String words) {
    text.append("<h2>")
        .append(number)
        .append(". ")
        .append(escaped(Shown.capital(words)))
        .append("</h2>\n");
  }

  private void paragraph(String words) {
    text.append("<p>").append(escaped(words)).append("</p>\n");
  }

  private void body(Shown shown) {
    Formula formula = shown.formula();
    text.append("<p class=\"wide\">").append(formula.id()).append(": ");
    text.append(shown.equation().mathml()).append("</p>\n");
    text.append("<table>\n<caption>Symbols of ").append(formula.id()).append("</caption>\n");
    text.append("<thead><tr><th scope=\"col\">symbol</th><th scope=\"col\">meaning</th>");
    text.append(
        "<th scope=\"col\">number</th><th scope=\"col\">range</th></tr></thead>\n<tbody>\n");
    shown.inputs().forEach(this::row);
    row(shown.result());
    text.append("</tbody>\n</table>\n");
    text.append("<p class=\"wide\">").append(shown.put().mathml()).append("</p>\n");
    text.append("<p>Result: <strong>").append(escaped(shown.rounded())).append("</strong> (");
    text.append(shown.figures()).append("); unrounded ");
    text.append(escaped(shown.result().value())).append(".</p>\n");
    paragraph("Holds for: " + formula.validity() + ".");
    paragraph("Source: " + Shown.source(formula.source()) + ".");
  }

  private void row(Shown.Amount number) {
    text.append("<tr><th scope=\"row\">").append(name(number.symbol())).append("</th><td>");
    text.append(escaped(number.symbol().meaning())).append("</td><td>");
    text.append(escaped(number.value()));
    if (!number.otherwise().isEmpty()) {
      text.append(" = ").append(escaped(number.otherwise()));
    }
    text.append("</td><td>").append(escaped(number.range())).append("</td></tr>\n");
  }

  private static String name(Symbol symbol) {
    return Equation.mathmlName(symbol.name());
  }

  private void table(int number, Line.Table table) {
    heading(number, table.title());
    for (Formula formula : table.formulas()) {
      text.append("<p class=\"wide\">").append(formula.id()).append(": ");
      text.append(Equation.parse(formula.text()).mathml());
      text.append(" (").append(escaped(Shown.source(formula.source()))).append(")</p>\n");
    }
    text.append("<div class=\"wide\"><table>\n<caption>").append(escaped(table.title()));
    text.append("</caption>\n<thead><tr><td></td>");
    for (Symbol symbol : table.columns()) {
      String unit = Shown.unit(symbol, sheet);
      text.append("<th scope=\"col\">").append(name(symbol));
      text.append(unit.equals("1") ? "" : " (" + unit + ")").append("</th>");
    }
    text.append("</tr></thead>\n<tbody>\n");
    for (int row = 0; row < table.names().size(); row++) {
      text.append("<tr><th scope=\"row\">").append(escaped(table.names().get(row)));
      text.append("</th>");
      for (int column = 0; column < table.columns().size(); column++) {
        text.append("<td>").append(Shown.cell(table, row, column, sheet)).append("</td>");
      }
      text.append("</tr>\n");
    }
    text.append("</tbody>\n</table></div>\n<ul>\n");
    for (Symbol symbol : table.columns()) {
      text.append("<li>").append(name(symbol)).append(' ').append(escaped(symbol.meaning()));
      text.append("</li>\n");
    }
    text.append("</ul>\n");
  }

  private static String escaped(String words) {
    return Shown.oneLine(words)
        .replace("&", "&amp;")
        .replace("<", "&lt;")
        .replace(">", "&gt;")
        .replace("\"", "&quot;");
  }
}
