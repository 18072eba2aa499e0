package org.boleline.statics;

import static java.util.Objects.requireNonNull;

/**
 * The share of the rig load at which a stem reaches the stated strength of its wood.
 *
 * <p>Immutable and thread-safe.
 */
public final class StrengthReach {
  private final double loadFactor;
  private final Governing governing;

  StrengthReach(double loadFactor, Governing governing) {
    this.loadFactor = loadFactor;
    this.governing = requireNonNull(governing);
  }

  /**
   * Returns the share of the full rig load.
   *
   * @return zero if own weight alone reaches the strength; below 1 if the full load exceeds it
   */
  public double loadFactor() {
    return loadFactor;
  }

  /**
   * Returns which strength is reached.
   *
   * @return the strength
   */
  public Governing governing() {
    return governing;
  }

  /** Which strength is reached. */
  public enum Governing {
    /** Compression along the grain, bending and axial force together. */
    COMPRESSION,
    /** Bending strength, by the tension side. */
    BENDING
  }
}
