package org.boleline.examples.compare;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.boleline.json.PlanWriter;
import org.boleline.study.StudyPlan;

/**
 * Shows all that a plan states, member by member as in its file, so that nothing can be left out.
 *
 * <p>Lists of objects become tables, other members lines.
 */
final class PlanTables {
  /** A choice of the format, such as {@code asStanding}. */
  private static final Pattern CAMEL = Pattern.compile("[a-z]+(?:[A-Z][a-z]+)+");

  /** Members whose text is of people, whatever it looks like. */
  private static final Set<String> WORDS =
      Set.of("id", "name", "notes", "stem", "arrangement", "askedBy", "source", "title", "part");

  /** Lengths that people measure across: diameters. */
  private static final Set<String> ACROSS =
      Set.of("outer", "cavity", "largeEnd", "smallEnd", "diameter");

  private static final Set<String> SAID_ABOVE = Set.of("title");

  private final Html html;
  private final HtmlTables tables;
  private final UnitSystem units;

  private PlanTables(Html html, HtmlTables tables, UnitSystem units) {
    this.html = html;
    this.tables = tables;
    this.units = units;
  }

  static void write(StudyPlan plan, UnitSystem units, Html html, HtmlTables tables) {
    new PlanTables(html, tables, units).plan(tree(PlanWriter.write(plan)));
  }

  private void plan(Map<?, ?> plan) {
    List<Entry> lines = new ArrayList<>();
    plan.forEach(
        (name, value) -> {
          if (!SAID_ABOVE.contains(name) && !holdsTable(value)) {
            lines.add(new Entry(words(name), inline(name, value)));
          }
        });
    tables.entries(lines);
    plan.forEach(
        (name, value) -> {
          if (holdsTable(value)) {
            html.text("h3", Wording.capital(words(name)));
            block(words(name), value);
          }
        });
  }

  /** An object, or a list, under a heading. */
  private void block(String caption, Object value) {
    if (value instanceof Map<?, ?> object) {
      List<List<String>> lines = new ArrayList<>();
      object.forEach(
          (name, member) -> {
            if (!holdsTable(member)) {
              lines.add(List.of(words(name), inline(name, member)));
            }
          });
      if (!lines.isEmpty()) {
        tables.texts(Wording.capital(caption), List.of("what", "stated"), lines);
      }
      object.forEach(
          (name, member) -> {
            if (holdsTable(member)) {
              block(caption + ", " + words(name), member);
            }
          });
    } else if (value instanceof List<?> list) {
      if (list.stream().anyMatch(PlanTables::isBlock)) {
        for (int i = 0; i < list.size(); i++) {
          block(caption + " " + name(list.get(i), i), list.get(i));
        }
      } else {
        table(caption, list);
      }
    }
  }

  private void table(String caption, List<?> rows) {
    Set<Object> names = new LinkedHashSet<>();
    rows.forEach(row -> names.addAll(((Map<?, ?>) row).keySet()));
    List<String> headings = new ArrayList<>(List.of("number"));
    names.forEach(name -> headings.add(words(name)));
    List<List<String>> cells = new ArrayList<>();
    for (Object row : rows) {
      List<String> line = new ArrayList<>(List.of(Integer.toString(cells.size() + 1)));
      for (Object name : names) {
        Object value = ((Map<?, ?>) row).get(name);
        line.add(value == null ? "" : inline(name, value));
      }
      cells.add(line);
    }
    tables.texts(Wording.capital(caption), headings, cells);
  }

  /** What an object calls itself, or its number. */
  private static String name(Object value, int index) {
    if (value instanceof Map<?, ?> object) {
      Object called = object.containsKey("id") ? object.get("id") : object.get("name");
      return index + 1 + (called == null ? "" : " " + Page.clean(called.toString()));
    }
    return Integer.toString(index + 1);
  }

  /** Whether a list of objects is in it. */
  private static boolean holdsTable(Object value) {
    if (value instanceof Map<?, ?> object) {
      return object.values().stream().anyMatch(PlanTables::holdsTable);
    }
    return value instanceof List<?> list && list.stream().anyMatch(Map.class::isInstance);
  }

  /** Whether it is an object that does not fit on one line of a table. */
  private static boolean isBlock(Object value) {
    return value instanceof Map<?, ?> && holdsTable(value);
  }

  /** A value on one line. */
  private String inline(Object name, Object value) {
    if (value instanceof Map<?, ?> object) {
      return object.entrySet().stream()
          .map(
              member ->
                  member.getValue() instanceof Map<?, ?>
                      ? words(member.getKey())
                          + " ("
                          + inline(member.getKey(), member.getValue())
                          + ")"
                      : words(member.getKey()) + " " + inline(member.getKey(), member.getValue()))
          .collect(Collectors.joining(", "));
    }
    if (value instanceof List<?> list) {
      return list.stream().map(item -> inline(name, item)).collect(Collectors.joining(", "));
    }
    String text = Page.clean(value.toString());
    return WORDS.contains(name) ? text : shown(text, ACROSS.contains(name));
  }

  /** A quantity in units that people read, a choice in words; other text as it is. */
  private String shown(String text, boolean across) {
    return CAMEL.matcher(text).matches() ? words(text) : units.stated(text, across);
  }

  /** The name of a member as words. */
  private static String words(Object name) {
    return Page.clean(
        name.toString().replaceAll("(?<=[a-z0-9])(?=[A-Z])", " ").toLowerCase(Locale.ROOT));
  }

  private static Map<?, ?> tree(String json) {
    try (JsonParser parser = new JsonFactory().createParser(json)) {
      parser.nextToken();
      return (Map<?, ?>) value(parser);
    } catch (IOException e) {
      throw new UncheckedIOException("what the library wrote", e);
    }
  }

  private static Object value(JsonParser parser) throws IOException {
    if (parser.currentToken() == JsonToken.START_OBJECT) {
      Map<String, Object> object = new LinkedHashMap<>();
      while (parser.nextToken() != JsonToken.END_OBJECT) {
        String name = parser.currentName();
        parser.nextToken();
        object.put(name, value(parser));
      }
      return object;
    }
    if (parser.currentToken() == JsonToken.START_ARRAY) {
      List<Object> list = new ArrayList<>();
      while (parser.nextToken() != JsonToken.END_ARRAY) {
        list.add(value(parser));
      }
      return list;
    }
    return switch (parser.currentToken()) {
      case VALUE_TRUE -> "yes";
      case VALUE_FALSE -> "no";
      default -> parser.getText();
    };
  }
}
