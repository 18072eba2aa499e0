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
    return figures(lengths(metres)) + " " + length;
  }

  String force(double newtons) {
    return figures(forces(newtons)) + " " + force;
  }

  /** A force between two ends, or one if both read the same. */
  String force(double newtons, double otherEnd) {
    String least = figures(forces(Math.min(newtons, otherEnd)));
    String most = figures(forces(Math.max(newtons, otherEnd)));
    return (least.equals(most) ? least : least + " to " + most) + " " + force;
  }

  String moment(double newtonMetres) {
    return figures(moments(newtonMetres)) + " " + moment;
  }

  String stress(double pascals) {
    return figures(stresses(pascals)) + " " + stress;
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
        ? figures(energies(siValue)) + " " + energy
        : figures(siValue) + " " + kind.ucum();
  }

  private static double factor(String symbol) {
    return QuantityText.factor(symbol).doubleValue();
  }

  /** Three figures, no more than three decimals, no zeros behind them: for what was stated. */
  static String number(double value) {
    BigDecimal rounded = rounded(value);
    return rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString();
  }

  /** Three figures, no more than three decimals: for what was worked out. */
  static String figures(double value) {
    BigDecimal rounded = rounded(value);
    int decimals = FIGURES - rounded.precision() + rounded.scale();
    return rounded.signum() == 0
        ? "0"
        : rounded
            .setScale(Math.max(0, Math.min(DECIMALS, decimals)), RoundingMode.HALF_EVEN)
            .toPlainString();
  }

  private static BigDecimal rounded(double value) {
    BigDecimal rounded = new BigDecimal(value).round(new MathContext(FIGURES));
    return rounded.scale() > DECIMALS
        ? rounded.setScale(DECIMALS, RoundingMode.HALF_EVEN)
        : rounded;
  }

  /** The greatest of 1, 2 and 5 times a power of ten that does not exceed a value. */
  static double round(double most) {
    double power = Double.parseDouble("1e" + (int) Math.floor(Math.log10(most)));
    double digit = most / power;
    return (digit >= 5 ? 5 : digit >= 2 ? 2 : 1) * power;
  }
}
