package org.boleline.internal.notation;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
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

/** Prints equations; each notation says how its parts look. */
abstract class Notation {
  static final int CASES = 0;
  static final int SUM = 1;
  static final int PRODUCT = 2;
  static final int POWER = 3;
  static final int CALL = 4;
  static final int ATOM = 5;

  abstract String number(String digits, String exponent);

  abstract String degrees(String text);

  abstract String name(String name);

  abstract String parenthesized(String inner);

  abstract String minus(String term);

  abstract String joined(char sign, String left, String right);

  abstract String quotient(Term left, Term right);

  abstract String power(String base, Term exponent);

  abstract String call(String function, List<Term> terms);

  abstract String dots();

  abstract String sum(Sum sum);

  abstract String cases(Cases cases);

  abstract String words(String words);

  abstract String equals(String left, String right);

  /** How strongly a printed sum over an index holds together. */
  abstract int strengthOfSum();

  /** How strongly a printed base of a power must hold together. */
  abstract int baseOfPower();

  final String equation(Equation equation) {
    StringBuilder text = new StringBuilder();
    if (!equation.solved()) {
      text.append(name(equation.result())).append(words(" such that "));
    }
    text.append(equals(term(equation.left()), term(equation.right())));
    String before = " with ";
    for (Map.Entry<String, Term> definition : equation.definitions().entrySet()) {
      text.append(words(before));
      text.append(equals(name(definition.getKey()), term(definition.getValue())));
      before = ", ";
    }
    return text.toString();
  }

  final String term(Term term) {
    if (term instanceof Num num) {
      int e = num.text().indexOf('e');
      return e < 0
          ? number(num.text(), "")
          : number(num.text().substring(0, e), num.text().substring(e + 1));
    }
    if (term instanceof Degrees degrees) {
      return degrees(degrees.text());
    }
    if (term instanceof Name name) {
      return name(name.name());
    }
    if (term instanceof Minus minus) {
      return minus(within(minus.term(), PRODUCT));
    }
    if (term instanceof Joined joined) {
      return joined(joined);
    }
    if (term instanceof Call call) {
      return call(call.function(), call.terms());
    }
    if (term instanceof Powers powers) {
      Optional<Term> few = powers.few();
      if (few.isPresent()) {
        return term(few.get());
      }
      Term square = new Joined('^', powers.base(), new Num("2"));
      Term last = new Joined('^', powers.base(), powers.last());
      String start = joined('+', within(powers.base(), SUM + 1), term(square));
      return joined('+', joined('+', start, dots()), term(last));
    }
    if (term instanceof Sum sum) {
      return sum(sum);
    }
    return cases((Cases) term);
  }

  private String joined(Joined joined) {
    return switch (joined.sign()) {
      case '/' -> quotient(joined.left(), joined.right());
      case '^' -> power(within(joined.left(), baseOfPower()), joined.right());
      default -> {
        int level = strength(joined);
        yield joined(
            joined.sign(), within(joined.left(), level), within(joined.right(), level + 1));
      }
    };
  }

  /** Prints a term, in parentheses if it holds together less than wanted. */
  final String within(Term term, int wanted) {
    return strength(term) < wanted ? parenthesized(term(term)) : term(term);
  }

  final int strength(Term term) {
    if (term instanceof Num num) {
      // A sign binds like a sum, a power of ten like a product.
      return num.text().startsWith("-") ? SUM : num.text().contains("e") ? PRODUCT + 1 : ATOM;
    }
    if (term instanceof Powers powers) {
      return powers.few().map(this::strength).orElse(SUM);
    }
    if (term instanceof Minus) {
      return SUM;
    }
    if (term instanceof Joined joined) {
      return switch (joined.sign()) {
        case '+', '-' -> SUM;
        case '*', '/' -> PRODUCT;
        default -> POWER;
      };
    }
    if (term instanceof Cases) {
      return CASES;
    }
    if (term instanceof Sum) {
      return strengthOfSum();
    }
    if (term instanceof Call call) {
      return call.function().equals("factorial") ? POWER : CALL;
    }
    return term instanceof Degrees ? POWER : ATOM;
  }

  final String list(List<Term> terms, String between) {
    return terms.stream().map(this::term).collect(Collectors.joining(between));
  }

  final String condition(Case one, String relation) {
    return term(one.left()) + relation + term(one.right());
  }
}
