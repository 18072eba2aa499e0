package org.boleline.study;

import java.util.List;
import org.boleline.explain.Formula;
import org.boleline.explain.Source;
import org.boleline.explain.Source.Reading;
import org.boleline.explain.Symbol;

/** The equations of the studies. */
public final class StudyFormulas {
  private static final double NO_LIMIT = Double.POSITIVE_INFINITY;

  private static final Source SHAPLEY =
      new Source(
          "Shapley 1953",
          "Shapley, A value for n-person games, Contributions to the Theory of Games II, 1953",
          Reading.FROM_MEMORY);
  private static final Source PROJECTION =
      new Source("derived: projection", "component of a vector along another", Reading.DERIVED);
  private static final Source DIFFERENCE =
      new Source(
          "central difference",
          "numerical analysis texts; elasticity of economics",
          Reading.FROM_MEMORY);
  private static final Source SPLIT =
      new Source(
          "derived: split of two forces",
          "two forces along a line as a pair that opens and a pair that sways",
          Reading.DERIVED);
  private static final Source EULER_EYTELWEIN =
      new Source(
          "Euler-Eytelwein",
          "belt friction law of Euler and Eytelwein, in statics texts",
          Reading.READ);

  /** Weight of one coalition of changes in the share of one more change. */
  public static final Formula COALITION_WEIGHT =
      Formula.of(
          "STU-1",
          "w = s! * (n - s - 1)! / n!",
          new Symbol("w", "weight of the coalition", "1", 0, 1),
          List.of(
              new Symbol("s", "changes already made", "1", 0, 7),
              new Symbol("n", "changes in all", "1", 1, 8)),
          "s below n; both whole. The share of a change is the sum of w * (v with it - v without"
              + " it) over all sets of other changes",
          SHAPLEY,
          x -> factorial(x[0]) * factorial(x[1] - x[0] - 1) / factorial(x[1]));

  /** Part of a moment along the whole. */
  public static final Formula PART_ALONG =
      Formula.of(
          "STU-2",
          "p = (a_x * m_x + a_y * m_y + a_z * m_z) / sqrt(m_x^2 + m_y^2 + m_z^2)",
          moment("p", "part of the moment along the whole"),
          List.of(
              moment("a_x", "moment of one origin, x"),
              moment("a_y", "moment of one origin, y"),
              moment("a_z", "moment of one origin, z"),
              moment("m_x", "whole moment, x"),
              moment("m_y", "whole moment, y"),
              moment("m_z", "whole moment, z")),
          "whole moment above zero; the parts of all origins add up to its magnitude",
          PROJECTION,
          x ->
              (x[0] * x[3] + x[1] * x[4] + x[2] * x[5])
                  / Math.sqrt(x[3] * x[3] + x[4] * x[4] + x[5] * x[5]));

  /** Arm of a force. */
  public static final Formula ARM =
      Formula.of(
          "STU-3",
          "r = p / F",
          new Symbol("r", "arm of the force, negative where it relieves", "m", -NO_LIMIT, NO_LIMIT),
          List.of(
              moment("p", "part of the moment along the whole"),
              new Symbol("F", "force of that origin", "N", 0, NO_LIMIT)),
          "F above zero",
          PROJECTION,
          x -> x[0] / x[1]);

  /** Slope by central difference. */
  public static final Formula SLOPE =
      Formula.of(
          "STU-4",
          "d = (y_more - y_less) / (2 * h)",
          number("d", "slope"),
          List.of(
              number("y_more", "reading at the input plus the step"),
              number("y_less", "reading at the input less the step"),
              new Symbol("h", "step of the input", "1", 0, NO_LIMIT)),
          "smooth over the step; SI units of reading and input",
          DIFFERENCE,
          x -> (x[0] - x[1]) / (2 * x[2]));

  /** Elasticity. */
  public static final Formula ELASTICITY =
      Formula.of(
          "STU-5",
          "e = d * x / y",
          number("e", "per cent of the reading for one per cent of the input"),
          List.of(number("d", "slope"), number("x", "input"), number("y", "reading")),
          "y not zero",
          DIFFERENCE,
          x -> x[0] * x[1] / x[2]);

  /** Pull that opens or closes a fork. */
  public static final Formula FORK_PULL =
      Formula.of(
          "STU-6",
          "P = (f_b - f_a) / 2",
          force("P", "opening pull; negative closes"),
          List.of(
              force("f_a", "force on a along the line from a to b"),
              force("f_b", "force on b along the line from a to b")),
          "what is left, (f_a + f_b) / 2 on each, sways both the same way",
          SPLIT,
          x -> (x[1] - x[0]) / 2);

  /** Friction from two tensions. */
  public static final Formula FRICTION_FROM_TENSIONS =
      Formula.of(
          "STU-7",
          "mu = ln(T_tight / T_slack) / w",
          new Symbol("mu", "coefficient of friction", "1", 0.05, 0.6),
          List.of(
              force("T_tight", "tension on the tight side"),
              force("T_slack", "tension on the slack side"),
              new Symbol("w", "turn of the rope", "rad", 0, 12 * Math.PI)),
          "rope that slips, slowly; w above zero",
          EULER_EYTELWEIN,
          x -> Math.log(x[0] / x[1]) / x[2]);

  private StudyFormulas() {}

  /**
   * Returns all equations of the studies.
   *
   * @return the formulas, by id
   */
  public static List<Formula> all() {
    return List.of(
        COALITION_WEIGHT, PART_ALONG, ARM, SLOPE, ELASTICITY, FORK_PULL, FRICTION_FROM_TENSIONS);
  }

  private static double factorial(double n) {
    double product = n < 0 ? Double.NaN : 1;
    for (int i = 2; i <= n; i++) {
      product *= i;
    }
    return product;
  }

  private static Symbol moment(String name, String meaning) {
    return new Symbol(name, meaning, "N.m", -NO_LIMIT, NO_LIMIT);
  }

  private static Symbol force(String name, String meaning) {
    return new Symbol(name, meaning, "N", -NO_LIMIT, NO_LIMIT);
  }

  private static Symbol number(String name, String meaning) {
    return new Symbol(name, meaning, "1", -NO_LIMIT, NO_LIMIT);
  }
}
