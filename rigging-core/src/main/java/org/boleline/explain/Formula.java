package org.boleline.explain;

import static java.util.Objects.requireNonNull;

import java.util.List;

/**
 * An equation: text, symbols with units and ranges, source and code in one place.
 *
 * <p>The kernels of the library call the very function a formula wraps, so the number a person
 * reads and the explanation beside it come from the same code. Immutable and thread-safe.
 */
public final class Formula {
  /** The code of a formula. */
  @FunctionalInterface
  public interface Law {
    /**
     * Returns the result for numbers in the units of the symbols.
     *
     * @param inputs one number for each input symbol, in their order
     * @return the result, in the unit of the result symbol
     */
    double apply(double... inputs);
  }

  private final String id;
  private final String text;
  private final Symbol result;
  private final List<Symbol> inputs;
  private final String validity;
  private final Source source;
  private final Law law;

  private Formula(
      String id,
      String text,
      Symbol result,
      List<Symbol> inputs,
      String validity,
      Source source,
      Law law) {
    this.id = requireNonNull(id);
    this.text = requireNonNull(text);
    this.result = requireNonNull(result);
    this.inputs = List.copyOf(inputs);
    this.validity = requireNonNull(validity);
    this.source = requireNonNull(source);
    this.law = requireNonNull(law);
  }

  /**
   * Obtains a formula.
   *
   * @param id its stable id, such as {@code FRI-1}
   * @param text the equation in plain text, with the names of the symbols
   * @param result the symbol on the left
   * @param inputs the symbols on the right, in the order the law takes them
   * @param validity what it holds for and what it leaves out, in words
   * @param source where it comes from
   * @param law its code
   * @return the formula
   */
  public static Formula of(
      String id,
      String text,
      Symbol result,
      List<Symbol> inputs,
      String validity,
      Source source,
      Law law) {
    return new Formula(id, text, result, inputs, validity, source, law);
  }

  /**
   * Returns the result for given inputs.
   *
   * @param values one finite number for each input symbol, in their order and units
   * @return the result, finite, in the unit of the result symbol
   * @throws IllegalArgumentException if the count is wrong, an input is not finite, or the result
   *     has no finite value for these inputs
   */
  public double value(double... values) {
    if (values.length != inputs.size()) {
      throw new IllegalArgumentException(
          id + ": wants " + inputs.size() + " inputs, got " + values.length);
    }
    for (int i = 0; i < values.length; i++) {
      if (!Double.isFinite(values[i])) {
        throw new IllegalArgumentException(
            id + ": " + inputs.get(i).name() + ": wants a finite number, got " + values[i]);
      }
    }
    double found = law.apply(values);
    if (!Double.isFinite(found)) {
      throw new IllegalArgumentException(id + ": no finite result for these inputs");
    }
    return found;
  }

  /**
   * Returns the calculation as a step that explains itself; its result is {@link #value}, bit for
   * bit.
   *
   * @param values as for {@link #value}
   * @return the step
   * @throws IllegalArgumentException as {@link #value}
   */
  public Step step(double... values) {
    return new Step(this, values.clone(), value(values));
  }

  /**
   * Returns the stable id.
   *
   * @return the id
   */
  public String id() {
    return id;
  }

  /**
   * Returns the equation in plain text.
   *
   * @return the text
   */
  public String text() {
    return text;
  }

  /**
   * Returns the symbol of the result.
   *
   * @return the symbol
   */
  public Symbol result() {
    return result;
  }

  /**
   * Returns the symbols of the inputs.
   *
   * @return the symbols, in order
   */
  public List<Symbol> inputs() {
    return inputs;
  }

  /**
   * Returns what the formula holds for and leaves out.
   *
   * @return the words
   */
  public String validity() {
    return validity;
  }

  /**
   * Returns where the formula comes from.
   *
   * @return the source
   */
  public Source source() {
    return source;
  }

  @Override
  public String toString() {
    return "[" + id + "] " + text + "   (" + source.id() + ")";
  }
}
