package org.boleline.examples.compare;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.function.UnaryOperator;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import javax.measure.Quantity;
import org.boleline.explain.Caution;
import org.boleline.explain.CautionCode;
import org.boleline.picture.RangePlot;
import org.boleline.plan.Arrangement;
import org.boleline.plan.Plan;
import org.boleline.rope.Motion;
import org.boleline.study.Figure;
import org.boleline.study.FoundAt;
import org.boleline.study.PlannedRanges;
import org.boleline.study.QuantileFound;
import org.boleline.study.Range;
import org.boleline.study.RangeResult;
import org.boleline.study.RangeStudy;
import org.boleline.study.RangeWatch;
import org.boleline.study.Reading;
import org.boleline.study.ReadingRange;
import org.boleline.study.SpreadShare;
import org.boleline.units.Kind;
import org.boleline.units.Si;

/** Fills the table of ranges: for each arrangement how far its headline figures may be off. */
final class RangeRows {
  private static final String NOTHING = "–";
  private static final int WIDEST_NAME = 44;
  private static final String RISE = "/aboutToRise";
  private static final Pattern POINT = Pattern.compile("/contacts/([0-9]+)/forceMagnitude");
  private static final Pattern STEM = Pattern.compile("/stems/([0-9]+)/(.*)");
  private static final double[] SHARES = {0.05, 0.5, 0.95};
  private static final double[] BARS = {0.05, 0.25, 0.5, 0.75, 0.95};

  /** Rows from which shares are found: standard errors are a tenth of a share or less. */
  private static final int CAUSE_ROWS = 128;

  /** Shares are told in steps of this, as they are no surer; what is less than half is not. */
  private static final double CAUSE_STEP = 0.05;

  private static final int MOST_CAUSES = 5;

  private RangeRows() {}

  /** Studies the ranges that a plan states; none if it states none. */
  static List<RangeResult> study(Plan plan) {
    return study(plan, study -> study);
  }

  /** Studies what the ranges come from, by samples of its own. */
  static List<RangeResult> studyCauses(Plan plan) {
    return study(plan, study -> study.withSamples(CAUSE_ROWS).withShares(CAUSE_ROWS));
  }

  /** On all processors: the library starts no thread itself, and any number gives the same. */
  private static List<RangeResult> study(Plan plan, UnaryOperator<RangeStudy> wish) {
    PlannedRanges planned = PlannedRanges.of(plan).orElse(null);
    if (planned == null) {
      return List.of();
    }
    ExecutorService executor =
        Executors.newFixedThreadPool(Runtime.getRuntime().availableProcessors());
    try {
      List<RangeResult> results = new ArrayList<>();
      for (RangeStudy study : planned.studies()) {
        results.add(wish.apply(study).run(RangeWatch.NONE, executor));
      }
      return results;
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new IllegalStateException("interrupted", e);
    } finally {
      executor.shutdown();
    }
  }

  /** Says what the table shows. */
  static String text(List<RangeResult> results) {
    if (results.isEmpty()) {
      return "";
    }
    String drawn =
        results.get(0).study().samples()
            + " samples of each arrangement, each with all inputs drawn anew from the ranges that"
            + " the plan states. Least and greatest are those found, not proven.";
    return results.stream().allMatch(RangeResult::hasDistributionsOnly)
        ? drawn + " The percent columns say how many samples stay below."
        : drawn
            + " Where an input is an interval, nobody knows which part of it is likelier: no chance"
            + " follows, only ends.";
  }

  /** The table; without rows if nothing was studied. */
  static Table table(List<RangeResult> results, UnitSystem units) {
    boolean quantiles = results.stream().anyMatch(RangeResult::hasDistributionsOnly);
    List<Table.Row> rows = new ArrayList<>();
    for (int i = 0; i < results.size(); i++) {
      RangeResult result = results.get(i);
      if (!rows.isEmpty()) {
        rows.add(new Table.Row("", "", List.of()));
      }
      rows.add(
          new Table.Row(
              i
                  + 1
                  + "  "
                  + Page.shortened(Page.clean(result.study().arrangement()), WIDEST_NAME)
                  + (isHeld(result) ? ", held" : ""),
              "",
              List.of()));
      for (ReadingRange range : result.readings()) {
        rows.add(row(result, range, quantiles, units));
      }
    }
    return new Table(
        quantiles
            ? List.of("as planned", "least", "5%", "50%", "95%", "greatest")
            : List.of("as planned", "least", "greatest"),
        List.copyOf(rows));
  }

  private static Table.Row row(
      RangeResult result, ReadingRange range, boolean quantiles, UnitSystem units) {
    List<Optional<Figure>> figures = new ArrayList<>();
    figures.add(range.asPlanned().figure());
    figures.add(range.least().map(FoundAt::value));
    if (quantiles) {
      for (double share : SHARES) {
        figures.add(
            result.hasDistributionsOnly()
                ? range.quantile(share).map(QuantileFound::value)
                : Optional.empty());
      }
    }
    figures.add(range.greatest().map(FoundAt::value));
    double greatest =
        figures.stream()
            .flatMap(Optional::stream)
            .mapToDouble(f -> Math.abs(si(f)))
            .max()
            .orElse(0);
    Optional<Kind<?>> kind =
        figures.stream().flatMap(Optional::stream).findFirst().flatMap(Figure::kind);
    Scale scale = units.scale(kind, greatest);
    int decimals = scale.decimals(greatest);
    return new Table.Row(
        "  " + label(range.reading(), result.study().plan(), result.study().arrangement()),
        scale.shown(),
        figures.stream()
            .map(f -> f.map(x -> scale.bare(si(x), decimals)).orElse(NOTHING))
            .toList());
  }

  /** Whether a plan has such an arrangement, and it is held. */
  static boolean isHeld(Plan plan, String arrangement) {
    return plan.arrangements().stream()
        .anyMatch(way -> way.id().equals(arrangement) && way.motion() == Motion.HELD);
  }

  private static boolean isHeld(RangeResult result) {
    return isHeld(result.study().plan(), result.study().arrangement());
  }

  static double si(Figure figure) {
    return figure.kind().map(kind -> si(figure, kind)).orElseGet(figure::ratio);
  }

  private static <Q extends Quantity<Q>> double si(Figure figure, Kind<Q> kind) {
    return Si.value(figure.in(kind), kind, "figure");
  }

  /**
   * The reading in the words of the first table; where some of the arrangements are held, with the
   * end that is read.
   */
  static String label(Reading reading, Plan plan, String... arrangements) {
    List<String> held = Arrays.stream(arrangements).filter(id -> isHeld(plan, id)).toList();
    String label = plain(reading, plan);
    Optional<String> end = reading.end(Motion.HELD);
    if (held.isEmpty() || end.isEmpty() || reading.pointer().startsWith(RISE)) {
      return label;
    }
    List<String> ids = plan.arrangements().stream().map(Arrangement::id).toList();
    String of =
        held.size() == arrangements.length ? "" : "with " + (ids.indexOf(held.get(0)) + 1) + " ";
    return label + ", " + of + end.get();
  }

  /** The reading in the words of the first table. */
  private static String plain(Reading reading, Plan plan) {
    if (reading.pointer().startsWith(RISE)) {
      Reading run = Reading.parse(reading.pointer().substring(RISE.length()));
      return plain(run, plan) + ", about to rise";
    }
    Matcher point = POINT.matcher(reading.pointer());
    if (point.matches()) {
      return "Force on point " + (Integer.parseInt(point.group(1)) + 1);
    }
    Matcher stem = STEM.matcher(reading.pointer());
    String member = stem.matches() ? stem.group(2) : reading.pointer();
    String of = stem.matches() ? Rows.of(plan, Integer.parseInt(stem.group(1))) : "";
    return switch (member) {
      case "/legs/0/tension" -> "Load leg";
      case "/tail/tension" -> "Tension at the tail";
      case "base/momentMagnitude" -> "Base moment" + of;
      case "tip/movementMagnitude" -> "Movement of the tip" + of;
      default -> Wording.capital(reading.name());
    };
  }

  /**
   * One reading of all arrangements, as bars.
   *
   * @param title what it is
   * @param spreads how far it may be off, arrangement by arrangement
   * @param widest the arrangement in which it spreads most
   * @param causes what the spread comes from there
   */
  record Bars(
      String title, List<RangePlot.Spread> spreads, String widest, List<RangePlot.Cause> causes) {}

  /** Bars of every reading that has a unit. */
  static List<Bars> bars(Findings findings) {
    // A study without shares has none to tell.
    List<RangeResult> causes = findings.causes().isEmpty() ? findings.ranges() : findings.causes();
    Map<String, List<Bar>> readings = new LinkedHashMap<>();
    for (int i = 0; i < findings.ranges().size(); i++) {
      RangeResult result = findings.ranges().get(i);
      String id = Page.clean(result.study().arrangement());
      for (int k = 0; k < result.readings().size(); k++) {
        ReadingRange range = result.readings().get(k);
        Figure least = range.least().map(FoundAt::value).orElse(null);
        Figure greatest = range.greatest().map(FoundAt::value).orElse(null);
        String end = isHeld(result) ? range.reading().end(Motion.HELD).orElse("") : "";
        String name = i + 1 + " " + (end.isEmpty() ? "" : end + ": ") + id;
        if (least != null && greatest != null && least.kind().isPresent()) {
          readings
              .computeIfAbsent(
                  plain(range.reading(), result.study().plan()), label -> new ArrayList<>())
              .add(
                  new Bar(
                      spread(name, result, range, least.kind().get()),
                      "arrangement " + (i + 1),
                      si(greatest) - si(least),
                      causes.get(i).readings().get(k)));
        }
      }
    }
    List<Bars> bars = new ArrayList<>();
    readings.forEach(
        (title, all) -> {
          Bar widest = Collections.max(all, Comparator.comparingDouble(Bar::width));
          bars.add(
              new Bars(
                  title,
                  all.stream().map(Bar::spread).toList(),
                  widest.arrangement(),
                  causes(widest.causes())));
        });
    return bars;
  }

  private record Bar(
      RangePlot.Spread spread, String arrangement, double width, ReadingRange causes) {}

  private static <Q extends Quantity<Q>> RangePlot.Spread spread(
      String name, RangeResult result, ReadingRange range, Kind<Q> kind) {
    double[] quantiles =
        result.hasDistributionsOnly()
            ? Arrays.stream(BARS)
                .mapToObj(range::quantile)
                .flatMap(Optional::stream)
                .mapToDouble(found -> si(found.value()))
                .toArray()
            : new double[0];
    return quantiles.length == BARS.length
        ? RangePlot.Spread.of(name, kind, quantiles)
        : RangePlot.Spread.between(
            name,
            kind,
            si(range.least().orElseThrow().value()),
            si(range.greatest().orElseThrow().value()));
  }

  /** The ranges that make most of a spread, the one that makes most first. */
  private static List<RangePlot.Cause> causes(ReadingRange range) {
    return range.shares().stream()
        .filter(share -> share.totalShare() >= CAUSE_STEP / 2)
        .sorted(Comparator.comparingDouble(SpreadShare::totalShare).reversed())
        .limit(MOST_CAUSES)
        .map(
            share ->
                new RangePlot.Cause(
                    share.ranges().stream()
                        .map(one -> Page.clean(name(one)))
                        .collect(Collectors.joining(", with ")),
                    Math.min(1, CAUSE_STEP * Math.rint(share.totalShare() / CAUSE_STEP))))
        .toList();
  }

  /** Says what the bars show. */
  static String barText() {
    return "Below each reading stands what its spread comes from where it is widest: how much of the"
        + " variance each range makes by itself and with others, from "
        + CAUSE_ROWS
        + " rows of samples of their own. The shares are rough, to about a tenth of themselves, and"
        + " may add up to more than the whole.";
  }

  /** The ranges, and how many samples came to no figure. */
  static List<Entry> stated(List<RangeResult> results, UnitSystem units) {
    List<Entry> entries = new ArrayList<>();
    if (!results.isEmpty()) {
      for (Range range : results.get(0).study().ranges()) {
        entries.add(
            new Entry(
                Page.clean(name(range)),
                units.inWords(range.spread().words())
                    + " ("
                    + Page.clean(range.source().id())
                    + ")"));
      }
    }
    for (int i = 0; i < results.size(); i++) {
      for (Caution caution : results.get(i).cautions()) {
        if (caution.code() == CautionCode.SAMPLES_WITHOUT_RESULT) {
          entries.add(new Entry(Integer.toString(i + 1), Page.clean(caution.sentence())));
        }
      }
    }
    return entries;
  }

  private static String name(Range range) {
    String first = range.inputs().get(0).name();
    int more = range.inputs().size() - 1;
    return more == 0 ? first : first + " and " + more + " more alike";
  }
}
