package org.boleline.examples.compare;

import static org.assertj.core.api.Assertions.assertThat;
import static org.boleline.units.Amounts.kilogramsPerMetre;

import java.util.ArrayList;
import java.util.List;
import org.boleline.geometry.Vector;
import org.boleline.plan.Arrangement;
import org.boleline.plan.Contact;
import org.boleline.plan.Plan;
import org.boleline.plan.Tail;
import org.boleline.rope.FrictionRing;
import org.boleline.rope.Motion;
import org.boleline.statics.ContactResult;
import org.boleline.statics.Solution;
import org.boleline.statics.StaticResult;
import org.boleline.statics.Statics;
import org.boleline.units.Amounts;
import org.boleline.units.Kind;
import org.boleline.units.Si;
import org.junit.jupiter.api.Test;

class ChangesTest {
  private static final List<Arrangement> SIX = Plans.HORNBEAM.arrangements();

  private static String between(Arrangement before, Arrangement after) {
    return sentence(Plans.with(Plans.HORNBEAM, named(before, "before"), named(after, "after")));
  }

  private static Arrangement named(Arrangement arrangement, String id) {
    return arrangement.toBuilder().id(id).build();
  }

  private static String sentence(StaticResult result) {
    List<Entry> entries = Changes.of(result, UnitSystem.SI);
    assertThat(entries).hasSize(1);
    assertThat(entries.get(0).label()).isEqualTo("1 → 2");
    return entries.get(0).text().replace(Scale.HARD_BLANK, " ");
  }

  private static Arrangement withFriction(Arrangement arrangement, double friction) {
    return arrangement.toBuilder()
        .contacts(
            arrangement.contacts().stream()
                .map(
                    c ->
                        Contact.of(c.stem(), c.at(), new FrictionRing(friction))
                            .withSling(c.sling()))
                .toList())
        .build();
  }

  private static Arrangement withWraps(Arrangement arrangement, double wraps) {
    Tail.Device device = (Tail.Device) arrangement.tail();
    return arrangement.toBuilder().tail(device.withWraps(wraps)).build();
  }

  private static double newtons(StaticResult result, int index) {
    Solution solution = result.arrangements().get(index).solution().orElseThrow();
    return Si.value(solution.tailTension(), Kind.FORCE, "tail");
  }

  @Test
  void the_place_of_the_tail_is_traced_to_its_part_of_the_base_moment() {
    String sentence = between(SIX.get(0), SIX.get(1));

    assertThat(sentence)
        .startsWith("The tail goes to a device at 0.8 m instead of straight down: ")
        .contains("the base moment falls from 26.3 to 20.8 kN·m, because tail × arm, 4.96 kN·m")
        .contains("(885 N × 5.61 m), drops out: the tail now ends on the stem")
        .contains("because the rope turns there by 151° instead of 180°");
  }

  @Test
  void the_other_way_round_the_sentence_turns_round() {
    assertThat(between(SIX.get(1), SIX.get(0)))
        .startsWith("The tail goes straight down instead of to a device at 0.8 m: ")
        .contains("the base moment rises from 20.8 to 26.3 kN·m")
        .contains("comes in: the tail no longer ends on the stem")
        .contains("because the rope turns there by 180° instead of 151°");
  }

  @Test
  void more_points_are_told_with_their_forces_and_how_near_they_keep_the_rope() {
    assertThat(between(SIX.get(1), SIX.get(2)))
        .startsWith("Sheaves (efficiency 0.95) at 8 m and 4.5 m, slung 0.2 m, are added: ")
        .containsPattern("the added points take [0-9]+ N \\(turn [0-9.]+°\\) and [0-9]+ N")
        .containsPattern("with the rope within 0\\.[0-9]+ m instead of 0\\.[0-9]+ m")
        .contains("the base moment stays near 20.8 kN·m, because the rope ends on the stem itself");
    assertThat(between(SIX.get(2), SIX.get(1)))
        .startsWith("Sheaves (efficiency 0.95) at 8 m and 4.5 m, slung 0.2 m, are left out: ");
  }

  @Test
  void other_hardware_is_traced_to_the_product_of_frictions() {
    StaticResult result = Plans.with(Plans.HORNBEAM, SIX.get(2), SIX.get(3));
    double weight = 95 * 9.80665;
    String sheaves = Figures.fixed(newtons(result, 0) / weight, 3);
    String rings = Figures.fixed(newtons(result, 1) / weight, 3);

    assertThat(sentence(result))
        .startsWith("Sheaves (efficiency 0.95) become rings (friction 0.25): the tail carries ")
        .contains("because friction at the points multiplies the load's tension by " + rings + " (")
        .contains(" instead of " + sheaves + " (");
  }

  @Test
  void its_numbers_follow_the_plan() {
    List<String> told = new ArrayList<>();
    for (double friction : new double[] {0.1, 0.2, 0.3, 0.4}) {
      Arrangement rings = withFriction(SIX.get(3), friction);
      StaticResult result = Plans.with(Plans.HORNBEAM, named(SIX.get(3), "a"), named(rings, "b"));
      String sentence = sentence(result);
      long after = Math.round(newtons(result, 1));
      long before = Math.round(newtons(result, 0));

      assertThat(sentence)
          .startsWith("Rings (friction 0.25) become rings (friction " + friction + "): ")
          .contains("the tail carries " + after + " N instead of " + before + " N");
      told.add(sentence);
    }
    assertThat(told).doesNotHaveDuplicates();
  }

  @Test
  void other_wraps_change_the_hand_and_nothing_else() {
    String sentence = between(SIX.get(3), withWraps(SIX.get(3), 3));

    // exp(0.18 x 6 pi) and exp(0.18 x 4 pi), Euler-Eytelwein
    assertThat(sentence)
        .startsWith("2 wraps become 3 wraps: the hand holds ")
        .contains("wraps that divide the tail's tension by 29.8 instead of wraps that divide")
        .contains("the tail's tension by 9.60")
        .doesNotContain("the tail carries", "outer point");
  }

  @Test
  void another_motion_is_told_as_the_other_side_of_friction() {
    assertThat(between(SIX.get(3), withWraps(SIX.get(5), 2)))
        .startsWith("Lowering becomes raising: the tail carries ")
        .contains("as in raising it adds to the load and no longer carries part of it");
  }

  @Test
  void a_point_that_moves_is_told_with_the_reach_it_gives() {
    Arrangement before = SIX.get(1);
    Contact point = before.contacts().get(0);
    Arrangement after =
        before.toBuilder()
            .contacts(
                List.of(
                    Contact.of(point.stem(), Amounts.metres(9), point.hardware())
                        .withSling(point.sling())))
            .build();

    assertThat(between(before, after))
        .startsWith("The point at 11.6 m moves to 9 m: ")
        .containsPattern(
            "the base moment falls from 20\\.8 to 1[0-9.]+ kN·m, because load × reach is"
                + " [0-9.]+ kN·m \\(932 N × [0-9.]+ m\\) instead of 5\\.[0-9]+ kN·m"
                + " \\(932 N × 5\\.[0-9]+ m\\)");
  }

  @Test
  void nothing_different_is_said_to_be_so() {
    assertThat(between(SIX.get(2), SIX.get(2)))
        .isEqualTo("Nothing differs in the plan, nor in the numbers.");
  }

  @Test
  void a_difference_that_does_next_to_nothing_is_said_to_do_so() {
    assertThat(
            sentence(
                Plans.with(
                    Plans.SYCAMORE,
                    named(withSling(Plans.SYCAMORE.arrangements().get(1), 0.300), "a"),
                    named(withSling(Plans.SYCAMORE.arrangements().get(1), 0.301), "b"))))
        .contains("slings go from 0.3 m to 0.301 m: no force, movement or stress changes");
  }

  private static Arrangement withSling(Arrangement arrangement, double metres) {
    return arrangement.toBuilder()
        .contacts(
            arrangement.contacts().stream().map(c -> c.withSling(Amounts.metres(metres))).toList())
        .build();
  }

  @Test
  void two_held_loads_are_compared_about_to_run() {
    Arrangement before = SIX.get(0).toBuilder().motion(Motion.HELD).build();
    Arrangement after = SIX.get(1).toBuilder().motion(Motion.HELD).build();

    assertThat(between(before, after))
        .startsWith("The tail goes to a device at 0.8 m instead of straight down: about to run, ");
  }

  @Test
  void a_held_load_is_compared_at_the_end_of_the_same_motion() {
    Arrangement held = SIX.get(5).toBuilder().motion(Motion.HELD).build();
    String sentence = between(SIX.get(5), held);

    assertThat(sentence)
        .startsWith("Raising becomes held: at rest the tail may carry anything from ")
        .contains("(compared here: about to rise)")
        .doesNotContain("the tail carries", "multiplies");
  }

  /**
   * One tail is pulled along the lean and one square to it, so that the moments differ by angle.
   */
  @Test
  void a_moment_that_turns_is_told_whole() {
    StaticResult result =
        Plans.with(
            Plans.HORNBEAM,
            named(SIX.get(0), "before").toBuilder()
                .tail(Tail.Point.of(Vector.ofSi(Kind.LENGTH, 6, 0, 0)))
                .build(),
            named(SIX.get(0), "after").toBuilder()
                .tail(Tail.Point.of(Vector.ofSi(Kind.LENGTH, 0, 12, 0)))
                .build());
    double[] before = baseMoment(result, 0);
    double[] after = baseMoment(result, 1);
    double turn =
        Math.toDegrees(
            Math.acos(Triple.dot(before, after) / Triple.size(before) / Triple.size(after)));

    assertThat(turn).isBetween(5.0, 175.0);
    assertThat(sentence(result))
        .contains(
            "the base moment "
                + Pair.fromTo(UnitSystem.SI::moment, Triple.size(before), Triple.size(after))
                    .replace(Scale.HARD_BLANK, " ")
                + " and turns by "
                + Pair.degrees(turn)
                + ", because along the greater of both ");
  }

  private static double[] baseMoment(StaticResult result, int index) {
    Solution solution = result.arrangements().get(index).solution().orElseThrow();
    return solution.stems().get(0).base().moment().in(Kind.MOMENT);
  }

  @Test
  void legs_to_other_stems_are_said_to_relieve_or_to_load() {
    List<Arrangement> four = Plans.SYCAMORE.arrangements();

    assertThat(sentence(Plans.with(Plans.SYCAMORE, four.get(0), four.get(1))))
        .startsWith("A sheave (efficiency 0.95) at 10.5 m on B, slung 0.3 m, is added: ")
        .containsPattern(
            "the base moment of A falls from 15\\.9 to 4\\.3 kN·m, because legs to other stems now"
                + " relieve it by 11\\.0 kN·m")
        .contains("the base moment of B turns over from ")
        .contains("because legs to other stems now load it with ");
  }

  @Test
  void the_weight_of_the_rope_has_its_part_of_the_tail() {
    Arrangement without = SIX.get(3);
    Arrangement weighed =
        without.toBuilder()
            .contacts(without.contacts().stream().map(c -> c.withRopeWeight(true)).toList())
            .build();
    Plan plan =
        Plans.HORNBEAM.toBuilder()
            .rope(Plans.HORNBEAM.rope().orElseThrow().withLinearDensity(kilogramsPerMetre(0.8)))
            .arrangements(List.of(named(without, "before"), named(weighed, "after")))
            .build();
    StaticResult result = Statics.analyse(plan);
    double product = 1;
    for (ContactResult contact : result.arrangements().get(1).solution().orElseThrow().contacts()) {
      product *=
          Si.value(contact.tensionOut(), Kind.FORCE, "out")
              / Si.value(contact.tensionIn(), Kind.FORCE, "in");
    }
    double load = 95 * 9.80665;
    assertThat(sentence(result))
        .startsWith("The weight of the rope behind the points counts: the tail carries ")
        .contains(" and the weight of the rope takes ");
    assertThat(sentence(result).replaceAll(".*rope takes ([0-9]+)(\\.[0-9]+)? N off it.*", "$1"))
        .isEqualTo(Long.toString((long) Math.floor(load * product - newtons(result, 1))));
  }

  @Test
  void a_slack_sling_is_told_first() {
    assertThat(
            sentence(
                Plans.with(
                    Plans.MIXED,
                    Plans.MIXED.arrangements().get(2),
                    Plans.MIXED.arrangements().get(3))))
        .contains(": the sling at 6 m hangs slack, because the rope passes within reach; ");
  }

  @Test
  void lost_stability_is_told_with_its_share_of_the_load() {
    StaticResult result = Statics.analyse(Plans.POLE);

    assertThat(sentence(result))
        .startsWith("The point at 11.5 m moves to 5 m: 1 loses stability on the way, at 0.7")
        .containsPattern("of the load, while 2 carries the full load with 0\\.[0-9]+ of its");
  }

  @Test
  void an_arrangement_that_was_not_solved_is_told_as_that() {
    assertThat(Changes.of(Plans.notSolved(Plans.SPRUCE), UnitSystem.SI).get(0).text())
        .contains("1 could not be solved, while 2 carries the full load with ");
  }

  @Test
  void every_pair_of_every_plan_has_a_whole_sentence() {
    for (Plan plan : Plans.ALL) {
      List<Arrangement> arrangements = plan.arrangements();
      for (Arrangement before : arrangements) {
        for (Arrangement after : arrangements) {
          String sentence =
              sentence(Plans.with(plan, named(before, "before"), named(after, "after")));
          assertThat(sentence)
              .matches("[A-Z0-9].*[^.]\\.")
              .doesNotContain("NaN", "null", "Infinity", "  ", ", ,", ";;", "-0 ", "{", "}");
          assertThat(sentence.contains("Nothing differs"))
              .isEqualTo(named(before, "x").equals(named(after, "x")));
        }
      }
    }
  }
}
