package org.boleline.internal.notation;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.UnaryOperator;

/**
 * An equation: a result, the two sides, and names defined on the way.
 *
 * @param result the symbol that the equation gives
 * @param solved whether the left side is the result itself; if not, the result is what makes both
 *     sides equal
 * @param left the left side
 * @param right the right side
 * @param definitions names defined by terms of the symbols, in order
 */
public record Equation(
    String result, boolean solved, Term left, Term right, Map<String, Term> definitions) {
  /** Copies the map, in order. */
  public Equation {
    definitions = Collections.unmodifiableMap(new LinkedHashMap<>(definitions));
  }

  /**
   * Reads an equation.
   *
   * @param text its text, as the grammar of this package has it
   * @return the equation
   * @throws IllegalArgumentException if the text does not have the form; the message tells where
   */
  public static Equation parse(String text) {
    return new Reading(text).equation();
  }

  /**
   * Returns the value of the result, for an equation that is solved for it.
   *
   * @param numbers the number of each symbol on the right
   * @return the value; NaN where a symbol has no number
   * @throws IllegalStateException if the equation is not solved for its result
   */
  public double value(Map<String, Double> numbers) {
    if (!solved) {
      throw new IllegalStateException(result + ": the equation is not solved for it");
    }
    return right.value(withDefinitions(numbers));
  }

  /**
   * Returns the left side less the right side.
   *
   * @param numbers the number of each symbol, the result too
   * @return the difference
   */
  public double difference(Map<String, Double> numbers) {
    Map<String, Double> all = withDefinitions(numbers);
    return left.value(all) - right.value(all);
  }

  private Map<String, Double> withDefinitions(Map<String, Double> numbers) {
    Map<String, Double> all = new LinkedHashMap<>(numbers);
    definitions.forEach((name, term) -> all.put(name, term.value(all)));
    return all;
  }

  /**
   * Returns a copy in which every part has been offered to a change, the innermost first. The
   * result of a solved equation stays.
   *
   * @param change gives the new part; the same one to leave it
   * @return the copy
   */
  public Equation rewritten(UnaryOperator<Term> change) {
    Map<String, Term> changed = new LinkedHashMap<>();
    definitions.forEach((name, term) -> changed.put(name, term.rewritten(change)));
    return new Equation(
        result, solved, solved ? left : left.rewritten(change), right.rewritten(change), changed);
  }

  /**
   * Returns a copy with numbers in place of symbols.
   *
   * @param numbers the decimal text of each number
   * @return the copy
   */
  public Equation with(Map<String, String> numbers) {
    return rewritten(
        term -> {
          if (term instanceof Term.Name name) {
            String number = numbers.get(name.name());
            return number == null ? term : new Term.Num(number);
          }
          return term;
        });
  }

  /**
   * Returns the equation as plain text, which {@link #parse} reads back.
   *
   * @return the text
   */
  public String text() {
    return new PlainNotation().equation(this);
  }

  /**
   * Returns the equation in LaTeX, for math mode.
   *
   * @return the text, without dollar signs
   */
  public String latex() {
    return new LatexNotation().equation(this);
  }

  /**
   * Returns the equation in presentation MathML, with its plain text as alternative.
   *
   * @return one {@code math} element
   */
  public String mathml() {
    return MathmlNotation.math(text(), new MathmlNotation().equation(this));
  }

  /**
   * Returns a symbol's name in LaTeX, for math mode.
   *
   * @param name the name
   * @return the text, without dollar signs
   */
  public static String latexName(String name) {
    return new LatexNotation().name(name);
  }

  /**
   * Returns a symbol's name in presentation MathML.
   *
   * @param name the name
   * @return one {@code math} element
   */
  public static String mathmlName(String name) {
    return MathmlNotation.math(name, new MathmlNotation().name(name));
  }
}
