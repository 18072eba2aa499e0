package org.boleline.drop;

import java.util.List;
import org.boleline.explain.Formula;
import org.boleline.explain.Source;
import org.boleline.explain.Source.Reading;
import org.boleline.explain.Symbol;

/**
 * The equations of catches by energy balance.
 *
 * <p>Each holds its text, symbols, ranges, source and code. The types of this package get their
 * numbers from here. Ids are stable.
 */
public final class DropFormulas {
  private static final double NO_LIMIT = Double.POSITIVE_INFINITY;

  private static final Source KANE =
      new Source(
          "Kane 2007",
          "Kane, Arboriculture & Urban Forestry 33(1), 2007, p. 41, appendix",
          Reading.READ);
  private static final Source GERE =
      new Source(
          "Gere",
          "Gere, Mechanics of Materials, 7th ed., falling weight, solution 9.10-1",
          Reading.READ);
  private static final Source FALL_FACTOR =
      new Source(
          "derived: standard fall",
          "DRO-4 with k = EA / L and h = f * L: the length cancels",
          Reading.DERIVED);
  private static final Source ENERGY =
      new Source(
          "derived: energy balance",
          "the work of the weight is what the rope takes up",
          Reading.DERIVED);
  private static final Source FREE_FALL =
      new Source("derived: free fall", "motion under constant force", Reading.DERIVED);
  private static final Source SERIES =
      new Source(
          "derived: legs in series",
          "each leg behind a point stretches under the tension that friction leaves it",
          Reading.DERIVED);
  private static final Source POWER =
      new Source("derived: power law", "a power law through a point", Reading.DERIVED);

  private static final String NO_LOSS =
      "linear, no mass of the rope, no damping, piece falls straight";

  private static final Symbol MASS = new Symbol("m", "mass of the piece", "kg", 0, NO_LIMIT);
  private static final Symbol GRAVITY =
      new Symbol("g", "acceleration of gravity", "m/s2", 0, NO_LIMIT);
  private static final Symbol WEIGHT = force("W", "weight of the piece");
  private static final Symbol PEAK = force("F", "greatest tension of the load leg");
  private static final Symbol SPEED = speed("v", "speed when the rope comes taut");
  private static final Symbol FALL = length("h", "fall until the rope is taut");
  private static final Symbol STIFFNESS =
      new Symbol("k", "stiffness of what catches", "N/m", 0, NO_LIMIT);
  private static final Symbol FACTOR =
      new Symbol("f", "fall factor: fall over length of rope", "1", 0, 2);
  private static final Symbol MODULUS = force("EA", "modulus of the rope: tension over strain");
  private static final Symbol RATIO =
      new Symbol("t", "tight-side over slack-side tension", "1", 1, NO_LIMIT);
  private static final Symbol EXPONENT = new Symbol("n", "exponent of the strain", "1", 1, 4);
  private static final Symbol STRAIN =
      new Symbol("e", "strain: added length over length", "1", 0, NO_LIMIT);

  /** DRO-1: weight. */
  public static final Formula WEIGHT_OF_PIECE =
      Formula.of(
          "DRO-1",
          "W = m * g",
          WEIGHT,
          List.of(MASS, GRAVITY),
          "any mass",
          FREE_FALL,
          x -> x[0] * x[1]);

  /** DRO-2: speed after a free fall. */
  public static final Formula FALL_SPEED =
      Formula.of(
          "DRO-2",
          "v = sqrt(2 * g * h)",
          SPEED,
          List.of(GRAVITY, FALL),
          "from rest; left out: drag of the air, what a hinge takes",
          FREE_FALL,
          x -> Math.sqrt(2 * x[0] * x[1]));

  /** DRO-3: stop by a constant force. */
  public static final Formula CONSTANT_FORCE_STOP =
      Formula.of(
          "DRO-3",
          "F = m * (g + v^2 / (2 * s))",
          force("F", "force of the stop"),
          List.of(MASS, GRAVITY, SPEED, length("s", "stopping distance")),
          "force the same over the whole distance: the least that any stop over it can have",
          KANE,
          x -> x[0] * (x[1] + x[2] * x[2] / (2 * x[3])));

  /** DRO-4: energy balance with a linear spring. */
  public static final Formula LINEAR_PEAK =
      Formula.of(
          "DRO-4",
          "F = W * (1 + sqrt(1 + 2 * k * h / W))",
          PEAK,
          List.of(WEIGHT, STIFFNESS, FALL),
          NO_LOSS,
          GERE,
          x -> x[0] * (1 + Math.sqrt(1 + 2 * x[1] * x[2] / x[0])));

  /** DRO-5: energy balance by fall factor. */
  public static final Formula STANDARD_PEAK =
      Formula.of(
          "DRO-5",
          "F = W * (1 + sqrt(1 + 2 * f * EA / W))",
          PEAK,
          List.of(WEIGHT, FACTOR, MODULUS),
          NO_LOSS + "; f up to 2: the piece starts no higher above the point than the rope is long",
          FALL_FACTOR,
          x -> x[0] * (1 + Math.sqrt(1 + 2 * x[1] * x[2] / x[0])));

  /** DRO-6: modulus of the rope from the peak of a standard fall. */
  public static final Formula MODULUS_FROM_PEAK =
      Formula.of(
          "DRO-6",
          "EA = F * (F - 2 * W) / (2 * f * W)",
          MODULUS,
          List.of(WEIGHT, FACTOR, PEAK),
          NO_LOSS + "; F above 2 W, f above zero. From a bound of F it is a bound of EA",
          FALL_FACTOR,
          x -> x[2] * (x[2] - 2 * x[0]) / (2 * x[1] * x[0]));

  /** DRO-7: peak from the speed alone. */
  public static final Formula SPEED_PEAK =
      Formula.of(
          "DRO-7",
          "F = v * sqrt(k * m)",
          PEAK,
          List.of(SPEED, STIFFNESS, MASS),
          NO_LOSS + "; gravity left out while the rope stretches: DRO-4 lies above it by W to 2 W",
          ENERGY,
          x -> x[0] * Math.sqrt(x[1] * x[2]));

  /** DRO-8: stretch of a linear spring. */
  public static final Formula LINEAR_STRETCH =
      Formula.of(
          "DRO-8",
          "x = F / k",
          length("x", "travel since the rope was taut"),
          List.of(PEAK, STIFFNESS),
          NO_LOSS,
          ENERGY,
          x -> x[0] / x[1]);

  /** DRO-9: rope that stretches like a leg and all behind it. */
  public static final Formula EFFECTIVE_LENGTH =
      Formula.of(
          "DRO-9",
          "L_e = L + L_behind / t",
          length("L_e", "length that stretches like this leg and all behind it"),
          List.of(
              length("L", "length of this leg"), length("L_behind", "L_e of the next leg"), RATIO),
          "rope that slips toward the load at the point; linear rope",
          SERIES,
          x -> x[0] + x[1] / x[2]);

  /** DRO-10: stiffness of rope and springs at the load. */
  public static final Formula EFFECTIVE_STIFFNESS =
      Formula.of(
          "DRO-10",
          "k = 1 / (L_e / EA + c)",
          STIFFNESS,
          List.of(
              length("L_e", "length that stretches like the load leg"),
              MODULUS,
              new Symbol(
                  "c", "travel for each newton from springs in the path", "m/N", 0, NO_LIMIT)),
          "as DRO-9; springs linear and without mass",
          SERIES,
          x -> 1 / (x[0] / x[1] + x[2]));

  /** DRO-11: tension at the load while the device slips. */
  public static final Formula SLIP_AT_LOAD =
      Formula.of(
          "DRO-11",
          "T = T_slip * P",
          force("T", "tension of the load leg while the device slips"),
          List.of(
              force("T_slip", "tension of the leg into the device while it slips"),
              new Symbol("P", "product of the tension ratios of all points", "1", 1, NO_LIMIT)),
          "rope that slips toward the load at every point",
          SERIES,
          x -> x[0] * x[1]);

  /** DRO-12: run that takes up the energy left. */
  public static final Formula RUN =
      Formula.of(
          "DRO-12",
          "s = K / (T - W)",
          length("s", "run at the load"),
          List.of(
              new Symbol("K", "energy of motion when the device begins to slip", "J", 0, NO_LIMIT),
              force("T", "tension of the load leg while the device slips"),
              WEIGHT),
          "T constant and above W; where it is not above W the piece never stops",
          ENERGY,
          x -> x[0] / (x[1] - x[2]));

  /** DRO-13: energy left when the device begins to slip. */
  public static final Formula ENERGY_LEFT =
      Formula.of(
          "DRO-13",
          "K = E + W * x - A",
          new Symbol("K", "energy of motion when the device begins to slip", "J", 0, NO_LIMIT),
          List.of(
              new Symbol("E", "energy when the rope is taut", "J", 0, NO_LIMIT),
              WEIGHT,
              length("x", "travel since the rope was taut"),
              new Symbol("A", "work that the load leg has taken", "J", 0, NO_LIMIT)),
          "up to the moment at which the device begins to slip",
          ENERGY,
          x -> x[0] + x[1] * x[2] - x[3]);

  /** DRO-14: heat of a slip at constant tensions. */
  public static final Formula SLIP_HEAT =
      Formula.of(
          "DRO-14",
          "Q = (T_tight - T_slack) * s",
          new Symbol("Q", "heat", "J", 0, NO_LIMIT),
          List.of(
              force("T_tight", "tension on the tight side"),
              force("T_slack", "tension on the slack side"),
              length("s", "rope that passes")),
          "tensions constant. How rope and hardware share the heat is open: for either it is an"
              + " upper bound",
          ENERGY,
          x -> (x[0] - x[1]) * x[2]);

  /** DRO-15: fall during the delay of a worker. */
  public static final Formula DELAY_FALL =
      Formula.of(
          "DRO-15",
          "d = v * T_d + (g - T / m) * T_d^2 / 2",
          length("d", "fall during the delay"),
          List.of(
              SPEED,
              new Symbol("T_d", "delay", "s", 0, NO_LIMIT),
              GRAVITY,
              force("T", "tension of the load leg while the rope runs"),
              MASS),
          "T constant and below the weight; the rope's stretch under it is left out",
          FREE_FALL,
          x -> (x[0] + (x[2] - x[3] / x[4]) * x[1] / 2) * x[1]);

  /** DRO-16: tension of a rope by a power law. */
  public static final Formula POWER_TENSION =
      Formula.of(
          "DRO-16",
          "T = T_r * (e / e_r)^n",
          force("T", "tension"),
          List.of(
              STRAIN,
              force("T_r", "tension at a known point"),
              new Symbol("e_r", "strain at that point", "1", 0, NO_LIMIT),
              EXPONENT),
          "n 1 to 4: from memory; a rope stiffens as it stretches",
          POWER,
          x -> x[1] * Math.pow(x[0] / x[2], x[3]));

  /** DRO-17: energy in each metre of such a rope. */
  public static final Formula POWER_ENERGY =
      Formula.of(
          "DRO-17",
          "U = T * e / (n + 1)",
          new Symbol("U", "energy stored for each length", "J/m", 0, NO_LIMIT),
          List.of(force("T", "tension"), STRAIN, EXPONENT),
          "as DRO-16",
          POWER,
          x -> x[0] * x[1] / (x[2] + 1));

  /** DRO-18: rope that fills a stretched length. */
  public static final Formula UNLOADED_LENGTH =
      Formula.of(
          "DRO-18",
          "n = L / (1 + e)",
          length("n", "rope, counted without load"),
          List.of(length("L", "stretched length"), STRAIN),
          "the same strain over the whole length",
          SERIES,
          x -> x[0] / (1 + x[1]));

  /** DRO-19: energy that rope brings over a point. */
  public static final Formula BROUGHT_OVER =
      Formula.of(
          "DRO-19",
          "G = T * (1 + e) - U",
          new Symbol("G", "energy that each length of rope brings over", "J/m", 0, NO_LIMIT),
          List.of(
              force("T", "tension"),
              STRAIN,
              new Symbol("U", "energy stored for each length", "J/m", 0, NO_LIMIT)),
          "lengths counted without load: the work of the tension less what goes along as stored",
          ENERGY,
          x -> x[0] * (1 + x[1]) - x[2]);

  /** DRO-20: heat of stretching rope that passes at constant tensions. */
  public static final Formula PASSING_HEAT =
      Formula.of(
          "DRO-20",
          "Q = (G_tight - G_slack) * n",
          new Symbol("Q", "heat", "J", 0, NO_LIMIT),
          List.of(
              new Symbol("G_tight", "G on the tight side", "J/m", 0, NO_LIMIT),
              new Symbol("G_slack", "G on the slack side", "J/m", 0, NO_LIMIT),
              length("n", "rope that passes, counted without load")),
          "as DRO-14, with rope counted where it is",
          ENERGY,
          x -> (x[0] - x[1]) * x[2]);

  private DropFormulas() {}

  /**
   * Returns all equations of this family.
   *
   * @return the equations, in the order of their ids
   */
  public static List<Formula> all() {
    return List.of(
        WEIGHT_OF_PIECE,
        FALL_SPEED,
        CONSTANT_FORCE_STOP,
        LINEAR_PEAK,
        STANDARD_PEAK,
        MODULUS_FROM_PEAK,
        SPEED_PEAK,
        LINEAR_STRETCH,
        EFFECTIVE_LENGTH,
        EFFECTIVE_STIFFNESS,
        SLIP_AT_LOAD,
        RUN,
        ENERGY_LEFT,
        SLIP_HEAT,
        DELAY_FALL,
        POWER_TENSION,
        POWER_ENERGY,
        UNLOADED_LENGTH,
        BROUGHT_OVER,
        PASSING_HEAT);
  }

  private static Symbol force(String name, String meaning) {
    return new Symbol(name, meaning, "N", 0, NO_LIMIT);
  }

  private static Symbol length(String name, String meaning) {
    return new Symbol(name, meaning, "m", 0, NO_LIMIT);
  }

  private static Symbol speed(String name, String meaning) {
    return new Symbol(name, meaning, "m/s", 0, NO_LIMIT);
  }
}
