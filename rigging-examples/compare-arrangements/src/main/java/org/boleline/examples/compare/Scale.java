package org.boleline.examples.compare;

import org.boleline.units.QuantityText;

/**
 * A unit to show SI numbers in.
 *
 * @param symbol its symbol in plan files
 * @param factor how many SI units it is
 */
record Scale(String symbol, double factor) {
  /** Keeps a number and its unit on one line. */
  static final String HARD_BLANK = "\u00a0";

  /** Of a pure number. */
  static final Scale PURE = new Scale("", 1);

  static Scale of(String symbol) {
    return new Scale(symbol, QuantityText.factor(symbol).doubleValue());
  }

  /** The symbol with a raised dot for a product. */
  String shown() {
    return symbol.replace('.', '·');
  }

  /** A number with a fixed count of decimals, without the unit. */
  String bare(double si, int decimals) {
    return Figures.fixed(si / factor, decimals);
  }

  /** Decimals that give three figures to the greatest of some numbers. */
  int decimals(double greatestSi) {
    return Figures.decimals(greatestSi / factor);
  }

  /** A number by itself, to three figures, with the unit. */
  String one(double si) {
    String number = bare(si, decimals(si));
    return symbol.isEmpty() ? number : number + HARD_BLANK + shown();
  }
}
