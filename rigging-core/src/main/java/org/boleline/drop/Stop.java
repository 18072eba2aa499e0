package org.boleline.drop;

import static java.util.Objects.requireNonNull;

import java.util.List;
import javax.measure.Quantity;
import javax.measure.quantity.Acceleration;
import javax.measure.quantity.Force;
import javax.measure.quantity.Length;
import javax.measure.quantity.Mass;
import javax.measure.quantity.Speed;
import org.boleline.explain.Refusals;
import org.boleline.explain.Step;
import org.boleline.units.Kind;
import org.boleline.units.QuantityText;
import org.boleline.units.Si;

/**
 * A mass that moves straight down and is brought to rest over a distance by a constant force.
 *
 * <p>The plainest model of a catch. A real catch does not pull evenly: over the same distance its
 * greatest force lies above this one.
 *
 * <p>Immutable and thread-safe; equality is exact.
 */
public final class Stop {
  private final double mass;
  private final double speed;
  private final double distance;
  private final double gravity;
  private final List<Step> steps;

  private Stop(double mass, double speed, double distance, double gravity) {
    this.mass = mass;
    this.speed = speed;
    this.distance = distance;
    this.gravity = gravity;
    steps =
        List.of(
            DropFormulas.WEIGHT_OF_PIECE.step(mass, gravity),
            DropFormulas.CONSTANT_FORCE_STOP.step(mass, gravity, speed, distance));
  }

  /**
   * Obtains a stop, under standard gravity.
   *
   * @equation F = m * (g + v^2 / (2 * s))
   * @validity force the same over the whole distance
   * @source Kane, Arboriculture &amp; Urban Forestry 33(1), 2007, p. 41
   * @accuracy rounding only
   * @param mass mass of the piece, from 1 mg to 1000 t, not null
   * @param speed speed downward when the stop begins, from zero to 1000 m/s, not null
   * @param distance distance over which it comes to rest, from 0.001 mm to 1000 m, not null
   * @return the stop
   * @throws org.boleline.explain.PlanRefusedException if a value is outside its range
   */
  public static Stop of(Quantity<Mass> mass, Quantity<Speed> speed, Quantity<Length> distance) {
    requireNonNull(mass, "mass");
    requireNonNull(speed, "speed");
    requireNonNull(distance, "distance");
    double[] si =
        Refusals.check(
            refusals ->
                new double[] {
                  refusals
                      .at("mass")
                      .between(mass, Kind.MASS, CatchBounds.LEAST_MASS, CatchBounds.MASS),
                  refusals.at("speed").between(speed, Kind.SPEED, 0, CatchBounds.SPEED),
                  refusals
                      .at("distance")
                      .between(distance, Kind.LENGTH, CatchBounds.LEAST_LEG, CatchBounds.LEG)
                });
    return new Stop(si[0], si[1], si[2], CatchBounds.STANDARD_GRAVITY_M_PER_S2);
  }

  /**
   * Returns this stop under another gravity.
   *
   * @param newGravity acceleration of gravity, from 1 mm/s2 to 1000 m/s2, not null
   * @return the stop
   * @throws org.boleline.explain.PlanRefusedException if it is outside its range
   */
  public Stop withGravity(Quantity<Acceleration> newGravity) {
    return new Stop(mass, speed, distance, CatchBounds.gravity(newGravity));
  }

  /**
   * Returns the force of the stop.
   *
   * @return the force in newtons, at least the weight
   */
  public Quantity<Force> force() {
    return Si.of(steps.get(1).result(), Kind.FORCE);
  }

  /**
   * Returns the force as a multiple of the weight.
   *
   * @return force over weight, 1 or more
   */
  public double overWeightRatio() {
    return steps.get(1).result() / steps.get(0).result();
  }

  /**
   * Returns the steps that gave the force.
   *
   * @return two steps: weight, force
   */
  public List<Step> steps() {
    return steps;
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof Stop s
        && Double.compare(mass, s.mass) == 0
        && Double.compare(speed, s.speed) == 0
        && Double.compare(distance, s.distance) == 0
        && Double.compare(gravity, s.gravity) == 0;
  }

  @Override
  public int hashCode() {
    return 31 * (31 * Double.hashCode(mass) + Double.hashCode(speed)) + Double.hashCode(distance);
  }

  @Override
  public String toString() {
    return "stop with " + QuantityText.print(force(), Kind.FORCE);
  }
}
