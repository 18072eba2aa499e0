package org.boleline.geometry;

import javax.measure.Quantity;
import javax.measure.quantity.Angle;
import org.boleline.internal.friction.FrictionKernel;
import org.boleline.units.Kind;
import org.boleline.units.QuantityText;
import org.boleline.units.Si;

/**
 * How far the rope's direction of travel changes at a contact.
 *
 * <p>Zero means straight through; half a turn (pi) means doubled back; wraps around a lowering
 * device add two pi each. This is not the angle between the legs: that is {@link IncludedAngle},
 * and the two add up to pi.
 *
 * <p>Immutable and thread-safe. Equality is exact, on the stored radians.
 */
public final class Turn {
  /** Straight through: no turn. */
  public static final Turn NONE = new Turn(0);

  /** Doubled back: half a turn. */
  public static final Turn HALF = new Turn(Math.PI);

  private final double radians;

  private Turn(double radians) {
    this.radians = radians;
  }

  /**
   * Obtains a turn.
   *
   * @param angle the turn, zero or more, in any angle unit, not null
   * @return the turn
   * @throws IllegalArgumentException if the angle is negative
   */
  public static Turn of(Quantity<Angle> angle) {
    return new Turn(Si.valueZeroOrMore(angle, Kind.ANGLE, "turn"));
  }

  /**
   * Obtains the turn of wraps around a round body, such as a lowering device: 2 pi each.
   *
   * @param wraps number of wraps, zero or more, finite; halves and parts are allowed
   * @return the turn
   * @throws IllegalArgumentException if the number is negative or not finite
   */
  public static Turn ofWraps(double wraps) {
    if (!(wraps >= 0 && Double.isFinite(wraps))) {
      throw new IllegalArgumentException("wraps: wants zero or more, got " + wraps);
    }
    return new Turn(2 * Math.PI * wraps);
  }

  /**
   * Obtains the turn from the angle between the two legs: pi minus that angle.
   *
   * @param legs the angle between the legs, not null
   * @return the turn, from zero to pi
   */
  public static Turn between(IncludedAngle legs) {
    return new Turn(Math.PI - Si.value(legs.angle(), Kind.ANGLE, "legs"));
  }

  /**
   * Obtains the turn of a helical wrap around a cylinder.
   *
   * @equation w = f * cos(b)
   * @validity lead angle from zero to below a quarter turn; steady helix on a round cylinder
   * @source geometry of the helix: curvature cos(b)^2 / r over a length r f / cos(b)
   * @param swept the azimuth swept around the cylinder, zero or more, not null
   * @param lead the lead angle of the helix, from zero (square to the axis) to below a quarter turn
   * @return the turn
   * @throws IllegalArgumentException if an angle is outside its range
   */
  public static Turn ofHelix(Quantity<Angle> swept, Quantity<Angle> lead) {
    double f = Si.valueZeroOrMore(swept, Kind.ANGLE, "swept");
    double b = Si.valueZeroOrMore(lead, Kind.ANGLE, "lead");
    if (b >= Math.PI / 2) {
      throw new IllegalArgumentException(
          "lead: wants less than a quarter turn, got " + QuantityText.print(lead, Kind.ANGLE));
    }
    return new Turn(FrictionKernel.helixTurn(f, b));
  }

  /**
   * Returns this turn and another one after it.
   *
   * @param other the other turn, not null
   * @return the sum
   */
  public Turn plus(Turn other) {
    return new Turn(radians + other.radians);
  }

  /**
   * Returns the turn as an angle.
   *
   * @return the angle in radians, zero or more
   */
  public Quantity<Angle> angle() {
    return Si.of(radians, Kind.ANGLE);
  }

  /**
   * Returns the turn as a number of full turns.
   *
   * @return turn over 2 pi
   */
  public double wraps() {
    return radians / (2 * Math.PI);
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof Turn t && Double.compare(radians, t.radians) == 0;
  }

  @Override
  public int hashCode() {
    return Double.hashCode(radians);
  }

  @Override
  public String toString() {
    return QuantityText.print(angle(), Kind.ANGLE) + " of turn";
  }
}
