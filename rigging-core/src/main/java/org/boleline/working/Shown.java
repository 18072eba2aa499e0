package org.boleline.working;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.boleline.explain.Formula;
import org.boleline.explain.Source;
import org.boleline.explain.Step;
import org.boleline.explain.Symbol;
import org.boleline.internal.notation.Equation;
import org.boleline.units.QuantityText;

/** What all forms of a worksheet show of one step: texts, without layout. */
final class Shown {
  /** Numbers put in carry more figures than results, so that those can be had from them. */
  private static final int GUARD = 3;

  private static final int FACTOR_FIGURES = 10;

  private final Step step;
  private final UnitSystem units;
  private final int figures;
  private final Equation equation;

  Shown(Step step, Worksheet sheet) {
    this.step = step;
    this.units = sheet.units();
    this.figures = sheet.figuresCount();
    this.equation = Equation.parse(step.formula().text());
  }

  /**
   * A number with its symbol.
   *
   * @param symbol the symbol
   * @param value the number with its unit, as the formula takes it
   * @param otherwise the same number in the unit shown with the conversion, or empty
   * @param range the range with whether the number is inside, or empty if there is none
   */
  record Amount(Symbol symbol, String value, String otherwise, String range) {}

  static String number(double value, int figures) {
    return QuantityText.number(value, figures);
  }

  Formula formula() {
    return step.formula();
  }

  Equation equation() {
    return equation;
  }

  /** The equation with the numbers put in, in SI units; both sides alone if it is not solved. */
  Equation put() {
    Map<String, String> numbers = new LinkedHashMap<>();
    for (int i = 0; i < formula().inputs().size(); i++) {
      numbers.put(formula().inputs().get(i).name(), number(step.input(i), figures + GUARD));
    }
    if (!equation.solved()) {
      numbers.put(equation.result(), number(step.result(), figures + GUARD));
    }
    Equation put = equation.with(numbers);
    return new Equation(put.result(), true, put.left(), put.right(), put.definitions());
  }

  List<Amount> inputs() {
    List<Amount> inputs = new ArrayList<>();
    for (int i = 0; i < formula().inputs().size(); i++) {
      inputs.add(of(formula().inputs().get(i), step.input(i)));
    }
    return inputs;
  }

  Amount result() {
    return of(formula().result(), step.result());
  }

  /** The result rounded, in the units shown. */
  String rounded() {
    return rounded(formula().result(), step.result());
  }

  String rounded(Symbol symbol, double value) {
    UnitSystem.Shown unit = units.shown(symbol);
    return with(significant(unit.of(value), figures), unit.code());
  }

  /** A number with all its figures, zeros at the end too. */
  private static String significant(double value, int figures) {
    String text = number(value, figures);
    if (value == 0 || text.contains("e")) {
      return text;
    }
    BigDecimal rounded =
        BigDecimal.valueOf(value).round(new MathContext(figures, RoundingMode.HALF_EVEN));
    int decimals = figures - (rounded.precision() - rounded.scale());
    return decimals > 0 ? rounded.setScale(decimals).toPlainString() : text;
  }

  /** To how many figures the result is rounded, in words. */
  String figures() {
    return figures == 1 ? "1 figure" : figures + " figures";
  }

  private Amount of(Symbol symbol, double value) {
    return new Amount(
        symbol,
        with(QuantityText.number(value), symbol.unit()),
        otherwise(symbol, value),
        range(symbol, value));
  }

  private String otherwise(Symbol symbol, double value) {
    if (symbol.unit().equals("rad")) {
      return number(Math.toDegrees(value), figures + GUARD) + " deg x pi / 180";
    }
    UnitSystem.Shown unit = units.shown(symbol);
    return unit.isSi()
        ? ""
        : number(unit.of(value), figures + GUARD)
            + " "
            + unit.code()
            + " x "
            + number(unit.factor().doubleValue(), FACTOR_FIGURES);
  }

  private static String range(Symbol symbol, double value) {
    boolean below = Double.isInfinite(symbol.least());
    boolean above = Double.isInfinite(symbol.most());
    if (below && above) {
      return "";
    }
    String range =
        above
            ? number(symbol.least(), FACTOR_FIGURES) + " or more"
            : below
                ? "at most " + number(symbol.most(), FACTOR_FIGURES)
                : number(symbol.least(), FACTOR_FIGURES)
                    + " to "
                    + number(symbol.most(), FACTOR_FIGURES);
    return range + (symbol.isWithinRange(value) ? ": inside" : ": OUTSIDE");
  }

  static String with(String number, String unit) {
    return unit.equals("1") ? number : number + " " + unit;
  }

  /** Where a route ends at a number that stands in a line before. */
  static String asInLine(Shown shown, int line) {
    return shown.formula().id() + ", line " + line + ", gives " + shown.rounded();
  }

  /** Words on one line, without characters that steer a terminal or that XML does not allow. */
  static String oneLine(String words) {
    return words
        .replaceAll("[\\p{Cc}\\p{Zl}\\p{Zp}]+", " ")
        .replaceAll("[\\p{Cf}\\p{Cs}\\p{Cn}]", "");
  }

  static String capital(String words) {
    return words.isEmpty()
        ? ""
        : words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
  }

  /** Where a formula comes from, and how its authors know. */
  static String source(Source source) {
    return switch (source.reading()) {
      case DERIVED -> "derived here: " + source.title();
      case FROM_MEMORY -> source.id() + ": " + source.title() + " (from memory)";
      case READ, COMMON_PRACTICE -> source.id() + ": " + source.title();
      case STATED, DEFAULT -> source.title();
    };
  }

  /** The number of a table's cell, in the units shown. */
  static String cell(Line.Table table, int row, int column, Worksheet sheet) {
    UnitSystem.Shown unit = sheet.units().shown(table.columns().get(column));
    return number(unit.of(table.number(row, column)), sheet.figuresCount() + 1);
  }

  static String unit(Symbol symbol, Worksheet sheet) {
    return sheet.units().shown(symbol).code();
  }

  /** The difference of two routes, in words. */
  static String difference(Line.TwoRoutes two, Worksheet sheet) {
    Symbol symbol = two.first().formula().result();
    UnitSystem.Shown unit = sheet.units().shown(symbol);
    double difference = two.first().result() - two.second().result();
    return with(number(unit.of(difference), 2), unit.code())
        + ", "
        + number(Math.abs(two.differenceRatio()), 2)
        + " of the greater";
  }
}
