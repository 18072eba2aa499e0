package org.boleline.stem;

/** In which state a stem has the shape that is stated. */
public enum ShapeIs {
  /**
   * The shape was measured on the standing tree: its own weight has already bent it, and adds force
   * and moment but no further movement.
   */
  AS_STANDING,
  /** The shape with no load at all: the stem's own weight bends it. */
  STRESS_FREE
}
