package org.boleline.rope;

import java.util.List;
import org.boleline.explain.Formula;
import org.boleline.explain.Source;
import org.boleline.explain.Source.Reading;
import org.boleline.explain.Symbol;
import org.boleline.internal.friction.FrictionKernel;
import org.boleline.internal.friction.LegKernel;

/**
 * The equations of rope friction, of the force on a point between two legs, and of tackles.
 *
 * <p>Each holds its text, symbols, ranges, source and code. The types of this package get their
 * numbers from here. Ids are stable.
 */
public final class FrictionFormulas {
  private static final double NO_LIMIT = Double.POSITIVE_INFINITY;

  /** How far above a half or a whole number of wraps still counts as that number. */
  private static final double WRAP_ROUNDING = 1e-9;

  private static final Source EULER_EYTELWEIN =
      new Source(
          "Euler-Eytelwein",
          "belt friction law of Euler and Eytelwein, in statics texts",
          Reading.READ);
  private static final Source PIN_BALANCE =
      new Source(
          "derived: pin balance",
          "moment balance about the pin, friction moment a fixed share of the force on the pin",
          Reading.DERIVED);
  private static final Source DELANEY =
      new Source(
          "Delaney 2022", "Delaney, Physics for Roping Technicians, 2022, pp. 82-88", Reading.READ);
  private static final Source V_BELTS =
      new Source("V-belt texts", "statics and belt texts", Reading.FROM_MEMORY);
  private static final Source HELIX_GEOMETRY =
      new Source(
          "derived: helix", "curvature cos(b)^2 / r over a length r f / cos(b)", Reading.DERIVED);
  private static final Source LIMIT_OF_SLIP =
      new Source("derived: limit of slip", "definition of the tension ratio", Reading.DERIVED);
  private static final Source LOAD_DEPENDENT =
      new Source(
          "derived: Howell-type law",
          "friction for each length grows with the n-th power of tension over radius (law of that"
              + " kind by Howell, from memory), integrated over the turn",
          Reading.DERIVED);
  private static final Source TWO_VECTORS =
      new Source("derived: vector sum", "sum of the two tensions along the legs", Reading.DERIVED);
  private static final Source TREE_RESCUE =
      new Source(
          "Arboriculture Australia 2022",
          "Arboriculture Australia, Tree rescue manual, 2022, pp. 116-118",
          Reading.READ);
  private static final Source TACKLE_TABLES =
      new Source(
          "rigging handbooks",
          "Wire Rope Users Manual, 4th ed., p. 88; Pipeline Rules of Thumb Handbook, p. 6; tables of"
              + " parts of line in rigging handbooks",
          Reading.READ);
  private static final Source NAVAL_RULE =
      new Source(
          "US Navy Builder 2&3",
          "US Navy, Builder 2&3 training manual, tackle section",
          Reading.READ);

  private static final String FRICTION_RANGE =
      "mu 0.05 to 0.6: the least measured in blocks (Donzelli 1999), the most assumed for rope on"
          + " bark (from memory); rope on smooth metal is measured at 0.14 to 0.25 (Delaney 2022)";
  private static final String TURN_RANGE =
      "w up to 12 pi: six wraps, the longest printed table (Delaney 2022)";

  private static final Symbol RATIO =
      new Symbol("t", "tight-side over slack-side tension", "1", 1, NO_LIMIT);
  private static final Symbol FRICTION =
      new Symbol("mu", "coefficient of friction", "1", 0.05, 0.6);
  private static final Symbol TURN = new Symbol("w", "turn of the rope", "rad", 0, 12 * Math.PI);
  private static final Symbol TIGHT = force("T_tight", "tension on the tight side");
  private static final Symbol SLACK = force("T_slack", "tension on the slack side");
  private static final Symbol LINE_LOAD =
      new Symbol("p", "tension over radius at which mu was found", "N/m", 0, NO_LIMIT);
  private static final Symbol EXPONENT =
      new Symbol("n", "exponent of the load in the friction force", "1", 0.5, 1);
  private static final Symbol CONTACT_RADIUS =
      new Symbol("r", "radius of the contact", "m", 0, NO_LIMIT);
  private static final Symbol FIRST = force("T1", "tension of the first leg");
  private static final Symbol SECOND = force("T2", "tension of the second leg");
  private static final Symbol LEGS = new Symbol("q", "angle between the legs", "rad", 0, Math.PI);
  private static final Symbol RAISING =
      force("T_raise", "tension at the hand that just raises the load");
  private static final Symbol LOWERING =
      force("T_lower", "tension at the hand that just lets the load down");
  private static final Symbol EFFICIENCY =
      new Symbol("e", "slack over tight tension of a sheave at a half turn", "1", 0.8, 1);
  private static final Symbol PARTS = new Symbol("n", "parts of line at the load", "1", 1, 12);

  /** FRI-1: tension ratio without friction. */
  public static final Formula NO_FRICTION =
      Formula.of(
          "FRI-1",
          "t = 1",
          RATIO,
          List.of(),
          "the limit of no friction, at any turn",
          LIMIT_OF_SLIP,
          x -> FrictionKernel.ratio(FrictionKernel.IDEAL, 0, 0));

  /** FRI-2: tension ratio over a fixed round contact. */
  public static final Formula CAPSTAN =
      Formula.of(
          "FRI-2",
          "t = exp(mu * w)",
          RATIO,
          List.of(FRICTION, TURN),
          FRICTION_RANGE
              + "; "
              + TURN_RANGE
              + ". Left out: bending stiffness and weight of the rope, speed, wear",
          EULER_EYTELWEIN,
          x -> FrictionKernel.ratio(FrictionKernel.ROUND, x[0], x[1]));

  /** FRI-3: tension ratio over a turning sheave. */
  public static final Formula SHEAVE =
      Formula.of(
          "FRI-3",
          "t = (h + sqrt(1 + h^2))^2 with h = (1 - e) / (2 * sqrt(e)) * |sin(w / 2)|",
          RATIO,
          List.of(EFFICIENCY, new Symbol("w", "turn of the rope", "rad", 0, Math.PI)),
          "e 0.8 to 1: published figures for plain to ball bearings (trade tables); w up to pi, the"
              + " rope doubled back. Left out: weight of the sheave, a sheave that does not spin up",
          PIN_BALANCE,
          x -> FrictionKernel.ratio(FrictionKernel.SHEAVE, x[0], x[1]));

  /** FRI-4: friction that stands for a V-groove. */
  public static final Formula V_GROOVE =
      Formula.of(
          "FRI-4",
          "mu_v = mu / sin(a)",
          new Symbol("mu_v", "friction that stands for the groove", "1", 0, NO_LIMIT),
          List.of(
              FRICTION,
              new Symbol("a", "half of the angle between the flanks", "rad", 0, Math.PI / 2)),
          FRICTION_RANGE + ". Rope bears on both flanks and not on the bottom",
          V_BELTS,
          x -> FrictionKernel.vGroove(x[0], x[1]));

  /** FRI-5: turn of a helical wrap. */
  public static final Formula HELIX_TURN =
      Formula.of(
          "FRI-5",
          "w = f * cos(b)",
          new Symbol("w", "turn of the rope", "rad", 0, NO_LIMIT),
          List.of(
              new Symbol("f", "azimuth swept around the cylinder", "rad", 0, NO_LIMIT),
              new Symbol("b", "lead angle of the helix", "rad", 0, Math.PI / 2)),
          "steady helix on a round cylinder",
          HELIX_GEOMETRY,
          x -> FrictionKernel.helixTurn(x[0], x[1]));

  /** FRI-6: slack-side tension from the tight side. */
  public static final Formula SLACK_TENSION =
      Formula.of(
          "FRI-6",
          "T_slack = T_tight / t",
          SLACK,
          List.of(TIGHT, RATIO),
          "about to slip toward the tight side",
          LIMIT_OF_SLIP,
          x -> x[0] / x[1]);

  /** FRI-7: tight-side tension from the slack side. */
  public static final Formula TIGHT_TENSION =
      Formula.of(
          "FRI-7",
          "T_tight = T_slack * t",
          TIGHT,
          List.of(SLACK, RATIO),
          "about to slip toward the tight side",
          LIMIT_OF_SLIP,
          x -> x[0] * x[1]);

  /** FRI-8: friction at one tension where it depends on the load. */
  public static final Formula LOAD_DEPENDENT_FRICTION =
      Formula.of(
          "FRI-8",
          "mu_T = mu * (T / (r * p))^(n - 1)",
          new Symbol("mu_T", "coefficient of friction at the tension T", "1", 0, NO_LIMIT),
          List.of(
              new Symbol("T", "tension of the rope", "N", 0, NO_LIMIT),
              FRICTION,
              LINE_LOAD,
              EXPONENT,
              CONTACT_RADIUS),
          FRICTION_RANGE + ". n 0.5 to 1 (from memory)",
          LOAD_DEPENDENT,
          x -> FrictionKernel.loadDependentFriction(x[0], x[1], x[2], x[3], x[4]));

  /** FRI-9: tight-side tension where friction depends on the load. */
  public static final Formula LOAD_DEPENDENT_TIGHT =
      Formula.of(
          "FRI-9",
          "T_tight = T_slack * exp(mu * w) where n = 1, else (T_slack^(1 - n) + (1 - n) * mu * (p * r)^(1 - n) * w)^(1 / (1 - n))",
          TIGHT,
          List.of(SLACK, FRICTION, LINE_LOAD, EXPONENT, CONTACT_RADIUS, TURN),
          FRICTION_RANGE + "; " + TURN_RANGE + ". n 0.5 to 1 (from memory)",
          LOAD_DEPENDENT,
          x -> FrictionKernel.loadDependentTight(x[0], x[1], x[2], x[3], x[4], x[5]));

  /** FRI-10: slack-side tension where friction depends on the load. */
  public static final Formula LOAD_DEPENDENT_SLACK =
      Formula.of(
          "FRI-10",
          "T_slack = T_tight / exp(mu * w) where n = 1, else max(0, T_tight^(1 - n) - (1 - n) * mu * (p * r)^(1 - n) * w)^(1 / (1 - n))",
          SLACK,
          List.of(TIGHT, FRICTION, LINE_LOAD, EXPONENT, CONTACT_RADIUS, TURN),
          FRICTION_RANGE + "; " + TURN_RANGE + ". n 0.5 to 1 (from memory)",
          LOAD_DEPENDENT,
          x -> FrictionKernel.loadDependentSlack(x[0], x[1], x[2], x[3], x[4], x[5]));

  /** FRI-11: wraps that bring a tension down to a hand force. */
  public static final Formula WRAPS_NEEDED =
      Formula.of(
          "FRI-11",
          "n = max(0, ln(T_tight / T_hand) / (2 * pi * mu) - w / (2 * pi))",
          wraps("n", "wraps needed"),
          List.of(
              TIGHT,
              force("T_hand", "tension that the hand holds"),
              FRICTION,
              new Symbol("w", "turn at the device besides the wraps", "rad", 0, 12 * Math.PI)),
          FRICTION_RANGE + "; about to run",
          EULER_EYTELWEIN,
          x -> Math.max(0, (Math.log(x[0] / x[1]) / x[2] - x[3]) / (2 * Math.PI)));

  /** FRI-12: the next half number of wraps. */
  public static final Formula NEXT_HALF_WRAPS =
      Formula.of(
          "FRI-12",
          "n_half = ceil(2 * n) / 2",
          wraps("n_half", "wraps, to the next half"),
          List.of(wraps("n", "wraps needed")),
          "a billionth of a wrap above a half counts as that half",
          Source.commonPractice("wraps are laid in halves"),
          x -> Math.max(0, Math.ceil(2 * x[0] - WRAP_ROUNDING) / 2));

  /** FRI-13: the next whole number of wraps. */
  public static final Formula NEXT_WHOLE_WRAPS =
      Formula.of(
          "FRI-13",
          "n_whole = ceil(n)",
          wraps("n_whole", "wraps, to the next whole one"),
          List.of(wraps("n", "wraps needed")),
          "a billionth of a wrap above a whole one counts as that one",
          Source.commonPractice("wraps are laid whole"),
          x -> Math.max(0, Math.ceil(x[0] - WRAP_ROUNDING)));

  /** FRI-14: friction from the tensions that raise and lower the same load. */
  public static final Formula FRICTION_FROM_PAIR =
      Formula.of(
          "FRI-14",
          "mu = ln(T_raise / T_lower) / (2 * w)",
          FRICTION,
          List.of(RAISING, LOWERING, TURN),
          "one load, one turn, slow and steady both ways; friction the same both ways",
          DELANEY,
          x -> Math.log(x[0] / x[1]) / (2 * x[2]));

  /** FRI-15: the load from the tensions that raise and lower it. */
  public static final Formula LOAD_FROM_PAIR =
      Formula.of(
          "FRI-15",
          "T_load = sqrt(T_raise * T_lower)",
          force("T_load", "tension of the load"),
          List.of(RAISING, LOWERING),
          "as FRI-14; the turn and the friction need not be known",
          LIMIT_OF_SLIP,
          x -> Math.sqrt(x[0]) * Math.sqrt(x[1]));

  /** FOR-1: force of two legs on the point between them. */
  public static final Formula TWO_LEG_FORCE =
      Formula.of(
          "FOR-1",
          "R = sqrt(T1^2 + T2^2 + 2 * T1 * T2 * cos(q))",
          force("R", "force on the point"),
          List.of(FIRST, SECOND, LEGS),
          "straight legs, weight of the rope left out",
          TWO_VECTORS,
          x -> LegKernel.magnitude(x[0], x[1], x[2]));

  /** FOR-2: direction of the force of two legs. */
  public static final Formula TWO_LEG_DIRECTION =
      Formula.of(
          "FOR-2",
          "d = atan2(T2 * sin(q), T1 + T2 * cos(q))",
          new Symbol("d", "angle from the first leg to the force", "rad", 0, Math.PI),
          List.of(FIRST, SECOND, LEGS),
          "as FOR-1; half of q where there is no tension",
          TWO_VECTORS,
          x -> LegKernel.angleFromFirst(x[0], x[1], x[2]));

  /** FOR-3: the textbook multiplier for equal tensions. */
  public static final Formula EQUAL_TENSION_MULTIPLIER =
      Formula.of(
          "FOR-3",
          "k = 2 * cos(q / 2)",
          new Symbol("k", "force on the point over rope tension", "1", 0, 2),
          List.of(LEGS),
          "equal tensions only: no friction at the point",
          TREE_RESCUE,
          x -> 2 * Math.cos(x[0] / 2));

  /** FOR-4: force of two legs of equal tension. */
  public static final Formula EQUAL_TENSION_FORCE =
      Formula.of(
          "FOR-4",
          "R = k * T",
          force("R", "force on the point"),
          List.of(
              force("T", "tension of both legs"),
              new Symbol("k", "force on the point over rope tension", "1", 0, 2)),
          "as FOR-3",
          TREE_RESCUE,
          x -> x[1] * x[0]);

  /** SHV-1: share of the pin force that a plain bearing takes. */
  public static final Formula PLAIN_BEARING_DRAG =
      Formula.of(
          "SHV-1",
          "c = r_axle / (r_tread + r_rope) * sin(atan(mu))",
          new Symbol("c", "tight less slack tension over the force on the pin", "1", 0, 1),
          List.of(
              new Symbol("r_axle", "radius of the axle", "m", 0, NO_LIMIT),
              new Symbol("r_tread", "radius of the sheave's tread", "m", 0, NO_LIMIT),
              new Symbol("r_rope", "radius of the rope", "m", 0, NO_LIMIT),
              new Symbol("mu", "coefficient of friction in the bearing", "1", 0.04, 0.3)),
          "mu 0.04 to 0.3: the lower end measured in blocks (Donzelli 1999), the upper end from"
              + " memory. Plain bearing; weight of the sheave left out",
          PIN_BALANCE,
          x -> x[0] / (x[1] + x[2]) * Math.sin(Math.atan(x[3])));

  /** SHV-2: efficiency of a sheave from its drag. */
  public static final Formula EFFICIENCY_FROM_DRAG =
      Formula.of(
          "SHV-2",
          "e = (1 - c) / (1 + c)",
          EFFICIENCY,
          List.of(new Symbol("c", "tight less slack tension over the force on the pin", "1", 0, 1)),
          "half turn, legs parallel: the force on the pin is the sum of both tensions",
          PIN_BALANCE,
          x -> (1 - x[0]) / (1 + x[0]));

  /** TAC-1: load over line pull of a tackle whose sheaves each take their share in turn. */
  public static final Formula TACKLE_RATIO =
      Formula.of(
          "TAC-1",
          "m = e^s * (e + e^2 + ... + e^n)",
          new Symbol("m", "load over line pull, raising", "1", 0, NO_LIMIT),
          List.of(
              EFFICIENCY,
              PARTS,
              new Symbol("s", "lead sheaves besides those of the tackle", "1", 0, 12)),
          "raising; every part of line parallel, a half turn at every sheave",
          TACKLE_TABLES,
          x -> tackleRatio(x[0], (int) x[1], (int) x[2]));

  /** TAC-2: line pull by the additive rule. */
  public static final Formula TEN_PERCENT_RULE =
      Formula.of(
          "TAC-2",
          "P = W * (1 + 0.1 * s) / n",
          force("P", "line pull, raising"),
          List.of(force("W", "load"), new Symbol("s", "sheaves in all", "1", 0, 12), PARTS),
          "rule of thumb: adds a tenth of the load for each sheave, does not compound",
          NAVAL_RULE,
          x -> x[0] * (1 + 0.1 * x[1]) / x[2]);

  /** TAC-3: line pull of a tackle. */
  public static final Formula LINE_PULL =
      Formula.of(
          "TAC-3",
          "P = W / m",
          force("P", "line pull, raising"),
          List.of(
              force("W", "load"),
              new Symbol("m", "load over line pull, raising", "1", 0, NO_LIMIT)),
          "as TAC-1",
          TACKLE_TABLES,
          x -> x[0] / x[1]);

  private FrictionFormulas() {}

  /**
   * Returns all equations of this package.
   *
   * @return the equations, in the order of their ids
   */
  public static List<Formula> all() {
    return List.of(
        NO_FRICTION,
        CAPSTAN,
        SHEAVE,
        V_GROOVE,
        HELIX_TURN,
        SLACK_TENSION,
        TIGHT_TENSION,
        LOAD_DEPENDENT_FRICTION,
        LOAD_DEPENDENT_TIGHT,
        LOAD_DEPENDENT_SLACK,
        WRAPS_NEEDED,
        NEXT_HALF_WRAPS,
        NEXT_WHOLE_WRAPS,
        FRICTION_FROM_PAIR,
        LOAD_FROM_PAIR,
        TWO_LEG_FORCE,
        TWO_LEG_DIRECTION,
        EQUAL_TENSION_MULTIPLIER,
        EQUAL_TENSION_FORCE,
        PLAIN_BEARING_DRAG,
        EFFICIENCY_FROM_DRAG,
        TACKLE_RATIO,
        TEN_PERCENT_RULE,
        LINE_PULL);
  }

  private static Symbol force(String name, String meaning) {
    return new Symbol(name, meaning, "N", 0, NO_LIMIT);
  }

  private static Symbol wraps(String name, String meaning) {
    return new Symbol(name, meaning, "1", 0, NO_LIMIT);
  }

  private static double tackleRatio(double e, int parts, int leadSheaves) {
    double part = Math.pow(e, leadSheaves);
    double sum = 0;
    for (int i = 0; i < parts; i++) {
      part *= e;
      sum += part;
    }
    return sum;
  }
}
