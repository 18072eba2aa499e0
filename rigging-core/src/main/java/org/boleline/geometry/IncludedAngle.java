package org.boleline.geometry;

import javax.measure.Quantity;
import javax.measure.quantity.Angle;
import org.boleline.units.Kind;
import org.boleline.units.QuantityText;
import org.boleline.units.Si;

/**
 * The angle between the two legs of a rope at a contact.
 *
 * <p>Zero means the legs are parallel (the rope is doubled back, the force on the point is
 * greatest); pi means straight through. It is pi minus the {@link Turn}.
 *
 * <p>Immutable and thread-safe. Equality is exact, on the stored radians.
 */
public final class IncludedAngle {
  private final double radians;

  private IncludedAngle(double radians) {
    this.radians = radians;
  }

  /**
   * Obtains an angle between legs.
   *
   * @param angle the angle, from zero to pi, in any angle unit, not null
   * @return the angle between legs
   * @throws IllegalArgumentException if the angle is negative or above pi
   */
  public static IncludedAngle of(Quantity<Angle> angle) {
    double radians = Si.valueZeroOrMore(angle, Kind.ANGLE, "angle between the legs");
    if (radians > Math.PI) {
      throw new IllegalArgumentException(
          "angle between the legs: wants at most half a turn, got "
              + QuantityText.print(angle, Kind.ANGLE));
    }
    return new IncludedAngle(radians);
  }

  /**
   * Obtains the angle between the legs from the rope's turn: pi minus the turn.
   *
   * @param turn the turn, at most pi, not null
   * @return the angle between the legs
   * @throws IllegalArgumentException if the turn is above pi, where legs have no included angle
   */
  public static IncludedAngle from(Turn turn) {
    double w = Si.value(turn.angle(), Kind.ANGLE, "turn");
    if (w > Math.PI) {
      throw new IllegalArgumentException("turn: wants at most half a turn, got " + turn);
    }
    return new IncludedAngle(Math.PI - w);
  }

  /**
   * Returns the angle.
   *
   * @return the angle in radians, from zero to pi
   */
  public Quantity<Angle> angle() {
    return Si.of(radians, Kind.ANGLE);
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof IncludedAngle a && Double.compare(radians, a.radians) == 0;
  }

  @Override
  public int hashCode() {
    return Double.hashCode(radians);
  }

  @Override
  public String toString() {
    return QuantityText.print(angle(), Kind.ANGLE) + " between the legs";
  }
}
