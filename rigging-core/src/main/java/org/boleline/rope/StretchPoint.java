package org.boleline.rope;

import javax.measure.Quantity;
import javax.measure.quantity.Force;
import org.boleline.units.Kind;
import org.boleline.units.QuantityText;
import org.boleline.units.Si;

/**
 * One point of a rope's stretch curve.
 *
 * <p>Immutable and thread-safe; equality is exact.
 */
public final class StretchPoint {
  private final double tension;
  private final double elongation;

  private StretchPoint(double tension, double elongation) {
    this.tension = tension;
    this.elongation = elongation;
  }

  /**
   * Obtains a point.
   *
   * @param tension tension of the rope, above zero, not null
   * @param elongationFraction added length over length without load, above zero; 0.03 is 3 %
   * @return the point
   * @throws IllegalArgumentException if an argument is not above zero or not finite
   */
  public static StretchPoint of(Quantity<Force> tension, double elongationFraction) {
    double newtons = Si.valueAboveZero(tension, Kind.FORCE, "tension");
    if (!(elongationFraction > 0 && Double.isFinite(elongationFraction))) {
      throw new IllegalArgumentException(
          "elongation: wants a finite number above zero, got " + elongationFraction);
    }
    return new StretchPoint(newtons, elongationFraction);
  }

  /**
   * Returns the tension.
   *
   * @return the tension in newtons, above zero
   */
  public Quantity<Force> tension() {
    return Si.of(tension, Kind.FORCE);
  }

  /**
   * Returns the elongation.
   *
   * @return added length over length without load, above zero
   */
  public double elongationFraction() {
    return elongation;
  }

  boolean isBelow(StretchPoint next) {
    return tension < next.tension && elongation < next.elongation;
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof StretchPoint p
        && Double.compare(tension, p.tension) == 0
        && Double.compare(elongation, p.elongation) == 0;
  }

  @Override
  public int hashCode() {
    return 31 * Double.hashCode(tension) + Double.hashCode(elongation);
  }

  @Override
  public String toString() {
    return QuantityText.number(elongation) + " at " + QuantityText.print(tension(), Kind.FORCE);
  }
}
