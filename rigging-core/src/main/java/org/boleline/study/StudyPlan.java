package org.boleline.study;

import java.util.List;
import org.boleline.explain.PlanRefusedException;
import org.boleline.plan.Plan;

/**
 * A plan together with the studies that are asked of it, as a plan file states them.
 *
 * @param plan the plan
 * @param studies the studies, in the order of the file
 */
public record StudyPlan(Plan plan, List<Study> studies) {
  /**
   * Makes it.
   *
   * @param plan the plan
   * @param studies the studies, in the order of the file
   */
  public StudyPlan {
    studies = List.copyOf(studies);
  }

  /**
   * Answers all studies.
   *
   * @return one answer for each, in their order; {@link NoAnswer} for one that does not fit the
   *     plan
   */
  public List<StudyAnswer> answers() {
    return studies.stream().map(this::answer).toList();
  }

  private StudyAnswer answer(Study study) {
    try {
      return study.answer(plan);
    } catch (PlanRefusedException e) {
      return new NoAnswer(
          study, String.join("; ", e.refusals().stream().map(r -> r.sentence()).toList()));
    }
  }
}
