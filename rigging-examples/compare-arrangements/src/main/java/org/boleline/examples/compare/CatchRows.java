package org.boleline.examples.compare;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.function.DoubleFunction;
import java.util.function.ToDoubleFunction;
import javax.measure.Quantity;
import javax.measure.quantity.Force;
import javax.measure.quantity.Length;
import org.boleline.drop.CatchLoads;
import org.boleline.drop.DropAnswer;
import org.boleline.drop.DropFound;
import org.boleline.drop.DropResult;
import org.boleline.drop.LetRun;
import org.boleline.drop.TimedCatch;
import org.boleline.drop.TimedPeak;
import org.boleline.plan.DropSpec;
import org.boleline.plan.Plan;
import org.boleline.plan.Tail;
import org.boleline.units.Kind;
import org.boleline.units.Si;
import org.jspecify.annotations.Nullable;

/**
 * Fills the table of catches: for each arrangement with a drop some rows, with the rope made fast
 * and let run side by side. A number that is not there is NaN until it becomes a dash.
 */
final class CatchRows {
  private static final String NOTHING = "–";
  private static final double[] RUNS_METRES = {1, 2, 3};
  private static final int WIDEST_NAME = 44;

  private final Plan plan;
  private final UnitSystem units;
  private final boolean anyStated;
  private final double greatestForce;
  private final double greatestMoment;
  private final List<Table.Row> rows = new ArrayList<>();

  private CatchRows(DropResult result, UnitSystem units) {
    plan = result.statics().plan();
    this.units = units;
    List<DropFound> all = found(result);
    anyStated = all.stream().anyMatch(drop -> drop.letRun().isPresent());
    // The locked rope has the greatest numbers of all.
    greatestForce = greatest(all, drop -> worstPoint(drop.loads()));
    greatestMoment =
        greatest(
            all,
            drop ->
                drop.baseMoments(drop.loads()).stream()
                    .mapToDouble(m -> Si.value(m.magnitude(), Kind.MOMENT, "moment"))
                    .max()
                    .orElse(0));
  }

  private static double greatest(List<DropFound> drops, ToDoubleFunction<DropFound> reading) {
    return drops.stream().mapToDouble(reading).max().orElse(0);
  }

  private static List<DropFound> found(DropResult result) {
    return result.drops().stream()
        .flatMap(Optional::stream)
        .filter(DropFound.class::isInstance)
        .map(DropFound.class::cast)
        .toList();
  }

  /** The table; without rows if no drop was worked out. */
  static Table table(DropResult result, UnitSystem units) {
    CatchRows rows = new CatchRows(result, units);
    List<String> headings = new ArrayList<>(List.of("locked"));
    for (double run : RUNS_METRES) {
      headings.add("run " + units.statedLength(run));
    }
    if (rows.anyStated) {
      headings.add("as stated");
    }
    for (int i = 0; i < result.drops().size(); i++) {
      @Nullable DropAnswer answer = result.drops().get(i).orElse(null);
      if (answer instanceof DropFound drop) {
        rows.add(i, drop);
      }
    }
    return new Table(headings, List.copyOf(rows.rows));
  }

  /** What the table shows, and which way its numbers are likely to be off. */
  static String text(DropResult result) {
    List<String> sentences = new ArrayList<>();
    sentences.add(
        "The rope made fast (locked), and running just so far, measured at the load. A worker may"
            + " fail to let it run: so the locked rope stands first. The base moment is of the rope"
            + " alone, in the shape under the slow load.");
    if (found(result).stream().anyMatch(drop -> drop.inTime().isPresent())) {
      sentences.add(
          "Rows \"in time\" are the greatest values of the catch followed step by step, with the mass"
              + " of the stem; their base moment holds own weight too.");
    }
    found(result).stream().map(DropFound::knownBias).distinct().forEach(sentences::add);
    return String.join(" ", sentences);
  }

  /** One way that it may go; null if it is not known. */
  private record Way(@Nullable CatchLoads loads, double room, boolean stops) {}

  private List<Way> ways(DropFound drop) {
    List<Way> ways = new ArrayList<>();
    ways.add(new Way(drop.loads(), metres(drop.clearanceNeeded()), true));
    for (double run : RUNS_METRES) {
      ways.add(
          drop.running(Si.of(run, Kind.LENGTH))
              .map(ran -> new Way(ran.loads(), metres(ran.clearanceNeeded()), true))
              .orElse(new Way(null, Double.NaN, true)));
    }
    if (anyStated) {
      ways.add(drop.letRun().map(CatchRows::stated).orElse(new Way(null, Double.NaN, true)));
    }
    return ways;
  }

  private static Way stated(LetRun run) {
    return run instanceof LetRun.Stopped stopped
        ? new Way(run.loads(), metres(stopped.clearanceNeeded()), true)
        : new Way(run.loads(), Double.NaN, false);
  }

  /** What the plan states of a run; nothing if the rope is made fast. */
  private String stated(DropSpec.Hold hold) {
    if (hold instanceof DropSpec.Slipping slipping) {
      return "; stated: slips at " + units.oneForce(newtons(slipping.slipTension()));
    }
    return hold instanceof DropSpec.ByHand hand
        ? "; stated: hand of "
            + units.oneForce(newtons(hand.handForce()))
            + " after "
            + Figures.stated(Si.value(hand.delay(), Kind.TIME, "delay"))
            + " s"
        : "";
  }

  private static double metres(Quantity<Length> length) {
    return Si.value(length, Kind.LENGTH, "length");
  }

  private static double newtons(Quantity<Force> force) {
    return Si.value(force, Kind.FORCE, "force");
  }

  private void add(int index, DropFound drop) {
    if (!rows.isEmpty()) {
      rows.add(new Table.Row("", "", List.of()));
    }
    rows.add(
        new Table.Row(
            (index + 1)
                + "  "
                + Page.shortened(Page.clean(drop.id()), WIDEST_NAME)
                + "; falls "
                + units.statedLength(metres(drop.spec().fall()))
                + stated(drop.spec().hold()),
            "",
            List.of()));
    List<Way> ways = ways(drop);
    write("Load leg", units::force, greatestForce, ways, x -> newtons(x.loadLeg()));
    if (!drop.contacts().isEmpty()) {
      String first = "Force on point " + (drop.contacts().get(0) + 1);
      write(first, units::force, greatestForce, ways, x -> newtons(x.points().get(0).magnitude()));
      if (ways.stream()
          .map(Way::loads)
          .filter(Objects::nonNull)
          .anyMatch(CatchRows::laterIsWorse)) {
        write(
            "Greatest force on a point", units::force, greatestForce, ways, CatchRows::worstPoint);
      }
    }
    boolean onDevice = drop.arrangement().tail() instanceof Tail.Device;
    write(
        onDevice ? "Tension at the device" : "Tension at the tail",
        units::force,
        greatestForce,
        ways,
        x -> newtons(x.legs().get(x.legs().size() - 1)));
    for (int stem = 0; stem < plan.stems().size(); stem++) {
      int of = stem;
      write(
          "Base moment" + named(stem),
          units::moment,
          greatestMoment,
          ways,
          x -> Si.value(drop.baseMoments(x).get(of).magnitude(), Kind.MOMENT, "moment"));
    }
    room(ways);
    drop.inTime().ifPresent(caught -> inTime(drop, caught));
  }

  /** Greatest values of the catch that was followed in time: locked, and as the plan states it. */
  private void inTime(DropFound drop, TimedCatch.Followed caught) {
    inTime("Load leg", units::force, greatestForce, caught, x -> force(x.loadLeg()));
    if (caught.points().size() > 1) {
      int first = drop.contacts().isEmpty() ? 0 : drop.contacts().get(0);
      inTime(
          "Force on point " + (first + 1),
          units::force,
          greatestForce,
          caught,
          x -> force(x.points().get(0)));
    }
    for (int stem = 0; stem < caught.baseMoments().size(); stem++) {
      int of = stem;
      inTime(
          "Base moment" + named(stem),
          units::moment,
          greatestMoment,
          caught,
          x -> Si.value(x.baseMoments().get(of).overall(), Kind.MOMENT, "moment"));
    }
  }

  private static double force(TimedPeak<Force> peak) {
    return newtons(peak.overall());
  }

  private void inTime(
      String label,
      DoubleFunction<Scale> unit,
      double greatest,
      TimedCatch.Followed caught,
      ToDoubleFunction<TimedCatch.Followed> reading) {
    Scale scale = unit.apply(greatest);
    int decimals = scale.decimals(greatest);
    List<String> cells = new ArrayList<>();
    cells.add(scale.bare(reading.applyAsDouble(caught.locked()), decimals));
    for (int i = 0; i < RUNS_METRES.length; i++) {
      cells.add(NOTHING);
    }
    if (anyStated) {
      boolean runs = caught != caught.locked();
      cells.add(runs ? scale.bare(reading.applyAsDouble(caught), decimals) : NOTHING);
    }
    rows.add(new Table.Row("  " + label + ", in time", scale.shown(), cells));
  }

  private String named(int stem) {
    return plan.stems().size() > 1
        ? " of " + Page.shortened(Page.clean(plan.stems().get(stem).id()), 12)
        : "";
  }

  private static double worstPoint(CatchLoads loads) {
    return loads.points().stream()
        .mapToDouble(point -> newtons(point.magnitude()))
        .max()
        .orElse(newtons(loads.loadLeg()));
  }

  private static boolean laterIsWorse(CatchLoads loads) {
    return worstPoint(loads) > newtons(loads.points().get(0).magnitude());
  }

  /** Writes a row in the unit and decimals that suit the greatest number of its kind. */
  private void write(
      String label,
      DoubleFunction<Scale> unit,
      double greatest,
      List<Way> ways,
      ToDoubleFunction<CatchLoads> reading) {
    Scale scale = unit.apply(greatest);
    int decimals = scale.decimals(greatest);
    rows.add(
        new Table.Row(
            "  " + label,
            scale.shown(),
            ways.stream()
                .map(Way::loads)
                .map(x -> x == null ? NOTHING : scale.bare(reading.applyAsDouble(x), decimals))
                .toList()));
  }

  private void room(List<Way> ways) {
    Scale scale = units.length();
    double greatest =
        ways.stream().mapToDouble(Way::room).filter(x -> !Double.isNaN(x)).max().orElse(0);
    int decimals = scale.decimals(greatest);
    rows.add(
        new Table.Row(
            "  Room needed below its start",
            scale.shown(),
            ways.stream()
                .map(
                    way ->
                        Double.isNaN(way.room())
                            ? way.stops() ? NOTHING : "no stop"
                            : scale.bare(way.room(), decimals))
                .toList()));
  }
}
