package org.boleline.geometry;

import static java.util.Objects.requireNonNull;

import javax.measure.quantity.Length;
import org.boleline.units.Kind;

/**
 * A box whose faces are square to the axes: the room that a roof, a wall or a bed takes up.
 *
 * <p>May be flat, or a line, or a point. Immutable and thread-safe; equality is exact.
 *
 * <pre>{@code
 * Box glasshouse =
 *     Box.between(
 *         Vector.of(metres(1.6), metres(-2.5), metres(0)),
 *         Vector.of(metres(4.2), metres(2.5), metres(2.9)));
 * }</pre>
 */
public final class Box {
  private final Vector<Length> least;
  private final Vector<Length> most;

  private Box(Vector<Length> least, Vector<Length> most) {
    this.least = least;
    this.most = most;
  }

  /**
   * Obtains the box between two opposite corners, whichever they are.
   *
   * @param corner one corner, not null
   * @param opposite the corner at the other end of the diagonal, not null
   * @return the box
   */
  public static Box between(Vector<Length> corner, Vector<Length> opposite) {
    double[] a = requireNonNull(corner, "corner").in(Kind.LENGTH);
    double[] b = requireNonNull(opposite, "opposite").in(Kind.LENGTH);
    double[] least = new double[3];
    double[] most = new double[3];
    for (int i = 0; i < 3; i++) {
      least[i] = Math.min(a[i], b[i]);
      most[i] = Math.max(a[i], b[i]);
    }
    return new Box(Vector.ofSi(Kind.LENGTH, least), Vector.ofSi(Kind.LENGTH, most));
  }

  /**
   * Returns the corner with the least coordinates.
   *
   * @return its position, in metres
   */
  public Vector<Length> least() {
    return least;
  }

  /**
   * Returns the corner with the greatest coordinates.
   *
   * @return its position, in metres
   */
  public Vector<Length> most() {
    return most;
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof Box b && least.equals(b.least) && most.equals(b.most);
  }

  @Override
  public int hashCode() {
    return 31 * least.hashCode() + most.hashCode();
  }

  @Override
  public String toString() {
    return "box from " + least + " to " + most;
  }
}
