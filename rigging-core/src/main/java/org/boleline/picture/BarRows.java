package org.boleline.picture;

import java.util.List;

/** Bars from zero, one below the other: a name, a bar, a number. */
final class BarRows {
  private static final double SIZE = 11;
  private static final double NUMBER = 52;

  private BarRows() {}

  /** Draws rows that share the height of a room; values are zero or more, and texts letter them. */
  static void draw(
      Sheet sheet, Rect room, List<String> names, List<Double> values, List<String> texts) {
    double most = values.stream().mapToDouble(v -> v).max().orElse(0);
    double high = room.height() / Math.max(1, names.size());
    double left = room.left() + nameWidth(names, room);
    double wide = room.right() - NUMBER - left;
    for (int i = 0; i < names.size(); i++) {
      double y = room.top() + (i + 0.5) * high;
      double size = most > 0 ? Math.max(0, values.get(i)) / most * wide : 0;
      sheet.write(
          Lettering.cut(names.get(i), SIZE, left - room.left() - 8),
          left - 8,
          y + 4,
          "font-size",
          SIZE,
          "text-anchor",
          "end");
      sheet.leaf(
          "rect",
          Paint.FILL,
          "bar",
          "x",
          left,
          "y",
          y - 0.32 * high,
          "width",
          size,
          "height",
          0.64 * high,
          "stroke-width",
          0.8);
      sheet.write(texts.get(i), left + size + 5, y + 4, "font-size", SIZE);
    }
  }

  static double nameWidth(List<String> names, Rect room) {
    double longest = names.stream().mapToDouble(n -> Lettering.width(n, SIZE)).max().orElse(0);
    return Math.min(longest + 9, 0.42 * room.width());
  }
}
