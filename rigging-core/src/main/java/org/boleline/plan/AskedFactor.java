package org.boleline.plan;

import static java.util.Objects.requireNonNull;

import org.boleline.explain.Refusals;
import org.jspecify.annotations.Nullable;

/**
 * A factor between capacity and demand that somebody asks for.
 *
 * <p>The library asks for none itself. Immutable and thread-safe.
 */
public final class AskedFactor {
  private final String part;
  private final double factor;
  private final String askedBy;

  private AskedFactor(String part, double factor, String askedBy) {
    this.part = part;
    this.factor = factor;
    this.askedBy = askedBy;
  }

  /**
   * Obtains an asked-for factor.
   *
   * @param part what it is asked for: the name of a part of the limits, or a word for all parts of
   *     a kind, such as "rope"; one line of at most 80 characters, not null
   * @param factor capacity over demand, from 0.1 to 1000
   * @param askedBy who asks for it: a code, a maker, a person; not blank, one line of at most 80
   *     characters, not null
   * @return the asked-for factor
   * @throws org.boleline.explain.PlanRefusedException if a value is outside its range
   */
  public static AskedFactor of(String part, double factor, String askedBy) {
    requireNonNull(part, "part");
    requireNonNull(askedBy, "askedBy");
    return Refusals.check(refusals -> stated(part, factor, askedBy, refusals));
  }

  /**
   * Obtains an asked-for factor as stated, for readers of files.
   *
   * @param part what it is asked for, or null if that could not be had
   * @param factor capacity over demand, or null if that could not be had
   * @param askedBy who asks for it, or null if that could not be had
   * @param refusals notes what is wrong, at the factor
   * @return the asked-for factor
   */
  public static AskedFactor stated(
      @Nullable String part, @Nullable Double factor, @Nullable String askedBy, Refusals refusals) {
    return new AskedFactor(
        refusals.at("for").name(part),
        refusals.at("factor").number(factor, 0.1, 1000),
        refusals.at("askedBy").name(askedBy));
  }

  /**
   * Returns what the factor is asked for; in a plan file the member {@code for}.
   *
   * @return the words
   */
  public String part() {
    return part;
  }

  /**
   * Returns capacity over demand.
   *
   * @return the factor, above zero
   */
  public double factor() {
    return factor;
  }

  /**
   * Returns who asks for it.
   *
   * @return the words, not blank
   */
  public String askedBy() {
    return askedBy;
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof AskedFactor f
        && part.equals(f.part)
        && Double.compare(factor, f.factor) == 0
        && askedBy.equals(f.askedBy);
  }

  @Override
  public int hashCode() {
    return 31 * (31 * part.hashCode() + Double.hashCode(factor)) + askedBy.hashCode();
  }

  @Override
  public String toString() {
    return part + ": " + factor + " asked by " + askedBy;
  }
}
