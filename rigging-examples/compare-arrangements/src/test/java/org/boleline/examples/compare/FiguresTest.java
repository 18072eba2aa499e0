package org.boleline.examples.compare;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class FiguresTest {
  @ParameterizedTest
  @CsvSource({
    "0, 0",
    "0.0123456, 0.0123",
    "0.5, 0.500",
    "1.2345, 1.23",
    "12.345, 12.3",
    "123.45, 123",
    "1234.5, 1235",
    "-12.345, -12.3",
    "1e-12, 0.000000000",
    "1e7, 10000000"
  })
  void three_figures_and_no_whole_number_cut_off(double value, String text) {
    assertThat(Figures.three(value)).isEqualTo(text);
  }

  @ParameterizedTest
  @CsvSource({"0, 0", "11.60, 11.6", "8, 8", "100, 100", "0.05, 0.05", "-0.1, -0.1"})
  void what_a_plan_states_is_shown_as_stated(double value, String text) {
    assertThat(Figures.stated(value)).isEqualTo(text);
  }

  @ParameterizedTest
  @CsvSource({"99999, N", "100000, kN", "0, N"})
  void great_forces_are_shown_in_kilonewtons(double newtons, String symbol) {
    assertThat(UnitSystem.SI.force(newtons).symbol()).isEqualTo(symbol);
    assertThat(UnitSystem.US.force(newtons).symbol()).isEqualTo("lbf");
  }

  @ParameterizedTest
  @CsvSource({
    "100 N, 22.5 lbf",
    "1 m, 3.28 ft",
    "500000000 Pa, 72519 psi",
    "0.5, 0.5",
    "12 xyz, 12 xyz",
    "anything m, anything m"
  })
  void quantities_of_cautions_are_shown_in_the_units_of_the_table(String text, String us) {
    assertThat(UnitSystem.US.restated(text).replace(Scale.HARD_BLANK, " ")).isEqualTo(us);
  }
}
