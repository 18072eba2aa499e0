package org.boleline.wood;

import javax.measure.Quantity;
import org.boleline.units.Kind;
import org.boleline.units.QuantityText;
import org.boleline.units.Si;

/** Bounds far outside any tree, so that no number can overflow a calculation. */
final class Bounds {
  /** Greatest length of a log, in metres. */
  static final double LENGTH = 200;

  /** Greatest diameter, in metres. */
  static final double DIAMETER = 20;

  /** Least diameter of a section or a large end, in metres. */
  static final double LEAST_DIAMETER = 1e-3;

  /** Greatest density, in kilograms per cubic metre. */
  static final double DENSITY = 1e5;

  /** Greatest modulus of elasticity or strength, in pascals. */
  static final double STRESS = 1e13;

  /** Greatest mass of foliage, in kilograms. */
  static final double MASS = 1e6;

  /** Greatest gravity, in metres per second squared. */
  static final double GRAVITY = 1000;

  private Bounds() {}

  static <Q extends Quantity<Q>> double aboveZero(
      Quantity<Q> quantity, Kind<Q> kind, double most, String name) {
    double value = Si.valueAboveZero(quantity, kind, name);
    if (value > most) {
      throw outside(name, "a " + kind + " above zero to " + text(most, kind), value, kind);
    }
    return value;
  }

  static <Q extends Quantity<Q>> double between(
      Quantity<Q> quantity, Kind<Q> kind, double least, double most, String name) {
    double value = Si.value(quantity, kind, name);
    if (value < least || value > most) {
      String wants = "a " + kind + " from " + text(least, kind) + " to " + text(most, kind);
      throw outside(name, wants, value, kind);
    }
    return value;
  }

  static <Q extends Quantity<Q>> IllegalArgumentException outside(
      String name, String wants, double value, Kind<Q> kind) {
    return new IllegalArgumentException(name + ": wants " + wants + ", got " + text(value, kind));
  }

  static <Q extends Quantity<Q>> String text(double value, Kind<Q> kind) {
    return QuantityText.print(Si.of(value, kind), kind);
  }
}
