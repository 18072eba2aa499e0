package org.boleline.explain;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.boleline.units.QuantityText;

/**
 * One use of a formula: the numbers put in and the result that came out.
 *
 * <p>Immutable and thread-safe.
 */
public final class Step {
  private final Formula formula;
  private final double[] inputs;
  private final double result;

  Step(Formula formula, double[] inputs, double result) {
    this.formula = formula;
    this.inputs = inputs;
    this.result = result;
  }

  /**
   * Returns the formula used.
   *
   * @return the formula
   */
  public Formula formula() {
    return formula;
  }

  /**
   * Returns the number put in for an input symbol.
   *
   * @param index place of the symbol in {@link Formula#inputs()}
   * @return the number, in the symbol's unit
   */
  public double input(int index) {
    return inputs[index];
  }

  /**
   * Returns the result, unrounded.
   *
   * @return the number, in the unit of the result symbol
   */
  public double result() {
    return result;
  }

  /**
   * Returns a caution for each number that lies outside the range of its symbol.
   *
   * @param place where in the plan the calculation stands
   * @return the cautions; empty if all lie inside
   */
  public List<Caution> cautions(String place) {
    List<Caution> found = new ArrayList<>();
    for (int i = 0; i < inputs.length; i++) {
      Symbol symbol = formula.inputs().get(i);
      if (!symbol.isWithinRange(inputs[i])) {
        found.add(
            new Caution(
                CautionCode.OUTSIDE_RANGE,
                place,
                Map.of(
                    "formula", formula.id(),
                    "symbol", symbol.name(),
                    "value", QuantityText.number(inputs[i]),
                    "least", bound(symbol.least()),
                    "most", bound(symbol.most()),
                    "unit", symbol.unit())));
      }
    }
    return List.copyOf(found);
  }

  private static String bound(double value) {
    return Double.isInfinite(value) ? "none" : QuantityText.number(value);
  }

  /**
   * Returns the step as text: the formula, the numbers with meaning and unit, the result.
   *
   * @return several lines, without a line break at the end
   */
  @Override
  public String toString() {
    StringBuilder text = new StringBuilder(formula.toString());
    for (int i = 0; i < inputs.length; i++) {
      text.append(line(formula.inputs().get(i), inputs[i]));
    }
    return text.append(line(formula.result(), result)).toString();
  }

  private static String line(Symbol symbol, double value) {
    return String.format(
        Locale.ROOT,
        "\n    %-8s = %-12s %-6s %s",
        symbol.name(),
        QuantityText.number(value),
        symbol.unit(),
        symbol.meaning());
  }
}
