package org.boleline.working.check;

import java.util.List;
import org.boleline.explain.Formula;
import org.boleline.explain.Source;
import org.boleline.explain.Source.Reading;
import org.boleline.explain.Symbol;

/** What a hand check works out itself. Ids are stable. */
public final class CheckFormulas {
  private static final double NO_LIMIT = Double.POSITIVE_INFINITY;

  private static final Source DEFINITION =
      new Source("derived", "definition of the parts of a difference", Reading.DERIVED);

  private static final Source LOGARITHMS =
      new Source(
          "derived", "a number of unknown size is as likely at every logarithm", Reading.DERIVED);

  static final Symbol OURS = any("o", "our number");
  static final Symbol CARRIED = any("c", "our formulas, with the person's numbers before");

  /** CHK-1: what the rounding of the steps before makes of a number. */
  public static final Formula DRIFT =
      Formula.of(
          "CHK-1",
          "d = (c - o) / |o|",
          any("d", "drift from the steps before"),
          List.of(CARRIED, OURS),
          "our number is not zero",
          DEFINITION,
          x -> (x[0] - x[1]) / Math.abs(x[1]));

  /** CHK-2: what a step adds to the difference itself. */
  public static final Formula OWN_PART =
      Formula.of(
          "CHK-2",
          "e = (v - c) / |o|",
          any("e", "difference that this step adds"),
          List.of(any("v", "the person's number"), CARRIED, OURS),
          "our number is not zero",
          DEFINITION,
          x -> (x[0] - x[1]) / Math.abs(x[2]));

  /** CHK-3: how often a number off by chance would match a slip. */
  public static final Formula BY_CHANCE =
      Formula.of(
          "CHK-3",
          "P = L / (2 * ln(10))",
          new Symbol("P", "share of numbers off by chance that match a slip", "1", 0, 1),
          List.of(
              new Symbol(
                  "L", "length of all that matches, on the scale of ln(v)", "1", 0, NO_LIMIT)),
          "numbers of the right sign, a tenth to ten times ours",
          LOGARITHMS,
          x -> x[0] / (2 * Math.log(10)));

  private CheckFormulas() {}

  private static Symbol any(String name, String meaning) {
    return new Symbol(name, meaning, "1", Double.NEGATIVE_INFINITY, NO_LIMIT);
  }
}
