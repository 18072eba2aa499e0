package org.boleline.drop;

import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.boleline.geometry.Vector;
import org.boleline.units.Kind;
import org.boleline.units.QuantityText;
import org.boleline.units.Si;

/**
 * How near a swinging piece comes to a box.
 *
 * <p>Immutable and thread-safe; equality is exact.
 */
public final class SwingClearance {
  private final double clearance;
  private final Vector<Length> position;

  SwingClearance(double clearance, Vector<Length> position) {
    this.clearance = clearance;
    this.position = position;
  }

  /**
   * Returns the least distance from the piece to the box.
   *
   * @return the distance in metres; zero where the piece just touches it, negative where it hits:
   *     then how far the piece's radius reaches in, and the whole radius where its centre comes in
   */
  public Quantity<Length> clearance() {
    return Si.of(clearance, Kind.LENGTH);
  }

  /**
   * Tells whether the piece touches or hits the box.
   *
   * @return true if the clearance is zero or negative
   */
  public boolean isHit() {
    return clearance <= 0;
  }

  /**
   * Returns where the centre of gravity is then.
   *
   * @return its position, in metres; one of them if there are several
   */
  public Vector<Length> position() {
    return position;
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof SwingClearance c
        && Double.compare(clearance, c.clearance) == 0
        && position.equals(c.position);
  }

  @Override
  public int hashCode() {
    return 31 * Double.hashCode(clearance) + position.hashCode();
  }

  @Override
  public String toString() {
    return QuantityText.print(clearance(), Kind.LENGTH) + " at " + position;
  }
}
