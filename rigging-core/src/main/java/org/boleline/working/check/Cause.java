package org.boleline.working.check;

import static java.util.Objects.requireNonNull;

/**
 * A slip that gives the number a person wrote.
 *
 * @param slip the slip
 * @param formula id of the formula it was tried in
 * @param how what was done there, for instance {@code T1 for both}
 */
public record Cause(Slip slip, String formula, String how) {
  /**
   * Makes a cause.
   *
   * @param slip the slip
   * @param formula id of the formula it was tried in
   * @param how what was done there
   */
  public Cause {
    requireNonNull(slip, "slip");
    requireNonNull(formula, "formula");
    requireNonNull(how, "how");
  }

  @Override
  public String toString() {
    return "as if " + slip.words() + " (" + formula + ": " + how + ")";
  }
}
