package org.boleline.internal.rod;

/**
 * Factors that join the rate of a rotation vector th of size f to the rotation it brings: th' + A
 * th x th' + B th x (th x th').
 *
 * <p>Source: Rodrigues' formula, as in any text on rotations in space. Not thread-safe.
 */
final class RootTurn {
  /** Below this the power series is the more exact. */
  private static final double SMALL = 0.3;

  /** A = (1 - cos f) / f^2. */
  double first;

  /** B = (f - sin f) / f^3. */
  double second;

  /** Derivative of A for f, over f. */
  double firstSlope;

  /** Derivative of B for f, over f. */
  double secondSlope;

  RootTurn() {
    of(0);
  }

  /** Sets the factors for a size, zero or more. */
  void of(double f) {
    double f2 = f * f;
    if (f < SMALL) {
      first = 1.0 / 2 - f2 * (1.0 / 24 - f2 * (1.0 / 720 - f2 * (1.0 / 40320 - f2 / 3628800)));
      second = 1.0 / 6 - f2 * (1.0 / 120 - f2 * (1.0 / 5040 - f2 * (1.0 / 362880 - f2 / 39916800)));
      firstSlope = -1.0 / 12 + f2 * (1.0 / 180 - f2 * (1.0 / 6720 - f2 / 453600));
      secondSlope = -1.0 / 60 + f2 * (1.0 / 1260 - f2 * (1.0 / 60480 - f2 / 4989600));
    } else {
      double lost = 1 - Math.cos(f);
      double late = f - Math.sin(f);
      first = lost / f2;
      second = late / (f * f2);
      firstSlope = (f * Math.sin(f) - 2 * lost) / (f2 * f2);
      secondSlope = (f * lost - 3 * late) / (f * f2 * f2);
    }
  }
}
