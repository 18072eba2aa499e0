package org.boleline.rope;

import org.boleline.explain.Step;
import org.boleline.geometry.Turn;

/**
 * What the rope runs over at a contact, as far as friction goes.
 *
 * <p>All kinds are immutable and thread-safe; equality is exact, on the numbers.
 */
public sealed interface Hardware permits Ideal, FrictionRing, Sheave, Bark {
  /**
   * Returns the name of the kind as in plan files.
   *
   * @return {@code ideal}, {@code ring}, {@code sheave} or {@code bark}
   */
  String name();

  /**
   * Returns the tension ratio with its explanation.
   *
   * @param turn turn of the rope at the contact, not null
   * @return the step whose result is {@link #tensionRatio}, bit for bit
   * @throws IllegalArgumentException if the ratio exceeds the largest double
   */
  Step step(Turn turn);

  /**
   * Returns tension on the tight side over tension on the slack side when the rope is about to
   * slip.
   *
   * @param turn turn of the rope at the contact, not null
   * @return the ratio, 1 or more
   * @throws IllegalArgumentException if the ratio exceeds the largest double
   */
  default double tensionRatio(Turn turn) {
    return step(turn).result();
  }
}
