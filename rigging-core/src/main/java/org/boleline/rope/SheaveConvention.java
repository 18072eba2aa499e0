package org.boleline.rope;

/**
 * The conventions in which friction of sheaves is published.
 *
 * <p>The same sheave is 0.957, 1.045 or 4.5: a figure means nothing before its convention is named.
 * All are for a half turn, legs parallel. A rule that adds a share of the load for each sheave
 * instead of compounding is not among them: see {@link Tackle#linePullByTenPercentRule}.
 */
public enum SheaveConvention {
  /** Efficiency: slack over tight tension, such as 0.98. The one used throughout this library. */
  EFFICIENCY,
  /** Friction factor: tight over slack tension, such as 1.045. */
  FRICTION_FACTOR,
  /** Friction in percent: how much more the tight side pulls than the slack one, such as 4.5. */
  FRICTION_PERCENT;

  /**
   * Returns the sheave that a published figure stands for.
   *
   * @equation e = figure; e = 1 / K; e = 1 / (1 + p / 100)
   * @validity half turn
   * @source definitions of the conventions
   * @accuracy rounding only
   * @param publishedFactor the figure: an efficiency above 0 and at most 1, a factor of 1 or more,
   *     or a percentage of zero or more
   * @return the sheave
   * @throws IllegalArgumentException if the figure is outside the range of this convention
   */
  public Sheave sheave(double publishedFactor) {
    return switch (this) {
      case EFFICIENCY -> new Sheave(publishedFactor);
      case FRICTION_FACTOR -> new Sheave(1 / atLeast(1, publishedFactor));
      case FRICTION_PERCENT -> new Sheave(1 / (1 + atLeast(0, publishedFactor) / 100));
    };
  }

  /**
   * Returns the figure that stands for a sheave in this convention.
   *
   * @equation figure = e; K = 1 / e; p = 100 * (1 / e - 1)
   * @validity half turn
   * @source definitions of the conventions
   * @accuracy rounding only
   * @param sheave the sheave, not null
   * @return the figure
   * @throws IllegalArgumentException if it exceeds the largest double
   */
  public double publishedFactor(Sheave sheave) {
    double e = sheave.efficiency();
    return finite(
        switch (this) {
          case EFFICIENCY -> e;
          case FRICTION_FACTOR -> 1 / e;
          case FRICTION_PERCENT -> 100 * ((1 - e) / e);
        });
  }

  private double atLeast(double least, double figure) {
    if (!(figure >= least && Double.isFinite(figure))) {
      throw new IllegalArgumentException(
          this + ": wants a finite number, " + least + " or more, got " + figure);
    }
    return figure;
  }

  private double finite(double figure) {
    if (!Double.isFinite(figure)) {
      throw new IllegalArgumentException(this + ": exceeds the largest double");
    }
    return figure;
  }
}
