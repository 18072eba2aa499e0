package org.boleline.study;

import java.util.List;
import javax.measure.Quantity;
import javax.measure.quantity.Force;
import org.apache.commons.math3.analysis.solvers.BrentSolver;
import org.boleline.explain.PlanRefusedException;
import org.boleline.explain.Step;
import org.boleline.geometry.Turn;
import org.boleline.plan.Plan;
import org.boleline.units.Kind;
import org.boleline.units.Si;

/**
 * What a trial on the tree tells of a number that nobody knows: with the interval that the error of
 * measuring leaves.
 *
 * @param value the number that gives what was measured
 * @param least its least value within the error
 * @param most its greatest value within the error
 */
public record Trial(Found value, Found least, Found most) {
  private static final double CLOSE = 1e-10;

  /**
   * Works an input back from a reading, such as the modulus of elasticity from the movement of a
   * mark under a known load.
   *
   * @equation the x within the range at which the reading is as measured
   * @validity the reading only rises or only falls with the input over the range; all else in the
   *     plan is as stated
   * @source root finding (Brent)
   * @accuracy 1e-10 of the input, times how steeply it hangs on the reading
   * @param plan the plan of the trial, not null
   * @param arrangement id of the arrangement, not null
   * @param unknown the number that nobody knows, not null
   * @param from least value that is possible, above zero, of its kind, not null
   * @param to greatest value that is possible, of its kind, not null
   * @param reading what was measured, not null
   * @param measured what came out, of the reading's kind, not null
   * @param error how far off that may be, either way, not negative, not null
   * @return the input; none if nothing in the range gives what was measured
   * @throws IllegalArgumentException if a figure is of another kind, the error is negative, or the
   *     range is empty
   * @throws PlanRefusedException if the plan has no such arrangement
   */
  public static Trial of(
      Plan plan,
      String arrangement,
      Input unknown,
      Figure from,
      Figure to,
      Reading reading,
      Figure measured,
      Figure error) {
    Evaluation.find(plan, arrangement);
    from.requireKind(unknown.kindOrNull());
    to.requireKind(unknown.kindOrNull());
    measured.requireKind(reading.kindOrNull());
    error.requireKind(reading.kindOrNull());
    if (!(from.si() > 0 && from.si() < to.si())) {
      throw new IllegalArgumentException(
          "to: wants more than from, which is above zero, got " + to.text());
    }
    if (error.si() < 0) {
      throw new IllegalArgumentException("error: wants zero or more, got " + error.text());
    }
    Search search = new Search(plan, arrangement, unknown, from.si(), to.si(), reading);
    Found middle = search.input(measured.si());
    Found low = search.input(measured.si() - error.si());
    Found high = search.input(measured.si() + error.si());
    return low.si() > high.si() ? new Trial(middle, high, low) : new Trial(middle, low, high);
  }

  /** The reading has no number on the way. */
  private static final class NoNumber extends RuntimeException {
    private static final long serialVersionUID = 1L;

    NoNumber(String message) {
      super(message);
    }
  }

  /** The search for one measured value. */
  private record Search(
      Plan plan, String arrangement, Input unknown, double from, double to, Reading reading) {
    Found input(double measured) {
      Found low = read(from);
      Found high = read(to);
      if (low.figure().isEmpty() || high.figure().isEmpty()) {
        return low.figure().isEmpty() ? low : high;
      }
      if ((low.si() - measured) * (high.si() - measured) > 0) {
        return Found.none(
            "nothing in the range gives "
                + Figure.of(measured, reading.kindOrNull()).text()
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
                .solve(200, x -> number(x) - measured, Math.log(from), Math.log(to));
      } catch (NoNumber e) {
        return Found.none(String.valueOf(e.getMessage()));
      }
      double found = Math.min(to, Math.max(from, Math.exp(root)));
      return Found.of(Figure.of(found, unknown.kindOrNull()));
    }

    private double number(double logarithm) {
      Found found = read(Math.min(to, Math.max(from, Math.exp(logarithm))));
      if (found.figure().isEmpty()) {
        throw new NoNumber("no number in between: " + found.reason().orElse(""));
      }
      return found.si();
    }

    private Found read(double x) {
      return Reading.values(plan, arrangement, List.of(reading), unknown, x).get(0);
    }
  }

  /**
   * Works friction back from the tensions on both sides of a contact whose rope slips.
   *
   * @equation mu = ln(T_tight / T_slack) / w (STU-7, docs/theory/studies.md)
   * @validity slow and steady; errors of both tensions at their worst at once
   * @source Euler-Eytelwein
   * @accuracy rounding only
   * @param tight tension on the tight side, at least the slack one, not null
   * @param slack tension on the slack side, above the error, not null
   * @param error how far off either may be, either way, not negative, not null
   * @param turn turn of the rope over the contact, above zero, not null
   * @return the coefficient with its interval, at least zero
   * @throws IllegalArgumentException if an argument is outside its range
   */
  public static Trial friction(
      Quantity<Force> tight, Quantity<Force> slack, Quantity<Force> error, Turn turn) {
    double off = Si.valueZeroOrMore(error, Kind.FORCE, "error");
    double more = Si.valueAboveZero(tight, Kind.FORCE, "tight");
    double less = Si.valueAboveZero(slack, Kind.FORCE, "slack");
    double w = Si.valueAboveZero(turn.angle(), Kind.ANGLE, "turn");
    if (more < less || off >= less) {
      throw new IllegalArgumentException(
          "slack: wants more than the error and at most the tight tension, got " + less + " N");
    }
    return new Trial(
        friction(more, less, w),
        friction(Math.max(more - off, less + off), less + off, w),
        friction(more + off, less - off, w));
  }

  private static Found friction(double tight, double slack, double turn) {
    Step step = StudyFormulas.FRICTION_FROM_TENSIONS.step(tight, slack, turn);
    return Found.of(Figure.ofRatio(step.result()));
  }
}
