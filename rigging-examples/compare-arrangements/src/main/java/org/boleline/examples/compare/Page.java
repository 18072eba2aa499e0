package org.boleline.examples.compare;

import java.util.ArrayList;
import java.util.List;

/** Lays a comparison out for people: at most 100 columns, line feeds, no blanks at line ends. */
final class Page {
  static final int WIDTH = 100;
  private static final int LEAST_LABEL = 30;
  private static final int GAP = 2;

  private final Glyphs glyphs;
  private final StringBuilder out = new StringBuilder();

  private Page(Glyphs glyphs) {
    this.glyphs = glyphs;
  }

  /** Returns the page. */
  static String print(Comparison comparison, Glyphs glyphs) {
    Page page = new Page(glyphs);
    page.paragraph("", comparison.title());
    page.paragraph("", comparison.setting());
    page.entries("Arrangements", comparison.arrangements());
    page.out.append('\n');
    page.table(comparison.table());
    if (!comparison.catches().rows().isEmpty()) {
      page.out.append("\nCatches of the drops that the plan states\n");
      page.paragraph("", comparison.catchText());
      page.out.append('\n');
      page.table(comparison.catches());
    }
    if (!comparison.limits().rows().isEmpty()) {
      page.out.append("\nLimits that the plan states\n");
      page.paragraph("", comparison.limitText());
      page.out.append('\n');
      page.table(comparison.limits());
      page.entries("Weakest link", comparison.weakest());
      page.entries("Factors asked", comparison.asked());
    }
    if (!comparison.ranges().rows().isEmpty()) {
      page.out.append("\nHow far the figures may be off\n");
      page.paragraph("", comparison.rangeText());
      page.out.append('\n');
      page.table(comparison.ranges());
      page.entries("Ranges that the plan states", comparison.stated());
    }
    if (!comparison.studies().isEmpty()) {
      page.out.append("\nStudies that the plan asks for\n");
      page.paragraph("", StudyRows.text());
      comparison.studies().forEach(page::study);
    }
    page.entries("What changes from one to the next, and why", comparison.changes());
    page.entries(
        "What each change adds, in shares that do not depend on an order", comparison.shares());
    page.entries("Cautions", comparison.cautions());
    page.entries("Taken without being stated", comparison.taken());
    page.out.append('\n');
    page.paragraph("", comparison.standing());
    return page.out.toString();
  }

  private void study(StudyRows.Told study) {
    out.append('\n');
    paragraph("", study.question());
    if (!study.table().rows().isEmpty()) {
      table(study.table());
    }
    entries(study.entries());
  }

  private void entries(String heading, List<Entry> entries) {
    if (!entries.isEmpty()) {
      out.append('\n').append(heading).append('\n');
      entries(entries);
    }
  }

  private void entries(List<Entry> entries) {
    int label = 0;
    for (Entry entry : entries) {
      label = Math.max(label, width(glyphs.shown(entry.label())));
    }
    for (Entry entry : entries) {
      String shown = glyphs.shown(entry.label());
      paragraph(
          "  " + shown + " ".repeat(label - width(shown)) + (label > 0 ? "  " : ""), entry.text());
    }
  }

  /** Writes text broken into lines, with something before the first and an indent before others. */
  private void paragraph(String before, String text) {
    int indent = width(before);
    StringBuilder line = new StringBuilder(before);
    boolean empty = true;
    for (String word : glyphs.shown(text).split(" ", -1)) {
      for (String piece : pieces(word, WIDTH - indent)) {
        if (!empty && width(line.toString()) + 1 + width(piece) > WIDTH) {
          end(line);
          line = new StringBuilder(" ".repeat(indent));
          empty = true;
        }
        line.append(empty ? "" : " ").append(piece);
        empty = false;
      }
    }
    end(line);
  }

  private void end(StringBuilder line) {
    out.append(line.toString().replace(Scale.HARD_BLANK, " ").stripTrailing()).append('\n');
  }

  /** Breaks a word that is wider than a line. */
  private static List<String> pieces(String word, int most) {
    List<String> pieces = new ArrayList<>();
    StringBuilder piece = new StringBuilder();
    int[] points = word.codePoints().toArray();
    for (int point : points) {
      String next = Character.toString(point);
      if (width(piece.toString()) + width(next) > most) {
        pieces.add(piece.toString());
        piece.setLength(0);
      }
      piece.append(next);
    }
    pieces.add(piece.toString());
    return pieces;
  }

  private void table(Table table) {
    int cell = 0;
    for (String heading : table.headings()) {
      cell = Math.max(cell, width(heading));
    }
    int label = LEAST_LABEL;
    int unit = 0;
    for (Table.Row row : table.rows()) {
      if (row.cells().isEmpty()) {
        continue;
      }
      label = Math.max(label, width(glyphs.shown(row.label())));
      unit = Math.max(unit, width(glyphs.shown(row.unit())));
      for (String text : row.cells()) {
        cell = Math.max(cell, width(glyphs.shown(text)));
      }
    }
    int column = cell + GAP;
    int many = Math.max(1, (WIDTH - label - GAP - unit) / column);
    for (int from = 0; from < table.headings().size(); from += many) {
      int to = Math.min(table.headings().size(), from + many);
      if (from > 0) {
        out.append('\n');
      }
      StringBuilder line = new StringBuilder(" ".repeat(label + GAP + unit));
      table.headings().subList(from, to).forEach(heading -> right(line, heading, column));
      int wide = width(line.toString());
      end(line);
      out.append(glyphs.shown("─").repeat(wide)).append('\n');
      for (Table.Row row : table.rows()) {
        if (row.cells().isEmpty()) {
          end(new StringBuilder(glyphs.shown(row.label())));
          continue;
        }
        StringBuilder cells =
            new StringBuilder(left(row.label(), label + GAP) + left(row.unit(), unit));
        row.cells().subList(from, to).forEach(text -> right(cells, text, column));
        end(cells);
      }
    }
  }

  private String left(String text, int columns) {
    String shown = glyphs.shown(text);
    return shown + " ".repeat(columns - width(shown));
  }

  private void right(StringBuilder line, String text, int columns) {
    String shown = glyphs.shown(text);
    line.append(" ".repeat(columns - width(shown))).append(shown);
  }

  /** Text of a plan on one line, without characters that steer a terminal. */
  static String clean(String text) {
    StringBuilder out = new StringBuilder();
    text.codePoints()
        .forEach(
            point -> {
              switch (Character.getType(point)) {
                case Character.CONTROL,
                    Character.LINE_SEPARATOR,
                    Character.PARAGRAPH_SEPARATOR,
                    Character.SPACE_SEPARATOR ->
                    out.append(' ');
                case Character.FORMAT, Character.SURROGATE, Character.UNASSIGNED -> {}
                default -> out.appendCodePoint(point);
              }
            });
    return out.toString().strip();
  }

  /** Text cut to some columns. */
  static String shortened(String text, int most) {
    if (width(text) <= most) {
      return text;
    }
    StringBuilder out = new StringBuilder();
    for (int point : text.codePoints().toArray()) {
      if (width(out.toString()) + width(Character.toString(point)) > most - 3) {
        break;
      }
      out.appendCodePoint(point);
    }
    return out + "…";
  }

  /** Columns that a text takes on a terminal. */
  static int width(String text) {
    return text.codePoints().map(Page::width).sum();
  }

  private static int width(int point) {
    int type = Character.getType(point);
    if (type == Character.NON_SPACING_MARK || type == Character.ENCLOSING_MARK) {
      return 0;
    }
    boolean wide =
        Character.isIdeographic(point)
            || (point >= 0x1100 && point <= 0x115F)
            || (point >= 0x3000 && point <= 0x30FF)
            || (point >= 0xAC00 && point <= 0xD7A3)
            || (point >= 0xFF01 && point <= 0xFF60)
            || point >= 0x1F000;
    return wide ? 2 : 1;
  }
}
