package org.boleline.drop;

import static java.util.Objects.requireNonNull;

import java.util.List;
import javax.measure.Quantity;
import javax.measure.quantity.Acceleration;
import javax.measure.quantity.Force;
import javax.measure.quantity.Length;
import javax.measure.quantity.Mass;
import org.boleline.explain.Refusals;
import org.boleline.explain.Step;
import org.boleline.units.Kind;
import org.boleline.units.QuantityText;
import org.boleline.units.Si;
import org.boleline.units.Stiffness;

/**
 * A mass that falls free and is caught by a linear spring, such as a rope of one straight leg.
 *
 * <p>Without any fall the peak is twice the weight. A rigid catch (no give at all) has no finite
 * peak in this model.
 *
 * <p>Immutable and thread-safe; equality is exact.
 *
 * <pre>{@code
 * LinearCatch caught = LinearCatch.of(kilograms(200), metres(2), stiffness);
 * caught.peak(); // 16.1 kN for 25 kN/m
 * }</pre>
 */
public final class LinearCatch {
  private final double mass;
  private final double fall;
  private final double stiffness;
  private final double gravity;
  private final List<Step> steps;

  private LinearCatch(double mass, double fall, double stiffness, double gravity) {
    this.mass = mass;
    this.fall = fall;
    this.stiffness = stiffness;
    this.gravity = gravity;
    Step weight = DropFormulas.WEIGHT_OF_PIECE.step(mass, gravity);
    Step peak = DropFormulas.LINEAR_PEAK.step(weight.result(), stiffness, fall);
    Step stretch = DropFormulas.LINEAR_STRETCH.step(peak.result(), stiffness);
    Step speed = DropFormulas.FALL_SPEED.step(gravity, fall);
    Step bySpeed = DropFormulas.SPEED_PEAK.step(speed.result(), stiffness, mass);
    steps = List.of(weight, peak, stretch, speed, bySpeed);
  }

  /**
   * Obtains a catch, under standard gravity.
   *
   * @equation F = W * (1 + sqrt(1 + 2 * k * h / W))
   * @validity linear, no mass of the rope, no damping, piece falls straight
   * @source Gere, Mechanics of Materials, 7th ed., falling weight
   * @accuracy rounding only
   * @param mass mass of the piece, from 1 mg to 1000 t, not null
   * @param fall fall until the rope is taut, from zero to 200 m, not null
   * @param stiffness stiffness of what catches, from 1 mN/m to 1 TN/m, not null
   * @return the catch
   * @throws org.boleline.explain.PlanRefusedException if a value is outside its range
   */
  public static LinearCatch of(
      Quantity<Mass> mass, Quantity<Length> fall, Quantity<Stiffness> stiffness) {
    requireNonNull(mass, "mass");
    requireNonNull(fall, "fall");
    requireNonNull(stiffness, "stiffness");
    double[] si =
        Refusals.check(
            refusals ->
                new double[] {
                  refusals
                      .at("mass")
                      .between(mass, Kind.MASS, CatchBounds.LEAST_MASS, CatchBounds.MASS),
                  refusals.at("fall").between(fall, Kind.LENGTH, 0, CatchBounds.FALL),
                  refusals
                      .at("stiffness")
                      .between(
                          stiffness,
                          Kind.STIFFNESS,
                          CatchBounds.LEAST_STIFFNESS,
                          CatchBounds.STIFFNESS)
                });
    return new LinearCatch(si[0], si[1], si[2], CatchBounds.STANDARD_GRAVITY_M_PER_S2);
  }

  /**
   * Returns this catch under another gravity.
   *
   * @param newGravity acceleration of gravity, from 1 mm/s2 to 1000 m/s2, not null
   * @return the catch
   * @throws org.boleline.explain.PlanRefusedException if it is outside its range
   */
  public LinearCatch withGravity(Quantity<Acceleration> newGravity) {
    return new LinearCatch(mass, fall, stiffness, CatchBounds.gravity(newGravity));
  }

  /**
   * Returns the greatest tension.
   *
   * @return the tension in newtons, at least twice the weight
   */
  public Quantity<Force> peak() {
    return Si.of(steps.get(1).result(), Kind.FORCE);
  }

  /**
   * Returns the greatest tension as a multiple of the weight.
   *
   * @return peak over weight, 2 or more
   */
  public double overWeightRatio() {
    return steps.get(1).result() / steps.get(0).result();
  }

  /**
   * Returns how far the piece comes down after the rope is taut.
   *
   * @return the travel in metres, above zero
   */
  public Quantity<Length> stretch() {
    return Si.of(steps.get(2).result(), Kind.LENGTH);
  }

  /**
   * Returns the peak by the short rule that leaves gravity out while the rope stretches.
   *
   * <p>For comparison with texts that use it: {@link #peak} lies above it by one to two weights.
   *
   * @equation F = v * sqrt(k * m)
   * @validity only where the peak is many times the weight
   * @source energy balance, derived
   * @accuracy rounding only
   * @return the tension in newtons, zero without a fall
   */
  public Quantity<Force> peakBySpeedAlone() {
    return Si.of(steps.get(4).result(), Kind.FORCE);
  }

  /**
   * Returns the steps that gave the numbers.
   *
   * @return five steps: weight, peak, stretch, speed, peak by speed alone
   */
  public List<Step> steps() {
    return steps;
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof LinearCatch c
        && Double.compare(mass, c.mass) == 0
        && Double.compare(fall, c.fall) == 0
        && Double.compare(stiffness, c.stiffness) == 0
        && Double.compare(gravity, c.gravity) == 0;
  }

  @Override
  public int hashCode() {
    return 31 * (31 * Double.hashCode(mass) + Double.hashCode(fall)) + Double.hashCode(stiffness);
  }

  @Override
  public String toString() {
    return "catch with " + QuantityText.print(peak(), Kind.FORCE);
  }
}
