package org.boleline.rope;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.boleline.Tolerances.ROUNDING;
import static org.boleline.Tolerances.relative;
import static org.boleline.units.Amounts.kilonewtons;
import static org.boleline.units.Amounts.newtons;
import static org.boleline.units.Amounts.radians;

import java.util.List;
import javax.measure.Quantity;
import javax.measure.quantity.Force;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import net.jqwik.api.constraints.Size;
import org.boleline.geometry.Turn;
import org.boleline.units.Kind;
import org.boleline.units.Si;
import org.junit.jupiter.api.Test;

class HoldRangeTest {
  @Provide
  Arbitrary<Hardware> hardware() {
    return HardwareTest.hardware();
  }

  @Provide
  Arbitrary<List<Hardware>> way() {
    return HardwareTest.hardware().list().ofMinSize(1).ofMaxSize(6);
  }

  @Property
  void behind_any_contacts_raising_times_lowering_tension_is_the_load_squared(
      @ForAll("way") List<Hardware> way,
      @ForAll @Scale(15) @DoubleRange(min = 0, max = 3.1) double turn,
      @ForAll @Scale(9) @DoubleRange(min = 1, max = 1e5) double load) {
    HoldRange range = HoldRange.of(newtons(load));
    for (Hardware hardware : way) {
      range = range.past(hardware, Turn.of(radians(turn)));
    }
    assertThat(n(range.least()) * n(range.most())).isCloseTo(load * load, relative(ROUNDING));
    assertThat(n(range.least())).isLessThanOrEqualTo(load * (1 + ROUNDING));
    assertThat(range.steps()).hasSize(3 * way.size());
  }

  @Property
  void the_ends_are_those_of_lowering_and_raising(
      @ForAll("hardware") Hardware hardware,
      @ForAll @Scale(15) @DoubleRange(min = 0, max = 3.1) double turn) {
    Turn w = Turn.of(radians(turn));
    double ratio = hardware.tensionRatio(w);
    HoldRange range = HoldRange.of(newtons(700)).past(hardware, w);
    assertThat(n(range.least()))
        .isCloseTo(700 * Motion.LOWERING.tailRatio(ratio), relative(ROUNDING));
    assertThat(n(range.most()))
        .isCloseTo(700 * Motion.RAISING.tailRatio(ratio), relative(ROUNDING));
  }

  @Property
  void more_contacts_never_narrow_the_range(
      @ForAll("way") @Size(min = 1, max = 6) List<Hardware> way) {
    HoldRange range = HoldRange.of(newtons(1000));
    for (Hardware hardware : way) {
      HoldRange next = range.past(hardware, Turn.HALF);
      assertThat(n(next.least())).isLessThanOrEqualTo(n(range.least()));
      assertThat(n(next.most())).isGreaterThanOrEqualTo(n(range.most()));
      range = next;
    }
  }

  @Test
  void a_tension_within_holds_and_one_outside_does_not() {
    HoldRange range = HoldRange.of(kilonewtons(1)).past(new FrictionRing(0.2), Turn.HALF);
    assertThat(range.isHeldBy(kilonewtons(1))).isTrue();
    assertThat(range.isHeldBy(range.least())).isTrue();
    assertThat(range.isHeldBy(range.most())).isTrue();
    assertThat(range.isHeldBy(newtons(500))).isFalse();
    assertThat(range.isHeldBy(newtons(2000))).isFalse();
  }

  @Test
  void in_front_of_any_contact_only_the_load_itself_holds() {
    HoldRange range = HoldRange.of(newtons(300));
    assertThat(range.least()).isNotNull();
    assertThat(range.steps()).isEmpty();
    assertThat(range).hasToString("300 N to 300 N");
    assertThat(range)
        .isEqualTo(HoldRange.of(kilonewtons(0.3)))
        .hasSameHashCodeAs(HoldRange.of(kilonewtons(0.3)))
        .isNotEqualTo(range.past(new FrictionRing(0.2), Turn.HALF));
    assertThatIllegalArgumentException()
        .isThrownBy(() -> HoldRange.of(newtons(-1)))
        .withMessageContaining("load");
  }

  private static double n(Quantity<Force> force) {
    return Si.value(force, Kind.FORCE, "force");
  }
}
