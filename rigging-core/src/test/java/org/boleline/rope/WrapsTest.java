package org.boleline.rope;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.boleline.Tolerances.EXACT;
import static org.boleline.Tolerances.ROUNDING;
import static org.boleline.Tolerances.ROUNDING_ABSOLUTE;
import static org.boleline.Tolerances.absolute;
import static org.boleline.Tolerances.relative;
import static org.boleline.units.Amounts.kilonewtons;
import static org.boleline.units.Amounts.newtons;
import static org.boleline.units.Amounts.radians;

import javax.measure.Quantity;
import javax.measure.quantity.Force;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Scale;
import org.boleline.geometry.Turn;
import org.boleline.units.Kind;
import org.boleline.units.Si;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class WrapsTest {
  @Property
  void exact_is_at_most_the_next_half_is_at_most_the_next_whole_and_the_hand_force_is_met(
      @ForAll @Scale(9) @DoubleRange(min = 1, max = 1e5) double tail,
      @ForAll @Scale(9) @DoubleRange(min = 10, max = 500) double hand,
      @ForAll @Scale(9) @DoubleRange(min = 0.05, max = 0.6) double friction,
      @ForAll @Scale(9) @DoubleRange(min = 0, max = 4) double otherTurn) {
    Wraps wraps =
        Wraps.needed(newtons(tail), newtons(hand), friction)
            .withOtherTurn(Turn.of(radians(otherTurn)));
    double exact = wraps.exactWraps();
    double half = wraps.nextHalfWraps();
    double whole = wraps.nextWholeWraps();
    assertThat(exact).isGreaterThanOrEqualTo(0);
    assertThat(half).isBetween(exact - EXACT, exact + 0.5);
    assertThat(whole).isBetween(half, half + 0.5);
    assertThat(2 * half).isEqualTo(Math.rint(2 * half));
    assertThat(whole).isEqualTo(Math.rint(whole));
    double bound = hand * (1 + 10 * EXACT);
    assertThat(n(wraps.handForce(exact))).isLessThanOrEqualTo(bound);
    assertThat(n(wraps.handForce(half))).isLessThanOrEqualTo(bound);
    assertThat(n(wraps.handForce(whole))).isLessThanOrEqualTo(bound);
    if (exact > 0) {
      assertThat(n(wraps.handForce(exact))).isCloseTo(hand, relative(EXACT));
    }
    if (half >= 0.5) {
      assertThat(n(wraps.handForce(half - 0.5))).isGreaterThan(hand * (1 - 10 * EXACT));
    }
  }

  @Property
  void a_whole_number_of_wraps_that_just_does_is_not_raised_by_rounding(
      @ForAll @IntRange(min = 1, max = 8) int wraps,
      @ForAll @Scale(9) @DoubleRange(min = 0.05, max = 0.6) double friction) {
    double tail = 100 * Math.exp(friction * 2 * Math.PI * wraps);
    Wraps needed = Wraps.needed(newtons(tail), newtons(100), friction);
    assertThat(needed.exactWraps()).isCloseTo(wraps, relative(ROUNDING * 10));
    assertThat(needed.nextHalfWraps()).isEqualTo(wraps);
    assertThat(needed.nextWholeWraps()).isEqualTo(wraps);
  }

  @Test
  void a_hand_that_holds_the_tail_needs_no_wraps() {
    Wraps none = Wraps.needed(newtons(100), newtons(100), 0.2);
    assertThat(none.exactWraps()).isZero();
    assertThat(none.nextHalfWraps()).isZero();
    assertThat(none.nextWholeWraps()).isZero();
    assertThat(Wraps.needed(newtons(50), newtons(100), 0.2).exactWraps()).isZero();
    assertThat(none).hasToString("0 wraps, to the next half 0, to the next whole one 0");
  }

  @Test
  void another_turn_at_the_device_stands_for_wraps() {
    Wraps plain = Wraps.needed(kilonewtons(2), newtons(100), 0.2);
    assertThat(plain.withOtherTurn(Turn.HALF).exactWraps())
        .isCloseTo(plain.exactWraps() - 0.5, absolute(ROUNDING_ABSOLUTE));
    assertThat(plain.withOtherTurn(Turn.NONE)).isEqualTo(plain).hasSameHashCodeAs(plain);
    assertThat(plain.withOtherTurn(Turn.ofWraps(20)).exactWraps()).isZero();
  }

  @Property
  void the_range_over_a_friction_range_spans_every_friction_within(
      @ForAll @Scale(9) @DoubleRange(min = 0.05, max = 0.3) double least,
      @ForAll @Scale(9) @DoubleRange(min = 0, max = 0.3) double more,
      @ForAll @Scale(9) @DoubleRange(min = 0, max = 1) double share) {
    WrapsRange range = WrapsRange.needed(kilonewtons(3), newtons(150), least, least + more);
    double within = Wraps.needed(kilonewtons(3), newtons(150), least + share * more).exactWraps();
    assertThat(within)
        .isBetween(
            range.least().exactWraps() - ROUNDING_ABSOLUTE,
            range.most().exactWraps() + ROUNDING_ABSOLUTE);
    assertThat(range.steps()).hasSize(6);
    assertThat(range.withOtherTurn(Turn.HALF).most())
        .isEqualTo(range.most().withOtherTurn(Turn.HALF));
  }

  @Test
  void numbers_are_those_of_their_steps() {
    Wraps wraps = Wraps.needed(kilonewtons(2), newtons(150), 0.2);
    assertThat(wraps.steps().get(0).result()).isEqualTo(wraps.exactWraps());
    assertThat(wraps.steps().get(1).result()).isEqualTo(wraps.nextHalfWraps());
    assertThat(wraps.steps().get(2).result()).isEqualTo(wraps.nextWholeWraps());
    assertThat(wraps).isNotEqualTo(Wraps.needed(kilonewtons(2), newtons(150), 0.21));
  }

  @ParameterizedTest
  @ValueSource(doubles = {0, -0.1, 2.1, Double.NaN})
  void without_friction_no_number_of_wraps_holds(double friction) {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> Wraps.needed(kilonewtons(2), newtons(150), friction))
        .withMessage("friction: wants a number above 0 and at most 2, got " + friction);
  }

  @Test
  void tensions_must_be_above_zero_and_frictions_in_order() {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> Wraps.needed(newtons(0), newtons(150), 0.2))
        .withMessageContaining("tail");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> Wraps.needed(newtons(10), newtons(0), 0.2))
        .withMessageContaining("hand");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> WrapsRange.needed(newtons(10), newtons(1), 0.3, 0.2))
        .withMessageContaining("least first");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> Wraps.needed(newtons(10), newtons(1), 0.3).handForce(-1));
  }

  private static double n(Quantity<Force> force) {
    return Si.value(force, Kind.FORCE, "force");
  }
}
