package org.boleline.picture;

import java.util.ArrayList;
import java.util.List;

/** The key of a picture: small samples with their meaning, in as many rows as they need. */
final class Legend {
  private static final double SIZE = 11;
  private static final double ROW = 17;
  private static final double GAP = 14;
  private static final double STROKE = 26;

  private interface Sample {
    void draw(double x, double y);
  }

  private record Item(double width, String text, Sample sample) {}

  private final Sheet sheet;
  private final List<Item> items = new ArrayList<>();

  Legend(Sheet sheet) {
    this.sheet = sheet;
  }

  /** A stroke of line in a given ink. */
  void line(String text, Paint paint, double weight, String dashes) {
    items.add(new Item(STROKE, text, (x, y) -> stroke(x, y, paint, weight, dashes)));
  }

  /** A stroke of line with the mark of one that goes on. */
  void broken(String text, Paint paint, double weight) {
    items.add(
        new Item(
            STROKE,
            text,
            (x, y) -> {
              stroke(x, y, paint, weight, "none");
              sheet.breakMark(new Spot(x, y), new Spot(x + STROKE, y));
            }));
  }

  private void stroke(double x, double y, Paint paint, double weight, String dashes) {
    sheet.leaf(
        "line",
        paint,
        "",
        "x1",
        x,
        "y1",
        y,
        "x2",
        x + STROKE,
        "y2",
        y,
        "stroke-width",
        weight,
        "stroke-dasharray",
        dashes);
  }

  void arrow(String text, double length, Paint line, Paint head, double weight) {
    items.add(
        new Item(
            length,
            text,
            (x, y) ->
                sheet.arrow(
                    new Spot(x, y),
                    new Spot(x + length, y),
                    line,
                    head,
                    "",
                    "stroke-width",
                    weight)));
  }

  /** A measured length: a line between two ticks. */
  void scaleBar(String text, double length) {
    items.add(
        new Item(
            length,
            text,
            (x, y) ->
                sheet.leaf(
                    "path",
                    Paint.LINE,
                    "scale-bar",
                    "stroke-width",
                    1.2,
                    "d",
                    "M"
                        + Svg.number(x)
                        + " "
                        + Svg.number(y - 4)
                        + " v8 m0 -4 h"
                        + Svg.number(length)
                        + " m0 -4 v8")));
  }

  void note(String text) {
    items.add(new Item(-5, text, (x, y) -> {}));
  }

  private double width(Item item, double room) {
    return item.width() + 5 + Math.min(Lettering.width(item.text(), SIZE), room - item.width() - 5);
  }

  private List<List<Item>> rows(double room) {
    List<List<Item>> rows = new ArrayList<>();
    double used = Double.MAX_VALUE;
    for (Item item : items) {
      double width = width(item, room);
      if (used + width > room) {
        rows.add(new ArrayList<>());
        used = 0;
      }
      rows.get(rows.size() - 1).add(item);
      used += width + GAP;
    }
    return rows;
  }

  double height(double room) {
    return rows(room).size() * ROW;
  }

  void draw(Rect room) {
    double y = room.top() + ROW / 2;
    for (List<Item> row : rows(room.width())) {
      double x = room.left();
      for (Item item : row) {
        item.sample().draw(x, y);
        String text = Lettering.cut(item.text(), SIZE, room.width() - item.width() - 5);
        sheet.write(text, x + item.width() + 5, y + 4, "font-size", SIZE);
        x += width(item, room.width()) + GAP;
      }
      y += ROW;
    }
  }
}
