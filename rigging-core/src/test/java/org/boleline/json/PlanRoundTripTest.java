package org.boleline.json;

import static org.assertj.core.api.Assertions.assertThat;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.boleline.plan.Plan;

/** Random plans, made in Java: what is written of them reads back to them. */
class PlanRoundTripTest {
  @Property(tries = 500)
  void a_plan_reads_back_to_an_equal_plan(@ForAll long seed) {
    Plan plan = new RandomPlan(seed).plan();
    String text = PlanWriter.write(plan);
    Plan again = PlanReader.read(text);

    assertThat(again).isEqualTo(plan).hasSameHashCodeAs(plan);
    assertThat(again.taken()).isEqualTo(plan.taken());
    assertThat(PlanWriter.write(again)).isEqualTo(text);
    assertThat(plan.toBuilder().build()).isEqualTo(plan);
  }
}
