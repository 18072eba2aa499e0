package org.boleline.examples.compare;

import java.util.List;
import org.boleline.drop.DropResult;
import org.boleline.drop.Drops;
import org.boleline.limits.Checks;
import org.boleline.plan.Plan;
import org.boleline.statics.StaticResult;
import org.boleline.study.RangeResult;
import org.boleline.study.StudyAnswer;
import org.boleline.study.StudyPlan;

/**
 * What a plan comes to, worked out once for all that is told of it.
 *
 * @param statics slow, steady motion
 * @param drops the drops that the plan states
 * @param checks demand against capacity
 * @param ranges how far figures may be off; empty if the plan states no ranges
 * @param causes what that comes from, of more samples; empty if not asked for
 * @param answers answers to the studies that the plan asks for; empty if it asks for none
 */
record Findings(
    StaticResult statics,
    DropResult drops,
    Checks checks,
    List<RangeResult> ranges,
    List<RangeResult> causes,
    List<StudyAnswer> answers) {
  static Findings of(StaticResult statics) {
    return of(statics, List.of());
  }

  static Findings withCauses(StaticResult statics) {
    return of(statics, RangeRows.studyCauses(statics.plan()));
  }

  private static Findings of(StaticResult statics, List<RangeResult> causes) {
    DropResult drops = Drops.analyse(statics);
    List<RangeResult> ranges = RangeRows.study(statics.plan());
    return new Findings(statics, drops, Checks.of(drops), ranges, causes, List.of());
  }

  /** The same with the studies of the plan answered. */
  Findings answering(StudyPlan plan) {
    return new Findings(statics, drops, checks, ranges, causes, plan.answers());
  }

  Plan plan() {
    return statics.plan();
  }
}
