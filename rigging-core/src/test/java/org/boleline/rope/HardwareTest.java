package org.boleline.rope;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.assertThatNullPointerException;
import static org.boleline.Tolerances.ROUNDING;
import static org.boleline.Tolerances.relative;
import static org.boleline.units.Amounts.radians;

import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import org.boleline.explain.CautionCode;
import org.boleline.geometry.Turn;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class HardwareTest {
  @Provide
  static Arbitrary<Hardware> hardware() {
    return Arbitraries.oneOf(
        Arbitraries.just(Ideal.INSTANCE),
        Arbitraries.doubles().between(0, 0.6).ofScale(9).map(FrictionRing::new),
        Arbitraries.doubles().between(0, 0.6).ofScale(9).map(Bark::new),
        Arbitraries.doubles().between(0.3, 1).ofScale(9).map(Sheave::new));
  }

  @Test
  void kinds_are_named_as_in_plan_files() {
    assertThat(
            List.of(Ideal.INSTANCE, new FrictionRing(0.2), new Sheave(0.9), new Bark(0.4)).stream()
                .map(Hardware::name))
        .containsExactly("ideal", "ring", "sheave", "bark");
    assertThat(Ideal.INSTANCE).hasToString("ideal");
  }

  @Property
  void tension_never_falls_toward_the_tight_side_and_rises_with_the_turn(
      @ForAll("hardware") Hardware hardware,
      @ForAll @Scale(15) @DoubleRange(min = 0, max = 3) double turn) {
    double ratio = hardware.tensionRatio(Turn.of(radians(turn)));
    assertThat(ratio).isGreaterThanOrEqualTo(1);
    assertThat(hardware.tensionRatio(Turn.of(radians(turn + 0.1)))).isGreaterThanOrEqualTo(ratio);
    assertThat(hardware.tensionRatio(Turn.NONE)).isEqualTo(1);
  }

  @Property
  void the_ratio_is_the_result_of_its_step_bit_for_bit(
      @ForAll("hardware") Hardware hardware,
      @ForAll @Scale(15) @DoubleRange(min = 0, max = 3) double turn) {
    Turn w = Turn.of(radians(turn));
    assertThat(hardware.step(w).result()).isEqualTo(hardware.tensionRatio(w));
  }

  @Property
  void bark_and_ring_of_one_friction_hold_alike(
      @ForAll @Scale(15) @DoubleRange(min = 0, max = 2) double friction) {
    assertThat(new Bark(friction).tensionRatio(Turn.HALF))
        .isEqualTo(new FrictionRing(friction).tensionRatio(Turn.HALF));
  }

  @Test
  void no_friction_and_no_losses_meet_the_ideal_contact() {
    assertThat(new FrictionRing(0).tensionRatio(Turn.ofWraps(3))).isEqualTo(1);
    assertThat(new Sheave(1).tensionRatio(Turn.HALF)).isEqualTo(1);
    assertThat(Ideal.INSTANCE.tensionRatio(Turn.HALF)).isEqualTo(1);
  }

  @Property
  void a_sheave_gives_its_efficiency_at_a_half_turn(
      @ForAll @Scale(15) @DoubleRange(min = 0.01, max = 1) double efficiency) {
    assertThat(new Sheave(efficiency).tensionRatio(Turn.HALF))
        .isCloseTo(1 / efficiency, relative(ROUNDING));
  }

  @ParameterizedTest
  @ValueSource(doubles = {-0.001, 2.001, Double.NaN, Double.POSITIVE_INFINITY})
  void friction_outside_its_range_is_refused(double friction) {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> new FrictionRing(friction))
        .withMessage("friction: wants a number from 0 to 2, got " + friction);
    assertThatIllegalArgumentException().isThrownBy(() -> new Bark(friction));
  }

  @ParameterizedTest
  @ValueSource(doubles = {0, -0.5, 1.001, Double.NaN, Double.NEGATIVE_INFINITY})
  void an_efficiency_outside_its_range_is_refused(double efficiency) {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> new Sheave(efficiency))
        .withMessage("efficiency: wants a number above 0 and at most 1, got " + efficiency);
  }

  @Test
  void a_ratio_beyond_the_doubles_is_refused_not_infinite() {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> new FrictionRing(2).tensionRatio(Turn.ofWraps(100)))
        .withMessageContaining("FRI-2");
    assertThatNullPointerException().isThrownBy(() -> Ideal.INSTANCE.step(null));
  }

  @Test
  void a_friction_that_was_never_seen_is_computed_and_cautioned() {
    assertThat(new FrictionRing(0.9).step(Turn.HALF).cautions("/contacts/0"))
        .singleElement()
        .satisfies(
            caution -> {
              assertThat(caution.code()).isEqualTo(CautionCode.OUTSIDE_RANGE);
              assertThat(caution.values())
                  .containsEntry("symbol", "mu")
                  .containsEntry("most", "0.6");
            });
    assertThat(new FrictionRing(0.25).step(Turn.HALF).cautions("/contacts/0")).isEmpty();
    assertThat(new Sheave(0.95).step(Turn.ofWraps(1)).cautions("")).hasSize(1);
  }

  @Test
  void equality_is_by_kind_and_number() {
    assertThat(new FrictionRing(0.2)).isEqualTo(new FrictionRing(0.2));
    assertThat((Object) new FrictionRing(0.2)).isNotEqualTo(new Bark(0.2));
    assertThat(new Sheave(0.9)).isNotEqualTo(new Sheave(0.91));
  }
}
