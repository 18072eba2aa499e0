package org.boleline.json;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.IntFunction;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.boleline.geometry.Vector;
import org.boleline.units.Kind;
import org.boleline.units.QuantityText;
import org.boleline.units.Si;

/** Builds an object of a file; members stand in the order they are put. */
final class ObjectBuilder {
  private final Map<String, Json> byName = new LinkedHashMap<>();

  Json build() {
    return new Json.Members(Collections.unmodifiableMap(new LinkedHashMap<>(byName)));
  }

  ObjectBuilder put(String name, Json value) {
    if (byName.putIfAbsent(name, value) != null) {
      throw new AssertionError("member " + name + " twice");
    }
    return this;
  }

  ObjectBuilder put(String name, String text) {
    return put(name, new Json.Text(text));
  }

  ObjectBuilder put(String name, double number) {
    return put(name, new Json.Numeral(QuantityText.number(number)));
  }

  ObjectBuilder put(String name, boolean flag) {
    return put(name, new Json.Flag(flag));
  }

  ObjectBuilder put(String name, ObjectBuilder object) {
    return put(name, object.build());
  }

  /** Puts a list, also if it is empty. */
  <T> ObjectBuilder putAll(String name, List<T> elements, Function<T, Json> writing) {
    return put(name, list(elements.size(), index -> writing.apply(elements.get(index))));
  }

  /** A list of what is written for each index below a count. */
  static Json list(int count, IntFunction<Json> writing) {
    List<Json> list = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      list.add(writing.apply(i));
    }
    return new Json.Elements(Collections.unmodifiableList(list));
  }

  /** Puts a quantity as plan files state it: text with the SI unit. */
  <Q extends Quantity<Q>> ObjectBuilder putStated(String name, Quantity<Q> value, Kind<Q> kind) {
    return put(name, QuantityText.print(value, kind));
  }

  /** Puts a quantity as plan files state it, if there is one. */
  <Q extends Quantity<Q>> ObjectBuilder putStated(
      String name, Optional<Quantity<Q>> value, Kind<Q> kind) {
    value.ifPresent(quantity -> putStated(name, quantity, kind));
    return this;
  }

  /** Puts a position as plan files state it: three lengths. */
  ObjectBuilder putStated(String name, Vector<Length> position) {
    return put(name, stated(position));
  }

  static Json stated(Vector<Length> position) {
    return new Json.Elements(
        List.of(
            new Json.Text(QuantityText.print(position.x(), Kind.LENGTH)),
            new Json.Text(QuantityText.print(position.y(), Kind.LENGTH)),
            new Json.Text(QuantityText.print(position.z(), Kind.LENGTH))));
  }

  /** Puts a quantity as results give it: a number and the UCUM code of its unit. */
  <Q extends Quantity<Q>> ObjectBuilder putValue(String name, Quantity<Q> value, Kind<Q> kind) {
    return put(name, value(value, kind));
  }

  /** Puts a vector as results give it: three numbers and the UCUM code of their unit. */
  <Q extends Quantity<Q>> ObjectBuilder putValue(String name, Vector<Q> vector) {
    double[] components = vector.in(vector.kind());
    return put(
        name,
        new ObjectBuilder()
            .put("x", components[0])
            .put("y", components[1])
            .put("z", components[2])
            .put("unit", vector.kind().ucum()));
  }

  /** A quantity as results give it; angles in degrees. */
  static <Q extends Quantity<Q>> ObjectBuilder value(Quantity<Q> value, Kind<Q> kind) {
    double si = Si.value(value, kind, kind.name());
    return kind == Kind.ANGLE
        ? new ObjectBuilder().put("value", Math.toDegrees(si)).put("unit", "deg")
        : new ObjectBuilder().put("value", si).put("unit", kind.ucum());
  }
}
