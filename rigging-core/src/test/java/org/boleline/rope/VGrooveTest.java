package org.boleline.rope;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.boleline.Tolerances.ROUNDING;
import static org.boleline.Tolerances.relative;
import static org.boleline.units.Amounts.degrees;

import org.boleline.geometry.Turn;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class VGrooveTest {
  @Test
  void flanks_at_sixty_degrees_double_the_friction() {
    // Statics and belt texts (formula from memory): exp(mu w / sin(a / 2)), a = 60 degrees.
    VGroove groove = VGroove.of(0.2, degrees(30));
    assertThat(groove.effectiveFriction()).isCloseTo(0.4, relative(ROUNDING));
    assertThat(groove.asRing().tensionRatio(Turn.HALF))
        .isCloseTo(Math.exp(0.4 * Math.PI), relative(ROUNDING));
    assertThat(groove.steps().get(0).result()).isEqualTo(groove.effectiveFriction());
  }

  @Test
  void a_groove_opened_flat_is_a_round_contact() {
    assertThat(VGroove.of(0.2, degrees(90)).effectiveFriction()).isCloseTo(0.2, relative(ROUNDING));
  }

  @ParameterizedTest
  @ValueSource(doubles = {0, -10, 90.1})
  void an_angle_outside_its_range_is_refused(double halfAngle) {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> VGroove.of(0.2, degrees(halfAngle)))
        .withMessageContaining("half angle");
  }

  @Test
  void a_friction_outside_its_range_is_refused() {
    assertThatIllegalArgumentException().isThrownBy(() -> VGroove.of(-0.1, degrees(30)));
    assertThatIllegalArgumentException()
        .isThrownBy(() -> VGroove.of(1, degrees(10)).asRing())
        .withMessageContaining("friction");
  }

  @Test
  void equality_is_exact() {
    assertThat(VGroove.of(0.2, degrees(30)))
        .isEqualTo(VGroove.of(0.2, degrees(30)))
        .hasSameHashCodeAs(VGroove.of(0.2, degrees(30)))
        .isNotEqualTo(VGroove.of(0.2, degrees(31)))
        .isNotEqualTo(VGroove.of(0.21, degrees(30)));
    assertThat(VGroove.of(0.2, degrees(30)).toString()).startsWith("[FRI-4] mu_v = mu / sin(a)");
  }
}
