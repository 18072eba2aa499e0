package org.boleline.internal.drop;

import java.util.Arrays;

/**
 * Real roots of a polynomial in an interval.
 *
 * <p>Between two neighbouring roots of the derivative a polynomial rises or falls all the way, so
 * each such stretch holds one root at most, and bisection finds it to the last bit.
 */
final class SwingRoots {
  private SwingRoots() {}

  /**
   * Returns the value of c[0] + c[1] x + c[2] x^2 + ...
   *
   * @param c coefficients, lowest first
   * @param x where
   * @return the value
   */
  static double value(double[] c, double x) {
    double sum = 0;
    for (int i = c.length - 1; i >= 0; i--) {
      sum = sum * x + c[i];
    }
    return sum;
  }

  /**
   * Returns the product of two polynomials.
   *
   * @param a coefficients of one, lowest first
   * @param b coefficients of the other, lowest first
   * @return coefficients of the product
   */
  static double[] product(double[] a, double[] b) {
    double[] c = new double[a.length + b.length - 1];
    for (int i = 0; i < a.length; i++) {
      for (int j = 0; j < b.length; j++) {
        c[i + j] += a[i] * b[j];
      }
    }
    return c;
  }

  /**
   * Returns the derivative of a polynomial.
   *
   * @param c coefficients, lowest first
   * @return coefficients of the derivative
   */
  static double[] derivative(double[] c) {
    double[] d = new double[Math.max(1, c.length - 1)];
    for (int i = 1; i < c.length; i++) {
      d[i - 1] = i * c[i];
    }
    return d;
  }

  /**
   * Returns the roots where the polynomial changes its sign or is exactly zero.
   *
   * <p>A root where it touches zero without a change of sign may be missed: rounding decides.
   *
   * @param c coefficients, lowest first
   * @param lo where the interval begins
   * @param hi where it ends, not below lo
   * @return the roots, ascending; none if the polynomial is zero throughout
   */
  static double[] roots(double[] c, double lo, double hi) {
    int degree = c.length - 1;
    while (degree > 0 && c[degree] == 0) {
      degree--;
    }
    if (degree == 0) {
      return new double[0];
    }
    if (degree == 1) {
      double x = -c[0] / c[1];
      return x >= lo && x <= hi ? new double[] {x} : new double[0];
    }
    double[] p = Arrays.copyOf(c, degree + 1);
    double[] turns = roots(derivative(p), lo, hi);
    double[] found = new double[degree + 2];
    int count = 0;
    double a = lo;
    double atA = value(p, a);
    for (int i = 0; i <= turns.length; i++) {
      double b = i < turns.length ? turns[i] : hi;
      double atB = value(p, b);
      if (atA == 0 && count < degree && (count == 0 || found[count - 1] != a)) {
        found[count++] = a;
      }
      if (atA * atB < 0 && count < degree) {
        found[count++] = between(p, a, atA, b);
      }
      a = b;
      atA = atB;
    }
    if (atA == 0 && count < degree && (count == 0 || found[count - 1] != a)) {
      found[count++] = a;
    }
    return Arrays.copyOf(found, count);
  }

  /** The root between two places where the signs differ. */
  private static double between(double[] p, double from, double atFrom, double to) {
    double a = from;
    double b = to;
    while (true) {
      double middle = a + (b - a) / 2;
      if (middle <= a || middle >= b) {
        return Math.abs(value(p, a)) <= Math.abs(value(p, b)) ? a : b;
      }
      double at = value(p, middle);
      if (at == 0) {
        return middle;
      }
      if (at < 0 == atFrom < 0) {
        a = middle;
      } else {
        b = middle;
      }
    }
  }
}
