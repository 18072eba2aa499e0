package org.boleline.drop;

/** How a piece hangs from its tie after the fall. */
public enum CutPosture {
  /** Tied below its balance point: it has turned over, the cut is above. */
  TURNED_OVER,
  /** Tied above its balance point: the cut is below. */
  UPRIGHT,
  /** Tied at its balance point: any way. */
  ANY
}
