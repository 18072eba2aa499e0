package org.boleline.study;

import java.util.List;

/**
 * How much of the spread of a reading a range makes: what to measure better.
 *
 * @param ranges the range, or several that are correlated and count as one
 * @param firstShare part of the variance that it makes alone (RNG-5); sampling may leave it a
 *     little below zero
 * @param firstErrorRatio standard error of that, from the independent scrambles
 * @param totalShare part of the variance that it makes alone and with others (RNG-6)
 * @param totalErrorRatio standard error of that
 * @param rowCount rows that both came from; rows without a figure are left out
 */
public record SpreadShare(
    List<Range> ranges,
    double firstShare,
    double firstErrorRatio,
    double totalShare,
    double totalErrorRatio,
    int rowCount) {
  /**
   * Makes a share; the list is copied.
   *
   * @param ranges the range, or several that are correlated and count as one
   * @param firstShare part of the variance that it makes alone
   * @param firstErrorRatio standard error of that
   * @param totalShare part of the variance that it makes alone and with others
   * @param totalErrorRatio standard error of that
   * @param rowCount rows that both came from
   */
  public SpreadShare {
    ranges = List.copyOf(ranges);
  }
}
