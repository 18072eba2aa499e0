package org.boleline.drop;

import java.util.List;
import org.boleline.explain.Formula;
import org.boleline.explain.Source;
import org.boleline.explain.Source.Reading;
import org.boleline.explain.Symbol;
import org.boleline.internal.drop.SwingKernel;

/**
 * The equations of a piece that swings on a rope.
 *
 * <p>Each holds its text, symbols, ranges, source and code. {@link Swing} gets its numbers from
 * here. Ids are stable.
 */
public final class SwingFormulas {
  private static final double NO_LIMIT = Double.POSITIVE_INFINITY;

  private static final Source PENDULUM =
      new Source(
          "pendulum texts",
          "a pendulum's tension and speed, in physics teaching pages and texts",
          Reading.READ);
  private static final Source ENERGY =
      new Source(
          "derived: energy and radial balance",
          "energy of a point mass on a circle; its weight and tension along the rope give the"
              + " acceleration v^2 / L toward the point",
          Reading.DERIVED);
  private static final Source FREE_FLIGHT =
      new Source(
          "derived: free flight to a circle",
          "constant acceleration downward until the distance from the point is the length of the"
              + " rope",
          Reading.DERIVED);
  private static final Source IMPACT =
      new Source(
          "derived: rope comes taut",
          "a rope that cannot stretch ends the speed along it at once, and leaves the speed square"
              + " to it",
          Reading.DERIVED);

  private static final String MODEL =
      "point mass, rope of fixed length on a fixed point, plumb plane, no drag";
  private static final String TAUT = MODEL + ", rope taut all the way";

  private static final Symbol MASS = new Symbol("m", "mass of the piece", "kg", 0, NO_LIMIT);
  private static final Symbol GRAVITY = new Symbol("g", "gravity", "m/s2", 0, NO_LIMIT);
  private static final Symbol ROPE =
      new Symbol("L", "rope from the point to the centre of gravity", "m", 0, NO_LIMIT);
  private static final Symbol RELEASE =
      new Symbol("a0", "angle from plumb at the release", "rad", 0, Math.PI / 2);
  private static final Symbol START = angle("a1", "angle from plumb where the speed is known");
  private static final Symbol ANGLE = angle("a", "angle from plumb");
  private static final Symbol START_SPEED = speed("v1", "speed along the circle at a1");
  private static final Symbol SPEED = speed("v", "speed along the circle");
  private static final Symbol LEVEL_SPEED =
      speed("u", "level speed, positive toward the side of the release");
  private static final Symbol UP_SPEED = speed("w", "upward speed");
  private static final Symbol RADIAL = speed("v_r", "speed along the rope, away from the point");
  private static final Symbol TENSION = new Symbol("T", "tension of the rope", "N", 0, NO_LIMIT);

  /** SWI-1: tension at an angle of a swing released at rest. */
  public static final Formula RELEASED_TENSION =
      Formula.of(
          "SWI-1",
          "T = m * g * (3 * cos(a) - 2 * cos(a0))",
          TENSION,
          List.of(MASS, GRAVITY, RELEASE, ANGLE),
          TAUT + ", released at rest not above the level of the point; a from -a0 to a0",
          PENDULUM,
          x -> SwingKernel.releasedTension(x[0], x[1], x[2], x[3]));

  /** SWI-2: tension at the bottom of a swing released at rest. */
  public static final Formula BOTTOM_TENSION =
      Formula.of(
          "SWI-2",
          "T = m * g * (3 - 2 * cos(a0))",
          TENSION,
          List.of(MASS, GRAVITY, RELEASE),
          "as SWI-1, at the bottom, where the tension is greatest",
          PENDULUM,
          x -> SwingKernel.releasedTension(x[0], x[1], x[2], 0));

  /** SWI-3: tension at the bottom of a small swing. */
  public static final Formula SMALL_SWING =
      Formula.of(
          "SWI-3",
          "T = m * g * (1 + a0^2)",
          TENSION,
          List.of(
              MASS, GRAVITY, new Symbol("a0", "angle from plumb at the release", "rad", 0, 0.5)),
          "limit of SWI-2 for small angles; over it by a0^4 / 12 of the weight, half a percent of"
              + " the weight at a0 = 0.5",
          PENDULUM,
          x -> x[0] * x[1] * (1 + x[2] * x[2]));

  /** SWI-4: speed at an angle from that at another one. */
  public static final Formula SPEED_AT =
      Formula.of(
          "SWI-4",
          "v = sqrt(v1^2 + 2 * g * L * (cos(a) - cos(a1)))",
          SPEED,
          List.of(START_SPEED, GRAVITY, ROPE, START, ANGLE),
          TAUT,
          PENDULUM,
          x -> SwingKernel.speed(x[0], x[1], x[2], x[3], x[4]));

  /** SWI-5: tension from speed and angle. */
  public static final Formula TENSION_AT =
      Formula.of(
          "SWI-5",
          "T = m * (v^2 / L + g * cos(a))",
          TENSION,
          List.of(MASS, SPEED, ROPE, GRAVITY, ANGLE),
          MODEL + "; negative where the rope would have to push: there it is slack",
          ENERGY,
          x -> SwingKernel.tension(x[0], x[1], x[2], x[3], x[4]));

  /** SWI-6: angle at which a swing turns back. */
  public static final Formula TURNING_ANGLE =
      Formula.of(
          "SWI-6",
          "A = acos(cos(a1) - v1^2 / (2 * g * L))",
          new Symbol("A", "angle at which the swing turns back", "rad", 0, Math.PI / 2),
          List.of(START_SPEED, GRAVITY, ROPE, START),
          TAUT + "; that is, where A is not above a right angle",
          ENERGY,
          x -> SwingKernel.turningAngle(x[0], x[1], x[2], x[3]));

  /** SWI-7: angle at which the rope loses its tension. */
  public static final Formula SLACK_ANGLE =
      Formula.of(
          "SWI-7",
          "A = acos((2 * cos(a1) - v1^2 / (g * L)) / 3)",
          new Symbol("A", "angle at which the rope goes slack on the way up", "rad", 0, Math.PI),
          List.of(START_SPEED, GRAVITY, ROPE, START),
          MODEL
              + "; where SWI-6 gives more than a right angle and v1^2 is less than"
              + " g * L * (3 + 2 * cos(a1)), above which the piece goes round",
          ENERGY,
          x -> SwingKernel.slackAngle(x[0], x[1], x[2], x[3]));

  /** SWI-8: time of a flight until the rope is taut. */
  public static final Formula FLIGHT_TIME =
      Formula.of(
          "SWI-8",
          "t such that (x + u * t)^2 + (z + w * t - g * t^2 / 2)^2 = L^2",
          new Symbol("t", "time until the rope is taut", "s", 0, NO_LIMIT),
          List.of(
              length("x", "level distance from the point at the start, toward the release"),
              length("z", "height over the point at the start"),
              LEVEL_SPEED,
              UP_SPEED,
              ROPE,
              GRAVITY),
          "t the first such time above zero; free flight in a plumb plane, no drag; starts no farther"
              + " from the point than L; 0 where the rope is taut from the start and stays so",
          FREE_FLIGHT,
          x -> SwingKernel.flightTime(x[0], x[1], x[2], x[3], x[4], x[5]));

  /** SWI-9: speed along the rope when it comes taut. */
  public static final Formula RADIAL_SPEED =
      Formula.of(
          "SWI-9",
          "v_r = u * sin(a) - w * cos(a)",
          RADIAL,
          List.of(LEVEL_SPEED, UP_SPEED, ANGLE),
          "plumb plane",
          IMPACT,
          x -> SwingKernel.radialSpeed(x[0], x[1], x[2]));

  /** SWI-10: speed square to the rope, which is kept when it comes taut. */
  public static final Formula TANGENTIAL_SPEED =
      Formula.of(
          "SWI-10",
          "v = u * cos(a) + w * sin(a)",
          SPEED,
          List.of(LEVEL_SPEED, UP_SPEED, ANGLE),
          "plumb plane",
          IMPACT,
          x -> SwingKernel.tangentialSpeed(x[0], x[1], x[2]));

  /** SWI-11: fall from rest with the same speed along the rope. */
  public static final Formula FALL_HEIGHT =
      Formula.of(
          "SWI-11",
          "h = v_r^2 / (2 * g)",
          new Symbol("h", "fall from rest that gives the speed", "m", 0, NO_LIMIT),
          List.of(RADIAL, GRAVITY),
          "free fall, no drag",
          IMPACT,
          x -> SwingKernel.fallHeight(x[0], x[1]));

  /** SWI-12: energy that the rope takes up when it comes taut. */
  public static final Formula CATCH_ENERGY =
      Formula.of(
          "SWI-12",
          "Q = m * v_r^2 / 2",
          new Symbol("Q", "energy of the speed along the rope", "J", 0, NO_LIMIT),
          List.of(MASS, RADIAL),
          "the rope keeps what it takes: nothing springs back",
          IMPACT,
          x -> SwingKernel.energy(x[0], x[1]));

  private SwingFormulas() {}

  /**
   * Returns all equations of the swing.
   *
   * @return the equations, in the order of their ids
   */
  public static List<Formula> all() {
    return List.of(
        RELEASED_TENSION,
        BOTTOM_TENSION,
        SMALL_SWING,
        SPEED_AT,
        TENSION_AT,
        TURNING_ANGLE,
        SLACK_ANGLE,
        FLIGHT_TIME,
        RADIAL_SPEED,
        TANGENTIAL_SPEED,
        FALL_HEIGHT,
        CATCH_ENERGY);
  }

  private static Symbol angle(String name, String meaning) {
    return new Symbol(name, meaning, "rad", -Math.PI, Math.PI);
  }

  private static Symbol speed(String name, String meaning) {
    return new Symbol(name, meaning, "m/s", Double.NEGATIVE_INFINITY, NO_LIMIT);
  }

  private static Symbol length(String name, String meaning) {
    return new Symbol(name, meaning, "m", Double.NEGATIVE_INFINITY, NO_LIMIT);
  }
}
