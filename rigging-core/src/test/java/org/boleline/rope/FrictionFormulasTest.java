package org.boleline.rope;

import static org.assertj.core.api.Assertions.assertThat;

import java.lang.reflect.Modifier;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.boleline.explain.Caution;
import org.boleline.explain.Formula;
import org.boleline.explain.Source;
import org.boleline.explain.Step;
import org.boleline.explain.Symbol;
import org.boleline.geometry.Turn;
import org.boleline.units.Amounts;
import org.boleline.units.Kind;
import org.boleline.units.Si;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class FrictionFormulasTest {
  static Stream<Formula> formulas() {
    return FrictionFormulas.all().stream();
  }

  @Test
  void the_list_holds_every_equation_once() throws ReflectiveOperationException {
    List<Formula> declared = new ArrayList<>();
    for (var field : FrictionFormulas.class.getFields()) {
      if (Modifier.isStatic(field.getModifiers()) && field.getType() == Formula.class) {
        declared.add((Formula) field.get(null));
      }
    }
    assertThat(FrictionFormulas.all()).containsExactlyInAnyOrderElementsOf(declared);
    assertThat(formulas().map(Formula::id)).doesNotHaveDuplicates();
  }

  @ParameterizedTest
  @MethodSource("formulas")
  void the_text_names_its_result_and_every_symbol(Formula formula) {
    assertThat(formula.text()).startsWith(formula.result().name());
    for (Symbol symbol : formula.inputs()) {
      assertThat(formula.text())
          .containsPattern("(?<![A-Za-z_])" + Pattern.quote(symbol.name()) + "(?![A-Za-z_])");
    }
  }

  @ParameterizedTest
  @MethodSource("formulas")
  void it_says_what_it_holds_for_and_where_it_comes_from(Formula formula) {
    assertThat(formula.id()).matches("(FRI|FOR|SHV|TAC)-[0-9]+");
    assertThat(formula.validity()).isNotBlank();
    assertThat(formula.source().title()).isNotBlank();
    assertThat(formula.source().reading()).isNotEqualTo(Source.Reading.STATED);
  }

  @ParameterizedTest
  @MethodSource("formulas")
  void inside_all_ranges_there_is_no_caution(Formula formula) {
    assertThat(formula.step(inside(formula)).cautions("/here")).isEmpty();
  }

  @ParameterizedTest
  @MethodSource("formulas")
  void each_symbol_pushed_past_its_range_is_cautioned(Formula formula) {
    for (int i = 0; i < formula.inputs().size(); i++) {
      Symbol symbol = formula.inputs().get(i);
      double[] inputs = inside(formula);
      // A little above the upper end where there is one: every equation still has a value there.
      if (Double.isFinite(symbol.most())) {
        inputs[i] = symbol.most() * 1.001;
        List<Caution> cautions = formula.step(inputs).cautions("/here");
        assertThat(cautions).hasSize(1);
        assertThat(cautions.get(0).values())
            .containsEntry("symbol", symbol.name())
            .containsEntry("formula", formula.id());
      }
      if (symbol.least() > 0) {
        inputs[i] = symbol.least() * 0.999;
        assertThat(formula.step(inputs).cautions("/here")).hasSize(1);
      }
    }
  }

  @ParameterizedTest
  @MethodSource("formulas")
  void a_printed_step_worked_again_from_its_printed_numbers_gives_the_printed_result(
      Formula formula) {
    Step step = formula.step(inside(formula));
    String[] lines = step.toString().lines().skip(1).toArray(String[]::new);
    double[] printed =
        Arrays.stream(lines)
            .mapToDouble(line -> Double.parseDouble(line.replaceFirst(".*? = (\\S+).*", "$1")))
            .toArray();
    double[] inputs = Arrays.copyOf(printed, printed.length - 1);
    assertThat(formula.value(inputs)).isEqualTo(printed[printed.length - 1]);
  }

  @Test
  void the_turn_of_a_helix_is_that_of_the_angle_type() {
    Turn turn = Turn.ofHelix(Amounts.radians(7), Amounts.radians(0.3));
    assertThat(FrictionFormulas.HELIX_TURN.value(7, 0.3))
        .isEqualTo(Si.value(turn.angle(), Kind.ANGLE, "turn"));
  }

  /** A value inside every range, different for each symbol; whole numbers for counts. */
  private static double[] inside(Formula formula) {
    double[] inputs = new double[formula.inputs().size()];
    for (int i = 0; i < inputs.length; i++) {
      Symbol symbol = formula.inputs().get(i);
      double reach = Double.isInfinite(symbol.most()) ? 10 : symbol.most() - symbol.least();
      inputs[i] = symbol.least() + reach * (0.5 - 0.03 * i);
      if (formula.id().startsWith("TAC") && List.of("n", "s").contains(symbol.name())) {
        inputs[i] = Math.rint(inputs[i]);
      }
    }
    return inputs;
  }
}
