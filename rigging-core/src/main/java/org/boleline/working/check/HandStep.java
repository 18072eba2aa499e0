package org.boleline.working.check;

import static java.util.Objects.requireNonNull;

/**
 * One number of a person's calculation, as written down.
 *
 * @param name what it is: the id of a formula, such as {@code FRI-6}, or the symbol of its result,
 *     such as {@code T_slack}; where a sheet has it several times, the count may follow, as in
 *     {@code T_slack (2)}
 * @param value the number with its unit, such as {@code 484 N}; a pure number stands alone
 * @param figuresCount to how many significant figures the person rounded; 0 if not stated
 */
public record HandStep(String name, String value, int figuresCount) {
  /** The most figures that make sense: those of a double. */
  static final int MOST_FIGURES = 15;

  /**
   * Makes a step. Whether name and value make sense shows only beside a worksheet, in {@link
   * HandCheck#of}.
   *
   * @param name the id of a formula, or the symbol of its result
   * @param value the number with its unit; a pure number stands alone
   * @param figuresCount to how many significant figures the person rounded; 0 if not stated
   */
  public HandStep {
    requireNonNull(name, "name");
    requireNonNull(value, "value");
  }

  /**
   * Obtains a step whose rounding is not stated.
   *
   * @param name the id of a formula, or the symbol of its result
   * @param value the number with its unit; a pure number stands alone
   * @return the step
   */
  public static HandStep of(String name, String value) {
    return new HandStep(name, value, 0);
  }

  /**
   * Returns a copy that states the rounding.
   *
   * @param newCount to how many significant figures the person rounded, 1 to 15
   * @return the copy
   */
  public HandStep roundedTo(int newCount) {
    return new HandStep(name, value, newCount);
  }
}
