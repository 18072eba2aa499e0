package org.boleline.explain;

/**
 * One symbol of a formula.
 *
 * @param name the symbol as written in the formula's text
 * @param meaning what it stands for
 * @param unit UCUM code of the unit its number is in; {@code 1} for a pure number
 * @param least least value within the formula's range of validity
 * @param most greatest value within the formula's range of validity
 */
public record Symbol(String name, String meaning, String unit, double least, double most) {
  /**
   * Makes a symbol.
   *
   * @param name the symbol as written in the formula's text
   * @param meaning what it stands for
   * @param unit UCUM code of the unit its number is in; {@code 1} for a pure number
   * @param least least value within the formula's range of validity
   * @param most greatest value within the formula's range of validity
   * @throws IllegalArgumentException if the range is empty or a bound is not a number
   */
  public Symbol {
    if (!(least <= most)) {
      throw new IllegalArgumentException(name + ": wants least <= most");
    }
  }

  /**
   * Tells whether a value lies within the range of validity.
   *
   * @param value the value, in {@link #unit()}
   * @return true if it does; false outside and for NaN
   */
  public boolean isWithinRange(double value) {
    return value >= least && value <= most;
  }
}
