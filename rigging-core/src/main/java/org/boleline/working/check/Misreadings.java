package org.boleline.working.check;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Predicate;
import java.util.function.UnaryOperator;
import org.boleline.explain.Formula;
import org.boleline.explain.Symbol;
import org.boleline.internal.notation.Equation;
import org.boleline.internal.notation.Term;
import org.boleline.units.QuantityText;

/** The text of a formula as it is misread: each way gives another equation. */
final class Misreadings {
  /**
   * One way to misread a formula.
   *
   * @param slip the slip
   * @param reach what it changes
   * @param how what was done
   * @param equation what was read
   */
  record Misreading(Slip slip, Reach reach, String how, Equation equation) {}

  private static final int LEAST_POWER = 2;
  private static final int MOST_POWER = 4;

  /** Equations without the weight, where leaving out a summand of the text does not tell. */
  private static final Map<String, String> WITHOUT_WEIGHT =
      Map.of(
          "DRO-4", "F = sqrt(2 * W * k * h)",
          "DRO-5", "F = sqrt(2 * W * f * EA)",
          "SWI-1", "T = m * g * (2 * cos(a) - 2 * cos(a0))",
          "SWI-2", "T = m * g * (2 - 2 * cos(a0))");

  /** Equations with the rope of one side only. */
  private static final Map<String, List<String>> ONE_SIDE =
      Map.of(
          "DRO-9", List.of("L_e = L", "L_e = L_behind / t"),
          "CUT-6", List.of("h = c * cos(i) + y + |c - t|"),
          "CUT-7", List.of("h = b + s + max(c, t) + e"));

  private final Formula formula;
  private final Equation equation;
  private final PersonsUnits units;
  private final List<Misreading> all = new ArrayList<>();

  private Misreadings(Formula formula, Equation equation, PersonsUnits units) {
    this.formula = formula;
    this.equation = equation;
    this.units = units;
  }

  /** All ways; none of an equation that is not solved for its result. */
  static List<Misreading> of(Formula formula, PersonsUnits units) {
    Equation equation = Equation.parse(formula.text());
    Misreadings misreadings = new Misreadings(formula, equation, units);
    if (equation.solved()) {
      misreadings.pi();
      misreadings.trigonometry();
      misreadings.powers();
      misreadings.signs();
      misreadings.withoutWeight();
      misreadings.oneSide();
    }
    return misreadings.all;
  }

  private void pi() {
    rewrite(Slip.PI_IS_THREE, Reach.GIVEN, "pi", term -> isPi(term) ? new Term.Num("3") : term);
  }

  private static boolean isPi(Term term) {
    return term instanceof Term.Name name && name.name().equals(Term.Name.PI);
  }

  private void trigonometry() {
    List<Term> calls = parts(term -> swapped(term) != term);
    for (Term call : calls) {
      rewrite(
          Slip.SINE_FOR_COSINE,
          Reach.GIVEN,
          "one of them",
          term -> term.equals(call) ? swapped(term) : term);
    }
    if (calls.size() > 1) {
      rewrite(Slip.SINE_FOR_COSINE, Reach.SEVERAL, "all of them", Misreadings::swapped);
    }
  }

  private static Term swapped(Term term) {
    if (term instanceof Term.Call call && call.function().equals("cos")) {
      return new Term.Call("sin", call.terms());
    }
    if (term instanceof Term.Call call && call.function().equals("sin")) {
      return new Term.Call("cos", call.terms());
    }
    return term;
  }

  private void powers() {
    Set<Integer> exponents = new LinkedHashSet<>();
    List<Term> powers = parts(term -> exponent(term) > 0);
    powers.forEach(power -> exponents.add(exponent(power)));
    for (int exponent : exponents) {
      List<Term> alike = new ArrayList<>(powers);
      alike.removeIf(power -> exponent(power) != exponent);
      if (exponent == 2) {
        alike.addAll(parts(this::isArea));
      }
      Set<Double> sizes = new LinkedHashSet<>();
      alike.forEach(power -> sizes.addAll(sizes(power)));
      sizes.forEach(size -> power(size, Reach.GIVEN, alike::contains));
    }
    if (powers.size() > 1) {
      for (Term power : powers) {
        sizes(power).forEach(size -> power(size, Reach.BETWEEN, power::equals));
      }
    }
  }

  /** A product of two lengths, which stands for a square where both are the same. */
  private boolean isArea(Term term) {
    return term instanceof Term.Joined joined
        && joined.sign() == '*'
        && joined.left() instanceof Term.Name left
        && joined.right() instanceof Term.Name right
        && unit(left).equals("m")
        && unit(right).equals("m");
  }

  /** Tries one power less and more, where the person works in a unit of a size. */
  private void power(double size, Reach reach, Predicate<Term> which) {
    for (int more : new int[] {-1, 1}) {
      rewrite(
          Slip.WRONG_POWER,
          reach,
          more < 0 ? "one power less" : "one power more",
          term ->
              which.test(term) ? raised(term, more, sizes(term).contains(size) ? size : 1) : term);
    }
  }

  private static Term raised(Term power, int more, double size) {
    Term base = ((Term.Joined) power).left();
    int exponent = Math.max(2, exponent(power));
    Term other = new Term.Joined('^', base, new Term.Num(String.valueOf(exponent + more)));
    Term unit = new Term.Num(QuantityText.number(size));
    return new Term.Joined(more < 0 ? '*' : '/', other, unit);
  }

  private static int exponent(Term term) {
    if (term instanceof Term.Joined joined
        && joined.sign() == '^'
        && joined.right() instanceof Term.Num num) {
      double value = num.value(Map.of());
      return value >= LEAST_POWER && value <= MOST_POWER && value == Math.rint(value)
          ? (int) value
          : 0;
    }
    return 0;
  }

  private Set<Double> sizes(Term power) {
    Term base = ((Term.Joined) power).left();
    return units.sizes(base instanceof Term.Name name ? unit(name) : "1");
  }

  private String unit(Term.Name name) {
    return formula.inputs().stream()
        .filter(symbol -> symbol.name().equals(name.name()))
        .map(Symbol::unit)
        .findFirst()
        .orElse("1");
  }

  /** Forces and moments have signs, and what has a difference in it or an angle; sizes have not. */
  private void signs() {
    List<Term> sums = parts(Misreadings::isSum);
    boolean signed =
        Set.of("N", "N.m").contains(formula.result().unit())
            || sums.stream().anyMatch(sum -> ((Term.Joined) sum).sign() == '-')
            || !parts(term -> swapped(term) != term).isEmpty();
    if (!signed) {
      return;
    }
    for (Term sum : sums) {
      for (Term other : otherwise((Term.Joined) sum)) {
        rewrite(
            Slip.WRONG_SIGN,
            Reach.GIVEN,
            "a sum for a difference, or the reverse",
            term -> term.equals(sum) ? other : term);
      }
    }
  }

  private static boolean isSum(Term term) {
    return term instanceof Term.Joined joined && (joined.sign() == '+' || joined.sign() == '-');
  }

  /** A sum as a difference either way; a difference as a sum, or the other way. */
  private static List<Term> otherwise(Term.Joined sum) {
    char sign = sum.sign() == '+' ? '-' : '+';
    return List.of(
        new Term.Joined(sign, sum.left(), sum.right()),
        new Term.Joined('-', sum.right(), sum.left()));
  }

  private void oneSide() {
    for (String text : ONE_SIDE.getOrDefault(formula.id(), List.of())) {
      replace(Slip.ROPE_ON_ONE_SIDE, Reach.GIVEN, text, Equation.parse(text));
    }
  }

  private void withoutWeight() {
    String text = WITHOUT_WEIGHT.get(formula.id());
    if (text != null) {
      replace(Slip.NO_OWN_WEIGHT, Reach.GIVEN, text, Equation.parse(text));
      return;
    }
    Set<String> heavy = new LinkedHashSet<>();
    for (Symbol symbol : formula.inputs()) {
      if (symbol.meaning().startsWith("weight of") || symbol.unit().equals("m/s2")) {
        heavy.add(symbol.name());
      }
    }
    rewrite(Slip.NO_OWN_WEIGHT, Reach.GIVEN, "the summand with it", term -> lighter(term, heavy));
  }

  /** A sum or difference without the side that holds the weight, if only one side does. */
  private static Term lighter(Term term, Set<String> heavy) {
    if (term instanceof Term.Joined joined && (joined.sign() == '+' || joined.sign() == '-')) {
      boolean left = holds(joined.left(), heavy);
      boolean right = holds(joined.right(), heavy);
      if (left && !right) {
        return joined.sign() == '+' ? joined.right() : new Term.Minus(joined.right());
      }
      if (right && !left) {
        return joined.left();
      }
    }
    return term;
  }

  private static boolean holds(Term term, Set<String> names) {
    boolean[] found = {false};
    term.rewritten(
        part -> {
          found[0] |= part instanceof Term.Name name && names.contains(name.name());
          return part;
        });
    return found[0];
  }

  /** The different parts of a kind. */
  private List<Term> parts(Predicate<Term> kind) {
    Set<Term> parts = new LinkedHashSet<>();
    equation.rewritten(
        term -> {
          if (kind.test(term)) {
            parts.add(term);
          }
          return term;
        });
    return List.copyOf(parts);
  }

  private void rewrite(Slip slip, Reach reach, String how, UnaryOperator<Term> change) {
    Equation changed = equation.rewritten(change);
    if (!changed.equals(equation)) {
      replace(slip, reach, how, changed);
    }
  }

  private void replace(Slip slip, Reach reach, String how, Equation changed) {
    all.add(new Misreading(slip, reach, how, changed));
  }
}
