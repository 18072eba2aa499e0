package org.boleline.statics;

import static java.util.Objects.requireNonNull;

import java.util.List;
import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.Force;
import javax.measure.quantity.Length;
import org.boleline.explain.Caution;
import org.boleline.plan.Arrangement;
import org.boleline.plan.Plan;
import org.boleline.rope.Motion;
import org.boleline.units.Kind;
import org.boleline.units.Si;
import org.jspecify.annotations.Nullable;

/**
 * A stable state of rope and stems under the full load.
 *
 * <p>For a held load this is the state about to run (the lowering end); {@link #otherEnd()} is the
 * one about to rise, and every tension lies between the two.
 *
 * <p>Immutable and thread-safe.
 */
public final class Solution implements ArrangementResult {
  private final Plan plan;
  private final Arrangement arrangement;
  private final Motion motion;
  private final double residualForce;
  private final double residualMoment;
  private final double stiffnessRatio;
  private final List<Leg> legs;
  private final List<ContactResult> contacts;
  private final double tailTension;
  private final double handTension;
  private final List<StemResult> stems;
  private final @Nullable Solution otherEnd;
  private final List<Caution> cautions;

  Solution(
      Plan plan,
      Arrangement arrangement,
      Motion motion,
      double residualForce,
      double residualMoment,
      double stiffnessRatio,
      List<Leg> legs,
      List<ContactResult> contacts,
      double tailTension,
      double handTension,
      List<StemResult> stems,
      @Nullable Solution otherEnd,
      List<Caution> cautions) {
    this.plan = requireNonNull(plan);
    this.arrangement = requireNonNull(arrangement);
    this.motion = requireNonNull(motion);
    this.residualForce = residualForce;
    this.residualMoment = residualMoment;
    this.stiffnessRatio = stiffnessRatio;
    this.legs = List.copyOf(legs);
    this.contacts = List.copyOf(contacts);
    this.tailTension = tailTension;
    this.handTension = handTension;
    this.stems = List.copyOf(stems);
    this.otherEnd = otherEnd;
    this.cautions = List.copyOf(cautions);
  }

  Solution with(@Nullable Solution newOtherEnd, List<Caution> newCautions) {
    return new Solution(
        plan,
        arrangement,
        motion,
        residualForce,
        residualMoment,
        stiffnessRatio,
        legs,
        contacts,
        tailTension,
        handTension,
        stems,
        newOtherEnd,
        newCautions);
  }

  @Override
  public String id() {
    return arrangement.id();
  }

  @Override
  public Outcome outcome() {
    return Outcome.STABLE;
  }

  @Override
  public List<Caution> cautions() {
    return cautions;
  }

  /**
   * Returns the arrangement that was analysed.
   *
   * @return the arrangement
   */
  public Arrangement arrangement() {
    return arrangement;
  }

  /**
   * Returns the plan the arrangement belongs to.
   *
   * @return the plan
   */
  public Plan plan() {
    return plan;
  }

  /**
   * Returns which way the rope is about to slip in this state.
   *
   * @return lowering or raising; never held
   */
  public Motion motion() {
    return motion;
  }

  /**
   * Returns the largest unbalanced force, relative to the load.
   *
   * @return zero or more, at most 1e-9
   */
  public double residualForceRatio() {
    return residualForce;
  }

  /**
   * Returns the largest unbalanced moment, relative to all that is applied (tension of the load leg
   * and weight of all stems) times the length of the longest stem.
   *
   * @return zero or more, at most 1e-9
   */
  public double residualMomentRatio() {
    return residualMoment;
  }

  /**
   * Returns the least stiffness of the loaded stems relative to the same deformation of the
   * unloaded ones: the least eigenvalue of the loaded tangent over the tangent without any load,
   * own weight included among the loads.
   *
   * @return 1 without load, 0 at the loss of stability
   */
  public double stiffnessRatio() {
    return stiffnessRatio;
  }

  /**
   * Returns the legs of the rope, from the piece to the tail; contacts that do not bear are passed
   * by.
   *
   * @return at least one leg
   */
  public List<Leg> legs() {
    return legs;
  }

  /**
   * Returns the contacts.
   *
   * @return one for each contact of the arrangement, from the piece to the tail
   */
  public List<ContactResult> contacts() {
    return contacts;
  }

  /**
   * Returns the tension at the tail: behind the last contact, before a lowering device.
   *
   * @return the tension, in newtons
   */
  public Quantity<Force> tailTension() {
    return Si.of(tailTension, Kind.FORCE);
  }

  /**
   * Returns the tension behind the wraps of a lowering device.
   *
   * @return the tension, in newtons; empty if the tail ends elsewhere
   */
  public Optional<Quantity<Force>> handTension() {
    return Double.isNaN(handTension)
        ? Optional.empty()
        : Optional.of(Si.of(handTension, Kind.FORCE));
  }

  /**
   * Returns the stems.
   *
   * @return one for each stem of the plan, in its order
   */
  public List<StemResult> stems() {
    return stems;
  }

  /**
   * Returns the state of one stem.
   *
   * @param id the id of the stem
   * @return the stem; empty if the plan has no such stem
   */
  public Optional<StemResult> stem(String id) {
    return stems.stream().filter(s -> s.id().equals(id)).findFirst();
  }

  /**
   * Returns the other end of what is possible at rest.
   *
   * @return the state about to rise, for a held load; empty otherwise
   */
  public Optional<Solution> otherEnd() {
    return Optional.ofNullable(otherEnd);
  }

  /**
   * Returns what acts on the part of a stem above a cut: contacts, a device, hung masses and own
   * weight, from the numbers of this result alone, by the code of {@link #check}.
   *
   * @param stem the id of the stem
   * @param at where the stem is cut; the nearest station of its profile is taken, with what acts
   *     there
   * @return the forces, from the tip down, own weight at the end
   * @throws IllegalArgumentException if the plan has no such stem
   */
  public List<ActingForce> forcesAbove(String stem, Quantity<Length> at) {
    StemResult result =
        stem(stem)
            .orElseThrow(
                () -> new IllegalArgumentException("stem: wants one of the plan, got " + stem));
    return BalanceCheck.above(this, result, Si.value(at, Kind.LENGTH, "at"));
  }

  /**
   * Recomputes balance of forces and moments, friction and one-sided slings from the numbers of
   * this result alone, by plain code that shares nothing with the solver.
   *
   * @return what does not balance; empty if all does
   */
  public List<Imbalance> check() {
    return BalanceCheck.of(this);
  }
}
