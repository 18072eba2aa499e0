package org.boleline.json;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.BiFunction;
import java.util.function.Function;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.boleline.explain.Refusal;
import org.boleline.explain.Refusals;
import org.boleline.geometry.Vector;
import org.boleline.units.Kind;
import org.boleline.units.QuantityText;
import org.jspecify.annotations.Nullable;

/**
 * The members of an object of a plan file, read one by one.
 *
 * <p>Null means that there is no such member, or that it could not be read: then that is noted.
 * Members that nobody asked for are unknown: {@link #noMore} notes them.
 */
final class Members {
  private final Map<String, Json> byName;
  private final Refusals refusals;
  private final Set<String> asked = new LinkedHashSet<>();

  private Members(Map<String, Json> byName, Refusals refusals) {
    this.byName = byName;
    this.refusals = refusals;
  }

  /**
   * Obtains the members of an object, or notes that it is none: then no member is there, and what
   * is noted about them is lost.
   */
  static Members of(Json value, Refusals refusals) {
    if (value instanceof Json.Members members) {
      return new Members(members.byName(), refusals);
    }
    refusals.add(Refusal.Code.WRONG_TYPE, "an object", value.description());
    return new Members(Map.of(), Refusals.none());
  }

  Refusals refusals() {
    return refusals;
  }

  boolean has(String name) {
    return ask(name) != null;
  }

  boolean hasAny(String... names) {
    boolean found = false;
    for (String name : names) {
      found |= has(name);
    }
    return found;
  }

  private @Nullable Json ask(String name) {
    asked.add(name);
    return byName.get(name);
  }

  /** Notes each member that nobody asked for. */
  void noMore() {
    for (String name : byName.keySet()) {
      if (!asked.contains(name)) {
        refusals
            .at(name)
            .add(
                Refusal.Code.UNKNOWN_MEMBER,
                asked.isEmpty()
                    ? "no member here"
                    : "one of the members " + String.join(", ", asked),
                "the member " + JsonText.quoted(name));
      }
    }
  }

  @Nullable String text(String name, String wants) {
    Json value = ask(name);
    if (value == null || value instanceof Json.Text) {
      return value == null ? null : ((Json.Text) value).text();
    }
    refusals.at(name).add(Refusal.Code.WRONG_TYPE, wants, value.description());
    return null;
  }

  @Nullable Boolean flag(String name) {
    Json value = ask(name);
    if (value == null || value instanceof Json.Flag) {
      return value == null ? null : ((Json.Flag) value).value();
    }
    refusals.at(name).add(Refusal.Code.WRONG_TYPE, "true or false", value.description());
    return null;
  }

  @Nullable Double number(String name) {
    Json value = ask(name);
    if (value == null) {
      return null;
    }
    if (!(value instanceof Json.Numeral numeral)) {
      refusals
          .at(name)
          .add(Refusal.Code.WRONG_TYPE, "a number, without quotes", value.description());
      return null;
    }
    double number = Double.parseDouble(numeral.text());
    if (!Double.isFinite(number)) {
      refusals.at(name).add(Refusal.Code.OUT_OF_RANGE, "a finite number", numeral.text());
      return null;
    }
    return number + 0.0; // no minus zero
  }

  <Q extends Quantity<Q>> @Nullable Quantity<Q> quantity(String name, Kind<Q> kind) {
    Json value = ask(name);
    return value == null ? null : quantity(value, kind, refusals.at(name));
  }

  static <Q extends Quantity<Q>> @Nullable Quantity<Q> quantity(
      Json value, Kind<Q> kind, Refusals refusals) {
    if (!(value instanceof Json.Text text)) {
      refusals.add(Refusal.Code.WRONG_TYPE, QuantityText.wants(kind), value.description());
      return null;
    }
    try {
      return QuantityText.parse(text.text(), kind);
    } catch (IllegalArgumentException e) {
      refusals.add(
          Refusal.Code.WRONG_QUANTITY, QuantityText.wants(kind), JsonText.quoted(text.text()));
      return null;
    }
  }

  @Nullable Vector<Length> position(String name) {
    Json value = ask(name);
    return value == null ? null : position(value, refusals.at(name));
  }

  static @Nullable Vector<Length> position(Json value, Refusals refusals) {
    if (!(value instanceof Json.Elements elements && elements.list().size() == 3)) {
      refusals.add(
          Refusal.Code.WRONG_TYPE,
          "a list of three lengths, [x, y, z]",
          value instanceof Json.Elements elements
              ? "a list of " + elements.list().size()
              : value.description());
      return null;
    }
    List<Json> list = elements.list();
    @Nullable Quantity<Length> x = quantity(list.get(0), Kind.LENGTH, refusals.at(0));
    @Nullable Quantity<Length> y = quantity(list.get(1), Kind.LENGTH, refusals.at(1));
    @Nullable Quantity<Length> z = quantity(list.get(2), Kind.LENGTH, refusals.at(2));
    return x == null || y == null || z == null ? null : Vector.of(x, y, z);
  }

  /** Reads a member that is an object. */
  <T> @Nullable T object(String name, Function<Members, @Nullable T> reading) {
    Json value = ask(name);
    if (value == null) {
      return null;
    }
    if (!(value instanceof Json.Members members)) {
      refusals.at(name).add(Refusal.Code.WRONG_TYPE, "an object", value.description());
      return null;
    }
    return read(new Members(members.byName(), refusals.at(name)), reading);
  }

  /** Reads a member that is a word or an object. */
  <T> @Nullable T wordOrObject(
      String name, String word, T meaning, Function<Members, @Nullable T> reading) {
    Json value = ask(name);
    if (value instanceof Json.Text text) {
      if (text.text().equals(word)) {
        return meaning;
      }
      refusals
          .at(name)
          .add(
              Refusal.Code.OUT_OF_RANGE,
              JsonText.quoted(word) + " or an object",
              JsonText.quoted(text.text()));
      return null;
    }
    if (value != null && !(value instanceof Json.Members)) {
      refusals
          .at(name)
          .add(
              Refusal.Code.WRONG_TYPE,
              JsonText.quoted(word) + " or an object",
              value.description());
      return null;
    }
    return object(name, reading);
  }

  /** Reads a member that is a list of objects; empty if there is none. */
  <T> List<T> objects(String name, Function<Members, T> reading) {
    return list(
        name,
        "a list of objects",
        (element, place) -> {
          Members members = of(element, place);
          T read = reading.apply(members);
          members.noMore();
          return read;
        });
  }

  /** Reads a member that is a list; empty if there is none. */
  <T> List<T> list(String name, String wants, BiFunction<Json, Refusals, T> reading) {
    Json value = ask(name);
    List<T> read = new ArrayList<>();
    if (value instanceof Json.Elements elements) {
      for (Json element : elements.list()) {
        read.add(reading.apply(element, refusals.at(name).at(read.size())));
      }
    } else if (value != null) {
      refusals.at(name).add(Refusal.Code.WRONG_TYPE, wants, value.description());
    }
    return read;
  }

  /** Reads a member that is a text or a list of texts; empty if there is none. */
  List<String> texts(String name, String wants) {
    Json value = ask(name);
    if (value == null || value instanceof Json.Elements) {
      List<String> texts = new ArrayList<>();
      for (String text :
          list(name, wants, (element, place) -> element instanceof Json.Text t ? t.text() : "")) {
        texts.add(text);
      }
      return texts;
    }
    String text = text(name, wants);
    return text == null ? List.of() : List.of(text);
  }

  /** Reads all members that are left as figures: quantities or numbers, as they are stated. */
  Map<String, String> figures() {
    Map<String, String> figures = new LinkedHashMap<>();
    for (String name : byName.keySet()) {
      if (!asked.contains(name)) {
        String figure = figure(byName.get(name), refusals.at(name));
        if (figure != null) {
          figures.put(name, figure);
        }
        asked.add(name);
      }
    }
    return figures;
  }

  /** Returns a quantity or a number as it is stated. */
  static @Nullable String figure(@Nullable Json value, Refusals refusals) {
    if (value instanceof Json.Text text) {
      return text.text();
    }
    if (value instanceof Json.Numeral numeral
        && Double.isFinite(Double.parseDouble(numeral.text()))) {
      return QuantityText.number(Double.parseDouble(numeral.text()) + 0.0);
    }
    refusals.add(
        Refusal.Code.WRONG_TYPE,
        "a quantity or a number",
        value == null ? "nothing" : value.description());
    return null;
  }

  private static <T> @Nullable T read(Members members, Function<Members, @Nullable T> reading) {
    T read = reading.apply(members);
    members.noMore();
    return read;
  }

  /**
   * Tells which of several members is there, where exactly one must be. All other members must have
   * been asked for.
   *
   * @return its name; null if there is none, or if there are several, which is noted
   */
  @Nullable String oneOf(String... names) {
    @Nullable String found = null;
    for (String name : names) {
      if (has(name)) {
        if (found != null) {
          refusals.add(
              Refusal.Code.CONFLICT,
              "one of the members " + String.join(", ", names),
              found + " and " + name);
          return null;
        }
        found = name;
      }
    }
    if (found == null) {
      noMore(); // so that a name that is written wrongly is not called missing as well
    }
    return found;
  }
}
