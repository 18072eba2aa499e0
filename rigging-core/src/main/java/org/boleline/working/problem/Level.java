package org.boleline.working.problem;

/** How much a problem asks. */
public enum Level {
  /** One or two formulas. */
  FIRST(1),
  /** A quantity has to be found on the way. */
  SECOND(2),
  /** Several steps, each on the one before. */
  THIRD(3);

  private final int number;

  Level(int number) {
    this.number = number;
  }

  /**
   * Returns the level as a number.
   *
   * @return 1, 2 or 3
   */
  public int number() {
    return number;
  }
}
