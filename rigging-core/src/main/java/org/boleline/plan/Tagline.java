package org.boleline.plan;

import static java.util.Objects.requireNonNull;

import javax.measure.Quantity;
import javax.measure.quantity.Angle;
import org.boleline.explain.Refusals;
import org.boleline.units.Kind;
import org.boleline.units.QuantityText;
import org.boleline.units.Si;
import org.jspecify.annotations.Nullable;

/**
 * A level line to the piece that holds the load leg out of plumb.
 *
 * <p>The piece stays away from under the first contact by an angle toward an azimuth; the line that
 * holds it there pulls level, so that the load leg carries the weight over the cosine of the angle.
 * Immutable and thread-safe.
 */
public final class Tagline {
  private final double angle;
  private final double azimuth;

  private Tagline(double angle, double azimuth) {
    this.angle = angle;
    this.azimuth = azimuth;
  }

  /**
   * Obtains a tagline.
   *
   * @param angle angle of the load leg from plumb, from zero to 85 degrees, not null
   * @param azimuth direction in which the piece is held away, counter-clockwise from +x seen from
   *     above, at most 100 rad either way, not null
   * @return the tagline
   * @throws org.boleline.explain.PlanRefusedException if a value is outside its range
   */
  public static Tagline of(Quantity<Angle> angle, Quantity<Angle> azimuth) {
    requireNonNull(angle, "angle");
    requireNonNull(azimuth, "azimuth");
    return Refusals.check(refusals -> stated(angle, azimuth, refusals));
  }

  /**
   * Obtains a tagline as stated, for readers of files.
   *
   * @param angle angle of the load leg from plumb, or null if that could not be had
   * @param azimuth direction in which the piece is held away, or null if that could not be had
   * @param refusals notes what is wrong, at the tagline
   * @return the tagline
   */
  public static Tagline stated(
      @Nullable Quantity<Angle> angle, @Nullable Quantity<Angle> azimuth, Refusals refusals) {
    return new Tagline(
        refusals.at("angle").between(angle, Kind.ANGLE, 0, Bounds.LEG_FROM_PLUMB),
        refusals.at("azimuth").between(azimuth, Kind.ANGLE, -Bounds.AZIMUTH, Bounds.AZIMUTH));
  }

  /**
   * Returns the angle of the load leg from plumb.
   *
   * @return the angle in radians, from zero to 85 degrees
   */
  public Quantity<Angle> angle() {
    return Si.of(angle, Kind.ANGLE);
  }

  /**
   * Returns the direction in which the piece is held away.
   *
   * @return the azimuth in radians, counter-clockwise from +x seen from above
   */
  public Quantity<Angle> azimuth() {
    return Si.of(azimuth, Kind.ANGLE);
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof Tagline t
        && Double.compare(angle, t.angle) == 0
        && Double.compare(azimuth, t.azimuth) == 0;
  }

  @Override
  public int hashCode() {
    return 31 * Double.hashCode(angle) + Double.hashCode(azimuth);
  }

  @Override
  public String toString() {
    return QuantityText.print(angle(), Kind.ANGLE)
        + " out of plumb toward azimuth "
        + QuantityText.print(azimuth(), Kind.ANGLE);
  }
}
