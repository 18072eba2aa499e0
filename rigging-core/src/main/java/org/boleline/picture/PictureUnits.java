package org.boleline.picture;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import org.boleline.units.Kind;
import org.boleline.units.QuantityText;

/** The units in which pictures are lettered. */
public enum PictureUnits {
  /** Metres, kilonewtons, kilonewton metres, megapascals, kilograms. */
  METRIC("m", "kN", "kN.m", "MPa", "kg", "kJ"),
  /** Feet, pounds-force, pound-force feet, pounds per square inch, pounds. */
  US("ft", "lbf", "lbf.ft", "psi", "lb", "ft.lbf");

  private static final int FIGURES = 3;
  private static final int DECIMALS = 3;
  private final String length;
  private final String force;
  private final String moment;
  private final String stress;
  private final String mass;
  private final String energy;

  PictureUnits(
      String length, String force, String moment, String stress, String mass, String energy) {
    this.length = length;
    this.force = force;
    this.moment = moment;
    this.stress = stress;
    this.mass = mass;
    this.energy = energy;
  }

  String lengthUnit() {
    return length;
  }

  String forceUnit() {
    return force;
  }

  String momentUnit() {
    return moment;
  }

  String stressUnit() {
    return stress;
  }

  String energyUnit() {
    return energy;
  }

  double lengths(double metres) {
    return metres / factor(length);
  }

  double forces(double newtons) {
    return newtons / factor(force);
  }

  double moments(double newtonMetres) {
    return newtonMetres / (this == METRIC ? 1000 : factor("lbf") * factor("ft"));
  }

  double stresses(double pascals) {
    return pascals / factor(stress);
  }

  double energies(double joules) {
    return joules / (this == METRIC ? 1000 : factor("lbf") * factor("ft"));
  }

  String length(double metres) {
    return number(lengths(metres)) + " " + length;
  }

  String force(double newtons) {
    return number(forces(newtons)) + " " + force;
  }

  /** A force between two ends, or one if both read the same. */
  String force(double newtons, double otherEnd) {
    String least = number(forces(Math.min(newtons, otherEnd)));
    String most = number(forces(Math.max(newtons, otherEnd)));
    return (least.equals(most) ? least : least + " to " + most) + " " + force;
  }

  String moment(double newtonMetres) {
    return number(moments(newtonMetres)) + " " + moment;
  }

  String stress(double pascals) {
    return number(stresses(pascals)) + " " + stress;
  }

  String mass(double kilograms) {
    return number(kilograms / factor(mass)) + " " + mass;
  }

  /** A value of any kind, in the units of this lettering or else the SI unit. */
  String text(double siValue, Kind<?> kind) {
    if (kind == Kind.FORCE) {
      return force(siValue);
    }
    if (kind == Kind.LENGTH) {
      return length(siValue);
    }
    if (kind == Kind.MOMENT) {
      return moment(siValue);
    }
    if (kind == Kind.PRESSURE) {
      return stress(siValue);
    }
    if (kind == Kind.MASS) {
      return mass(siValue);
    }
    return kind == Kind.ENERGY
        ? number(energies(siValue)) + " " + energy
        : number(siValue) + " " + kind.ucum();
  }

  private static double factor(String symbol) {
    return QuantityText.factor(symbol).doubleValue();
  }

  /** Three figures, no more than three decimals, no zeros behind them. */
  static String number(double value) {
    BigDecimal rounded = new BigDecimal(value).round(new MathContext(FIGURES));
    if (rounded.scale() > DECIMALS) {
      rounded = rounded.setScale(DECIMALS, RoundingMode.HALF_EVEN);
    }
    return rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString();
  }

  /** The greatest of 1, 2 and 5 times a power of ten that does not exceed a value. */
  static double round(double most) {
    double power = Double.parseDouble("1e" + (int) Math.floor(Math.log10(most)));
    double digit = most / power;
    return (digit >= 5 ? 5 : digit >= 2 ? 2 : 1) * power;
  }
}
