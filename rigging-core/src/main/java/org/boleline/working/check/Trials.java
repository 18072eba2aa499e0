package org.boleline.working.check;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.DoubleUnaryOperator;
import java.util.function.Predicate;
import java.util.function.UnaryOperator;
import org.boleline.explain.Symbol;
import org.boleline.internal.notation.Equation;
import org.boleline.internal.notation.Term;
import org.boleline.units.QuantityText;

/** All slips that can be tried on the uses of formulas that stand behind one number. */
final class Trials {
  /**
   * One slip at one place.
   *
   * @param slip the slip
   * @param where id of the formula it is tried in
   * @param how what was done there
   * @param way the calculation with it
   */
  record Trial(Slip slip, String where, String how, Chain.Way way) {}

  private static final double GRAVITY = 9.80665;
  private static final double GRAVITY_IN_FEET = GRAVITY / 0.3048;
  private static final double FULL_TURN = 2 * Math.PI;
  private static final int MOST_ROUNDED = 3;
  private static final int LEAST_POWER = 2;
  private static final int MOST_POWER = 4;

  /** Factors between units of the same system that get lost, by the unit of the number. */
  private static final Map<String, List<Double>> METRIC =
      Map.of(
          "m", List.of(10.0, 100.0, 1000.0),
          "m2", List.of(1e4, 1e6),
          "m3", List.of(1000.0, 1e6, 1e9),
          "m4", List.of(1e8, 1e12),
          "N", List.of(1000.0),
          "N/m", List.of(1000.0),
          "N.m", List.of(100.0, 1000.0),
          "Pa", List.of(1000.0, 1e6),
          "J", List.of(1000.0),
          "kg", List.of(1000.0));

  private static final Map<String, List<Double>> FOOT_POUND =
      Map.of(
          "m", List.of(12.0),
          "m2", List.of(144.0),
          "m3", List.of(1728.0),
          "m4", List.of(20736.0),
          "N.m", List.of(12.0),
          "J", List.of(12.0),
          "Pa", List.of(144.0),
          "N/m", List.of(12.0));

  /** Factors between both systems. */
  private static final Map<String, List<Double>> BETWEEN =
      Map.of(
          "m", List.of(1 / 0.3048, 1 / 0.0254),
          "N", List.of(4.4482216152605),
          "kg", List.of(1 / 0.45359237),
          "N.m", List.of(4.4482216152605 * 0.3048),
          "J", List.of(4.4482216152605 * 0.3048),
          "m/s", List.of(1 / 0.3048));

  /** What a wrong power of a number is off by: the size of the unit the person works in. */
  private static final Map<String, List<Double>> METRIC_UNITS =
      Map.of("m", List.of(1.0, 0.01, 0.001), "N", List.of(1.0, 1000.0));

  private static final Map<String, List<Double>> FOOT_POUND_UNITS =
      Map.of("m", List.of(0.3048, 0.0254), "N", List.of(4.4482216152605), "m/s", List.of(0.3048));

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

  private final Chain chain;
  private final Set<Integer> open;
  private final boolean metric;
  private final boolean footPound;
  private final List<Trial> all = new ArrayList<>();
  private final Set<List<Object>> seen = new LinkedHashSet<>();

  private Trials(Chain chain, Set<Integer> open, Set<String> units) {
    this.chain = chain;
    this.open = open;
    boolean feet = units.stream().anyMatch(Trials::isFootPound);
    boolean metres =
        units.stream()
            .anyMatch(unit -> !isFootPound(unit) && !Set.of("1", "deg", "rad").contains(unit));
    this.footPound = feet || !metres;
    this.metric = metres || !feet;
  }

  private static boolean isFootPound(String unit) {
    return unit.contains("lb")
        || unit.contains("ft")
        || unit.startsWith("in")
        || unit.equals("psi");
  }

  /**
   * All trials.
   *
   * @param chain the chain
   * @param target the use whose result is looked at
   * @param stated the uses whose results the person wrote down, so that no slip hides behind them
   * @param units the units that the person wrote
   */
  static List<Trial> of(Chain chain, int target, Set<Integer> stated, Set<String> units) {
    Trials trials = new Trials(chain, chain.behind(target, stated), units);
    for (int index : trials.open) {
      Chain.Use use = chain.uses().get(index);
      trials.numbersPutIn(use);
      trials.formula(use);
      trials.result(use);
    }
    trials.everyPoint();
    trials.add(Slip.EARLY_ROUNDING, chain.uses().get(target), "too few figures", Chain.Way.OURS);
    trials.rounding();
    return trials.all;
  }

  // Numbers put in

  private void numbersPutIn(Chain.Use use) {
    together(use, Slip.DIAMETER_FOR_RADIUS, Trials::isAcross, "every diameter or radius");
    together(use, Slip.CONVERSION, Trials::isAcross, "every diameter or radius");
    together(use, Slip.CONVERSION, symbol -> symbol.unit().equals("m"), "every length");
    for (int i = 0; i < use.count(); i++) {
      angle(use, i);
      diameter(use, i);
      friction(use, i);
      force(use, i);
      converted(use, i);
    }
  }

  private void angle(Chain.Use use, int i) {
    Symbol symbol = use.symbol(i);
    if (!symbol.unit().equals("rad")) {
      return;
    }
    boolean turn = symbol.meaning().contains("turn");
    boolean legs = symbol.meaning().contains("between the legs");
    if (turn || legs) {
      change(use, i, Slip.ANGLE_FOR_TURN, "180 deg less it as {}", x -> Math.PI - x);
    }
    change(use, i, Slip.DEGREES_FOR_RADIANS, "{} in degrees", Math::toDegrees);
    if (legs) {
      change(use, i, Slip.HALF_ANGLE, "half of {}", x -> x / 2);
      change(use, i, Slip.HALF_ANGLE, "twice {}", x -> 2 * x);
    }
    if (turn) {
      change(use, i, Slip.HALF_ANGLE, "{} from half the angle", x -> (Math.PI + x) / 2);
      change(use, i, Slip.HALF_ANGLE, "twice {}", x -> 2 * x);
      change(use, i, Slip.WRAPS_FOR_RADIANS, "{} as a count of wraps", x -> x / FULL_TURN);
    }
    change(use, i, Slip.PI_IS_THREE, "{} turned into radians", x -> x * 3 / Math.PI);
  }

  private static boolean isAcross(Symbol symbol) {
    return symbol.unit().equals("m")
        && (symbol.meaning().contains("diameter") || symbol.meaning().contains("radius"));
  }

  private void diameter(Chain.Use use, int i) {
    if (isAcross(use.symbol(i))) {
      change(use, i, Slip.DIAMETER_FOR_RADIUS, "half of {}", x -> x / 2);
      change(use, i, Slip.DIAMETER_FOR_RADIUS, "twice {}", x -> 2 * x);
    }
  }

  private void friction(Chain.Use use, int i) {
    if (isTensionRatio(use.symbol(i))) {
      change(use, i, Slip.FRICTION_REVERSED, "1 over {}", x -> 1 / x);
      change(use, i, Slip.NO_FRICTION, "1 as {}", x -> 1);
    }
    if (use.symbol(i).meaning().equals("coefficient of friction")) {
      change(use, i, Slip.NO_FRICTION, "0 as {}", x -> 0);
    }
  }

  private static boolean isTensionRatio(Symbol symbol) {
    return symbol.meaning().equals("tight-side over slack-side tension");
  }

  private void force(Chain.Use use, int i) {
    Symbol symbol = use.symbol(i);
    if (symbol.unit().equals("N") || symbol.unit().equals("kg")) {
      scale(use, i, Slip.MASS_FOR_FORCE, GRAVITY);
      scale(use, i, Slip.POUND_MASS_FOR_FORCE, GRAVITY_IN_FEET);
    }
    if (isPeak(symbol) || isPeak(chain.origin(use, i))) {
      weight(use)
          .ifPresent(
              weight -> change(use, i, Slip.STATIC_FOR_PEAK, "the weight as {}", x -> weight));
    }
    if (i == use.count() - 1 && use.what().toLowerCase(Locale.ROOT).contains("own weight")) {
      change(use, i, Slip.NO_OWN_WEIGHT, "nothing as {}", x -> 0);
    }
    if (use.formula().result().unit().equals("N.m") && symbol.unit().equals("m")) {
      change(use, i, Slip.NO_ARM, "1 as {}", x -> 1);
    }
  }

  private static boolean isPeak(Symbol symbol) {
    return symbol.unit().equals("N")
        && (symbol.meaning().contains("greatest tension")
            || symbol.meaning().contains("force of the stop")
            || symbol.meaning().contains("tension of the load leg")
            || symbol.meaning().equals("tension of the rope"));
  }

  /** The weight of the piece, from the use itself or the chain before it. */
  private Optional<Double> weight(Chain.Use use) {
    double mass = Double.NaN;
    for (int i = 0; i < use.count(); i++) {
      mass = use.symbol(i).meaning().equals("mass of the piece") ? use.input(i) : mass;
    }
    if (Double.isFinite(mass)) {
      return Optional.of(mass * GRAVITY);
    }
    for (Chain.Use earlier : chain.uses().subList(0, use.index() + 1)) {
      if (earlier.formula().result().meaning().contains("weight of the piece")) {
        return Optional.of(earlier.step().result());
      }
      for (int i = 0; i < earlier.count(); i++) {
        if (earlier.symbol(i).meaning().contains("weight of the piece")) {
          return Optional.of(earlier.input(i));
        }
      }
    }
    return Optional.empty();
  }

  private void converted(Chain.Use use, int i) {
    for (double factor : conversions(use.symbol(i))) {
      scale(use, i, Slip.CONVERSION, factor);
    }
    if (use.symbol(i).unit().equals("%")) {
      change(use, i, Slip.CONVERSION, "{} as a share", x -> x / 100);
    }
  }

  private Set<Double> conversions(Symbol symbol) {
    Set<Double> factors = new LinkedHashSet<>();
    if (metric) {
      factors.addAll(METRIC.getOrDefault(symbol.unit(), List.of()));
    }
    if (footPound) {
      factors.addAll(FOOT_POUND.getOrDefault(symbol.unit(), List.of()));
    }
    factors.addAll(BETWEEN.getOrDefault(symbol.unit(), List.of()));
    return factors;
  }

  private void scale(Chain.Use use, int i, Slip slip, double factor) {
    String text = QuantityText.number(factor, 5);
    change(use, i, slip, "{} over " + text, x -> x / factor);
    change(use, i, slip, "{} times " + text, x -> x * factor);
  }

  /** Changes one number put in: wherever it is given, or at this use alone. */
  private void change(Chain.Use use, int i, Slip slip, String how, DoubleUnaryOperator change) {
    String words = how.replace("{}", use.symbol(i).name());
    if (use.isGiven(i)) {
      long bits = Double.doubleToLongBits(use.input(i));
      String unit = use.symbol(i).unit();
      if (seen.add(List.of(slip, how, bits, unit))) {
        add(slip, use, words, (at, x) -> at.law(withGiven(at, x, bits, unit, change)));
      }
    } else {
      add(
          slip,
          use,
          words,
          (at, x) -> {
            if (at.index() != use.index()) {
              return at.law(x);
            }
            double[] changed = x.clone();
            changed[i] = change.applyAsDouble(x[i]);
            return at.law(changed);
          });
    }
  }

  private static double[] withGiven(
      Chain.Use use, double[] numbers, long bits, String unit, DoubleUnaryOperator change) {
    double[] changed = numbers.clone();
    for (int k = 0; k < changed.length; k++) {
      if (use.isGiven(k)
          && Double.doubleToLongBits(use.input(k)) == bits
          && use.symbol(k).unit().equals(unit)) {
        changed[k] = change.applyAsDouble(numbers[k]);
      }
    }
    return changed;
  }

  /** Changes all numbers of a sort that are given to the uses behind, or put in here. */
  private void together(Chain.Use use, Slip slip, Predicate<Symbol> sort, String what) {
    long count = use.formula().inputs().stream().filter(sort).count();
    if (count < 2) {
      return;
    }
    Set<Double> factors = new LinkedHashSet<>();
    if (slip == Slip.DIAMETER_FOR_RADIUS) {
      factors.add(2.0);
    } else {
      use.formula().inputs().stream().filter(sort).forEach(s -> factors.addAll(conversions(s)));
    }
    for (double factor : factors) {
      for (double f : new double[] {factor, 1 / factor}) {
        String how = what + " times " + QuantityText.number(f, 5);
        add(
            slip,
            use,
            how,
            (at, x) -> {
              double[] changed = x.clone();
              for (int k = 0; k < changed.length; k++) {
                if (at.index() == use.index() && sort.test(at.symbol(k))) {
                  changed[k] *= f;
                }
              }
              return at.law(changed);
            });
      }
    }
  }

  // The formula

  private void formula(Chain.Use use) {
    Equation equation = Equation.parse(use.formula().text());
    if (!equation.solved()) {
      return;
    }
    Map<String, String> units = new LinkedHashMap<>();
    use.formula().inputs().forEach(symbol -> units.put(symbol.name(), symbol.unit()));
    rewrite(use, equation, Slip.PI_IS_THREE, "pi", term -> isPi(term) ? three() : term);
    trigonometry(use, equation);
    powers(use, equation, units);
    legs(use);
    withoutWeight(use, equation);
    for (String text : ONE_SIDE.getOrDefault(use.formula().id(), List.of())) {
      replace(use, Slip.ROPE_ON_ONE_SIDE, text, Equation.parse(text));
    }
  }

  private static boolean isPi(Term term) {
    return term instanceof Term.Name name && name.name().equals(Term.Name.PI);
  }

  private static Term three() {
    return new Term.Num("3");
  }

  private void trigonometry(Chain.Use use, Equation equation) {
    List<Term> calls = parts(equation, term -> swapped(term) != term);
    for (Term call : calls) {
      rewrite(
          use,
          equation,
          Slip.SINE_FOR_COSINE,
          "one of them",
          term -> term.equals(call) ? swapped(term) : term);
    }
    if (calls.size() > 1) {
      rewrite(use, equation, Slip.SINE_FOR_COSINE, "all of them", Trials::swapped);
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

  private void powers(Chain.Use use, Equation equation, Map<String, String> units) {
    Set<Integer> exponents = new LinkedHashSet<>();
    for (Term power : parts(equation, term -> exponent(term) > 0)) {
      exponents.add(exponent(power));
      sizes(power, units).forEach(size -> power(use, equation, units, size, power::equals));
    }
    for (int exponent : exponents) {
      List<Term> alike = parts(equation, term -> exponent(term) == exponent);
      if (alike.size() > 1) {
        Set<Double> sizes = new LinkedHashSet<>();
        alike.forEach(power -> sizes.addAll(sizes(power, units)));
        sizes.forEach(size -> power(use, equation, units, size, alike::contains));
      }
    }
  }

  /** Tries one power less and more, where the person works in a unit of a size. */
  private void power(
      Chain.Use use,
      Equation equation,
      Map<String, String> units,
      double size,
      Predicate<Term> which) {
    for (int more : new int[] {-1, 1}) {
      rewrite(
          use,
          equation,
          Slip.WRONG_POWER,
          more < 0 ? "one power less" : "one power more",
          term ->
              which.test(term)
                  ? raised(term, more, sizes(term, units).contains(size) ? size : 1)
                  : term);
    }
  }

  private static Term raised(Term power, int more, double size) {
    Term base = ((Term.Joined) power).left();
    Term other = new Term.Joined('^', base, new Term.Num(String.valueOf(exponent(power) + more)));
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

  private Set<Double> sizes(Term power, Map<String, String> units) {
    Term base = ((Term.Joined) power).left();
    String unit = base instanceof Term.Name name ? units.getOrDefault(name.name(), "1") : "1";
    Set<Double> sizes = new LinkedHashSet<>();
    if (metric) {
      sizes.addAll(METRIC_UNITS.getOrDefault(unit, List.of(1.0)));
    }
    if (footPound) {
      sizes.addAll(FOOT_POUND_UNITS.getOrDefault(unit, List.of(1.0)));
    }
    return sizes;
  }

  private void legs(Chain.Use use) {
    int first = -1;
    int second = -1;
    for (int i = 0; i < use.count(); i++) {
      first = use.symbol(i).meaning().equals("tension of the first leg") ? i : first;
      second = use.symbol(i).meaning().equals("tension of the second leg") ? i : second;
    }
    if (first >= 0 && second >= 0) {
      both(use, first, second);
      both(use, second, first);
    }
  }

  private void both(Chain.Use use, int taken, int left) {
    add(
        Slip.ONE_TENSION,
        use,
        use.symbol(taken).name() + " for both",
        (at, x) -> {
          double[] changed = x.clone();
          if (at.index() == use.index()) {
            changed[left] = x[taken];
          }
          return at.law(changed);
        });
  }

  private void withoutWeight(Chain.Use use, Equation equation) {
    String text = WITHOUT_WEIGHT.get(use.formula().id());
    if (text != null) {
      replace(use, Slip.NO_OWN_WEIGHT, text, Equation.parse(text));
      return;
    }
    Set<String> heavy = new LinkedHashSet<>();
    for (Symbol symbol : use.formula().inputs()) {
      if (symbol.meaning().startsWith("weight of") || symbol.unit().equals("m/s2")) {
        heavy.add(symbol.name());
      }
    }
    rewrite(use, equation, Slip.NO_OWN_WEIGHT, "the summand with it", term -> lighter(term, heavy));
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

  /** The different parts of an equation of a kind. */
  private static List<Term> parts(Equation equation, Predicate<Term> kind) {
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

  private void rewrite(
      Chain.Use use, Equation equation, Slip slip, String how, UnaryOperator<Term> change) {
    Equation changed = equation.rewritten(change);
    if (!changed.equals(equation)) {
      replace(use, slip, how, changed);
    }
  }

  private void replace(Chain.Use use, Slip slip, String how, Equation equation) {
    add(
        slip,
        use,
        how,
        (at, x) -> at.index() == use.index() ? equation.value(named(at, x)) : at.law(x));
  }

  private static Map<String, Double> named(Chain.Use use, double[] numbers) {
    Map<String, Double> named = new LinkedHashMap<>();
    for (int i = 0; i < numbers.length; i++) {
      named.put(use.symbol(i).name(), numbers[i]);
    }
    return named;
  }

  // The result

  private void result(Chain.Use use) {
    Symbol result = use.formula().result();
    if (result.unit().equals("N") || result.unit().equals("kg")) {
      times(use, Slip.MASS_FOR_FORCE, GRAVITY);
      times(use, Slip.POUND_MASS_FOR_FORCE, GRAVITY_IN_FEET);
    }
    if (isPeak(result)) {
      weight(use)
          .ifPresent(
              weight ->
                  add(
                      Slip.STATIC_FOR_PEAK,
                      use,
                      "the weight as " + result.name(),
                      (at, x) -> at.index() == use.index() ? weight : at.law(x)));
    }
    if (isTensionRatio(result)) {
      add(
          Slip.FRICTION_REVERSED,
          use,
          "1 over " + result.name(),
          (at, x) -> at.index() == use.index() ? 1 / at.law(x) : at.law(x));
    }
    if (result.meaning().contains("wraps")) {
      times(use, Slip.WRAPS_FOR_RADIANS, FULL_TURN);
    }
    for (double factor : conversions(result)) {
      times(use, Slip.CONVERSION, factor);
    }
  }

  private void times(Chain.Use use, Slip slip, double factor) {
    String text = QuantityText.number(factor, 5);
    String name = use.formula().result().name();
    add(
        slip,
        use,
        name + " over " + text,
        (at, x) -> at.index() == use.index() ? at.law(x) / factor : at.law(x));
    add(
        slip,
        use,
        name + " times " + text,
        (at, x) -> at.index() == use.index() ? at.law(x) * factor : at.law(x));
  }

  /** Friction the wrong way round, or none, at all points together. */
  private void everyPoint() {
    List<Chain.Use> points =
        open.stream()
            .map(index -> chain.uses().get(index))
            .filter(use -> isTensionRatio(use.formula().result()))
            .toList();
    if (points.size() > 1) {
      Chain.Use first = points.get(0);
      String where = " at every point";
      add(
          Slip.FRICTION_REVERSED,
          first,
          "1 over " + first.formula().result().name() + where,
          (at, x) -> isTensionRatio(at.formula().result()) ? 1 / at.law(x) : at.law(x));
      add(
          Slip.NO_FRICTION,
          first,
          "1 as " + first.formula().result().name() + where,
          (at, x) -> isTensionRatio(at.formula().result()) ? 1 : at.law(x));
    }
  }

  private void rounding() {
    for (int figures = MOST_ROUNDED; figures >= 1; figures--) {
      int count = figures;
      String words = figures == 1 ? " to 1 figure" : " to " + figures + " figures";
      for (int index : open) {
        Chain.Use use = chain.uses().get(index);
        add(
            Slip.EARLY_ROUNDING,
            use,
            use.formula().result().name() + words,
            (at, x) -> at.index() == use.index() ? rounded(at.law(x), count) : at.law(x));
        add(
            Slip.EARLY_ROUNDING,
            use,
            "what goes in" + words,
            (at, x) -> at.law(at.index() == use.index() ? rounded(x, count) : x));
      }
      if (open.size() > 1) {
        add(
            Slip.EARLY_ROUNDING,
            chain.uses().get(open.iterator().next()),
            "every step" + words,
            (at, x) -> at.law(rounded(x, count)));
      }
    }
  }

  private static double[] rounded(double[] numbers, int figures) {
    double[] rounded = new double[numbers.length];
    for (int i = 0; i < numbers.length; i++) {
      rounded[i] = rounded(numbers[i], figures);
    }
    return rounded;
  }

  private static double rounded(double number, int figures) {
    return Double.isFinite(number)
        ? Double.parseDouble(QuantityText.number(number, figures))
        : number;
  }

  private void add(Slip slip, Chain.Use use, String how, Chain.Way way) {
    all.add(new Trial(slip, use.formula().id(), how, way));
  }
}
