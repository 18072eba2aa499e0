package org.boleline.explain;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.assertThatNullPointerException;

import java.util.List;
import java.util.Locale;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import org.boleline.explain.Source.Reading;
import org.junit.jupiter.api.Test;

class FormulaTest {
  private static final Source BOOK = new Source("book", "A book of statics", Reading.READ);
  private static final Formula WEIGHT =
      Formula.of(
          "X-1",
          "F = m * g",
          new Symbol("F", "weight", "N", 0, Double.POSITIVE_INFINITY),
          List.of(
              new Symbol("m", "mass", "kg", 0, 1000), new Symbol("g", "gravity", "m/s2", 9.7, 9.9)),
          "near the ground",
          BOOK,
          x -> x[0] * x[1]);

  @Property
  void the_result_of_a_step_is_the_value_bit_for_bit(
      @ForAll @Scale(15) @DoubleRange(min = 0, max = 5000) double mass,
      @ForAll @Scale(15) @DoubleRange(min = 9, max = 11) double gravity) {
    Step step = WEIGHT.step(mass, gravity);
    assertThat(step.result()).isEqualTo(WEIGHT.value(mass, gravity)).isEqualTo(mass * gravity);
    assertThat(step.input(0)).isEqualTo(mass);
    assertThat(step.input(1)).isEqualTo(gravity);
    assertThat(step.formula()).isSameAs(WEIGHT);
  }

  @Test
  void a_step_keeps_its_own_numbers() {
    double[] inputs = {10, 9.8};
    Step step = WEIGHT.step(inputs);
    inputs[0] = 99;
    assertThat(step.input(0)).isEqualTo(10);
  }

  @Test
  void what_cannot_be_evaluated_is_refused_with_the_symbol() {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> WEIGHT.value(1))
        .withMessage("X-1: wants 2 inputs, got 1");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> WEIGHT.value(1, Double.NaN))
        .withMessage("X-1: g: wants a finite number, got NaN");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> WEIGHT.step(Double.MAX_VALUE, 10))
        .withMessage("X-1: no finite result for these inputs");
    assertThatNullPointerException()
        .isThrownBy(() -> Formula.of("X-2", "a = b", WEIGHT.result(), List.of(), "", BOOK, null));
  }

  @Test
  void a_formula_tells_text_symbols_validity_and_source() {
    assertThat(WEIGHT.id()).isEqualTo("X-1");
    assertThat(WEIGHT.text()).isEqualTo("F = m * g");
    assertThat(WEIGHT.validity()).isEqualTo("near the ground");
    assertThat(WEIGHT.source()).isEqualTo(BOOK);
    assertThat(WEIGHT.inputs()).extracting(Symbol::name).containsExactly("m", "g");
    assertThat(WEIGHT).hasToString("[X-1] F = m * g   (book)");
  }

  @Test
  void a_step_reads_as_a_hand_calculation_in_every_locale() {
    Locale before = Locale.getDefault();
    try {
      for (String tag : List.of("de", "tr", "ar-EG", "en")) {
        Locale.setDefault(Locale.forLanguageTag(tag));
        assertThat(WEIGHT.step(12.5, 9.8))
            .hasToString(
                """
                [X-1] F = m * g   (book)
                    m        = 12.5         kg     mass
                    g        = 9.8          m/s2   gravity
                    F        = 122.50000000000001 N      weight""");
      }
    } finally {
      Locale.setDefault(before);
    }
  }

  @Property
  void a_number_outside_its_range_is_cautioned_and_computed_all_the_same(
      @ForAll @Scale(15) @DoubleRange(min = -500, max = 1500) double mass,
      @ForAll @Scale(15) @DoubleRange(min = 9.5, max = 10.1) double gravity) {
    List<Caution> cautions = WEIGHT.step(mass, gravity).cautions("/piece");
    int outside = (mass < 0 || mass > 1000 ? 1 : 0) + (gravity < 9.7 || gravity > 9.9 ? 1 : 0);
    assertThat(cautions).hasSize(outside);
    assertThat(cautions)
        .allSatisfy(
            caution -> {
              assertThat(caution.code()).isEqualTo(CautionCode.OUTSIDE_RANGE);
              assertThat(caution.place()).isEqualTo("/piece");
            });
  }

  @Test
  void the_caution_names_symbol_value_range_and_formula() {
    Caution caution = WEIGHT.step(1200, 9.8).cautions("/piece/mass").get(0);
    assertThat(caution.values())
        .containsEntry("symbol", "m")
        .containsEntry("value", "1200")
        .containsEntry("least", "0")
        .containsEntry("most", "1000")
        .containsEntry("formula", "X-1")
        .containsEntry("unit", "kg");
    assertThat(caution.sentence())
        .contains("m = 1200")
        .contains("0 to 1000")
        .contains("X-1")
        .doesNotContain("{");
  }
}
