package org.boleline.working.check;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.boleline.explain.Formula;
import org.boleline.explain.Refusal;
import org.boleline.explain.Refusals;
import org.boleline.explain.Symbol;
import org.boleline.working.Line;
import org.boleline.working.Worksheet;

/**
 * A person's calculation held against a worksheet: the first number that parts from ours, and which
 * slips would give it.
 *
 * <p>Numbers are compared in the person's order. A number agrees if it lies within the tolerance,
 * and a stated rounding, of ours. At the first that does not, every {@link Slip} is tried in its
 * formula and in those behind it whose numbers the person did not write down; all that give the
 * written number, to its last figure, are reported. Where none does, the cause is not found; none
 * is guessed. A written number of few figures matches more by chance: {@link #byChanceShare()}.
 *
 * <p>Numbers after the first departure are held against what follows from the person's own.
 *
 * <p>Immutable and thread-safe.
 */
public final class HandCheck {
  private static final int MOST_SPREADS = 8;

  /** Places told of one slip: a factor that is missing gives the same wherever it is. */
  private static final int MOST_PLACES = 3;

  /** A name with a count, for instance {@code FOR-1 (2)}. */
  private static final Pattern COUNTED = Pattern.compile("(\\S+) *\\(([0-9]{1,4})\\)");

  /** Slack for the last bits of a sum, over its size. */
  private static final double LAST_BITS = 1e-12;

  private final Worksheet sheet;
  private final List<HandRow> rows;
  private final List<Cause> causes;
  private final double byChance;

  private HandCheck(Worksheet sheet, List<HandRow> rows, List<Cause> causes, double byChance) {
    this.sheet = sheet;
    this.rows = List.copyOf(rows);
    this.causes = List.copyOf(causes);
    this.byChance = byChance;
  }

  /**
   * Holds a person's numbers against a worksheet.
   *
   * @param sheet our working
   * @param steps the person's numbers, in the order in which they were worked out; they may leave
   *     out steps of ours
   * @param tolerance how far they may lie off
   * @return what came of it
   * @throws org.boleline.explain.PlanRefusedException if there is no number, a name is not in the
   *     worksheet, a number has another form or kind of unit than its symbol, or a spread makes no
   *     sense; all at once, each with its place
   */
  public static HandCheck of(Worksheet sheet, List<HandStep> steps, Tolerance tolerance) {
    Chain chain = Chain.of(sheet);
    List<Entry> entries = Refusals.check(refusals -> entries(chain, steps, tolerance, refusals));
    List<Spread> spreads = Refusals.check(refusals -> spreads(chain, tolerance, refusals));
    return new Comparison(sheet, chain, entries, spreads, tolerance).check();
  }

  /** A person's number with the step of ours that it stands for. */
  private record Entry(HandStep stated, Chain.Use use, Written written) {
    static Optional<Entry> read(HandStep stated, Chain.Use use) {
      return Written.read(stated.value(), use.formula().result(), stated.figuresCount())
          .map(written -> new Entry(stated, use, written));
    }

    /** Whether it is ours, or follows from the numbers written before. */
    boolean agrees(Chain chain, Map<Integer, Double> before, Tolerance tolerance) {
      return isNear(use.step().result(), tolerance)
          || isNear(chain.replay(use.index(), before, Chain.Way.OURS), tolerance);
    }

    double half() {
      return stated.figuresCount() > 0 ? written.half() : 0;
    }

    boolean isNear(double number, Tolerance tolerance) {
      double most = tolerance.most(number, use.formula().result().unit());
      double slack = LAST_BITS * Math.abs(number);
      return Math.abs(written.value() - number) <= most + half() + slack;
    }
  }

  private record Spread(String symbol, double low, double high) {}

  private static List<Entry> entries(
      Chain chain, List<HandStep> steps, Tolerance tolerance, Refusals refusals) {
    List<Entry> entries = new ArrayList<>();
    if (steps.isEmpty()) {
      refusals.add(Refusal.Code.MISSING, "at least one number", "nothing");
    }
    Map<Integer, Double> before = new LinkedHashMap<>();
    Set<Integer> taken = new HashSet<>();
    int after = -1;
    for (int i = 0; i < steps.size(); i++) {
      HandStep stated = steps.get(i);
      Refusals at = refusals.at("step " + (i + 1));
      List<Chain.Use> uses = find(chain, stated.name(), after, taken);
      if (uses.isEmpty()) {
        at.at("name")
            .add(Refusal.Code.UNKNOWN_REFERENCE, wantsName(chain), Written.brief(stated.name()));
        continue;
      }
      after = uses.get(0).index();
      taken.add(after);
      if (stated.figuresCount() < 0 || stated.figuresCount() > HandStep.MOST_FIGURES) {
        at.at("figures")
            .add(
                Refusal.Code.OUT_OF_RANGE,
                "1 to " + HandStep.MOST_FIGURES + ", or nothing",
                String.valueOf(stated.figuresCount()));
        continue;
      }
      List<Entry> read = uses.stream().flatMap(use -> Entry.read(stated, use).stream()).toList();
      if (read.isEmpty()) {
        Symbol symbol = uses.get(0).formula().result();
        at.at("value")
            .add(Refusal.Code.WRONG_QUANTITY, Written.wants(symbol), Written.got(stated.value()));
        continue;
      }
      Entry entry =
          read.stream()
              .filter(one -> one.agrees(chain, before, tolerance))
              .findFirst()
              .orElse(read.get(0));
      taken.remove(after);
      after = entry.use.index();
      taken.add(after);
      before.put(after, entry.written.value());
      entries.add(entry);
    }
    return entries;
  }

  /**
   * The uses that a name may stand for: the one of a count, such as the second for {@code FOR-1
   * (2)}; without a count the next one in the order of the sheet, and the first one that is not
   * taken yet. A second route stands behind the others.
   */
  private static List<Chain.Use> find(Chain chain, String name, int after, Set<Integer> taken) {
    Matcher counted = COUNTED.matcher(name.strip());
    String called = counted.matches() ? counted.group(1) : name.strip();
    List<Chain.Use> all =
        chain.uses().stream().filter(use -> isCalled(use.formula(), called)).toList();
    if (counted.matches()) {
      int count = Integer.parseInt(counted.group(2));
      return all.stream()
          .skip(Math.max(0, count - 1L))
          .limit(Math.min(1, count))
          .filter(use -> !taken.contains(use.index()))
          .toList();
    }
    List<Chain.Use> free =
        all.stream()
            .filter(use -> !taken.contains(use.index()))
            .sorted(Comparator.comparing(Chain.Use::isSecondRoute))
            .toList();
    Optional<Chain.Use> next =
        free.stream()
            .filter(
                use -> use.index() > after && use.isSecondRoute() == free.get(0).isSecondRoute())
            .findFirst();
    return Stream.concat(next.stream(), free.stream().limit(1)).distinct().toList();
  }

  private static boolean isCalled(Formula formula, String name) {
    return formula.id().equals(name) || formula.result().name().equals(name);
  }

  private static String wantsName(Chain chain) {
    return chain.uses().stream()
        .map(use -> use.formula().id() + " or " + use.formula().result().name())
        .distinct()
        .collect(Collectors.joining(", ", "a step of the worksheet: ", ""));
  }

  private static List<Spread> spreads(Chain chain, Tolerance tolerance, Refusals refusals) {
    List<Spread> spreads = new ArrayList<>();
    Refusals at = refusals.at("spread");
    if (tolerance.spreads().size() > MOST_SPREADS) {
      at.add(
          Refusal.Code.TOO_LARGE,
          "at most " + MOST_SPREADS + " spreads",
          tolerance.spreads().size() + " spreads");
      return spreads;
    }
    for (Tolerance.Spread spread : tolerance.spreads()) {
      Refusals here = at.at(spread.symbol());
      Optional<Symbol> symbol = chain.given(spread.symbol());
      if (symbol.isEmpty()) {
        here.add(
            Refusal.Code.UNKNOWN_REFERENCE,
            "a number given to the worksheet: " + String.join(", ", chain.given()),
            Written.brief(spread.symbol()));
        continue;
      }
      if (spreads.stream().anyMatch(other -> other.symbol.equals(spread.symbol()))) {
        here.add(Refusal.Code.DUPLICATE, "one spread for each symbol", "another one");
        continue;
      }
      Optional<Written> low = Written.read(spread.low(), symbol.get(), 0);
      Optional<Written> high = Written.read(spread.high(), symbol.get(), 0);
      if (low.isEmpty() || high.isEmpty() || low.get().value() > high.get().value()) {
        here.add(
            Refusal.Code.WRONG_QUANTITY,
            "its least and greatest value, each " + Written.wants(symbol.get()),
            Written.got(spread.low()) + " and " + Written.got(spread.high()));
        continue;
      }
      spreads.add(new Spread(spread.symbol(), low.get().value(), high.get().value()));
    }
    return spreads;
  }

  /** The comparison while it is made. */
  private static final class Comparison {
    private final Worksheet sheet;
    private final Chain chain;
    private final List<Entry> entries;
    private final List<Spread> spreads;
    private final Tolerance tolerance;
    private final Map<Integer, Double> before = new LinkedHashMap<>();
    private List<Cause> causes = List.of();
    private double byChance;

    Comparison(
        Worksheet sheet,
        Chain chain,
        List<Entry> entries,
        List<Spread> spreads,
        Tolerance tolerance) {
      this.sheet = sheet;
      this.chain = chain;
      this.entries = entries;
      this.spreads = spreads;
      this.tolerance = tolerance;
    }

    HandCheck check() {
      List<HandRow> rows = new ArrayList<>();
      boolean parted = false;
      for (Entry entry : entries) {
        double carried = chain.replay(entry.use.index(), before, Chain.Way.OURS);
        HandRow.Outcome outcome = outcome(entry, carried, parted);
        if (outcome == HandRow.Outcome.PARTS) {
          parted = true;
          explain(entry, carried);
        }
        rows.add(new HandRow(entry.stated, entry.use.step(), entry.written, carried, outcome));
        before.put(entry.use.index(), entry.written.value());
      }
      return new HandCheck(sheet, rows, causes, byChance);
    }

    private HandRow.Outcome outcome(Entry entry, double carried, boolean parted) {
      double ours = entry.use.step().result();
      if (entry.isNear(ours, tolerance) || isWithinSpread(entry)) {
        return HandRow.Outcome.AGREES;
      }
      if (!parted) {
        return HandRow.Outcome.PARTS;
      }
      return entry.isNear(carried, tolerance)
          ? HandRow.Outcome.FOLLOWS
          : HandRow.Outcome.PARTS_AGAIN;
    }

    private boolean isWithinSpread(Entry entry) {
      if (spreads.isEmpty()) {
        return false;
      }
      double least = entry.use.step().result();
      double most = least;
      for (int corner = 0; corner < 1 << spreads.size(); corner++) {
        Map<String, Double> given = new LinkedHashMap<>();
        for (int i = 0; i < spreads.size(); i++) {
          Spread spread = spreads.get(i);
          given.put(spread.symbol, (corner >> i & 1) == 0 ? spread.low : spread.high);
        }
        double found =
            chain.replay(entry.use.index(), Map.of(), (use, x) -> use.law(use.withGiven(x, given)));
        if (Double.isFinite(found)) {
          least = Math.min(least, found);
          most = Math.max(most, found);
        }
      }
      return entry.written.value() >= least - entry.half()
          && entry.written.value() <= most + entry.half();
    }

    private void explain(Entry entry, double carried) {
      double slack = LAST_BITS * Math.abs(carried);
      boolean carries = Math.abs(entry.written.value() - carried) <= entry.written.half() + slack;
      boolean drifted = Math.abs(carried - entry.use.step().result()) > entry.written.half();
      if (carries && drifted) {
        String how = "the numbers written before, carried on";
        causes = List.of(Cause.at(Slip.EARLY_ROUNDING, chain.nameOf(entry.use), how));
        return;
      }
      PersonsUnits units =
          PersonsUnits.of(
              entries.stream().map(one -> one.written.unit()).collect(Collectors.toSet()));
      double ours = entry.use.step().result();
      Map<Integer, Double> rightly = new LinkedHashMap<>();
      before.keySet().forEach(i -> rightly.put(i, chain.uses().get(i).step().result()));
      Matches matches = new Matches(entry.written, ours);
      for (Trials.Trial trial :
          Trials.of(chain, entry.use.index(), before.keySet(), units, matches.rounding)) {
        double first = chain.replay(entry.use.index(), before, trial.way());
        double second = chain.replay(entry.use.index(), rightly, trial.way());
        if (Double.isFinite(first) && Double.isFinite(second)) {
          matches.offer(trial, Math.min(first, second), Math.max(first, second));
        }
      }
      causes = matches.causes();
      byChance = matches.byChance();
    }
  }

  /** Which trials give a written number, and how much of all numbers some trial gives. */
  private static final class Matches {
    private final Written written;
    private final double ours;
    private final double rounding;
    private final Map<Slip, Set<Cause.Place>> found = new EnumMap<>(Slip.class);
    private final Set<Slip> toldPlain = EnumSet.noneOf(Slip.class);
    private final List<double[]> windows = new ArrayList<>();

    Matches(Written written, double ours) {
      this.written = written;
      this.ours = ours == 0 ? written.value() : ours;
      this.rounding =
          written.value() == 0 ? 0 : Math.min(0.5, written.half() / Math.abs(written.value()));
    }

    void offer(Trials.Trial trial, double least, double most) {
      // a zero has no figures that could tell: what gives it, gives it whole
      double half =
          written.value() == 0 ? 0 : written.half() + LAST_BITS * Math.abs(written.value());
      boolean gives = written.value() >= least - half && written.value() <= most + half;
      // with another gravity a slip is told only if it takes one: those without come first
      if (gives && !(trial.pulled() && toldPlain.contains(trial.slip()))) {
        found.computeIfAbsent(trial.slip(), slip -> new LinkedHashSet<>()).add(trial.place());
        if (!trial.pulled()) {
          toldPlain.add(trial.slip());
        }
      }
      // as shares of our number, which turns both into positive ones
      double low = Math.min(least / ours, most / ours);
      double high = Math.max(least / ours, most / ours);
      if (low > 0) {
        double from = Math.max(-Math.log(10), Math.log(low * (1 - rounding)));
        double to = Math.min(Math.log(10), Math.log(high * (1 + rounding)));
        if (to > from) {
          windows.add(new double[] {from, to});
        }
      }
    }

    List<Cause> causes() {
      List<Cause> causes = new ArrayList<>();
      found.forEach(
          (slip, places) -> {
            int most = slip == Slip.EARLY_ROUNDING ? 1 : MOST_PLACES;
            causes.add(new Cause(slip, places.stream().limit(most).toList()));
          });
      // rounding explains any number that is only a little off, so it comes last
      causes.sort((a, b) -> Boolean.compare(isRounding(a), isRounding(b)));
      return causes;
    }

    private static boolean isRounding(Cause cause) {
      return cause.slip() == Slip.EARLY_ROUNDING;
    }

    double byChance() {
      windows.sort((a, b) -> Double.compare(a[0], b[0]));
      double length = 0;
      double reached = Double.NEGATIVE_INFINITY;
      for (double[] window : windows) {
        length += Math.max(0, window[1] - Math.max(window[0], reached));
        reached = Math.max(reached, window[1]);
      }
      return CheckFormulas.BY_CHANCE.value(length);
    }
  }

  /**
   * Returns the person's numbers beside ours.
   *
   * @return a row for each number, in the person's order
   */
  public List<HandRow> rows() {
    return rows;
  }

  /**
   * Returns the first number that does not agree.
   *
   * @return its row; empty if all agree
   */
  public Optional<HandRow> departure() {
    return rows.stream().filter(row -> row.outcome() == HandRow.Outcome.PARTS).findFirst();
  }

  /**
   * Returns the slips that give the first number that does not agree.
   *
   * @return the causes, each slip once, with the likeliest places where it was made, at most three;
   *     empty if all agree or no slip gives it
   */
  public List<Cause> causes() {
    return causes;
  }

  /**
   * Returns how often a number that is off by chance would match some slip, too: how little a found
   * cause may mean. The fewer figures were written, the greater.
   *
   * @return a share, 0 to 1; zero if all agree or the numbers before explain the departure
   * @equation {@link CheckFormulas#BY_CHANCE}
   */
  public double byChanceShare() {
    return byChance;
  }

  /**
   * Returns what came of it in a few words.
   *
   * @return {@code agrees}, {@code parts here, as if ...} or {@code parts here, cause not found}
   */
  public String finding() {
    if (departure().isEmpty()) {
      return HandRow.Outcome.AGREES.words();
    }
    return HandRow.Outcome.PARTS.words()
        + ", "
        + (causes.isEmpty()
            ? "cause not found"
            : causes.stream().map(Cause::toString).collect(Collectors.joining(", or ")));
  }

  /**
   * Returns the check as a worksheet: each number beside ours, what came of it, and the drift that
   * rounding makes. It can be shown as plain text, Markdown or HTML.
   *
   * @return the worksheet
   */
  public Worksheet worksheet() {
    List<Line> lines = new ArrayList<>();
    for (int i = 0; i < rows.size(); i++) {
      HandRow row = rows.get(i);
      boolean parts = row.outcome() == HandRow.Outcome.PARTS;
      String outcome = parts ? finding() : row.outcome().words();
      lines.add(new Line.Remark("Step " + (i + 1) + ", " + row.words() + ": " + outcome + "."));
    }
    if (byChance > 0) {
      lines.add(
          new Line.Remark(
              "A number that is off by chance would match one of the slips tried in "
                  + HandRow.percent(byChance)
                  + " of cases; the more figures are written, the fewer."));
    }
    List<HandRow> drifting = rows.stream().filter(row -> row.driftRatio().isPresent()).toList();
    if (!drifting.isEmpty()) {
      lines.add(
          Line.Table.of(
              "What rounding makes of each number",
              List.of(CheckFormulas.DRIFT, CheckFormulas.OWN_PART),
              List.of(CheckFormulas.DRIFT.result(), CheckFormulas.OWN_PART.result()),
              drifting.stream().map(HandCheck::name).toList(),
              drifting.stream()
                  .map(
                      row ->
                          new double[] {
                            row.driftRatio().orElseThrow(), row.ownPartRatio().orElseThrow()
                          })
                  .toArray(double[][]::new)));
    }
    return Worksheet.of("Hand check: " + sheet.title(), Collections.unmodifiableList(lines))
        .withFigures(2);
  }

  private static String name(HandRow row) {
    return row.step().formula().id() + ", " + row.step().formula().result().name();
  }

  @Override
  public String toString() {
    return sheet.title() + ": " + finding();
  }
}
