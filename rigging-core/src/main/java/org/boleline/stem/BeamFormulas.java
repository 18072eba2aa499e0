package org.boleline.stem;

import java.util.List;
import org.boleline.explain.Formula;
import org.boleline.explain.Source;
import org.boleline.explain.Source.Reading;
import org.boleline.explain.Symbol;

/**
 * The equations of a tapered round cantilever with a force at its tip.
 *
 * <p>Each holds its text, symbols, ranges, source and code. Ids are stable.
 */
public final class BeamFormulas {
  private static final double NO_LIMIT = Double.POSITIVE_INFINITY;

  private static final Source BEAM =
      new Source(
          "derived: beam equation",
          "bending moment over flexural rigidity, integrated along a round beam whose diameter"
              + " changes evenly",
          Reading.DERIVED);
  private static final Source FLEXURE =
      new Source(
          "flexure formula",
          "moment over section modulus, in texts on the strength of materials",
          Reading.FROM_MEMORY);

  private static final String SMALL =
      "small bending, linear elastic solid wood, force square to the axis, own weight left out";

  private static final Symbol FORCE = symbol("F", "force at the tip, square to the axis", "N");
  private static final Symbol LENGTH = symbol("L", "length", "m");
  private static final Symbol DISTANCE = symbol("a", "distance from the tip", "m");
  private static final Symbol BASE = symbol("D_b", "diameter at the base", "m");
  private static final Symbol TIP = symbol("D_t", "diameter at the tip", "m");
  private static final Symbol MODULUS = symbol("E", "modulus of elasticity", "Pa");

  /** BEA-1: moment at a distance from the tip. */
  public static final Formula MOMENT =
      Formula.of(
          "BEA-1",
          "M = F * a",
          symbol("M", "bending moment", "N.m"),
          List.of(FORCE, DISTANCE),
          SMALL,
          BEAM,
          x -> x[0] * x[1]);

  /** BEA-2: diameter at a distance from the tip. */
  public static final Formula DIAMETER =
      Formula.of(
          "BEA-2",
          "d = D_t + (D_b - D_t) * a / L",
          symbol("d", "diameter at the distance a", "m"),
          List.of(DISTANCE, LENGTH, BASE, TIP),
          "even taper",
          BEAM,
          x -> x[3] + (x[2] - x[3]) * x[0] / x[1]);

  /** BEA-3: stress of the outermost fibre. */
  public static final Formula STRESS =
      Formula.of(
          "BEA-3",
          "s = 32 * M / (pi * d^3)",
          symbol("s", "bending stress of the outermost fibre", "Pa"),
          List.of(symbol("M", "bending moment", "N.m"), symbol("d", "diameter there", "m")),
          "solid round section, linear elastic wood",
          FLEXURE,
          x -> 32 * x[0] / (Math.PI * (x[1] * x[1] * x[1])));

  /** BEA-4: where the stress is greatest. */
  public static final Formula GREATEST_AT =
      Formula.of(
          "BEA-4",
          "a = L * D_t / (2 * (D_b - D_t)) where 2 * D_b > 3 * D_t, else L",
          symbol("a", "distance from the tip to the greatest stress", "m"),
          List.of(LENGTH, BASE, TIP),
          "as BEA-1: where the diameter is one and a half times that of the tip, or at the base",
          BEAM,
          x -> 2 * x[1] > 3 * x[2] ? x[0] * x[2] / (2 * (x[1] - x[2])) : x[0]);

  /** BEA-5: the greatest stress above the base, by one formula. */
  public static final Formula GREATEST_STRESS =
      Formula.of(
          "BEA-5",
          "s = 128 * F * L / (27 * pi * (D_b - D_t) * D_t^2)",
          symbol("s", "greatest bending stress", "Pa"),
          List.of(FORCE, LENGTH, BASE, TIP),
          "as BEA-1, with D_b above 1.5 D_t",
          BEAM,
          x -> 128 * x[0] * x[1] / (27 * Math.PI * (x[2] - x[3]) * (x[3] * x[3])));

  /** BEA-6: deflection of the tip. */
  public static final Formula DEFLECTION =
      Formula.of(
          "BEA-6",
          "v = 64 * F * L^3 / (3 * pi * E * D_b^3 * D_t)",
          symbol("v", "deflection of the tip", "m"),
          List.of(FORCE, LENGTH, MODULUS, BASE, TIP),
          SMALL,
          BEAM,
          x ->
              64
                  * x[0]
                  * (x[1] * x[1] * x[1])
                  / (3 * Math.PI * x[2] * (x[3] * x[3] * x[3]) * x[4]));

  /** BEA-7: slope of the tip. */
  public static final Formula SLOPE =
      Formula.of(
          "BEA-7",
          "q = 32 * F * L^2 * (D_b + 2 * D_t) / (3 * pi * E * D_b^3 * D_t^2)",
          symbol("q", "slope of the tip", "rad"),
          List.of(FORCE, LENGTH, MODULUS, BASE, TIP),
          SMALL,
          BEAM,
          x ->
              32
                  * x[0]
                  * (x[1] * x[1])
                  * (x[3] + 2 * x[4])
                  / (3 * Math.PI * x[2] * (x[3] * x[3] * x[3]) * (x[4] * x[4])));

  private BeamFormulas() {}

  private static Symbol symbol(String name, String meaning, String unit) {
    return new Symbol(name, meaning, unit, 0, NO_LIMIT);
  }
}
