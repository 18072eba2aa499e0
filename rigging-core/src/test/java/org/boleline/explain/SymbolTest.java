package org.boleline.explain;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import org.junit.jupiter.api.Test;

class SymbolTest {
  @Test
  void the_ends_of_a_range_belong_to_it() {
    Symbol friction = new Symbol("mu", "friction", "1", 0.05, 0.6);
    assertThat(friction.isWithinRange(0.05)).isTrue();
    assertThat(friction.isWithinRange(0.6)).isTrue();
    assertThat(friction.isWithinRange(Math.nextDown(0.05))).isFalse();
    assertThat(friction.isWithinRange(Math.nextUp(0.6))).isFalse();
    assertThat(friction.isWithinRange(Double.NaN)).isFalse();
  }

  @Test
  void an_empty_range_is_refused() {
    assertThatIllegalArgumentException().isThrownBy(() -> new Symbol("mu", "friction", "1", 2, 1));
    assertThatIllegalArgumentException()
        .isThrownBy(() -> new Symbol("mu", "friction", "1", Double.NaN, 1));
  }
}
