package org.boleline.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.assertThatNullPointerException;
import static org.boleline.Tolerances.ROUNDING;
import static org.boleline.Tolerances.ROUNDING_ABSOLUTE;
import static org.boleline.Tolerances.SUMMED_CHORDS;
import static org.boleline.Tolerances.absolute;
import static org.boleline.Tolerances.relative;
import static org.boleline.units.Amounts.degrees;
import static org.boleline.units.Amounts.radians;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import org.boleline.units.Kind;
import org.boleline.units.Si;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class TurnTest {
  @ParameterizedTest
  @CsvSource({"0, 180", "60, 120", "90, 90", "120, 60", "180, 0"})
  void turn_and_angle_between_the_legs_add_up_to_half_a_turn(double legs, double turn) {
    Turn found = Turn.between(IncludedAngle.of(degrees(legs)));
    assertThat(rad(found)).isCloseTo(Math.toRadians(turn), absolute(ROUNDING_ABSOLUTE));
  }

  @Property
  void legs_to_turn_and_back_is_the_same_angle(
      @ForAll @Scale(15) @DoubleRange(min = 0, max = Math.PI) double legs) {
    IncludedAngle given = IncludedAngle.of(radians(legs));
    IncludedAngle back = IncludedAngle.from(Turn.between(given));
    assertThat(rad(back)).isCloseTo(legs, absolute(ROUNDING_ABSOLUTE));
  }

  @Property
  void turn_to_legs_and_back_is_the_same_turn(
      @ForAll @Scale(15) @DoubleRange(min = 0, max = Math.PI) double turn) {
    Turn back = Turn.between(IncludedAngle.from(Turn.of(radians(turn))));
    assertThat(rad(back)).isCloseTo(turn, absolute(ROUNDING_ABSOLUTE));
  }

  @Test
  void a_turn_above_half_a_turn_has_no_angle_between_its_legs() {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> IncludedAngle.from(Turn.ofWraps(1)))
        .withMessageContaining("at most half a turn");
  }

  @Property
  void wraps_are_full_turns(@ForAll @Scale(15) @DoubleRange(min = 0, max = 20) double wraps) {
    Turn turn = Turn.ofWraps(wraps);
    assertThat(rad(turn)).isCloseTo(wraps * 2 * Math.PI, relative(ROUNDING));
    assertThat(turn.wraps()).isCloseTo(wraps, absolute(ROUNDING_ABSOLUTE * (1 + wraps)));
  }

  @Property
  void a_helix_turns_less_than_the_azimuth_it_sweeps(
      @ForAll @Scale(15) @DoubleRange(min = 0, max = 30) double swept,
      @ForAll @Scale(15) @DoubleRange(min = 0, max = 1.57) double lead) {
    double turn = rad(Turn.ofHelix(radians(swept), radians(lead)));
    assertThat(turn).isLessThanOrEqualTo(swept);
    // Independent: numerical length of the tangent's path on the unit sphere.
    assertThat(turn).isCloseTo(tangentPath(swept, lead), absolute(SUMMED_CHORDS));
  }

  private static double tangentPath(double swept, double lead) {
    int parts = 2000;
    double sum = 0;
    double step = swept / parts;
    for (int i = 0; i < parts; i++) {
      double[] a = tangent(i * step, lead);
      double[] b = tangent((i + 1) * step, lead);
      double chord =
          Math.sqrt(Math.pow(a[0] - b[0], 2) + Math.pow(a[1] - b[1], 2) + Math.pow(a[2] - b[2], 2));
      sum += 2 * Math.asin(chord / 2);
    }
    return sum;
  }

  private static double[] tangent(double azimuth, double lead) {
    return new double[] {
      -Math.sin(azimuth) * Math.cos(lead), Math.cos(azimuth) * Math.cos(lead), Math.sin(lead)
    };
  }

  @Test
  void a_flat_helix_is_a_wrap() {
    assertThat(Turn.ofHelix(degrees(720), degrees(0))).isEqualTo(Turn.of(degrees(720)));
  }

  @Test
  void turns_add_up() {
    assertThat(rad(Turn.HALF.plus(Turn.ofWraps(2)))).isCloseTo(5 * Math.PI, relative(ROUNDING));
    assertThat(Turn.NONE.plus(Turn.HALF)).isEqualTo(Turn.HALF);
  }

  @Test
  void equality_is_exact_and_does_not_depend_on_the_unit() {
    assertThat(Turn.of(degrees(180))).isEqualTo(Turn.HALF).hasSameHashCodeAs(Turn.HALF);
    assertThat(Turn.of(radians(1))).isNotEqualTo(Turn.of(radians(Math.nextUp(1.0))));
    assertThat(IncludedAngle.of(degrees(180)))
        .isEqualTo(IncludedAngle.of(radians(Math.PI)))
        .hasSameHashCodeAs(IncludedAngle.of(radians(Math.PI)));
    assertThat((Object) Turn.HALF).isNotEqualTo(IncludedAngle.of(degrees(180)));
  }

  @ParameterizedTest
  @ValueSource(doubles = {-1e-9, -Math.PI})
  void a_negative_turn_is_refused(double turn) {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> Turn.of(radians(turn)))
        .withMessageContaining("turn: wants zero or more");
  }

  @ParameterizedTest
  @ValueSource(doubles = {-0.5, Double.NaN, Double.POSITIVE_INFINITY})
  void wraps_that_mean_nothing_are_refused(double wraps) {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> Turn.ofWraps(wraps))
        .withMessageContaining("wraps");
  }

  @Test
  void angles_outside_their_range_are_refused() {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> IncludedAngle.of(degrees(180.5)))
        .withMessageContaining("at most half a turn");
    assertThatIllegalArgumentException().isThrownBy(() -> IncludedAngle.of(degrees(-1)));
    assertThatIllegalArgumentException()
        .isThrownBy(() -> Turn.ofHelix(degrees(360), degrees(90)))
        .withMessageContaining("lead: wants less than a quarter turn");
    assertThatNullPointerException().isThrownBy(() -> Turn.of(null)).withMessage("turn");
  }

  @Test
  void they_say_what_they_are() {
    assertThat(Turn.of(radians(1.5))).hasToString("1.5 rad of turn");
    assertThat(IncludedAngle.of(radians(1.5))).hasToString("1.5 rad between the legs");
  }

  private static double rad(Turn turn) {
    return Si.value(turn.angle(), Kind.ANGLE, "turn");
  }

  private static double rad(IncludedAngle legs) {
    return Si.value(legs.angle(), Kind.ANGLE, "legs");
  }
}
