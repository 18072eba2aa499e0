package org.boleline.drop;

/** How the motion of a swinging piece goes on. */
public enum SwingOutcome {
  /** In the end it swings to and fro with a taut rope. */
  STAYS_TAUT,
  /** It goes round the point with a taut rope. */
  GOES_ROUND,
  /**
   * The rope goes slack and taut again more often than was followed. What follows has less energy,
   * and stays within the length of the rope.
   */
  NOT_FOLLOWED
}
