package org.boleline.internal.notation;

import java.util.List;
import java.util.Map;
import org.boleline.internal.notation.Term.Case;
import org.boleline.internal.notation.Term.Cases;
import org.boleline.internal.notation.Term.Sum;

/** Equations in LaTeX, for math mode. */
final class LatexNotation extends Notation {
  private static final Map<String, String> FUNCTIONS =
      Map.of(
          "asin", "\\arcsin",
          "acos", "\\arccos",
          "atan", "\\arctan",
          "atan2", "\\operatorname{atan2}");
  private static final Map<String, String> RELATIONS = Map.of("<=", "\\le ", ">=", "\\ge ");

  @Override
  String number(String digits, String exponent) {
    return exponent.isEmpty() ? digits : digits + " \\times 10^{" + exponent + "}";
  }

  @Override
  String degrees(String text) {
    return text + "^{\\circ}";
  }

  @Override
  String name(String name) {
    Symbols parts = Symbols.of(name);
    String base =
        parts.isGreek()
            ? "\\" + parts.base()
            : parts.base().length() == 1 ? parts.base() : "\\mathrm{" + parts.base() + "}";
    return parts.index().isEmpty() ? base : base + "_{\\mathrm{" + parts.index() + "}}";
  }

  @Override
  String parenthesized(String inner) {
    return "\\left(" + inner + "\\right)";
  }

  @Override
  String minus(String term) {
    return "-" + term;
  }

  @Override
  String joined(char sign, String left, String right) {
    if (sign != '*') {
      return left + " " + sign + " " + right;
    }
    return left + (Character.isDigit(right.charAt(0)) ? " \\cdot " : " \\, ") + right;
  }

  @Override
  String quotient(Term left, Term right) {
    return "\\frac{" + term(left) + "}{" + term(right) + "}";
  }

  @Override
  String power(String base, Term exponent) {
    return base + "^{" + term(exponent) + "}";
  }

  @Override
  String call(String function, List<Term> terms) {
    return switch (function) {
      case "sqrt" -> "\\sqrt{" + list(terms, "") + "}";
      case "abs" -> "\\left|" + list(terms, "") + "\\right|";
      case "ceil" -> "\\left\\lceil " + list(terms, "") + "\\right\\rceil";
      case "choose" -> "\\binom{" + list(terms, "}{") + "}";
      case "factorial" -> within(terms.get(0), ATOM) + "!";
      default ->
          FUNCTIONS.getOrDefault(function, "\\" + function) + parenthesized(list(terms, ", "));
    };
  }

  @Override
  String dots() {
    return "\\dots";
  }

  @Override
  String sum(Sum sum) {
    return "\\sum_{"
        + name(sum.index())
        + " = "
        + term(sum.first())
        + "}^{"
        + term(sum.last())
        + "} "
        + within(sum.term(), PRODUCT);
  }

  @Override
  int strengthOfSum() {
    return SUM;
  }

  @Override
  String cases(Cases cases) {
    StringBuilder text = new StringBuilder("\\begin{cases} ");
    for (Case one : cases.cases()) {
      String relation = RELATIONS.getOrDefault(one.relation(), one.relation() + " ");
      text.append(term(one.term())).append(" & \\text{where } ");
      text.append(condition(one, " " + relation)).append(" \\\\ ");
    }
    text.append(term(cases.otherwise())).append(" & \\text{else}");
    return text.append(" \\end{cases}").toString();
  }

  @Override
  String words(String words) {
    return words.equals(", ") ? ", \\; " : " \\; \\text{" + words.strip() + "} \\; ";
  }

  @Override
  String equals(String left, String right) {
    return left + " = " + right;
  }

  @Override
  int baseOfPower() {
    return ATOM;
  }
}
