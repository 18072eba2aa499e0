package org.boleline.study;

import java.util.List;
import org.boleline.explain.Formula;
import org.boleline.explain.Source;
import org.boleline.explain.Source.Reading;
import org.boleline.explain.Symbol;
import org.boleline.internal.sampling.OrderKernel;

/**
 * The equations of ranges: distributions, order statistics, shares of spread.
 *
 * <p>Each holds its text, symbols, ranges, source and code. Ids are stable.
 */
public final class RangeFormulas {
  private static final double NO_LIMIT = Double.POSITIVE_INFINITY;

  private static final Source STATISTICS =
      new Source(
          "statistics texts",
          "lognormal distribution, order statistics and binomial limits, in statistics texts",
          Reading.FROM_MEMORY);
  private static final Source SALTELLI =
      new Source(
          "Saltelli et al. 2010",
          "Saltelli and others, Variance based sensitivity analysis of model output, Computer"
              + " Physics Communications 181, 2010",
          Reading.FROM_MEMORY);
  private static final Source JANSEN =
      new Source(
          "Jansen 1999",
          "Jansen, Analysis of variance designs for model output, Computer Physics Communications"
              + " 117, 1999",
          Reading.FROM_MEMORY);
  private static final Source FATIGUE =
      new Source(
          "fatigue texts",
          "linear sum of damage (Palmgren 1924, Miner 1945), in texts on fatigue",
          Reading.FROM_MEMORY);

  private static final Symbol DRAWS = new Symbol("n", "number of draws", "1", 1, 1e9);
  private static final Symbol VARIATION = new Symbol("v", "coefficient of variation", "1", 0, 2);
  private static final Symbol LOG_DEVIATION =
      new Symbol("s", "standard deviation of the logarithm", "1", 0, 2);
  private static final Symbol VARIANCE =
      new Symbol("V", "variance of the reading, in its SI unit squared", "1", 0, NO_LIMIT);

  /** RNG-1: standard deviation of the logarithm of a lognormal input. */
  public static final Formula LOG_DEVIATION_OF_VARIATION =
      Formula.of(
          "RNG-1",
          "s = sqrt(ln(1 + v^2))",
          LOG_DEVIATION,
          List.of(VARIATION),
          "lognormal distribution",
          STATISTICS,
          x -> Math.sqrt(Math.log1p(x[0] * x[0])));

  /** RNG-2: median of a lognormal input. */
  public static final Formula LOGNORMAL_MEDIAN =
      Formula.of(
          "RNG-2",
          "x_50 = m * exp(-s^2 / 2)",
          new Symbol("x_50", "median, in the unit of the mean", "1", 0, NO_LIMIT),
          List.of(new Symbol("m", "mean, in its SI unit", "1", 0, NO_LIMIT), LOG_DEVIATION),
          "lognormal distribution",
          STATISTICS,
          x -> x[0] * Math.exp(-0.5 * x[1] * x[1]));

  /** RNG-3: how surely a quantile lies between two of the sorted draws. */
  public static final Formula QUANTILE_CONFIDENCE =
      Formula.of(
          "RNG-3",
          "P = sum(i = r to s - 1, choose(n, i) * p^i * (1 - p)^(n - i))",
          new Symbol("P", "chance that the quantile lies from draw r to draw s", "1", 0, 1),
          List.of(
              DRAWS,
              new Symbol("p", "share of the quantile", "1", 0, 1),
              new Symbol("r", "rank of the lower draw, sorted; 0: no lower bound", "1", 0, 1e9),
              new Symbol("s", "rank of the upper draw; n + 1: no upper bound", "1", 1, 1e9 + 1)),
          "independent draws of any distribution without jumps; scrambled Sobol draws are spread"
              + " more evenly than that",
          STATISTICS,
          x -> OrderKernel.between((int) x[0], x[1], (int) x[2], (int) x[3]));

  /** RNG-4: standard error from independent scrambles. */
  public static final Formula STANDARD_ERROR =
      Formula.of(
          "RNG-4",
          "e = d / sqrt(R)",
          new Symbol("e", "standard error, in the unit of the figure", "1", 0, NO_LIMIT),
          List.of(
              new Symbol(
                  "d",
                  "standard deviation of the figure from scramble to scramble",
                  "1",
                  0,
                  NO_LIMIT),
              new Symbol("R", "number of scrambles", "1", 2, 1000)),
          "independent scrambles of the same points",
          STATISTICS,
          x -> x[0] / Math.sqrt(x[1]));

  /** RNG-5: share of the spread that an input has alone. */
  public static final Formula FIRST_SHARE =
      Formula.of(
          "RNG-5",
          "S = A / V",
          new Symbol("S", "first-order share", "1", 0, 1),
          List.of(
              new Symbol(
                  "A",
                  "mean over rows of f(b) * (f(a, this input from b) - f(a))",
                  "1",
                  -NO_LIMIT,
                  NO_LIMIT),
              VARIANCE),
          "independent inputs or groups of inputs; f with its mean taken off",
          SALTELLI,
          x -> x[0] / x[1]);

  /** RNG-6: share of the spread that would go if an input were known, at most. */
  public static final Formula TOTAL_SHARE =
      Formula.of(
          "RNG-6",
          "T = D / (2 * V)",
          new Symbol("T", "total share", "1", 0, 1),
          List.of(
              new Symbol(
                  "D", "mean over rows of (f(a) - f(a, this input from b))^2", "1", 0, NO_LIMIT),
              VARIANCE),
          "independent inputs or groups of inputs",
          JANSEN,
          x -> x[0] / (2 * x[1]));

  /** RNG-7: least chance that a count of events agrees with. */
  public static final Formula LEAST_CHANCE =
      Formula.of(
          "RNG-7",
          "q such that sum(i = k to n, choose(n, i) * q^i * (1 - q)^(n - i)) = c",
          new Symbol("q", "least chance of the event", "1", 0, 1),
          List.of(
              DRAWS,
              new Symbol("k", "draws with the event", "1", 0, 1e9),
              new Symbol("c", "chance allowed that the true one is less", "1", 0, 0.5)),
          "independent draws (Clopper and Pearson); the greatest chance is 1 less the least chance"
              + " of the other n - k",
          STATISTICS,
          x -> OrderKernel.leastChance((int) x[0], (int) x[1], x[2]));

  /** RNG-8: damage that one pull does, by a user's curve. */
  public static final Formula DAMAGE =
      Formula.of(
          "RNG-8",
          "D = 1 / N",
          new Symbol("D", "share of the life that one pull uses", "1", 0, 1),
          List.of(new Symbol("N", "pulls to the end of life at this force", "1", 1, NO_LIMIT)),
          "order of the pulls and rest between them are left out; the curve is the user's",
          FATIGUE,
          x -> 1 / x[0]);

  /** RNG-9: pulls to the end of life between two points of a user's curve. */
  public static final Formula PULLS_BETWEEN =
      Formula.of(
          "RNG-9",
          "N = N_1 * (N_2 / N_1)^((w - w_1) / (w_2 - w_1))",
          new Symbol("N", "pulls to the end of life at this force", "1", 1, NO_LIMIT),
          List.of(
              new Symbol("w", "force over the breaking strength", "1", 0, 1),
              new Symbol("w_1", "the same at the point below", "1", 0, 1),
              new Symbol("w_2", "the same at the point above", "1", 0, 1),
              new Symbol("N_1", "pulls at the point below", "1", 1, NO_LIMIT),
              new Symbol("N_2", "pulls at the point above", "1", 1, NO_LIMIT)),
          "between two points of the user's curve: a straight line on a logarithmic scale of pulls",
          FATIGUE,
          x -> x[3] * Math.pow(x[4] / x[3], (x[0] - x[1]) / (x[2] - x[1])));

  private RangeFormulas() {}
}
