package org.boleline.internal.sampling;

import org.apache.commons.math3.distribution.BinomialDistribution;
import org.apache.commons.math3.special.Beta;

/**
 * Order statistics: what sorted draws say of a quantile, and counts of a chance, without a word on
 * the distribution. Ranks count from 1; 0 stands for "below all draws", n + 1 for "above all".
 */
public final class OrderKernel {
  private OrderKernel() {}

  /**
   * Returns the rank of the draw that estimates a quantile.
   *
   * @param n number of draws
   * @param p share of the quantile, above 0 and below 1
   * @return the least rank i with i/n at least p
   */
  public static int rank(int n, double p) {
    return Math.max(1, (int) Math.ceil(n * p * (1 - 1e-15)));
  }

  /**
   * Returns the greatest rank that lies above the quantile with less than a given chance.
   *
   * @param n number of draws
   * @param p share of the quantile
   * @param miss the chance allowed
   * @return the rank, 0 to n
   */
  public static int below(int n, double p, double miss) {
    return new BinomialDistribution(null, n, p).inverseCumulativeProbability(miss);
  }

  /**
   * Returns the least rank that lies below the quantile with at most a given chance.
   *
   * @param n number of draws
   * @param p share of the quantile
   * @param miss the chance allowed
   * @return the rank, 1 to n + 1
   */
  public static int above(int n, double p, double miss) {
    return new BinomialDistribution(null, n, p).inverseCumulativeProbability(1 - miss) + 1;
  }

  /**
   * Returns the chance that a quantile lies between two of the sorted draws.
   *
   * @param n number of draws
   * @param p share of the quantile
   * @param r lower rank, 0 to n
   * @param s upper rank, 1 to n + 1, above r
   * @return the sum over i from r to s - 1 of C(n, i) p^i (1 - p)^(n - i)
   */
  public static double between(int n, double p, int r, int s) {
    return atLeast(n, p, r) - atLeast(n, p, s);
  }

  /** Chance that at least k of n draws lie below the quantile of share p. */
  private static double atLeast(int n, double p, int k) {
    return k <= 0 ? 1 : k > n ? 0 : Beta.regularizedBeta(p, k, n - k + 1.0);
  }

  /**
   * Returns the least chance of an event that k of n draws agree with.
   *
   * @param n number of draws
   * @param k draws with the event
   * @param miss the chance allowed that the true one is less
   * @return the chance p with which at least k of n have the probability {@code miss}; 0 for k = 0
   */
  public static double leastChance(int n, int k, double miss) {
    if (k == 0) {
      return 0;
    }
    double low = 0;
    double high = 1;
    for (int i = 0; i < 60; i++) {
      double middle = 0.5 * (low + high);
      if (atLeast(n, middle, k) > miss) {
        high = middle;
      } else {
        low = middle;
      }
    }
    return low;
  }

  /**
   * Returns the greatest chance of an event that k of n draws agree with.
   *
   * @param n number of draws
   * @param k draws with the event
   * @param miss the chance allowed that the true one is more
   * @return the chance p with which at most k of n have the probability {@code miss}; 1 for k = n
   */
  public static double mostChance(int n, int k, double miss) {
    return 1 - leastChance(n, n - k, miss);
  }
}
