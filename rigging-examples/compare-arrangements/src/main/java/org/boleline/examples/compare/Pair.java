package org.boleline.examples.compare;

import java.util.function.DoubleFunction;
import javax.measure.Quantity;
import javax.measure.quantity.Force;
import org.boleline.plan.Plan;
import org.boleline.rope.Motion;
import org.boleline.statics.Solution;
import org.boleline.units.Kind;
import org.boleline.units.Si;

/**
 * Two neighbouring arrangements that both carry the load.
 *
 * <p>Where one of both is held, the state of the same motion is compared; where both are, the state
 * about to run.
 *
 * @param first the first arrangement's answer, with both ends if it is held
 * @param second the second one's
 * @param difference what the plan states differently
 * @param wording how to say it
 */
record Pair(Solution first, Solution second, PlanDifference difference, Wording wording) {
  /** Below this a number stays as it is. */
  static final double STAYS = 0.01;

  Solution from() {
    return end(first, second.motion());
  }

  Solution to() {
    return end(second, from().motion());
  }

  private static Solution end(Solution solution, Motion motion) {
    return solution.motion() == motion ? solution : solution.otherEnd().orElse(solution);
  }

  Plan plan() {
    return first.plan();
  }

  UnitSystem units() {
    return wording.units();
  }

  static boolean differ(double a, double b) {
    return Effect.difference(a, b) >= STAYS;
  }

  static double newtons(Quantity<Force> force) {
    return Si.value(force, Kind.FORCE, "force");
  }

  /** Two numbers with their unit: the second instead of the first. */
  static String insteadOf(DoubleFunction<Scale> kind, double a, double b) {
    double greater = Math.max(Math.abs(a), Math.abs(b));
    Scale scale = kind.apply(greater);
    int decimals = scale.decimals(greater);
    String unit = Scale.HARD_BLANK + scale.shown();
    return scale.bare(b, decimals) + unit + " instead of " + scale.bare(a, decimals) + unit;
  }

  /** How a number goes from the first to the second. */
  static String fromTo(DoubleFunction<Scale> kind, double a, double b) {
    double greater = Math.max(Math.abs(a), Math.abs(b));
    Scale scale = kind.apply(greater);
    int decimals = scale.decimals(greater);
    String before = scale.bare(a, decimals);
    String after = scale.bare(b, decimals) + Scale.HARD_BLANK + scale.shown();
    if (after.startsWith(before + Scale.HARD_BLANK)) {
      return "stays near " + after;
    }
    return (b > a ? "rises from " : "falls from ") + before + " to " + after;
  }

  /** An angle in degrees. */
  static String degrees(double angle) {
    return Figures.fixed(angle, angle < 10 ? 1 : 0) + "°";
  }
}
