package org.boleline.working.check;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.boleline.explain.Symbol;
import org.boleline.units.QuantityText;

/**
 * A number as a person wrote it, in the unit of a symbol.
 *
 * @param value the number, in the symbol's unit
 * @param half half a unit of its last figure, in the symbol's unit
 * @param unit the unit written, or {@code 1}
 * @param factor size of the unit written in the symbol's unit
 */
record Written(double value, double half, String unit, double factor) {
  private static final String NUMBER = "([-+]?[0-9]+(?:\\.[0-9]+)?(?:[eE][-+]?[0-9]{1,3})?)";
  private static final Pattern FORM = Pattern.compile(NUMBER + "(?: (\\S+))?");

  /** Longer texts are no numbers that a person wrote. */
  private static final int MOST_LENGTH = 60;

  /** Zeros at the end of a whole number may be figures or fill; beyond so many they are fill. */
  private static final int SURE_FIGURES = 3;

  /** What a place wants that takes a number of a symbol. */
  static String wants(Symbol symbol) {
    if (symbol.unit().equals("1")) {
      return "a number like \"1.25\" without a unit";
    }
    List<String> units = QuantityText.symbolsOf(symbol.unit());
    return "a number with a unit like \"12.5 "
        + units.get(0)
        + "\" ("
        + String.join(", ", units)
        + ")";
  }

  /** What was written, for a refusal: in quotes, and not at any length. */
  static String got(String text) {
    return "\"" + brief(text) + "\"";
  }

  static String brief(String text) {
    return text.length() <= MOST_LENGTH ? text : text.substring(0, MOST_LENGTH) + "...";
  }

  /**
   * Reads a number, or nothing if the text has another form or another kind of unit.
   *
   * @param figures how many figures count; 0 to see by the text
   */
  static Optional<Written> read(String text, Symbol symbol, int figures) {
    Matcher form = FORM.matcher(text.strip());
    if (text.length() > MOST_LENGTH || !form.matches()) {
      return Optional.empty();
    }
    String unit = form.group(2) == null ? "1" : form.group(2);
    if (!QuantityText.symbolsOf(symbol.unit()).contains(unit)
        || (unit.equals("1") && form.group(2) != null)) {
      return Optional.empty();
    }
    BigDecimal factor = unit.equals(symbol.unit()) ? BigDecimal.ONE : QuantityText.factor(unit);
    BigDecimal number = new BigDecimal(form.group(1));
    double value = number.multiply(factor).doubleValue();
    if (!Double.isFinite(value)) {
      return Optional.empty();
    }
    int count = figures > 0 ? figures : figuresOf(form.group(1), number);
    double half = number.signum() == 0 ? lastPlace(number) : half(number, count);
    return Optional.of(new Written(value, half * factor.doubleValue(), unit, factor.doubleValue()));
  }

  private static int figuresOf(String text, BigDecimal number) {
    boolean whole = !text.contains(".");
    int all = number.precision();
    int sure = number.signum() == 0 ? 1 : number.stripTrailingZeros().precision();
    return whole ? Math.max(sure, Math.min(all, SURE_FIGURES)) : all;
  }

  private static double half(BigDecimal number, int figures) {
    int exponent = number.precision() - number.scale() - 1;
    return BigDecimal.ONE.scaleByPowerOfTen(exponent + 1 - figures).doubleValue() / 2;
  }

  private static double lastPlace(BigDecimal zero) {
    return BigDecimal.ONE.scaleByPowerOfTen(-zero.scale()).doubleValue() / 2;
  }

  /** A number of the symbol's unit in the unit written, with so many figures. */
  String same(double number, int figures) {
    String text = QuantityText.number(number / factor, figures);
    return unit.equals("1") ? text : text + " " + unit;
  }
}
