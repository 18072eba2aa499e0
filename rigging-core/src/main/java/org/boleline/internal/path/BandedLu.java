package org.boleline.internal.path;

import java.util.Arrays;

/** Gaussian elimination with row exchanges for a matrix whose entries lie near the diagonal. */
final class BandedLu {
  private final int band;
  private final int width;
  private double[] a = new double[0];
  private int[] pivot = new int[0];
  private int n;

  /** Makes a solver for entries at most {@code band} places off the diagonal. */
  BandedLu(int band) {
    this.band = band;
    this.width = 3 * band + 1;
  }

  /** Empties the matrix and sets its size. */
  void reset(int size) {
    n = size;
    if (a.length < n * width) {
      a = new double[n * width];
      pivot = new int[n];
    }
    Arrays.fill(a, 0, n * width, 0);
  }

  /** Adds to an entry. */
  void add(int row, int column, double value) {
    a[row * width + column - row + band] += value;
  }

  /** Factors the matrix in place; returns false if it is singular. */
  boolean factor() {
    for (int c = 0; c < n; c++) {
      int last = Math.min(n - 1, c + band);
      int best = c;
      double most = 0;
      for (int r = c; r <= last; r++) {
        double v = Math.abs(a[r * width + c - r + band]);
        if (v > most) {
          most = v;
          best = r;
        }
      }
      if (!(most > 1e-300)) {
        return false;
      }
      pivot[c] = best;
      int end = Math.min(n - 1, c + 2 * band);
      if (best != c) {
        for (int j = c; j <= end; j++) {
          int x = c * width + j - c + band;
          int y = best * width + j - best + band;
          double swap = a[x];
          a[x] = a[y];
          a[y] = swap;
        }
      }
      double inverse = 1 / a[c * width + band];
      for (int r = c + 1; r <= last; r++) {
        int row = r * width - r + band;
        double factor = a[row + c] * inverse;
        a[row + c] = factor;
        if (factor != 0) {
          int top = c * width - c + band;
          for (int j = c + 1; j <= end; j++) {
            a[row + j] -= factor * a[top + j];
          }
        }
      }
    }
    return true;
  }

  /** Solves for one right-hand side, in place. */
  void solve(double[] x) {
    for (int c = 0; c < n; c++) {
      int p = pivot[c];
      double v = x[p];
      if (p != c) {
        x[p] = x[c];
        x[c] = v;
      }
      if (v != 0) {
        int last = Math.min(n - 1, c + band);
        for (int r = c + 1; r <= last; r++) {
          x[r] -= a[r * width + c - r + band] * v;
        }
      }
    }
    for (int r = n - 1; r >= 0; r--) {
      int end = Math.min(n - 1, r + 2 * band);
      int row = r * width - r + band;
      double v = x[r];
      for (int j = r + 1; j <= end; j++) {
        v -= a[row + j] * x[j];
      }
      x[r] = v / a[row + r];
    }
  }
}
