package org.boleline.rope;

import org.boleline.explain.Step;
import org.boleline.geometry.Turn;

/**
 * A turning sheave on a plain or rolling bearing.
 *
 * <p>Its efficiency is slack over tight tension at a half turn, legs parallel. Published figures
 * follow several conventions: see {@link SheaveConvention}.
 *
 * @param efficiency slack over tight tension at a half turn, above 0, at most 1
 */
public record Sheave(double efficiency) implements Hardware {
  /**
   * Makes the sheave.
   *
   * @param efficiency slack over tight tension at a half turn, above 0, at most 1
   * @throws IllegalArgumentException if the efficiency is not above 0 and at most 1
   */
  public Sheave {
    Checks.efficiency(efficiency);
  }

  @Override
  public String name() {
    return "sheave";
  }

  /**
   * Returns the tension ratio with its explanation.
   *
   * @equation t = (h + sqrt(1 + h^2))^2 with h = (1 - e) / (2 sqrt(e)) |sin(w / 2)|
   * @validity e 0.8 to 1, w up to pi; outside it is computed, and the step cautions. Left out:
   *     weight of the sheave, a sheave that does not spin up and lets the rope slide
   * @source moment balance about the pin, where tight less slack tension is a fixed share of the
   *     force on the pin
   * @accuracy rounding only, also near no turn and near efficiency 1
   * @param turn turn of the rope at the contact, not null
   * @return the step
   * @throws IllegalArgumentException if the ratio exceeds the largest double
   */
  @Override
  public Step step(Turn turn) {
    return FrictionFormulas.SHEAVE.step(efficiency, Radians.of(turn));
  }
}
