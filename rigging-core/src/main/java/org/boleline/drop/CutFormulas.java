package org.boleline.drop;

import java.util.List;
import org.boleline.explain.Formula;
import org.boleline.explain.Source;
import org.boleline.explain.Source.Reading;
import org.boleline.explain.Symbol;
import org.boleline.internal.drop.CutKernel;

/**
 * The equations of a piece that is cut above the point that holds it.
 *
 * <p>Each holds its text, symbols, ranges, source and code. {@link CutGeometry} gets its numbers
 * from here. Ids are stable.
 */
public final class CutFormulas {
  private static final double NO_LIMIT = Double.POSITIVE_INFINITY;

  private static final Source GEOMETRY =
      new Source(
          "derived: place before the cut and hanging",
          "coordinates of point, tie and balance point before the cut and in the hanging posture",
          Reading.DERIVED);

  private static final String POSTURE =
      "straight piece on the axis of a straight stem; in the end it hangs at rest from the tie,"
          + " balance point plumb below tie, tie plumb below the point; rope not stretched";

  private static final Symbol LEAN = new Symbol("i", "lean of the stem", "rad", 0, Math.PI / 2);
  private static final Symbol ATTACHMENT =
      length("b", "attachment of the point below the cut, along the stem");
  private static final Symbol OFFSET =
      new Symbol(
          "o",
          "arm from the axis to the attachment, positive toward the underside",
          "m",
          Double.NEGATIVE_INFINITY,
          NO_LIMIT);
  private static final Symbol SLING = length("s", "length of the sling");
  private static final Symbol TIE = length("t", "tie above the cut, along the piece");
  private static final Symbol BALANCE = length("c", "balance point above the cut, along the piece");
  private static final Symbol SLACK = length("e", "slack of the rope before the cut");
  private static final Symbol DEPTH =
      new Symbol(
          "y", "plumb depth of the point below the cut", "m", Double.NEGATIVE_INFINITY, NO_LIMIT);
  private static final Symbol LEVEL =
      new Symbol(
          "x",
          "level distance from the point to the tie, toward the lean",
          "m",
          Double.NEGATIVE_INFINITY,
          NO_LIMIT);
  private static final Symbol DISTANCE =
      length("d", "straight distance from the point to the tie before the cut");
  private static final Symbol LEG = length("l", "rope from the point to the tie");
  private static final Symbol REACH = length("r", "reach of the hanging piece below the tie");
  private static final Symbol FALL = length("h", "fall of the balance point");

  /** CUT-1: depth of the point. */
  public static final Formula POINT_DEPTH =
      Formula.of(
          "CUT-1",
          "y = b * cos(i) + o * sin(i) + s",
          DEPTH,
          List.of(ATTACHMENT, OFFSET, SLING, LEAN),
          "the sling hangs plumb from its attachment",
          GEOMETRY,
          x -> CutKernel.pointDepth(x[0], x[1], x[2], x[3]));

  /** CUT-2: level distance from the point to the tie. */
  public static final Formula LEVEL_DISTANCE =
      Formula.of(
          "CUT-2",
          "x = (t + b) * sin(i) - o * cos(i)",
          LEVEL,
          List.of(TIE, ATTACHMENT, OFFSET, LEAN),
          "as CUT-1",
          GEOMETRY,
          x -> CutKernel.levelDistance(x[0], x[1], x[2], x[3]));

  /** CUT-3: straight distance from the point to the tie. */
  public static final Formula STRAIGHT_DISTANCE =
      Formula.of(
          "CUT-3",
          "d = sqrt((t * cos(i) + y)^2 + x^2)",
          DISTANCE,
          List.of(TIE, LEAN, DEPTH, LEVEL),
          "the rope runs straight; thickness of the stem left out",
          GEOMETRY,
          x -> CutKernel.straightDistance(x[0], x[1], x[2], x[3]));

  /** CUT-4: rope from the point to the tie. */
  public static final Formula LOAD_LEG =
      Formula.of(
          "CUT-4",
          "l = d + e",
          LEG,
          List.of(DISTANCE, SLACK),
          "nothing runs through the point",
          GEOMETRY,
          x -> x[0] + x[1]);

  /** CUT-5: fall of the tie. */
  public static final Formula TIE_FALL =
      Formula.of(
          "CUT-5",
          "h_t = t * cos(i) + y + l",
          length("h_t", "fall of the tie"),
          List.of(TIE, LEAN, DEPTH, LEG),
          POSTURE,
          GEOMETRY,
          x -> CutKernel.tieFall(x[0], x[1], x[2], x[3]));

  /** CUT-6: fall of the balance point. */
  public static final Formula BALANCE_FALL =
      Formula.of(
          "CUT-6",
          "h = c * cos(i) + y + l + |c - t|",
          FALL,
          List.of(BALANCE, TIE, LEAN, DEPTH, LEG),
          POSTURE,
          GEOMETRY,
          x -> CutKernel.balanceFall(x[0], x[1], x[2], x[3], x[4]));

  /** CUT-7: fall of the balance point on a plumb stem, by head. */
  public static final Formula PLUMB_FALL =
      Formula.of(
          "CUT-7",
          "h = 2 * (b + s + max(c, t)) + e",
          FALL,
          List.of(ATTACHMENT, SLING, BALANCE, TIE, SLACK),
          "CUT-6 for a plumb stem with the point on its axis",
          GEOMETRY,
          x -> 2 * (x[0] + x[1] + Math.max(x[2], x[3])) + x[4]);

  /** CUT-8: reach of the hanging piece below its tie. */
  public static final Formula REACH_BELOW_TIE =
      Formula.of(
          "CUT-8",
          "r = n - t where t < c, t where t > c, else max(n - t, t)",
          REACH,
          List.of(length("n", "length of the piece"), TIE, BALANCE),
          "thickness of the piece left out",
          GEOMETRY,
          x -> CutKernel.reachBelowTie(x[0], x[1], x[2]));

  /** CUT-9: clearance of the hanging piece to the ground. */
  public static final Formula GROUND_CLEARANCE =
      Formula.of(
          "CUT-9",
          "q = H - y - l - r",
          new Symbol(
              "q",
              "height of the lowest end over the ground; negative: it comes down first",
              "m",
              Double.NEGATIVE_INFINITY,
              NO_LIMIT),
          List.of(length("H", "height of the cut over the ground"), DEPTH, LEG, REACH),
          POSTURE + "; level ground",
          GEOMETRY,
          x -> x[0] - x[1] - x[2] - x[3]);

  /** CUT-10: fall factor. */
  public static final Formula FALL_FACTOR =
      Formula.of(
          "CUT-10",
          "f = h / R",
          new Symbol("f", "fall over rope in service", "1", 0, NO_LIMIT),
          List.of(FALL, length("R", "rope in service, from the tie to where it is held")),
          "friction at points between left out: with it less of the rope stretches",
          GEOMETRY,
          x -> x[0] / x[1]);

  private CutFormulas() {}

  /**
   * Returns all equations of the cut.
   *
   * @return the equations, in the order of their ids
   */
  public static List<Formula> all() {
    return List.of(
        POINT_DEPTH,
        LEVEL_DISTANCE,
        STRAIGHT_DISTANCE,
        LOAD_LEG,
        TIE_FALL,
        BALANCE_FALL,
        PLUMB_FALL,
        REACH_BELOW_TIE,
        GROUND_CLEARANCE,
        FALL_FACTOR);
  }

  private static Symbol length(String name, String meaning) {
    return new Symbol(name, meaning, "m", 0, NO_LIMIT);
  }
}
