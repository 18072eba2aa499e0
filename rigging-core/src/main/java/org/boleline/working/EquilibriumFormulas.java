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

  static final List<Symbol> FORCES = List.of(F_X, F_Y, F_Z);
  static final List<Symbol> ARMS = List.of(X, Y, Z);
  static final List<Symbol> MOMENTS = List.of(M_X, M_Y, M_Z);

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

  private EquilibriumFormulas() {}

  private static Symbol any(String name, String meaning, String unit) {
    return new Symbol(name, meaning, unit, Double.NEGATIVE_INFINITY, NO_LIMIT);
  }

  private static Symbol positive(String name, String meaning, String unit) {
    return new Symbol(name, meaning, unit, 0, NO_LIMIT);
  }
}
