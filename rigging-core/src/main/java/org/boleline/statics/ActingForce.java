package org.boleline.statics;

import static java.util.Objects.requireNonNull;

import javax.measure.quantity.Force;
import javax.measure.quantity.Length;
import org.boleline.geometry.Vector;

/**
 * A force on a loaded, bent stem, with the point it acts at.
 *
 * <p>Immutable and thread-safe.
 */
public final class ActingForce {
  /** Where the own weight of a stem says that it comes from. */
  public static final String OWN_WEIGHT = "own weight";

  private final String from;
  private final Vector<Force> force;
  private final Vector<Length> position;

  ActingForce(String from, Vector<Force> force, Vector<Length> position) {
    this.from = requireNonNull(from);
    this.force = requireNonNull(force);
    this.position = requireNonNull(position);
  }

  /**
   * Returns where the force comes from.
   *
   * @return for instance {@code contact 1}, {@code device}, {@code mass 2}, {@code own weight}
   */
  public String from() {
    return from;
  }

  /**
   * Returns the force on the stem.
   *
   * @return the force, in newtons
   */
  public Vector<Force> force() {
    return force;
  }

  /**
   * Returns where it acts: a contact's attachment, the place of a mass, a point on the plumb line
   * through the centre of gravity of the part that weighs.
   *
   * @return the point, in metres
   */
  public Vector<Length> position() {
    return position;
  }
}
