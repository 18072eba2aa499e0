package org.boleline.examples.compare;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
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
