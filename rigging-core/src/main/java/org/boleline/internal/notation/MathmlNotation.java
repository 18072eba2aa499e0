package org.boleline.internal.notation;

import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import org.boleline.internal.notation.Term.Case;
import org.boleline.internal.notation.Term.Cases;
import org.boleline.internal.notation.Term.Sum;

/** Equations in presentation MathML; only elements of MathML Core. */
final class MathmlNotation extends Notation {
  private static final Map<Character, String> SIGNS = Map.of('-', "\u2212");
  private static final Map<String, String> RELATIONS =
      Map.of("<", "&lt;", ">", "&gt;", "<=", "\u2264", ">=", "\u2265", "=", "=");
  private static final Map<String, String> FUNCTIONS =
      Map.of("asin", "arcsin", "acos", "arccos", "atan", "arctan");
  private static final Pattern BEGINS_WITH_NUMBER = Pattern.compile("(<m(row|sup)>)*<mn>");
  private static final String TIMES = "\u22c5";
  private static final String INVISIBLE_TIMES = "\u2062";
  private static final String APPLY = "\u2061";

  /** Wraps printed parts as one element with its alternative text. */
  static String math(String text, String parts) {
    return "<math xmlns=\"http://www.w3.org/1998/Math/MathML\" alttext=\""
        + text.replace("&", "&amp;").replace("<", "&lt;").replace("\"", "&quot;")
        + "\">"
        + row(parts)
        + "</math>";
  }

  private static String row(String inner) {
    return "<mrow>" + inner + "</mrow>";
  }

  private static String operator(String sign) {
    return "<mo>" + sign + "</mo>";
  }

  private static String mn(String digits) {
    return digits.startsWith("-")
        ? row(operator("\u2212") + "<mn>" + digits.substring(1) + "</mn>")
        : "<mn>" + digits + "</mn>";
  }

  @Override
  String number(String digits, String exponent) {
    return exponent.isEmpty()
        ? mn(digits)
        : row(mn(digits) + operator("\u00d7") + "<msup><mn>10</mn>" + mn(exponent) + "</msup>");
  }

  @Override
  String degrees(String text) {
    return row("<mn>" + text + "</mn><mi>\u00b0</mi>");
  }

  @Override
  String name(String name) {
    Symbols parts = Symbols.of(name);
    String base = "<mi>" + parts.letter() + "</mi>";
    return parts.index().isEmpty()
        ? base
        : "<msub>" + base + "<mtext>" + parts.index() + "</mtext></msub>";
  }

  @Override
  String parenthesized(String inner) {
    return row(operator("(") + inner + operator(")"));
  }

  @Override
  String minus(String term) {
    return row(operator("\u2212") + term);
  }

  @Override
  String joined(char sign, String left, String right) {
    if (sign != '*') {
      return left + operator(SIGNS.getOrDefault(sign, String.valueOf(sign))) + right;
    }
    boolean visible = BEGINS_WITH_NUMBER.matcher(right).lookingAt();
    return left + operator(visible ? TIMES : INVISIBLE_TIMES) + right;
  }

  @Override
  String quotient(Term left, Term right) {
    return "<mfrac>" + row(term(left)) + row(term(right)) + "</mfrac>";
  }

  @Override
  String power(String base, Term exponent) {
    return "<msup>" + row(base) + row(term(exponent)) + "</msup>";
  }

  @Override
  String call(String function, List<Term> terms) {
    String inner = list(terms, operator(","));
    return switch (function) {
      case "sqrt" -> "<msqrt>" + row(inner) + "</msqrt>";
      case "abs" -> row(operator("|") + inner + operator("|"));
      case "ceil" -> row(operator("\u2308") + inner + operator("\u2309"));
      case "choose" ->
          row(
              operator("(")
                  + "<mfrac linethickness=\"0\">"
                  + row(term(terms.get(0)))
                  + row(term(terms.get(1)))
                  + "</mfrac>"
                  + operator(")"));
      case "factorial" -> row(within(terms.get(0), ATOM) + operator("!"));
      default ->
          row(
              "<mi>"
                  + FUNCTIONS.getOrDefault(function, function)
                  + "</mi>"
                  + operator(APPLY)
                  + parenthesized(inner));
    };
  }

  @Override
  String dots() {
    return "<mo>\u2026</mo>";
  }

  @Override
  String sum(Sum sum) {
    return "<munderover>"
        + operator("\u2211")
        + row(name(sum.index()) + operator("=") + term(sum.first()))
        + row(term(sum.last()))
        + "</munderover>"
        + row(within(sum.term(), PRODUCT));
  }

  @Override
  int strengthOfSum() {
    return SUM;
  }

  @Override
  String cases(Cases cases) {
    StringBuilder rows = new StringBuilder();
    for (Case one : cases.cases()) {
      String relation = operator(RELATIONS.getOrDefault(one.relation(), one.relation()));
      rows.append(line(term(one.term()), "<mtext>where </mtext>" + condition(one, relation)));
    }
    rows.append(line(term(cases.otherwise()), "<mtext>else</mtext>"));
    return row(operator("{") + "<mtable>" + rows + "</mtable>");
  }

  private static String line(String term, String when) {
    return "<mtr><mtd>" + row(term) + "</mtd><mtd>" + row(when) + "</mtd></mtr>";
  }

  @Override
  String words(String words) {
    return words.equals(", ") ? operator(",") : "<mtext>\u00a0" + words.strip() + "\u00a0</mtext>";
  }

  @Override
  String equals(String left, String right) {
    return left + operator("=") + right;
  }

  @Override
  int baseOfPower() {
    return ATOM;
  }
}
