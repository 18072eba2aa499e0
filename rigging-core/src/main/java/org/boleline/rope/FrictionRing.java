package org.boleline.rope;

import org.boleline.explain.Step;
import org.boleline.geometry.Turn;

/**
 * A fixed smooth round contact: a friction ring, a round bar, the drum of a lowering device.
 *
 * <p>Its tension ratio grows with the turn and not with the radius.
 *
 * @param friction coefficient of friction between rope and metal, from 0 to 2
 */
public record FrictionRing(double friction) implements Hardware {
  /**
   * Makes the contact.
   *
   * @param friction coefficient of friction, from 0 to 2
   * @throws IllegalArgumentException if the friction is outside 0 to 2 or not a number
   */
  public FrictionRing {
    Checks.friction(friction);
  }

  @Override
  public String name() {
    return "ring";
  }

  /**
   * Returns the tension ratio with its explanation.
   *
   * @equation t = exp(mu * w)
   * @validity mu 0.05 to 0.6, w up to 12 pi; outside it is computed, and the step cautions. Left
   *     out: bending stiffness and weight of the rope, speed
   * @source Euler-Eytelwein
   * @accuracy rounding only
   * @param turn turn of the rope at the contact, not null
   * @return the step
   * @throws IllegalArgumentException if the ratio exceeds the largest double
   */
  @Override
  public Step step(Turn turn) {
    return FrictionFormulas.CAPSTAN.step(friction, Radians.of(turn));
  }
}
