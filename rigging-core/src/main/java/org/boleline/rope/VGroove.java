package org.boleline.rope;

import java.util.List;
import javax.measure.Quantity;
import javax.measure.quantity.Angle;
import org.boleline.explain.Step;
import org.boleline.units.Kind;
import org.boleline.units.QuantityText;
import org.boleline.units.Si;

/**
 * A V-groove in which the rope wedges, bearing on both flanks.
 *
 * <p>Immutable and thread-safe; equality is exact.
 */
public final class VGroove {
  private final Step step;

  private VGroove(Step step) {
    this.step = step;
  }

  /**
   * Obtains a groove.
   *
   * @equation mu_v = mu / sin(a)
   * @validity the rope bears on the flanks and not on the bottom
   * @source statics and belt texts (from memory)
   * @accuracy rounding only
   * @param friction coefficient of friction of the flanks, from 0 to 2
   * @param halfAngle half of the angle between the flanks, above zero, at most a quarter turn, not
   *     null
   * @return the groove
   * @throws IllegalArgumentException if an argument is outside its range
   */
  public static VGroove of(double friction, Quantity<Angle> halfAngle) {
    Checks.friction(friction);
    double a = Si.valueAboveZero(halfAngle, Kind.ANGLE, "half angle");
    if (a > Math.PI / 2) {
      throw new IllegalArgumentException(
          "half angle: wants at most a quarter turn, got "
              + QuantityText.print(halfAngle, Kind.ANGLE));
    }
    return new VGroove(FrictionFormulas.V_GROOVE.step(friction, a));
  }

  /**
   * Returns the friction of a round contact that holds as much as the groove.
   *
   * @return the coefficient, at least that of the flanks
   */
  public double effectiveFriction() {
    return step.result();
  }

  /**
   * Returns the round contact that holds as much as the groove.
   *
   * @return the contact, with {@link #effectiveFriction}
   * @throws IllegalArgumentException if that friction is above 2
   */
  public FrictionRing asRing() {
    return new FrictionRing(effectiveFriction());
  }

  /**
   * Returns the step that gave the friction.
   *
   * @return one step
   */
  public List<Step> steps() {
    return List.of(step);
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof VGroove g
        && Double.compare(step.input(0), g.step.input(0)) == 0
        && Double.compare(step.input(1), g.step.input(1)) == 0;
  }

  @Override
  public int hashCode() {
    return 31 * Double.hashCode(step.input(0)) + Double.hashCode(step.input(1));
  }

  @Override
  public String toString() {
    return step.toString();
  }
}
