package org.boleline.working.problem;

import static java.util.Objects.requireNonNull;

import org.boleline.working.check.Cause;

/**
 * An answer that a learner is likely to give.
 *
 * @param value the number with its unit
 * @param cause the slip that leads to it
 */
public record WrongAnswer(String value, Cause cause) {
  /**
   * Makes a wrong answer.
   *
   * @param value the number with its unit
   * @param cause the slip that leads to it
   */
  public WrongAnswer {
    requireNonNull(value, "value");
    requireNonNull(cause, "cause");
  }
}
