package org.boleline.examples.compare;

import java.nio.charset.Charset;
import java.nio.charset.CharsetEncoder;
import java.util.Map;

/** The few characters beyond ASCII that the page uses, and what stands for them without them. */
enum Glyphs {
  /** As they are. */
  UNICODE,
  /** Plain ASCII for all of them. */
  ASCII;

  private static final Map<Character, String> PLAIN =
      Map.of('–', "-", '→', "->", '×', "x", '·', ".", '°', " deg", '─', "-", '…', "...");

  /** What an output that writes in a charset can show. */
  static Glyphs of(Charset charset) {
    CharsetEncoder encoder = charset.newEncoder();
    return PLAIN.keySet().stream().allMatch(encoder::canEncode) ? UNICODE : ASCII;
  }

  /** Text as this output can show it. */
  String shown(String text) {
    if (this == UNICODE) {
      return text;
    }
    StringBuilder out = new StringBuilder();
    for (int i = 0; i < text.length(); i++) {
      String plain = PLAIN.get(text.charAt(i));
      out.append(plain == null ? text.substring(i, i + 1) : plain);
    }
    return out.toString();
  }
}
