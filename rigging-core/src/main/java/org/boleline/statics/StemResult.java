package org.boleline.statics;

import static java.util.Objects.requireNonNull;

import java.util.List;
import java.util.Optional;
import javax.measure.quantity.Length;
import org.boleline.geometry.Vector;

/**
 * What a stem carries and how it moves.
 *
 * <p>Immutable and thread-safe.
 */
public final class StemResult {
  private final String id;
  private final Vector<Length> tipPosition;
  private final Vector<Length> tipMovement;
  private final Reaction base;
  private final Reaction riggingBase;
  private final List<Share> shares;
  private final Extreme bendingStress;
  private final Extreme compressionStress;
  private final Extreme tensionStress;
  private final Optional<StrengthReach> strengthReach;
  private final List<MarkResult> marks;
  private final StemProfile profile;

  StemResult(
      String id,
      Vector<Length> tipPosition,
      Vector<Length> tipMovement,
      Reaction base,
      Reaction riggingBase,
      List<Share> shares,
      Extreme bendingStress,
      Extreme compressionStress,
      Extreme tensionStress,
      Optional<StrengthReach> strengthReach,
      List<MarkResult> marks,
      StemProfile profile) {
    this.id = requireNonNull(id);
    this.tipPosition = requireNonNull(tipPosition);
    this.tipMovement = requireNonNull(tipMovement);
    this.base = requireNonNull(base);
    this.riggingBase = requireNonNull(riggingBase);
    this.shares = List.copyOf(shares);
    this.bendingStress = requireNonNull(bendingStress);
    this.compressionStress = requireNonNull(compressionStress);
    this.tensionStress = requireNonNull(tensionStress);
    this.strengthReach = requireNonNull(strengthReach);
    this.marks = List.copyOf(marks);
    this.profile = requireNonNull(profile);
  }

  /**
   * Returns the id of the stem.
   *
   * @return the id
   */
  public String id() {
    return id;
  }

  /**
   * Returns where the tip is, loaded.
   *
   * @return the position, in metres
   */
  public Vector<Length> tipPosition() {
    return tipPosition;
  }

  /**
   * Returns how far the tip has moved, from own weight alone to loaded.
   *
   * @return the movement, in metres
   */
  public Vector<Length> tipMovement() {
    return tipMovement;
  }

  /**
   * Returns what the ground does to the base, rig load and own weight together.
   *
   * @return the reaction
   */
  public Reaction base() {
    return base;
  }

  /**
   * Returns the part of it that balances the rig load alone, in the loaded shape.
   *
   * @return the reaction
   */
  public Reaction riggingBase() {
    return riggingBase;
  }

  /**
   * Returns what acts on the stem, by origin; the parts add up to minus the base reaction.
   *
   * @return the parts that are not zero
   */
  public List<Share> shares() {
    return shares;
  }

  /**
   * Returns the greatest bending stress.
   *
   * @return the stress and its station
   */
  public Extreme bendingStress() {
    return bendingStress;
  }

  /**
   * Returns the greatest compression of a fibre, bending and axial together.
   *
   * @return the stress, positive, and its station
   */
  public Extreme compressionStress() {
    return compressionStress;
  }

  /**
   * Returns the greatest tension of a fibre, bending and axial together.
   *
   * @return the stress and its station; negative if all fibres are pressed
   */
  public Extreme tensionStress() {
    return tensionStress;
  }

  /**
   * Returns at which share of the rig load the stated strength is reached.
   *
   * @return the share; empty if no strength is known, or none up to a thousand times the load
   *     reaches it
   */
  public Optional<StrengthReach> strengthReach() {
    return strengthReach;
  }

  /**
   * Returns where the named stations have gone.
   *
   * @return one for each mark of the plan
   */
  public List<MarkResult> marks() {
    return marks;
  }

  /**
   * Returns shape and internal forces along the stem.
   *
   * @return the profile
   */
  public StemProfile profile() {
    return profile;
  }
}
