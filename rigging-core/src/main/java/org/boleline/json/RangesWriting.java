package org.boleline.json;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import javax.measure.Quantity;
import org.boleline.plan.RangeSpec;
import org.boleline.plan.RangesSpec;
import org.boleline.study.Chance;
import org.boleline.study.Figure;
import org.boleline.study.Found;
import org.boleline.study.FoundAt;
import org.boleline.study.Input;
import org.boleline.study.PlannedRanges;
import org.boleline.study.QuantileFound;
import org.boleline.study.Range;
import org.boleline.study.RangeResult;
import org.boleline.study.ReadingRange;
import org.boleline.study.SpreadShare;
import org.boleline.units.Kind;

/** Ranges as plan files state them, and what was found as result files give it. */
final class RangesWriting {
  private static final Pattern NUMBER = Pattern.compile("-?[0-9]+(\\.[0-9]+)?([eE][-+]?[0-9]+)?");

  /** Quantiles that a result file gives. */
  private static final double[] SHARES = {0.05, 0.25, 0.5, 0.75, 0.95};

  private RangesWriting() {}

  // Plan files

  static void putStated(ObjectBuilder plan, RangesSpec spec) {
    plan.putAll("ranges", spec.ranges(), RangesWriting::range);
    ObjectBuilder study = new ObjectBuilder();
    spec.samples().ifPresent(count -> study.put("samples", count));
    spec.shares().ifPresent(count -> study.put("shares", count));
    spec.seed().ifPresent(seed -> study.put("seed", new Json.Numeral(Long.toString(seed))));
    if (!spec.readings().isEmpty()) {
      study.putAll("readings", spec.readings(), Json.Text::new);
    }
    if (!spec.over().isEmpty()) {
      study.putAll(
          "over",
          spec.over(),
          over ->
              new ObjectBuilder()
                  .put("reading", over.reading())
                  .put("limit", figure(over.limit()))
                  .build());
    }
    if (!spec.correlations().isEmpty()) {
      study.putAll(
          "correlations",
          spec.correlations(),
          pair ->
              new ObjectBuilder()
                  .putAll("between", List.of(pair.first(), pair.second()), Json.Text::new)
                  .put("coefficient", pair.coefficientRatio())
                  .build());
    }
    if (!((Json.Members) study.build()).byName().isEmpty()) {
      plan.put("rangeStudy", study);
    }
  }

  private static Json range(RangeSpec spec) {
    ObjectBuilder object = new ObjectBuilder();
    if (spec.inputs().size() == 1) {
      object.put("input", spec.inputs().get(0));
    } else {
      object.putAll("input", spec.inputs(), Json.Text::new);
    }
    if (spec.form().equals("interval")) {
      object.putAll(
          "interval",
          List.of(
              spec.figures().getOrDefault("least", ""), spec.figures().getOrDefault("most", "")),
          RangesWriting::figure);
    } else {
      ObjectBuilder figures = new ObjectBuilder();
      for (Map.Entry<String, String> figure : spec.figures().entrySet()) {
        figures.put(figure.getKey(), figure(figure.getValue()));
      }
      object.put("distribution", new ObjectBuilder().put(spec.form(), figures));
    }
    return object.put("source", spec.source()).build();
  }

  private static Json figure(String text) {
    return NUMBER.matcher(text).matches() ? new Json.Numeral(text) : new Json.Text(text);
  }

  // Result files

  static ObjectBuilder found(RangeResult result) {
    List<PlannedRanges.Over> over =
        PlannedRanges.of(result.study().plan()).map(PlannedRanges::over).orElse(List.of());
    return new ObjectBuilder()
        .put("samples", result.study().samples())
        .put("seed", new Json.Numeral(Long.toString(result.study().seed())))
        .put("confidence", result.study().confidenceShare())
        .put("solved", result.solvedCount())
        .put("unstable", result.unstableCount())
        .put("refused", result.refusedCount())
        .put("notSolved", result.notSolvedCount())
        .put("basis", result.hasDistributionsOnly() ? "distributions" : "box")
        .putAll("inputs", result.study().ranges(), RangesWriting::input)
        .putAll(
            "readings",
            result.readings(),
            range -> reading(range, result.hasDistributionsOnly(), over).build());
  }

  private static Json input(Range range) {
    return new ObjectBuilder()
        .putAll("input", range.inputs().stream().map(Input::pointer).toList(), Json.Text::new)
        .put("spread", range.spread().words())
        .put("source", range.source().id() + ": " + range.source().title())
        .build();
  }

  private static ObjectBuilder reading(
      ReadingRange range, boolean distributions, List<PlannedRanges.Over> over) {
    ObjectBuilder object =
        new ObjectBuilder()
            .put("reading", range.reading().pointer())
            .put("name", range.name())
            .put("count", range.count())
            .put("lost", range.lostCount());
    put(object, "asPlanned", range.asPlanned());
    put(object, "least", range.least());
    put(object, "greatest", range.greatest());
    if (distributions && range.count() > 0) {
      put(object, "mean", range.mean());
      put(object, "meanError", range.meanError());
      put(object, "deviation", range.deviation());
      object.put(
          "quantiles",
          ObjectBuilder.list(
              SHARES.length, i -> quantile(range.quantile(SHARES[i]).orElseThrow())));
    }
    List<PlannedRanges.Over> asked =
        over.stream().filter(o -> o.reading().equals(range.reading())).toList();
    if (distributions && !asked.isEmpty()) {
      object.putAll("over", asked, o -> chance(range.chanceOver(o.limit())));
    }
    if (!range.shares().isEmpty()) {
      object.putAll("shares", range.shares(), RangesWriting::share);
    }
    return object;
  }

  private static void put(ObjectBuilder object, String name, Found found) {
    found.figure().ifPresent(figure -> object.put(name, value(figure)));
  }

  private static void put(ObjectBuilder object, String name, Optional<FoundAt> found) {
    found.ifPresent(
        at ->
            object.put(
                name,
                value(at.value())
                    .put("foundAt", at.isCorner() ? "corner" : "sample")
                    .putAll("inputs", at.inputs(), figure -> value(figure).build())));
  }

  private static Json quantile(QuantileFound found) {
    ObjectBuilder object =
        new ObjectBuilder().put("share", found.share()).put("value", value(found.value()));
    put(object, "least", found.least());
    put(object, "most", found.most());
    object.put("confidence", found.confidenceShare());
    put(object, "standardError", found.standardError());
    return object.build();
  }

  private static Json chance(Chance chance) {
    return new ObjectBuilder()
        .put("limit", value(chance.limit()))
        .put("share", chance.share())
        .put("shareWithLost", chance.shareWithLost())
        .put("least", chance.leastShare())
        .put("most", chance.mostShare())
        .build();
  }

  private static Json share(SpreadShare share) {
    return new ObjectBuilder()
        .putAll(
            "inputs",
            share.ranges().stream().flatMap(range -> range.inputs().stream()).toList(),
            input -> new Json.Text(input.pointer()))
        .put("first", share.firstShare())
        .put("firstError", share.firstErrorRatio())
        .put("total", share.totalShare())
        .put("totalError", share.totalErrorRatio())
        .put("rows", share.rowCount())
        .build();
  }

  /** A figure as results give it; a pure number has the unit 1. */
  static ObjectBuilder value(Figure figure) {
    return figure
        .kind()
        .map(kind -> quantity(figure, kind))
        .orElseGet(() -> new ObjectBuilder().put("value", figure.ratio()).put("unit", "1"));
  }

  private static <Q extends Quantity<Q>> ObjectBuilder quantity(Figure figure, Kind<Q> kind) {
    return ObjectBuilder.value(figure.in(kind), kind);
  }
}
