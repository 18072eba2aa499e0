package org.boleline.explain;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.util.List;
import org.junit.jupiter.api.Test;

class PlanRefusedExceptionTest {
  @Test
  void all_reasons_are_told_one_a_line_in_the_order_found() {
    Refusal first =
        new Refusal(
            Refusal.Code.WRONG_QUANTITY, "/stems/0/length", "a quantity of length", "12 kg");
    Refusal second = new Refusal(Refusal.Code.MISSING, "", "a member \"format\"", "none");
    PlanRefusedException refused = new PlanRefusedException(List.of(first, second));
    assertThat(refused.refusals()).containsExactly(first, second);
    assertThat(refused)
        .hasMessage(
            "/stems/0/length: wants a quantity of length, got 12 kg\n"
                + "/: wants a member \"format\", got none");
  }

  @Test
  void there_is_no_refusal_without_a_reason() {
    assertThatIllegalArgumentException().isThrownBy(() -> new PlanRefusedException(List.of()));
  }

  @Test
  void common_practice_is_marked_as_such() {
    Source source = Source.commonPractice("wraps are laid in halves");
    assertThat(source.reading()).isEqualTo(Source.Reading.COMMON_PRACTICE);
    assertThat(source.id()).isEqualTo("common practice, no source");
  }
}
