package org.boleline.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatNullPointerException;

import org.boleline.units.Kind;
import org.junit.jupiter.api.Test;

class BoxTest {
  @Test
  void any_two_opposite_corners_give_the_same_box() {
    Box box = Box.between(Vector.ofSi(Kind.LENGTH, 1, 2, 3), Vector.ofSi(Kind.LENGTH, 4, -5, 6));
    Box same = Box.between(Vector.ofSi(Kind.LENGTH, 4, 2, 6), Vector.ofSi(Kind.LENGTH, 1, -5, 3));
    assertThat(box).isEqualTo(same).hasSameHashCodeAs(same);
    assertThat(box.least()).isEqualTo(Vector.ofSi(Kind.LENGTH, 1, -5, 3));
    assertThat(box.most()).isEqualTo(Vector.ofSi(Kind.LENGTH, 4, 2, 6));
    assertThat(box).hasToString("box from (1, -5, 3) m to (4, 2, 6) m");
  }

  @Test
  void a_missing_corner_is_named() {
    assertThatNullPointerException()
        .isThrownBy(() -> Box.between(Vector.ofSi(Kind.LENGTH, 1, 2, 3), null))
        .withMessage("opposite");
  }
}
