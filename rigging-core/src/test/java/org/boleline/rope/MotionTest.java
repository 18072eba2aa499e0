package org.boleline.rope;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.assertThatIllegalStateException;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

class MotionTest {
  @ParameterizedTest
  @EnumSource
  void its_text_reads_back(Motion motion) {
    assertThat(Motion.parse(motion.text())).isSameAs(motion);
  }

  @ParameterizedTest
  @ValueSource(strings = {"Lowering", "HELD", "down", "", " held"})
  void other_words_are_refused(String text) {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> Motion.parse(text))
        .withMessage("motion: wants lowering, raising or held, got \"" + text + "\"");
  }

  @Property
  void tension_falls_toward_the_tail_in_lowering_and_rises_in_raising(
      @ForAll @Scale(15) @DoubleRange(min = 1, max = 1000) double ratio) {
    assertThat(Motion.LOWERING.tailRatio(ratio)).isEqualTo(1 / ratio).isLessThanOrEqualTo(1);
    assertThat(Motion.RAISING.tailRatio(ratio)).isEqualTo(ratio);
  }

  @Test
  void held_lies_between_lowering_and_raising_and_has_no_ratio_of_its_own() {
    assertThat(Motion.HELD.ends()).containsExactly(Motion.LOWERING, Motion.RAISING);
    assertThat(Motion.LOWERING.ends()).containsExactly(Motion.LOWERING);
    assertThat(Motion.RAISING.ends()).containsExactly(Motion.RAISING);
    assertThatIllegalStateException().isThrownBy(() -> Motion.HELD.tailRatio(2));
  }

  @ParameterizedTest
  @ValueSource(doubles = {0.999, -1, Double.NaN, Double.POSITIVE_INFINITY})
  void a_ratio_below_one_is_refused(double ratio) {
    assertThatIllegalArgumentException().isThrownBy(() -> Motion.RAISING.tailRatio(ratio));
  }
}
