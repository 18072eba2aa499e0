package org.boleline.wood;

import static java.util.Objects.requireNonNull;

import org.boleline.explain.Source;

/**
 * A published threshold of a strength-loss index: a figure of its source, not a judgement of a
 * tree.
 *
 * @param meaning what the source says of it, in a few words
 * @param ratio the threshold, on the scale of the index
 * @param side on which side of it the index must lie for the source to say so
 * @param source who says so
 */
public record Threshold(String meaning, double ratio, Side side, Source source) {
  /** The side of a threshold. */
  public enum Side {
    /** At the threshold or above it. */
    AT_OR_ABOVE,
    /** Above it. */
    ABOVE,
    /** Below it. */
    BELOW
  }

  /**
   * Makes a threshold.
   *
   * @param meaning what the source says of it, in a few words
   * @param ratio the threshold, on the scale of the index
   * @param side on which side of it the index must lie for the source to say so
   * @param source who says so
   * @throws IllegalArgumentException if the threshold is not from 0 to 1
   */
  public Threshold {
    requireNonNull(meaning, "meaning");
    requireNonNull(side, "side");
    requireNonNull(source, "source");
    if (!(ratio >= 0 && ratio <= 1)) {
      throw new IllegalArgumentException("ratio: wants a number from 0 to 1, got " + ratio);
    }
  }

  /**
   * Tells whether an index lies on the side the source speaks of.
   *
   * @param index the index, a number
   * @return true if it does; false for NaN
   */
  public boolean isPassedBy(double index) {
    return switch (side) {
      case AT_OR_ABOVE -> index >= ratio;
      case ABOVE -> index > ratio;
      case BELOW -> index < ratio;
    };
  }
}
