package org.boleline.examples.compare;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import javax.measure.Quantity;
import org.boleline.limits.ArrangementChecks;
import org.boleline.limits.Check;
import org.boleline.limits.Checks;
import org.boleline.plan.AskedFactor;
import org.boleline.plan.Limits;
import org.boleline.plan.PartLimit.CapacityIs;
import org.boleline.plan.PartLimit.Part;
import org.boleline.units.Kind;
import org.boleline.units.QuantityText;
import org.boleline.units.Si;

/**
 * Fills the table of limits: for each arrangement its parts, each at its worst, in order of use.
 */
final class LimitRows {
  private static final String NOTHING = "–";
  private static final int WIDEST_NAME = 44;
  private static final int WIDEST_LABEL = 42;

  private LimitRows() {}

  /** Says what the table shows. */
  static String text() {
    return "What each part has to take against what the plan says it can; the greatest demand over"
        + " capacity first, which is the weakest link. Of each part the worst place and state is"
        + " shown; the JSON result has them all. A capacity with a star is a working load limit: it"
        + " holds its maker's factor already. Last stands the factor that is asked, by whom the plan"
        + " names and not by this program, and whether it is met.";
  }

  /** The table; without rows if nothing was checked. */
  static Table table(Checks checks, UnitSystem units) {
    List<Table.Row> rows = new ArrayList<>();
    for (int i = 0; i < checks.arrangements().size(); i++) {
      ArrangementChecks arrangement = checks.arrangements().get(i);
      if (arrangement.checks().isEmpty()) {
        continue;
      }
      if (!rows.isEmpty()) {
        rows.add(new Table.Row("", "", List.of()));
      }
      rows.add(
          new Table.Row(
              i + 1 + "  " + Page.shortened(Page.clean(arrangement.id()), WIDEST_NAME),
              "",
              List.of()));
      worst(arrangement).forEach(check -> rows.add(row(check, units)));
    }
    return new Table(List.of("demand", "capacity", "used", "factor", "asked"), List.copyOf(rows));
  }

  /** Each part at its worst, by use; ratios of diameters last. */
  private static List<Check> worst(ArrangementChecks arrangement) {
    Map<String, Check> worst = new LinkedHashMap<>();
    arrangement.byUse().forEach(check -> worst.putIfAbsent(check.name(), check));
    arrangement.checks().stream()
        .filter(check -> check.part() == Part.BEND)
        .forEach(
            check ->
                worst.merge(check.name(), check, (a, b) -> a.usedShare() >= b.usedShare() ? a : b));
    return List.copyOf(worst.values());
  }

  private static Table.Row row(Check check, UnitSystem units) {
    Scale scale = scale(check, check.kind(), units);
    double capacity = capacity(check, check.kind());
    int decimals = scale.decimals(capacity);
    return new Table.Row(
        "  " + Page.shortened(name(check), WIDEST_LABEL),
        scale.shown(),
        List.of(
            scale.bare(demand(check, check.kind()), decimals),
            scale.bare(capacity, decimals)
                + (check.capacityIs() == CapacityIs.WORKING_LOAD_LIMIT ? "*" : ""),
            check.part() == Part.BEND
                ? NOTHING
                : Figures.fixed(100 * check.usedShare(), 0) + Scale.HARD_BLANK + "%",
            number(check.factorFound()),
            check
                .met()
                .map(met -> QuantityText.number(check.factorAsked().orElseThrow()) + yesOrNo(met))
                .orElse(NOTHING)));
  }

  private static String yesOrNo(boolean met) {
    return met ? ": yes" : ": no";
  }

  private static String number(OptionalDouble number) {
    return number.isPresent() ? Figures.three(number.getAsDouble()) : NOTHING;
  }

  private static String name(Check check) {
    String state =
        check
            .state()
            .map(
                s ->
                    switch (s) {
                      case SLOW -> ", slow";
                      case ABOUT_TO_RUN -> ", about to run";
                      case ABOUT_TO_RISE -> ", about to rise";
                      case LOCKED -> ", locked catch";
                      case RUN -> ", let run";
                    })
            .orElse("");
    String where = check.where().startsWith("at point") ? " " + check.where() : "";
    return Page.clean(check.name()) + where + state;
  }

  private static <Q extends Quantity<Q>> double demand(Check check, Kind<Q> kind) {
    return Si.value(check.demand(kind), kind, "demand");
  }

  private static <Q extends Quantity<Q>> double capacity(Check check, Kind<Q> kind) {
    return Si.value(check.capacity(kind), kind, "capacity");
  }

  private static Scale scale(Check check, Kind<?> kind, UnitSystem units) {
    double greatest = Math.max(Math.abs(demand(check, check.kind())), capacity(check, kind));
    if (kind == Kind.PRESSURE) {
      return units.stress(greatest);
    }
    if (kind == Kind.MOMENT) {
      return units.moment(greatest);
    }
    return kind == Kind.LENGTH ? units.movement(greatest) : units.force(greatest);
  }

  /** The weakest link of each arrangement, and why others were not checked. */
  static List<Entry> weakest(Checks checks, UnitSystem units) {
    List<Entry> entries = new ArrayList<>();
    boolean any = checks.arrangements().stream().anyMatch(a -> !a.checks().isEmpty());
    for (int i = 0; any && i < checks.arrangements().size(); i++) {
      ArrangementChecks arrangement = checks.arrangements().get(i);
      String label = Integer.toString(i + 1);
      if (!arrangement.whyNot().isEmpty()) {
        entries.add(new Entry(label, arrangement.whyNot()));
      }
      arrangement
          .weakest()
          .ifPresent(check -> entries.add(new Entry(label, sentence(check, units))));
    }
    return entries;
  }

  private static String sentence(Check check, UnitSystem units) {
    Scale scale = scale(check, check.kind(), units);
    return name(check)
        + ": "
        + scale.one(demand(check, check.kind()))
        + " against "
        + scale.one(capacity(check, check.kind()))
        + "; "
        + Page.clean(check.verdict());
  }

  /** Who asks for what. */
  static List<Entry> asked(Checks checks) {
    return checks.statics().plan().limits().map(Limits::factors).orElse(List.of()).stream()
        .map(LimitRows::asked)
        .toList();
  }

  private static Entry asked(AskedFactor factor) {
    return new Entry(
        Page.clean(factor.part()),
        QuantityText.number(factor.factor()) + ", asked by " + Page.clean(factor.askedBy()));
  }
}
