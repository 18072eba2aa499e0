package org.boleline.wood;

import java.util.List;
import org.boleline.explain.Formula;
import org.boleline.explain.Source;
import org.boleline.explain.Source.Reading;
import org.boleline.explain.Symbol;
import org.boleline.internal.section.LogKernel;
import org.boleline.internal.section.SectionKernel;

/**
 * The equations of green wood (WOO), of logs (LOG) and of round sections with a cavity (SEC).
 *
 * <p>Each holds its text, symbols, ranges, source and code. The types of this package get their
 * numbers from here. Ids are stable.
 */
public final class WoodFormulas {
  private static final double NO_LIMIT = Double.POSITIVE_INFINITY;

  private static final Source WOOD_HANDBOOK =
      new Source(
          "FPL-GTR-282 Ch. 4",
          "Forest Products Laboratory, Wood Handbook, FPL-GTR-282, 2021, Chapter 4, read in a"
              + " reprint",
          Reading.READ);
  private static final Source SHEAR_FOOTNOTE =
      new Source(
          "FPL-GTR-282 T5-3b footnote",
          "Forest Products Laboratory, Wood Handbook, FPL-GTR-282, 2021, Table 5-3b, footnote on the"
              + " modulus of elasticity, read in a reprint",
          Reading.READ);
  private static final Source SHEAR_MODULUS =
      Source.commonPractice("shear modulus of wood along the grain: modulus of elasticity over 16");
  private static final Source MIDDLE =
      new Source(
          "derived: middle",
          "the value that is never farther than half the interval from either end",
          Reading.DERIVED);
  private static final Source END_AREAS =
      new Source(
          "University of Missouri",
          "University of Missouri, page on forest measurement: formulas from the end areas",
          Reading.READ);
  private static final Source MENSURATION =
      new Source("mensuration texts", "texts on forest mensuration", Reading.FROM_MEMORY);
  private static final Source QUARTER_GIRTH =
      new Source(
          "quarter girth",
          "quarter-girth (Hoppus) measure; forestry notes from Nepal give it as 21.5 percent below"
              + " the full volume",
          Reading.READ);
  private static final Source EVEN_TAPER =
      new Source("derived: even taper", "diameter linear along the log", Reading.DERIVED);
  private static final Source MASS =
      new Source("definition: density", "density is mass over volume", Reading.DERIVED);
  private static final Source SUM = new Source("derived: sum", "sum of the parts", Reading.DERIVED);
  private static final Source NEWTON_LAW =
      new Source("definition: weight", "weight is mass times gravity", Reading.DERIVED);
  private static final Source FRUSTUM_CENTROID =
      new Source(
          "derived: centroid of a frustum",
          "standard solid: first moment over volume of a cone frustum, integrated",
          Reading.DERIVED);
  private static final Source AREA_INTEGRALS =
      new Source(
          "derived: parallel axes",
          "circle less circle by the theorem of parallel axes; checked by numeric integration",
          Reading.DERIVED);
  private static final Source SKEW_BENDING =
      new Source(
          "derived: skew bending",
          "stress of both principal bendings added, greatest on the outer circle; checked by search",
          Reading.DERIVED);
  private static final Source RATIO =
      new Source("derived: ratio", "ratio to solid wood of the same diameter", Reading.DERIVED);

  private static final Source WAGENER =
      new Source(
          "Wagener 1963",
          "Wagener 1963, in a table of Arboriculture & Urban Forestry whose numbers fix the power",
          Reading.READ);

  private static final Source CODER =
      new Source(
          "Coder 1989",
          "Coder 1989, in a table of Arboriculture & Urban Forestry whose numbers fix the power",
          Reading.READ);

  private static final Source SMILEY_FRAEDRICH =
      new Source(
          "Smiley & Fraedrich 1992",
          "Smiley and Fraedrich 1992, in a table of Arboriculture & Urban Forestry whose numbers fix"
              + " the power",
          Reading.READ);

  private static final Source MATTHECK =
      new Source(
          "Mattheck et al. 1992",
          "Mattheck and others 1992, in a table of Arboriculture & Urban Forestry",
          Reading.READ);

  private static final String ROUND_LOG = "round log, its length along the axis; without bark";
  private static final String PLANE_SECTION =
      "round outside, one round closed cavity, sound wood of one kind around it; plane sections stay"
          + " plane. Left out: cracks, and a thin shell that buckles or goes out of round first";
  private static final String INDEX_ONLY =
      "a published index, read from two diameters as if the cavity were at the centre; not the loss"
          + " of strength of this section. Kane and Ryan (2004) found real losses to differ from"
          + " such indices";

  private static final Symbol LENGTH = new Symbol("L", "length of the log", "m", 0, NO_LIMIT);
  private static final Symbol LARGE =
      new Symbol("D", "diameter of the large end", "m", 0, NO_LIMIT);
  private static final Symbol SMALL =
      new Symbol("d", "diameter of the small end", "m", 0, NO_LIMIT);
  private static final Symbol MIDDLE_DIAMETER =
      new Symbol("m", "diameter half-way along", "m", 0, NO_LIMIT);
  private static final Symbol VOLUME = new Symbol("V", "volume", "m3", 0, NO_LIMIT);
  private static final Symbol LOG_MASS = new Symbol("M", "mass of the log", "kg", 0, NO_LIMIT);
  private static final Symbol STATION =
      new Symbol("z", "distance from the large end", "m", 0, NO_LIMIT);

  private static final Symbol OUTER = new Symbol("D", "outer diameter", "m", 0, NO_LIMIT);
  private static final Symbol CAVITY = new Symbol("d", "diameter of the cavity", "m", 0, NO_LIMIT);
  private static final Symbol OFFSET =
      new Symbol("e", "centre of the cavity from the outer centre", "m", 0, NO_LIMIT);
  private static final Symbol CENTROID =
      new Symbol(
          "x_c", "centroid from the outer centre, toward the cavity", "m", -NO_LIMIT, NO_LIMIT);
  private static final Symbol LEAST_I =
      new Symbol("I_min", "least second moment of area", "m4", 0, NO_LIMIT);
  private static final Symbol GREATEST_I =
      new Symbol("I_max", "greatest second moment of area", "m4", 0, NO_LIMIT);
  private static final Symbol LEAST_W =
      new Symbol("W_min", "least section modulus", "m3", 0, NO_LIMIT);
  private static final Symbol OPENING_SHARE =
      new Symbol("r", "opening over circumference", "1", 0, 1);

  /** WOO-1: green density from basic specific gravity and moisture. */
  public static final Formula GREEN_DENSITY =
      Formula.of(
          "WOO-1",
          "rho = 1000 * Gb * (1 + MC / 100)",
          new Symbol("rho", "green density", "kg/m3", 0, NO_LIMIT),
          List.of(
              new Symbol("Gb", "oven-dry mass over green volume, over water", "1", 0.29, 0.80),
              new Symbol("MC", "moisture in percent of the oven-dry mass", "%", 30, 250)),
          "Gb 0.29 to 0.80: the species tabulated; MC from 30, fibre saturation, above which wood"
              + " keeps its volume and its strength, to 250, the wettest sapwood tabulated. Without"
              + " bark",
          WOOD_HANDBOOK,
          x -> 1000 * x[0] * (1 + x[1] / 100));

  /** WOO-2: modulus of elasticity free of shear, from the tabulated one. */
  public static final Formula SHEAR_FREE_MODULUS =
      Formula.of(
          "WOO-2",
          "E = 1.10 * E_a",
          new Symbol("E", "modulus of elasticity for bending without shear", "Pa", 0, NO_LIMIT),
          List.of(
              new Symbol(
                  "E_a", "modulus as tabulated, from centre-loaded beams", "Pa", 0, NO_LIMIT)),
          "small clear beams loaded at the centre, span 14 times the depth",
          SHEAR_FOOTNOTE,
          x -> 1.10 * x[0]);

  /** WOO-3: shear modulus where none is stated. */
  public static final Formula SHEAR_MODULUS_DEFAULT =
      Formula.of(
          "WOO-3",
          "G = E / 16",
          new Symbol("G", "shear modulus along the grain", "Pa", 0, NO_LIMIT),
          List.of(new Symbol("E", "modulus of elasticity", "Pa", 0, NO_LIMIT)),
          "wood along the grain, as an order of size",
          SHEAR_MODULUS,
          x -> x[0] / 16);

  /** WOO-4: middle of the interval of green densities. */
  public static final Formula MIDDLE_DENSITY =
      Formula.of(
          "WOO-4",
          "rho = (rho_least + rho_most) / 2",
          new Symbol("rho", "green density taken", "kg/m3", 0, NO_LIMIT),
          List.of(
              new Symbol("rho_least", "least green density known", "kg/m3", 0, NO_LIMIT),
              new Symbol("rho_most", "greatest green density known", "kg/m3", 0, NO_LIMIT)),
          "stands for a log of unknown shares of heartwood and sapwood",
          MIDDLE,
          x -> (x[0] + x[1]) / 2);

  /** LOG-1: volume of a cone frustum, the default. */
  public static final Formula CONE_FRUSTUM =
      Formula.of(
          "LOG-1",
          "V = pi / 12 * L * (D^2 + D * d + d^2)",
          VOLUME,
          List.of(LENGTH, LARGE, SMALL),
          ROUND_LOG + "; even taper",
          END_AREAS,
          x -> LogKernel.coneFrustum(x[0], x[1], x[2]));

  /** LOG-2: Smalian's volume. */
  public static final Formula SMALIAN =
      Formula.of(
          "LOG-2",
          "V = pi / 8 * L * (D^2 + d^2)",
          VOLUME,
          List.of(LENGTH, LARGE, SMALL),
          ROUND_LOG + "; exact for a paraboloid, too much for a cone frustum",
          END_AREAS,
          x -> LogKernel.smalian(x[0], x[1], x[2]));

  /** LOG-3: Huber's volume. */
  public static final Formula HUBER =
      Formula.of(
          "LOG-3",
          "V = pi / 4 * L * m^2",
          VOLUME,
          List.of(LENGTH, MIDDLE_DIAMETER),
          ROUND_LOG + "; exact for a paraboloid, too little for a cone frustum",
          MENSURATION,
          x -> LogKernel.huber(x[0], x[1]));

  /** LOG-4: Newton's volume. */
  public static final Formula NEWTON =
      Formula.of(
          "LOG-4",
          "V = pi / 24 * L * (D^2 + 4 * m^2 + d^2)",
          VOLUME,
          List.of(LENGTH, LARGE, MIDDLE_DIAMETER, SMALL),
          ROUND_LOG + "; exact for cone frustum, paraboloid and neiloid with their own middle",
          MENSURATION,
          x -> LogKernel.newton(x[0], x[1], x[2], x[3]));

  /** LOG-5: volume of a frustum of a neiloid. */
  public static final Formula NEILOID =
      Formula.of(
          "LOG-5",
          "V = pi / 16 * L * (D^2 + (D^4 * d^2)^(1 / 3) + (D^2 * d^4)^(1 / 3) + d^2)",
          VOLUME,
          List.of(LENGTH, LARGE, SMALL),
          ROUND_LOG + "; butts that flare",
          END_AREAS,
          x -> LogKernel.neiloid(x[0], x[1], x[2]));

  /** LOG-6: Hoppus volume. */
  public static final Formula HOPPUS =
      Formula.of(
          "LOG-6",
          "V = L * (pi * m / 4)^2",
          VOLUME,
          List.of(LENGTH, MIDDLE_DIAMETER),
          ROUND_LOG + "; a trade measure 21.5 percent below the real volume: never for weight",
          QUARTER_GIRTH,
          x -> LogKernel.quarterGirth(x[0], x[1]));

  /** LOG-7: diameter along an even taper. */
  public static final Formula DIAMETER_ALONG =
      Formula.of(
          "LOG-7",
          "d_z = D + (d - D) * z / L",
          new Symbol("d_z", "diameter there", "m", 0, NO_LIMIT),
          List.of(LENGTH, LARGE, SMALL, STATION),
          "even taper",
          EVEN_TAPER,
          x -> LogKernel.diameterAt(x[0], x[1], x[2], x[3]));

  /** LOG-8: mass of a log. */
  public static final Formula LOG_MASS_FROM_VOLUME =
      Formula.of(
          "LOG-8",
          "M = rho * V",
          LOG_MASS,
          List.of(new Symbol("rho", "density of the wood", "kg/m3", 0, NO_LIMIT), VOLUME),
          "one density throughout; without bark, twigs and leaves",
          MASS,
          x -> x[0] * x[1]);

  /** LOG-9: weight of a log. */
  public static final Formula LOG_WEIGHT =
      Formula.of(
          "LOG-9",
          "W = M * g",
          new Symbol("W", "weight", "N", 0, NO_LIMIT),
          List.of(LOG_MASS, new Symbol("g", "gravity", "m/s2", 0, NO_LIMIT)),
          "at rest",
          NEWTON_LAW,
          x -> x[0] * x[1]);

  /** LOG-10: balance point of a tapered log. */
  public static final Formula BALANCE_POINT =
      Formula.of(
          "LOG-10",
          "z = L / 4 * (D^2 + 2 * D * d + 3 * d^2) / (D^2 + D * d + d^2)",
          new Symbol("z", "balance point from the large end", "m", 0, NO_LIMIT),
          List.of(LENGTH, LARGE, SMALL),
          ROUND_LOG + "; even taper, one density, no branches",
          FRUSTUM_CENTROID,
          x -> LogKernel.balancePoint(x[0], x[1], x[2]));

  /** LOG-11: mass of a log with its twigs and leaves. */
  public static final Formula MASS_WITH_FOLIAGE =
      Formula.of(
          "LOG-11",
          "M_all = M + M_f",
          new Symbol("M_all", "mass of the piece", "kg", 0, NO_LIMIT),
          List.of(
              LOG_MASS, new Symbol("M_f", "mass of branches, twigs and leaves", "kg", 0, NO_LIMIT)),
          "both masses as stated",
          SUM,
          x -> x[0] + x[1]);

  /** SEC-1: area of the wood. */
  public static final Formula AREA =
      Formula.of(
          "SEC-1",
          "A = pi / 4 * (D^2 - d^2)",
          new Symbol("A", "area of the wood", "m2", 0, NO_LIMIT),
          List.of(OUTER, CAVITY),
          "round outside, one round cavity",
          AREA_INTEGRALS,
          x -> SectionKernel.area(x[0], x[1]));

  /** SEC-2: centroid. */
  public static final Formula CENTROID_POSITION =
      Formula.of(
          "SEC-2",
          "x_c = -d^2 * e / (D^2 - d^2)",
          CENTROID,
          List.of(OUTER, CAVITY, OFFSET),
          "round outside, one round cavity",
          AREA_INTEGRALS,
          x -> SectionKernel.centroid(x[0], x[1], x[2]));

  /** SEC-3: greatest second moment of area, about the line through both centres. */
  public static final Formula GREATEST_SECOND_MOMENT =
      Formula.of(
          "SEC-3",
          "I_max = pi / 64 * (D^4 - d^4)",
          GREATEST_I,
          List.of(OUTER, CAVITY),
          PLANE_SECTION,
          AREA_INTEGRALS,
          x -> SectionKernel.greatestSecondMoment(x[0], x[1]));

  /** SEC-4: least second moment of area, about the line across, through the centroid. */
  public static final Formula LEAST_SECOND_MOMENT =
      Formula.of(
          "SEC-4",
          "I_min = pi / 64 * (D^4 - d^4) - pi / 4 * d^2 * e^2 * D^2 / (D^2 - d^2)",
          LEAST_I,
          List.of(OUTER, CAVITY, OFFSET),
          PLANE_SECTION,
          AREA_INTEGRALS,
          x -> SectionKernel.leastSecondMoment(x[0], x[1], x[2]));

  /** SEC-5: section modulus in the worst direction. */
  public static final Formula LEAST_MODULUS =
      Formula.of(
          "SEC-5",
          "W_min = I_min / (D / 2 - x_c)",
          LEAST_W,
          List.of(LEAST_I, OUTER, CENTROID),
          PLANE_SECTION,
          SKEW_BENDING,
          x -> SectionKernel.leastModulus(x[1], x[0], x[2]));

  /** SEC-6: section modulus for bending in a given direction. */
  public static final Formula MODULUS =
      Formula.of(
          "SEC-6",
          "W = 1 / (D / 2 * sqrt((cos(q) / I_min)^2 + (sin(q) / I_max)^2) + |x_c * cos(q)| / I_min)",
          new Symbol("W", "section modulus", "m3", 0, NO_LIMIT),
          List.of(
              OUTER,
              new Symbol("q", "plane of bending from the cavity", "rad", -NO_LIMIT, NO_LIMIT),
              LEAST_I,
              GREATEST_I,
              CENTROID),
          PLANE_SECTION,
          SKEW_BENDING,
          x -> SectionKernel.modulus(x[0], x[1], x[2], x[3], x[4]));

  /** SEC-7: area left. */
  public static final Formula AREA_SHARE =
      Formula.of(
          "SEC-7",
          "a = 1 - (d / D)^2",
          new Symbol("a", "area over that of solid wood", "1", 0, 1),
          List.of(OUTER, CAVITY),
          "round outside, one round cavity",
          RATIO,
          x -> SectionKernel.area(x[0], x[1]) / SectionKernel.area(x[0], 0));

  /** SEC-8: second moment of area left. */
  public static final Formula SECOND_MOMENT_SHARE =
      Formula.of(
          "SEC-8",
          "i = I_min / (pi / 64 * D^4)",
          new Symbol("i", "least second moment over that of solid wood", "1", 0, 1),
          List.of(LEAST_I, OUTER),
          PLANE_SECTION,
          RATIO,
          x -> x[0] / SectionKernel.greatestSecondMoment(x[1], 0));

  /** SEC-9: section modulus left. */
  public static final Formula MODULUS_SHARE =
      Formula.of(
          "SEC-9",
          "w = W_min / (pi / 32 * D^3)",
          new Symbol("w", "least section modulus over that of solid wood", "1", 0, 1),
          List.of(LEAST_W, OUTER),
          PLANE_SECTION,
          RATIO,
          x ->
              x[0]
                  / SectionKernel.leastModulus(
                      x[1], SectionKernel.greatestSecondMoment(x[1], 0), 0));

  /** SEC-10: loss from what is left. */
  public static final Formula LOSS =
      Formula.of(
          "SEC-10",
          "loss = 1 - left",
          new Symbol("loss", "share lost", "1", 0, 1),
          List.of(new Symbol("left", "share left", "1", 0, 1)),
          "shares of solid wood of the same diameter",
          RATIO,
          x -> 1 - x[0]);

  /** SEC-11: thinnest shell over radius. */
  public static final Formula SHELL_RATIO =
      Formula.of(
          "SEC-11",
          "s = ((D - d) / 2 - e) / (D / 2)",
          new Symbol("s", "thinnest sound shell over radius", "1", 0, 1),
          List.of(OUTER, CAVITY, OFFSET),
          "a published rule for a closed cavity; it tells neither area nor strength left",
          MATTHECK,
          x -> SectionKernel.leastShell(x[0], x[1], x[2]) / (x[0] / 2));

  /** SEC-12: share of the circumference that an opening takes. */
  public static final Formula OPENING_RATIO =
      Formula.of(
          "SEC-12",
          "r = w / (pi * D)",
          OPENING_SHARE,
          List.of(new Symbol("w", "width of the opening along the bark", "m", 0, NO_LIMIT), OUTER),
          "one opening into the cavity",
          MATTHECK,
          x -> x[0] / (Math.PI * x[1]));

  /** SEC-13: Wagener's index. */
  public static final Formula WAGENER_INDEX =
      Formula.of(
          "SEC-13",
          "k = (d / D)^3",
          new Symbol("k", "Wagener's index", "1", 0, 1),
          List.of(OUTER, CAVITY),
          INDEX_ONLY,
          WAGENER,
          x -> cube(x[1] / x[0]));

  /** SEC-14: Coder's index. */
  public static final Formula CODER_INDEX =
      Formula.of(
          "SEC-14",
          "k = (d / D)^4",
          new Symbol("k", "Coder's index", "1", 0, 1),
          List.of(OUTER, CAVITY),
          INDEX_ONLY
              + ". With the cavity at the centre this power is the loss of second moment of area and"
              + " of section modulus",
          CODER,
          x -> cube(x[1] / x[0]) * (x[1] / x[0]));

  /** SEC-15: the index of Smiley and Fraedrich. */
  public static final Formula SMILEY_FRAEDRICH_INDEX =
      Formula.of(
          "SEC-15",
          "k = (d^3 + r * (D^3 - d^3)) / D^3",
          new Symbol("k", "index of Smiley and Fraedrich", "1", 0, 1),
          List.of(OUTER, CAVITY, OPENING_SHARE),
          INDEX_ONLY,
          SMILEY_FRAEDRICH,
          x -> {
            double wagener = cube(x[1] / x[0]);
            return wagener + x[2] * (1 - wagener);
          });

  private WoodFormulas() {}

  private static double cube(double x) {
    return x * x * x;
  }

  /**
   * Returns all equations of this class.
   *
   * @return the equations, in the order of their ids
   */
  public static List<Formula> all() {
    return List.of(
        GREEN_DENSITY,
        SHEAR_FREE_MODULUS,
        SHEAR_MODULUS_DEFAULT,
        MIDDLE_DENSITY,
        CONE_FRUSTUM,
        SMALIAN,
        HUBER,
        NEWTON,
        NEILOID,
        HOPPUS,
        DIAMETER_ALONG,
        LOG_MASS_FROM_VOLUME,
        LOG_WEIGHT,
        BALANCE_POINT,
        MASS_WITH_FOLIAGE,
        AREA,
        CENTROID_POSITION,
        GREATEST_SECOND_MOMENT,
        LEAST_SECOND_MOMENT,
        LEAST_MODULUS,
        MODULUS,
        AREA_SHARE,
        SECOND_MOMENT_SHARE,
        MODULUS_SHARE,
        LOSS,
        SHELL_RATIO,
        OPENING_RATIO,
        WAGENER_INDEX,
        CODER_INDEX,
        SMILEY_FRAEDRICH_INDEX);
  }
}
