package org.boleline.limits;

import java.util.List;
import org.boleline.explain.Formula;
import org.boleline.explain.Source;
import org.boleline.explain.Source.Reading;
import org.boleline.explain.Symbol;
import org.boleline.internal.limits.LimitKernel;

/**
 * The equations of demand against capacity.
 *
 * <p>Each holds its text, symbols, ranges, source and code. Ids are stable.
 */
public final class LimitFormulas {
  private static final double NO_LIMIT = Double.POSITIVE_INFINITY;

  private static final Source DEFINITION =
      new Source("definition", "what the words mean", Reading.DERIVED);
  private static final Source PRACTICE =
      Source.commonPractice("losses of strength multiplied, or the worst alone");
  private static final Source SECTION =
      new Source(
          "derived: stress of a round section",
          "axial stress and bending stress of the outermost fibre, added",
          Reading.DERIVED);
  private static final Source TWO_LEGS =
      new Source(
          "Arboriculture Australia 2022",
          "Arboriculture Australia, Tree rescue manual, 2022, pp. 116-118",
          Reading.READ);
  private static final Source CHOKE_TABLE =
      new Source(
          "sling suppliers",
          "tables of sling suppliers, as in ASME B30.9: capacity by angle of choke",
          Reading.READ);
  private static final Source RR668 =
      new Source(
          "HSE RR668",
          "Detter, Cowell, McKeown, Howard, HSE Research Report RR668, 2008, as reprinted in"
              + " Arboriculture Australia 2022, p. 136: the full form",
          Reading.READ);

  private static final Symbol CAPACITY =
      symbol("C", "capacity: a force, or a stress or a moment as its demand", "N");
  private static final Symbol STRAIGHT = symbol("C_1", "capacity in a straight pull", "N");
  private static final Symbol KEPT = share("k", "share of the strength that is kept");
  private static final Symbol STRENGTH = symbol("S", "strength of the straight rope", "N");
  private static final Symbol OUTER = symbol("D", "outer diameter", "m");
  private static final Symbol CAVITY = symbol("d", "diameter of the cavity", "m");
  private static final Symbol MOMENT = symbol("M", "bending moment", "N.m");
  private static final Symbol PRESSING = symbol("P", "axial force, pressing positive", "N");
  private static final Symbol AXIAL =
      new Symbol("N", "axial force, pulling positive", "N", Double.NEGATIVE_INFINITY, NO_LIMIT);
  private static final Symbol STRESS = symbol("s", "stress that is allowed", "Pa");

  /** LIM-1: the factor between capacity and demand. */
  public static final Formula FACTOR =
      Formula.of(
          "LIM-1",
          "f = C / D",
          symbol("f", "factor found", "1"),
          List.of(CAPACITY, symbol("D", "demand, in the unit of C", "N")),
          "a demand above zero",
          DEFINITION,
          x -> x[0] / x[1]);

  /** LIM-2: two losses multiplied. */
  public static final Formula STACKED =
      Formula.of(
          "LIM-2",
          "k = k_1 * k_2",
          KEPT,
          List.of(share("k_1", "share kept so far"), share("k_2", "share kept by the next")),
          "each loss takes off what the others left; a plan chooses it",
          PRACTICE,
          x -> x[0] * x[1]);

  /** LIM-3: the worst of two losses. */
  public static final Formula WORST =
      Formula.of(
          "LIM-3",
          "k = min(k_1, k_2)",
          KEPT,
          List.of(share("k_1", "least share so far"), share("k_2", "share kept by the next")),
          "the worst loss alone counts; a plan chooses it",
          PRACTICE,
          x -> Math.min(x[0], x[1]));

  /** LIM-4: strength that is left. */
  public static final Formula LEFT =
      Formula.of(
          "LIM-4",
          "C = k * S",
          symbol("C", "capacity", "N"),
          List.of(KEPT, STRENGTH),
          "as far as the stated shares hold",
          DEFINITION,
          x -> x[0] * x[1]);

  /** LIM-5: ratio of bend and rope. */
  public static final Formula BEND_RATIO =
      Formula.of(
          "LIM-5",
          "r = D / d",
          symbol("r", "ratio of bend and rope", "1"),
          List.of(
              symbol("D", "diameter of what the rope bends over", "m"),
              symbol("d", "diameter of the rope", "m")),
          "a round bend",
          DEFINITION,
          x -> x[0] / x[1]);

  /** LIM-6: a sling in a basket hitch. */
  public static final Formula BASKET =
      Formula.of(
          "LIM-6",
          "C = 2 * C_1 * cos(q / 2)",
          symbol("C", "capacity", "N"),
          List.of(
              STRAIGHT, new Symbol("q", "angle between the legs", "rad", 0, Math.toRadians(120))),
          "both legs pull alike, the force bisects them; no loss by the bend at either end",
          TWO_LEGS,
          x -> LimitKernel.basket(x[0], x[1]));

  /** LIM-7: what an angle of choke leaves. */
  public static final Formula CHOKE =
      Formula.of(
          "LIM-7",
          "k = 1 where c > 120 deg, 0.87 where c >= 90 deg, 0.74 where c >= 60 deg, 0.62 where c >= 30 deg, else 0.49",
          KEPT,
          List.of(new Symbol("c", "angle of choke", "rad", 0, Math.PI)),
          "of what the choker hitch takes above 120 deg; between the printed steps the lower one",
          CHOKE_TABLE,
          x -> LimitKernel.keptByChoke(x[0]));

  /** LIM-8: stress of the outermost fibre on the pressed side. */
  public static final Formula PRESSED =
      Formula.of(
          "LIM-8",
          "s = M / Z - N / A with Z = pi * (D^4 - d^4) / (32 * D), A = pi * (D^2 - d^2) / 4",
          symbol("s", "stress on the side that bending presses, pressed positive", "Pa"),
          List.of(AXIAL, MOMENT, OUTER, CAVITY),
          "round section, concentric cavity, linear elastic wood",
          SECTION,
          x -> LimitKernel.pressed(x[0], x[1], x[2], x[3]));

  /** LIM-9: stress of the outermost fibre on the pulled side. */
  public static final Formula PULLED =
      Formula.of(
          "LIM-9",
          "s = M / Z + N / A with Z = pi * (D^4 - d^4) / (32 * D), A = pi * (D^2 - d^2) / 4",
          symbol("s", "stress on the side that bending pulls, pulled positive", "Pa"),
          List.of(AXIAL, MOMENT, OUTER, CAVITY),
          "as LIM-8",
          SECTION,
          x -> LimitKernel.pressed(-x[0], x[1], x[2], x[3]));

  /** LIM-10: least diameter of solid wood. */
  public static final Formula LEAST_SOLID =
      Formula.of(
          "LIM-10",
          "D such that D^3 - 4 * P * D / (pi * s) - 32 * M / (pi * s) = 0",
          symbol("D", "least diameter", "m"),
          List.of(PRESSING, MOMENT, STRESS),
          "solid round section; its one positive root in closed form",
          SECTION,
          x -> LimitKernel.leastSolid(x[0], x[1], x[2]));

  /** LIM-11: least diameter about a cavity. */
  public static final Formula LEAST_HOLLOW =
      Formula.of(
          "LIM-11",
          "D such that M / Z + P / A = s with Z = pi * (D^4 - d^4) / (32 * D), A = pi * (D^2 - d^2) / 4",
          symbol("D", "least outer diameter", "m"),
          List.of(PRESSING, MOMENT, STRESS, CAVITY),
          "round section with a concentric cavity that stays as it is; the root, by trial",
          SECTION,
          x -> LimitKernel.leastHollow(x[0], x[1], x[2], x[3]));

  /** LIM-12: static capacity of a spar. */
  public static final Formula SPAR =
      Formula.of(
          "LIM-12",
          "F = pi / 4 * D^2 * (s_c - (H - 1) * rho * g) / (cos(a) + 8 * sin(a) * (H - 1) / D)",
          symbol("F", "greatest force at the anchor", "N"),
          List.of(
              symbol("D", "diameter 1 m above the ground", "m"),
              new Symbol("H", "height of the anchor", "m", 1, NO_LIMIT),
              symbol("s_c", "strength in compression", "Pa"),
              symbol("rho", "density", "kg/m3"),
              symbol("g", "acceleration of gravity", "m/s2"),
              new Symbol("a", "angle of the force from the stem's axis", "rad", 0, Math.PI / 2)),
          "plumb spar of one diameter, small movement, its own weight as that of a cylinder above"
              + " 1 m",
          RR668,
          x -> LimitKernel.spar(x[0], x[1], x[2], x[3], x[4], x[5]));

  private LimitFormulas() {}

  private static Symbol symbol(String name, String meaning, String unit) {
    return new Symbol(name, meaning, unit, 0, NO_LIMIT);
  }

  private static Symbol share(String name, String meaning) {
    return new Symbol(name, meaning, "1", 0, 1);
  }
}
