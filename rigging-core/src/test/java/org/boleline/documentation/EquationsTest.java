package org.boleline.documentation;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeSet;
import org.boleline.Tolerances;
import org.boleline.explain.Formula;
import org.boleline.explain.Symbol;
import org.boleline.internal.notation.Equation;
import org.boleline.internal.notation.Term;
import org.boleline.units.QuantityText;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The text of every equation against its code: they cannot part. */
class EquationsTest {
  private static final int POINTS = 1000;

  /** The least share of points at which both the code and the text must have a value. */
  private static final double USED = 0.2;

  /** Whole numbers, with the least and the greatest drawn. */
  private static final Map<String, int[]> COUNTS =
      Map.of(
          "TAC-1 n", new int[] {1, 12},
          "TAC-1 s", new int[] {0, 12},
          "STU-1 n", new int[] {1, 8},
          "STU-1 s", new int[] {0, 7},
          "RNG-3 n", new int[] {30, 60},
          "RNG-3 r", new int[] {0, 10},
          "RNG-3 s", new int[] {11, 30},
          "RNG-7 n", new int[] {30, 60},
          "RNG-7 k", new int[] {1, 30});

  /** Powers of 1 / (1 - n): where n is nearly 1, rounding grows by that. */
  private static final Map<String, Double> MOST = Map.of("FRI-9 n", 0.99, "FRI-10 n", 0.99);

  /** The logarithm of 1 and a small square: the code has it without the digits that the 1 takes. */
  private static final Map<String, Double> LEAST = Map.of("RNG-1 v", 0.05);

  static List<Formula> formulas() {
    return Code.formulas();
  }

  @ParameterizedTest
  @MethodSource("formulas")
  void the_text_reads_as_an_equation_and_prints_the_same(Formula formula) {
    Equation equation = Equation.parse(formula.text());

    assertThat(equation.text()).isEqualTo(formula.text());
    assertThat(equation.result()).isEqualTo(formula.result().name());
  }

  @ParameterizedTest
  @MethodSource("formulas")
  void the_text_has_the_symbols_of_the_formula_and_no_others(Formula formula) {
    Equation equation = Equation.parse(formula.text());
    TreeSet<String> names = new TreeSet<>();
    equation.rewritten(
        term -> {
          if (term instanceof Term.Name name) {
            names.add(name.name());
          }
          if (term instanceof Term.Sum sum) {
            names.remove(sum.index());
          }
          return term;
        });
    names.remove(Term.Name.PI);
    names.remove(equation.result());
    names.removeAll(equation.definitions().keySet());

    assertThat(names)
        .containsExactlyInAnyOrderElementsOf(formula.inputs().stream().map(Symbol::name).toList());
  }

  /** At random points; for an equation that is not solved, both its sides agree at the result. */
  @ParameterizedTest
  @MethodSource("formulas")
  void the_text_gives_the_number_of_the_code(Formula formula) {
    Equation equation = Equation.parse(formula.text());
    Random random = new Random(formula.id().hashCode());
    List<String> apart = new ArrayList<>();
    int used = 0;
    for (int i = 0; i < POINTS; i++) {
      double[] inputs =
          formula.inputs().stream().mapToDouble(s -> within(formula, s, random)).toArray();
      Map<String, Double> numbers = new HashMap<>();
      for (int k = 0; k < inputs.length; k++) {
        numbers.put(formula.inputs().get(k).name(), inputs[k]);
      }
      double found;
      try {
        found = formula.value(inputs);
      } catch (IllegalArgumentException noFiniteResult) {
        continue;
      }
      double off;
      if (equation.solved()) {
        double read = equation.value(numbers);
        double scale = scale(formula, inputs, found);
        off = read == found ? 0 : Math.abs(read - found) / scale;
      } else {
        numbers.put(equation.result(), found);
        // by how much the result would have to move for both sides to agree
        double difference = equation.difference(numbers);
        numbers.put(equation.result(), found * (1 + Tolerances.ROOT_STEP));
        double slope = (equation.difference(numbers) - difference) / Tolerances.ROOT_STEP;
        off = found == 0 ? Double.NaN : Math.abs(difference / slope);
      }
      if (Double.isNaN(off)) {
        continue;
      }
      used++;
      if (off > Tolerances.TEXT_AGAINST_CODE) {
        apart.add(numbers + ": code " + found + ", off by " + off);
      }
    }
    assertThat(apart).isEmpty();
    assertThat((double) used / POINTS).isGreaterThanOrEqualTo(USED);
  }

  /** What a worksheet shows: the numbers in place, read again, give what the symbols give. */
  @ParameterizedTest
  @MethodSource("formulas")
  void the_text_with_numbers_put_in_reads_back(Formula formula) {
    Equation equation = Equation.parse(formula.text());
    Random random = new Random(formula.id().hashCode());
    for (int i = 0; i < POINTS / 10; i++) {
      Map<String, Double> numbers = new HashMap<>();
      Map<String, String> texts = new HashMap<>();
      for (Symbol symbol : formula.inputs()) {
        double number = within(formula, symbol, random);
        numbers.put(symbol.name(), number);
        texts.put(symbol.name(), QuantityText.number(number));
      }
      if (!equation.solved()) {
        numbers.put(equation.result(), 0.5);
        texts.put(equation.result(), "0.5");
      }
      Equation put = equation.with(texts);
      Equation read =
          Equation.parse(
              equation.solved()
                  ? put.text()
                  : put.text().replaceFirst("^" + equation.result() + " ", "unknown "));

      assertThat(put.latex() + put.mathml()).doesNotContain("NaN");
      Map<String, Double> none = Map.of();
      Double shown = equation.solved() ? read.value(none) : read.difference(none);
      Double found = equation.solved() ? equation.value(numbers) : equation.difference(numbers);
      assertThat(shown).isEqualTo(found);
    }
  }

  /**
   * The result or the greatest input of its unit: a difference loses digits. Of angles at least 1.
   */
  private static double scale(Formula formula, double[] inputs, double found) {
    String unit = formula.result().unit();
    double scale = Math.max(unit.equals("rad") ? 1 : 0, Math.abs(found));
    for (int k = 0; k < inputs.length; k++) {
      if (formula.inputs().get(k).unit().equals(unit)) {
        scale = Math.max(scale, Math.abs(inputs[k]));
      }
    }
    return scale;
  }

  private static double within(Formula formula, Symbol symbol, Random random) {
    String name = formula.id() + " " + symbol.name();
    double least = LEAST.getOrDefault(name, symbol.least());
    double most = MOST.getOrDefault(name, symbol.most());
    int[] counts = COUNTS.get(name);
    if (counts != null) {
      return counts[0] + random.nextInt(counts[1] - counts[0] + 1);
    }
    if (Double.isInfinite(least)) {
      return 10 * random.nextDouble() - 5;
    }
    return Double.isInfinite(most)
        ? least + Math.pow(10, 3 * random.nextDouble() - 1)
        : least + (most - least) * random.nextDouble();
  }
}
