package org.boleline.study;

import static java.util.Objects.requireNonNull;

import java.util.List;
import org.boleline.explain.PlanRefusedException;
import org.boleline.explain.Refusal;
import org.boleline.explain.Step;
import org.boleline.statics.ContactResult;
import org.boleline.statics.Solution;
import org.boleline.units.Kind;

/**
 * How a rope over two stems of a fork pulls them apart or together: the forces on two contacts
 * along the line between them.
 *
 * @param opening force that opens the fork, in newtons; negative closes it
 * @param sway force on each that moves both the same way, toward the second contact
 * @param step the step that gave the opening force
 */
public record ForkPull(Figure opening, Figure sway, Step step) {
  /**
   * Obtains the pull between two contacts.
   *
   * @equation P = (f_b - f_a) / 2 (STU-6, docs/theory/studies.md)
   * @validity any stable state; forces of the rope on the two contacts alone
   * @source derived: split of two forces
   * @accuracy as the result
   * @param solution the stable state, not null
   * @param firstIndex index of one contact
   * @param secondIndex index of the other, on another stem
   * @return the pull
   * @throws PlanRefusedException if there is no such contact, or both are on one stem
   */
  public static ForkPull of(Solution solution, int firstIndex, int secondIndex) {
    requireNonNull(solution, "solution");
    int count = solution.contacts().size();
    if (Math.min(firstIndex, secondIndex) < 0
        || Math.max(firstIndex, secondIndex) >= count
        || solution
            .contacts()
            .get(firstIndex)
            .stem()
            .equals(solution.contacts().get(secondIndex).stem())) {
      throw new PlanRefusedException(
          List.of(
              new Refusal(
                  Refusal.Code.CONFLICT,
                  "/contacts",
                  "two of the " + count + " contacts, on two stems",
                  firstIndex + " and " + secondIndex)));
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
    return new ForkPull(
        Figure.of(step.result(), Kind.FORCE), Figure.of((onA + onB) / 2, Kind.FORCE), step);
  }

  private static double dot(double[] a, double[] b) {
    return a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
  }
}
