package org.boleline.picture;

import java.util.ArrayList;
import java.util.List;

/**
 * How wide text may become, whatever plain font the reader has.
 *
 * <p>Widths are upper bounds, in parts of the font's size, by classes of characters; common sans
 * serif fonts stay below them.
 */
final class Lettering {
  static final String FONT = "Arial, Helvetica, 'Liberation Sans', sans-serif";
  private static final String NARROW = " .,:;'|!()[]{}/\\ijlI-`\"";
  private static final String HALF = "frt*\u00b0";
  private static final String WIDE = "mwMW@%\u00d7";

  /** A blank, but for one between a number and a unit. */
  private static final String BETWEEN_WORDS = "\\s+(?!(?<=\\d\\s)\\p{L}{1,3}\\b)";

  private Lettering() {}

  private static double width(int c) {
    if (NARROW.indexOf(c) >= 0) {
      return 0.42;
    }
    if (HALF.indexOf(c) >= 0) {
      return 0.48;
    }
    if (WIDE.indexOf(c) >= 0) {
      return 1.02;
    }
    if (c >= 'A' && c <= 'Z') {
      return 0.80;
    }
    if ((c >= 'a' && c <= 'z') || (c >= '0' && c <= '9')) {
      return 0.65;
    }
    return c < 0x250 ? 0.85 : 1.1;
  }

  static double width(String text, double size) {
    return size * text.codePoints().mapToDouble(Lettering::width).sum();
  }

  /**
   * Text in lines no wider than there is room, cut off with dots after the last line allowed. A
   * number stays with the unit behind it.
   */
  static List<String> lines(String text, double size, double room, int most) {
    List<String> lines = new ArrayList<>();
    StringBuilder line = new StringBuilder();
    for (String word : text.strip().split(BETWEEN_WORDS, -1)) {
      String longer = line.isEmpty() ? word : line + " " + word;
      if (!line.isEmpty() && width(longer, size) > room) {
        lines.add(line.toString());
        line.setLength(0);
        line.append(word);
      } else {
        line.setLength(0);
        line.append(longer);
      }
    }
    lines.add(line.toString());
    List<String> fitted = new ArrayList<>();
    for (int i = 0; i < Math.min(most, lines.size()); i++) {
      boolean more = i == most - 1 && lines.size() > most;
      fitted.add(cut(lines.get(i) + (more ? " ..." : ""), size, room));
    }
    return fitted;
  }

  /** Text cut off with dots where there is no more room. */
  static String cut(String text, double size, double room) {
    if (width(text, size) <= room) {
      return text;
    }
    int[] letters = text.codePoints().toArray();
    int count = letters.length;
    while (count > 0 && width(new String(letters, 0, count) + "...", size) > room) {
      count--;
    }
    return new String(letters, 0, count).stripTrailing() + "...";
  }
}
