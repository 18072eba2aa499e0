package org.boleline.limits;

import javax.measure.Quantity;
import javax.measure.quantity.Force;
import javax.measure.quantity.Length;
import javax.measure.quantity.Pressure;
import org.boleline.units.Kind;
import org.boleline.units.Moment;
import org.boleline.units.Si;

/**
 * The least diameter of a round stem whose pressed side keeps to a stress.
 *
 * <p>Bending moment and axial force stay as they are: a thicker stem weighs more and gives way
 * less, which this leaves out. Thread-safe; keeps no state.
 */
public final class LeastDiameter {
  private LeastDiameter() {}

  /**
   * Returns the least diameter of solid wood.
   *
   * @equation D such that D^3 - 4 * P * D / (pi * s) - 32 * M / (pi * s) = 0 (LIM-10,
   *     theory/limits.md)
   * @validity solid round section, linear elastic wood
   * @source derived: stress of a round section
   * @accuracy rounding only
   * @param moment bending moment, zero or more, not null
   * @param pressing axial force, pressing; zero or more, not null
   * @param stress stress to keep to, above zero, not null
   * @return the diameter in metres, zero or more
   * @throws IllegalArgumentException if a value is outside its range
   */
  public static Quantity<Length> solid(
      Quantity<Moment> moment, Quantity<Force> pressing, Quantity<Pressure> stress) {
    return Si.of(
        LimitFormulas.LEAST_SOLID.value(
            Si.valueZeroOrMore(pressing, Kind.FORCE, "pressing"),
            Si.valueZeroOrMore(moment, Kind.MOMENT, "moment"),
            Si.valueAboveZero(stress, Kind.PRESSURE, "stress")),
        Kind.LENGTH);
  }

  /**
   * Returns the least outer diameter about a cavity that stays as it is.
   *
   * @equation D such that M / Z + P / A = s with Z = pi * (D^4 - d^4) / (32 * D), A = pi * (D^2 -
   *     d^2) / 4 (LIM-11, theory/limits.md)
   * @validity round section with a concentric cavity, linear elastic wood
   * @source derived: stress of a round section
   * @accuracy found by trial, to a few roundings
   * @param moment bending moment, zero or more, not null
   * @param pressing axial force, pressing; zero or more, not null
   * @param stress stress to keep to, above zero, not null
   * @param cavity diameter of the cavity, zero or more, not null
   * @return the diameter in metres, that of the cavity or more
   * @throws IllegalArgumentException if a value is outside its range
   */
  public static Quantity<Length> hollow(
      Quantity<Moment> moment,
      Quantity<Force> pressing,
      Quantity<Pressure> stress,
      Quantity<Length> cavity) {
    return Si.of(
        LimitFormulas.LEAST_HOLLOW.value(
            Si.valueZeroOrMore(pressing, Kind.FORCE, "pressing"),
            Si.valueZeroOrMore(moment, Kind.MOMENT, "moment"),
            Si.valueAboveZero(stress, Kind.PRESSURE, "stress"),
            Si.valueZeroOrMore(cavity, Kind.LENGTH, "cavity")),
        Kind.LENGTH);
  }
}
