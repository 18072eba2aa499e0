package org.boleline.working.check;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.DoubleUnaryOperator;
import java.util.function.Predicate;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import org.boleline.explain.Symbol;
import org.boleline.units.QuantityText;

/** All slips that can be tried on the uses of formulas that stand behind one number. */
final class Trials {
  /**
   * One slip at one place.
   *
   * @param slip the slip
   * @param place where, and what was done there
   * @param reach what it changes
   * @param pulled whether the person takes another gravity than the sheet, too
   * @param way the calculation with it
   */
  record Trial(Slip slip, Cause.Place place, Reach reach, boolean pulled, Chain.Way way) {}

  /** One number put in: of which use, and which of its numbers. */
  private record Input(int use, int index) {}

  private static final double STANDARD_GRAVITY = 9.80665;

  /** The acceleration of gravity as people take it, in m/s2. */
  private static final List<Double> METRIC_GRAVITY = List.of(STANDARD_GRAVITY, 9.81, 9.8);

  private static final List<Double> FOOT_GRAVITY = List.of(32.2 * PersonsUnits.FOOT);

  /** A number of fewer figures fits 9.81 where it fits 9.80665, nearly always. */
  private static final double TELLS_GRAVITY = 1e-3;

  /** What it is rounded to, which is a slip: too rough for three figures. */
  private static final double ROUGH_GRAVITY = 10;

  private static final double ROUGH_FOOT_GRAVITY = 32 * PersonsUnits.FOOT;

  private static final String ACCELERATION = "m/s2";

  /** Enough for 9.80665. */
  private static final int FACTOR_FIGURES = 6;

  private static final double FULL_TURN = 2 * Math.PI;
  private static final int MOST_ROUNDED = 3;

  /** To how many figures people round numbers with a unit at least. */
  private static final int FEWEST_ROUNDED = 2;

  private final Chain chain;
  private final int target;
  private final Set<Integer> open;
  private final PersonsUnits units;
  private final boolean tellsGravity;

  /** The gravity that the sheet takes; a standard one if it takes none. */
  private final double stated;

  /** The gravity that the person takes. */
  private final double taken;

  private final List<Trial> all = new ArrayList<>();
  private final Set<List<Object>> seen = new LinkedHashSet<>();

  private Trials(
      Chain chain,
      int target,
      Set<Integer> open,
      PersonsUnits units,
      boolean tellsGravity,
      OptionalDouble taken) {
    this.chain = chain;
    this.target = target;
    this.open = open;
    this.units = units;
    this.tellsGravity = tellsGravity;
    this.stated = givenGravity().findFirst().orElse(STANDARD_GRAVITY);
    this.taken = taken.orElse(stated);
  }

  /**
   * All trials.
   *
   * @param chain the chain
   * @param target the use whose result is looked at
   * @param stated the uses whose results the person wrote down, so that no slip hides behind them
   * @param units the units in which the person works
   * @param rounding half a unit of the last figure over the number that the person wrote
   */
  static List<Trial> of(
      Chain chain, int target, Set<Integer> stated, PersonsUnits units, double rounding) {
    Set<Integer> open = chain.behind(target, stated);
    boolean tells = rounding < TELLS_GRAVITY;
    Trials trials = new Trials(chain, target, open, units, tells, OptionalDouble.empty());
    trials.slips();
    if (tells && trials.takesGravity()) {
      for (double other : trials.otherGravities()) {
        Trials pulled = new Trials(chain, target, open, units, true, OptionalDouble.of(other));
        pulled.slips();
        trials.all.addAll(pulled.all);
      }
    }
    trials.rounding();
    trials.all.sort(Comparator.comparing(Trial::pulled).thenComparing(Trial::reach));
    return trials.all;
  }

  private void slips() {
    for (int index : open) {
      Chain.Use use = chain.uses().get(index);
      numbersPutIn(use);
      formula(use);
      result(use);
    }
    everyPoint();
  }

  // Gravity

  private boolean takesGravity() {
    return givenGravity().findAny().isPresent();
  }

  private DoubleStream givenGravity() {
    return open.stream()
        .map(index -> chain.uses().get(index))
        .flatMapToDouble(
            use ->
                IntStream.range(0, use.count())
                    .filter(i -> isGravity(use, i))
                    .mapToDouble(use::input));
  }

  private static boolean isGravity(Chain.Use use, int input) {
    return use.isGiven(input) && use.symbol(input).unit().equals(ACCELERATION);
  }

  /** What a person may take for gravity beside the sheet's. */
  private Set<Double> otherGravities() {
    Set<Double> others = new TreeSet<>(METRIC_GRAVITY);
    if (units.footPound()) {
      others.addAll(FOOT_GRAVITY);
    }
    others.remove(stated);
    return others;
  }

  /**
   * Factors between a mass and its weight: that of the sheet's gravity, or any that people take.
   */
  private Set<Double> gravities() {
    Set<Double> factors = new TreeSet<>(Set.of(taken));
    if (tellsGravity && !takesGravity()) {
      factors.addAll(otherGravities());
    }
    return factors;
  }

  private static String gravityText(double gravity) {
    return FOOT_GRAVITY.contains(gravity)
        ? QuantityText.number(gravity / PersonsUnits.FOOT, 3) + " ft/s2"
        : QuantityText.number(gravity, FACTOR_FIGURES);
  }

  private static double[] withGravity(Chain.Use use, double[] numbers, double gravity) {
    double[] changed = numbers.clone();
    for (int k = 0; k < changed.length; k++) {
      changed[k] = isGravity(use, k) ? gravity : changed[k];
    }
    return changed;
  }

  // Numbers put in

  private void numbersPutIn(Chain.Use use) {
    together(use, Slip.DIAMETER_FOR_RADIUS, PersonsUnits::isAcross, "every diameter or radius");
    together(use, Slip.CONVERSION, PersonsUnits::isAcross, "every diameter or radius");
    together(use, Slip.CONVERSION, symbol -> symbol.unit().equals("m"), "every length");
    for (int i = 0; i < use.count(); i++) {
      angle(use, i);
      diameter(use, i);
      friction(use, i);
      gravity(use, i);
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
    // what turns the rope further has no angle between two legs
    boolean bent = turn && use.input(i) <= Math.PI;
    if (bent || legs) {
      change(use, i, Slip.ANGLE_FOR_TURN, "180 deg less it as {}", x -> Math.PI - x);
      change(use, i, Slip.HALF_ANGLE, "twice {}", x -> 2 * x);
    }
    if (legs) {
      change(use, i, Slip.HALF_ANGLE, "half of {}", x -> x / 2);
    }
    if (bent) {
      change(use, i, Slip.HALF_ANGLE, "{} from half the angle", x -> (Math.PI + x) / 2);
    }
    if (turn) {
      change(use, i, Slip.WRAPS_FOR_RADIANS, "{} as a count of wraps", x -> x / FULL_TURN);
    }
    if (!turn && !legs) {
      change(use, i, Slip.SINE_FOR_COSINE, "90 deg less {}", x -> Math.PI / 2 - x);
    }
    change(use, i, Slip.DEGREES_FOR_RADIANS, "{} in degrees", Math::toDegrees);
    change(use, i, Slip.PI_IS_THREE, "{} turned into radians", x -> x * 3 / Math.PI);
  }

  private void diameter(Chain.Use use, int i) {
    if (PersonsUnits.isAcross(use.symbol(i))) {
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
    if (use.symbol(i).meaning().startsWith("slack over tight tension of a sheave")) {
      change(use, i, Slip.NO_FRICTION, "1 as {}", x -> 1);
    }
  }

  private void gravity(Chain.Use use, int i) {
    if (!isGravity(use, i) || taken != stated) {
      return;
    }
    for (double other : otherGravities()) {
      change(use, i, Slip.OTHER_GRAVITY, gravityText(other) + " as {}", x -> other);
    }
    change(use, i, Slip.OTHER_GRAVITY, "10 as {}", x -> ROUGH_GRAVITY);
    if (units.footPound()) {
      change(use, i, Slip.OTHER_GRAVITY, "32 ft/s2 as {}", x -> ROUGH_FOOT_GRAVITY);
    }
  }

  private static boolean isTensionRatio(Symbol symbol) {
    return symbol.meaning().equals("tight-side over slack-side tension");
  }

  private void force(Chain.Use use, int i) {
    Symbol symbol = use.symbol(i);
    if (symbol.unit().equals("N") || symbol.unit().equals("kg")) {
      for (double gravity : gravities()) {
        scale(use, i, Slip.MASS_FOR_FORCE, gravity);
      }
      scale(use, i, Slip.POUND_MASS_FOR_FORCE, taken / PersonsUnits.FOOT);
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
      return Optional.of(mass * taken);
    }
    for (Chain.Use earlier : chain.uses().subList(0, use.index() + 1)) {
      if (earlier.formula().result().meaning().contains("weight of the piece")) {
        return Optional.of(earlier.step().result() * taken / stated);
      }
      for (int i = 0; i < earlier.count(); i++) {
        if (earlier.symbol(i).meaning().contains("weight of the piece")) {
          return Optional.of(earlier.input(i) * taken / stated);
        }
      }
    }
    return Optional.empty();
  }

  private void converted(Chain.Use use, int i) {
    for (double factor : units.conversions(use.symbol(i))) {
      scale(use, i, Slip.CONVERSION, factor);
    }
    if (use.symbol(i).unit().equals("%")) {
      change(use, i, Slip.CONVERSION, "{} as a share", x -> x / 100);
    }
  }

  private void scale(Chain.Use use, int i, Slip slip, double factor) {
    String text = QuantityText.number(factor, FACTOR_FIGURES);
    change(use, i, slip, "{} over " + text, x -> x / factor);
    change(use, i, slip, "{} times " + text, x -> x * factor);
  }

  /**
   * Changes one number put in. A given one stands at several places: changed is each with its
   * number, each with its meaning too, or an angle or friction at one point alone.
   */
  private void change(Chain.Use use, int i, Slip slip, String how, DoubleUnaryOperator change) {
    String words = how.replace("{}", use.symbol(i).name());
    Set<Input> alone = Set.of(new Input(use.index(), i));
    if (!use.isGiven(i)) {
      add(slip, use, Reach.BETWEEN, words, changed(alone, change));
      return;
    }
    String meaning = use.symbol(i).meaning();
    Set<Input> named = same(use, i, symbol -> symbol.meaning().equals(meaning));
    Set<Input> every = same(use, i, symbol -> true);
    if (seen.add(List.of(slip, how, named))) {
      add(slip, use, Reach.GIVEN, words, changed(named, change));
    }
    if (isPure(use.symbol(i)) && seen.add(List.of(slip, how, alone))) {
      add(slip, use, Reach.GIVEN, words + ", there alone", changed(alone, change));
    }
    if (seen.add(List.of(slip, how, every))) {
      add(slip, use, Reach.SEVERAL, words + ", and wherever it stands", changed(every, change));
    }
  }

  private static Chain.Way changed(Set<Input> inputs, DoubleUnaryOperator change) {
    return (at, x) -> {
      double[] changed = x.clone();
      for (int k = 0; k < changed.length; k++) {
        if (inputs.contains(new Input(at.index(), k))) {
          changed[k] = change.applyAsDouble(x[k]);
        }
      }
      return at.law(changed);
    };
  }

  /** Where a given number stands, under a symbol of a sort. */
  private Set<Input> same(Chain.Use use, int i, Predicate<Symbol> sort) {
    Set<Input> found = new LinkedHashSet<>();
    for (int index : open) {
      Chain.Use other = chain.uses().get(index);
      for (int k = 0; k < other.count(); k++) {
        if (other.isGiven(k)
            && Double.compare(other.input(k), use.input(i)) == 0
            && other.symbol(k).unit().equals(use.symbol(i).unit())
            && sort.test(other.symbol(k))) {
          found.add(new Input(index, k));
        }
      }
    }
    return found;
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
      use.formula().inputs().stream()
          .filter(sort)
          .forEach(s -> factors.addAll(units.conversions(s)));
    }
    for (double factor : factors) {
      for (double f : new double[] {factor, 1 / factor}) {
        String how = what + " times " + QuantityText.number(f, FACTOR_FIGURES);
        Set<Input> inputs = new LinkedHashSet<>();
        for (int k = 0; k < use.count(); k++) {
          if (sort.test(use.symbol(k))) {
            inputs.add(new Input(use.index(), k));
          }
        }
        add(slip, use, Reach.SEVERAL, how, changed(inputs, x -> x * f));
      }
    }
  }

  // The formula

  private void formula(Chain.Use use) {
    for (Misreadings.Misreading misread : Misreadings.of(use.formula(), units)) {
      add(
          misread.slip(),
          use,
          misread.reach(),
          misread.how(),
          (at, x) ->
              at.index() == use.index() ? misread.equation().value(named(at, x)) : at.law(x));
    }
    legs(use);
  }

  private static Map<String, Double> named(Chain.Use use, double[] numbers) {
    Map<String, Double> named = new LinkedHashMap<>();
    for (int i = 0; i < numbers.length; i++) {
      named.put(use.symbol(i).name(), numbers[i]);
    }
    return named;
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
      if (use.formula().result().unit().equals("N")) {
        int one = first;
        int other = second;
        String how = use.symbol(first).name() + " + " + use.symbol(second).name();
        add(
            Slip.LEGS_ADDED,
            use,
            Reach.GIVEN,
            how,
            (at, x) -> at.index() == use.index() ? x[one] + x[other] : at.law(x));
      }
    }
    if (use.formula().result().meaning().equals("force on the point over rope tension")) {
      add(
          Slip.LEGS_ADDED,
          use,
          Reach.GIVEN,
          "2 as " + use.formula().result().name(),
          (at, x) -> at.index() == use.index() ? 2 : at.law(x));
    }
  }

  private void both(Chain.Use use, int kept, int left) {
    add(
        Slip.ONE_TENSION,
        use,
        Reach.GIVEN,
        use.symbol(kept).name() + " for both",
        (at, x) -> {
          double[] changed = x.clone();
          if (at.index() == use.index()) {
            changed[left] = x[kept];
          }
          return at.law(changed);
        });
  }

  // The result

  private void result(Chain.Use use) {
    Symbol result = use.formula().result();
    String name = result.name();
    if (result.unit().equals("N") || result.unit().equals("kg")) {
      for (double gravity : gravities()) {
        times(use, Slip.MASS_FOR_FORCE, gravity);
      }
      times(use, Slip.POUND_MASS_FOR_FORCE, taken / PersonsUnits.FOOT);
    }
    if (isPeak(result)) {
      weight(use)
          .ifPresent(
              weight -> resulting(use, Slip.STATIC_FOR_PEAK, "the weight as " + name, x -> weight));
    }
    if (isTensionRatio(result)) {
      resulting(use, Slip.FRICTION_REVERSED, "1 over " + name, x -> 1 / x);
    }
    if (result.meaning().contains("wraps")) {
      times(use, Slip.WRAPS_FOR_RADIANS, FULL_TURN);
    }
    if (result.least() < 0) {
      resulting(use, Slip.WRONG_SIGN, "the other sign as " + name, x -> -x);
    }
    for (double factor : units.conversions(result)) {
      times(use, Slip.CONVERSION, factor);
    }
  }

  private void times(Chain.Use use, Slip slip, double factor) {
    String text = QuantityText.number(factor, FACTOR_FIGURES);
    String name = use.formula().result().name();
    resulting(use, slip, name + " over " + text, x -> x / factor);
    resulting(use, slip, name + " times " + text, x -> x * factor);
  }

  /** Changes the result of one use. */
  private void resulting(Chain.Use use, Slip slip, String how, DoubleUnaryOperator change) {
    add(
        slip,
        use,
        use.index() == target ? Reach.WRITTEN : Reach.BETWEEN,
        how,
        (at, x) -> at.index() == use.index() ? change.applyAsDouble(at.law(x)) : at.law(x));
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
          Reach.SEVERAL,
          "1 over " + first.formula().result().name() + where,
          (at, x) -> isTensionRatio(at.formula().result()) ? 1 / at.law(x) : at.law(x));
      add(
          Slip.NO_FRICTION,
          first,
          Reach.SEVERAL,
          "1 as " + first.formula().result().name() + where,
          (at, x) -> isTensionRatio(at.formula().result()) ? 1 : at.law(x));
    }
  }

  private void rounding() {
    Chain.Use last = chain.uses().get(target);
    add(Slip.EARLY_ROUNDING, last, Reach.GIVEN, "too few figures", Chain.Way.OURS);
    for (int figures = MOST_ROUNDED; figures >= 1; figures--) {
      for (int index : open) {
        rounded(chain.uses().get(index), figures);
      }
      if (open.size() > 1 && figures >= FEWEST_ROUNDED) {
        int count = figures;
        add(
            Slip.EARLY_ROUNDING,
            chain.uses().get(open.iterator().next()),
            Reach.SEVERAL,
            "every step" + figures(figures),
            (at, x) -> at.law(rounded(x, count)));
      }
    }
  }

  /** Rounds what goes in and what comes out; to one figure only pure numbers and angles. */
  private void rounded(Chain.Use use, int figures) {
    Symbol result = use.formula().result();
    if (figures >= FEWEST_ROUNDED || isPure(result)) {
      resulting(
          use, Slip.EARLY_ROUNDING, result.name() + figures(figures), x -> rounded(x, figures));
    }
    if (figures >= FEWEST_ROUNDED || use.formula().inputs().stream().anyMatch(Trials::isPure)) {
      add(
          Slip.EARLY_ROUNDING,
          use,
          Reach.BETWEEN,
          "what goes in" + figures(figures),
          (at, x) -> {
            double[] changed = x.clone();
            for (int k = 0; k < changed.length; k++) {
              boolean rounds = figures >= FEWEST_ROUNDED || isPure(at.symbol(k));
              if (at.index() == use.index() && rounds) {
                changed[k] = rounded(x[k], figures);
              }
            }
            return at.law(changed);
          });
    }
  }

  private static boolean isPure(Symbol symbol) {
    return symbol.unit().equals("1") || symbol.unit().equals("rad");
  }

  private static String figures(int figures) {
    return figures == 1 ? " to 1 figure" : " to " + figures + " figures";
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

  private void add(Slip slip, Chain.Use use, Reach reach, String how, Chain.Way way) {
    Cause.Place place = new Cause.Place(chain.nameOf(use), how);
    all.add(
        taken == stated
            ? new Trial(slip, place, reach, false, way)
            : new Trial(
                slip,
                new Cause.Place(place.formula(), how + ", with gravity as " + gravityText(taken)),
                reach,
                true,
                (at, x) -> way.result(at, withGravity(at, x, taken))));
  }
}
