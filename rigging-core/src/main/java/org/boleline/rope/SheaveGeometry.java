package org.boleline.rope;

import java.util.List;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.boleline.explain.Step;
import org.boleline.units.Kind;
import org.boleline.units.Si;

/**
 * A sheave on a plain bearing, by its radii and the friction in the bearing.
 *
 * <p>Immutable and thread-safe; equality is exact, on what was stated.
 */
public final class SheaveGeometry {
  private final Step drag;
  private final Step efficiency;

  private SheaveGeometry(Step drag, Step efficiency) {
    this.drag = drag;
    this.efficiency = efficiency;
  }

  /**
   * Obtains a sheave on a plain bearing.
   *
   * @equation c = r_axle / (r_tread + r_rope) * sin(atan(mu)); e = (1 - c) / (1 + c)
   * @validity plain bearing, weight of the sheave left out, the sheave turns and the rope does not
   *     slide on it
   * @source moment balance about the pin; the bearing's force is off its centre by the radius of
   *     the axle times the sine of the friction angle
   * @accuracy rounding only
   * @param treadRadius radius of the groove's ground, above zero, not null
   * @param axleRadius radius of the axle, above zero and below that of the rope's centre line, not
   *     null
   * @param ropeRadius radius of the rope, zero or more, not null
   * @param bearingFriction coefficient of friction in the bearing, from 0 to 2
   * @return the sheave
   * @throws IllegalArgumentException if an argument is outside its range
   */
  public static SheaveGeometry of(
      Quantity<Length> treadRadius,
      Quantity<Length> axleRadius,
      Quantity<Length> ropeRadius,
      double bearingFriction) {
    double tread = Si.valueAboveZero(treadRadius, Kind.LENGTH, "tread radius");
    double axle = Si.valueAboveZero(axleRadius, Kind.LENGTH, "axle radius");
    double rope = Si.valueZeroOrMore(ropeRadius, Kind.LENGTH, "rope radius");
    Checks.friction(bearingFriction);
    if (axle >= tread + rope) {
      throw new IllegalArgumentException(
          "axle radius: wants less than tread and rope radius "
              + (tread + rope)
              + " m, got "
              + axle
              + " m");
    }
    Step drag = FrictionFormulas.PLAIN_BEARING_DRAG.step(axle, tread, rope, bearingFriction);
    return new SheaveGeometry(drag, FrictionFormulas.EFFICIENCY_FROM_DRAG.step(drag.result()));
  }

  /**
   * Returns the efficiency at a half turn.
   *
   * @return slack over tight tension, above 0, at most 1
   */
  public double efficiency() {
    return efficiency.result();
  }

  /**
   * Returns the sheave as hardware.
   *
   * @return the sheave, with {@link #efficiency}
   */
  public Sheave sheave() {
    return new Sheave(efficiency());
  }

  /**
   * Returns the steps that gave the efficiency.
   *
   * @return two steps
   */
  public List<Step> steps() {
    return List.of(drag, efficiency);
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof SheaveGeometry g
        && Double.compare(drag.input(0), g.drag.input(0)) == 0
        && Double.compare(drag.input(1), g.drag.input(1)) == 0
        && Double.compare(drag.input(2), g.drag.input(2)) == 0
        && Double.compare(drag.input(3), g.drag.input(3)) == 0;
  }

  @Override
  public int hashCode() {
    int hash = 0;
    for (int i = 0; i < 4; i++) {
      hash = 31 * hash + Double.hashCode(drag.input(i));
    }
    return hash;
  }

  @Override
  public String toString() {
    return drag + "\n" + efficiency;
  }
}
