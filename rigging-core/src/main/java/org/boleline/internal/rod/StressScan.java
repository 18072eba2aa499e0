package org.boleline.internal.rod;

import java.util.function.ToDoubleFunction;
import org.apache.commons.math3.optim.MaxEval;
import org.apache.commons.math3.optim.nonlinear.scalar.GoalType;
import org.apache.commons.math3.optim.univariate.BrentOptimizer;
import org.apache.commons.math3.optim.univariate.SearchInterval;
import org.apache.commons.math3.optim.univariate.UnivariateObjectiveFunction;
import org.apache.commons.math3.optim.univariate.UnivariatePointValuePair;

/** Finds where along a rod a stress is greatest, at the ends of cells and between them. */
public final class StressScan {
  private static final int SAMPLES = 6;

  private final double value;
  private final double at;

  private StressScan(double value, double at) {
    this.value = value;
    this.at = at;
  }

  /** Greatest bending stress. */
  public static StressScan bending(RodState state) {
    return of(state, section -> section.bendingStress);
  }

  /** Greatest compression of a fibre, positive. */
  public static StressScan compression(RodState state) {
    return of(state, section -> section.bendingStress - section.axialStress);
  }

  /** Greatest tension of a fibre. */
  public static StressScan tension(RodState state) {
    return of(state, section -> section.bendingStress + section.axialStress);
  }

  /** The greatest value, Pa. */
  public double value() {
    return value;
  }

  /** The station where it is found, m; the lowest if there are several. */
  public double at() {
    return at;
  }

  private static StressScan of(RodState state, ToDoubleFunction<Section> stress) {
    Section section = new Section(state);
    int cells = state.rod.cells;
    double[] sample = new double[cells * (SAMPLES + 1)];
    double most = Double.NEGATIVE_INFINITY;
    int best = 0;
    for (int c = 0; c < cells; c++) {
      for (int i = 0; i <= SAMPLES; i++) {
        section.read(c, (double) i / SAMPLES);
        int n = c * (SAMPLES + 1) + i;
        sample[n] = stress.applyAsDouble(section);
        if (sample[n] > most) {
          most = sample[n];
          best = n;
        }
      }
    }
    double[] nodes = state.rod.nodeAt;
    int bestCell = best / (SAMPLES + 1);
    double at = station(nodes, bestCell, (double) (best % (SAMPLES + 1)) / SAMPLES);
    double near = most - 0.02 * Math.abs(most);
    for (int n = 0; n < sample.length; n++) {
      int c = n / (SAMPLES + 1);
      int i = n % (SAMPLES + 1);
      boolean overBefore = i == 0 || sample[n] >= sample[n - 1];
      boolean overAfter = i == SAMPLES || sample[n] >= sample[n + 1];
      if (sample[n] > near && overBefore && overAfter) {
        double from = Math.max(0, i - 1.0) / SAMPLES;
        double to = Math.min(SAMPLES, i + 1.0) / SAMPLES;
        UnivariatePointValuePair found =
            new BrentOptimizer(1e-9, 1e-12)
                .optimize(
                    new MaxEval(200),
                    GoalType.MAXIMIZE,
                    new UnivariateObjectiveFunction(
                        x -> {
                          section.read(c, x);
                          return stress.applyAsDouble(section);
                        }),
                    new SearchInterval(from, to));
        if (found.getValue() > most) {
          most = found.getValue();
          at = station(nodes, c, found.getPoint());
        }
      }
    }
    return new StressScan(most, at);
  }

  private static double station(double[] nodes, int cell, double x) {
    return x == 1 ? nodes[cell + 1] : nodes[cell] + x * (nodes[cell + 1] - nodes[cell]);
  }
}
