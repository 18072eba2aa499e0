package org.boleline.study;

import java.util.List;
import org.apache.commons.math3.analysis.solvers.BrentSolver;
import org.boleline.explain.PlanRefusedException;
import org.boleline.plan.Plan;

/**
 * Works a number that nobody knows back from a trial on the tree, such as the modulus of elasticity
 * from the movement of a mark under a known load: with the interval that the error of measuring
 * leaves.
 *
 * @param arrangement id of the arrangement of the trial
 * @param input the number that nobody knows
 * @param from least value that is possible, above zero
 * @param to greatest value that is possible
 * @param reading what was measured
 * @param measured what came out
 * @param error how far off that may be, either way, zero or more
 */
public record Trial(
    String arrangement,
    Input input,
    Figure from,
    Figure to,
    Reading reading,
    Figure measured,
    Figure error)
    implements Study {
  private static final double CLOSE = 1e-10;

  /**
   * Makes the question.
   *
   * @param arrangement id of the arrangement of the trial
   * @param input the number that nobody knows
   * @param from least value that is possible, above zero
   * @param to greatest value that is possible
   * @param reading what was measured
   * @param measured what came out
   * @param error how far off that may be, either way, zero or more
   * @throws IllegalArgumentException if a figure is of another kind, the error is negative, or the
   *     range is empty
   */
  public Trial {
    from.requireAboveZero("from", input.kindOrNull());
    to.requireKind(input.kindOrNull());
    measured.requireKind(reading.kindOrNull());
    error.requireZeroOrMore("error", reading.kindOrNull());
    if (!(from.si() < to.si())) {
      throw new IllegalArgumentException("to: wants more than from, got " + to.text());
    }
  }

  @Override
  public String kind() {
    return "trial";
  }

  /**
   * The answer.
   *
   * @param study what was asked
   * @param value the number that gives what was measured
   * @param least its least value within the error; none if that lies outside the range
   * @param most its greatest value within the error; none if that lies outside the range
   */
  public record Answer(Trial study, Found value, Found least, Found most) implements StudyAnswer {}

  /**
   * Works the number back.
   *
   * @equation the x within the range at which the reading is as measured
   * @validity the reading only rises or only falls with the input over the range; all else in the
   *     plan is as stated
   * @source root finding (Brent)
   * @accuracy 1e-10 of the input, times how steeply it hangs on the reading
   * @param plan the plan of the trial, not null
   * @return the answer; none if nothing in the range gives what was measured
   * @throws PlanRefusedException if the plan has no such arrangement or input
   */
  @Override
  public Answer answer(Plan plan) {
    Evaluation.find(plan, arrangement);
    input.value(plan);
    Search search = new Search(plan, this);
    Found middle = search.input(measured.si());
    Found low = search.input(measured.si() - error.si());
    Found high = search.input(measured.si() + error.si());
    return search.falls()
        ? new Answer(this, middle, high, low)
        : new Answer(this, middle, low, high);
  }

  /** The reading has no number on the way. */
  private static final class NoNumber extends RuntimeException {
    private static final long serialVersionUID = 1L;

    NoNumber(String message) {
      super(message);
    }
  }

  /** The search for one measured value. */
  private static final class Search {
    private final Plan plan;
    private final Trial trial;
    private final Found low;
    private final Found high;

    Search(Plan plan, Trial trial) {
      this.plan = plan;
      this.trial = trial;
      low = read(trial.from.si());
      high = read(trial.to.si());
    }

    /** Whether what is read falls where the input rises; false if an end of the range has none. */
    boolean falls() {
      return low.si() > high.si();
    }

    Found input(double measured) {
      if (low.figure().isEmpty() || high.figure().isEmpty()) {
        return low.figure().isEmpty() ? low : high;
      }
      if ((low.si() - measured) * (high.si() - measured) > 0) {
        return Found.none(
            "nothing in the range gives "
                + Figure.of(measured, trial.reading.kindOrNull()).text()
                + ": it gives "
                + low.figure().get().text()
                + " to "
                + high.figure().get().text());
      }
      // on the logarithm: unknown stiffnesses span powers of ten
      double root;
      try {
        root =
            new BrentSolver(CLOSE, CLOSE)
                .solve(
                    200,
                    x -> number(x) - measured,
                    Math.log(trial.from.si()),
                    Math.log(trial.to.si()));
      } catch (NoNumber e) {
        return Found.none(String.valueOf(e.getMessage()));
      }
      double found = within(root);
      return Found.of(Figure.of(found, trial.input.kindOrNull()));
    }

    private double number(double logarithm) {
      Found found = read(within(logarithm));
      if (found.figure().isEmpty()) {
        throw new NoNumber("no number in between: " + found.reason().orElse(""));
      }
      return found.si();
    }

    /** The input of a logarithm, inside the range although rounding may lead out of it. */
    private double within(double logarithm) {
      return Math.min(trial.to.si(), Math.max(trial.from.si(), Math.exp(logarithm)));
    }

    private Found read(double x) {
      return Reading.values(plan, trial.arrangement, List.of(trial.reading), trial.input, x).get(0);
    }
  }
}
