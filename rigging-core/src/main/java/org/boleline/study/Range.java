package org.boleline.study;

import static java.util.Objects.requireNonNull;

import java.util.HashSet;
import java.util.List;
import java.util.Objects;
import java.util.stream.Collectors;
import org.boleline.explain.Source;

/**
 * One or more inputs of a plan that may be off, by one common draw, and who says how far.
 *
 * <p>Several inputs of one range always have the same value, as the friction of rings of one kind.
 * What one input feeds goes together anyway: the factor on a stem's diameters moves its weight and
 * its stiffness.
 *
 * <p>Immutable and thread-safe; equality is exact.
 */
public final class Range {
  private final List<Input> inputs;
  private final Spread spread;
  private final Source source;

  private Range(List<Input> inputs, Spread spread, Source source) {
    this.inputs = List.copyOf(inputs);
    this.spread = requireNonNull(spread, "spread");
    this.source = requireNonNull(source, "source");
  }

  /**
   * Obtains a range of one input.
   *
   * @param input the input, not null
   * @param spread how far it may be off, of the input's kind, not null
   * @param source who says so, not null
   * @return the range
   * @throws IllegalArgumentException if the spread is of another kind
   */
  public static Range of(Input input, Spread spread, Source source) {
    return of(List.of(input), spread, source);
  }

  /**
   * Obtains a range of inputs that have one value.
   *
   * @param inputs the inputs, at least one, none twice, all of the spread's kind, not null
   * @param spread how far they may be off together, not null
   * @param source who says so, not null
   * @return the range
   * @throws IllegalArgumentException if there is no input, one twice, or one of another kind
   */
  public static Range of(List<Input> inputs, Spread spread, Source source) {
    if (inputs.isEmpty() || new HashSet<>(inputs).size() < inputs.size()) {
      throw new IllegalArgumentException(
          "inputs: wants one or more, none twice, got " + inputs.size());
    }
    for (Input input : inputs) {
      spread.like().requireKind(input.kindOrNull());
    }
    return new Range(inputs, spread, source);
  }

  /**
   * Returns the inputs that have this range.
   *
   * @return the inputs, in the order they were given
   */
  public List<Input> inputs() {
    return inputs;
  }

  /**
   * Returns how far the inputs may be off.
   *
   * @return the spread
   */
  public Spread spread() {
    return spread;
  }

  /**
   * Returns who says so.
   *
   * @return the source
   */
  public Source source() {
    return source;
  }

  /**
   * Returns the name that people read.
   *
   * @return the names of the inputs
   */
  public String name() {
    return inputs.stream().map(Input::name).collect(Collectors.joining(", "));
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof Range r
        && inputs.equals(r.inputs)
        && spread.equals(r.spread)
        && source.equals(r.source);
  }

  @Override
  public int hashCode() {
    return Objects.hash(inputs, spread, source);
  }

  @Override
  public String toString() {
    return name() + ": " + spread;
  }
}
