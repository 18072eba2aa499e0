package org.boleline.drop;

import java.util.List;
import javax.measure.Quantity;
import javax.measure.quantity.Force;
import javax.measure.quantity.Length;
import org.boleline.explain.Caution;
import org.boleline.explain.Step;
import org.boleline.units.Kind;
import org.boleline.units.QuantityText;
import org.boleline.units.Si;

/**
 * A piece that was caught on a rope that is made fast: nothing runs.
 *
 * <p>Immutable and thread-safe.
 */
public final class Caught {
  private final CatchLoads loads;
  private final double weight;
  private final double stretch;
  private final double fall;
  private final EnergyAccount energy;
  private final List<Step> steps;
  private final List<Caution> cautions;

  Caught(
      CatchLoads loads,
      double weight,
      double stretch,
      double fall,
      EnergyAccount energy,
      List<Step> steps,
      List<Caution> cautions) {
    this.loads = loads;
    this.weight = weight;
    this.stretch = stretch;
    this.fall = fall;
    this.energy = energy;
    this.steps = List.copyOf(steps);
    this.cautions = List.copyOf(cautions);
  }

  /**
   * Returns tensions and forces when the piece is at its lowest: the greatest ones.
   *
   * @return the loads
   */
  public CatchLoads loads() {
    return loads;
  }

  /**
   * Returns the greatest tension of the load leg.
   *
   * @return the tension in newtons, above the weight
   */
  public Quantity<Force> peak() {
    return loads.loadLeg();
  }

  /**
   * Returns the greatest tension of the load leg as a multiple of the weight.
   *
   * @return peak over weight, above 1
   */
  public double overWeightRatio() {
    return Si.value(peak(), Kind.FORCE, "peak") / weight;
  }

  /**
   * Returns how far the piece comes down after the rope is taut.
   *
   * @return the travel in metres, above zero
   */
  public Quantity<Length> stretch() {
    return Si.of(stretch, Kind.LENGTH);
  }

  /**
   * Returns the room that the piece needs below where it starts: fall and stretch, without any
   * margin.
   *
   * @return the length in metres
   */
  public Quantity<Length> clearanceNeeded() {
    return Si.of(fall + stretch, Kind.LENGTH);
  }

  /**
   * Returns where the energy has gone.
   *
   * @return the account
   */
  public EnergyAccount energy() {
    return energy;
  }

  /**
   * Returns the steps that gave the numbers.
   *
   * <p>On a rope that is not linear the peak is found by trial. Then the steps show the balance at
   * the peak that was found, whose remainder is zero but for rounding.
   *
   * @return the steps
   */
  public List<Step> steps() {
    return steps;
  }

  /**
   * Returns what to read with care.
   *
   * @return the cautions
   */
  public List<Caution> cautions() {
    return cautions;
  }

  @Override
  public String toString() {
    return "caught with " + QuantityText.print(peak(), Kind.FORCE);
  }
}
