package org.boleline.drop;

import java.util.List;
import org.boleline.internal.drop.CatchKernel;
import org.jspecify.annotations.Nullable;

/**
 * What the points of a path give for each newton of the load leg: how far each lets the load come
 * down, the rope that passes each, and what is stored for each square newton.
 */
final class CatchGive {
  private final double[] slips;
  private final double stored;
  private final double sum;

  private CatchGive(double[] slips, double stored, double sum) {
    this.slips = slips;
    this.stored = stored;
    this.sum = sum;
  }

  static CatchGive of(
      List<CatchPoint> points,
      double[] products,
      @Nullable Double atLoad,
      @Nullable PointGive all) {
    int n = points.size();
    double[] gives = new double[n];
    double[] slips = new double[n];
    double stored = 0;
    double sum = 0;
    if (atLoad != null) {
      stored = 1 / (2 * atLoad);
      sum = 1 / atLoad;
    }
    for (int j = 0; j < n; j++) {
      Double spring = points.get(j).springRate();
      if (spring != null) {
        double turn = points.get(j).turnRadians();
        gives[j] = CatchKernel.give(products[j], products[j + 1], turn, spring);
        slips[j] = CatchKernel.ownSlip(products[j], products[j + 1], turn, spring);
        double share = CatchKernel.forceShare(products[j], products[j + 1], turn);
        stored += share * share / (2 * spring);
      }
    }
    if (all != null) {
      double[][] d = new double[n][];
      for (int j = 0; j < n; j++) {
        d[j] = points.get(j).directions();
      }
      double[] moved = CatchKernel.movements(all.matrix(), d, products);
      for (int j = 0; j < n; j++) {
        for (int c = 0; c < 3; c++) {
          double u = moved[3 * j + c];
          gives[j] += u * (d[j][c] + d[j][c + 3]);
          slips[j] += u * d[j][c + 3];
          stored += u * (d[j][c] / products[j] + d[j][c + 3] / products[j + 1]) / 2;
        }
      }
    }
    // From the tail on: what passes a point is its own and all that those behind let through.
    double behind = 0;
    for (int j = n - 1; j >= 0; j--) {
      slips[j] += behind;
      behind += gives[j];
    }
    return new CatchGive(slips, stored, sum + behind);
  }

  /** Travel of the load for each newton. */
  double sum() {
    return sum;
  }

  /** Rope that passes a point for each newton. */
  double slip(int point) {
    return slips[point];
  }

  /** Energy stored for each square newton. */
  double stored() {
    return stored;
  }
}
