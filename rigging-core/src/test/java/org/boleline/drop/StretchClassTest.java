package org.boleline.drop;

import static org.assertj.core.api.Assertions.assertThat;
import static org.boleline.Tolerances.EXACT;
import static org.boleline.Tolerances.printedTo;
import static org.boleline.Tolerances.relative;
import static org.boleline.drop.CatchNumbers.n;

import org.boleline.explain.Source.Reading;
import org.boleline.units.Kind;
import org.boleline.units.Si;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class StretchClassTest {
  @ParameterizedTest
  @CsvSource({
    // EN 892:2004 as told in the Alberta OHS Code explanation guide, section 818.
    "EN_892_SINGLE, 80, 12000, 0.10",
    "EN_892_HALF, 55, 8000, 0.12",
    // EN 1891 as told on a rope maker's data page and in a training manual.
    "EN_1891_A, 100, 6000, 0.05",
    "EN_1891_B, 80, 6000, 0.05"
  })
  void bounds_are_those_of_the_standard(
      StretchClass kind, double mass, double peak, double slowStrain) {
    assertThat(Si.value(kind.fallingMass().orElseThrow(), Kind.MASS, "mass")).isEqualTo(mass);
    assertThat(n(kind.peakAtMost().orElseThrow())).isEqualTo(peak);
    assertThat(kind.slowStrainFractionAtMost()).isEqualTo(slowStrain);
  }

  @Test
  void the_least_slow_modulus_of_low_stretch_rope() {
    // By hand: 100 kg over 5 %, 19.61 kN.
    assertThat(n(StretchClass.EN_1891_A.slowModulusAtLeast().orElseThrow()))
        .isCloseTo(19610, printedTo(10));
    assertThat(StretchClass.EN_892_SINGLE.slowModulusAtLeast()).isEmpty();
  }

  @Test
  void classes_of_the_cordage_institute_by_hand() {
    // 10 % of the strength over 6 to 10 %: 1.0 to 1.67 times the strength; static above 1.67.
    assertThat(StretchClass.CORDAGE_LOW_STRETCH.modulusOverStrengthRatioAtLeast().orElseThrow())
        .isCloseTo(1, relative(EXACT));
    assertThat(StretchClass.CORDAGE_LOW_STRETCH.modulusOverStrengthRatioAtMost().orElseThrow())
        .isCloseTo(1.67, printedTo(0.01));
    assertThat(StretchClass.CORDAGE_STATIC.modulusOverStrengthRatioAtLeast().orElseThrow())
        .isCloseTo(1.67, printedTo(0.01));
    assertThat(StretchClass.CORDAGE_STATIC.modulusOverStrengthRatioAtMost()).isEmpty();
    assertThat(StretchClass.CORDAGE_LOW_STRETCH.slowStrainFractionAtLeast()).hasValue(0.06);
    assertThat(StretchClass.EN_1891_A.modulusOverStrengthRatioAtLeast()).isEmpty();
  }

  @Test
  void what_the_source_does_not_give_is_absent() {
    assertThat(StretchClass.EN_892_SINGLE.fallFactor()).isEmpty();
    assertThat(StretchClass.EN_892_SINGLE.dropModulusAtMost()).isEmpty();
    assertThat(StretchClass.EN_892_SINGLE.dropStrainFractionAtMost()).hasValue(0.4);
    assertThat(StretchClass.EN_1891_A.fallFactor()).hasValue(0.3);
    assertThat(StretchClass.CORDAGE_STATIC.peakAtMost()).isEmpty();
    assertThat(StretchClass.CORDAGE_STATIC.fallingMass()).isEmpty();
  }

  @ParameterizedTest
  @EnumSource(StretchClass.class)
  void every_class_says_where_it_was_read(StretchClass kind) {
    assertThat(kind.source().reading()).isEqualTo(Reading.READ);
  }
}
