package org.boleline.plan;

import static java.util.Objects.requireNonNull;

import java.util.HashSet;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import javax.measure.Quantity;
import javax.measure.quantity.Force;
import org.boleline.explain.Refusal;
import org.boleline.explain.Refusals;
import org.boleline.units.Kind;
import org.boleline.units.Si;
import org.jspecify.annotations.Nullable;

/**
 * What somebody asks the arrangements to keep to.
 *
 * <p>Immutable and thread-safe.
 */
public final class Limits {
  private final @Nullable Double handForce;
  private final List<AskedFactor> factors;
  private final List<PartLimit> parts;

  private Limits(@Nullable Double handForce, List<AskedFactor> factors, List<PartLimit> parts) {
    this.handForce = handForce;
    this.factors = List.copyOf(factors);
    this.parts = List.copyOf(parts);
  }

  /**
   * Obtains limits that state what a ground worker can hold, and asked-for factors.
   *
   * @param handForce force that a ground worker can hold, above zero, at most 1 GN, not null
   * @param factors asked-for factors, one for each part, not null
   * @return the limits
   * @throws org.boleline.explain.PlanRefusedException if the force is outside its range or a part
   *     stands twice
   */
  public static Limits of(Quantity<Force> handForce, List<AskedFactor> factors) {
    requireNonNull(handForce, "handForce");
    requireNonNull(factors, "factors");
    return Refusals.check(refusals -> stated(handForce, factors, List.of(), refusals));
  }

  /**
   * Obtains limits that are asked-for factors alone.
   *
   * @param factors asked-for factors, one for each part, not null
   * @return the limits
   * @throws org.boleline.explain.PlanRefusedException if a part stands twice
   */
  public static Limits of(List<AskedFactor> factors) {
    requireNonNull(factors, "factors");
    return Refusals.check(refusals -> stated(null, factors, List.of(), refusals));
  }

  /**
   * Obtains limits as stated, for readers of files.
   *
   * @param handForce force that a ground worker can hold, or null if none is stated
   * @param factors the asked-for factors, as stated
   * @param parts what parts of the rig can take, as stated
   * @param refusals notes what is wrong, at the limits
   * @return the limits
   */
  public static Limits stated(
      @Nullable Quantity<Force> handForce,
      List<AskedFactor> factors,
      List<PartLimit> parts,
      Refusals refusals) {
    Set<String> asked = new HashSet<>();
    for (int i = 0; i < factors.size(); i++) {
      if (!asked.add(factors.get(i).part())) {
        refusals
            .at("factors")
            .at(i)
            .at("for")
            .add(
                Refusal.Code.DUPLICATE,
                "one factor for each part",
                "\"" + factors.get(i).part() + "\" again");
      }
    }
    Set<String> names = new HashSet<>();
    for (int i = 0; i < parts.size(); i++) {
      if (!names.add(parts.get(i).name())) {
        refusals
            .at("parts")
            .at(i)
            .at("name")
            .add(
                Refusal.Code.DUPLICATE,
                "a name that no other part of the limits has",
                "\"" + parts.get(i).name() + "\" again");
      }
    }
    return new Limits(
        handForce == null
            ? null
            : (Double) refusals.at("handForce").aboveZero(handForce, Kind.FORCE, Bounds.FORCE),
        factors,
        parts);
  }

  /**
   * Returns these limits with what parts of the rig can take, in place of those stated before.
   *
   * @param newParts the parts, each with a name of its own, not null
   * @return the limits
   * @throws org.boleline.explain.PlanRefusedException if a name stands twice
   */
  public Limits withParts(List<PartLimit> newParts) {
    requireNonNull(newParts, "parts");
    return Refusals.check(
        refusals -> stated(handForce().orElse(null), factors, newParts, refusals));
  }

  /** Rules against the rest of the plan. */
  void check(Plan plan, Refusals refusals) {
    for (int i = 0; i < parts.size(); i++) {
      parts.get(i).check(plan, refusals.at("parts").at(i));
    }
  }

  /**
   * Returns what parts of the rig can take.
   *
   * @return the parts, as stated; may be empty
   */
  public List<PartLimit> parts() {
    return parts;
  }

  /**
   * Returns the force that a ground worker can hold.
   *
   * @return the force in newtons, above zero; empty if none is stated
   */
  public Optional<Quantity<Force>> handForce() {
    return handForce == null ? Optional.empty() : Optional.of(Si.of(handForce, Kind.FORCE));
  }

  /**
   * Returns the asked-for factors.
   *
   * @return the factors, as stated; may be empty
   */
  public List<AskedFactor> factors() {
    return factors;
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof Limits l
        && Objects.equals(handForce, l.handForce)
        && factors.equals(l.factors)
        && parts.equals(l.parts);
  }

  @Override
  public int hashCode() {
    return Objects.hash(handForce, factors, parts);
  }

  @Override
  public String toString() {
    return "limits: hand force " + handForce + " N, factors " + factors + ", parts " + parts;
  }
}
