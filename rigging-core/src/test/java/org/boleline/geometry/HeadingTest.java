package org.boleline.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.assertThatNullPointerException;
import static org.boleline.units.Amounts.degrees;
import static org.boleline.units.Amounts.radians;

import org.boleline.units.Kind;
import org.boleline.units.Si;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class HeadingTest {
  @Test
  void lean_and_azimuth_are_kept() {
    Heading heading = Heading.of(radians(0.5), radians(-2));
    assertThat(Si.value(heading.lean(), Kind.ANGLE, "lean")).isEqualTo(0.5);
    assertThat(Si.value(heading.azimuth(), Kind.ANGLE, "azimuth")).isEqualTo(-2);
  }

  @ParameterizedTest
  @ValueSource(doubles = {0, 90, 180})
  void a_stem_may_be_plumb_level_or_hang(double lean) {
    assertThat(Heading.of(degrees(lean), degrees(30)).lean()).isNotNull();
  }

  @ParameterizedTest
  @ValueSource(doubles = {-0.1, 180.1})
  void a_lean_outside_zero_to_half_a_turn_is_refused(double lean) {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> Heading.of(degrees(lean), degrees(0)))
        .withMessageContaining("lean");
  }

  @Test
  void null_is_refused_by_name() {
    assertThatNullPointerException()
        .isThrownBy(() -> Heading.of(degrees(1), null))
        .withMessage("azimuth");
  }

  @Test
  void equality_is_exact_and_does_not_depend_on_the_unit() {
    Heading heading = Heading.of(degrees(180), degrees(90));
    Heading same = Heading.of(radians(Math.PI), radians(Math.PI / 2));
    assertThat(heading).isEqualTo(same).hasSameHashCodeAs(same);
    assertThat(heading).isNotEqualTo(Heading.of(degrees(180), degrees(91)));
    assertThat(heading).isNotEqualTo(Heading.of(degrees(179), degrees(90)));
    assertThat(Heading.of(radians(0.5), radians(2)))
        .hasToString("lean 0.5 rad toward azimuth 2 rad");
  }
}
