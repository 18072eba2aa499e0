package org.boleline.internal.sampling;

/**
 * Shares of variance from three runs of a model over the same rows: with inputs a, with independent
 * inputs b, and with a but one input (or group) from b. First-order share after Saltelli and others
 * 2010, total share after Jansen 1999. Rows in which a run has no number (NaN) are left out.
 */
public final class ShareKernel {
  private ShareKernel() {}

  /** Sums over rows. */
  public static final class Sums {
    private int rows;
    private double sum;
    private double squares;
    private double products;
    private double differences;

    /**
     * Adds the rows of one scramble.
     *
     * @param a results with inputs a
     * @param b results with inputs b
     * @param ab results with inputs a, one of them from b
     * @param from first row
     * @param step distance of rows
     * @param centre a number near the mean, taken off all results against rounding
     */
    public void add(double[] a, double[] b, double[] ab, int from, int step, double centre) {
      for (int row = from; row < b.length; row += step) {
        double fa = a[row] - centre;
        double fb = b[row] - centre;
        double fab = ab[row] - centre;
        if (Double.isNaN(fa + fb + fab)) {
          continue;
        }
        rows++;
        sum += fa + fb;
        squares += fa * fa + fb * fb;
        products += fb * (fab - fa);
        differences += (fa - fab) * (fa - fab);
      }
    }

    /**
     * Returns the number of rows.
     *
     * @return rows in which all runs have a number
     */
    public int rows() {
      return rows;
    }

    /**
     * Returns the variance of the results.
     *
     * @return the variance over both a and b
     */
    public double variance() {
      double mean = sum / (2.0 * rows);
      return squares / (2.0 * rows) - mean * mean;
    }

    /**
     * Returns the mean of fb (fab - fa).
     *
     * @return the mean, the part of the variance that the input has alone
     */
    public double alone() {
      return products / rows;
    }

    /**
     * Returns the mean of (fa - fab)^2.
     *
     * @return the mean, twice the part of the variance that needs the input
     */
    public double changed() {
      return differences / rows;
    }
  }
}
