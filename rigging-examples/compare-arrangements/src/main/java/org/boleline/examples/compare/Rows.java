package org.boleline.examples.compare;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.DoubleFunction;
import java.util.function.ToDoubleFunction;
import javax.measure.Quantity;
import javax.measure.quantity.Force;
import javax.measure.quantity.Length;
import org.boleline.explain.CautionCode;
import org.boleline.geometry.Vector;
import org.boleline.plan.Plan;
import org.boleline.statics.ContactResult;
import org.boleline.statics.LostStability;
import org.boleline.statics.Outcome;
import org.boleline.statics.Share;
import org.boleline.statics.Solution;
import org.boleline.statics.StaticResult;
import org.boleline.statics.StemResult;
import org.boleline.units.Kind;
import org.boleline.units.Si;
import org.boleline.wood.WoodProperties;

/** Fills the table. A number that is not there is NaN until it becomes a dash. */
final class Rows {
  private static final String NOTHING = "–";
  private static final Map<Share.Origin, String> ORIGINS = origins();

  private final Plan plan;
  private final UnitSystem units;
  private final List<Column> columns;
  private final List<Table.Row> rows = new ArrayList<>();

  private Rows(StaticResult result, UnitSystem units) {
    plan = result.plan();
    this.units = units;
    columns = Column.of(result);
  }

  static Table table(StaticResult result, UnitSystem units) {
    Rows rows = new Rows(result, units);
    rows.outcome();
    rows.forces();
    rows.movement();
    for (int stem = 0; stem < rows.plan.stems().size(); stem++) {
      rows.baseMoment(stem);
      rows.stress(stem);
    }
    rows.stiffness();
    return new Table(rows.columns.stream().map(Column::heading).toList(), List.copyOf(rows.rows));
  }

  /** A row of numbers that is not written yet. */
  private record Numbers(String label, List<Double> values) {}

  private Numbers numbers(String label, ToDoubleFunction<Solution> reading) {
    return new Numbers(
        label,
        columns.stream()
            .map(c -> c.state() == null ? Double.NaN : reading.applyAsDouble(c.state()))
            .toList());
  }

  /**
   * Writes rows that share a unit and a count of decimals; rows without any number are left out.
   */
  private void write(DoubleFunction<Scale> unit, List<Numbers> group) {
    double greatest =
        group.stream()
            .flatMap(row -> row.values().stream())
            .mapToDouble(Math::abs)
            .filter(x -> !Double.isNaN(x))
            .max()
            .orElse(0);
    Scale scale = unit.apply(greatest);
    int decimals = scale.decimals(greatest);
    for (Numbers row : group) {
      if (row.values().stream().anyMatch(x -> !x.isNaN())) {
        rows.add(
            new Table.Row(
                row.label(),
                scale.shown(),
                row.values().stream()
                    .map(x -> x.isNaN() ? NOTHING : scale.bare(x, decimals))
                    .toList()));
      }
    }
  }

  private void blank() {
    if (!rows.isEmpty() && !rows.get(rows.size() - 1).cells().isEmpty()) {
      rows.add(new Table.Row("", "", List.of()));
    }
  }

  private void outcome() {
    if (columns.stream().allMatch(c -> c.answer().outcome() == Outcome.STABLE)) {
      return;
    }
    rows.add(
        new Table.Row(
            "Outcome",
            "",
            columns.stream()
                .map(
                    c ->
                        switch (c.answer().outcome()) {
                          case STABLE -> "stable";
                          case UNSTABLE -> "UNSTABLE";
                          case NOT_SOLVED -> "unsolved";
                        })
                .toList()));
    lost("  lost at this share of the load", LostStability::loadFactor);
    lost("  lost at this share of own weight", LostStability::ownWeightFactor);
    blank();
  }

  private void lost(String label, ToDoubleFunction<LostStability> factor) {
    List<String> cells =
        columns.stream()
            .map(
                c ->
                    c.answer() instanceof LostStability lost && factor.applyAsDouble(lost) < 1
                        ? Figures.three(factor.applyAsDouble(lost))
                        : NOTHING)
            .toList();
    if (cells.stream().anyMatch(cell -> !cell.equals(NOTHING))) {
      rows.add(new Table.Row(label, "", cells));
    }
  }

  private static double newtons(Quantity<Force> force) {
    return Si.value(force, Kind.FORCE, "force");
  }

  private void forces() {
    List<Numbers> group = new ArrayList<>();
    group.add(numbers("Tension at the tail", s -> newtons(s.tailTension())));
    group.add(
        numbers(
            "  behind the wraps, at the hand",
            s -> s.handTension().map(Rows::newtons).orElse(Double.NaN)));
    int points =
        columns.stream()
            .mapToInt(c -> c.state() == null ? 0 : c.state().contacts().size())
            .max()
            .orElse(0);
    for (int p = 0; p < points; p++) {
      int point = p;
      group.add(
          numbers("Force on " + point(p), s -> at(s, point, c -> newtons(c.forceMagnitude()))));
      group.add(
          numbers("  along the stem, toward its base", s -> at(s, point, c -> newtons(c.along()))));
      group.add(numbers("  across the stem", s -> at(s, point, c -> newtons(c.across()))));
    }
    write(units::force, group);
    blank();
  }

  /** Reads a contact that bears. */
  private static double at(Solution state, int point, ToDoubleFunction<ContactResult> reading) {
    return point < state.contacts().size() && state.contacts().get(point).bears()
        ? reading.applyAsDouble(state.contacts().get(point))
        : Double.NaN;
  }

  /** Names a point, with its place if it is the same in all arrangements. */
  private String point(int point) {
    Wording wording = new Wording(plan, units);
    List<String> places =
        columns.stream()
            .flatMap(c -> c.answer().solution().stream())
            .filter(s -> point < s.contacts().size())
            .map(s -> s.contacts().get(point))
            .map(c -> wording.place(c.stem(), c.at()).replace(Scale.HARD_BLANK, " "))
            .distinct()
            .toList();
    String name = "point " + (point + 1);
    return places.size() == 1 ? name + " at " + Page.shortened(places.get(0), 16) : name;
  }

  private static double[] metres(Vector<Length> vector) {
    return vector.in(Kind.LENGTH);
  }

  private void movement() {
    write(
        units::movement,
        List.of(
            numbers(
                "Movement of the outer point (1)",
                s -> Triple.size(metres(s.contacts().get(0).movement()))),
            numbers("  down", s -> -metres(s.contacts().get(0).movement())[2])));
    blank();
  }

  private String of(int stem) {
    return of(plan, stem);
  }

  /** Says of which stem a row is, if there are several. */
  static String of(Plan plan, int stem) {
    return plan.stems().size() > 1
        ? " of " + Page.shortened(Page.clean(plan.stems().get(stem).id()), 12)
        : "";
  }

  private void baseMoment(int stem) {
    List<Numbers> group = new ArrayList<>();
    group.add(numbers("Base moment" + of(stem), s -> BaseMoment.of(s.stems().get(stem)).total()));
    ORIGINS.forEach(
        (origin, label) ->
            group.add(numbers("  " + label, s -> part(s.stems().get(stem), origin))));
    write(units::moment, group);
    blank();
  }

  private static double part(StemResult stem, Share.Origin origin) {
    BaseMoment moment = BaseMoment.of(stem);
    return moment.has(origin) ? moment.part(origin) : Double.NaN;
  }

  private static Map<Share.Origin, String> origins() {
    Map<Share.Origin, String> labels = new LinkedHashMap<>();
    labels.put(Share.Origin.LOAD, "load × reach");
    labels.put(Share.Origin.TAIL, "tail × arm");
    labels.put(Share.Origin.OTHER_STEMS, "legs to other stems");
    labels.put(Share.Origin.OWN_WEIGHT, "own weight");
    labels.put(Share.Origin.MASSES, "hung masses");
    labels.put(Share.Origin.ROPE_WEIGHT, "weight of the rope");
    return labels;
  }

  private void stress(int stem) {
    Numbers stress = numbers("", s -> FibreStress.of(s.stems().get(stem)).pascals());
    double greatest =
        stress.values().stream().filter(x -> !x.isNaN()).mapToDouble(x -> x).max().orElse(0);
    Scale scale = units.stress(greatest);
    int decimals = scale.decimals(greatest);
    List<String> cells = new ArrayList<>();
    List<String> sides = new ArrayList<>();
    for (Column column : columns) {
      if (column.state() == null) {
        cells.add(NOTHING);
        sides.add(NOTHING);
      } else {
        FibreStress found = FibreStress.of(column.state().stems().get(stem));
        cells.add(scale.bare(found.pascals(), decimals));
        sides.add(found.pressed() ? "pressed" : "pulled");
      }
    }
    if (cells.stream().allMatch(NOTHING::equals)) {
      return;
    }
    // The side is said once if it is the same for all.
    List<String> kinds = sides.stream().filter(side -> !side.equals(NOTHING)).distinct().toList();
    String side = kinds.size() == 1 ? ", " + kinds.get(0) + " side" : "";
    rows.add(new Table.Row("Greatest fibre stress" + of(stem) + side, scale.shown(), cells));
    if (kinds.size() > 1) {
      rows.add(new Table.Row("  side", "", sides));
    }
    write(
        x -> units.length(),
        List.of(numbers("  at station", s -> FibreStress.of(s.stems().get(stem)).at())));
    rows.add(
        new Table.Row(
            "Load factor to strength" + of(stem),
            "",
            columns.stream().map(c -> factor(c, stem)).toList()));
    blank();
  }

  /** The multiple of the load that reaches the strength, if one is stated. */
  private String factor(Column column, int stem) {
    Solution state = column.state();
    WoodProperties wood = plan.stems().get(stem).wood();
    if (state == null
        || (wood.compressionStrength().isEmpty() && wood.bendingStrength().isEmpty())) {
      return NOTHING;
    }
    StemResult result = state.stems().get(stem);
    boolean lost =
        column.answer().cautions().stream()
            .anyMatch(
                c ->
                    c.code() == CautionCode.STABILITY_BEFORE_STRENGTH
                        && result.id().equals(c.values().get("stem")));
    return result
        .strengthReach()
        .map(reach -> Figures.three(reach.loadFactor()))
        .orElse(lost ? NOTHING : "none");
  }

  private void stiffness() {
    Numbers left = numbers("", Solution::stiffnessRatio);
    if (left.values().stream().anyMatch(x -> !x.isNaN())) {
      rows.add(
          new Table.Row(
              "Stiffness left (1 at rest, 0 lost)",
              "",
              left.values().stream().map(x -> x.isNaN() ? NOTHING : Figures.fixed(x, 2)).toList()));
    }
  }
}
