package org.boleline.internal.notation;

import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The parts of a symbol's name: {@code T_tight} is T with the index tight, {@code T1} is T with the
 * index 1.
 *
 * @param base what stands on the line
 * @param index what stands below it, or empty
 */
record Symbols(String base, String index) {
  private static final Pattern NUMBERED = Pattern.compile("([A-Za-z]+)([0-9]+)");
  private static final Map<String, String> GREEK =
      Map.of("pi", "π", "mu", "μ", "rho", "ρ", "theta", "θ", "alpha", "α", "beta", "β");

  static Symbols of(String name) {
    int line = name.indexOf('_');
    if (line > 0) {
      return new Symbols(name.substring(0, line), name.substring(line + 1).replace('_', ' '));
    }
    Matcher numbered = NUMBERED.matcher(name);
    return numbered.matches()
        ? new Symbols(numbered.group(1), numbered.group(2))
        : new Symbols(name, "");
  }

  boolean isGreek() {
    return GREEK.containsKey(base);
  }

  /** The base with Greek letters as such. */
  String letter() {
    return GREEK.getOrDefault(base, base);
  }
}
