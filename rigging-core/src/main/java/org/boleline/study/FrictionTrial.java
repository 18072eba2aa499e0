package org.boleline.study;

import org.boleline.explain.Step;
import org.boleline.plan.Plan;
import org.boleline.units.Kind;

/**
 * Works friction back from the tensions on both sides of a point whose rope slips, with the
 * interval that the error of measuring leaves.
 *
 * @param tight tension on the tight side, at least the slack one
 * @param slack tension on the slack side, above the error
 * @param error how far off either may be, either way, zero or more
 * @param turn turn of the rope over the point, above zero
 */
public record FrictionTrial(Figure tight, Figure slack, Figure error, Figure turn)
    implements Study {
  /**
   * Makes the question.
   *
   * @param tight tension on the tight side, at least the slack one
   * @param slack tension on the slack side, above the error
   * @param error how far off either may be, either way, zero or more
   * @param turn turn of the rope over the point, above zero
   * @throws IllegalArgumentException if a figure is of another kind or outside its range
   */
  public FrictionTrial {
    tight.requireAboveZero("tight", Kind.FORCE);
    slack.requireAboveZero("slack", Kind.FORCE);
    error.requireZeroOrMore("error", Kind.FORCE);
    turn.requireAboveZero("turn", Kind.ANGLE);
    if (tight.si() < slack.si() || error.si() >= slack.si()) {
      throw new IllegalArgumentException(
          "slack: wants more than the error and at most the tight tension, got " + slack.text());
    }
  }

  @Override
  public String kind() {
    return "frictionTrial";
  }

  /**
   * The answer.
   *
   * @param study what was asked
   * @param value the coefficient of friction
   * @param least its least value within the error, zero or more
   * @param most its greatest value within the error
   * @param step the step that gave the value
   */
  public record Answer(FrictionTrial study, Figure value, Figure least, Figure most, Step step)
      implements StudyAnswer {}

  /**
   * Works the friction back.
   *
   * @equation mu = ln(T_tight / T_slack) / w (STU-7, docs/theory/studies.md)
   * @validity slow and steady; errors of both tensions at their worst at once
   * @source Euler-Eytelwein
   * @accuracy rounding only
   * @param plan the plan; nothing of it matters
   * @return the answer
   */
  @Override
  public Answer answer(Plan plan) {
    return answer();
  }

  /**
   * Works the friction back; no plan is needed.
   *
   * @return the answer, as of {@link #answer(Plan)}
   */
  public Answer answer() {
    double more = tight.si();
    double less = slack.si();
    double off = error.si();
    Step step = step(more, less);
    return new Answer(
        this,
        Figure.ofRatio(step.result()),
        Figure.ofRatio(step(Math.max(more - off, less + off), less + off).result()),
        Figure.ofRatio(step(more + off, less - off).result()),
        step);
  }

  private Step step(double more, double less) {
    return StudyFormulas.FRICTION_FROM_TENSIONS.step(more, less, turn.si());
  }
}
