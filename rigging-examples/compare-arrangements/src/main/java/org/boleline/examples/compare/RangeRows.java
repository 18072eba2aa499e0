package org.boleline.examples.compare;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.measure.Quantity;
import org.boleline.explain.Caution;
import org.boleline.explain.CautionCode;
import org.boleline.plan.Plan;
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
import org.boleline.units.Kind;
import org.boleline.units.Si;

/** Fills the table of ranges: for each arrangement how far its headline figures may be off. */
final class RangeRows {
  private static final String NOTHING = "–";
  private static final int WIDEST_NAME = 44;
  private static final Pattern POINT = Pattern.compile("/contacts/([0-9]+)/forceMagnitude");
  private static final Pattern STEM = Pattern.compile("/stems/([0-9]+)/(.*)");
  private static final double[] SHARES = {0.05, 0.5, 0.95};

  private RangeRows() {}

  /** Studies the ranges that a plan states; none if it states none. */
  static List<RangeResult> study(Plan plan) {
    return PlannedRanges.of(plan).map(RangeRows::study).orElse(List.of());
  }

  /** On all processors: the library starts no thread itself, and any number gives the same. */
  private static List<RangeResult> study(PlannedRanges planned) {
    ExecutorService executor =
        Executors.newFixedThreadPool(Runtime.getRuntime().availableProcessors());
    try {
      List<RangeResult> results = new ArrayList<>();
      for (RangeStudy study : planned.studies()) {
        results.add(study.run(RangeWatch.NONE, executor));
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
              i + 1 + "  " + Page.shortened(Page.clean(result.study().arrangement()), WIDEST_NAME),
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
    if (kind.isEmpty()) {
      return new Table.Row(
          "  " + label(range.reading()),
          "",
          figures.stream().map(f -> f.map(x -> Figures.three(si(x))).orElse(NOTHING)).toList());
    }
    Scale scale = scale(kind.get(), greatest, units);
    int decimals = scale.decimals(greatest);
    return new Table.Row(
        "  " + label(range.reading()),
        scale.shown(),
        figures.stream()
            .map(f -> f.map(x -> scale.bare(si(x), decimals)).orElse(NOTHING))
            .toList());
  }

  static Scale scale(Kind<?> kind, double greatest, UnitSystem units) {
    if (kind == Kind.PRESSURE) {
      return units.stress(greatest);
    }
    if (kind == Kind.MOMENT) {
      return units.moment(greatest);
    }
    return kind == Kind.LENGTH ? units.movement(greatest) : units.force(greatest);
  }

  static double si(Figure figure) {
    return figure.kind().map(kind -> si(figure, kind)).orElseGet(figure::ratio);
  }

  private static <Q extends Quantity<Q>> double si(Figure figure, Kind<Q> kind) {
    return Si.value(figure.in(kind), kind, "figure");
  }

  /** The reading in the words of the first table. */
  static String label(Reading reading) {
    Matcher point = POINT.matcher(reading.pointer());
    if (point.matches()) {
      return "Force on point " + (Integer.parseInt(point.group(1)) + 1);
    }
    Matcher stem = STEM.matcher(reading.pointer());
    String member = stem.matches() ? stem.group(2) : reading.pointer();
    String of = stem.matches() && !stem.group(1).equals("0") ? " of stem " + stem.group(1) : "";
    return switch (member) {
      case "/legs/0/tension" -> "Load leg";
      case "/tail/tension" -> "Tension at the tail";
      case "base/momentMagnitude" -> "Base moment" + of;
      case "tip/movementMagnitude" -> "Movement of the tip" + of;
      default -> reading.name();
    };
  }

  /** The ranges, and how many samples came to no figure. */
  static List<Entry> stated(List<RangeResult> results) {
    List<Entry> entries = new ArrayList<>();
    if (!results.isEmpty()) {
      for (Range range : results.get(0).study().ranges()) {
        entries.add(
            new Entry(
                Page.clean(name(range)),
                range.spread().words() + " (" + Page.clean(range.source().id()) + ")"));
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
