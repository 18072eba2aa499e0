package org.boleline.statics;

import static java.util.Objects.requireNonNull;

import javax.measure.Quantity;
import javax.measure.quantity.Force;
import org.boleline.geometry.Vector;
import org.boleline.units.Kind;
import org.boleline.units.Moment;
import org.boleline.units.Si;

/**
 * What the ground does to the base of a stem, about the base.
 *
 * <p>Immutable and thread-safe.
 */
public final class Reaction {
  private final Vector<Force> force;
  private final Vector<Moment> moment;
  private final double axial;
  private final double shear;

  Reaction(Vector<Force> force, Vector<Moment> moment, double axial, double shear) {
    this.force = requireNonNull(force);
    this.moment = requireNonNull(moment);
    this.axial = axial;
    this.shear = shear;
  }

  /**
   * Returns the force of the ground on the stem.
   *
   * @return the force, in newtons; upward is positive z
   */
  public Vector<Force> force() {
    return force;
  }

  /**
   * Returns the moment of the ground on the stem.
   *
   * @return the moment about the base, in newton metres
   */
  public Vector<Moment> moment() {
    return moment;
  }

  /**
   * Returns the axial force in the stem at its base.
   *
   * @return the force, in newtons; tension positive, compression negative
   */
  public Quantity<Force> axial() {
    return Si.of(axial, Kind.FORCE);
  }

  /**
   * Returns the shear force in the stem at its base.
   *
   * @return its magnitude, in newtons
   */
  public Quantity<Force> shear() {
    return Si.of(shear, Kind.FORCE);
  }

  /**
   * Returns the magnitude of the moment.
   *
   * @return the magnitude, in newton metres, zero or more
   */
  public Quantity<Moment> momentMagnitude() {
    return moment.magnitude();
  }
}
