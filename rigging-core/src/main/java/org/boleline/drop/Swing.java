package org.boleline.drop;

import static java.util.Objects.requireNonNull;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.Acceleration;
import javax.measure.quantity.Angle;
import javax.measure.quantity.Force;
import javax.measure.quantity.Length;
import javax.measure.quantity.Mass;
import javax.measure.quantity.Speed;
import javax.measure.quantity.Time;
import org.boleline.explain.Caution;
import org.boleline.explain.CautionCode;
import org.boleline.explain.Refusal;
import org.boleline.explain.Refusals;
import org.boleline.explain.Step;
import org.boleline.geometry.Box;
import org.boleline.geometry.Vector;
import org.boleline.internal.drop.SwingMotion;
import org.boleline.internal.drop.SwingPath;
import org.boleline.internal.drop.SwingTimes;
import org.boleline.units.Kind;
import org.boleline.units.QuantityText;
import org.boleline.units.Si;

/**
 * A piece that is released off plumb on a rope and swings under the point that holds it.
 *
 * <p>A point mass on a rope that cannot stretch, held by a fixed point, in one plumb plane, without
 * drag. With a slack rope, or above the level of the point, it flies freely until the rope comes
 * taut; then the speed along the rope is lost and the speed square to it is kept. How hard the rope
 * pulls in that moment is not in these tensions: see {@link SwingCatch}. The rope ends at the
 * point; rope that runs through it, with or without friction, is not covered.
 *
 * <p>The angle is measured from plumb, zero straight below the point and positive on the side of
 * the release. Immutable and thread-safe; equality is exact, on what was stated.
 *
 * <pre>{@code
 * Swing swing =
 *     Swing.of(kilograms(120), metres(6), degrees(60))
 *         .withPoint(Vector.of(metres(0), metres(0), metres(10)))
 *         .withAzimuth(degrees(30));
 * swing.greatestTension(); // 2354 N, twice the weight
 * swing.clearance(glasshouse, metres(0.8)).clearance();
 * }</pre>
 */
public final class Swing {
  private static final double STANDARD_GRAVITY_M_PER_S2 = 9.80665;

  /** Flights and swings that are followed before the rope must have come to stay taut. */
  private static final int FOLLOWED = 100;

  /** Figures in sentences. */
  private static final int FIGURES = 3;

  private static final double MOST_MASS = 1e6;
  private static final double LEAST_LENGTH = 1e-3;
  private static final double MOST_LENGTH = 1000;
  private static final double MOST_COORDINATE = 1e5;
  private static final double MOST_AZIMUTH = 100;
  private static final double MOST_SPEED = 1000;
  private static final double LEAST_GRAVITY = 1e-3;
  private static final double MOST_GRAVITY = 1000;
  private static final double MOST_TIME = 600;
  private static final double MOST_SAMPLES = 1e5;

  /** What was stated, in SI units; u and w are the level and the upward speed. */
  private record Stated(
      double mass,
      double length,
      double angle,
      Vector<Length> point,
      double azimuth,
      double slack,
      double u,
      double w,
      double gravity) {}

  private final Stated stated;
  private final List<SwingMotion.Phase> phases;
  private final List<SwingPath> path;
  private final List<SwingCatch> catches;
  private final double angleOfGreatest;
  private final List<Step> steps;

  private Swing(Stated stated) {
    this.stated = stated;
    phases =
        SwingMotion.follow(
            stated.angle,
            stated.slack,
            stated.u,
            stated.w,
            stated.length,
            stated.gravity,
            FOLLOWED);
    path = SwingPath.along(phases, stated.length, stated.gravity, stated.azimuth);
    List<SwingCatch> found = new ArrayList<>();
    List<Step> best = List.of();
    double where = 0;
    for (SwingMotion.Phase phase : phases) {
      if (phase instanceof SwingMotion.Flight flight) {
        found.add(caught(flight));
      } else if (phase instanceof SwingMotion.Taut taut) {
        double angle = Math.min(taut.high(), Math.max(taut.low(), 0));
        List<Step> here = tension(taut, angle);
        if (best.isEmpty() || here.get(1).result() > best.get(1).result()) {
          best = here;
          where = angle;
        }
      }
    }
    if (best.isEmpty()) {
      throw new AssertionError("a swing that never comes taut; please report: " + stated);
    }
    catches = List.copyOf(found);
    angleOfGreatest = where;
    steps = best;
  }

  private List<Step> tension(SwingMotion.Taut taut, double angle) {
    Step speed =
        SwingFormulas.SPEED_AT.step(
            taut.speed(), stated.gravity, stated.length, taut.angle(), angle);
    return List.of(
        speed,
        SwingFormulas.TENSION_AT.step(
            stated.mass, speed.result(), stated.length, stated.gravity, angle));
  }

  private SwingCatch caught(SwingMotion.Flight flight) {
    Step time =
        SwingFormulas.FLIGHT_TIME.step(
            flight.x(), flight.z(), flight.u(), flight.w(), stated.length, stated.gravity);
    double w = flight.w() - stated.gravity * time.result();
    Step radial = SwingFormulas.RADIAL_SPEED.step(flight.u(), w, flight.angle());
    Step tangential = SwingFormulas.TANGENTIAL_SPEED.step(flight.u(), w, flight.angle());
    return new SwingCatch(
        flight.angle(),
        onTheCircle(flight.angle()),
        time,
        radial,
        tangential,
        SwingFormulas.FALL_HEIGHT.step(radial.result(), stated.gravity),
        SwingFormulas.CATCH_ENERGY.step(stated.mass, radial.result()),
        SwingFormulas.TENSION_AT.step(
            stated.mass, tangential.result(), stated.length, stated.gravity, flight.angle()));
  }

  /**
   * Obtains a swing released at rest with a taut rope, toward azimuth zero from a point at the
   * origin, under standard gravity.
   *
   * @equation T = m * (v^2 / L + g * cos(a)) with v^2 = v1^2 + 2 * g * L * (cos(a) - cos(a1))
   *     (SWI-4, SWI-5)
   * @validity point mass on a rope that cannot stretch, fixed point, plumb plane, no drag; the pull
   *     in the moment when a slack rope comes taut is left out
   * @source pendulum, in physics texts; derived
   * @accuracy rounding only; relative error of the tension below 1e-12
   * @param mass mass of the piece, above zero, at most 1000 t, not null
   * @param length rope from the point to the centre of gravity of the piece, from 1 mm to 1 km, not
   *     null
   * @param angle angle of the release from plumb, zero to half a turn, not null; above a right
   *     angle the piece is above the level of the point and flies first
   * @return the swing
   * @throws org.boleline.explain.PlanRefusedException if a value is outside its range: with all
   *     reasons
   */
  public static Swing of(Quantity<Mass> mass, Quantity<Length> length, Quantity<Angle> angle) {
    requireNonNull(mass, "mass");
    requireNonNull(length, "length");
    requireNonNull(angle, "angle");
    return new Swing(
        Refusals.check(
            refusals ->
                new Stated(
                    refusals.at("mass").aboveZero(mass, Kind.MASS, MOST_MASS),
                    refusals.at("length").between(length, Kind.LENGTH, LEAST_LENGTH, MOST_LENGTH),
                    refusals.at("angle").between(angle, Kind.ANGLE, 0, Math.PI),
                    Vector.ofSi(Kind.LENGTH, 0, 0, 0),
                    0,
                    0,
                    0,
                    0,
                    STANDARD_GRAVITY_M_PER_S2)));
  }

  /**
   * Returns this swing at another point.
   *
   * @param point where the rope is held, at most 100 km from the origin along each axis, not null
   * @return the swing
   * @throws org.boleline.explain.PlanRefusedException if a coordinate is outside its range
   */
  public Swing withPoint(Vector<Length> point) {
    requireNonNull(point, "point");
    return Refusals.check(
        refusals -> {
          Refusals at = refusals.at("point");
          for (double coordinate : point.in(Kind.LENGTH)) {
            if (Math.abs(coordinate) > MOST_COORDINATE) {
              at.add(
                  Refusal.Code.OUT_OF_RANGE,
                  "coordinates from -100 km to 100 km",
                  QuantityText.print(Si.of(coordinate, Kind.LENGTH), Kind.LENGTH));
            }
          }
          return new Swing(
              new Stated(
                  stated.mass,
                  stated.length,
                  stated.angle,
                  point,
                  stated.azimuth,
                  stated.slack,
                  stated.u,
                  stated.w,
                  stated.gravity));
        });
  }

  /**
   * Returns this swing released toward another side.
   *
   * @param azimuth side of the release, counter-clockwise from +x seen from above, at most 100 rad
   *     either way, not null
   * @return the swing
   * @throws org.boleline.explain.PlanRefusedException if the angle is outside its range
   */
  public Swing withAzimuth(Quantity<Angle> azimuth) {
    requireNonNull(azimuth, "azimuth");
    double side =
        Refusals.check(
            refusals ->
                refusals.at("azimuth").between(azimuth, Kind.ANGLE, -MOST_AZIMUTH, MOST_AZIMUTH));
    return new Swing(
        new Stated(
            stated.mass,
            stated.length,
            stated.angle,
            stated.point,
            side,
            stated.slack,
            stated.u,
            stated.w,
            stated.gravity));
  }

  /**
   * Returns this swing released with slack in the rope: the piece is nearer to the point by so
   * much, at the same angle.
   *
   * @param slack length of the rope less the distance of the piece from the point, zero to the
   *     length of the rope, not null
   * @return the swing
   * @throws org.boleline.explain.PlanRefusedException if the length is outside its range
   */
  public Swing withSlack(Quantity<Length> slack) {
    requireNonNull(slack, "slack");
    double loose =
        Refusals.check(
            refusals -> refusals.at("slack").between(slack, Kind.LENGTH, 0, stated.length));
    return new Swing(
        new Stated(
            stated.mass,
            stated.length,
            stated.angle,
            stated.point,
            stated.azimuth,
            loose,
            stated.u,
            stated.w,
            stated.gravity));
  }

  /**
   * Returns this swing released with a velocity in its plane, such as a hinge gives.
   *
   * @param level speed toward the azimuth, negative away from it, at most 1000 m/s either way, not
   *     null
   * @param up upward speed, negative downward, at most 1000 m/s either way, not null
   * @return the swing
   * @throws org.boleline.explain.PlanRefusedException if a speed is outside its range: with all
   *     reasons
   */
  public Swing withVelocity(Quantity<Speed> level, Quantity<Speed> up) {
    requireNonNull(level, "level");
    requireNonNull(up, "up");
    double[] speeds =
        Refusals.check(
            refusals ->
                new double[] {
                  refusals.at("level").between(level, Kind.SPEED, -MOST_SPEED, MOST_SPEED),
                  refusals.at("up").between(up, Kind.SPEED, -MOST_SPEED, MOST_SPEED)
                });
    return moving(speeds[0], speeds[1]);
  }

  /**
   * Returns this swing released with a push square to the rope.
   *
   * @param push speed toward larger angles, negative toward plumb, at most 1000 m/s either way, not
   *     null
   * @return the swing
   * @throws org.boleline.explain.PlanRefusedException if the speed is outside its range
   */
  public Swing withPush(Quantity<Speed> push) {
    requireNonNull(push, "push");
    double v =
        Refusals.check(
            refusals -> refusals.at("push").between(push, Kind.SPEED, -MOST_SPEED, MOST_SPEED));
    return moving(v * Math.cos(stated.angle), v * Math.sin(stated.angle));
  }

  private Swing moving(double u, double w) {
    return new Swing(
        new Stated(
            stated.mass,
            stated.length,
            stated.angle,
            stated.point,
            stated.azimuth,
            stated.slack,
            u + 0.0,
            w + 0.0,
            stated.gravity));
  }

  /**
   * Returns this swing under another gravity.
   *
   * @param gravity from 0.001 to 1000 m/s2, not null
   * @return the swing
   * @throws org.boleline.explain.PlanRefusedException if it is outside its range
   */
  public Swing withGravity(Quantity<Acceleration> gravity) {
    requireNonNull(gravity, "gravity");
    double g =
        Refusals.check(
            refusals ->
                refusals
                    .at("gravity")
                    .between(gravity, Kind.ACCELERATION, LEAST_GRAVITY, MOST_GRAVITY));
    return new Swing(
        new Stated(
            stated.mass,
            stated.length,
            stated.angle,
            stated.point,
            stated.azimuth,
            stated.slack,
            stated.u,
            stated.w,
            g));
  }

  /**
   * Returns where the piece is released.
   *
   * @return position of its centre of gravity, in metres
   */
  public Vector<Length> release() {
    return place(stated.length - stated.slack, stated.angle);
  }

  /**
   * Returns how the motion goes on.
   *
   * @return the outcome
   */
  public SwingOutcome outcome() {
    if (!(phases.get(phases.size() - 1) instanceof SwingMotion.Taut taut)) {
      return SwingOutcome.NOT_FOLLOWED;
    }
    return switch (taut.end()) {
      case TURNS -> SwingOutcome.STAYS_TAUT;
      case CIRCLES -> SwingOutcome.GOES_ROUND;
      case SLACK -> SwingOutcome.NOT_FOLLOWED;
    };
  }

  /**
   * Returns the moments at which a slack rope comes taut.
   *
   * @return the catches, in order; none if the rope is taut throughout
   */
  public List<SwingCatch> catches() {
    return catches;
  }

  /**
   * Returns the greatest tension while the piece swings, without what a catch adds.
   *
   * @return the tension in newtons, above zero
   */
  public Quantity<Force> greatestTension() {
    return Si.of(steps.get(1).result(), Kind.FORCE);
  }

  /**
   * Returns the angle from plumb at which the tension is greatest.
   *
   * @return the angle in radians; zero where the piece swings through plumb
   */
  public Quantity<Angle> angleOfGreatestTension() {
    return Si.of(angleOfGreatest, Kind.ANGLE);
  }

  /**
   * Returns where the centre of gravity is when the tension is greatest.
   *
   * @return its position, in metres
   */
  public Vector<Length> positionOfGreatestTension() {
    return onTheCircle(angleOfGreatest);
  }

  /**
   * Returns the speed when the tension is greatest.
   *
   * @return the speed in metres per second, zero or more
   */
  public Quantity<Speed> speedAtGreatestTension() {
    return Si.of(steps.get(0).result(), Kind.SPEED);
  }

  /**
   * Returns the angle from plumb to which it swings in the end, the same on both sides.
   *
   * @return the angle in radians, zero or more; empty unless it swings to and fro in the end
   */
  public Optional<Quantity<Angle>> turningAngle() {
    return outcome() == SwingOutcome.STAYS_TAUT
        ? Optional.of(Si.of(lastSwing().high(), Kind.ANGLE))
        : Optional.empty();
  }

  private SwingMotion.Taut lastSwing() {
    return (SwingMotion.Taut) phases.get(phases.size() - 1);
  }

  /**
   * Returns the room that the way of the centre of gravity takes up.
   *
   * <p>From the release on, flights and the return swing included. The piece itself reaches beyond
   * it by its radius.
   *
   * @return the least box around it, in metres
   */
  public Box extents() {
    double[][] corners = SwingPath.extents(path);
    double[] point = stated.point.in(Kind.LENGTH);
    for (double[] corner : corners) {
      for (int i = 0; i < 3; i++) {
        corner[i] += point[i];
      }
    }
    return Box.between(Vector.ofSi(Kind.LENGTH, corners[0]), Vector.ofSi(Kind.LENGTH, corners[1]));
  }

  /**
   * Returns how far the centre of gravity comes on the side of the release.
   *
   * @return level distance from the plumb line of the point in metres, zero or more
   */
  public Quantity<Length> reachOut() {
    return Si.of(Math.max(0, inPlane()[1][0]), Kind.LENGTH);
  }

  /**
   * Returns how far the centre of gravity comes on the side opposite to the release.
   *
   * @return level distance from the plumb line of the point in metres, zero or more
   */
  public Quantity<Length> reachBack() {
    return Si.of(Math.max(0, -inPlane()[0][0]), Kind.LENGTH);
  }

  private double[][] inPlane() {
    return SwingPath.extents(SwingPath.along(phases, stated.length, stated.gravity, 0));
  }

  /**
   * Returns how near the piece comes to a box.
   *
   * <p>The piece stands as a ball about its centre of gravity. What the rope itself touches is not
   * looked at. Take a radius that holds branches and turning as well.
   *
   * @validity as {@link #of}; flights, swings and the return swing, as far as they were followed
   * @source derived: least distance from circle and parabola to faces, edges and corners, as roots
   *     of polynomials
   * @accuracy 1e-9 of the length of the rope
   * @param box the box, not null
   * @param radius radius of the ball, zero or more, at most 1 km, not null
   * @return the clearance
   * @throws org.boleline.explain.PlanRefusedException if the radius is outside its range
   */
  public SwingClearance clearance(Box box, Quantity<Length> radius) {
    requireNonNull(box, "box");
    requireNonNull(radius, "radius");
    double ball =
        Refusals.check(
            refusals -> refusals.at("radius").between(radius, Kind.LENGTH, 0, MOST_LENGTH));
    double[] point = stated.point.in(Kind.LENGTH);
    double[] least = box.least().in(Kind.LENGTH);
    double[] most = box.most().in(Kind.LENGTH);
    for (int i = 0; i < 3; i++) {
      least[i] -= point[i];
      most[i] -= point[i];
    }
    double[] nearest = SwingPath.nearest(path, least, most);
    return new SwingClearance(
        nearest[3] - ball,
        Vector.ofSi(
            Kind.LENGTH, point[0] + nearest[0], point[1] + nearest[1], point[2] + nearest[2]));
  }

  /**
   * Returns the swing at evenly spaced times from the release on, for plots and moving pictures.
   *
   * @validity as {@link #of}
   * @source derived: flights in closed form, a taut swing step by step
   * @accuracy places to 1e-8 of the length of the rope in ten swings
   * @param every time between samples, from 0.1 ms to 600 s, not null
   * @param until the last time, from zero to 600 s and to 100 000 samples, not null
   * @return the samples; fewer where the motion was not followed so far
   * @throws org.boleline.explain.PlanRefusedException if a time is outside its range: with all
   *     reasons
   */
  public SwingHistory history(Quantity<Time> every, Quantity<Time> until) {
    requireNonNull(every, "every");
    requireNonNull(until, "until");
    double[] times =
        Refusals.check(
            refusals -> {
              double step = refusals.at("every").between(every, Kind.TIME, 1e-4, MOST_TIME);
              double most = step > 0 ? Math.min(MOST_TIME, MOST_SAMPLES * step) : MOST_TIME;
              double last = refusals.at("until").between(until, Kind.TIME, 0, most);
              return new double[] {step, last};
            });
    return new SwingHistory(
        stated.point,
        stated.azimuth,
        stated.mass,
        stated.length,
        stated.gravity,
        SwingTimes.along(phases, stated.length, stated.gravity, times[0], times[1]));
  }

  /**
   * Returns what to read with care.
   *
   * @return a caution if a slack rope comes taut; its pull then is not in the tensions
   */
  public List<Caution> cautions() {
    double most = 0;
    for (SwingCatch one : catches) {
      most = Math.max(most, Si.value(one.radialSpeed(), Kind.SPEED, "speed"));
    }
    if (catches.isEmpty()) {
      return List.of();
    }
    return List.of(
        new Caution(
            CautionCode.ROPE_COMES_TAUT,
            "",
            Map.of(
                "count",
                String.valueOf(catches.size()),
                "speed",
                text(most, Kind.SPEED),
                "height",
                text(SwingFormulas.FALL_HEIGHT.value(most, stated.gravity), Kind.LENGTH))));
  }

  private static <Q extends Quantity<Q>> String text(double value, Kind<Q> kind) {
    return QuantityText.number(value, FIGURES) + " " + kind.ucum();
  }

  /**
   * Returns the steps that gave the greatest tension: speed, tension.
   *
   * @return two steps
   */
  public List<Step> steps() {
    return steps;
  }

  private Vector<Length> onTheCircle(double angle) {
    return place(stated.length, angle);
  }

  private Vector<Length> place(double distance, double angle) {
    double[] point = stated.point.in(Kind.LENGTH);
    double level = distance * Math.sin(angle);
    return Vector.ofSi(
        Kind.LENGTH,
        point[0] + level * Math.cos(stated.azimuth),
        point[1] + level * Math.sin(stated.azimuth),
        point[2] - distance * Math.cos(angle));
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof Swing s && stated.equals(s.stated);
  }

  @Override
  public int hashCode() {
    return stated.hashCode();
  }

  @Override
  public String toString() {
    return text(stated.mass, Kind.MASS)
        + " on "
        + text(stated.length, Kind.LENGTH)
        + " of rope from "
        + text(stated.angle, Kind.ANGLE)
        + ": at most "
        + text(steps.get(1).result(), Kind.FORCE);
  }
}
