package org.boleline.drop;

import java.util.Arrays;
import java.util.List;
import javax.measure.Quantity;
import javax.measure.quantity.Energy;
import org.boleline.internal.motion.MotionRecord;
import org.boleline.units.Kind;
import org.boleline.units.Si;

/**
 * Where the energy of a fall has gone when the time is up.
 *
 * <p>How the heat is shared between rope and hardware is not known: for either, each of these heats
 * is an upper bound. Immutable and thread-safe.
 */
public final class MotionAccount {
  private final double given;
  private final double[] heats;
  private final double rope;
  private final double stems;
  private final double piece;
  private final double residual;
  private final int points;

  MotionAccount(MotionRecord record, int points) {
    given = record.given();
    heats = record.heats();
    piece = given + record.energies()[0] - record.energies()[3];
    stems = record.energies()[1];
    rope = record.energies()[2];
    residual = record.residualShare();
    this.points = points;
  }

  /**
   * Returns what the piece had at the start and its weight gave down to its lowest place.
   *
   * @return the energy in joules
   */
  public Quantity<Energy> given() {
    return Si.of(given, Kind.ENERGY);
  }

  /**
   * Returns what the rope stores at the end.
   *
   * @return the energy in joules
   */
  public Quantity<Energy> storedInRope() {
    return Si.of(rope, Kind.ENERGY);
  }

  /**
   * Returns what the stems' bending and motion hold at the end.
   *
   * @return the energy in joules
   */
  public Quantity<Energy> heldByStems() {
    return Si.of(stems, Kind.ENERGY);
  }

  /**
   * Returns what the piece holds at the end: its motion, and its weight above its lowest place.
   *
   * <p>With this the account is whole: what was given is the sum of what piece, rope and stems hold
   * and of all that was lost, but for {@link #residualShare()}.
   *
   * @return the energy in joules
   */
  public Quantity<Energy> heldByPiece() {
    return Si.of(piece, Kind.ENERGY);
  }

  /**
   * Returns the heat of friction at every point, from the piece on.
   *
   * @return the heats in joules
   */
  public List<Quantity<Energy>> heatAtPoints() {
    return Arrays.stream(heats, 0, points).mapToObj(q -> Si.of(q, Kind.ENERGY)).toList();
  }

  /**
   * Returns what the device and the hand behind it took: for the heat in the device an upper bound.
   *
   * @return the energy in joules
   */
  public Quantity<Energy> takenAtDeviceAtMost() {
    return Si.of(heats[points], Kind.ENERGY);
  }

  /**
   * Returns what the rope lost in itself by unloading below its curve.
   *
   * @return the energy in joules
   */
  public Quantity<Energy> lostInRope() {
    return Si.of(heats[points + 1], Kind.ENERGY);
  }

  /**
   * Returns what the damping of the stems took.
   *
   * @return the energy in joules
   */
  public Quantity<Energy> lostInStems() {
    return Si.of(heats[points + 2], Kind.ENERGY);
  }

  /**
   * Returns the greatest gap in the account at any time, as a share of what was given: the error of
   * the steps.
   *
   * @return the size of the gap over what was given
   */
  public double residualShare() {
    return residual;
  }
}
