package org.boleline.working.problem;

import org.boleline.explain.Step;
import org.boleline.working.Worksheet;

/**
 * What a kind makes of drawn numbers, before it is looked at whether they fit.
 *
 * @param question the text
 * @param solution the worked solution
 * @param answer the step of it that is asked for
 * @param unit the unit in which the answer is shown
 * @param fits whether such a tree, rope or catch can be
 */
record Draft(String question, Worksheet solution, Step answer, String unit, boolean fits) {
  static Draft of(String question, Worksheet solution, String formula, int count, String unit) {
    Step answer =
        solution.steps().stream()
            .filter(step -> step.formula().id().equals(formula))
            .skip(count - 1L)
            .findFirst()
            .orElseThrow();
    return new Draft(question, solution, answer, unit, true);
  }

  Draft fitting(boolean condition) {
    return new Draft(question, solution, answer, unit, fits && condition);
  }
}
