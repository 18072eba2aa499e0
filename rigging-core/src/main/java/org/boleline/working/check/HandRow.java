package org.boleline.working.check;

import java.util.OptionalDouble;
import org.boleline.explain.Formula;
import org.boleline.explain.Step;
import org.boleline.units.QuantityText;

/**
 * A person's number beside ours.
 *
 * <p>Immutable and thread-safe.
 */
public final class HandRow {
  /** How a number stands to ours. */
  public enum Outcome {
    /** It agrees with ours. */
    AGREES("agrees"),
    /** It is the first that does not. */
    PARTS("parts here"),
    /** It differs, but follows from the person's numbers before. */
    FOLLOWS("follows from the numbers before"),
    /** It differs from ours and from what would follow. */
    PARTS_AGAIN("parts again");

    private final String words;

    Outcome(String words) {
      this.words = words;
    }

    /**
     * Returns the outcome in words.
     *
     * @return the words
     */
    public String words() {
      return words;
    }
  }

  private static final int SHOWN_FIGURES = 6;

  private final HandStep stated;
  private final Step step;
  private final Written written;
  private final double carried;
  private final Outcome outcome;

  HandRow(HandStep stated, Step step, Written written, double carried, Outcome outcome) {
    this.stated = stated;
    this.step = step;
    this.written = written;
    this.carried = carried;
    this.outcome = outcome;
  }

  /**
   * Returns what the person wrote.
   *
   * @return the person's step
   */
  public HandStep stated() {
    return stated;
  }

  /**
   * Returns our step.
   *
   * @return the step of the worksheet
   */
  public Step step() {
    return step;
  }

  /**
   * Returns our number in the unit the person wrote.
   *
   * @return the number with its unit, to six figures
   */
  public String ours() {
    return written.same(step.result(), SHOWN_FIGURES);
  }

  /**
   * Returns how the number stands to ours.
   *
   * @return the outcome
   */
  public Outcome outcome() {
    return outcome;
  }

  /**
   * Returns what the rounding of the steps before makes of this number.
   *
   * @return our formulas with the person's numbers before, less our number, over ours; empty if
   *     ours is zero or the person's numbers before give none
   * @equation {@link CheckFormulas#DRIFT}
   */
  public OptionalDouble driftRatio() {
    return ratio(CheckFormulas.DRIFT, carried, step.result());
  }

  /**
   * Returns the difference that this step adds: by its own rounding, or by a slip.
   *
   * @return the person's number less what follows from the numbers before, over ours; empty as for
   *     {@link #driftRatio}
   * @equation {@link CheckFormulas#OWN_PART}
   */
  public OptionalDouble ownPartRatio() {
    return ratio(CheckFormulas.OWN_PART, written.value(), carried, step.result());
  }

  private OptionalDouble ratio(Formula formula, double... numbers) {
    boolean fit = step.result() != 0 && Double.isFinite(carried);
    return fit ? OptionalDouble.of(formula.value(numbers)) : OptionalDouble.empty();
  }

  /** The row in words, without what comes of it. */
  String words() {
    Formula formula = step.formula();
    return formula.id()
        + ", "
        + formula.result().name()
        + ": written "
        + stated.value().strip()
        + (stated.figuresCount() > 0 ? " (" + figures() + ")" : "")
        + ", ours "
        + ours();
  }

  private String figures() {
    return stated.figuresCount() == 1 ? "1 figure" : stated.figuresCount() + " figures";
  }

  /** A share as percent, to two figures. */
  static String percent(double share) {
    return QuantityText.number(100 * share, 2) + " %";
  }

  @Override
  public String toString() {
    return words() + ": " + outcome.words();
  }
}
