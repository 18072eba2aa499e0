package org.boleline.examples.compare;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.boleline.picture.PictureUnits;
import org.boleline.units.Kind;
import org.boleline.units.QuantityText;
import org.boleline.units.Si;

/** The units that numbers are shown in; SI numbers go in. */
final class UnitSystem {
  /** Newtons, metres, kilograms. */
  static final UnitSystem SI =
      new UnitSystem(
          Steps.of("N", 1e5, "kN"),
          Steps.of("N.m", 1e3, "kN.m"),
          Steps.of("kPa", 1e5, "MPa"),
          Steps.of("mm", 10, "m"),
          Scale.of("m"),
          Scale.of("kg"));

  /** Pounds, feet; inches for diameters. */
  static final UnitSystem US =
      new UnitSystem(
          Steps.of("lbf"),
          Steps.of("lbf.ft"),
          Steps.of("psi"),
          Steps.of("ft"),
          Scale.of("ft"),
          Scale.of("lb"));

  private static final int CONVERTED_FIGURES = 4;

  private static final Pattern QUANTITY =
      Pattern.compile(
          "(?<![\\w.])(-?[0-9][0-9.]*(?:[eE][-+]?[0-9]+)?) ([A-Za-z](?:[\\w./]*\\w)?)(?![\\w/])");

  private static final Map<String, String> FROM_FILES = Map.of("rad", "deg", "Pa", "MPa");

  private static final Map<String, String> US_UNITS =
      Map.ofEntries(
          Map.entry("rad", "deg"),
          Map.entry("Pa", "psi"),
          Map.entry("m", "ft"),
          Map.entry("kg", "lb"),
          Map.entry("N", "lbf"),
          Map.entry("N.m", "lbf.ft"),
          Map.entry("N.m/rad", "lbf.ft/rad"),
          Map.entry("N/m", "lbf/ft"),
          Map.entry("kg/m", "lb/ft"),
          Map.entry("kg/m3", "lb/ft3"),
          Map.entry("m/s2", "ft/s2"));

  private static final Map<String, String> TO_US = toUs();

  private final Steps force;
  private final Steps moment;
  private final Steps stress;
  private final Steps movement;
  private final Scale length;
  private final Scale mass;

  private UnitSystem(
      Steps force, Steps moment, Steps stress, Steps movement, Scale length, Scale mass) {
    this.force = force;
    this.moment = moment;
    this.stress = stress;
    this.movement = movement;
    this.length = length;
    this.mass = mass;
  }

  /** Two units of a kind: the greater one serves from some SI size on. */
  private record Steps(Scale usual, double from, Scale great) {
    static Steps of(String symbol) {
      return of(symbol, Double.POSITIVE_INFINITY, symbol);
    }

    static Steps of(String usual, double from, String great) {
      return new Steps(Scale.of(usual), from, Scale.of(great));
    }

    Scale scale(double greatest) {
      return greatest < from ? usual : great;
    }
  }

  /**
   * The unit of a reading of a result.
   *
   * @param kind what it is of; empty for a pure number
   * @param greatest the greatest of the numbers that are shown together
   */
  Scale scale(Optional<Kind<?>> kind, double greatest) {
    if (kind.isEmpty()) {
      return Scale.PURE;
    }
    if (kind.get() == Kind.FORCE) {
      return force(greatest);
    }
    if (kind.get() == Kind.MOMENT) {
      return moment(greatest);
    }
    if (kind.get() == Kind.PRESSURE) {
      return stress(greatest);
    }
    if (kind.get() == Kind.LENGTH) {
      return movement(greatest);
    }
    if (kind.get() == Kind.MASS) {
      return mass;
    }
    throw new IllegalArgumentException("kind: no reading is of " + kind.get());
  }

  Scale force(double greatest) {
    return force.scale(greatest);
  }

  Scale moment(double greatest) {
    return moment.scale(greatest);
  }

  Scale stress(double greatest) {
    return stress.scale(greatest);
  }

  Scale movement(double greatest) {
    return movement.scale(greatest);
  }

  /** The unit of stations and positions. */
  Scale length() {
    return length;
  }

  /** A length that a plan states, such as a station: in metres as stated, else to four figures. */
  String statedLength(double metres) {
    return bareStatedLength(metres) + Scale.HARD_BLANK + length.shown();
  }

  /** The same without the unit. */
  String bareStatedLength(double metres) {
    return length.factor() == 1
        ? Figures.stated(metres)
        : Figures.stated(metres / length.factor(), CONVERTED_FIGURES);
  }

  /** The same choice for pictures. */
  PictureUnits ofPictures() {
    return this == US ? PictureUnits.US : PictureUnits.METRIC;
  }

  /** The same choice for worksheets. */
  org.boleline.working.UnitSystem ofWorksheets() {
    return this == US
        ? org.boleline.working.UnitSystem.FOOT_POUND
        : org.boleline.working.UnitSystem.SI;
  }

  /** A mass, to three figures. */
  String oneMass(double kilograms) {
    return mass.one(kilograms);
  }

  String oneForce(double newtons) {
    return force(Math.abs(newtons)).one(newtons);
  }

  String oneMoment(double newtonMetres) {
    return moment(Math.abs(newtonMetres)).one(newtonMetres);
  }

  String oneLength(double metres) {
    return length.one(metres);
  }

  String oneStress(double pascals) {
    return stress(Math.abs(pascals)).one(pascals);
  }

  /**
   * What a plan file states: a quantity in units that people read, as the library writes them in SI
   * units without prefixes; other text as it is.
   *
   * @param text the text
   * @param across whether it is a diameter if it is a length
   */
  String stated(String text, boolean across) {
    Matcher quantity = QUANTITY.matcher(text);
    if (!quantity.matches()) {
      return text;
    }
    if (across && quantity.group(2).equals("m")) {
      return restated(quantity.group(1), "m", this == SI ? "mm" : "in");
    }
    return restated(text, this == SI ? FROM_FILES : TO_US);
  }

  /** Text that was written for people, with the quantities in it in these units. */
  String inWords(String text) {
    return this == SI ? text : restated(text, TO_US);
  }

  private String restated(String text, Map<String, String> units) {
    return QUANTITY
        .matcher(text)
        .replaceAll(
            found -> {
              String unit = units.get(found.group(2));
              return Matcher.quoteReplacement(
                  unit == null ? found.group() : restated(found.group(1), found.group(2), unit));
            });
  }

  private String restated(String number, String from, String to) {
    Scale scale = Scale.of(to);
    double si = Double.parseDouble(number) * QuantityText.factor(from).doubleValue();
    String shown =
        this == SI || to.equals("deg")
            ? Figures.stated(si / scale.factor())
            : Figures.stated(si / scale.factor(), CONVERTED_FIGURES);
    return shown + Scale.HARD_BLANK + scale.shown();
  }

  /** Every symbol that is read for an SI unit, with the unit to show instead. */
  private static Map<String, String> toUs() {
    Map<String, String> units = new HashMap<>();
    US_UNITS.forEach(
        (si, us) -> QuantityText.symbolsOf(si).forEach(symbol -> units.put(symbol, us)));
    return Map.copyOf(units);
  }

  /** A short quantity, such as {@code "92.3 N"}, in these units; other text as it is. */
  String restated(String text) {
    try {
      if (text.endsWith(" Pa")) {
        return oneStress(Si.value(QuantityText.parse(text, Kind.PRESSURE), Kind.PRESSURE, text));
      }
      if (this == US && text.endsWith(" N")) {
        return oneForce(Si.value(QuantityText.parse(text, Kind.FORCE), Kind.FORCE, text));
      }
      if (this == US && text.endsWith(" m")) {
        return oneLength(Si.value(QuantityText.parse(text, Kind.LENGTH), Kind.LENGTH, text));
      }
      return text;
    } catch (IllegalArgumentException e) {
      return text; // it only looked like a quantity
    }
  }
}
