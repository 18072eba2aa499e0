package org.boleline.examples.compare;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.boleline.plan.Arrangement;
import org.boleline.plan.Plan;
import org.boleline.rope.Motion;
import org.junit.jupiter.api.Test;

class ShareRowsTest {
  private static final List<Entry> SHARES = ShareRows.of(Plans.HORNBEAM, UnitSystem.SI);

  @Test
  void each_pair_of_neighbours_has_a_line_for_each_headline_figure() {
    assertThat(SHARES).hasSize(15);
    assertThat(SHARES.stream().map(Entry::label).filter(label -> !label.isEmpty()))
        .containsExactly("1 → 2", "2 → 3", "3 → 4", "4 → 5", "5 → 6");
    assertThat(SHARES.subList(0, 3).stream().map(Entry::text))
        .allSatisfy(text -> assertThat(text).contains(": place of tail "));
  }

  @Test
  void a_change_that_adds_nothing_is_left_out() {
    assertThat(SHARES.stream().map(Entry::text))
        .noneMatch(text -> text.contains(" 0 N") || text.contains("positions"));
  }

  @Test
  void of_held_loads_the_end_is_named() {
    Arrangement high = Plans.HORNBEAM.arrangements().get(0).toBuilder().motion(Motion.HELD).build();
    Arrangement low = Plans.HORNBEAM.arrangements().get(1).toBuilder().motion(Motion.HELD).build();
    Plan plan =
        Plans.HORNBEAM.toBuilder()
            .arrangements(List.of(high, low, Plans.HORNBEAM.arrangements().get(2)))
            .build();
    List<String> texts =
        ShareRows.of(plan, UnitSystem.SI).stream()
            .map(entry -> entry.text().replaceAll("[+-]?[0-9.]+\\u00a0.*", "#"))
            .toList();
    assertThat(texts)
        .containsExactly(
            "Base moment, about to run #",
            "Force on point 1, about to run #",
            "Tension at the tail, about to run #",
            "Base moment, about to rise #",
            "Force on point 1, about to rise #",
            "Tension at the tail, about to rise #",
            "Base moment, with 2 about to run #",
            "Force on point 1, with 2 about to run #",
            "Tension at the tail, with 2 about to run #");
  }

  @Test
  void one_arrangement_has_nothing_to_share() {
    assertThat(
            ShareRows.of(
                Plans.HORNBEAM.toBuilder()
                    .arrangements(List.of(Plans.HORNBEAM.arrangements().get(0)))
                    .build(),
                UnitSystem.SI))
        .isEmpty();
  }
}
