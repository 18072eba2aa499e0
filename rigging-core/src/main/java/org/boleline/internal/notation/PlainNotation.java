package org.boleline.internal.notation;

import java.util.List;
import org.boleline.internal.notation.Term.Case;
import org.boleline.internal.notation.Term.Cases;
import org.boleline.internal.notation.Term.Sum;

/** Equations in plain text, as the code and the pages have them. */
final class PlainNotation extends Notation {
  @Override
  String number(String digits, String exponent) {
    return exponent.isEmpty() ? digits : digits + "e" + exponent;
  }

  @Override
  String degrees(String text) {
    return text + " deg";
  }

  @Override
  String name(String name) {
    return name;
  }

  @Override
  String parenthesized(String inner) {
    return "(" + inner + ")";
  }

  @Override
  String minus(String term) {
    return "-" + term;
  }

  @Override
  String joined(char sign, String left, String right) {
    return left + " " + sign + " " + right;
  }

  @Override
  String quotient(Term left, Term right) {
    return within(left, PRODUCT) + " / " + within(right, PRODUCT + 1);
  }

  @Override
  String power(String base, Term exponent) {
    return base + "^" + within(exponent, CALL);
  }

  @Override
  String call(String function, List<Term> terms) {
    return switch (function) {
      case "abs" -> "|" + list(terms, "") + "|";
      case "factorial" -> within(terms.get(0), ATOM) + "!";
      default -> function + "(" + list(terms, ", ") + ")";
    };
  }

  @Override
  String dots() {
    return "...";
  }

  @Override
  String sum(Sum sum) {
    return "sum("
        + sum.index()
        + " = "
        + term(sum.first())
        + " to "
        + term(sum.last())
        + ", "
        + term(sum.term())
        + ")";
  }

  @Override
  int strengthOfSum() {
    return CALL;
  }

  @Override
  String cases(Cases cases) {
    StringBuilder text = new StringBuilder();
    for (Case one : cases.cases()) {
      text.append(term(one.term())).append(" where ");
      text.append(condition(one, " " + one.relation() + " ")).append(", ");
    }
    return text.append("else ").append(term(cases.otherwise())).toString();
  }

  @Override
  String words(String words) {
    return words;
  }

  @Override
  String equals(String left, String right) {
    return left + " = " + right;
  }

  @Override
  int baseOfPower() {
    return CALL;
  }
}
