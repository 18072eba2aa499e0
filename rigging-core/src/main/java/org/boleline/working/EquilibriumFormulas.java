package org.boleline.working;

import java.util.List;
import org.boleline.explain.Formula;
import org.boleline.explain.Source;
import org.boleline.explain.Source.Reading;
import org.boleline.explain.Symbol;

/**
 * The equations of balance by hand, and of second routes to numbers of the library.
 *
 * <p>Each holds its text, symbols, ranges, source and code. Ids are stable.
 */
public final class EquilibriumFormulas {
  private static final double NO_LIMIT = Double.POSITIVE_INFINITY;

  private static final Source FREE_BODY =
      new Source(
          "free body",
          "forces and moments on a part that is cut free, in texts on statics",
          Reading.FROM_MEMORY);
  private static final Source COMPONENTS =
      new Source(
          "derived: components",
          "the second tension along and across the first leg, added to the first",
          Reading.DERIVED);
  private static final Source PIN =
      new Source(
          "derived: pin balance",
          "moment balance about the pin, friction moment a fixed share of the force on the pin",
          Reading.DERIVED);
  private static final Source ENERGY =
      new Source(
          "derived: energy balance",
          "the work of the weight is what the rope takes up",
          Reading.DERIVED);

  private static final Source SHIFT =
      new Source(
          "derived: parallel axes",
          "disk less cavity about the outer centre, shifted to the centroid",
          Reading.DERIVED);
  private static final Source PIECES =
      new Source(
          "derived: pieces of rope",
          "balance of a short piece of rope on its contact, one after the other",
          Reading.DERIVED);

  private static final Source SERIES =
      new Source("derived: geometric series", "sum of a geometric series", Reading.DERIVED);
  private static final Source SLICES =
      new Source(
          "derived: slices",
          "bending moment over flexural rigidity, added up slice by slice",
          Reading.DERIVED);
  private static final Source SWING =
      new Source(
          "derived: swing",
          "energy and the acceleration toward the point, without the speed there",
          Reading.DERIVED);

  private static final String ANY = "any forces, in one frame of axes";

  private static final Symbol X = any("x", "arm along x, from the cut to the force", "m");
  private static final Symbol Y = any("y", "arm along y, from the cut to the force", "m");
  private static final Symbol Z = any("z", "arm upward, from the cut to the force", "m");
  private static final Symbol F_X = any("F_x", "force along x", "N");
  private static final Symbol F_Y = any("F_y", "force along y", "N");
  private static final Symbol F_Z = any("F_z", "upward force", "N");
  private static final Symbol M_X = any("M_x", "moment about x", "N.m");
  private static final Symbol M_Y = any("M_y", "moment about y", "N.m");
  private static final Symbol M_Z = any("M_z", "moment about the plumb axis", "N.m");
  private static final Symbol FIRST = positive("T1", "tension of the first leg", "N");
  private static final Symbol SECOND = positive("T2", "tension of the second leg", "N");
  private static final Symbol DRAG = positive("D", "tight-side less slack-side tension", "N");

  private static final Symbol BELOW_LEVEL =
      new Symbol("b", "angle of the leg from level", "rad", 0, Math.PI / 2);

  static final List<Symbol> FORCES = List.of(F_X, F_Y, F_Z);
  static final List<Symbol> ARMS = List.of(X, Y, Z);
  static final List<Symbol> MOMENTS = List.of(M_X, M_Y, M_Z);
  static final List<Symbol> SECTIONS =
      List.of(
          positive("F", "force of everything above the cut", "N"),
          positive("F_r", "force in the section as reported", "N"),
          positive("M", "moment of everything above about the cut", "N.m"),
          positive("M_r", "moment in the section as reported", "N.m"));

  /** EQU-1: moment of a force about x. */
  public static final Formula MOMENT_X =
      Formula.of(
          "EQU-1",
          "M_x = y * F_z - z * F_y",
          M_X,
          List.of(Y, Z, F_Y, F_Z),
          ANY,
          FREE_BODY,
          x -> x[0] * x[3] - x[1] * x[2]);

  /** EQU-2: moment of a force about y. */
  public static final Formula MOMENT_Y =
      Formula.of(
          "EQU-2",
          "M_y = z * F_x - x * F_z",
          M_Y,
          List.of(X, Z, F_X, F_Z),
          ANY,
          FREE_BODY,
          x -> x[1] * x[2] - x[0] * x[3]);

  /** EQU-3: moment of a force about the plumb axis. */
  public static final Formula MOMENT_Z =
      Formula.of(
          "EQU-3",
          "M_z = x * F_y - y * F_x",
          M_Z,
          List.of(X, Y, F_X, F_Y),
          ANY,
          FREE_BODY,
          x -> x[0] * x[3] - x[1] * x[2]);

  /** EQU-4: arm of a force along one axis. */
  public static final Formula ARM =
      Formula.of(
          "EQU-4",
          "a = p - c",
          any("a", "arm along an axis", "m"),
          List.of(
              any("p", "place of the force along that axis", "m"),
              any("c", "place of the cut along that axis", "m")),
          "the loaded, bent shape",
          FREE_BODY,
          x -> x[0] - x[1]);

  /** EQU-5: sum of forces along one axis. */
  public static final Formula FORCE_SUM =
      Formula.of(
          "EQU-5",
          "S = A + B",
          any("S", "sum of forces", "N"),
          List.of(any("A", "sum so far", "N"), any("B", "next force", "N")),
          "forces along one axis",
          FREE_BODY,
          x -> x[0] + x[1]);

  /** EQU-6: sum of moments about one axis. */
  public static final Formula MOMENT_SUM =
      Formula.of(
          "EQU-6",
          "S = A + B",
          any("S", "sum of moments", "N.m"),
          List.of(any("A", "sum so far", "N.m"), any("B", "next moment", "N.m")),
          "moments about one axis",
          FREE_BODY,
          x -> x[0] + x[1]);

  /** EQU-7: size of a force. */
  public static final Formula FORCE_SIZE =
      Formula.of(
          "EQU-7",
          "F = sqrt(F_x^2 + F_y^2 + F_z^2)",
          positive("F", "size of the force", "N"),
          FORCES,
          "axes square to each other",
          FREE_BODY,
          x -> Math.sqrt(x[0] * x[0] + x[1] * x[1] + x[2] * x[2]));

  /** EQU-8: size of a moment. */
  public static final Formula MOMENT_SIZE =
      Formula.of(
          "EQU-8",
          "M = sqrt(M_x^2 + M_y^2 + M_z^2)",
          positive("M", "size of the moment", "N.m"),
          MOMENTS,
          "axes square to each other",
          FREE_BODY,
          x -> Math.sqrt(x[0] * x[0] + x[1] * x[1] + x[2] * x[2]));

  /** EQU-9: force of two legs by components. */
  public static final Formula TWO_LEGS =
      Formula.of(
          "EQU-9",
          "R = sqrt((T1 + T2 * cos(q))^2 + (T2 * sin(q))^2)",
          positive("R", "force on the point", "N"),
          List.of(FIRST, SECOND, new Symbol("q", "angle between the legs", "rad", 0, Math.PI)),
          "straight legs, weight of the rope left out",
          COMPONENTS,
          x -> Math.hypot(x[0] + x[1] * Math.cos(x[2]), x[1] * Math.sin(x[2])));

  /** EQU-10: what a sheave takes, from the tensions. */
  public static final Formula DRAG_BY_TENSIONS =
      Formula.of(
          "EQU-10",
          "D = T_tight - T_slack",
          DRAG,
          List.of(
              positive("T_tight", "tension on the tight side", "N"),
              positive("T_slack", "tension on the slack side", "N")),
          "about to slip toward the tight side",
          PIN,
          x -> x[0] - x[1]);

  /** EQU-11: what a sheave takes, from the force on its pin. */
  public static final Formula DRAG_BY_PIN =
      Formula.of(
          "EQU-11",
          "D = (1 - e) / (1 + e) * R",
          DRAG,
          List.of(
              new Symbol("e", "slack over tight tension of a sheave at a half turn", "1", 0.8, 1),
              positive("R", "force on the point", "N")),
          "as FRI-3",
          PIN,
          x -> (1 - x[0]) / (1 + x[0]) * x[1]);

  /** EQU-12: balance point of two parts. */
  public static final Formula BALANCE_OF_PARTS =
      Formula.of(
          "EQU-12",
          "z = (W_1 * z_1 + W_2 * z_2) / (W_1 + W_2)",
          positive("z", "balance point from the large end", "m"),
          List.of(
              positive("W_1", "weight of the first part", "N"),
              positive("z_1", "its balance point from the large end", "m"),
              positive("W_2", "weight of the second part", "N"),
              positive("z_2", "its balance point from the same end", "m")),
          "parts on one line",
          FREE_BODY,
          x -> (x[0] * x[1] + x[2] * x[3]) / (x[0] + x[2]));

  /** EQU-13: work of the weight until the lowest point. */
  public static final Formula WORK_OF_WEIGHT =
      Formula.of(
          "EQU-13",
          "E = W * (h + x)",
          positive("E", "energy", "J"),
          List.of(
              positive("W", "weight of the piece", "N"),
              positive("h", "fall until the rope is taut", "m"),
              positive("x", "travel since the rope was taut", "m")),
          "from rest to rest",
          ENERGY,
          x -> x[0] * (x[1] + x[2]));

  /** EQU-14: energy in a linear spring. */
  public static final Formula SPRING_ENERGY =
      Formula.of(
          "EQU-14",
          "E = k * x^2 / 2",
          positive("E", "energy", "J"),
          List.of(
              positive("k", "stiffness of what catches", "N/m"),
              positive("x", "travel since the rope was taut", "m")),
          "linear spring without mass",
          ENERGY,
          x -> x[0] * (x[1] * x[1]) / 2);

  /** EQU-15: sum of energies. */
  public static final Formula ENERGY_SUM =
      Formula.of(
          "EQU-15",
          "S = A + B",
          any("S", "sum of energies", "J"),
          List.of(any("A", "sum so far", "J"), any("B", "next energy", "J")),
          "every part once",
          ENERGY,
          x -> x[0] + x[1]);

  /** EQU-16: least second moment of area from the axis through the outer centre. */
  public static final Formula SHIFTED_SECOND_MOMENT =
      Formula.of(
          "EQU-16",
          "I_min = pi / 64 * D^4 - (pi / 64 * d^4 + pi / 4 * d^2 * e^2) - A * x_c^2",
          positive("I_min", "least second moment of area", "m4"),
          List.of(
              positive("D", "outer diameter", "m"),
              positive("d", "diameter of the cavity", "m"),
              positive("e", "cavity off centre by", "m"),
              positive("A", "area", "m2"),
              any("x_c", "centroid, off centre by", "m")),
          "round outside, one round cavity",
          SHIFT,
          x -> {
            double outer = x[0] * x[0];
            double cavity = x[1] * x[1];
            double hole = Math.PI / 64 * (cavity * cavity) + Math.PI / 4 * cavity * (x[2] * x[2]);
            return Math.PI / 64 * (outer * outer) - hole - x[3] * (x[4] * x[4]);
          });

  /** EQU-17: tension ratio over a round contact, from short pieces of rope in balance. */
  public static final Formula BY_PIECES =
      Formula.of(
          "EQU-17",
          "t = ((1 + mu * w / (2 * n)) / (1 - mu * w / (2 * n)))^n",
          new Symbol("t", "tight-side over slack-side tension", "1", 1, NO_LIMIT),
          List.of(
              new Symbol("mu", "coefficient of friction", "1", 0.05, 0.6),
              new Symbol("w", "turn of the rope", "rad", 0, 12 * Math.PI),
              new Symbol("n", "pieces", "1", 1000, NO_LIMIT)),
          "every piece presses with the mean of its tensions times its turn; for many pieces FRI-2",
          PIECES,
          x -> {
            double half = x[0] * x[1] / (2 * x[2]);
            return Math.pow((1 + half) / (1 - half), x[2]);
          });

  /** EQU-18: wraps needed, laid in short pieces. */
  public static final Formula WRAPS_BY_PIECES =
      Formula.of(
          "EQU-18",
          "n = max(0, d * ln(T_tight / T_hand) / ln((2 + mu * d) / (2 - mu * d)) - w) / (2 * pi)",
          positive("n", "wraps needed", "1"),
          List.of(
              positive("T_tight", "tension on the tight side", "N"),
              positive("T_hand", "tension that the hand holds", "N"),
              new Symbol("mu", "coefficient of friction", "1", 0.05, 0.6),
              new Symbol("w", "turn at the device besides the wraps", "rad", 0, 12 * Math.PI),
              new Symbol("d", "turn of one piece", "rad", 0, 0.01)),
          "as EQU-17; every piece turns by d; for small d FRI-11",
          PIECES,
          x -> {
            double each = Math.log((2 + x[2] * x[4]) / (2 - x[2] * x[4]));
            double turn = x[4] * Math.log(x[0] / x[1]) / each - x[3];
            return Math.max(0, turn) / (2 * Math.PI);
          });

  /** EQU-19: load over line pull of a tackle, the sum of its parts of line in closed form. */
  public static final Formula TACKLE_SUM =
      Formula.of(
          "EQU-19",
          "m = n where e = 1, else e^(s + 1) * (1 - e^n) / (1 - e)",
          positive("m", "load over line pull, raising", "1"),
          List.of(
              new Symbol("e", "slack over tight tension of a sheave at a half turn", "1", 0.8, 1),
              new Symbol("n", "parts of line at the load", "1", 1, 12),
              new Symbol("s", "lead sheaves besides those of the tackle", "1", 0, 12)),
          "as TAC-1",
          SERIES,
          x ->
              x[0] == 1
                  ? x[1]
                  : Math.pow(x[0], x[2] + 1) * (1 - Math.pow(x[0], x[1])) / (1 - x[0]));

  private static final List<Symbol> BEAM =
      List.of(
          positive("F", "force at the tip, square to the axis", "N"),
          positive("L", "length", "m"),
          positive("E", "modulus of elasticity", "Pa"),
          positive("D_b", "diameter at the base", "m"),
          positive("D_t", "diameter at the tip", "m"),
          new Symbol("n", "slices", "1", 100, NO_LIMIT));

  /** EQU-20: deflection of a tapered cantilever, slice by slice. */
  public static final Formula DEFLECTION_BY_SLICES =
      Formula.of(
          "EQU-20",
          "v = sum(i = 1 to n, 64 * F * (c * (i - 1 / 2))^2 * c"
              + " / (pi * E * (D_t + b * (i - 1 / 2))^4)) with c = L / n, b = (D_b - D_t) / n",
          positive("v", "deflection of the tip", "m"),
          BEAM,
          "as BEA-6; every slice bends as at its middle",
          SLICES,
          x -> bySlices(x, true));

  /** EQU-21: slope of a tapered cantilever, slice by slice. */
  public static final Formula SLOPE_BY_SLICES =
      Formula.of(
          "EQU-21",
          "q = sum(i = 1 to n, 64 * F * c * (i - 1 / 2) * c"
              + " / (pi * E * (D_t + b * (i - 1 / 2))^4)) with c = L / n, b = (D_b - D_t) / n",
          positive("q", "slope of the tip", "rad"),
          BEAM,
          "as BEA-7; every slice bends as at its middle",
          SLICES,
          x -> bySlices(x, false));

  /** EQU-22: what the rope takes up in a stop by a constant force. */
  public static final Formula WORK_OF_STOP =
      Formula.of(
          "EQU-22",
          "E = (F - W) * s",
          positive("E", "energy", "J"),
          List.of(
              positive("F", "force of the stop", "N"),
              positive("W", "weight of the piece", "N"),
              positive("s", "stopping distance", "m")),
          "force the same over the whole distance, straight down",
          ENERGY,
          x -> (x[0] - x[1]) * x[2]);

  /** EQU-23: energy of motion. */
  public static final Formula ENERGY_OF_MOTION =
      Formula.of(
          "EQU-23",
          "E = m * v^2 / 2",
          positive("E", "energy", "J"),
          List.of(
              positive("m", "mass of the piece", "kg"),
              positive("v", "speed when the rope comes taut", "m/s")),
          "a point mass",
          ENERGY,
          x -> x[0] * (x[1] * x[1]) / 2);

  /** EQU-24: tension of a swing from the speed at another angle. */
  public static final Formula SWING_TENSION =
      Formula.of(
          "EQU-24",
          "T = m * (v1^2 / L + g * (3 * cos(a) - 2 * cos(a1)))",
          positive("T", "tension of the rope", "N"),
          List.of(
              positive("m", "mass of the piece", "kg"),
              any("v1", "speed along the circle at a1", "m/s"),
              positive("L", "rope from the point to the centre of gravity", "m"),
              positive("g", "gravity", "m/s2"),
              new Symbol(
                  "a1", "angle from plumb where the speed is known", "rad", -Math.PI, Math.PI),
              new Symbol("a", "angle from plumb", "rad", -Math.PI, Math.PI)),
          "as SWI-4 and SWI-5",
          SWING,
          x -> x[0] * (x[1] * x[1] / x[2] + x[3] * (3 * Math.cos(x[5]) - 2 * Math.cos(x[4]))));

  private EquilibriumFormulas() {}

  /** EQU-25: the level part of a tension. */
  public static final Formula LEVEL_PART =
      Formula.of(
          "EQU-25",
          "H = T * cos(b)",
          positive("H", "level part of the tension", "N"),
          List.of(positive("T", "tension of the leg", "N"), BELOW_LEVEL),
          "straight leg",
          FREE_BODY,
          x -> x[0] * Math.cos(x[1]));

  /** EQU-26: the plumb part of a tension. */
  public static final Formula PLUMB_PART =
      Formula.of(
          "EQU-26",
          "V = T * sin(b)",
          positive("V", "plumb part of the tension", "N"),
          List.of(positive("T", "tension of the leg", "N"), BELOW_LEVEL),
          "straight leg",
          FREE_BODY,
          x -> x[0] * Math.sin(x[1]));

  /** EQU-27: overturning moment of a pull. */
  public static final Formula OVERTURNING =
      Formula.of(
          "EQU-27",
          "M = V * a - H * h",
          any("M", "moment at the base, positive toward the lean", "N.m"),
          List.of(
              any("V", "downward pull on the top point", "N"),
              positive("a", "level distance from the base to the top point", "m"),
              any("H", "level pull on the top point, away from the lean", "N"),
              positive("h", "height of the top point over the base", "m")),
          "stiff stem, all pulls in one plane",
          FREE_BODY,
          x -> x[0] * x[1] - x[2] * x[3]);

  /** The bending of each slice, for the deflection times its distance from the tip. */
  private static double bySlices(double[] x, boolean timesDistance) {
    double slice = x[1] / x[5];
    double taper = (x[3] - x[4]) / x[5];
    double sum = 0;
    for (int i = 1; i <= x[5]; i++) {
      double distance = slice * (i - 0.5);
      double diameter = x[4] + taper * (i - 0.5);
      double arm = timesDistance ? distance * distance : distance;
      sum += 64 * x[0] * arm * slice / (Math.PI * x[2] * Math.pow(diameter, 4));
    }
    return sum;
  }

  private static Symbol any(String name, String meaning, String unit) {
    return new Symbol(name, meaning, unit, Double.NEGATIVE_INFINITY, NO_LIMIT);
  }

  private static Symbol positive(String name, String meaning, String unit) {
    return new Symbol(name, meaning, unit, 0, NO_LIMIT);
  }
}
