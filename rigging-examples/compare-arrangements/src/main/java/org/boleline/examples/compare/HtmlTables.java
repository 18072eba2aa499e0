package org.boleline.examples.compare;

import java.util.ArrayList;
import java.util.List;

/**
 * Lays out tables and lists in HTML; each table has a caption, and says what its cells belong to.
 */
final class HtmlTables {
  /** Columns of numbers that fit on paper beside label and unit. */
  private static final int MOST_COLUMNS = 7;

  private final Html html;

  HtmlTables(Html html) {
    this.html = html;
  }

  /** A table of numbers; one with more columns than fit on paper is broken into even parts. */
  void numbers(String caption, Table table) {
    int all = table.headings().size();
    int parts = (all + MOST_COLUMNS - 1) / MOST_COLUMNS;
    int columns = (all + parts - 1) / parts;
    for (int from = 0; from < all; from += columns) {
      int to = Math.min(all, from + columns);
      String part =
          all <= MOST_COLUMNS ? "" : ", columns " + (from + 1) + " to " + to + " of " + all;
      open(caption + part, "numbers");
      List<String> headings = new ArrayList<>(List.of("", "unit"));
      headings.addAll(table.headings().subList(from, to));
      head(headings, "number");
      html.open("tbody");
      boolean empty = true;
      for (Table.Row row : table.rows()) {
        if (row.cells().isEmpty()) {
          if (!empty) {
            html.close().open("tbody");
          }
          empty = true;
          group(row.label(), headings.size());
        } else {
          numbers(row, from, to);
          empty = false;
        }
      }
      html.close();
      close();
    }
  }

  /** The heading of the rows that follow. */
  private void group(String label, int columns) {
    if (!label.isEmpty()) {
      html.open("tr")
          .text("th", label, "colspan", Integer.toString(columns), "scope", "rowgroup")
          .close();
    }
  }

  private void numbers(Table.Row row, int from, int to) {
    html.open("tr");
    boolean part = row.label().startsWith(" ");
    html.text("th", row.label().strip(), "scope", "row", "class", part ? "part" : "whole");
    html.text("td", row.unit());
    for (String cell : row.cells().subList(from, to)) {
      html.text("td", cell, "class", "number");
    }
    html.close();
  }

  /** A table of text; the first cell of each row says what the row is of. */
  void texts(String caption, List<String> headings, List<List<String>> rows) {
    open(caption, "texts");
    head(headings, "text");
    html.open("tbody");
    for (List<String> row : rows) {
      html.open("tr").text("th", row.get(0), "scope", "row");
      row.subList(1, row.size()).forEach(cell -> html.text("td", cell));
      html.close();
    }
    html.close();
    close();
  }

  /** A list of text with labels in front, or without where there are none. */
  void entries(List<Entry> entries) {
    boolean labelled = entries.stream().anyMatch(entry -> !entry.label().isEmpty());
    html.open(labelled ? "dl" : "ul", "class", "entries");
    for (Entry entry : entries) {
      if (labelled) {
        html.open("dt").words(entry.label()).close();
        html.open("dd").words(entry.text()).close();
      } else {
        html.open("li").words(entry.text()).close();
      }
    }
    html.close();
  }

  /** A table is wider than a phone: it moves sideways by itself, by keys too. */
  private void open(String caption, String kind) {
    html.open("div", "class", "wide", "role", "region", "tabindex", "0", "aria-label", caption);
    html.open("table", "class", kind).text("caption", caption);
  }

  private void head(List<String> headings, String kind) {
    html.open("thead").open("tr");
    for (String heading : headings) {
      if (heading.isEmpty()) {
        html.text("td", "");
      } else {
        html.text("th", heading, "scope", "col", "class", kind);
      }
    }
    html.close().close();
  }

  private void close() {
    html.close().close();
  }
}
