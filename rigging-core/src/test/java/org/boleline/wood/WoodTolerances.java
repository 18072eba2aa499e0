package org.boleline.wood;

/**
 * Tolerances of the wood tests, beside those of {@link org.boleline.Tolerances}; relative unless
 * they say.
 */
final class WoodTolerances {
  /**
   * A closed formula of a section against Gauss quadrature of 200 points, through differences of
   * second moments that may cancel three digits.
   */
  static final double QUADRATURE = 1e-10;

  /**
   * A greatest stress against the greatest of 20 000 points around the edge: half a step is 1.6e-4
   * rad, and a maximum is flat to half its square.
   */
  static final double EDGE_SEARCH = 2e-8;

  /** A figure rounded to three significant figures, and the rounding of what it was made from. */
  static final double THREE_FIGURES = 5e-3;

  /**
   * Absolute, in pounds: a chart in whole pounds whose rows agree within half a pound but for a few
   * that its maker rounded on the way.
   */
  static final double LOG_CHART_POUNDS = 0.55;

  /** The rule of thumb with 3 for pi: 4.5 percent low. */
  static final double THREE_FOR_PI = 0.05;

  private WoodTolerances() {}
}
