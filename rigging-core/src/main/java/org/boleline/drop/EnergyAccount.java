package org.boleline.drop;

import java.util.List;
import javax.measure.Quantity;
import javax.measure.quantity.Energy;
import org.boleline.units.Kind;
import org.boleline.units.Si;

/**
 * Where the energy of a fall has gone when the piece stands still at its lowest.
 *
 * <p>What the weight gives is what rope and springs store, and what turns to heat at the points and
 * the device or is taken by the hand. How the heat is shared between rope and hardware is not
 * known: for either, each of these heats is an upper bound.
 *
 * <p>Immutable and thread-safe.
 */
public final class EnergyAccount {
  private final double given;
  private final double rope;
  private final double springs;
  private final List<Double> points;
  private final double device;
  private final double hand;

  EnergyAccount(
      double given, double rope, double springs, List<Double> points, double device, double hand) {
    this.given = given;
    this.rope = rope;
    this.springs = springs;
    this.points = List.copyOf(points);
    this.device = device;
    this.hand = hand;
  }

  /**
   * Returns what the weight has given: weight times the whole way down.
   *
   * @return the energy in joules
   */
  public Quantity<Energy> given() {
    return Si.of(given, Kind.ENERGY);
  }

  /**
   * Returns what the rope stores.
   *
   * @return the energy in joules
   */
  public Quantity<Energy> storedInRope() {
    return Si.of(rope, Kind.ENERGY);
  }

  /**
   * Returns what the springs store that hold points and load.
   *
   * @return the energy in joules
   */
  public Quantity<Energy> storedInSprings() {
    return Si.of(springs, Kind.ENERGY);
  }

  /**
   * Returns the heat of friction at every point, from the load on.
   *
   * @return the heats in joules
   */
  public List<Quantity<Energy>> heatAtPoints() {
    return points.stream().map(heat -> Si.of(heat, Kind.ENERGY)).toList();
  }

  /**
   * Returns the heat in the device if the rope takes none of it: an upper bound.
   *
   * @return the heat in joules; zero where nothing ran
   */
  public Quantity<Energy> heatInDeviceAtMost() {
    return Si.of(device, Kind.ENERGY);
  }

  /**
   * Returns the work that the hand behind the device has taken.
   *
   * @return the energy in joules; zero where no hand holds the rope
   */
  public Quantity<Energy> takenByHand() {
    return Si.of(hand, Kind.ENERGY);
  }

  /**
   * Returns what the account leaves open, as a share of what was given: rounding only.
   *
   * @return the size of the difference over what was given
   */
  public double residualShare() {
    double taken = rope + springs + device + hand;
    for (double heat : points) {
      taken += heat;
    }
    return Math.abs(given - taken) / given;
  }
}
