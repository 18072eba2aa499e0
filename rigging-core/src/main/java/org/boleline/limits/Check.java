package org.boleline.limits;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.boleline.explain.Source;
import org.boleline.explain.Step;
import org.boleline.plan.PartLimit.CapacityIs;
import org.boleline.plan.PartLimit.Part;
import org.boleline.units.Kind;
import org.boleline.units.QuantityText;
import org.boleline.units.Si;
import org.jspecify.annotations.Nullable;

/**
 * One part of the rig: what it has to take, what it can take, and the factor between the two.
 *
 * <p>Immutable and thread-safe.
 */
public final class Check {
  /** Which state of the rig the demand is of. */
  public enum State {
    /** Slow motion. */
    SLOW("static"),
    /** Slow: the end of a held load that is about to run. */
    ABOUT_TO_RUN("static"),
    /** Slow: the end of a held load that is about to rise. */
    ABOUT_TO_RISE("static"),
    /** Peak of the catch with the rope made fast. */
    LOCKED("peak"),
    /** Peak of the catch as the rope is let run. */
    RUN("peak");

    private final String demandIs;

    State(String demandIs) {
      this.demandIs = demandIs;
    }

    /**
     * Returns whether the demand is that of slow motion or the peak of a catch.
     *
     * @return {@code static} or {@code peak}
     */
    public String demandIs() {
      return demandIs;
    }
  }

  private final Subject subject;
  private final @Nullable State state;
  private final double demand;
  private final double capacity;
  private final CapacityIs capacityIs;
  private final @Nullable Double factorAsked;
  private final @Nullable Source askedBy;
  private final List<Step> steps;
  private final @Nullable Double leastDiameter;
  private final @Nullable Double otherDemand;

  /**
   * What is checked, and where.
   *
   * @param part kind of the part
   * @param name what the check is called
   * @param place JSON pointer into the plan
   * @param where the place in words
   * @param station station on a stem, in metres; null if it is not of a stem's section
   */
  record Subject(Part part, String name, String place, String where, @Nullable Double station) {}

  /**
   * What is compared.
   *
   * @param state the state; null for a ratio of diameters
   * @param demand in the SI unit
   * @param otherDemand demand of the other catch, in the SI unit; null if there is none
   */
  record Load(@Nullable State state, double demand, @Nullable Double otherDemand) {}

  /**
   * What it can take.
   *
   * @param value in the SI unit
   * @param is what the value is
   * @param steps how it was found
   */
  record Capacity(double value, CapacityIs is, List<Step> steps) {}

  /**
   * What is asked.
   *
   * @param factor the factor; null if none is asked
   * @param by who asks
   * @param leastDiameter diameter of the stem that would do, in metres
   */
  record Asked(@Nullable Double factor, @Nullable Source by, @Nullable Double leastDiameter) {}

  Check(Subject subject, Load load, Capacity capacity, Asked asked) {
    this.subject = subject;
    this.state = load.state();
    this.demand = load.demand();
    this.otherDemand = load.otherDemand();
    this.capacity = capacity.value();
    this.capacityIs = capacity.is();
    this.steps = List.copyOf(capacity.steps());
    this.factorAsked = asked.factor();
    this.askedBy = asked.by();
    this.leastDiameter = asked.leastDiameter();
  }

  /**
   * Returns what the check is called.
   *
   * @return the name that the plan gives it; {@code hand} for the hand force
   */
  public String name() {
    return subject.name();
  }

  /**
   * Returns the kind of the part.
   *
   * @return the kind
   */
  public Part part() {
    return subject.part();
  }

  /**
   * Returns where in the plan.
   *
   * @return a JSON pointer, such as {@code /arrangements/0/contacts/1}
   */
  public String place() {
    return subject.place();
  }

  /**
   * Returns where along the stem the stress is.
   *
   * @return the station in metres; empty unless the part is a stem
   */
  public Optional<Quantity<Length>> station() {
    return length(subject.station());
  }

  /**
   * Returns which state the demand is of.
   *
   * @return the state; empty for a ratio of diameters, which no load changes
   */
  public Optional<State> state() {
    return Optional.ofNullable(state);
  }

  /**
   * Returns what demand and capacity are of.
   *
   * @return the kind
   */
  public Kind<?> kind() {
    return part().kind();
  }

  /**
   * Returns what the part has to take; of a bend the diameter of the rope.
   *
   * @param <Q> what it is of
   * @param kind that of the check, not null
   * @return the demand in the SI unit, zero or more; a stress may be below zero where the side that
   *     bending presses is pulled
   * @throws IllegalArgumentException if the check is of another kind
   */
  public <Q extends Quantity<Q>> Quantity<Q> demand(Kind<Q> kind) {
    return amount(demand, kind);
  }

  /**
   * Returns what the part can take; of a bend its diameter.
   *
   * @param <Q> what it is of
   * @param kind that of the check, not null
   * @return the capacity in the SI unit, above zero
   * @throws IllegalArgumentException if the check is of another kind
   */
  public <Q extends Quantity<Q>> Quantity<Q> capacity(Kind<Q> kind) {
    return amount(capacity, kind);
  }

  /**
   * Returns what the part has to take in the other catch: let run beside a locked one, or locked
   * beside one that is let run.
   *
   * @param <Q> what it is of
   * @param kind that of the check, not null
   * @return the demand in the SI unit; empty unless the plan states both
   * @throws IllegalArgumentException if the check is of another kind
   */
  public <Q extends Quantity<Q>> Optional<Quantity<Q>> otherDemand(Kind<Q> kind) {
    return otherDemand == null ? Optional.empty() : Optional.of(amount(otherDemand, kind));
  }

  private <Q extends Quantity<Q>> Quantity<Q> amount(double value, Kind<Q> kind) {
    if (kind != kind()) {
      throw new IllegalArgumentException("kind: wants " + kind() + ", got " + kind);
    }
    return Si.of(value, kind);
  }

  /**
   * Returns what the capacity is.
   *
   * @return the meaning
   */
  public CapacityIs capacityIs() {
    return capacityIs;
  }

  /**
   * Returns the factor between capacity and demand.
   *
   * @equation f = C / D (LIM-1, theory/limits.md)
   * @validity a demand above zero
   * @source definition
   * @accuracy rounding only
   * @return the factor, above zero; empty where there is no demand
   */
  public OptionalDouble factorFound() {
    double factor = demand > 0 ? capacity / demand : Double.NaN;
    return Double.isFinite(factor) ? OptionalDouble.of(factor) : OptionalDouble.empty();
  }

  /**
   * Returns demand over capacity: how much of what it can take a part has to.
   *
   * @return the share; above 1 where the demand exceeds the capacity
   */
  public double usedShare() {
    return demand / capacity;
  }

  /**
   * Returns demand over capacity, times the factor that somebody asks for: how much a part uses of
   * what that factor leaves.
   *
   * @return the share; above 1 where the factor is not met; empty if nobody asks for a factor
   */
  public OptionalDouble usedOfAskedShare() {
    return factorAsked == null
        ? OptionalDouble.empty()
        : OptionalDouble.of(factorAsked * demand / capacity);
  }

  /**
   * Returns the factor that somebody asks for.
   *
   * @return the factor; empty if nobody asks for one
   */
  public OptionalDouble factorAsked() {
    return factorAsked == null ? OptionalDouble.empty() : OptionalDouble.of(factorAsked);
  }

  /**
   * Returns who asks for the factor.
   *
   * @return the source, whose id is the words of the plan; empty if nobody asks for one
   */
  public Optional<Source> askedBy() {
    return Optional.ofNullable(askedBy);
  }

  /**
   * Tells whether the factor that is asked for is found.
   *
   * @return true if capacity is the factor times demand or more; empty if nobody asks for a factor
   */
  public Optional<Boolean> met() {
    return factorAsked == null ? Optional.empty() : Optional.of(capacity >= factorAsked * demand);
  }

  /**
   * Returns the diameter of the stem that would do there, moment and axial force staying as they
   * are.
   *
   * @return the outer diameter in metres, about the cavity that is there; empty unless the part is
   *     a stem, its pressed side is checked and a factor is asked for
   */
  public Optional<Quantity<Length>> leastDiameter() {
    return length(leastDiameter);
  }

  private static Optional<Quantity<Length>> length(@Nullable Double metres) {
    return metres == null ? Optional.empty() : Optional.of(Si.of(metres, Kind.LENGTH));
  }

  /**
   * Returns the steps that gave the numbers.
   *
   * @return the steps
   */
  public List<Step> steps() {
    return steps;
  }

  /**
   * Returns the check as a sentence, with three figures.
   *
   * @return the sentence
   */
  public String sentence() {
    StringBuilder out = new StringBuilder(name()).append(subject.where());
    if (state != null) {
      out.append(
          switch (state) {
            case SLOW -> ", slow";
            case ABOUT_TO_RUN -> ", slow, about to run";
            case ABOUT_TO_RISE -> ", slow, about to rise";
            case LOCKED -> ", peak of the locked catch";
            case RUN -> ", peak of the catch let run";
          });
    }
    out.append(": ").append(text(demand)).append(" against ").append(text(capacity));
    if (factorFound().isPresent()) {
      out.append(", factor ").append(QuantityText.number(factorFound().getAsDouble(), 3));
    }
    return out.append(": ").append(verdict()).append('.').toString();
  }

  /**
   * Returns what is said of the factor that is asked for.
   *
   * @return words such as {@code meets the factor 10 asked by the crew leader}
   */
  public String verdict() {
    if (factorAsked == null || askedBy == null) {
      return "no factor asked";
    }
    return (met().orElseThrow() ? "meets" : "does not meet")
        + " the factor "
        + QuantityText.number(factorAsked)
        + " asked by "
        + askedBy.id();
  }

  private String text(double value) {
    return QuantityText.number(value, 3) + " " + kind().ucum();
  }

  /**
   * Returns where, in words.
   *
   * @return words such as {@code at point 1}
   */
  public String where() {
    return subject.where().strip();
  }

  @Override
  public String toString() {
    return sentence();
  }
}
