package org.boleline.explain;

import java.util.List;
import java.util.stream.Collectors;

/**
 * The input describes nothing that can be analysed: all reasons at once, each with its place.
 *
 * <p>The message is one sentence a line.
 */
public final class PlanRefusedException extends IllegalArgumentException {
  private static final long serialVersionUID = 1L;

  /** The reasons, in the order they were found. */
  private final transient List<Refusal> refusals;

  /**
   * Makes the exception.
   *
   * @param refusals the reasons, at least one
   */
  public PlanRefusedException(List<Refusal> refusals) {
    super(refusals.stream().map(Refusal::sentence).collect(Collectors.joining("\n")));
    if (refusals.isEmpty()) {
      throw new IllegalArgumentException("wants at least one refusal");
    }
    this.refusals = List.copyOf(refusals);
  }

  /**
   * Returns the reasons.
   *
   * @return at least one
   */
  public List<Refusal> refusals() {
    return refusals;
  }
}
