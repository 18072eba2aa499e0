package org.boleline.internal.sampling;

import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.CholeskyDecomposition;
import org.apache.commons.math3.linear.NonPositiveDefiniteMatrixException;
import org.apache.commons.math3.special.Erf;
import org.jspecify.annotations.Nullable;

/** The standard normal distribution, and correlated draws from it (Gaussian copula). */
public final class NormalKernel {
  private static final double ROOT_TWO = Math.sqrt(2);
  private static final double LEAST_PIVOT = 1e-10;

  private NormalKernel() {}

  /**
   * Returns the value that a share of all draws stays below.
   *
   * @param share the share, above 0 and below 1
   * @return the value, in standard deviations from the mean
   */
  public static double quantile(double share) {
    return ROOT_TWO * Erf.erfInv(2 * share - 1);
  }

  /**
   * Returns the share of draws below a value.
   *
   * @param value the value, in standard deviations from the mean
   * @return the share
   */
  public static double share(double value) {
    return 0.5 * Erf.erfc(-value / ROOT_TWO);
  }

  /**
   * Returns the lower triangle that makes correlated draws of independent ones.
   *
   * @param correlations symmetric, with ones on the diagonal
   * @return its Cholesky factor; null if some combination of the inputs would have no spread or
   *     less: no such correlations are possible
   */
  public static double @Nullable [][] factor(double[][] correlations) {
    try {
      return new CholeskyDecomposition(
              new Array2DRowRealMatrix(correlations), LEAST_PIVOT, LEAST_PIVOT)
          .getL()
          .getData();
    } catch (NonPositiveDefiniteMatrixException e) {
      return null;
    }
  }

  /**
   * Makes independent uniform draws correlated, in place.
   *
   * @param factor from {@link #factor}
   * @param uniform uniform draws, above 0 and below 1
   */
  public static void correlate(double[][] factor, double[] uniform) {
    int n = uniform.length;
    double[] z = new double[n];
    for (int i = 0; i < n; i++) {
      z[i] = quantile(uniform[i]);
    }
    for (int i = 0; i < n; i++) {
      double sum = 0;
      int parts = 0;
      for (int j = 0; j <= i; j++) {
        sum += factor[i][j] * z[j];
        parts += factor[i][j] == 0 ? 0 : 1;
      }
      if (parts > 1) { // others stay as they are, bit for bit
        uniform[i] = Math.min(Math.max(share(sum), Double.MIN_NORMAL), 1 - 0x1p-53);
      }
    }
  }
}
