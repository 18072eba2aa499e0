package org.boleline.examples.compare;

import java.util.List;
import org.boleline.drop.DropResult;
import org.boleline.drop.Drops;
import org.boleline.limits.Checks;
import org.boleline.plan.Plan;
import org.boleline.statics.StaticResult;
import org.boleline.study.RangeResult;

/**
 * What a plan comes to, worked out once for all that is told of it.
 *
 * @param statics slow, steady motion
 * @param drops the drops that the plan states
 * @param checks demand against capacity
 * @param ranges how far figures may be off; empty if the plan states no ranges
 * @param causes what that comes from, of more samples; empty if not asked for
 */
record Findings(
    StaticResult statics,
    DropResult drops,
    Checks checks,
    List<RangeResult> ranges,
    List<RangeResult> causes) {
  static Findings of(StaticResult statics) {
    return of(statics, List.of());
  }

  static Findings withCauses(StaticResult statics) {
    return of(statics, RangeRows.studyCauses(statics.plan()));
  }

  private static Findings of(StaticResult statics, List<RangeResult> causes) {
    DropResult drops = Drops.analyse(statics);
    List<RangeResult> ranges = RangeRows.study(statics.plan());
    return new Findings(statics, drops, Checks.of(drops), ranges, causes);
  }

  Plan plan() {
    return statics.plan();
  }
}
