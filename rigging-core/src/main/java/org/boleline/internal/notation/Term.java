package org.boleline.internal.notation;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.UnaryOperator;

/** A part of an equation that has a value. */
public sealed interface Term {
  /**
   * Returns the value.
   *
   * @param numbers the number of each name
   * @return the value; NaN where a name has no number
   */
  double value(Map<String, Double> numbers);

  /**
   * Returns a copy in which every part has been offered to a change, the innermost first.
   *
   * @param change gives the new part; the same one to leave it
   * @return the copy
   */
  Term rewritten(UnaryOperator<Term> change);

  /**
   * A number as written.
   *
   * @param text its decimal text
   */
  record Num(String text) implements Term {
    @Override
    public double value(Map<String, Double> numbers) {
      return Double.parseDouble(text);
    }

    @Override
    public Term rewritten(UnaryOperator<Term> change) {
      return change.apply(this);
    }
  }

  /**
   * A number of degrees; its value is in radians.
   *
   * @param text the degrees
   */
  record Degrees(String text) implements Term {
    @Override
    public double value(Map<String, Double> numbers) {
      return Math.toRadians(Double.parseDouble(text));
    }

    @Override
    public Term rewritten(UnaryOperator<Term> change) {
      return change.apply(this);
    }
  }

  /**
   * A symbol, a defined name, or pi.
   *
   * @param name the name
   */
  record Name(String name) implements Term {
    /** Half the turn of a circle. */
    public static final String PI = "pi";

    @Override
    public double value(Map<String, Double> numbers) {
      return name.equals(PI) ? Math.PI : numbers.getOrDefault(name, Double.NaN);
    }

    @Override
    public Term rewritten(UnaryOperator<Term> change) {
      return change.apply(this);
    }
  }

  /**
   * A term with the sign turned.
   *
   * @param term the term
   */
  record Minus(Term term) implements Term {
    @Override
    public double value(Map<String, Double> numbers) {
      return -term.value(numbers);
    }

    @Override
    public Term rewritten(UnaryOperator<Term> change) {
      return change.apply(new Minus(term.rewritten(change)));
    }
  }

  /**
   * Two terms joined by an operation.
   *
   * @param sign one of + - * / ^
   * @param left the first term
   * @param right the second term
   */
  record Joined(char sign, Term left, Term right) implements Term {
    @Override
    public double value(Map<String, Double> numbers) {
      double a = left.value(numbers);
      double b = right.value(numbers);
      return switch (sign) {
        case '+' -> a + b;
        case '-' -> a - b;
        case '*' -> a * b;
        case '/' -> a / b;
        default -> Math.pow(a, b);
      };
    }

    @Override
    public Term rewritten(UnaryOperator<Term> change) {
      return change.apply(new Joined(sign, left.rewritten(change), right.rewritten(change)));
    }
  }

  /**
   * A function of terms; {@code abs} is written with bars, {@code factorial} with a mark behind.
   *
   * @param function its name, one of {@link Reading#FUNCTIONS}
   * @param terms what it takes
   */
  record Call(String function, List<Term> terms) implements Term {
    /** Copies the list. */
    public Call {
      terms = List.copyOf(terms);
    }

    @Override
    public double value(Map<String, Double> numbers) {
      double a = terms.get(0).value(numbers);
      double b = terms.size() > 1 ? terms.get(1).value(numbers) : Double.NaN;
      return switch (function) {
        case "sqrt" -> Math.sqrt(a);
        case "exp" -> Math.exp(a);
        case "ln" -> Math.log(a);
        case "sin" -> Math.sin(a);
        case "cos" -> Math.cos(a);
        case "tan" -> Math.tan(a);
        case "asin" -> Math.asin(a);
        case "acos" -> Math.acos(a);
        case "atan" -> Math.atan(a);
        case "atan2" -> Math.atan2(a, b);
        case "max" -> Math.max(a, b);
        case "min" -> Math.min(a, b);
        case "ceil" -> Math.ceil(a);
        case "abs" -> Math.abs(a);
        case "choose" -> choose(a, b);
        case "factorial" -> factorial(a);
        default -> throw new IllegalArgumentException("unknown function " + function);
      };
    }

    private static double choose(double n, double k) {
      double product = k >= 0 && k <= n ? 1 : 0;
      for (int i = 1; i <= Math.min(k, n - k); i++) {
        product *= (n - i + 1) / i;
      }
      return product;
    }

    private static double factorial(double n) {
      double product = n == Math.rint(n) && n >= 0 ? 1 : Double.NaN;
      for (int i = 2; i <= n; i++) {
        product *= i;
      }
      return product;
    }

    @Override
    public Term rewritten(UnaryOperator<Term> change) {
      return change.apply(
          new Call(function, terms.stream().map(term -> term.rewritten(change)).toList()));
    }
  }

  /**
   * The sum of the powers of a term from the first to a last one.
   *
   * @param base the term
   * @param last the last power
   */
  record Powers(Term base, Term last) implements Term {
    private static final int MOST_WRITTEN = 3;

    /** All powers one by one, if a number tells that there are so few that no dots are needed. */
    Optional<Term> few() {
      double most = last instanceof Num num ? num.value(Map.of()) : 0;
      if (most < 1 || most > MOST_WRITTEN) {
        return Optional.empty();
      }
      Term sum = base;
      for (int i = 2; i <= most; i++) {
        sum = new Joined('+', sum, new Joined('^', base, new Num(String.valueOf(i))));
      }
      return Optional.of(sum);
    }

    @Override
    public double value(Map<String, Double> numbers) {
      double x = base.value(numbers);
      double most = last.value(numbers);
      double power = 1;
      double sum = 0;
      for (int i = 1; i <= most; i++) {
        power *= x;
        sum += power;
      }
      return sum;
    }

    @Override
    public Term rewritten(UnaryOperator<Term> change) {
      return change.apply(new Powers(base.rewritten(change), last.rewritten(change)));
    }
  }

  /**
   * The sum of a term while a whole number runs from a first to a last value.
   *
   * @param index the name of the number
   * @param first its first value
   * @param last its last value
   * @param term the term, in which the index may stand
   */
  record Sum(String index, Term first, Term last, Term term) implements Term {
    @Override
    public double value(Map<String, Double> numbers) {
      Map<String, Double> all = new LinkedHashMap<>(numbers);
      double most = last.value(numbers);
      double sum = 0;
      for (double i = first.value(numbers); i <= most; i++) {
        all.put(index, i);
        sum += term.value(all);
      }
      return sum;
    }

    @Override
    public Term rewritten(UnaryOperator<Term> change) {
      return change.apply(
          new Sum(index, first.rewritten(change), last.rewritten(change), term.rewritten(change)));
    }
  }

  /**
   * A term that hangs on conditions; the first that holds decides.
   *
   * @param cases the conditions with their terms
   * @param otherwise the term where none holds
   */
  record Cases(List<Case> cases, Term otherwise) implements Term {
    /** Copies the list. */
    public Cases {
      cases = List.copyOf(cases);
    }

    @Override
    public double value(Map<String, Double> numbers) {
      for (Case one : cases) {
        if (one.holds(numbers)) {
          return one.term.value(numbers);
        }
      }
      return otherwise.value(numbers);
    }

    @Override
    public Term rewritten(UnaryOperator<Term> change) {
      List<Case> changed =
          cases.stream()
              .map(
                  one ->
                      new Case(
                          one.term.rewritten(change),
                          one.left.rewritten(change),
                          one.relation,
                          one.right.rewritten(change)))
              .toList();
      return change.apply(new Cases(changed, otherwise.rewritten(change)));
    }
  }

  /**
   * One case.
   *
   * @param term the term where the condition holds
   * @param left left side of the condition
   * @param relation one of &lt; &gt; &lt;= &gt;= =
   * @param right right side of the condition
   */
  record Case(Term term, Term left, String relation, Term right) {
    private boolean holds(Map<String, Double> numbers) {
      double a = left.value(numbers);
      double b = right.value(numbers);
      return switch (relation) {
        case "<" -> a < b;
        case ">" -> a > b;
        case "<=" -> a <= b;
        case ">=" -> a >= b;
        default -> a == b;
      };
    }
  }
}
