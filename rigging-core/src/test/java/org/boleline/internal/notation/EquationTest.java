package org.boleline.internal.notation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.Map;
import org.boleline.Tolerances;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class EquationTest {
  /** Values by the rules of arithmetic; no source needed. */
  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      value = {
        "x = 2 + 3 * 4; 14",
        "x = (2 + 3) * 4; 20",
        "x = 2 - 3 - 4; -5",
        "x = 24 / 4 / 3; 2",
        "x = 2 * 3^2; 18",
        "x = -2^2; -4",
        "x = (2^(1 / 2))^2; 2",
        "x = |3 - 5|; 2",
        "x = sum(i = 1 to n, choose(n, i) * a^i); 26",
        "x = (n + 1)! / n!; 4",
        "x = a + a^2 + ... + a^n; 14",
        "x = 1 where a > n, 7 where n = 3, else 9; 7",
        "x = sin(30 deg); 0.5",
        "x = h * 2 with h = a + 1; 6",
        "x = max(a, n) - min(a, n) + ceil(1.2e-1); 2"
      })
  void equations_follow_the_rules_of_arithmetic(String text, double value) {
    assertThat(Equation.parse(text).value(Map.of("a", 2.0, "n", 3.0)))
        .isCloseTo(value, within(Tolerances.ROUNDING_ABSOLUTE));
  }

  @Test
  void a_symbol_without_a_number_gives_none() {
    assertThat(Equation.parse("x = a * b").value(Map.of("a", 2.0))).isNaN();
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "x",
        "x = ",
        "x = 2 +",
        "x = (2",
        "x = 2)",
        "x = 2 3",
        "x = a b",
        "x = a^b^c",
        "x = 2 $ 3",
        "x = |a",
        "x = a where b",
        "x = a where b > 1",
        "x = max(a)",
        "x = sin a",
        "x = a + b^2 + ... + a^n"
      })
  void a_text_out_of_form_is_refused(String text) {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> Equation.parse(text))
        .withMessageContaining(text);
  }

  @Test
  void numbers_put_in_keep_signs_and_powers_in_parentheses() {
    Equation put =
        Equation.parse("x = a^2 - b * c").with(Map.of("a", "-3", "b", "-2", "c", "1e-7"));

    assertThat(put.text()).isEqualTo("x = (-3)^2 - (-2) * 1e-7");
    assertThat(put.value(Map.of())).isCloseTo(9 + 2e-7, within(Tolerances.ROUNDING_ABSOLUTE));
    assertThat(Equation.parse(Equation.parse("x = a^2").with(Map.of("a", "1e-7")).text()).text())
        .isEqualTo("x = (1e-7)^2");
  }

  /** LaTeX by the rules of its math mode, as in any manual of it. */
  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      value = {
        "t = exp(mu * w); t = \\exp\\left(\\mu \\, w\\right)",
        "T_tight = T1 / 2; T_{\\mathrm{tight}} = \\frac{T_{\\mathrm{1}}}{2}",
        "EA = |a|; \\mathrm{EA} = \\left|a\\right|",
        "x = sum(i = 1 to n, choose(n, i)); x = \\sum_{i = 1}^{n} \\binom{n}{i}",
        "x = sum(i = 1 to n, i) * a; x = \\left(\\sum_{i = 1}^{n} i\\right) \\, a",
        "x = a / b * (c / d); x = \\frac{a}{b} \\, \\left(\\frac{c}{d}\\right)",
        "x = (n!)^2; x = \\left(n!\\right)^{2}",
        "x = sqrt(2 * 3)^2; x = \\left(\\sqrt{2 \\cdot 3}\\right)^{2}",
        "x = 1.5e-7 * 30 deg; x = 1.5 \\times 10^{-7} \\cdot 30^{\\circ}"
      })
  void equations_print_as_latex(String text, String latex) {
    assertThat(Equation.parse(text).latex()).isEqualTo(latex);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "x = (n!)^2",
        "x = (-a)^2 - (-b)",
        "x = a - (b - c)",
        "x = a / (b / c) * d",
        "x = (a^b)^c",
        "x = |a * |b||^2",
        "x = -(a + b) / c"
      })
  void parentheses_that_count_stay(String text) {
    assertThat(Equation.parse(text).text()).isEqualTo(text);
  }

  @Test
  void few_powers_of_a_number_are_written_out() {
    Equation powers = Equation.parse("x = a * (e + e^2 + ... + e^n)");

    assertThat(powers.with(Map.of("n", "1")).text()).isEqualTo("x = a * e");
    assertThat(powers.with(Map.of("n", "3")).text()).isEqualTo("x = a * (e + e^2 + e^3)");
    assertThat(powers.with(Map.of("n", "4")).text()).isEqualTo("x = a * (e + e^2 + ... + e^4)");
  }

  @Test
  void numbers_side_by_side_have_a_sign_between_them_in_mathml() {
    String put = Equation.parse("x = a * b^c").with(Map.of("a", "2", "b", "3", "c", "4")).mathml();

    assertThat(put).contains("<mn>2</mn><mo>\u22c5</mo><msup><mrow><mn>3</mn>");
  }

  @Test
  void an_equation_prints_as_mathml_with_its_text_as_alternative() {
    assertThat(Equation.parse("x = a / b where a < b, else 2").mathml())
        .isEqualTo(
            "<math xmlns=\"http://www.w3.org/1998/Math/MathML\""
                + " alttext=\"x = a / b where a &lt; b, else 2\"><mrow><mi>x</mi><mo>=</mo><mrow>"
                + "<mo>{</mo><mtable><mtr><mtd><mrow><mfrac><mrow><mi>a</mi></mrow><mrow><mi>b</mi>"
                + "</mrow></mfrac></mrow></mtd><mtd><mrow><mtext>where </mtext><mi>a</mi>"
                + "<mo>&lt;</mo><mi>b</mi></mrow></mtd></mtr><mtr><mtd><mrow><mn>2</mn></mrow></mtd>"
                + "<mtd><mrow><mtext>else</mtext></mrow></mtd></mtr></mtable></mrow></mrow></math>");
  }
}
