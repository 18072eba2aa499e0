package org.boleline.study;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import javax.measure.Quantity;
import org.boleline.explain.PlanRefusedException;
import org.boleline.explain.Refusal;
import org.boleline.explain.Refusals;
import org.boleline.explain.Source;
import org.boleline.plan.Arrangement;
import org.boleline.plan.Plan;
import org.boleline.plan.RangeSpec;
import org.boleline.plan.RangesSpec;
import org.boleline.units.Kind;
import org.boleline.units.QuantityText;
import org.jspecify.annotations.Nullable;

/**
 * The ranges that a plan states, and the studies that they ask for: one for each arrangement.
 *
 * <p>Immutable and thread-safe.
 *
 * <pre>{@code
 * PlannedRanges.of(plan).ifPresent(
 *     planned -> planned.studies().forEach(study -> show(study.run())));
 * }</pre>
 */
public final class PlannedRanges {
  /** What {@code variation} says to take the coefficient of clear wood from the data. */
  private static final String CLEAR_WOOD = "clear wood";

  private static final Map<String, Set<String>> FIGURES =
      Map.of(
          "interval", Set.of("least", "most"),
          "uniform", Set.of("least", "most"),
          "triangular", Set.of("least", "likeliest", "most"),
          "normal", bell("deviation"),
          "lognormal", bell());

  private static Set<String> bell(String... more) {
    Set<String> names = new TreeSet<>(List.of(more));
    names.addAll(
        List.of(
            "mean",
            "variation",
            "lower",
            "lowerShare",
            "upper",
            "upperShare",
            "atLeast",
            "atMost"));
    return names;
  }

  /**
   * A limit whose chance to be exceeded is asked for.
   *
   * @param reading the reading
   * @param limit the limit, of its kind
   */
  public record Over(Reading reading, Figure limit) {}

  private final List<RangeStudy> studies;
  private final List<Over> over;

  private PlannedRanges(List<RangeStudy> studies, List<Over> over) {
    this.studies = List.copyOf(studies);
    this.over = List.copyOf(over);
  }

  /**
   * Reads the ranges of a plan.
   *
   * @param plan the plan, not null
   * @return the studies; empty if the plan states no ranges
   * @throws PlanRefusedException if a range, a reading, a limit or a correlation is wrong: with all
   *     reasons
   */
  public static Optional<PlannedRanges> of(Plan plan) {
    return plan.ranges().map(spec -> Refusals.check(refusals -> of(plan, spec, refusals)));
  }

  private static PlannedRanges of(Plan plan, RangesSpec spec, Refusals refusals) {
    List<Range> ranges = new ArrayList<>();
    for (int i = 0; i < spec.ranges().size(); i++) {
      Range range = range(plan, spec.ranges().get(i), refusals.at("ranges").at(i));
      if (range != null) {
        ranges.add(range);
      }
    }
    Refusals at = refusals.at("rangeStudy");
    List<Over> over = new ArrayList<>();
    List<Reading> readings = new ArrayList<>();
    for (int i = 0; i < spec.readings().size(); i++) {
      Reading reading = reading(spec.readings().get(i), at.at("readings").at(i));
      if (reading != null && !readings.contains(reading)) {
        readings.add(reading);
      }
    }
    if (spec.readings().isEmpty()) {
      readings.addAll(usual());
    }
    for (int i = 0; i < spec.over().size(); i++) {
      Refusals here = at.at("over").at(i);
      Reading reading = reading(spec.over().get(i).reading(), here.at("reading"));
      Figure limit =
          reading == null
              ? null
              : figure(spec.over().get(i).limit(), reading.kindOrNull(), here.at("limit"));
      if (reading != null && limit != null) {
        over.add(new Over(reading, limit));
        if (!readings.contains(reading)) {
          readings.add(reading);
        }
      }
    }
    if (!over.isEmpty()) {
      for (int i = 0; i < spec.ranges().size(); i++) {
        if (spec.ranges().get(i).form().equals("interval")) {
          at.at("over")
              .add(
                  Refusal.Code.CONFLICT,
                  "a distribution for every range, as a chance over a limit is asked for",
                  "the interval at /ranges/" + i + ", which gives only least and greatest");
        }
      }
    }
    List<RangeStudy> studies = new ArrayList<>();
    if (!refusals.hasAny()) {
      for (Arrangement arrangement : plan.arrangements()) {
        RangeStudy study =
            refusals.trying(() -> study(plan, arrangement.id(), ranges, readings, spec, at));
        if (study != null) {
          studies.add(study);
        }
      }
    }
    return new PlannedRanges(studies, over);
  }

  private static RangeStudy study(
      Plan plan,
      String arrangement,
      List<Range> ranges,
      List<Reading> readings,
      RangesSpec spec,
      Refusals at) {
    RangeStudy study = RangeStudy.of(plan, arrangement, ranges, readings);
    RangeStudy sampled =
        or(at.trying(() -> study.withSamples(spec.samples().orElse(study.samples()))), study);
    RangeStudy shared =
        or(at.trying(() -> sampled.withShares(spec.shares().orElse(0))), sampled)
            .withSeed(spec.seed().orElse(study.seed()));
    RangeStudy correlated = shared;
    for (int i = 0; i < spec.correlations().size(); i++) {
      RangesSpec.Correlated pair = spec.correlations().get(i);
      Refusals here = at.at("correlations").at(i);
      Range first = named(ranges, pair.first(), here.at("between").at(0));
      Range second = named(ranges, pair.second(), here.at("between").at(1));
      if (first != null && second != null) {
        RangeStudy before = correlated;
        correlated =
            or(
                here.trying(() -> before.withCorrelation(first, second, pair.coefficientRatio())),
                before);
      }
    }
    return correlated;
  }

  private static RangeStudy or(@Nullable RangeStudy study, RangeStudy otherwise) {
    return study == null ? otherwise : study;
  }

  private static @Nullable Range named(List<Range> ranges, String pointer, Refusals refusals) {
    for (Range range : ranges) {
      if (range.inputs().stream().anyMatch(input -> input.pointer().equals(pointer))) {
        return range;
      }
    }
    refusals.add(Refusal.Code.UNKNOWN_REFERENCE, "an input of a range of this plan", pointer);
    return null;
  }

  private static List<Reading> usual() {
    return List.of(
        Reading.loadLeg(),
        Reading.contactForce(0),
        Reading.tail(),
        Reading.baseMoment(0),
        Reading.tipMovement(0));
  }

  private static @Nullable Reading reading(String pointer, Refusals refusals) {
    try {
      return Reading.parse(pointer);
    } catch (IllegalArgumentException e) {
      refusals.add(
          Refusal.Code.UNKNOWN_REFERENCE,
          "the place of a number in an arrangement of a result",
          "\"" + pointer + "\"");
      return null;
    }
  }

  private static @Nullable Range range(Plan plan, RangeSpec spec, Refusals refusals) {
    List<Input> inputs = new ArrayList<>();
    for (String pointer : spec.inputs()) {
      try {
        Input input = Input.parse(pointer);
        input.value(plan); // refuses what this plan has not
        inputs.add(input);
      } catch (IllegalArgumentException e) {
        refusals
            .at("input")
            .add(
                Refusal.Code.UNKNOWN_REFERENCE,
                "the place of a number of this plan",
                "\"" + pointer + "\"");
      }
    }
    if (inputs.isEmpty()) {
      refusals.at("input").add(Refusal.Code.MISSING, "the place of a number", "nothing");
    }
    if (inputs.size() < spec.inputs().size() || inputs.isEmpty()) {
      return null;
    }
    boolean interval = spec.form().equals("interval");
    Refusals at = interval ? refusals.at("interval") : refusals.at("distribution").at(spec.form());
    Figures figures = new Figures(inputs.get(0), spec.figures());
    Set<String> known = FIGURES.get(spec.form());
    if (known == null) {
      at.add(
          Refusal.Code.OUT_OF_RANGE,
          "one of interval, uniform, triangular, normal, lognormal",
          spec.form());
      return null;
    }
    for (String name : spec.figures().keySet()) {
      if (!known.contains(name)) {
        at.at(name)
            .add(
                Refusal.Code.UNKNOWN_MEMBER,
                "one of " + String.join(", ", new TreeSet<>(known)),
                name);
      }
    }
    Source source = new Source(spec.source(), "stated in the plan", Source.Reading.STATED);
    Source[] said = {source};
    Spread spread = at.trying(() -> figures.spread(spec.form(), plan, said));
    return spread == null || refusals.hasAny()
        ? null
        : refusals.at("input").trying(() -> Range.of(inputs, spread, said[0]));
  }

  private static @Nullable Figure figure(String text, @Nullable Kind<?> kind, Refusals refusals) {
    if (kind != null) {
      return quantity(text, kind, refusals);
    }
    try {
      return Figure.ofRatio(Double.parseDouble(text));
    } catch (IllegalArgumentException e) {
      refusals.add(Refusal.Code.WRONG_TYPE, "a number, without quotes", "\"" + text + "\"");
      return null;
    }
  }

  private static <Q extends Quantity<Q>> @Nullable Figure quantity(
      String text, Kind<Q> kind, Refusals refusals) {
    try {
      return Figure.of(QuantityText.parse(text, kind), kind);
    } catch (IllegalArgumentException e) {
      refusals.add(Refusal.Code.WRONG_QUANTITY, QuantityText.wants(kind), "\"" + text + "\"");
      return null;
    }
  }

  /** The figures of one spread. */
  private static final class Figures {
    private final Input input;
    private final Map<String, String> stated;
    private final Refusals refusals = Refusals.none();

    Figures(Input input, Map<String, String> stated) {
      this.input = input;
      this.stated = stated;
    }

    boolean has(String name) {
      return stated.containsKey(name);
    }

    /** A figure of the input's kind, or a stand-in if it is missing or cannot be read. */
    Figure of(String name) {
      return of(name, input.kindOrNull());
    }

    Figure of(String name, @Nullable Kind<?> kind) {
      String text = stated.get(name);
      Figure found = text == null ? null : figure(text, kind, refusals.at(name));
      if (text == null) {
        refusals
            .at(name)
            .add(
                Refusal.Code.MISSING,
                kind == null ? "a number" : QuantityText.wants(kind),
                "nothing");
      }
      if (found == null) {
        throw new PlanRefusedException(refusals.list());
      }
      return found;
    }

    double number(String name) {
      return of(name, null).ratio();
    }

    Spread spread(String form, Plan plan, Source[] said) {
      Spread spread = read(form, plan, said);
      refusals.throwIfAny();
      return spread;
    }

    private Spread read(String form, Plan plan, Source[] said) {
      return switch (form) {
        case "interval" -> Spread.interval(of("least"), of("most"));
        case "uniform" -> Spread.uniform(of("least"), of("most"));
        case "triangular" -> Spread.triangular(of("least"), of("likeliest"), of("most"));
        default -> {
          Spread spread = bell(form.equals("normal"), plan, said);
          spread = has("atLeast") ? spread.atLeast(of("atLeast")) : spread;
          yield has("atMost") ? spread.atMost(of("atMost")) : spread;
        }
      };
    }

    private Spread bell(boolean normal, Plan plan, Source[] said) {
      if (has("lower") || has("upper")) {
        Spread.Quantile lower = new Spread.Quantile(number("lowerShare"), of("lower"));
        Spread.Quantile upper = new Spread.Quantile(number("upperShare"), of("upper"));
        refuseBeside("mean", "variation", "deviation");
        return normal ? Spread.normal(lower, upper) : Spread.lognormal(lower, upper);
      }
      Figure mean = has("mean") ? of("mean") : input.value(plan);
      if (normal && has("deviation")) {
        refuseBeside("variation");
        return Spread.normal(mean, of("deviation"));
      }
      double variation;
      if (CLEAR_WOOD.equals(stated.get("variation"))) {
        Optional<Variation> data = Variation.ofClearWood(input);
        if (data.isEmpty()) {
          refusals
              .at("variation")
              .add(
                  Refusal.Code.OUT_OF_RANGE,
                  "a number, as no coefficient of clear wood is known for " + input.name(),
                  "\"" + CLEAR_WOOD + "\"");
          throw new PlanRefusedException(refusals.list());
        }
        variation = data.get().ratio();
        said[0] = data.get().source();
      } else {
        variation = number("variation");
      }
      return normal ? Spread.normal(mean, variation) : Spread.lognormal(mean, variation);
    }

    private void refuseBeside(String... names) {
      for (String name : names) {
        if (has(name)) {
          refusals.at(name).add(Refusal.Code.CONFLICT, "one way to give the spread", "two");
        }
      }
    }
  }

  /**
   * Returns the studies.
   *
   * @return one for each arrangement of the plan, in its order
   */
  public List<RangeStudy> studies() {
    return studies;
  }

  /**
   * Returns the limits whose chance to be exceeded is asked for.
   *
   * @return the limits; empty if a range is an interval
   */
  public List<Over> over() {
    return over;
  }

  /**
   * Runs all studies in the caller's thread.
   *
   * @return one result for each arrangement of the plan, in its order
   */
  public List<RangeResult> run() {
    return studies.stream().map(RangeStudy::run).toList();
  }
}
