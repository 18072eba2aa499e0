package org.boleline.examples.compare;

/**
 * One consequence of a change.
 *
 * @param weight how much changes, as a share of the greater of both; 1 at most
 * @param text the consequence and its cause
 */
record Effect(double weight, String text) {
  /** Consequences below this are not told. */
  static final double LEAST = 0.03;

  /** Weight of what was not there before, and so has no size to compare with. */
  static final double WORTH_A_WORD = 0.1;

  /** How much two numbers differ, as a share of the greater. */
  static double difference(double a, double b) {
    double greater = Math.max(Math.abs(a), Math.abs(b));
    return greater == 0 ? 0 : Math.abs(a - b) / greater;
  }
}
