package org.boleline.statics;

import java.util.function.DoubleFunction;
import java.util.function.ToDoubleFunction;
import org.boleline.internal.coupled.RigSolver;
import org.jspecify.annotations.Nullable;

/** Finds the share of the rig load at which a use of strength reaches one. */
final class StrengthSearch {
  private static final double ACCURACY = 1e-9;

  /** Each way along the whole loading path costs as much as many solves; few are worth it. */
  private static final int MOST_LONG_WAYS = 10;

  /** More small steps than this in a row, or smaller ones, cost as much as the whole path. */
  private static final int MOST_STEPS = 30;

  /** Of the way that is left. */
  private static final double LEAST_PART = 0.01;

  private final DoubleFunction<RigSolver> afresh;
  private final ToDoubleFunction<RigSolver> use;
  private final double resting;
  private final double full;
  private RigSolver solver;

  /** The load the solver counts as one, over the full load. */
  private double scale = 1;

  /** The state at the greatest load known to leave strength over; null before the first. */
  private RigSolver.@Nullable Place below;

  private double lostAt = Double.POSITIVE_INFINITY;
  private int longWays;

  /**
   * Prepares a search.
   *
   * @param solver the solver at the full load
   * @param afresh solves a share of the load from the beginning, with cells as fine as that asks
   * @param use the use of strength in a solver's present state
   * @param resting the use at rest, below one
   * @param full the use at the full load
   */
  StrengthSearch(
      RigSolver solver,
      DoubleFunction<RigSolver> afresh,
      ToDoubleFunction<RigSolver> use,
      double resting,
      double full) {
    this.solver = solver;
    this.afresh = afresh;
    this.use = use;
    this.resting = resting;
    this.full = full;
  }

  /** Share of the load at which stability is lost before the strength is reached, or infinity. */
  double lostAt() {
    return lostAt;
  }

  /** The solver, in the state tried last: that of the share, once it is found. */
  RigSolver solver() {
    return solver;
  }

  /**
   * Returns the share, or NaN if none up to the given one reaches the strength, or stability is
   * lost before.
   */
  double factor(double most) {
    if (full - resting < 1e-9) {
      return Double.NaN;
    }
    double low = 0;
    double atLow = resting - 1;
    double high = 1;
    double atHigh = full - 1;
    while (atHigh < 0) {
      low = high;
      atLow = atHigh;
      below = solver.place();
      double guess = (1 - resting) / Math.max(1e-12, full - resting);
      high = Math.min(Math.max(1.02 * guess, 1.5 * high), 3 * high);
      if (low > most) {
        return Double.NaN;
      }
      atHigh = at(high);
      if (atHigh >= 0 && !solver.isAmple()) {
        // Make sure that this is where the loading leads to; from here on small steps do.
        atHigh = along(high);
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
        below = solver.place();
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

  /** Use of strength less one at a share of the load; NaN where there is no state to be had. */
  private double at(double factor) {
    return walk(factor / scale) ? use.applyAsDouble(solver) - 1 : along(factor);
  }

  /** The same, along the whole loading path. */
  private double along(double factor) {
    if (++longWays > MOST_LONG_WAYS) {
      return Double.NaN;
    }
    RigSolver.Ending ending =
        below == null ? solver.follow(factor / scale) : solver.onward(below, factor / scale);
    if (ending == RigSolver.Ending.TOO_COARSE || ending == RigSolver.Ending.NOT_SOLVED) {
      // The cells that do for the full load may be too coarse for more.
      solver = afresh.apply(factor);
      scale = factor;
      below = null;
      ending = solver.ending();
    }
    if (ending == RigSolver.Ending.UNSTABLE) {
      lostAt = scale * solver.lostAt();
    }
    return ending == RigSolver.Ending.STABLE ? use.applyAsDouble(solver) - 1 : Double.NaN;
  }

  /** Goes to a share of the solver's load in small steps from where it stands. */
  private boolean walk(double share) {
    double part = 1;
    for (int i = 0; i < MOST_STEPS && part > LEAST_PART; i++) {
      double here = solver.state().loadFactor();
      if (!solver.step(part == 1 ? share : here + part * (share - here))) {
        part /= 2;
      } else if (part == 1) {
        return true;
      } else {
        part = Math.min(1, 2 * part);
      }
    }
    return false;
  }
}
