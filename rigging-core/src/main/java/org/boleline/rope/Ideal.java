package org.boleline.rope;

import static java.util.Objects.requireNonNull;

import org.boleline.explain.Step;
import org.boleline.geometry.Turn;

/** A contact without friction: the same tension on both sides. There is one. */
public final class Ideal implements Hardware {
  /** The contact without friction. */
  public static final Ideal INSTANCE = new Ideal();

  private Ideal() {}

  @Override
  public String name() {
    return "ideal";
  }

  /**
   * Returns the tension ratio with its explanation.
   *
   * @equation t = 1
   * @validity the limit of no friction
   * @source definition
   * @param turn turn of the rope at the contact, not null
   * @return the step; its result is 1
   */
  @Override
  public Step step(Turn turn) {
    requireNonNull(turn, "turn");
    return FrictionFormulas.NO_FRICTION.step();
  }

  @Override
  public String toString() {
    return name();
  }
}
