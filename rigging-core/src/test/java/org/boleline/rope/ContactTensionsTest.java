package org.boleline.rope;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.boleline.Tolerances.ROUNDING;
import static org.boleline.Tolerances.relative;
import static org.boleline.units.Amounts.kilonewtons;
import static org.boleline.units.Amounts.newtons;
import static org.boleline.units.Amounts.radians;

import javax.measure.Quantity;
import javax.measure.quantity.Force;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import org.boleline.geometry.Turn;
import org.boleline.units.Kind;
import org.boleline.units.Si;
import org.junit.jupiter.api.Test;

class ContactTensionsTest {
  @Provide
  Arbitrary<Hardware> hardware() {
    return HardwareTest.hardware();
  }

  @Property
  void tight_from_slack_undoes_slack_from_tight(
      @ForAll("hardware") Hardware hardware,
      @ForAll @Scale(15) @DoubleRange(min = 0, max = 3.1) double turn,
      @ForAll @Scale(9) @DoubleRange(min = 0, max = 1e5) double tension) {
    Turn w = Turn.of(radians(turn));
    ContactTensions down = ContactTensions.fromTight(hardware, w, newtons(tension));
    ContactTensions up = ContactTensions.fromSlack(hardware, w, down.slack());
    assertThat(n(up.tight())).isCloseTo(tension, relative(ROUNDING));
    assertThat(n(down.slack())).isLessThanOrEqualTo(n(down.tight()));
  }

  @Property
  void over_one_contact_raising_times_lowering_tension_is_the_load_squared(
      @ForAll("hardware") Hardware hardware,
      @ForAll @Scale(15) @DoubleRange(min = 0, max = 3.1) double turn,
      @ForAll @Scale(9) @DoubleRange(min = 1, max = 1e5) double load) {
    Turn w = Turn.of(radians(turn));
    double lowering = n(ContactTensions.fromTight(hardware, w, newtons(load)).slack());
    double raising = n(ContactTensions.fromSlack(hardware, w, newtons(load)).tight());
    assertThat(raising * lowering).isCloseTo(load * load, relative(ROUNDING));
  }

  @Test
  void numbers_are_those_of_the_last_step() {
    ContactTensions found =
        ContactTensions.fromTight(new FrictionRing(0.25), Turn.HALF, kilonewtons(2));
    assertThat(found.steps()).hasSize(2);
    assertThat(found.steps().get(1).result()).isEqualTo(n(found.slack()));
    assertThat(found.steps().get(1).input(1)).isEqualTo(found.steps().get(0).result());
    assertThat(found)
        .isEqualTo(ContactTensions.fromTight(new Bark(0.25), Turn.HALF, newtons(2000)))
        .hasSameHashCodeAs(ContactTensions.fromTight(new Bark(0.25), Turn.HALF, newtons(2000)));
    assertThat(found)
        .isNotEqualTo(ContactTensions.fromTight(new Bark(0.3), Turn.HALF, newtons(2000)));
    assertThat(found.toString()).startsWith("tight 2000 N, slack 911.8");
  }

  @Test
  void a_rope_does_not_push() {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> ContactTensions.fromTight(Ideal.INSTANCE, Turn.HALF, newtons(-1)))
        .withMessageContaining("tight: wants zero or more");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> ContactTensions.fromSlack(Ideal.INSTANCE, Turn.HALF, newtons(-1)))
        .withMessageContaining("slack: wants zero or more");
  }

  private static double n(Quantity<Force> force) {
    return Si.value(force, Kind.FORCE, "force");
  }
}
