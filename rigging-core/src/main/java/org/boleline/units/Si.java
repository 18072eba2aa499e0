package org.boleline.units;

import static java.util.Objects.requireNonNull;

import javax.measure.Quantity;
import javax.measure.Unit;
import org.jspecify.annotations.Nullable;
import tech.units.indriya.quantity.Quantities;

/** The gateway: the only place where a quantity becomes a double, or a double a quantity. */
public final class Si {
  private Si() {}

  /**
   * Returns the value of a quantity in the SI unit of its kind.
   *
   * @param <Q> the quantity type
   * @param quantity the quantity, in any unit of any implementation, not null
   * @param kind what it must be of, not null
   * @param name name of the argument, for messages
   * @return the value in {@code kind.siUnit()}, finite
   * @throws NullPointerException if the quantity is null; the message is the name
   * @throws IllegalArgumentException if the unit does not fit the kind (reachable through raw types
   *     only) or the value is not finite
   */
  public static <Q extends Quantity<Q>> double value(
      Quantity<Q> quantity, Kind<Q> kind, String name) {
    requireNonNull(quantity, name);
    Unit<Q> unit = quantity.getUnit();
    Unit<Q> si = kind.siUnit();
    Number number = quantity.getValue();
    @Nullable Factor factor = unit == si ? null : Factor.of(unit, si);
    double value;
    // The units library keeps 16.0 as the integer 16.
    if (factor != null && (number instanceof Double || number instanceof Integer)) {
      value = factor.times(number.doubleValue());
    } else if (unit == si || unit.equals(si)) {
      value = number.doubleValue();
    } else if (unit.isCompatible(si)) {
      value = unit.getConverterTo(si).convert(number).doubleValue();
    } else {
      throw new IllegalArgumentException(
          name + ": wants a quantity of " + kind + ", got one in " + unit);
    }
    if (!Double.isFinite(value)) {
      throw new IllegalArgumentException(name + ": wants a finite value, got " + value);
    }
    return value;
  }

  /**
   * Returns the value of a quantity that must be zero or more.
   *
   * @param <Q> the quantity type
   * @param quantity the quantity, not null
   * @param kind what it must be of, not null
   * @param name name of the argument, for messages
   * @return the value in the SI unit, zero or more
   * @throws IllegalArgumentException if it is negative, or as {@link #value}
   */
  public static <Q extends Quantity<Q>> double valueZeroOrMore(
      Quantity<Q> quantity, Kind<Q> kind, String name) {
    double value = value(quantity, kind, name);
    if (value < 0) {
      throw new IllegalArgumentException(
          name + ": wants zero or more, got " + QuantityText.print(value, kind));
    }
    return value;
  }

  /**
   * Returns the value of a quantity that must be above zero.
   *
   * @param <Q> the quantity type
   * @param quantity the quantity, not null
   * @param kind what it must be of, not null
   * @param name name of the argument, for messages
   * @return the value in the SI unit, above zero
   * @throws IllegalArgumentException if it is zero or negative, or as {@link #value}
   */
  public static <Q extends Quantity<Q>> double valueAboveZero(
      Quantity<Q> quantity, Kind<Q> kind, String name) {
    double value = value(quantity, kind, name);
    if (value <= 0) {
      throw new IllegalArgumentException(
          name + ": wants more than zero, got " + QuantityText.print(value, kind));
    }
    return value;
  }

  /**
   * Makes a quantity of a value in the SI unit of a kind.
   *
   * @param <Q> the quantity type
   * @param siValue the value in {@code kind.siUnit()}, finite
   * @param kind what it is of
   * @return the quantity, in the SI unit
   * @throws IllegalArgumentException if the value is not finite
   */
  public static <Q extends Quantity<Q>> Quantity<Q> of(double siValue, Kind<Q> kind) {
    if (!Double.isFinite(siValue)) {
      throw new IllegalArgumentException(kind + ": wants a finite value, got " + siValue);
    }
    return Quantities.getQuantity(siValue, kind.siUnit());
  }
}
