package org.boleline.internal.motion;

/**
 * One step of the method of Dormand and Prince, order 5 with an error estimate of order 4 and a
 * smooth reading within the step.
 *
 * <p>Source: Dormand and Prince 1980; reading by Shampine, as in Hairer, Norsett and Wanner,
 * Solving Ordinary Differential Equations I, section II.6.
 */
final class DormandPrince {
  private static final double[][] A = {
    {},
    {1.0 / 5},
    {3.0 / 40, 9.0 / 40},
    {44.0 / 45, -56.0 / 15, 32.0 / 9},
    {19372.0 / 6561, -25360.0 / 2187, 64448.0 / 6561, -212.0 / 729},
    {9017.0 / 3168, -355.0 / 33, 46732.0 / 5247, 49.0 / 176, -5103.0 / 18656},
    {35.0 / 384, 0, 500.0 / 1113, 125.0 / 192, -2187.0 / 6784, 11.0 / 84}
  };
  private static final double[] ERROR = {
    71.0 / 57600, 0, -71.0 / 16695, 71.0 / 1920, -17253.0 / 339200, 22.0 / 525, -1.0 / 40
  };
  private static final double[] READING = {
    -12715105075.0 / 11282082432.0,
    0,
    87487479700.0 / 32700410799.0,
    -10690763975.0 / 1880347072.0,
    701980252875.0 / 199316789632.0,
    -1453857185.0 / 822651844.0,
    69997945.0 / 29380423.0
  };

  /** A system of equations without explicit time. */
  interface Rates {
    /** Writes the rates of a state. */
    void of(double[] y, double[] out);
  }

  private final Rates rates;
  private final int n;
  private final double[][] k;
  private final double[] start;
  private final double[] end;
  private final double[] last;

  DormandPrince(Rates rates, int n) {
    this.rates = rates;
    this.n = n;
    k = new double[A.length][n];
    start = new double[n];
    end = new double[n];
    last = new double[n];
  }

  /** Takes a state to start from. */
  void start(double[] y) {
    System.arraycopy(y, 0, start, 0, n);
    rates.of(start, k[0]);
  }

  /** Goes on from the end of the last step. */
  void goOn() {
    System.arraycopy(end, 0, start, 0, n);
    double[] first = k[0];
    k[0] = k[A.length - 1];
    k[A.length - 1] = first;
  }

  /**
   * Tries a step from the start.
   *
   * @param h its length
   * @param scale size of what counts as an error, for each component
   * @return error over scale, root mean square
   */
  double step(double h, double[] scale) {
    for (int stage = 1; stage < A.length; stage++) {
      double[] a = A[stage];
      for (int i = 0; i < n; i++) {
        double sum = a[0] * k[0][i];
        for (int j = 1; j < stage; j++) {
          sum += a[j] * k[j][i];
        }
        end[i] = start[i] + h * sum;
      }
      rates.of(end, k[stage]);
    }
    double sum = 0;
    for (int i = 0; i < n; i++) {
      double e = 0;
      for (int j = 0; j < ERROR.length; j++) {
        e += ERROR[j] * k[j][i];
      }
      e *= h / scale[i];
      sum += e * e;
    }
    return Math.sqrt(sum / n);
  }

  /** The state at the end of the last step; the live array. */
  double[] end() {
    return end;
  }

  /** The state at its start; the live array. */
  double[] start() {
    return start;
  }

  /** The rates at its end; the live array. */
  double[] endRates() {
    return k[A.length - 1];
  }

  /**
   * Reads within the last step.
   *
   * @param h its length
   * @param x share of the step, 0 to 1
   * @return the live array
   */
  double[] read(double h, double x) {
    double[] first = k[0];
    double[] seventh = k[A.length - 1];
    for (int i = 0; i < n; i++) {
      double rise = end[i] - start[i];
      double r3 = h * first[i] - rise;
      double r4 = rise - h * seventh[i] - r3;
      double r5 = 0;
      for (int j = 0; j < READING.length; j++) {
        r5 += READING[j] * k[j][i];
      }
      r5 *= h;
      last[i] = start[i] + x * (rise + (1 - x) * (r3 + x * (r4 + (1 - x) * r5)));
    }
    return last;
  }
}
