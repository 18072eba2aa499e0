package org.boleline.examples.compare;

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

  /** Pounds, feet, inches. */
  static final UnitSystem US =
      new UnitSystem(
          Steps.of("lbf"),
          Steps.of("lbf.ft"),
          Steps.of("psi"),
          Steps.of("in"),
          Scale.of("ft"),
          Scale.of("lb"));

  static final int CONVERTED_FIGURES = 4;

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

  boolean isMetric() {
    return this == SI;
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
