package org.boleline.rope;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.boleline.units.Amounts.kilogramsPerMetre;
import static org.boleline.units.Amounts.kilonewtons;
import static org.boleline.units.Amounts.metres;
import static org.boleline.units.Amounts.millimetres;
import static org.boleline.units.Amounts.newtons;

import java.util.ArrayList;
import java.util.List;
import org.boleline.units.Kind;
import org.boleline.units.Si;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class RopeTest {
  private static final StretchPoint LOW = StretchPoint.of(kilonewtons(5), 0.02);
  private static final StretchPoint HIGH = StretchPoint.of(kilonewtons(10), 0.03);

  @Test
  void what_is_not_stated_is_empty() {
    assertThat(Rope.UNSTATED.minimumBreakingStrength()).isEmpty();
    assertThat(Rope.UNSTATED.diameter()).isEmpty();
    assertThat(Rope.UNSTATED.linearDensity()).isEmpty();
    assertThat(Rope.UNSTATED.stretch()).isEmpty();
    assertThat(Rope.UNSTATED)
        .hasToString(
            "rope: minimum breaking strength not stated, diameter not stated,"
                + " linear density not stated, stretch not stated");
  }

  @Test
  void what_is_stated_is_given_back_and_the_rope_before_is_left_as_it_was() {
    Rope rope =
        Rope.UNSTATED
            .withStretch(List.of(LOW, HIGH))
            .withMinimumBreakingStrength(kilonewtons(50))
            .withDiameter(millimetres(14))
            .withLinearDensity(kilogramsPerMetre(0.14));
    assertThat(Si.value(rope.minimumBreakingStrength().orElseThrow(), Kind.FORCE, "strength"))
        .isEqualTo(50_000);
    assertThat(Si.value(rope.diameter().orElseThrow(), Kind.LENGTH, "diameter")).isEqualTo(0.014);
    assertThat(Si.value(rope.linearDensity().orElseThrow(), Kind.LINEAR_DENSITY, "density"))
        .isEqualTo(0.14);
    assertThat(rope.stretch()).containsExactly(LOW, HIGH);
    assertThat(rope)
        .hasToString(
            "rope: minimum breaking strength 50000 N, diameter 0.014 m,"
                + " linear density 0.14 kg/m, stretch [0.02 at 5000 N, 0.03 at 10000 N]");
    assertThat(Rope.UNSTATED.diameter()).isEmpty();
  }

  @Test
  void the_stretch_curve_is_copied_and_cannot_be_changed() {
    List<StretchPoint> points = new ArrayList<>(List.of(LOW));
    Rope rope = Rope.UNSTATED.withStretch(points);
    points.add(HIGH);
    assertThat(rope.stretch()).containsExactly(LOW);
    assertThatExceptionOfType(UnsupportedOperationException.class)
        .isThrownBy(() -> rope.stretch().add(HIGH));
    assertThat(rope.withStretch(List.of())).isEqualTo(Rope.UNSTATED);
  }

  @Test
  void a_stretch_curve_that_does_not_rise_is_refused() {
    StretchPoint sameElongation = StretchPoint.of(kilonewtons(12), 0.03);
    StretchPoint sameTension = StretchPoint.of(kilonewtons(10), 0.04);
    for (List<StretchPoint> falling :
        List.of(
            List.of(HIGH, LOW),
            List.of(LOW, LOW),
            List.of(HIGH, sameElongation),
            List.of(LOW, HIGH, sameTension))) {
      assertThatIllegalArgumentException()
          .isThrownBy(() -> Rope.UNSTATED.withStretch(falling))
          .withMessageContaining("stretch: wants tension and elongation to rise");
    }
  }

  @ParameterizedTest
  @ValueSource(doubles = {0, -1})
  void sizes_must_be_above_zero(double value) {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> Rope.UNSTATED.withMinimumBreakingStrength(newtons(value)))
        .withMessageContaining("minimum breaking strength");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> Rope.UNSTATED.withDiameter(metres(value)))
        .withMessageContaining("diameter");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> Rope.UNSTATED.withLinearDensity(kilogramsPerMetre(value)))
        .withMessageContaining("linear density");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> StretchPoint.of(newtons(value), 0.01))
        .withMessageContaining("tension");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> StretchPoint.of(newtons(1), value))
        .withMessageContaining("elongation");
  }

  @Test
  void an_elongation_that_is_not_a_number_is_refused() {
    assertThatIllegalArgumentException().isThrownBy(() -> StretchPoint.of(newtons(1), Double.NaN));
  }

  @Test
  void equality_is_exact_and_does_not_depend_on_the_unit() {
    Rope rope = Rope.UNSTATED.withDiameter(millimetres(14)).withStretch(List.of(LOW));
    Rope same =
        Rope.UNSTATED
            .withStretch(List.of(StretchPoint.of(newtons(5000), 0.02)))
            .withDiameter(metres(0.014));
    assertThat(rope).isEqualTo(same).hasSameHashCodeAs(same);
    assertThat(rope).isNotEqualTo(Rope.UNSTATED).isNotEqualTo(rope.withDiameter(millimetres(15)));
    assertThat(rope.withStretch(List.of(HIGH))).isNotEqualTo(rope);
    assertThat(LOW.elongationFraction()).isEqualTo(0.02);
    assertThat(Si.value(LOW.tension(), Kind.FORCE, "tension")).isEqualTo(5000);
    assertThat(LOW).hasSameHashCodeAs(StretchPoint.of(newtons(5000), 0.02));
  }
}
