package org.boleline.working;

import static java.util.Objects.requireNonNull;

import javax.measure.Quantity;
import org.boleline.explain.Step;
import org.boleline.units.Kind;
import org.boleline.units.QuantityText;
import org.boleline.units.Si;

/**
 * A rule of thumb beside the model, for one place of one plan.
 *
 * <p>All rules foresee a demand: a force, a tension, a moment. A rule on the low side foresees less
 * than the model finds.
 *
 * <p>Immutable and thread-safe.
 */
public final class RuleCompared {
  private static final int FIGURES = 3;

  /** On which side of the model a rule lies. */
  public enum Side {
    /** The rule foresees more than the model. */
    HIGH,
    /** The rule foresees less than the model. */
    LOW,
    /** Both are the same number, to a billionth. */
    SAME
  }

  private static final double ALIKE = 1e-9;

  private final RuleOfThumb rule;
  private final String where;
  private final Step step;
  private final double model;

  RuleCompared(RuleOfThumb rule, String where, Step step, double model) {
    this.rule = requireNonNull(rule);
    this.where = requireNonNull(where);
    this.step = requireNonNull(step);
    this.model = model;
  }

  /**
   * Returns the rule.
   *
   * @return the rule
   */
  public RuleOfThumb rule() {
    return rule;
  }

  /**
   * Returns the place in words.
   *
   * @return for instance {@code contact 1 of arrangement A}
   */
  public String where() {
    return where;
  }

  /**
   * Returns the use of the rule.
   *
   * @return the step; its result is the rule's number
   */
  public Step step() {
    return step;
  }

  /**
   * Returns the number of the model.
   *
   * @param <Q> the quantity
   * @param kind its kind: force or moment
   * @return the number
   * @throws IllegalArgumentException if the number is of another kind
   */
  public <Q extends Quantity<Q>> Quantity<Q> model(Kind<Q> kind) {
    if (!kind.ucum().equals(step.formula().result().unit())) {
      throw new IllegalArgumentException(
          "kind: wants one in " + step.formula().result().unit() + ", got " + kind);
    }
    return Si.of(model, kind);
  }

  /**
   * Returns the rule's number over that of the model.
   *
   * @return the ratio; infinite numbers cannot come up: where the model finds nothing, 1 if the
   *     rule does so too, else the greatest double
   */
  public double ratioToModel() {
    double found = step.result();
    return model == 0
        ? (found == 0 ? 1 : Double.MAX_VALUE)
        : Math.min(Double.MAX_VALUE, found / model);
  }

  /**
   * Returns on which side of the model the rule lies here.
   *
   * @return the side
   */
  public Side side() {
    double off = step.result() - model;
    return Math.abs(off) <= ALIKE * Math.abs(model) ? Side.SAME : off > 0 ? Side.HIGH : Side.LOW;
  }

  /**
   * Returns the comparison as a sentence.
   *
   * @return for instance {@code The rule gives 2000 N, the model 1820 N: here the rule is on the
   *     high side, at 1.1 times the model.}
   */
  public String sentence() {
    String unit = step.formula().result().unit();
    String side =
        switch (side()) {
          case HIGH -> "here the rule is on the high side, at " + times() + " times the model.";
          case LOW ->
              "here the rule is on the LOW side, at "
                  + times()
                  + " times the model: it hides load that the model finds.";
          case SAME -> "here both agree.";
        };
    return "The rule gives "
        + Shown.with(QuantityText.number(step.result(), FIGURES), unit)
        + ", the model "
        + Shown.with(QuantityText.number(model, FIGURES), unit)
        + ": "
        + side;
  }

  private String times() {
    return QuantityText.number(ratioToModel(), FIGURES);
  }

  @Override
  public String toString() {
    return rule.words() + ", " + where + ": " + sentence();
  }
}
