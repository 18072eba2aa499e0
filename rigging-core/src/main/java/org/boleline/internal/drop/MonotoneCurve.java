package org.boleline.internal.drop;

import java.util.Arrays;

/**
 * A stretch curve through points, the origin first: a monotone piecewise cubic, continued beyond
 * the last point at its last slope.
 *
 * <p>Slopes within are weighted harmonic means of the chords on both sides (Fritsch and Butland
 * 1984), which meet the condition of Fritsch and Carlson 1980 for a monotone cubic. Slopes at the
 * ends are those of the parabola through three points, not below zero nor above three chords; where
 * that would leave the curve level at its last point, it ends with its last chord. One point
 * besides the origin gives a straight line. The energy is the exact integral of the cubics.
 */
public final class MonotoneCurve implements StretchKernel {
  private static final int MOST_STEPS = 80;

  private final double[] strains;
  private final double[] tensions;
  private final double[] slopes;
  private final double[] energies;

  /**
   * Makes a curve.
   *
   * @param strains strains of the points without the origin, above zero, rising
   * @param tensions tensions of the points in newtons, above zero, rising
   */
  public MonotoneCurve(double[] strains, double[] tensions) {
    this.strains = withOrigin(strains);
    this.tensions = withOrigin(tensions);
    slopes = slopes(this.strains, this.tensions);
    energies = new double[slopes.length];
    for (int i = 1; i < slopes.length; i++) {
      energies[i] = energies[i - 1] + within(i - 1, 1);
    }
  }

  private static double[] withOrigin(double[] values) {
    double[] all = new double[values.length + 1];
    System.arraycopy(values, 0, all, 1, values.length);
    return all;
  }

  private static double[] slopes(double[] x, double[] y) {
    int n = x.length;
    double[] h = new double[n - 1];
    double[] chord = new double[n - 1];
    for (int i = 0; i < n - 1; i++) {
      h[i] = x[i + 1] - x[i];
      chord[i] = (y[i + 1] - y[i]) / h[i];
    }
    double[] d = new double[n];
    if (n == 2) {
      Arrays.fill(d, chord[0]);
      return d;
    }
    for (int i = 1; i < n - 1; i++) {
      double w1 = 2 * h[i] + h[i - 1];
      double w2 = h[i] + 2 * h[i - 1];
      d[i] = (w1 + w2) / (w1 / chord[i - 1] + w2 / chord[i]);
    }
    d[0] = end(h[0], h[1], chord[0], chord[1]);
    d[n - 1] = end(h[n - 2], h[n - 3], chord[n - 2], chord[n - 3]);
    if (d[n - 1] == 0) {
      d[n - 1] = chord[n - 2];
    }
    return d;
  }

  /** Slope at an end: h and m of the last piece, then of the one before. */
  private static double end(double h0, double h1, double m0, double m1) {
    double d = ((2 * h0 + h1) * m0 - h0 * m1) / (h0 + h1);
    return Math.max(0, Math.min(d, 3 * m0));
  }

  private int last() {
    return strains.length - 1;
  }

  /** Piece in which a value lies; the last point stands for all beyond. */
  private int piece(double[] knots, double value) {
    int found = Arrays.binarySearch(knots, value);
    return found >= 0 ? found : -found - 2;
  }

  @Override
  public double tension(double strain) {
    int i = piece(strains, strain);
    if (i >= last()) {
      return tensions[last()] + lastSlope() * (strain - strains[last()]);
    }
    return cubic(i, (strain - strains[i]) / (strains[i + 1] - strains[i]));
  }

  @Override
  public double strain(double tension) {
    int i = piece(tensions, tension);
    if (i >= last()) {
      return strains[last()] + (tension - tensions[last()]) / lastSlope();
    }
    return strains[i] + share(i, tension) * (strains[i + 1] - strains[i]);
  }

  @Override
  public double energy(double strain) {
    int i = piece(strains, strain);
    if (i >= last()) {
      double beyond = strain - strains[last()];
      return energies[last()] + (tensions[last()] + lastSlope() * beyond / 2) * beyond;
    }
    return energies[i] + within(i, (strain - strains[i]) / (strains[i + 1] - strains[i]));
  }

  @Override
  public double slope(double strain) {
    int i = piece(strains, strain);
    if (i >= last()) {
      return lastSlope();
    }
    double h = strains[i + 1] - strains[i];
    double s = (strain - strains[i]) / h;
    double rise = (tensions[i + 1] - tensions[i]) / h;
    double a = slopes[i];
    double b = slopes[i + 1];
    return a + s * (2 * (3 * rise - 2 * a - b) + 3 * s * (a + b - 2 * rise));
  }

  @Override
  public double[] knots() {
    return Arrays.copyOfRange(tensions, 1, tensions.length);
  }

  /**
   * Returns the slope with which the curve is continued beyond the last point.
   *
   * @return tension over strain in newtons
   */
  public double lastSlope() {
    return slopes[last()];
  }

  /** Cubic of Hermite on a piece, at a share s of it. */
  private double cubic(int i, double s) {
    double h = strains[i + 1] - strains[i];
    double rise = tensions[i + 1] - tensions[i];
    double a = h * slopes[i];
    double b = h * slopes[i + 1];
    return tensions[i] + s * (a + s * (3 * rise - 2 * a - b + s * (a + b - 2 * rise)));
  }

  /** Integral of that cubic over strain, from the start of the piece. */
  private double within(int i, double s) {
    double h = strains[i + 1] - strains[i];
    double rise = tensions[i + 1] - tensions[i];
    double a = h * slopes[i];
    double b = h * slopes[i + 1];
    double cubic = s * (a / 2 + s * ((3 * rise - 2 * a - b) / 3 + s * (a + b - 2 * rise) / 4));
    return h * s * (tensions[i] + cubic);
  }

  /** Where on a piece a tension is: Newton's method, halving where it leaves the bracket. */
  private double share(int i, double tension) {
    double h = strains[i + 1] - strains[i];
    double rise = tensions[i + 1] - tensions[i];
    double a = h * slopes[i];
    double b = h * slopes[i + 1];
    double c2 = 3 * rise - 2 * a - b;
    double c3 = a + b - 2 * rise;
    double wanted = tension - tensions[i];
    double low = 0;
    double high = 1;
    double s = wanted / rise;
    for (int step = 0; step < MOST_STEPS; step++) {
      double off = s * (a + s * (c2 + s * c3)) - wanted;
      if (off == 0) {
        return s;
      }
      if (off < 0) {
        low = s;
      } else {
        high = s;
      }
      double next = s - off / (a + s * (2 * c2 + 3 * c3 * s));
      if (Math.abs(next - s) <= 4 * Math.ulp(s)) {
        return next;
      }
      s = next > low && next < high ? next : (low + high) / 2;
    }
    return s;
  }
}
