package org.boleline.statics;

/** How the analysis of an arrangement ended. */
public enum Outcome {
  /** A stable state at the full load was found. */
  STABLE("stable"),
  /** The loading path from rest loses stability before the full load. */
  UNSTABLE("unstable"),
  /** The solver gave up. */
  NOT_SOLVED("notSolved");

  private final String text;

  Outcome(String text) {
    this.text = text;
  }

  /**
   * Returns the outcome as result files write it.
   *
   * @return the text
   */
  public String text() {
    return text;
  }
}
