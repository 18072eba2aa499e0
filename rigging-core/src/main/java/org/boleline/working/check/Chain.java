package org.boleline.working.check;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.IntStream;
import org.boleline.explain.Formula;
import org.boleline.explain.Step;
import org.boleline.explain.Symbol;
import org.boleline.working.Line;
import org.boleline.working.Worksheet;

/**
 * The steps of a worksheet as a chain: which number put in is the result of which step before. So a
 * change anywhere can be carried on to any step behind it.
 *
 * <p>A number put in comes from the last step before that has the same result, bit for bit, in the
 * same unit, under the same name. Forces and moments are handed on under other names too, as the
 * slack side of one point is the tight side of the next, but for zero and one, which come about by
 * chance. Where there is none before, it comes from a step after it with the same result under the
 * same name that stands on given numbers alone: not every sheet is in order. What comes from no
 * step is given.
 */
final class Chain {
  private static final Set<String> HANDED_ON = Set.of("N", "N.m");

  /** One use of a formula. */
  static final class Use {
    private final int index;
    private final String what;
    private final Step step;
    private final boolean second;
    private final double[] inputs;
    private final int[] from;

    Use(int index, String what, Step step, boolean second, List<Use> before) {
      this.index = index;
      this.what = what;
      this.step = step;
      this.second = second;
      this.inputs = new double[step.formula().inputs().size()];
      this.from = new int[inputs.length];
      for (int i = 0; i < inputs.length; i++) {
        inputs[i] = step.input(i);
        from[i] = source(before, step.formula().inputs().get(i), inputs[i]);
      }
    }

    /** The index of the last step that gives a number, one of its own name first; -1 if none. */
    private static int source(List<Use> before, Symbol symbol, double value) {
      boolean telling = value != 0 && Math.abs(value) != 1;
      boolean handedOn = telling && HANDED_ON.contains(symbol.unit());
      int named = -1;
      int other = -1;
      for (Use earlier : before) {
        if (gives(earlier.step, symbol, value)) {
          named = isNamed(earlier, symbol) ? earlier.index : named;
          other = earlier.index;
        }
      }
      return named >= 0 || !handedOn ? named : other;
    }

    private static boolean gives(Step step, Symbol symbol, double value) {
      return Double.compare(step.result(), value) == 0
          && step.formula().result().unit().equals(symbol.unit());
    }

    private static boolean isNamed(Use use, Symbol symbol) {
      return use.formula().result().name().equals(symbol.name());
    }

    int index() {
      return index;
    }

    String what() {
      return what;
    }

    Step step() {
      return step;
    }

    /** Whether it is there only to check another number. */
    boolean isSecondRoute() {
      return second;
    }

    Formula formula() {
      return step.formula();
    }

    Symbol symbol(int input) {
      return formula().inputs().get(input);
    }

    int count() {
      return inputs.length;
    }

    double input(int input) {
      return inputs[input];
    }

    boolean isGiven(int input) {
      return from[input] < 0;
    }

    /** A copy of numbers put in, with others for those that are given under a name. */
    double[] withGiven(double[] numbers, Map<String, Double> given) {
      double[] changed = numbers.clone();
      for (int i = 0; i < changed.length; i++) {
        if (isGiven(i)) {
          changed[i] = given.getOrDefault(symbol(i).name(), changed[i]);
        }
      }
      return changed;
    }

    /** The result for other numbers put in, or NaN if there is none. */
    double law(double[] numbers) {
      try {
        return formula().value(numbers);
      } catch (IllegalArgumentException e) {
        return Double.NaN;
      }
    }
  }

  /** How a use comes to its result when something is done differently. */
  @FunctionalInterface
  interface Way {
    /** As the library does. */
    Way OURS = Use::law;

    /** The result of a use for numbers put in, or NaN if there is none. */
    double result(Use use, double[] inputs);
  }

  private final List<Use> uses;

  private Chain(List<Use> uses) {
    this.uses = uses;
  }

  static Chain of(Worksheet sheet) {
    List<Use> uses = new ArrayList<>();
    for (Line line : sheet.lines()) {
      if (line instanceof Line.Calculation calculation) {
        add(uses, calculation.what(), calculation.step(), false);
      } else if (line instanceof Line.TwoRoutes two) {
        add(uses, two.what(), two.first(), false);
        add(uses, two.what(), two.second(), true);
      }
    }
    linkBack(uses);
    return new Chain(List.copyOf(uses));
  }

  /** Takes numbers from steps that stand on the sheet after their use. */
  private static void linkBack(List<Use> uses) {
    for (Use use : uses) {
      for (Use later : uses.subList(use.index + 1, uses.size())) {
        boolean plain = Arrays.stream(later.from).allMatch(from -> from < 0);
        for (int i = 0; i < use.count() && plain; i++) {
          if (use.isGiven(i)
              && Use.isNamed(later, use.symbol(i))
              && Use.gives(later.step, use.symbol(i), use.input(i))) {
            use.from[i] = later.index;
          }
        }
      }
    }
  }

  private static void add(List<Use> uses, String what, Step step, boolean second) {
    for (Use use : uses) {
      if (use.step.equals(step)) {
        return;
      }
    }
    uses.add(new Use(uses.size(), what, step, second, uses));
  }

  List<Use> uses() {
    return uses;
  }

  /** The id of a use's formula, with a count where it stands several times. */
  String nameOf(Use use) {
    String id = use.formula().id();
    List<Use> alike = uses.stream().filter(other -> other.formula().id().equals(id)).toList();
    return alike.size() == 1 ? id : id + " (" + (alike.indexOf(use) + 1) + ")";
  }

  /** The symbol of the result that a number put in comes from; its own symbol if it is given. */
  Symbol origin(Use use, int input) {
    return use.isGiven(input) ? use.symbol(input) : uses.get(use.from[input]).formula().result();
  }

  /** The names of the numbers given. */
  Set<String> given() {
    Set<String> names = new LinkedHashSet<>();
    for (Use use : uses) {
      IntStream.range(0, use.count())
          .filter(use::isGiven)
          .forEach(i -> names.add(use.symbol(i).name()));
    }
    return names;
  }

  /** The symbol of a number given, if there is one of that name. */
  Optional<Symbol> given(String name) {
    return uses.stream()
        .flatMap(use -> IntStream.range(0, use.count()).filter(use::isGiven).mapToObj(use::symbol))
        .filter(symbol -> symbol.name().equals(name))
        .findFirst();
  }

  /** The uses that a result hangs on, itself too, without going behind the given ones. */
  SortedSet<Integer> behind(int target, Set<Integer> stopAt) {
    SortedSet<Integer> found = new TreeSet<>();
    collect(target, stopAt, found);
    return found;
  }

  private void collect(int index, Set<Integer> stopAt, SortedSet<Integer> found) {
    if (!found.add(index)) {
      return;
    }
    for (int earlier : uses.get(index).from) {
      if (earlier >= 0 && !stopAt.contains(earlier)) {
        collect(earlier, stopAt, found);
      }
    }
  }

  /**
   * Works out a result anew.
   *
   * @param target the use
   * @param stated results that are taken as they are; not that of the target itself
   * @param way how each use comes to its result
   * @return the result; NaN if there is none
   */
  double replay(int target, Map<Integer, Double> stated, Way way) {
    Map<Integer, Double> known = new TreeMap<>(stated);
    known.remove(target);
    return carried(target, known, way);
  }

  private double carried(int index, Map<Integer, Double> known, Way way) {
    if (!known.containsKey(index)) {
      Use use = uses.get(index);
      double[] inputs = use.inputs.clone();
      for (int i = 0; i < inputs.length; i++) {
        if (use.from[i] >= 0) {
          inputs[i] = carried(use.from[i], known, way);
        }
      }
      boolean finite = Arrays.stream(inputs).allMatch(Double::isFinite);
      known.put(index, finite ? way.result(use, inputs) : Double.NaN);
    }
    return known.getOrDefault(index, Double.NaN);
  }
}
