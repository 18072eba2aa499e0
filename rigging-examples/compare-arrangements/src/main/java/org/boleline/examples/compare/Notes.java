package org.boleline.examples.compare;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.boleline.drop.DropResult;
import org.boleline.explain.Caution;
import org.boleline.explain.Datum;
import org.boleline.explain.Source;
import org.boleline.limits.Checks;
import org.boleline.statics.NotSolved;
import org.boleline.statics.StaticResult;
import org.boleline.units.QuantityText;

/** Cautions and data taken, each said once for all arrangements that share it. */
final class Notes {
  private static final Pattern NUMBER = Pattern.compile("(-?[0-9][0-9.]*(?:e-?[0-9]+)?)( .+)?");
  private static final Pattern CONTACT = Pattern.compile("contacts/([0-9]+)");

  /** Values that are numbers, but say which one and not how much. */
  private static final List<String> NAMES = List.of("contact", "point", "stem");

  private static final int MOST_PLACES = 2;

  private Notes() {}

  /** Cautions that differ alone in how much they tell of. */
  private record Group(List<Integer> arrangements, List<Caution> cautions) {}

  static List<Entry> cautions(Checks checks, UnitSystem units) {
    StaticResult result = checks.statics();
    Map<String, Group> groups = new LinkedHashMap<>();
    for (int i = 0; i < result.arrangements().size(); i++) {
      List<Caution> cautions = new ArrayList<>(result.arrangements().get(i).cautions());
      int index = i;
      checks
          .drops()
          .flatMap(drops -> drops.drops().get(index))
          .ifPresent(drop -> cautions.addAll(drop.cautions()));
      cautions.addAll(checks.arrangements().get(i).cautions());
      for (Caution caution : cautions) {
        add(groups, caution, i + 1);
      }
    }
    for (Caution caution : checks.cautions()) {
      Matcher of = Pattern.compile("/arrangements/([0-9]+)/.*").matcher(caution.place());
      add(groups, caution, of.matches() ? Integer.parseInt(of.group(1)) + 1 : 0);
    }
    List<Entry> entries = new ArrayList<>();
    for (int i = 0; i < result.arrangements().size(); i++) {
      if (result.arrangements().get(i) instanceof NotSolved given) {
        entries.add(
            new Entry(
                Integer.toString(i + 1),
                "The library could not solve this arrangement: "
                    + Page.clean(given.reason())
                    + " (unbalance "
                    + QuantityText.number(given.residual())
                    + "). That is a fault of the library; please report it with the plan."));
      }
    }
    for (Group group : groups.values()) {
      entries.add(new Entry(numbers(group.arrangements()), sentence(group.cautions(), units)));
    }
    return entries;
  }

  private static void add(Map<String, Group> groups, Caution caution, int arrangement) {
    StringBuilder key = new StringBuilder(caution.code().name());
    new TreeMap<>(caution.values())
        .forEach(
            (name, value) -> {
              if (NAMES.contains(name) || !NUMBER.matcher(value).matches()) {
                key.append('\n').append(value);
              }
            });
    Group group =
        groups.computeIfAbsent(
            key.toString(), k -> new Group(new ArrayList<>(), new ArrayList<>()));
    if (arrangement > 0 && !group.arrangements().contains(arrangement)) {
      group.arrangements().add(arrangement);
    }
    group.cautions().add(caution);
  }

  /** Numbers of arrangements with runs drawn together: "1, 3–6"; "all" if there are none. */
  private static String numbers(List<Integer> arrangements) {
    if (arrangements.isEmpty()) {
      return "all";
    }
    List<String> words = new ArrayList<>();
    int from = 0;
    for (int to = 1; to <= arrangements.size(); to++) {
      if (to == arrangements.size() || arrangements.get(to) > arrangements.get(to - 1) + 1) {
        int first = arrangements.get(from);
        int last = arrangements.get(to - 1);
        words.add(first == last ? "" + first : first + (last == first + 1 ? ", " : "–") + last);
        from = to;
      }
    }
    return String.join(", ", words);
  }

  /** The sentence of cautions that differ in numbers: these from the least to the greatest. */
  private static String sentence(List<Caution> cautions, UnitSystem units) {
    Map<String, String> values = new TreeMap<>();
    for (String name : cautions.get(0).values().keySet()) {
      List<String> texts =
          cautions.stream().map(c -> c.values().getOrDefault(name, "")).distinct().toList();
      values.put(name, spread(texts, units));
    }
    Caution first = cautions.get(0);
    return Page.clean(new Caution(first.code(), first.place(), values).sentence());
  }

  private static String spread(List<String> texts, UnitSystem units) {
    String least = texts.get(0);
    String most = texts.get(0);
    for (String text : texts) {
      least = number(text) < number(least) ? text : least;
      most = number(text) > number(most) ? text : most;
    }
    return least.equals(most)
        ? shown(least, units)
        : shown(least, units) + " to " + shown(most, units);
  }

  private static double number(String text) {
    Matcher number = NUMBER.matcher(text);
    return number.matches() ? Double.parseDouble(number.group(1)) : 0;
  }

  private static String shown(String text, UnitSystem units) {
    Matcher contact = CONTACT.matcher(text);
    return contact.matches()
        ? "point " + (Integer.parseInt(contact.group(1)) + 1)
        : units.restated(text);
  }

  static List<Entry> taken(DropResult result, UnitSystem units) {
    Map<String, List<String>> places = new LinkedHashMap<>();
    for (Datum datum : result.taken()) {
      int end = datum.name().lastIndexOf('/');
      String what =
          datum.name().substring(end + 1)
              + " = "
              + units.restated(datum.value())
              + "\n"
              + source(datum.source())
              + (datum.spread() == null ? "" : "; spread: " + datum.spread());
      places.computeIfAbsent(what, k -> new ArrayList<>()).add(datum.name().substring(0, end));
    }
    List<Entry> entries = new ArrayList<>();
    places.forEach(
        (what, at) -> {
          int line = what.indexOf('\n');
          entries.add(
              new Entry(
                  "",
                  Page.clean(
                      what.substring(0, line) + where(at) + ": " + what.substring(line + 1))));
        });
    return entries;
  }

  private static String where(List<String> places) {
    if (places.size() > MOST_PLACES) {
      return " in " + places.size() + " places";
    }
    List<String> named = places.stream().filter(place -> !place.isEmpty()).toList();
    return named.isEmpty() ? "" : " (" + String.join(", ", named) + ")";
  }

  /** A source with how its value was come by. */
  static String source(Source source) {
    return switch (source.reading()) {
      case FROM_MEMORY -> source.title() + " (from memory)";
      case COMMON_PRACTICE -> source.title() + " (common practice, no source)";
      case DERIVED -> source.title() + " (derived)";
      case READ, STATED, DEFAULT -> source.title();
    };
  }
}
