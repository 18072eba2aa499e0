package org.boleline.drop;

import static java.util.Objects.requireNonNull;

import java.util.Arrays;
import javax.measure.Quantity;
import javax.measure.quantity.Acceleration;
import javax.measure.quantity.Angle;
import javax.measure.quantity.Length;
import javax.measure.quantity.Mass;
import javax.measure.quantity.Speed;
import org.boleline.explain.Refusal;
import org.boleline.explain.Refusals;
import org.boleline.geometry.Heading;
import org.boleline.geometry.Vector;
import org.boleline.units.Kind;
import org.boleline.units.QuantityText;
import org.boleline.units.Si;

/**
 * A piece as a rigid body in space, at the moment from which its fall is followed.
 *
 * <p>A log is a round cylinder of even density; its axis points from its butt to its top. The rope
 * is tied on at a place on the axis.
 *
 * <p>Immutable and thread-safe; equality is exact.
 *
 * <pre>{@code
 * FallingPiece log =
 *     FallingPiece.log(kilograms(60), metres(1.5), centimetres(26), centre, upright)
 *         .tiedAt(metres(-0.4)) // below the middle
 *         .overHinge(hinge, degrees(90), GRAVITY);
 * }</pre>
 */
public final class FallingPiece {
  private final double mass;
  private final double axial;
  private final double cross;
  private final double tie;
  private final double[] centre;
  private final double[] velocity;
  private final double[] attitude;
  private final double[] spin;

  private FallingPiece(
      double mass,
      double axial,
      double cross,
      double tie,
      double[] centre,
      double[] velocity,
      double[] attitude,
      double[] spin) {
    this.mass = mass;
    this.axial = axial;
    this.cross = cross;
    this.tie = tie;
    this.centre = centre;
    this.velocity = velocity;
    this.attitude = attitude;
    this.spin = spin;
  }

  /**
   * Obtains a piece at rest that is tied at its centre of gravity; how it turns does not matter.
   *
   * @param mass its mass, above zero, at most 1000 t, not null
   * @param centre where its centre of gravity is, not null
   * @return the piece
   * @throws org.boleline.explain.PlanRefusedException if the mass is outside its range
   */
  public static FallingPiece point(Quantity<Mass> mass, Vector<Length> centre) {
    requireNonNull(mass, "mass");
    double m = Refusals.check(r -> r.at("mass").aboveZero(mass, Kind.MASS, CatchBounds.MASS));
    return new FallingPiece(
        m,
        m,
        m,
        0,
        centre.in(Kind.LENGTH),
        new double[3],
        new double[] {1, 0, 0, 0},
        new double[3]);
  }

  /**
   * Obtains a log at rest that is tied at its middle.
   *
   * @equation I = m r^2 / 2 about the axis; I = m (3 r^2 + l^2) / 12 square to it
   * @validity round log of even thickness and density
   * @source any text on mechanics
   * @param mass its mass, above zero, at most 1000 t, not null
   * @param length its length, above zero, at most 200 m, not null
   * @param diameter its diameter, above zero, at most 100 m, not null
   * @param centre where its middle is, not null
   * @param axis which way its axis points, not null
   * @return the log
   * @throws org.boleline.explain.PlanRefusedException if a value is outside its range
   */
  public static FallingPiece log(
      Quantity<Mass> mass,
      Quantity<Length> length,
      Quantity<Length> diameter,
      Vector<Length> centre,
      Heading axis) {
    requireNonNull(mass, "mass");
    requireNonNull(length, "length");
    requireNonNull(diameter, "diameter");
    double lean = Si.value(axis.lean(), Kind.ANGLE, "lean");
    double azimuth = Si.value(axis.azimuth(), Kind.ANGLE, "azimuth");
    // About the level line square to the azimuth.
    double half = Math.sin(lean / 2);
    double[] attitude = {
      Math.cos(lean / 2), -half * Math.sin(azimuth), half * Math.cos(azimuth), 0
    };
    return Refusals.check(
        r -> {
          double m = r.at("mass").aboveZero(mass, Kind.MASS, CatchBounds.MASS);
          double l = r.at("length").aboveZero(length, Kind.LENGTH, CatchBounds.FALL);
          double radius = r.at("diameter").aboveZero(diameter, Kind.LENGTH, 100) / 2;
          return new FallingPiece(
              m,
              m * radius * radius / 2,
              m * (3 * radius * radius + l * l) / 12,
              0,
              centre.in(Kind.LENGTH),
              new double[3],
              attitude,
              new double[3]);
        });
  }

  /**
   * Returns this piece with the rope tied on elsewhere on its axis.
   *
   * @param alongAxis from the centre of gravity, positive toward the top, at most 200 m either way,
   *     not null
   * @return the piece
   * @throws org.boleline.explain.PlanRefusedException if the value is outside its range
   */
  public FallingPiece tiedAt(Quantity<Length> alongAxis) {
    requireNonNull(alongAxis, "alongAxis");
    double at =
        Refusals.check(
            r ->
                r.at("alongAxis")
                    .between(alongAxis, Kind.LENGTH, -CatchBounds.FALL, CatchBounds.FALL));
    return new FallingPiece(mass, axial, cross, at, centre, velocity, attitude, spin);
  }

  /**
   * Returns this piece moving without turning.
   *
   * @param newVelocity velocity of all of it, at most 1000 m/s, not null
   * @return the piece
   * @throws org.boleline.explain.PlanRefusedException if the velocity is outside its range
   */
  public FallingPiece moving(Vector<Speed> newVelocity) {
    Refusals.check(
        r ->
            r.at("newVelocity").between(newVelocity.magnitude(), Kind.SPEED, 0, CatchBounds.SPEED));
    return new FallingPiece(
        mass, axial, cross, tie, centre, newVelocity.in(Kind.SPEED), attitude, new double[3]);
  }

  /**
   * Returns this piece as it leaves its hinge: it has turned about a level line through the hinge,
   * toward the side to which its centre of gravity overhangs, without friction or wood that holds.
   *
   * @equation w^2 = 2 m g D / (I + m d^2), with D the way that the centre has come down and d its
   *     distance from the hinge
   * @validity the piece starts at rest and the rope does not pull while it turns; the stem does not
   *     move
   * @source energy of a turning rigid body, any text on mechanics
   * @param hinge a place on the hinge, not null
   * @param turned how far it has turned when the hinge lets go, from 0 to 180 degrees, not null
   * @param gravity acceleration of gravity, above zero, not null
   * @return the piece
   * @throws org.boleline.explain.PlanRefusedException if an angle or gravity is outside its range,
   *     the centre is plumb over or under the hinge, or the piece would not come down by itself
   */
  public FallingPiece overHinge(
      Vector<Length> hinge, Quantity<Angle> turned, Quantity<Acceleration> gravity) {
    requireNonNull(turned, "turned");
    double g = CatchBounds.gravity(gravity);
    double[] h = hinge.in(Kind.LENGTH);
    double x = centre[0] - h[0];
    double y = centre[1] - h[1];
    double z = centre[2] - h[2];
    double level = Math.hypot(x, y);
    return Refusals.check(
        r -> {
          double angle = r.at("turned").between(turned, Kind.ANGLE, 0, Math.PI);
          double cos = Math.cos(angle);
          double sin = Math.sin(angle);
          double nowLevel = level * cos + z * sin;
          double now = z * cos - level * sin;
          double down = z - now;
          if (level == 0 || down < 0) {
            r.at("hinge")
                .add(
                    Refusal.Code.CONFLICT,
                    "a hinge over which the piece comes down by itself",
                    QuantityText.number(level, 3) + " m of overhang");
            return this;
          }
          double ux = x / level;
          double uy = y / level;
          double rate = Math.sqrt(2 * mass * g * down / (cross + mass * (level * level + z * z)));
          double[] axis = {-uy, ux, 0};
          double[] place = {h[0] + ux * nowLevel, h[1] + uy * nowLevel, h[2] + now};
          double[] speed = {ux * now * rate, uy * now * rate, -nowLevel * rate};
          double[] about = {
            Math.cos(angle / 2), Math.sin(angle / 2) * axis[0], Math.sin(angle / 2) * axis[1], 0
          };
          double[] after = product(about, attitude);
          double[] turning = {rate * axis[0], rate * axis[1], 0};
          return new FallingPiece(
              mass, axial, cross, tie, place, speed, after, intoBody(after, turning));
        });
  }

  private static double[] product(double[] a, double[] b) {
    return new double[] {
      a[0] * b[0] - a[1] * b[1] - a[2] * b[2] - a[3] * b[3],
      a[0] * b[1] + a[1] * b[0] + a[2] * b[3] - a[3] * b[2],
      a[0] * b[2] - a[1] * b[3] + a[2] * b[0] + a[3] * b[1],
      a[0] * b[3] + a[1] * b[2] - a[2] * b[1] + a[3] * b[0]
    };
  }

  private static double[] intoBody(double[] q, double[] v) {
    double[] back = {q[0], -q[1], -q[2], -q[3]};
    double[] turned = product(product(back, new double[] {0, v[0], v[1], v[2]}), q);
    return Arrays.copyOfRange(turned, 1, 4);
  }

  /**
   * Returns the mass.
   *
   * @return the mass in kilograms
   */
  public Quantity<Mass> mass() {
    return Si.of(mass, Kind.MASS);
  }

  /**
   * Returns where the centre of gravity is.
   *
   * @return the place in metres
   */
  public Vector<Length> centre() {
    return Vector.ofSi(Kind.LENGTH, centre);
  }

  /**
   * Returns how the centre of gravity moves.
   *
   * @return the velocity in metres per second
   */
  public Vector<Speed> velocity() {
    return Vector.ofSi(Kind.SPEED, velocity);
  }

  double massKilograms() {
    return mass;
  }

  double axialInertia() {
    return axial;
  }

  double crossInertia() {
    return cross;
  }

  double tie() {
    return tie;
  }

  double[] attitude() {
    return attitude.clone();
  }

  double[] spin() {
    return spin.clone();
  }

  /** Where the rope is tied on. */
  double[] tiePlace() {
    double[] q = attitude;
    double[] out = centre.clone();
    out[0] += tie * 2 * (q[1] * q[3] + q[0] * q[2]);
    out[1] += tie * 2 * (q[2] * q[3] - q[0] * q[1]);
    out[2] += tie * (1 - 2 * (q[1] * q[1] + q[2] * q[2]));
    return out;
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof FallingPiece p
        && Double.compare(mass, p.mass) == 0
        && Double.compare(axial, p.axial) == 0
        && Double.compare(cross, p.cross) == 0
        && Double.compare(tie, p.tie) == 0
        && Arrays.equals(centre, p.centre)
        && Arrays.equals(velocity, p.velocity)
        && Arrays.equals(attitude, p.attitude)
        && Arrays.equals(spin, p.spin);
  }

  @Override
  public int hashCode() {
    return 31 * Double.hashCode(mass) + Arrays.hashCode(centre);
  }

  @Override
  public String toString() {
    return "piece of " + QuantityText.print(mass(), Kind.MASS);
  }
}
