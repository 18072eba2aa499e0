package org.boleline.working.problem;

import static java.util.Objects.requireNonNull;

/** What a problem is about. */
public enum ProblemKind {
  /** Tension over rings, wraps around a lowering device. */
  FRICTION("Friction"),
  /** Force on the points of a rope that runs along the stem. */
  REDIRECTS("Redirects"),
  /** Weight and balance point of logs. */
  WEIGHTS("Weights"),
  /** Moment, stress and deflection of a stem as a beam. */
  BEAMS("Beams"),
  /** Force of a fall that is caught. */
  CATCHES("Catches"),
  /** Hold at the ground and base moment of a whole arrangement on a stiff stem. */
  ARRANGEMENTS("Arrangements");

  private final String title;

  ProblemKind(String title) {
    this.title = requireNonNull(title);
  }

  /**
   * Returns the kind in words.
   *
   * @return a title
   */
  public String title() {
    return title;
  }
}
