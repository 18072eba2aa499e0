package org.boleline.stem;

import static java.util.Objects.requireNonNull;

import javax.measure.Quantity;
import javax.measure.quantity.Length;
import javax.measure.quantity.Mass;
import org.boleline.explain.Refusals;
import org.boleline.units.Kind;
import org.boleline.units.QuantityText;
import org.boleline.units.Si;
import org.jspecify.annotations.Nullable;

/**
 * A mass that hangs on a stem at one station, such as a crown that remains.
 *
 * <p>Immutable and thread-safe.
 */
public final class PointMass {
  private final double at;
  private final double mass;

  private PointMass(double at, double mass) {
    this.at = at;
    this.mass = mass;
  }

  /**
   * Obtains a mass on a stem.
   *
   * @param at the station, zero or more, not null
   * @param mass the mass, zero or more, at most 1000 t, not null
   * @return the mass on the stem
   * @throws org.boleline.explain.PlanRefusedException if a value is outside its range
   */
  public static PointMass of(Quantity<Length> at, Quantity<Mass> mass) {
    requireNonNull(at, "at");
    requireNonNull(mass, "mass");
    return Refusals.check(refusals -> stated(at, mass, refusals));
  }

  /**
   * Obtains a mass on a stem as stated, for readers of files.
   *
   * @param at the station, or null if that could not be had
   * @param mass the mass, or null if that could not be had
   * @param refusals notes what is wrong, at the mass
   * @return the mass on the stem
   */
  public static PointMass stated(
      @Nullable Quantity<Length> at, @Nullable Quantity<Mass> mass, Refusals refusals) {
    return new PointMass(
        Bounds.station(at, refusals), refusals.at("mass").between(mass, Kind.MASS, 0, Bounds.MASS));
  }

  double atMetres() {
    return at;
  }

  /**
   * Returns the station.
   *
   * @return where along the stem, in metres from the base
   */
  public Quantity<Length> at() {
    return Si.of(at, Kind.LENGTH);
  }

  /**
   * Returns the mass.
   *
   * @return the mass in kilograms, zero or more
   */
  public Quantity<Mass> mass() {
    return Si.of(mass, Kind.MASS);
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof PointMass m
        && Double.compare(at, m.at) == 0
        && Double.compare(mass, m.mass) == 0;
  }

  @Override
  public int hashCode() {
    return 31 * Double.hashCode(at) + Double.hashCode(mass);
  }

  @Override
  public String toString() {
    return QuantityText.print(at(), Kind.LENGTH) + ": " + QuantityText.print(mass(), Kind.MASS);
  }
}
