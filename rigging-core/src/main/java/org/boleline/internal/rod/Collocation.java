package org.boleline.internal.rod;

/**
 * Gauss-Legendre points of one cell, with the weights that integrate from the start of the cell to
 * each point and to its end.
 *
 * <p>Source of the method: collocation at Gauss points (order 2 {@link #POINTS} at the ends of the
 * cell), as in any text on the numerical solution of differential equations.
 */
final class Collocation {
  /** Points in a cell. */
  static final int POINTS = 4;

  /** Places of the points, as shares of the cell. */
  static final double[] AT = new double[POINTS];

  /** Weights of the integral over the whole cell. */
  static final double[] WHOLE = new double[POINTS];

  /** Weights of the integral to each point, row by row; the last row is {@link #WHOLE}. */
  static final double[] TO = new double[(POINTS + 1) * POINTS];

  /** Weights that give the coefficient of the highest Legendre polynomial a cell can hold. */
  static final double[] HIGHEST = new double[POINTS];

  static {
    for (int i = 0; i < POINTS; i++) {
      AT[i] = (1 + legendreRoot(i)) / 2;
    }
    for (int i = 0; i <= POINTS; i++) {
      double end = i < POINTS ? AT[i] : 1;
      for (int j = 0; j < POINTS; j++) {
        TO[i * POINTS + j] = integralOfBasis(j, end);
      }
    }
    System.arraycopy(TO, POINTS * POINTS, WHOLE, 0, POINTS);
    for (int i = 0; i < POINTS; i++) {
      HIGHEST[i] = (2 * POINTS - 1) * WHOLE[i] * legendre(POINTS - 1, 2 * AT[i] - 1);
    }
  }

  private Collocation() {}

  private static double legendre(int degree, double x) {
    double p0 = 1;
    double p1 = x;
    for (int n = 2; n <= degree; n++) {
      double p2 = ((2 * n - 1) * x * p1 - (n - 1) * p0) / n;
      p0 = p1;
      p1 = p2;
    }
    return degree == 0 ? p0 : p1;
  }

  private static double legendreRoot(int index) {
    double x = -Math.cos(Math.PI * (index + 0.75) / (POINTS + 0.5));
    for (int step = 0; step < 50; step++) {
      double value = legendre(POINTS, x);
      double slope = POINTS * (legendre(POINTS - 1, x) - x * value) / (1 - x * x);
      x -= value / slope;
    }
    return x;
  }

  /** Integral from 0 to {@code end} of the Lagrange polynomial of point {@code j}. */
  static double integralOfBasis(int j, double end) {
    double[] c = basis(j);
    double sum = 0;
    for (int n = POINTS - 1; n >= 0; n--) {
      sum = sum * end + c[n] / (n + 1);
    }
    return sum * end;
  }

  /** Coefficients, from the constant up, of the Lagrange polynomial of point {@code j}. */
  static double[] basis(int j) {
    double[] c = new double[POINTS];
    c[0] = 1;
    int degree = 0;
    for (int m = 0; m < POINTS; m++) {
      if (m == j) {
        continue;
      }
      double scale = 1 / (AT[j] - AT[m]);
      for (int n = ++degree; n >= 0; n--) {
        double lower = n > 0 ? c[n - 1] : 0;
        double same = n < degree ? c[n] : 0;
        c[n] = scale * (lower - AT[m] * same);
      }
    }
    return c;
  }
}
