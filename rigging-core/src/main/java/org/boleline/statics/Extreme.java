package org.boleline.statics;

import javax.measure.Quantity;
import javax.measure.quantity.Length;
import javax.measure.quantity.Pressure;
import org.boleline.units.Kind;
import org.boleline.units.Si;

/**
 * A greatest value along a stem and where it is found.
 *
 * <p>Immutable and thread-safe.
 */
public final class Extreme {
  private final double value;
  private final double at;

  Extreme(double value, double at) {
    this.value = value;
    this.at = at;
  }

  /**
   * Returns the greatest value.
   *
   * @return the stress, in pascals
   */
  public Quantity<Pressure> value() {
    return Si.of(value, Kind.PRESSURE);
  }

  /**
   * Returns where it is found.
   *
   * @return the station along the stem from its base, in metres
   */
  public Quantity<Length> at() {
    return Si.of(at, Kind.LENGTH);
  }
}
