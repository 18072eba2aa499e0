package org.boleline.examples.planner;

import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/** Media types of requests: RFC 9110, sections 8.3 and 12.5.1, as far as they matter here. */
final class MediaTypes {
  private static final Pattern JSON =
      Pattern.compile("application/json(\\s*;\\s*charset=\"?utf-8\"?)?\\s*");
  private static final Pattern NO_WEIGHT = Pattern.compile("q=0(\\.0{0,3})?");

  private MediaTypes() {}

  static boolean isJson(String contentType) {
    return JSON.matcher(contentType.strip().toLowerCase(Locale.ROOT)).matches();
  }

  /** Whether a client takes a type; one that says nothing takes all. */
  static boolean accepts(@Nullable List<String> accept, String type) {
    if (accept == null) {
      return true;
    }
    String plain = essence(type);
    String family = plain.substring(0, plain.indexOf('/')) + "/*";
    int best = 0; // how closely the range that decides meets the type
    boolean taken = false;
    for (String range : String.join(",", accept).split(",", -1)) {
      String name = essence(range);
      int close = name.equals(plain) ? 3 : name.equals(family) ? 2 : name.equals("*/*") ? 1 : 0;
      if (close > best) {
        best = close;
        taken = true;
        for (String parameter : range.toLowerCase(Locale.ROOT).split(";", -1)) {
          taken &= !NO_WEIGHT.matcher(parameter.strip()).matches();
        }
      }
    }
    return taken;
  }

  private static String essence(String type) {
    int end = type.indexOf(';');
    return (end < 0 ? type : type.substring(0, end)).strip().toLowerCase(Locale.ROOT);
  }
}
