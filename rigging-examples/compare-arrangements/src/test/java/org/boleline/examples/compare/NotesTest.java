package org.boleline.examples.compare;

import static org.assertj.core.api.Assertions.assertThat;
import static org.boleline.units.Amounts.metres;

import java.util.Arrays;
import java.util.List;
import org.boleline.drop.Drops;
import org.boleline.geometry.Vector;
import org.boleline.limits.Checks;
import org.boleline.plan.Arrangement;
import org.boleline.plan.Contact;
import org.boleline.plan.Tail;
import org.boleline.rope.FrictionRing;
import org.boleline.rope.Motion;
import org.boleline.statics.Statics;
import org.boleline.units.Kind;
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

  /** The number of a point says which it is: two points are no span of one. */
  @Test
  void cautions_of_different_points_are_lines_of_their_own() {
    Arrangement two = low("two", 11.6, 0.1);
    Arrangement three = low("three", 11.6, 8, 0.1);

    assertThat(
            cautions(
                Plans.HORNBEAM.toBuilder().arrangements(List.of(two, three)).build(),
                UnitSystem.SI))
        .filteredOn(entry -> entry.text().contains("below the base of its stem"))
        .extracting(entry -> entry.label() + " " + entry.text().substring(0, 9))
        .containsExactly("1 Contact 2", "2 Contact 3");
  }

  /** Points with long slings: the pull of the tail takes the lowest one below the base. */
  private static Arrangement low(String id, double... stations) {
    return Arrangement.builder(id)
        .motion(Motion.RAISING)
        .contacts(
            Arrays.stream(stations)
                .mapToObj(
                    at ->
                        Contact.of("hornbeam", metres(at), new FrictionRing(0.25))
                            .withSling(metres(0.6)))
                .toList())
        .tail(Tail.Point.of(Vector.ofSi(Kind.LENGTH, 0.5, 0, -50)))
        .build();
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
