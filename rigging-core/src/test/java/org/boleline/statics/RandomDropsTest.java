package org.boleline.statics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.boleline.units.Amounts.kilonewtons;
import static org.boleline.units.Amounts.metres;
import static org.boleline.units.Amounts.newtons;
import static org.boleline.units.Amounts.seconds;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.boleline.Tolerances;
import org.boleline.drop.DropAnswer;
import org.boleline.drop.DropFound;
import org.boleline.drop.DropNotAnalysed;
import org.boleline.drop.DropResult;
import org.boleline.drop.Drops;
import org.boleline.drop.TimedCatch;
import org.boleline.explain.PlanRefusedException;
import org.boleline.plan.Arrangement;
import org.boleline.plan.DropSpec;
import org.boleline.plan.Plan;
import org.boleline.rope.Rope;
import org.boleline.rope.StretchPoint;
import org.junit.jupiter.api.Test;

/** Random arrangements with drops, in time: every one has an answer, and every account closes. */
class RandomDropsTest {
  private static final List<StretchPoint> CURVE =
      List.of(StretchPoint.of(kilonewtons(5), 0.03), StretchPoint.of(kilonewtons(15), 0.06));

  private static Plan dropping(Plan plan, Random random) {
    List<Arrangement> ways = new ArrayList<>();
    for (Arrangement way : plan.arrangements()) {
      DropSpec.Hold hold =
          random.nextBoolean()
              ? DropSpec.Locked.LOCKED
              : DropSpec.Slipping.of(newtons(1 + 5000 * random.nextDouble()));
      DropSpec drop = DropSpec.of(metres(2 * random.nextDouble()), hold);
      ways.add(way.toBuilder().drop(drop.inTime(0.03, seconds(1.5))).build());
    }
    return plan.toBuilder().arrangements(ways).rope(Rope.UNSTATED.withStretch(CURVE)).build();
  }

  @Test
  void every_drop_has_an_answer() {
    int inTime = 0;
    for (long seed = 0; seed < 60; seed++) {
      Plan plan = dropping(RandomPlans.of(seed), new Random(seed));
      StaticResult slow;
      try {
        slow = Statics.analyse(plan);
      } catch (PlanRefusedException e) {
        continue;
      }
      DropResult result = Drops.analyse(slow);
      for (DropAnswer answer : result.answers()) {
        if (answer instanceof DropFound found && found.inTime().isPresent()) {
          TimedCatch.Followed caught = found.inTime().get();
          assertThat(caught.energy().residualShare()).isLessThan(Tolerances.ENERGY_ACCOUNT);
          assertThat(caught.locked().ropeStillRuns()).isFalse();
          inTime++;
        } else if (answer instanceof DropNotAnalysed not) {
          assertThat(not.reason()).isNotEmpty();
        }
      }
    }
    assertThat(inTime).isGreaterThan(40);
  }
}
