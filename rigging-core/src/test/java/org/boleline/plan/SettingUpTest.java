package org.boleline.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.boleline.units.Amounts.metres;

import java.util.ArrayList;
import java.util.List;
import org.boleline.rope.FrictionRing;
import org.boleline.rope.Motion;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

class SettingUpTest {
  private static Arrangement points(@Nullable Boolean... opens) {
    List<Contact> contacts = new ArrayList<>();
    for (int i = 0; i < opens.length; i++) {
      Contact contact = Contact.of("stem", metres(10 - i), new FrictionRing(0.2));
      contacts.add(opens[i] == null ? contact : contact.withOpens(opens[i]));
    }
    return Arrangement.builder("a")
        .motion(Motion.LOWERING)
        .contacts(contacts)
        .tail(Tail.Down.DOWN)
        .build();
  }

  @Test
  void closed_points_are_threaded_from_the_tail_toward_the_piece() {
    SettingUp order = SettingUp.of(points(false, true, false, null)).orElseThrow();
    assertThat(order.thread()).containsExactly(2, 0);
    assertThat(order.layIn()).containsExactly(1);
    assertThat(order.notStated()).containsExactly(3);
    assertThat(order.sentence())
        .isEqualTo(
            "Before it is tied to the piece, thread the end of the rope through points 3, then 1."
                + " Lay it into point 2 at any time. Not stated for point 4.");
  }

  @Test
  void points_that_open_take_the_rope_at_any_time() {
    SettingUp order = SettingUp.of(points(true, true)).orElseThrow();
    assertThat(order.thread()).isEmpty();
    assertThat(order.sentence()).isEqualTo("Lay the rope into points 1, 2 at any time.");
  }

  @Test
  void nothing_is_said_where_nothing_is_stated() {
    assertThat(SettingUp.of(points(null, null))).isEmpty();
  }

  @Test
  void the_fact_survives_every_copy_and_is_part_of_equality() {
    Contact closed = Contact.of("stem", metres(10), new FrictionRing(0.2)).withOpens(false);
    Contact copy = closed.withSling(metres(0.2)).withOffset(metres(0.1)).withRopeWeight(true);
    assertThat(copy.opens()).contains(false);
    assertThat(closed).isNotEqualTo(closed.withOpens(true));
    assertThat(closed.withOpens(false)).isEqualTo(closed).hasSameHashCodeAs(closed);
  }
}
