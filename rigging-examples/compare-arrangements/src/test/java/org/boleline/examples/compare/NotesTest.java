package org.boleline.examples.compare;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.boleline.drop.Drops;
import org.boleline.limits.Checks;
import org.boleline.statics.Statics;
import org.junit.jupiter.api.Test;

class NotesTest {
  private static List<Entry> cautions(org.boleline.plan.Plan plan, UnitSystem units) {
    return Notes.cautions(Checks.of(Drops.analyse(Statics.analyse(plan))), units);
  }

  @Test
  void a_caution_of_several_arrangements_is_one_line_with_the_span_of_its_numbers() {
    assertThat(cautions(Plans.HORNBEAM, UnitSystem.SI))
        .filteredOn(entry -> entry.text().startsWith("The pull of the hand"))
        .singleElement()
        .satisfies(
            entry -> {
              assertThat(entry.label()).isEqualTo("2–6");
              assertThat(entry.text()).containsPattern("\\([0-9.]+ N to [0-9]+ N\\) is left out");
            });
  }

  @Test
  void its_numbers_are_shown_in_the_units_of_the_table() {
    assertThat(cautions(Plans.HORNBEAM, UnitSystem.US))
        .filteredOn(entry -> entry.text().startsWith("The pull of the hand"))
        .singleElement()
        .satisfies(
            entry -> assertThat(entry.text()).containsPattern("\\([0-9.]+ lbf to [0-9]+ lbf\\)"));
  }

  @Test
  void what_holds_for_all_is_said_once_for_all() {
    assertThat(cautions(Plans.SPRUCE, UnitSystem.SI))
        .filteredOn(entry -> entry.text().contains("slow, steady motion"))
        .singleElement()
        .satisfies(entry -> assertThat(entry.label()).isEqualTo("all"));
    assertThat(cautions(Plans.SPRUCE, UnitSystem.SI))
        .filteredOn(entry -> entry.text().contains("energy balance"))
        .singleElement()
        .satisfies(entry -> assertThat(entry.label()).isEqualTo("1–3"));
  }

  @Test
  void an_arrangement_that_was_not_solved_is_owned_up_to() {
    assertThat(
            Notes.cautions(Checks.of(Drops.analyse(Plans.notSolved(Plans.SPRUCE))), UnitSystem.SI)
                .get(0))
        .isEqualTo(
            new Entry(
                "1",
                "The library could not solve this arrangement: no luck (unbalance 0.25). That is a"
                    + " fault of the library; please report it with the plan."));
  }

  @Test
  void what_was_taken_is_said_once_with_its_source() {
    List<Entry> taken = Notes.taken(Drops.analyse(Statics.analyse(Plans.HORNBEAM)), UnitSystem.SI);

    assertThat(taken)
        .anySatisfy(
            entry ->
                assertThat(entry.text())
                    .startsWith("shearModulus = 500")
                    .contains("/stems/0/wood", "common practice, no source"))
        .anySatisfy(entry -> assertThat(entry.text()).startsWith("offset = 0 m in "))
        .hasSizeLessThan(8);
  }
}
