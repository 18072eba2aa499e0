package org.boleline.limits;

import javax.measure.Quantity;
import javax.measure.quantity.Acceleration;
import javax.measure.quantity.Angle;
import javax.measure.quantity.Force;
import javax.measure.quantity.Length;
import javax.measure.quantity.Pressure;
import org.boleline.explain.Step;
import org.boleline.units.Density;
import org.boleline.units.Kind;
import org.boleline.units.QuantityText;
import org.boleline.units.Si;

/**
 * A plumb standing stem used as a pole: the hand formula for what it can take at a height.
 *
 * <p>It leaves out taper, lean, movement and cavities, which a plan does not. Thread-safe; keeps no
 * state.
 */
public final class Spar {
  private Spar() {}

  /**
   * Returns the force at the anchor at which the pressed side 1 m above the ground reaches a
   * stress.
   *
   * @equation F = pi / 4 * D^2 * (s_c - (H - 1) * rho * g) / (cos(a) + 8 * sin(a) * (H - 1) / D)
   *     (LIM-12, theory/limits.md)
   * @validity plumb spar of one diameter, small movement
   * @source HSE RR668, the full form
   * @accuracy rounding only
   * @param diameter diameter 1 m above the ground, above zero, not null
   * @param height height of the anchor, from 1 m to 200 m, not null
   * @param strength strength in compression, above zero, not null
   * @param density density of the wood, above zero, not null
   * @param gravity acceleration of gravity, above zero, not null
   * @param fromAxis angle of the force from the stem's axis, zero to a right angle, not null
   * @return the step, whose result is the force in newtons; below zero if own weight alone is more
   * @throws IllegalArgumentException if a value is outside its range
   */
  public static Step capacityStep(
      Quantity<Length> diameter,
      Quantity<Length> height,
      Quantity<Pressure> strength,
      Quantity<Density> density,
      Quantity<Acceleration> gravity,
      Quantity<Angle> fromAxis) {
    double h = Si.value(height, Kind.LENGTH, "height");
    if (h < 1 || h > 200) {
      throw new IllegalArgumentException(
          "height: wants a length from 1 m to 200 m, got "
              + QuantityText.print(height, Kind.LENGTH));
    }
    double angle = Si.valueZeroOrMore(fromAxis, Kind.ANGLE, "angle");
    if (angle > Math.PI / 2) {
      throw new IllegalArgumentException(
          "angle: wants at most a right angle, got " + QuantityText.print(fromAxis, Kind.ANGLE));
    }
    return LimitFormulas.SPAR.step(
        Si.valueAboveZero(diameter, Kind.LENGTH, "diameter"),
        h,
        Si.valueAboveZero(strength, Kind.PRESSURE, "strength"),
        Si.valueAboveZero(density, Kind.DENSITY, "density"),
        Si.valueAboveZero(gravity, Kind.ACCELERATION, "gravity"),
        angle);
  }

  /**
   * Returns the result of {@link #capacityStep} as a force.
   *
   * @equation as {@link #capacityStep}
   * @validity as there
   * @source as there
   * @accuracy as there
   * @param diameter as there
   * @param height as there
   * @param strength as there
   * @param density as there
   * @param gravity as there
   * @param fromAxis as there
   * @return the force in newtons
   * @throws IllegalArgumentException as there
   */
  public static Quantity<Force> capacity(
      Quantity<Length> diameter,
      Quantity<Length> height,
      Quantity<Pressure> strength,
      Quantity<Density> density,
      Quantity<Acceleration> gravity,
      Quantity<Angle> fromAxis) {
    return Si.of(
        capacityStep(diameter, height, strength, density, gravity, fromAxis).result(), Kind.FORCE);
  }
}
