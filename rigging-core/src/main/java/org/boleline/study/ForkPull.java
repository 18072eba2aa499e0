package org.boleline.study;

import java.util.List;
import org.boleline.explain.PlanRefusedException;
import org.boleline.explain.Refusal;
import org.boleline.explain.Step;
import org.boleline.plan.Arrangement;
import org.boleline.plan.Plan;
import org.boleline.statics.ContactResult;
import org.boleline.statics.Solution;
import org.boleline.units.Kind;

/**
 * How a rope over two stems of a fork pulls them apart or together: the forces on two contacts
 * along the line between them.
 *
 * @param arrangement id of the arrangement
 * @param firstIndex index of one contact
 * @param secondIndex index of the other, on another stem
 */
public record ForkPull(String arrangement, int firstIndex, int secondIndex) implements Study {
  /**
   * Makes the question.
   *
   * @param arrangement id of the arrangement
   * @param firstIndex index of one contact
   * @param secondIndex index of the other, on another stem
   * @throws IllegalArgumentException if an index is negative, or both are the same
   */
  public ForkPull {
    if (firstIndex < 0 || secondIndex < 0 || firstIndex == secondIndex) {
      throw new IllegalArgumentException(
          "second: wants another index than the first, both zero or more, got "
              + secondIndex
              + " after "
              + firstIndex);
    }
  }

  @Override
  public String kind() {
    return "forkPull";
  }

  /**
   * The answer.
   *
   * @param study what was asked
   * @param opening force that opens the fork; negative closes it
   * @param sway force on each that moves both the same way, toward the second contact
   * @param steps the step that gave the opening force; empty if there is none
   */
  public record Answer(ForkPull study, Found opening, Found sway, List<Step> steps)
      implements StudyAnswer {
    /**
     * Makes an answer.
     *
     * @param study what was asked
     * @param opening force that opens the fork; negative closes it
     * @param sway force on each that moves both the same way, toward the second contact
     * @param steps the step that gave the opening force; empty if there is none
     */
    public Answer {
      steps = List.copyOf(steps);
    }
  }

  /**
   * Finds the pull.
   *
   * @equation P = (f_b - f_a) / 2 (STU-6, docs/theory/studies.md)
   * @validity any stable state, slow motion, of a held load the one about to run; forces of the
   *     rope on the two contacts alone
   * @source derived: split of two forces
   * @accuracy as the result
   * @param plan the plan, not null
   * @return the answer; no figures where there is no stable state
   * @throws PlanRefusedException if the plan has no such arrangement, it has no such contact, or
   *     both are on one stem
   */
  @Override
  public Answer answer(Plan plan) {
    Arrangement of = Evaluation.find(plan, arrangement);
    int count = of.contacts().size();
    if (Math.max(firstIndex, secondIndex) >= count
        || of.contacts().get(firstIndex).stem().equals(of.contacts().get(secondIndex).stem())) {
      throw new PlanRefusedException(
          List.of(
              new Refusal(
                  Refusal.Code.CONFLICT,
                  "/arrangements/" + plan.arrangements().indexOf(of) + "/contacts",
                  "two of the " + count + " contacts, on two stems",
                  firstIndex + " and " + secondIndex)));
    }
    Evaluation evaluation = Evaluation.of(plan, arrangement, List.of());
    if (!(evaluation.slow() instanceof Solution solution)) {
      Found none = Found.none(evaluation.slow().outcome().text());
      return new Answer(this, none, none, List.of());
    }
    ContactResult a = solution.contacts().get(firstIndex);
    ContactResult b = solution.contacts().get(secondIndex);
    double[] from = a.position().in(Kind.LENGTH);
    double[] to = b.position().in(Kind.LENGTH);
    double[] line = {to[0] - from[0], to[1] - from[1], to[2] - from[2]};
    double length = Math.sqrt(dot(line, line));
    double onA = dot(a.force().in(Kind.FORCE), line) / length;
    double onB = dot(b.force().in(Kind.FORCE), line) / length;
    Step step = StudyFormulas.FORK_PULL.step(onA, onB);
    return new Answer(
        this,
        Found.of(Figure.of(step.result(), Kind.FORCE)),
        Found.of(Figure.of((onA + onB) / 2, Kind.FORCE)),
        List.of(step));
  }

  private static double dot(double[] a, double[] b) {
    return a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
  }
}
