package org.boleline.internal.coupled;

import org.apache.commons.math3.exception.MathRuntimeException;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.EigenDecomposition;
import org.apache.commons.math3.linear.RealVector;

/**
 * Linear solves and least eigenvalue of the tangent, by products with it alone.
 *
 * <p>In the solver's scaling the tangent is the unit matrix plus a compact part (softer modes of a
 * stem count ever less), so a handful of products suffices, however fine the cells are.
 */
final class Krylov {
  private static final int MOST = 90;

  /** Below this two values count as one. */
  private static final double LEAST_GAP = 1e-5;

  private final int n;
  private final double[][] basis;
  private final double[][] h = new double[MOST + 1][MOST];
  private final double[] cosine = new double[MOST];
  private final double[] sine = new double[MOST];
  private final double[] rhs = new double[MOST + 1];
  private double lastComponent;
  private double gap;

  Krylov(int n) {
    this.n = n;
    basis = new double[MOST + 1][];
  }

  private double[] basis(int i) {
    double[] v = basis[i];
    if (v == null) {
      v = new double[n];
      basis[i] = v;
    }
    return v;
  }

  /**
   * Solves tangent x = b (GMRES).
   *
   * @param eta wanted size of the remainder, relative to b
   * @param x receives the solution
   * @return true if the remainder came down to eta
   */
  boolean solve(RigState state, double[] b, double eta, double[] x) {
    java.util.Arrays.fill(x, 0);
    double size = norm(b);
    if (size == 0) {
      return true;
    }
    double[] v = basis(0);
    for (int i = 0; i < n; i++) {
      v[i] = b[i] / size;
    }
    java.util.Arrays.fill(rhs, 0);
    rhs[0] = size;
    int most = Math.min(MOST, n);
    int m = 0;
    boolean done = false;
    while (m < most && !done) {
      double next = extend(state, m);
      for (int i = 0; i < m; i++) {
        double a = cosine[i] * h[i][m] + sine[i] * h[i + 1][m];
        h[i + 1][m] = -sine[i] * h[i][m] + cosine[i] * h[i + 1][m];
        h[i][m] = a;
      }
      double r = Math.hypot(h[m][m], next);
      if (r == 0) {
        break;
      }
      cosine[m] = h[m][m] / r;
      sine[m] = next / r;
      h[m][m] = r;
      rhs[m + 1] = -sine[m] * rhs[m];
      rhs[m] *= cosine[m];
      m++;
      done = Math.abs(rhs[m]) <= eta * size || next == 0;
    }
    double[] c = new double[m];
    for (int i = m - 1; i >= 0; i--) {
      double sum = rhs[i];
      for (int j = i + 1; j < m; j++) {
        sum -= h[i][j] * c[j];
      }
      c[i] = sum / h[i][i];
    }
    for (int j = 0; j < m; j++) {
      double[] q = basis(j);
      for (int i = 0; i < n; i++) {
        x[i] += c[j] * q[i];
      }
    }
    return done;
  }

  /** Adds one vector to the orthonormal basis; returns the entry below the diagonal. */
  private double extend(RigState state, int m) {
    double[] v = basis(m);
    double[] w = basis(m + 1);
    state.tangent(v, w);
    // Without the unit matrix little is lost in making the rest orthogonal.
    for (int j = 0; j < n; j++) {
      w[j] -= v[j];
    }
    double before = norm(w);
    double next = 0;
    for (int pass = 0; pass < 2; pass++) {
      for (int i = 0; i <= m; i++) {
        double[] q = basis(i);
        double dot = 0;
        for (int j = 0; j < n; j++) {
          dot += q[j] * w[j];
        }
        h[i][m] = pass == 0 ? dot : h[i][m] + dot;
        for (int j = 0; j < n; j++) {
          w[j] -= dot * q[j];
        }
      }
      next = norm(w);
      if (next > 0.1 * before) {
        break;
      }
    }
    h[m][m] += 1;
    if (next <= 1e-14) {
      next = 0;
    }
    h[m + 1][m] = next;
    if (next > 0) {
      for (int j = 0; j < n; j++) {
        w[j] /= next;
      }
    }
    return next;
  }

  /**
   * Least real part of the eigenvalues of the tangent (Arnoldi), relative to the unloaded one.
   *
   * <p>Starts from even bending in all directions, near to what the softest modes are made of, with
   * a little of everything else.
   *
   * @param accuracy absolute accuracy at which to stop
   */
  double leastEigenvalue(RigState state, double accuracy) {
    double[] v = basis(0);
    state.evenBending(v);
    double share = 0.03 * norm(v) / Math.sqrt(n);
    long seed = 0x9E3779B97F4A7C15L;
    for (int i = 0; i < n; i++) {
      seed = seed * 6364136223846793005L + 1442695040888963407L;
      v[i] += share * ((seed >>> 11) * 0x1p-52 - 1);
    }
    double size = norm(v);
    for (int i = 0; i < n; i++) {
      v[i] /= size;
    }
    int most = Math.min(MOST, n);
    int look = 5;
    double last = Double.NaN;
    for (int m = 1; m <= most; m++) {
      double next = extend(state, m - 1);
      if (m == look || m == most || next == 0) {
        double least = leastOfHessenberg(m);
        // The error is of the second order of the remainder, over the gap to the next one, if the
        // tangent is symmetric. With friction it is nearly so: two looks have to agree as well.
        boolean small = next * next * lastComponent < accuracy * Math.max(gap, LEAST_GAP);
        boolean agreed = Math.abs(least - last) < 100 * accuracy;
        if (m == most || next == 0 || (small && agreed)) {
          return least;
        }
        last = least;
        look += Math.max(2, look / 4);
      }
    }
    return 1;
  }

  /**
   * Least real part among the Ritz values; notes how much the last basis vector takes part, and how
   * far off the next value lies.
   */
  private double leastOfHessenberg(int m) {
    double[][] square = new double[m][m];
    for (int i = 0; i < m; i++) {
      for (int j = Math.max(0, i - 1); j < m; j++) {
        square[i][j] = h[i][j];
      }
    }
    EigenDecomposition found;
    try {
      found = new EigenDecomposition(new Array2DRowRealMatrix(square, false));
    } catch (MathRuntimeException e) {
      found = new EigenDecomposition(symmetricPart(square));
    }
    int best = 0;
    for (int i = 1; i < m; i++) {
      if (found.getRealEigenvalue(i) < found.getRealEigenvalue(best)) {
        best = i;
      }
    }
    gap = 1;
    for (int i = 0; i < m; i++) {
      if (i != best) {
        gap = Math.min(gap, found.getRealEigenvalue(i) - found.getRealEigenvalue(best));
      }
    }
    RealVector vector = found.getEigenvector(best);
    double share = vector.getEntry(m - 1) / vector.getNorm();
    lastComponent = share * share;
    return found.getRealEigenvalue(best);
  }

  private static Array2DRowRealMatrix symmetricPart(double[][] square) {
    int m = square.length;
    double[][] mean = new double[m][m];
    for (int i = 0; i < m; i++) {
      for (int j = 0; j < m; j++) {
        mean[i][j] = 0.5 * (square[i][j] + square[j][i]);
      }
    }
    return new Array2DRowRealMatrix(mean, false);
  }

  static double norm(double[] v) {
    double sum = 0;
    for (double x : v) {
      sum += x * x;
    }
    return Math.sqrt(sum);
  }
}
