package org.boleline.examples.compare;

import static org.assertj.core.api.Assertions.assertThat;
import static org.boleline.units.Amounts.degrees;
import static org.boleline.units.Amounts.metres;

import java.util.List;
import org.boleline.geometry.Vector;
import org.boleline.plan.Arrangement;
import org.boleline.plan.Contact;
import org.boleline.plan.Tagline;
import org.boleline.plan.Tail;
import org.boleline.rope.Bark;
import org.boleline.rope.FrictionRing;
import org.boleline.rope.Ideal;
import org.boleline.rope.Motion;
import org.boleline.rope.Sheave;
import org.boleline.units.Kind;
import org.junit.jupiter.api.Test;

class PlanDifferenceTest {
  private static final Contact HIGH = Contact.of("s", metres(9), new FrictionRing(0.2));
  private static final Contact LOW = Contact.of("s", metres(4), new Sheave(0.9));
  private static final Tail DEVICE = Tail.Device.of("s", metres(1), 0.2, 2);

  private static Arrangement arrangement(Tail tail, Contact... contacts) {
    return Arrangement.builder("a")
        .motion(Motion.LOWERING)
        .contacts(List.of(contacts))
        .tail(tail)
        .build();
  }

  private static List<String> phrases(Arrangement before, Arrangement after) {
    Wording wording = new Wording(Plans.HORNBEAM, UnitSystem.SI);
    return new PlanDifference(before, after, wording)
        .phrases().stream().map(text -> text.replace(Scale.HARD_BLANK, " ")).toList();
  }

  @Test
  void the_same_differs_in_nothing() {
    assertThat(phrases(arrangement(DEVICE, HIGH, LOW), arrangement(DEVICE, HIGH, LOW))).isEmpty();
  }

  @Test
  void tails_of_every_kind_are_named() {
    Tail point = Tail.Point.of(Vector.ofSi(Kind.LENGTH, 1.5, 0, -0.25));
    Tail other = Tail.Point.of(Vector.ofSi(Kind.LENGTH, 2, 0, 0));

    assertThat(phrases(arrangement(Tail.Down.DOWN, HIGH), arrangement(point, HIGH)))
        .containsExactly(
            "the tail goes to a fixed point at (1.5, 0, -0.25) m instead of straight down");
    assertThat(phrases(arrangement(point, HIGH), arrangement(other, HIGH)))
        .containsExactly(
            "the tail goes to a fixed point at (2, 0, 0) m instead of to a fixed point at (1.5, 0,"
                + " -0.25) m");
    assertThat(phrases(arrangement(point, HIGH), arrangement(DEVICE, HIGH)))
        .containsExactly(
            "the tail goes to a device at 1 m instead of to a fixed point at (1.5, 0, -0.25) m");
    assertThat(phrases(arrangement(DEVICE, HIGH), arrangement(Tail.Down.DOWN, HIGH)))
        .containsExactly("the tail goes straight down instead of to a device at 1 m");
  }

  @Test
  void a_device_may_differ_in_all_it_states() {
    Tail other = Tail.Device.of("s", metres(1.5), 0.25, 1).withOffset(metres(0.2));

    assertThat(phrases(arrangement(DEVICE, HIGH), arrangement(other, HIGH)))
        .containsExactly(
            "the device moves from 1 m to 1.5 m",
            "2 wraps become 1 wrap",
            "the friction of the device goes from 0.2 to 0.25",
            "the device's offset goes from 0 m to 0.2 m");
  }

  @Test
  void points_are_matched_by_their_place() {
    Contact middle = Contact.of("s", metres(6), Ideal.INSTANCE);

    assertThat(phrases(arrangement(DEVICE, HIGH, LOW), arrangement(DEVICE, HIGH, middle, LOW)))
        .containsExactly("a point without friction at 6 m is added");
    assertThat(phrases(arrangement(DEVICE, HIGH, middle, LOW), arrangement(DEVICE, LOW)))
        .containsExactly(
            "a ring (friction 0.2) at 9 m and a point without friction at 6 m are left out");
    assertThat(phrases(arrangement(DEVICE, HIGH, middle), arrangement(DEVICE, HIGH, LOW)))
        .containsExactly(
            "the point at 6 m moves to 4 m",
            "a point without friction becomes a sheave (efficiency 0.9) at 4 m");
  }

  @Test
  void of_two_points_at_one_station_the_one_with_the_same_offset_stays() {
    Contact beside = HIGH.withOffset(metres(0.3));

    assertThat(phrases(arrangement(DEVICE, HIGH), arrangement(DEVICE, beside, HIGH)))
        .containsExactly("a ring (friction 0.2) at 9 m, 0.3 m on the underside, is added");
    assertThat(phrases(arrangement(DEVICE, HIGH), arrangement(DEVICE, HIGH, beside)))
        .containsExactly("a ring (friction 0.2) at 9 m, 0.3 m on the underside, is added");
  }

  @Test
  void hardware_slings_and_offsets_are_told_together_where_they_change_alike() {
    Contact high = Contact.of("s", metres(9), new Bark(0.3)).withSling(metres(0.5));
    Contact low = LOW.withSling(metres(0.5)).withOffset(metres(-0.1));

    assertThat(phrases(arrangement(DEVICE, HIGH, LOW), arrangement(DEVICE, high, low)))
        .containsExactly(
            "a ring (friction 0.2) becomes bare bark (friction 0.3) at 9 m",
            "the slings go from 0 m to 0.5 m",
            "the offset goes from 0 m to -0.1 m at 4 m");
  }

  @Test
  void the_weight_of_the_rope_is_told_where_it_begins_or_ends_to_count() {
    Contact weighed = LOW.withRopeWeight(true);

    assertThat(phrases(arrangement(DEVICE, HIGH, LOW), arrangement(DEVICE, HIGH, weighed)))
        .containsExactly("the weight of the rope behind the point at 4 m counts");
    assertThat(
            phrases(
                arrangement(DEVICE, HIGH.withRopeWeight(true), weighed),
                arrangement(DEVICE, HIGH, LOW)))
        .containsExactly("the weight of the rope behind the points no longer counts");
  }

  @Test
  void the_way_the_rope_gets_into_a_point_is_told_where_it_changes() {
    Contact closed = LOW.withOpens(false);
    Contact opens = LOW.withOpens(true);

    assertThat(phrases(arrangement(DEVICE, HIGH, closed), arrangement(DEVICE, HIGH, opens)))
        .containsExactly("the rope is laid in instead of threaded at 4 m");
    assertThat(phrases(arrangement(DEVICE, HIGH, opens), arrangement(DEVICE, HIGH, closed)))
        .containsExactly("the rope is threaded instead of laid in at 4 m");
  }

  @Test
  void an_arrangement_tells_in_which_order_it_can_be_set_up() {
    Wording wording = new Wording(Plans.HORNBEAM, UnitSystem.SI);
    Arrangement stated = arrangement(DEVICE, HIGH.withOpens(false), LOW.withOpens(true));

    assertThat(wording.arrangement(stated))
        .endsWith(
            ". Setting up: Before it is tied to the piece, thread the end of the rope through"
                + " point 1. Lay it into point 2 at any time.");
    assertThat(wording.arrangement(arrangement(DEVICE, HIGH, LOW))).doesNotContain("Setting up");
  }

  @Test
  void motion_and_a_tagline_are_named() {
    Arrangement before = arrangement(DEVICE, HIGH);
    Arrangement after =
        before.toBuilder()
            .motion(Motion.HELD)
            .tagline(Tagline.of(degrees(20), degrees(90)))
            .build();

    assertThat(phrases(before, after))
        .containsExactly(
            "lowering becomes held",
            "the load leg hangs 20° out of plumb toward azimuth 90° instead of plumb");
  }
}
