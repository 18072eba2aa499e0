package org.boleline.internal.rod;

import org.apache.commons.math3.optim.MaxEval;
import org.apache.commons.math3.optim.nonlinear.scalar.GoalType;
import org.apache.commons.math3.optim.univariate.BrentOptimizer;
import org.apache.commons.math3.optim.univariate.SearchInterval;
import org.apache.commons.math3.optim.univariate.UnivariateObjectiveFunction;
import org.apache.commons.math3.optim.univariate.UnivariatePointValuePair;

/** Finds where along a rod each stress is greatest, at the ends of cells and between them. */
public final class StressScan {
  private static final int SAMPLES = 4;

  /** So near to a cell's end that a peak between would be one with it. */
  private static final double NEAR_END = 1e-6;

  private final Section section;
  private final double[] nodes;
  private final double[] bendingSample;
  private final double[] axialSample;

  /** A greatest value and the station where it is found. */
  public record Peak(double value, double at) {}

  /** Scans a state. */
  public StressScan(RodState state) {
    section = new Section(state);
    nodes = state.rod.nodeAt;
    int cells = state.rod.cells;
    bendingSample = new double[cells * (SAMPLES + 1)];
    axialSample = new double[cells * (SAMPLES + 1)];
    for (int n = 0; n < bendingSample.length; n++) {
      section.read(n / (SAMPLES + 1), (double) (n % (SAMPLES + 1)) / SAMPLES);
      bendingSample[n] = section.bendingStress();
      axialSample[n] = section.axialStress();
    }
  }

  /** Greatest bending stress, Pa. */
  public Peak bending() {
    return peak(0);
  }

  /** Greatest compression of a fibre, Pa, positive. */
  public Peak compression() {
    return peak(-1);
  }

  /** Greatest tension of a fibre, Pa. */
  public Peak tension() {
    return peak(1);
  }

  /** Greatest of bending stress plus a share of the axial stress. */
  private Peak peak(double axialShare) {
    double[] sample = new double[bendingSample.length];
    double most = Double.NEGATIVE_INFINITY;
    double at = 0;
    for (int n = 0; n < sample.length; n++) {
      sample[n] = bendingSample[n] + axialShare * axialSample[n];
      if (sample[n] > most) {
        most = sample[n];
        at = station(n / (SAMPLES + 1), (double) (n % (SAMPLES + 1)) / SAMPLES);
      }
    }
    double near = most - 0.02 * Math.abs(most);
    for (int n = 0; n < sample.length; n++) {
      int cell = n / (SAMPLES + 1);
      int i = n % (SAMPLES + 1);
      boolean overBefore = i == 0 || sample[n] >= sample[n - 1];
      boolean overAfter = i == SAMPLES || sample[n] >= sample[n + 1];
      if (sample[n] > near
          && overBefore
          && overAfter
          && !(i == 0 && stress(cell, NEAR_END, axialShare) <= sample[n])
          && !(i == SAMPLES && stress(cell, 1 - NEAR_END, axialShare) <= sample[n])) {
        double from = Math.max(0, i - 1.0) / SAMPLES;
        double to = Math.min(SAMPLES, i + 1.0) / SAMPLES;
        UnivariatePointValuePair found =
            new BrentOptimizer(1e-9, 1e-12)
                .optimize(
                    new MaxEval(200),
                    GoalType.MAXIMIZE,
                    new UnivariateObjectiveFunction(x -> stress(cell, x, axialShare)),
                    new SearchInterval(from, to));
        if (found.getValue() > most) {
          most = found.getValue();
          at = station(cell, found.getPoint());
        }
      }
    }
    return new Peak(most, at);
  }

  private double stress(int cell, double x, double axialShare) {
    section.read(cell, x);
    return section.bendingStress() + axialShare * section.axialStress();
  }

  private double station(int cell, double x) {
    return x == 1 ? nodes[cell + 1] : nodes[cell] + x * (nodes[cell + 1] - nodes[cell]);
  }
}
