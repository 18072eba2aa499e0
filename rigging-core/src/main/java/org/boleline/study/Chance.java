package org.boleline.study;

/**
 * The chance that a reading exceeds a limit, under the distributions of a study.
 *
 * <p>Samples without a figure might lie on either side. So there are two estimates: all of them
 * below the limit, and all of them above. The bounds hold for both.
 *
 * @param limit the limit
 * @param aboveCount samples above it
 * @param lostCount samples without a figure
 * @param allCount samples in all
 * @param leastShare lower bound of the chance with the confidence of the study (RNG-7)
 * @param mostShare upper bound, in the same way
 * @param confidenceShare the confidence of the two bounds together
 */
public record Chance(
    Figure limit,
    int aboveCount,
    int lostCount,
    int allCount,
    double leastShare,
    double mostShare,
    double confidenceShare) {
  /**
   * Returns the estimate if every sample without a figure lies below the limit.
   *
   * @return the share of samples above the limit
   */
  public double share() {
    return (double) aboveCount / allCount;
  }

  /**
   * Returns the estimate if every sample without a figure lies above the limit.
   *
   * @return the share of samples above the limit or without a figure
   */
  public double shareWithLost() {
    return (double) (aboveCount + lostCount) / allCount;
  }
}
