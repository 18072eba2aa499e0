package org.boleline.internal.notation;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.boleline.internal.notation.Term.Call;
import org.boleline.internal.notation.Term.Case;
import org.boleline.internal.notation.Term.Cases;
import org.boleline.internal.notation.Term.Degrees;
import org.boleline.internal.notation.Term.Joined;
import org.boleline.internal.notation.Term.Minus;
import org.boleline.internal.notation.Term.Name;
import org.boleline.internal.notation.Term.Num;
import org.boleline.internal.notation.Term.Powers;
import org.boleline.internal.notation.Term.Sum;

/** Reads the text of an equation from left to right. */
final class Reading {
  /** The functions, by name; {@code abs} is written with bars. */
  static final Set<String> FUNCTIONS =
      Set.of(
          "sqrt", "exp", "ln", "sin", "cos", "tan", "asin", "acos", "atan", "atan2", "max", "min",
          "ceil", "choose");

  private static final Set<String> OF_TWO = Set.of("atan2", "choose", "max", "min");
  private static final Pattern TOKEN =
      Pattern.compile(
          "\\s*([0-9]+(?:\\.[0-9]+)?(?:e[-+]?[0-9]+)?|[A-Za-z][A-Za-z0-9]*(?:_[A-Za-z0-9]+)*"
              + "|\\.\\.\\.|<=|>=|[-+*/^()|,=<>!])");

  private final String text;
  private final List<String> tokens = new ArrayList<>();
  private int next;

  Reading(String text) {
    this.text = text;
    Matcher token = TOKEN.matcher(text);
    int end = 0;
    while (token.lookingAt()) {
      tokens.add(token.group(1));
      end = token.end();
      token.region(end, text.length());
    }
    if (end < text.length()) {
      throw new IllegalArgumentException("\"" + text + "\": unreadable at " + end);
    }
  }

  Equation equation() {
    String result = name();
    boolean solved = !took("such");
    Term left;
    Term right;
    if (solved) {
      take("=");
      left = new Name(result);
      right = cases();
    } else {
      take("that");
      left = sum();
      take("=");
      right = sum();
    }
    Map<String, Term> definitions = new LinkedHashMap<>();
    if (took("with")) {
      do {
        String name = name();
        take("=");
        definitions.put(name, sum());
      } while (took(","));
    }
    if (next < tokens.size()) {
      throw wrong("the end");
    }
    return new Equation(result, solved, left, right, definitions);
  }

  private Term cases() {
    Term first = sum();
    if (!took("where")) {
      return first;
    }
    List<Case> cases = new ArrayList<>(List.of(condition(first)));
    take(",");
    while (!took("else")) {
      Term term = sum();
      take("where");
      cases.add(condition(term));
      take(",");
    }
    return new Cases(cases, sum());
  }

  private Case condition(Term term) {
    Term left = sum();
    String relation = peek();
    if (!Set.of("<", ">", "<=", ">=", "=").contains(relation)) {
      throw wrong("a relation");
    }
    next++;
    return new Case(term, left, relation, sum());
  }

  private Term sum() {
    Term sum = took("-") ? new Minus(product()) : product();
    while (peek().equals("+") || peek().equals("-")) {
      char sign = tokens.get(next++).charAt(0);
      sum = took("...") ? powers(sum) : new Joined(sign, sum, product());
    }
    return sum;
  }

  /** Reads {@code + x^n} after {@code x + x^2 + ...}. */
  private Term powers(Term start) {
    take("+");
    if (start instanceof Joined two
        && two.right().equals(new Joined('^', two.left(), new Num("2")))
        && product() instanceof Joined end
        && end.sign() == '^'
        && end.left().equals(two.left())) {
      return new Powers(two.left(), end.right());
    }
    throw wrong("x + x^2 + ... + x^n");
  }

  private Term product() {
    Term product = power();
    while (peek().equals("*") || peek().equals("/")) {
      product = new Joined(tokens.get(next++).charAt(0), product, power());
    }
    return product;
  }

  private Term power() {
    Term base = atom();
    if (took("!")) {
      return new Call("factorial", List.of(base));
    }
    return took("^") ? new Joined('^', base, atom()) : base;
  }

  private Term atom() {
    String token = peek();
    if (took("(")) {
      Term inner = sum();
      take(")");
      return inner;
    }
    if (took("|")) {
      Term inner = sum();
      take("|");
      return new Call("abs", List.of(inner));
    }
    if (!token.isEmpty() && Character.isDigit(token.charAt(0))) {
      next++;
      return took("deg") ? new Degrees(token) : new Num(token);
    }
    if (took("sum")) {
      take("(");
      String index = name();
      take("=");
      Term first = sum();
      take("to");
      Term last = sum();
      take(",");
      Sum all = new Sum(index, first, last, sum());
      take(")");
      return all;
    }
    if (FUNCTIONS.contains(token)) {
      next++;
      take("(");
      List<Term> terms = new ArrayList<>(List.of(sum()));
      if (OF_TWO.contains(token)) {
        take(",");
        terms.add(sum());
      }
      take(")");
      return new Call(token, terms);
    }
    return new Name(name());
  }

  private String name() {
    String token = peek();
    if (token.isEmpty() || !Character.isLetter(token.charAt(0))) {
      throw wrong("a name");
    }
    next++;
    return token;
  }

  private String peek() {
    return next < tokens.size() ? tokens.get(next) : "";
  }

  private boolean took(String token) {
    if (!peek().equals(token)) {
      return false;
    }
    next++;
    return true;
  }

  private void take(String token) {
    if (!took(token)) {
      throw wrong(token);
    }
  }

  private IllegalArgumentException wrong(String wanted) {
    return new IllegalArgumentException(
        "\"" + text + "\": wants " + wanted + ", got \"" + peek() + "\" at part " + next);
  }
}
