package org.boleline.statics;

import static java.util.Objects.requireNonNull;

import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.boleline.geometry.Vector;
import org.boleline.units.Kind;
import org.boleline.units.Si;

/**
 * Where a named station of a stem has gone.
 *
 * <p>Immutable and thread-safe.
 */
public final class MarkResult {
  private final String name;
  private final double at;
  private final Vector<Length> position;
  private final Vector<Length> movement;

  MarkResult(String name, double at, Vector<Length> position, Vector<Length> movement) {
    this.name = requireNonNull(name);
    this.at = at;
    this.position = requireNonNull(position);
    this.movement = requireNonNull(movement);
  }

  /**
   * Returns the name of the station.
   *
   * @return the name
   */
  public String name() {
    return name;
  }

  /**
   * Returns the station.
   *
   * @return the station along the stem from its base, in metres
   */
  public Quantity<Length> at() {
    return Si.of(at, Kind.LENGTH);
  }

  /**
   * Returns where the axis is there, loaded.
   *
   * @return the position, in metres
   */
  public Vector<Length> position() {
    return position;
  }

  /**
   * Returns how far it has moved, from own weight alone to loaded.
   *
   * @return the movement, in metres
   */
  public Vector<Length> movement() {
    return movement;
  }
}
