package org.boleline.json;

import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.OptionalLong;
import java.util.TreeMap;
import org.boleline.explain.Refusal;
import org.boleline.explain.Refusals;
import org.boleline.plan.RangeSpec;
import org.boleline.plan.RangesSpec;
import org.jspecify.annotations.Nullable;

/** The ranges of inputs in a plan file. What they mean is read in the package of studies. */
final class RangesReading {
  private static final String[] FORMS = {"uniform", "triangular", "normal", "lognormal"};
  private static final String INPUT = "the place of a number in the plan, or a list of such";
  private static final double MOST_WHOLE = 0x1p53;

  private RangesReading() {}

  /** Reads the members ranges and rangeStudy of a plan; null if there is none. */
  static @Nullable RangesSpec ranges(Members plan) {
    List<RangeSpec> ranges = plan.objects("ranges", RangesReading::range);
    RangesSpec study = plan.object("rangeStudy", m -> study(m, ranges));
    return study != null ? study : plan.has("ranges") ? RangesSpec.of(ranges) : null;
  }

  private static RangesSpec study(Members m, List<RangeSpec> ranges) {
    Double samples = whole(m, "samples");
    Double shares = whole(m, "shares");
    Double seed = whole(m, "seed");
    return new RangesSpec(
        ranges,
        samples == null ? OptionalInt.empty() : OptionalInt.of(samples.intValue()),
        shares == null ? OptionalInt.empty() : OptionalInt.of(shares.intValue()),
        seed == null ? OptionalLong.empty() : OptionalLong.of(seed.longValue()),
        m.texts("readings", "a list of places of numbers in a result"),
        m.objects("over", RangesReading::over),
        m.objects("correlations", RangesReading::correlated));
  }

  private static @Nullable Double whole(Members m, String name) {
    Double number = m.number(name);
    if (number != null && (number != Math.rint(number) || Math.abs(number) > MOST_WHOLE)) {
      m.refusals().at(name).add(Refusal.Code.OUT_OF_RANGE, "a whole number", number.toString());
      return null;
    }
    return number;
  }

  private static RangesSpec.Over over(Members m) {
    String reading = text(m, "reading", "the place of a number in a result");
    String limit = m.figures().get("limit");
    m.refusals().at("limit").present(limit, "a quantity or a number", "");
    return new RangesSpec.Over(reading, limit == null ? "" : limit);
  }

  private static RangesSpec.Correlated correlated(Members m) {
    List<String> between = m.texts("between", "a list of two inputs");
    if (between.size() != 2) {
      m.refusals()
          .at("between")
          .add(Refusal.Code.MISSING, "a list of two inputs", "a list of " + between.size());
    }
    double coefficient = m.refusals().at("coefficient").number(m.number("coefficient"), -1, 1);
    return new RangesSpec.Correlated(
        between.isEmpty() ? "" : between.get(0),
        between.isEmpty() ? "" : between.get(between.size() - 1),
        coefficient);
  }

  private static String text(Members m, String name, String wants) {
    return m.refusals().at(name).present(m.text(name, wants), wants, "");
  }

  private static RangeSpec range(Members m) {
    List<String> inputs = m.texts("input", INPUT);
    if (inputs.isEmpty()) {
      m.refusals().at("input").add(Refusal.Code.MISSING, INPUT, "nothing");
    }
    String source = text(m, "source", "who says so");
    String what = m.oneOf("interval", "distribution");
    if ("interval".equals(what)) {
      return new RangeSpec(inputs, "interval", interval(m), source);
    }
    RangeSpec none = new RangeSpec(inputs, "interval", Map.of(), source);
    if (what == null) {
      m.refusals().add(Refusal.Code.MISSING, "one of interval, distribution", "neither");
      return none;
    }
    RangeSpec read =
        m.object(
            "distribution",
            d -> {
              String form = d.oneOf(FORMS);
              if (form == null) {
                d.refusals()
                    .add(Refusal.Code.MISSING, "one of " + String.join(", ", FORMS), "none");
                return none;
              }
              Map<String, String> figures = d.object(form, Members::figures);
              return new RangeSpec(inputs, form, figures == null ? Map.of() : figures, source);
            });
    return read == null ? none : read;
  }

  private static Map<String, String> interval(Members m) {
    String wants = "a list of two figures, [least, most]";
    List<String> ends = m.list("interval", wants, RangesReading::end);
    if (ends.size() != 2) {
      m.refusals().at("interval").add(Refusal.Code.WRONG_TYPE, wants, "a list of " + ends.size());
      return Map.of();
    }
    Map<String, String> figures = new TreeMap<>();
    figures.put("least", ends.get(0));
    figures.put("most", ends.get(1));
    return figures;
  }

  private static String end(Json value, Refusals refusals) {
    String figure = Members.figure(value, refusals);
    return figure == null ? "" : figure;
  }
}
