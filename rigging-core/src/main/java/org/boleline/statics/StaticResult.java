package org.boleline.statics;

import static java.util.Objects.requireNonNull;

import java.util.List;
import java.util.Optional;
import org.boleline.explain.Caution;
import org.boleline.explain.Datum;
import org.boleline.plan.Plan;

/**
 * The static analysis of a plan: one result for each arrangement, in the plan's order.
 *
 * <p>Immutable and thread-safe.
 */
public final class StaticResult {
  private final Plan plan;
  private final List<ArrangementResult> arrangements;
  private final List<Caution> cautions;

  StaticResult(Plan plan, List<ArrangementResult> arrangements, List<Caution> cautions) {
    this.plan = requireNonNull(plan);
    this.arrangements = List.copyOf(arrangements);
    this.cautions = List.copyOf(cautions);
  }

  /**
   * Returns the plan that was analysed.
   *
   * @return the plan
   */
  public Plan plan() {
    return plan;
  }

  /**
   * Returns the results.
   *
   * @return one for each arrangement, in the plan's order
   */
  public List<ArrangementResult> arrangements() {
    return arrangements;
  }

  /**
   * Returns the result of one arrangement.
   *
   * @param id its id
   * @return the result; empty if the plan has no such arrangement
   */
  public Optional<ArrangementResult> arrangement(String id) {
    return arrangements.stream().filter(a -> a.id().equals(id)).findFirst();
  }

  /**
   * Returns the cautions that belong to the whole plan.
   *
   * @return the cautions
   */
  public List<Caution> cautions() {
    return cautions;
  }

  /**
   * Returns every default and datum that was used without being stated.
   *
   * @return the data, with their sources
   */
  public List<Datum> taken() {
    return plan.taken();
  }
}
