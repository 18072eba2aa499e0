package org.boleline.drop;

import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.Force;
import org.boleline.geometry.Vector;
import org.boleline.units.Kind;
import org.boleline.units.QuantityText;
import org.boleline.units.Si;
import org.jspecify.annotations.Nullable;

/**
 * Force of both legs on a point, and the tensions that make it.
 *
 * <p>Immutable and thread-safe.
 */
public final class PointLoad {
  private final double tight;
  private final double slack;
  private final double magnitude;
  private final @Nullable Vector<Force> vector;

  PointLoad(double tight, double slack, double magnitude, @Nullable Vector<Force> vector) {
    this.tight = tight;
    this.slack = slack;
    this.magnitude = magnitude;
    this.vector = vector;
  }

  /**
   * Returns the tension on the side of the load.
   *
   * @return the tension in newtons, zero or more
   */
  public Quantity<Force> tight() {
    return Si.of(tight, Kind.FORCE);
  }

  /**
   * Returns the tension behind the point.
   *
   * @return the tension in newtons, at most {@link #tight}
   */
  public Quantity<Force> slack() {
    return Si.of(slack, Kind.FORCE);
  }

  /**
   * Returns the force on the point: the vector sum of both tensions along the legs, away from it.
   *
   * @return its magnitude in newtons, zero or more
   */
  public Quantity<Force> magnitude() {
    return Si.of(magnitude, Kind.FORCE);
  }

  /**
   * Returns the force on the point as a vector.
   *
   * @return the force in newtons; empty if the directions of the legs were not stated
   */
  public Optional<Vector<Force>> vector() {
    return Optional.ofNullable(vector);
  }

  @Override
  public String toString() {
    return QuantityText.print(magnitude(), Kind.FORCE);
  }
}
