package org.boleline.statics;

import static java.util.Objects.requireNonNull;

import javax.measure.Quantity;
import javax.measure.quantity.Force;
import javax.measure.quantity.Length;
import org.boleline.geometry.Turn;
import org.boleline.geometry.Vector;
import org.boleline.units.Kind;
import org.boleline.units.Si;

/**
 * What happens at one contact of the rope.
 *
 * <p>Immutable and thread-safe.
 */
public final class ContactResult {
  private final String stem;
  private final double at;
  private final boolean bears;
  private final Turn turn;
  private final double tensionIn;
  private final double tensionOut;
  private final Vector<Force> force;
  private final Vector<Length> position;
  private final Vector<Length> attachment;
  private final Vector<Length> movement;
  private final double along;
  private final double across;

  ContactResult(
      String stem,
      double at,
      boolean bears,
      Turn turn,
      double tensionIn,
      double tensionOut,
      Vector<Force> force,
      Vector<Length> position,
      Vector<Length> attachment,
      Vector<Length> movement,
      double along,
      double across) {
    this.stem = requireNonNull(stem);
    this.at = at;
    this.bears = bears;
    this.turn = requireNonNull(turn);
    this.tensionIn = tensionIn;
    this.tensionOut = tensionOut;
    this.force = requireNonNull(force);
    this.position = requireNonNull(position);
    this.attachment = requireNonNull(attachment);
    this.movement = requireNonNull(movement);
    this.along = along;
    this.across = across;
  }

  /**
   * Returns the id of the stem the contact hangs on.
   *
   * @return the id
   */
  public String stem() {
    return stem;
  }

  /**
   * Returns the station of the contact.
   *
   * @return the station along the stem from its base, in metres
   */
  public Quantity<Length> at() {
    return Si.of(at, Kind.LENGTH);
  }

  /**
   * Tells whether the contact bears.
   *
   * @return false if its sling is slack and the rope passes straight by
   */
  public boolean bears() {
    return bears;
  }

  /**
   * Returns the turn of the rope.
   *
   * @return the turn, from zero to pi
   */
  public Turn turn() {
    return turn;
  }

  /**
   * Returns the tension on the side of the piece.
   *
   * @return the tension, in newtons
   */
  public Quantity<Force> tensionIn() {
    return Si.of(tensionIn, Kind.FORCE);
  }

  /**
   * Returns the tension on the side of the tail.
   *
   * @return the tension, in newtons
   */
  public Quantity<Force> tensionOut() {
    return Si.of(tensionOut, Kind.FORCE);
  }

  /**
   * Returns the force of the rope on the stem.
   *
   * @return the vector sum of both legs' tensions, in newtons
   */
  public Vector<Force> force() {
    return force;
  }

  /**
   * Returns where the rope runs.
   *
   * @return the position, in metres; for a contact that does not bear, where its axis is
   */
  public Vector<Length> position() {
    return position;
  }

  /**
   * Returns where the sling or the hardware is fixed.
   *
   * @return the position, in metres
   */
  public Vector<Length> attachment() {
    return attachment;
  }

  /**
   * Returns how far the axis of the stem has moved there, from own weight alone to loaded.
   *
   * @return the movement, in metres
   */
  public Vector<Length> movement() {
    return movement;
  }

  /**
   * Returns the part of the force along the loaded stem.
   *
   * @return the part, in newtons; positive presses toward the base
   */
  public Quantity<Force> along() {
    return Si.of(along, Kind.FORCE);
  }

  /**
   * Returns the part of the force across the loaded stem.
   *
   * @return its magnitude, in newtons
   */
  public Quantity<Force> across() {
    return Si.of(across, Kind.FORCE);
  }

  /**
   * Returns the magnitude of the force of the rope on the stem.
   *
   * @return the magnitude, in newtons, zero or more
   */
  public Quantity<Force> forceMagnitude() {
    return force.magnitude();
  }
}
