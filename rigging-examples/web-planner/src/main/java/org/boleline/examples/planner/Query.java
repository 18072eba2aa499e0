package org.boleline.examples.planner;

import java.net.URI;
import java.net.URLDecoder;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** The parameters of a request: known ones, each once. */
final class Query {
  private final Map<String, String> values;

  private Query(Map<String, String> values) {
    this.values = values;
  }

  static Query of(URI uri, Set<String> known) throws Problem {
    Map<String, String> values = new LinkedHashMap<>();
    @Nullable String raw = uri.getRawQuery();
    for (String pair : raw == null || raw.isEmpty() ? new String[0] : raw.split("&", -1)) {
      int sign = pair.indexOf('=');
      String name = decoded(sign < 0 ? pair : pair.substring(0, sign));
      if (!known.contains(name)) {
        throw refused("no parameter " + name + " is known here");
      }
      if (values.putIfAbsent(name, sign < 0 ? "" : decoded(pair.substring(sign + 1))) != null) {
        throw refused(name + " stands twice");
      }
    }
    return new Query(values);
  }

  private static String decoded(String text) throws Problem {
    try {
      return URLDecoder.decode(text, StandardCharsets.UTF_8);
    } catch (IllegalArgumentException e) {
      throw refused("its escapes cannot be read");
    }
  }

  static Problem refused(String why) {
    return Problem.named(400, "bad-query", "The query is refused", "Query: " + why + ".", Map.of());
  }

  String required(String name) throws Problem {
    @Nullable String value = values.get(name);
    if (value == null) {
      throw refused(name + " is missing");
    }
    return value;
  }

  String oneOf(String name, List<String> words) throws Problem {
    String value = values.getOrDefault(name, words.get(0));
    if (!words.contains(value)) {
      throw refused(name + " wants one of " + String.join(", ", words));
    }
    return value;
  }

  int whole(String name, int least, int most, int otherwise) throws Problem {
    @Nullable String value = values.get(name);
    if (value == null) {
      return otherwise;
    }
    try {
      int number = Integer.parseInt(value);
      if (number >= least && number <= most) {
        return number;
      }
    } catch (NumberFormatException e) {
      // told below
    }
    throw refused(name + " wants a whole number from " + least + " to " + most);
  }
}
