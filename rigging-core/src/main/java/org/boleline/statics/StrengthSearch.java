package org.boleline.statics;

import java.util.function.DoubleUnaryOperator;
import org.boleline.internal.coupled.RigSolver;

/** Finds the share of the rig load at which a use of strength reaches one. */
final class StrengthSearch {
  private static final double ACCURACY = 1e-9;

  private final RigSolver solver;
  private final DoubleUnaryOperator use;
  private final double resting;
  private final double full;
  private double lostAt = Double.POSITIVE_INFINITY;
  private boolean careful;

  /**
   * Prepares a search.
   *
   * @param use the use of strength in the solver's present state
   * @param resting the use at rest, below one
   * @param full the use at the full load
   */
  StrengthSearch(RigSolver solver, DoubleUnaryOperator use, double resting, double full) {
    this.solver = solver;
    this.use = use;
    this.resting = resting;
    this.full = full;
  }

  /** Share of the load at which stability is lost before the strength is reached, or infinity. */
  double lostAt() {
    return lostAt;
  }

  /**
   * Returns the share, or NaN if none up to the given one reaches the strength, or stability is
   * lost before.
   */
  double factor(double most) {
    double low = 0;
    double atLow = resting - 1;
    double high = 1;
    double atHigh = full - 1;
    while (atHigh < 0) {
      low = high;
      atLow = atHigh;
      double guess = (1 - resting) / Math.max(1e-12, full - resting);
      high = Math.min(Math.max(1.02 * guess, 1.5 * high), 3 * high);
      if (low > most) {
        return Double.NaN;
      }
      atHigh = at(high);
      if (atHigh >= 0 && !careful && !solver.isAmple()) {
        careful = true;
        atHigh = at(high);
      }
      if (Double.isNaN(atHigh)) {
        return Double.NaN;
      }
    }
    int side = 0;
    double last = Double.NaN;
    for (int i = 0; i < 60; i++) {
      double middle = (atLow * high - atHigh * low) / (atLow - atHigh);
      if (Math.abs(middle - last) <= ACCURACY * middle) {
        return middle > most ? Double.NaN : middle;
      }
      last = middle;
      double value = at(middle);
      if (Double.isNaN(value)) {
        return Double.NaN;
      }
      if (value < 0) {
        low = middle;
        atLow = value;
        atHigh = side < 0 ? 0.5 * atHigh : atHigh;
        side = -1;
      } else {
        high = middle;
        atHigh = value;
        atLow = side > 0 ? 0.5 * atLow : atLow;
        side = 1;
      }
    }
    return last > most ? Double.NaN : last;
  }

  private double at(double factor) {
    RigSolver.Ending ending = careful ? solver.follow(factor) : solver.reach(factor);
    if (ending == RigSolver.Ending.UNSTABLE) {
      lostAt = solver.lostAt();
      return Double.NaN;
    }
    return ending == RigSolver.Ending.STABLE ? use.applyAsDouble(factor) - 1 : Double.NaN;
  }
}
