package org.boleline.working;

import java.util.List;
import org.boleline.explain.Formula;
import org.boleline.explain.Source;
import org.boleline.explain.Source.Reading;
import org.boleline.explain.Symbol;

/**
 * Rules of thumb of the trade as equations, to be set beside the model.
 *
 * <p>Each holds its text, symbols, ranges, source and code. Ids are stable.
 */
public final class RuleFormulas {
  private static final double NO_LIMIT = Double.POSITIVE_INFINITY;

  private static final Source TREE_RESCUE =
      new Source(
          "Arboriculture Australia 2022",
          "Arboriculture Australia, Tree rescue manual, 2022, pp. 116-118",
          Reading.READ);

  private static final Source OLLEY =
      new Source("Olley", "Olley, training article on dismantling", Reading.READ);

  private static final Symbol FORCE = symbol("R", "force on the point", "N");
  private static final Symbol TENSION = symbol("T", "tension of the leg toward the load", "N");
  private static final Symbol WEIGHT = symbol("W", "weight of the piece", "N");

  /** RUL-1: twice the load on the top point. */
  public static final Formula DOUBLE_LOAD =
      Formula.of(
          "RUL-1",
          "R = 2 * W",
          FORCE,
          List.of(WEIGHT),
          "no friction at the point, both legs plumb",
          TREE_RESCUE,
          x -> 2 * x[0]);

  /** RUL-2: force of two legs from one tension. */
  public static final Formula ONE_TENSION =
      Formula.of(
          "RUL-2",
          "R = 2 * T * cos(q / 2)",
          FORCE,
          List.of(TENSION, new Symbol("q", "angle between the legs", "rad", 0, Math.PI)),
          "no friction at the point: both legs pull alike",
          TREE_RESCUE,
          x -> 2 * x[0] * Math.cos(x[1] / 2));

  /** RUL-3: a half turn on a metal ring halves the tension. */
  public static final Formula HALF_BY_RING =
      Formula.of(
          "RUL-3",
          "T_slack = T_tight / 2",
          symbol("T_slack", "tension on the slack side", "N"),
          List.of(symbol("T_tight", "tension on the tight side", "N")),
          "a half turn at a friction of 0.22, whatever the turn is",
          Source.commonPractice("a half turn over a ring or a karabiner halves the pull"),
          x -> x[0] / 2);

  /** RUL-4: weight times one more than the fall in feet. */
  public static final Formula FEET_AND_ONE =
      Formula.of(
          "RUL-4",
          "F = W * (1 + h / 0.3048)",
          symbol("F", "greatest tension of the load leg", "N"),
          List.of(WEIGHT, symbol("h", "fall until the rope is taut", "m")),
          "0.3048 m is one foot; the rope's length, stretch and run do not count",
          Source.commonPractice("the fall in feet and one, times the weight"),
          x -> x[0] * (1 + x[1] / 0.3048));

  /** RUL-5: weight times level reach. */
  public static final Formula WEIGHT_TIMES_REACH =
      Formula.of(
          "RUL-5",
          "M = W * a",
          symbol("M", "moment of the rigging at the base", "N.m"),
          List.of(
              WEIGHT, symbol("a", "level distance from the base to the top point, unloaded", "m")),
          "the pull of the tail and the bending of the stem do not count",
          Source.commonPractice("the piece as if it hung from the top point by itself"),
          x -> x[0] * x[1]);

  /** RUL-6: weight of a log with pi taken as 3. */
  public static final Formula PI_AS_THREE =
      Formula.of(
          "RUL-6",
          "W = 3 / 4 * m^2 * L * rho * g",
          symbol("W", "weight of the log", "N"),
          List.of(
              symbol("m", "diameter in the middle", "m"),
              symbol("L", "length of the log", "m"),
              symbol("rho", "density of the wood", "kg/m3"),
              symbol("g", "gravity", "m/s2")),
          "pi is 3, and the log as thick all along as in its middle",
          OLLEY,
          x -> 3.0 / 4 * (x[0] * x[0]) * x[1] * x[2] * x[3]);

  private RuleFormulas() {}

  private static Symbol symbol(String name, String meaning, String unit) {
    return new Symbol(name, meaning, unit, 0, NO_LIMIT);
  }
}
