package org.boleline.geometry;

import javax.measure.Quantity;
import javax.measure.quantity.Angle;
import org.boleline.units.Kind;
import org.boleline.units.QuantityText;
import org.boleline.units.Si;

/**
 * Where a stem points: its lean from the vertical and the azimuth of that lean.
 *
 * <p>A straight stem of lean L and azimuth A runs along (sin L cos A, sin L sin A, cos L); azimuth
 * is counter-clockwise from +x, seen from above. Immutable and thread-safe.
 */
public final class Heading {
  private final double lean;
  private final double azimuth;

  private Heading(double lean, double azimuth) {
    this.lean = lean + 0.0; // no minus zero
    this.azimuth = azimuth + 0.0;
  }

  /**
   * Obtains a heading.
   *
   * @param lean angle from the vertical, from zero (plumb) to pi (hanging down), not null
   * @param azimuth direction of the lean, counter-clockwise from +x seen from above, not null
   * @return the heading
   * @throws IllegalArgumentException if the lean is outside zero to pi
   */
  public static Heading of(Quantity<Angle> lean, Quantity<Angle> azimuth) {
    double l = Si.valueZeroOrMore(lean, Kind.ANGLE, "lean");
    if (l > Math.PI) {
      throw new IllegalArgumentException(
          "lean: wants at most half a turn, got " + QuantityText.print(lean, Kind.ANGLE));
    }
    return new Heading(l, Si.value(azimuth, Kind.ANGLE, "azimuth"));
  }

  /**
   * Returns the angle from the vertical.
   *
   * @return the lean in radians, zero to pi
   */
  public Quantity<Angle> lean() {
    return Si.of(lean, Kind.ANGLE);
  }

  /**
   * Returns the direction of the lean.
   *
   * @return the azimuth in radians
   */
  public Quantity<Angle> azimuth() {
    return Si.of(azimuth, Kind.ANGLE);
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof Heading h
        && Double.compare(lean, h.lean) == 0
        && Double.compare(azimuth, h.azimuth) == 0;
  }

  @Override
  public int hashCode() {
    return 31 * Double.hashCode(lean) + Double.hashCode(azimuth);
  }

  @Override
  public String toString() {
    return "lean "
        + QuantityText.print(lean(), Kind.ANGLE)
        + " toward azimuth "
        + QuantityText.print(azimuth(), Kind.ANGLE);
  }
}
