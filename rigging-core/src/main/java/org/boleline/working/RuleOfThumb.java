package org.boleline.working;

import org.boleline.explain.Formula;
import org.boleline.explain.Source;
import org.boleline.rope.FrictionFormulas;

/** The rules of thumb that are set beside the model. */
public enum RuleOfThumb {
  /** Twice the weight of the piece on the top point. */
  DOUBLE_LOAD("The top point carries twice the piece"),
  /** The force on a point from the tension toward the load alone. */
  ONE_TENSION("Every point carries 2 T cos(q / 2) of one tension"),
  /** A ring halves the tension. */
  HALF_BY_RING("A rope over a ring loses half its tension"),
  /** A tenth of the load for each sheave. */
  TENTH_BY_SHEAVE("Raising takes a tenth of the load more for each sheave"),
  /** The fall in feet and one, times the weight. */
  FEET_AND_ONE("A catch peaks at the weight times feet of fall plus one"),
  /** Weight times level reach for the moment at the base. */
  WEIGHT_TIMES_REACH("The rigging bends the base by weight times level reach"),
  /** Three quarters of the middle diameter squared for the area of a log. */
  PI_AS_THREE("A log is worked out with 3 for pi from its middle diameter");

  private final String words;

  RuleOfThumb(String words) {
    this.words = words;
  }

  /**
   * Returns the rule in words.
   *
   * @return the words
   */
  public String words() {
    return words;
  }

  /**
   * Returns the rule as an equation.
   *
   * @return the equation
   */
  public Formula formula() {
    return switch (this) {
      case DOUBLE_LOAD -> RuleFormulas.DOUBLE_LOAD;
      case ONE_TENSION -> RuleFormulas.ONE_TENSION;
      case HALF_BY_RING -> RuleFormulas.HALF_BY_RING;
      case TENTH_BY_SHEAVE -> FrictionFormulas.TEN_PERCENT_RULE;
      case FEET_AND_ONE -> RuleFormulas.FEET_AND_ONE;
      case WEIGHT_TIMES_REACH -> RuleFormulas.WEIGHT_TIMES_REACH;
      case PI_AS_THREE -> RuleFormulas.PI_AS_THREE;
    };
  }

  /**
   * Returns what the rule assumes.
   *
   * @return the words
   */
  public String assumes() {
    return formula().validity();
  }

  /**
   * Returns where the rule comes from.
   *
   * @return the source; for most of them common practice without one
   */
  public Source source() {
    return formula().source();
  }
}
