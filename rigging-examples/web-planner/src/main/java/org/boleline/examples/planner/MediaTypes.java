package org.boleline.examples.planner;

import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;
import java.util.stream.Stream;
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

  /** Whether a body is sent without a content coding: RFC 9110, section 8.4. */
  static boolean isPlain(@Nullable List<String> contentEncoding) {
    return contentEncoding == null
        || members(contentEncoding).allMatch(coding -> coding.equalsIgnoreCase("identity"));
  }

  /** The members of a list in a header, without empty ones: RFC 9110, section 5.6.1. */
  private static Stream<String> members(List<String> header) {
    return Stream.of(String.join(",", header).split(",", -1))
        .map(String::strip)
        .filter(member -> !member.isEmpty());
  }

  /** Whether a client takes a type; one that says nothing takes all. */
  static boolean accepts(@Nullable List<String> accept, String type) {
    List<String> ranges = accept == null ? List.of() : members(accept).toList();
    if (ranges.isEmpty()) {
      return true;
    }
    String plain = essence(type);
    String family = plain.substring(0, plain.indexOf('/')) + "/*";
    int best = 0; // how closely the range that decides meets the type
    boolean taken = false;
    for (String range : ranges) {
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
