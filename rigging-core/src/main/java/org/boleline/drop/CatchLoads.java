package org.boleline.drop;

import java.util.List;
import javax.measure.Quantity;
import javax.measure.quantity.Force;
import org.boleline.units.Kind;
import org.boleline.units.QuantityText;
import org.boleline.units.Si;

/**
 * Tension of every leg and force on every point at one moment of a catch.
 *
 * <p>Immutable and thread-safe.
 */
public final class CatchLoads {
  private final List<Double> tensions;
  private final List<PointLoad> points;

  CatchLoads(List<Double> tensions, List<PointLoad> points) {
    this.tensions = List.copyOf(tensions);
    this.points = List.copyOf(points);
  }

  /**
   * Returns the tension of the load leg, the greatest of all legs.
   *
   * @return the tension in newtons, zero or more
   */
  public Quantity<Force> loadLeg() {
    return Si.of(tensions.get(0), Kind.FORCE);
  }

  /**
   * Returns the tension of every leg, from the load on.
   *
   * @return the tensions in newtons, one more than points
   */
  public List<Quantity<Force>> legs() {
    return tensions.stream().map(tension -> Si.of(tension, Kind.FORCE)).toList();
  }

  /**
   * Returns the force on every point, from the load on.
   *
   * @return the forces; empty if the rope runs over no point
   */
  public List<PointLoad> points() {
    return points;
  }

  double lastLeg() {
    return tensions.get(tensions.size() - 1);
  }

  @Override
  public String toString() {
    return "legs "
        + String.join(", ", tensions.stream().map(QuantityText::number).toList())
        + " N, points "
        + points;
  }
}
