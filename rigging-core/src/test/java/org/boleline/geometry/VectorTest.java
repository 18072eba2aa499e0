package org.boleline.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.assertThatNullPointerException;
import static org.boleline.Tolerances.ROUNDING;
import static org.boleline.Tolerances.relative;
import static org.boleline.units.Amounts.centimetres;
import static org.boleline.units.Amounts.kilonewtons;
import static org.boleline.units.Amounts.metres;
import static org.boleline.units.Amounts.newtons;

import javax.measure.quantity.Force;
import javax.measure.quantity.Length;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import org.boleline.units.Kind;
import org.boleline.units.Si;
import org.junit.jupiter.api.Test;

class VectorTest {
  @Test
  void components_may_come_in_any_unit() {
    Vector<Length> place = Vector.of(metres(1), centimetres(250), metres(-3));
    assertThat(place.in(Kind.LENGTH)).containsExactly(1, 2.5, -3);
    assertThat(place.kind()).isSameAs(Kind.LENGTH);
    assertThat(Si.value(place.x(), Kind.LENGTH, "x")).isEqualTo(1);
    assertThat(Si.value(place.y(), Kind.LENGTH, "y")).isEqualTo(2.5);
    assertThat(Si.value(place.z(), Kind.LENGTH, "z")).isEqualTo(-3);
  }

  @Property
  void its_length_is_the_root_of_the_squares(
      @ForAll @Scale(15) @DoubleRange(min = -1e6, max = 1e6) double x,
      @ForAll @Scale(15) @DoubleRange(min = -1e6, max = 1e6) double y,
      @ForAll @Scale(15) @DoubleRange(min = -1e6, max = 1e6) double z) {
    Vector<Force> force = Vector.ofSi(Kind.FORCE, x, y, z);
    assertThat(Si.value(force.magnitude(), Kind.FORCE, "force"))
        .isCloseTo(Math.hypot(Math.hypot(x, y), z), relative(ROUNDING));
  }

  @Test
  void the_array_given_out_is_a_copy() {
    Vector<Length> place = Vector.ofSi(Kind.LENGTH, 1, 2, 3);
    place.in(Kind.LENGTH)[0] = 9;
    assertThat(place.in(Kind.LENGTH)).containsExactly(1, 2, 3);
  }

  @Test
  void equality_is_exact_and_does_not_depend_on_the_unit_but_on_the_kind() {
    Vector<Force> force = Vector.of(Kind.FORCE, kilonewtons(1), newtons(2), newtons(3));
    Vector<Force> same = Vector.ofSi(Kind.FORCE, 1000, 2, 3);
    assertThat(force).isEqualTo(same).hasSameHashCodeAs(same);
    assertThat(force).isNotEqualTo(Vector.ofSi(Kind.FORCE, 1000, 2, Math.nextUp(3.0)));
    assertThat((Object) Vector.ofSi(Kind.LENGTH, 1, 2, 3))
        .isNotEqualTo(Vector.ofSi(Kind.FORCE, 1, 2, 3));
    assertThat(force).hasToString("(1000, 2, 3) N");
  }

  @Test
  @SuppressWarnings({"unchecked", "rawtypes"})
  void a_vector_is_not_read_in_the_unit_of_another_kind() {
    Vector raw = Vector.ofSi(Kind.FORCE, 1, 2, 3);
    assertThatIllegalArgumentException()
        .isThrownBy(() -> raw.in(Kind.LENGTH))
        .withMessage("wants the kind force, got length");
  }

  @Test
  void what_is_not_three_finite_numbers_is_refused() {
    assertThatIllegalArgumentException().isThrownBy(() -> Vector.ofSi(Kind.LENGTH, 1, 2));
    assertThatIllegalArgumentException().isThrownBy(() -> Vector.ofSi(Kind.LENGTH, 1, 2, 3, 4));
    assertThatIllegalArgumentException()
        .isThrownBy(() -> Vector.ofSi(Kind.LENGTH, 1, Double.NaN, 3));
    assertThatNullPointerException()
        .isThrownBy(() -> Vector.of(metres(1), null, metres(2)))
        .withMessage("y");
  }
}
