package org.boleline.rope;

import java.util.List;
import javax.measure.Quantity;
import javax.measure.quantity.Force;
import org.boleline.explain.Step;
import org.boleline.units.Kind;
import org.boleline.units.Si;

/**
 * A tackle of parallel parts of line over sheaves of one efficiency, raising a load.
 *
 * <p>One sheave for each part, each taking its share of what comes to it: losses compound.
 * Immutable and thread-safe; equality is exact, on what was stated.
 */
public final class Tackle {
  private final Step ratio;

  private Tackle(Step ratio) {
    this.ratio = ratio;
  }

  /**
   * Obtains a tackle.
   *
   * @equation m = e + e^2 + ... + e^n
   * @validity raising; every part of line parallel, a half turn at every sheave
   * @source Wire Rope Users Manual, 4th ed., p. 88; Pipeline Rules of Thumb Handbook, p. 6: both in
   *     closed form, (K^n - 1) / (K^n (K - 1)) and e (1 - e^n) / (1 - e), with K = 1 / e
   * @accuracy rounding only
   * @param partsCount parts of line at the load, 1 to 100
   * @param sheave each of its sheaves, not null
   * @return the tackle
   * @throws IllegalArgumentException if the count is outside its range
   */
  public static Tackle of(int partsCount, Sheave sheave) {
    if (partsCount < 1 || partsCount > 100) {
      throw new IllegalArgumentException("parts: wants 1 to 100, got " + partsCount);
    }
    return new Tackle(FrictionFormulas.TACKLE_RATIO.step(sheave.efficiency(), partsCount, 0));
  }

  /**
   * Returns the tackle with lead sheaves, which turn the line between tackle and puller.
   *
   * @equation m = e^s * (e + e^2 + ... + e^n)
   * @validity as {@link #of}; a half turn at every lead sheave, so too low for smaller turns
   * @source Wire Rope Users Manual, 4th ed., p. 88
   * @accuracy rounding only
   * @param leadCount lead sheaves, 0 to 100
   * @return the tackle
   * @throws IllegalArgumentException if the count is outside its range
   */
  public Tackle withLeadSheaves(int leadCount) {
    if (leadCount < 0 || leadCount > 100) {
      throw new IllegalArgumentException("lead sheaves: wants 0 to 100, got " + leadCount);
    }
    return new Tackle(
        FrictionFormulas.TACKLE_RATIO.step(ratio.input(0), ratio.input(1), leadCount));
  }

  /**
   * Returns load over line pull.
   *
   * @return the ratio, above zero, at most the number of parts
   */
  public double loadRatio() {
    return ratio.result();
  }

  /**
   * Returns the line pull that raises a load, with its explanation.
   *
   * @equation P = W / m
   * @validity as {@link #of}
   * @source definition of the ratio m
   * @accuracy rounding only
   * @param load the load, zero or more, not null
   * @return the step; its result is the pull in newtons
   * @throws IllegalArgumentException if the load is negative, or the pull exceeds the largest
   *     double
   */
  public Step linePullStep(Quantity<Force> load) {
    return FrictionFormulas.LINE_PULL.step(
        Si.valueZeroOrMore(load, Kind.FORCE, "load"), ratio.result());
  }

  /**
   * Returns the line pull that raises a load.
   *
   * @param load the load, zero or more, not null
   * @return the pull in newtons
   * @throws IllegalArgumentException if the load is negative, or the pull exceeds the largest
   *     double
   */
  public Quantity<Force> linePull(Quantity<Force> load) {
    return Si.of(linePullStep(load).result(), Kind.FORCE);
  }

  /**
   * Returns the line pull by the rule of thumb that adds a tenth of the load for each sheave.
   *
   * @equation P = W * (1 + 0.1 * s) / n
   * @validity rule of thumb: does not compound
   * @source US Navy, Builder 2&amp;3 training manual, tackle section
   * @accuracy a rule of thumb
   * @param load the load, zero or more, not null
   * @param sheaveCount sheaves in all, zero or more
   * @param partsCount parts of line at the load, 1 or more
   * @return the pull in newtons
   * @throws IllegalArgumentException if an argument is outside its range
   */
  public static Quantity<Force> linePullByTenPercentRule(
      Quantity<Force> load, int sheaveCount, int partsCount) {
    if (sheaveCount < 0) {
      throw new IllegalArgumentException("sheaves: wants zero or more, got " + sheaveCount);
    }
    if (partsCount < 1) {
      throw new IllegalArgumentException("parts: wants 1 or more, got " + partsCount);
    }
    double w = Si.valueZeroOrMore(load, Kind.FORCE, "load");
    return Si.of(FrictionFormulas.TEN_PERCENT_RULE.value(w, sheaveCount, partsCount), Kind.FORCE);
  }

  /**
   * Returns the step that gave the ratio.
   *
   * @return one step
   */
  public List<Step> steps() {
    return List.of(ratio);
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof Tackle t
        && Double.compare(ratio.input(0), t.ratio.input(0)) == 0
        && Double.compare(ratio.input(1), t.ratio.input(1)) == 0
        && Double.compare(ratio.input(2), t.ratio.input(2)) == 0;
  }

  @Override
  public int hashCode() {
    return 31 * (31 * Double.hashCode(ratio.input(0)) + Double.hashCode(ratio.input(1)))
        + Double.hashCode(ratio.input(2));
  }

  @Override
  public String toString() {
    return ratio.toString();
  }
}
