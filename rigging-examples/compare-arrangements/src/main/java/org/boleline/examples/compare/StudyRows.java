package org.boleline.examples.compare;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.IntStream;
import org.boleline.plan.Plan;
import org.boleline.study.BestStations;
import org.boleline.study.BiggestPiece;
import org.boleline.study.CutPlan;
import org.boleline.study.Figure;
import org.boleline.study.ForkPull;
import org.boleline.study.Found;
import org.boleline.study.FrictionTrial;
import org.boleline.study.Keep;
import org.boleline.study.NoAnswer;
import org.boleline.study.Reading;
import org.boleline.study.RunNeeded;
import org.boleline.study.Study;
import org.boleline.study.StudyAnswer;
import org.boleline.study.Sweep;
import org.boleline.study.Trial;
import org.boleline.study.WhatChanged;
import org.boleline.study.WrapsWindow;
import org.boleline.units.Kind;

/** Says what came of the studies that a plan asks for. */
final class StudyRows {
  private static final String NOTHING = "–";

  private final Plan plan;
  private final UnitSystem units;

  private StudyRows(Plan plan, UnitSystem units) {
    this.plan = plan;
    this.units = units;
  }

  /**
   * A question and what came of it.
   *
   * @param question what was asked
   * @param table numbers side by side; without rows where a few lines say all
   * @param entries lines
   */
  record Told(String question, Table table, List<Entry> entries) {
    static Told of(String question, List<Entry> entries) {
      return new Told(question, new Table(List.of(), List.of()), entries);
    }
  }

  /** Says what the studies were worked out from. */
  static String text() {
    return "Worked out from the values as the plan states them; ranges that it may state are not"
        + " used.";
  }

  /** All of them, in the order of the plan. */
  static List<Told> of(List<StudyAnswer> answers, Plan plan, UnitSystem units) {
    StudyRows rows = new StudyRows(plan, units);
    return answers.stream().map(rows::told).toList();
  }

  private Told told(StudyAnswer answer) {
    String question = question(answer.study());
    if (answer instanceof NoAnswer no) {
      return Told.of(question, List.of(new Entry("no answer", Page.clean(no.reason()))));
    }
    if (answer instanceof Sweep.Answer sweep) {
      return sweep(question, sweep);
    }
    if (answer instanceof BiggestPiece.Answer biggest) {
      return Told.of(question, biggest(biggest));
    }
    if (answer instanceof CutPlan.Answer cuts) {
      return cuts(question, cuts);
    }
    if (answer instanceof RunNeeded.Answer run) {
      return Told.of(
          question,
          List.of(
              new Entry("rope let run", one(run.run(), units.length())),
              new Entry("tension into the device, slipping", one(run.slipTension())),
              new Entry(
                  "room needed below, without a margin", one(run.clearance(), units.length())),
              new Entry(
                  "if it is not let run",
                  "the rope made fast stands in the table of catches; a worker may fail to let it"
                      + " run")));
    }
    if (answer instanceof WhatChanged.Answer changed) {
      return changed(question, changed);
    }
    if (answer instanceof WrapsWindow.Answer window) {
      List<Entry> entries = new ArrayList<>();
      entries.add(new Entry("least to hold", one(window.leastWraps(), Scale.PURE)));
      entries.add(new Entry("most to still run", one(window.mostWraps(), Scale.PURE)));
      if (window.isEmpty()) {
        entries.add(new Entry("both", "no number of wraps does both"));
      }
      return Told.of(question, entries);
    }
    if (answer instanceof BestStations.Answer best) {
      return stations(question, best);
    }
    if (answer instanceof ForkPull.Answer fork) {
      String way =
          fork.opening().figure().map(f -> si(f) < 0 ? ", closes it" : ", opens it").orElse("");
      return Told.of(
          question,
          List.of(
              new Entry("on the fork", one(fork.opening()) + way),
              new Entry("on each, both the same way", one(fork.sway()))));
    }
    if (answer instanceof Trial.Answer trial) {
      return Told.of(
          question,
          List.of(
              new Entry("value", stated(trial.value())),
              new Entry("least, within the error", stated(trial.least())),
              new Entry("greatest, within the error", stated(trial.most()))));
    }
    FrictionTrial.Answer trial = (FrictionTrial.Answer) answer;
    return Told.of(
        question,
        List.of(
            new Entry("coefficient of friction", Figures.three(trial.value().ratio())),
            new Entry("least, within the error", Figures.three(trial.least().ratio())),
            new Entry("greatest, within the error", Figures.three(trial.most().ratio()))));
  }

  private String question(Study study) {
    if (study instanceof Sweep sweep) {
      return "What becomes of "
          + way(sweep.arrangement())
          + " if this goes from "
          + stated(sweep.from())
          + " to "
          + stated(sweep.to())
          + ": "
          + Page.clean(sweep.input().name());
    }
    if (study instanceof BiggestPiece biggest) {
      return (biggest.size() == BiggestPiece.Size.MASS
              ? "How heavy the piece may become in "
              : "How much of the log may be cut from its small end in ")
          + way(biggest.arrangement())
          + " before a limit of the study is reached, from "
          + stated(biggest.least())
          + " to "
          + stated(biggest.most());
    }
    if (study instanceof CutPlan cuts) {
      return "Stem taken down from its tip in "
          + cuts.lengths().size()
          + (cuts.lengths().size() == 1 ? " piece" : " pieces")
          + ", caught as in "
          + way(cuts.arrangement());
    }
    if (study instanceof RunNeeded run) {
      // The study names the reading by the rope made fast, and seeks it for a rope that runs.
      return "How far the rope must run in "
          + way(run.arrangement())
          + " for "
          + bound(run.keep())
          + " at the "
          + lower(run.keep().reading(), run.arrangement()).replace(", made fast", "");
    }
    if (study instanceof WhatChanged changed) {
      return "What makes the difference from " + way(changed.from()) + " to " + way(changed.to());
    }
    if (study instanceof WrapsWindow window) {
      return "How many wraps hold the piece, and still let "
          + stated(window.lightest())
          + " run, in "
          + way(window.arrangement())
          + ", with "
          + stated(window.hand())
          + " at the hand, "
          + stated(window.behind())
          + " of rope hanging behind, and friction "
          + Figures.stated(window.leastFriction())
          + " to "
          + Figures.stated(window.mostFriction());
    }
    if (study instanceof BestStations best) {
      return "Where points behind the first make the "
          + lower(best.reading(), best.arrangement())
          + " of "
          + way(best.arrangement())
          + " least, between "
          + stated(best.lowest())
          + " and "
          + stated(best.highest())
          + " along the stem";
    }
    if (study instanceof ForkPull fork) {
      return "Whether the rope opens or closes the fork between points "
          + (fork.firstIndex() + 1)
          + " and "
          + (fork.secondIndex() + 1)
          + " of "
          + way(fork.arrangement())
          + (RangeRows.isHeld(plan, fork.arrangement()) ? ", held: about to run" : "");
    }
    if (study instanceof Trial trial) {
      return "What "
          + Page.clean(trial.input().name())
          + " was, if the "
          + lower(trial.reading(), trial.arrangement())
          + " of "
          + way(trial.arrangement())
          + " was measured as "
          + stated(trial.measured())
          + " ± "
          + stated(trial.error());
    }
    FrictionTrial trial = (FrictionTrial) study;
    return "Friction, if "
        + stated(trial.tight())
        + " on one side and "
        + stated(trial.slack())
        + " on the other were measured, ± "
        + stated(trial.error())
        + ", over a turn of "
        + stated(trial.turn());
  }

  private Told sweep(String question, Sweep.Answer sweep) {
    List<Sweep.Point> points = sweep.points();
    List<String> inputs = points.stream().map(point -> stated(point.input())).toList();
    List<Table.Row> rows = new ArrayList<>();
    List<Entry> entries = new ArrayList<>();
    rows.add(
        new Table.Row(
            Wording.capital(Page.clean(sweep.study().input().name())),
            unit(inputs.get(0)),
            inputs.stream().map(StudyRows::number).toList()));
    for (int k = 0; k < sweep.study().readings().size(); k++) {
      int index = k;
      Reading reading = sweep.study().readings().get(k);
      String label = RangeRows.label(reading, plan, sweep.study().arrangement());
      rows.add(row(label, reading.kind(), points, point -> point.rows().get(index).value()));
      rows.add(
          new Table.Row(
              "  for 1 % more of the input",
              "%",
              points.stream()
                  .map(point -> point.rows().get(index).elasticity())
                  .map(
                      found -> found.figure().map(f -> Figures.fixed(f.ratio(), 2)).orElse(NOTHING))
                  .toList()));
      for (int i = 0; i < points.size(); i++) {
        String at = Integer.toString(i + 1);
        String name = label;
        points
            .get(i)
            .rows()
            .get(k)
            .value()
            .reason()
            .ifPresent(reason -> entries.add(new Entry(at, name + ": " + Page.clean(reason))));
      }
    }
    return new Told(question, new Table(numbers(points.size()), List.copyOf(rows)), entries);
  }

  private List<Entry> biggest(BiggestPiece.Answer answer) {
    BiggestPiece study = answer.study();
    boolean isMass = study.size() == BiggestPiece.Size.MASS;
    Scale scale = isMass ? units.scale(Optional.of(Kind.MASS), 0) : units.length();
    String size = one(answer.biggest(), scale);
    String mass =
        isMass ? "" : ", of " + one(answer.mass(), units.scale(Optional.of(Kind.MASS), 0));
    List<Entry> entries = new ArrayList<>();
    entries.add(
        new Entry(
            "biggest",
            switch (answer.outcome()) {
              case FOUND -> size + mass + "; a little more breaks a limit of the study";
              case ALL_OF_THE_RANGE ->
                  size + mass + ", the most that was looked at; no limit of the study is reached";
              case NOT_EVEN_THE_LEAST ->
                  "none: not even the least that was looked at, " + stated(study.least());
            }));
    for (int i = 0; i < study.keeps().size(); i++) {
      Keep keep = study.keeps().get(i);
      boolean governs = answer.governing().filter(keep::equals).isPresent();
      entries.add(
          new Entry(
              RangeRows.label(keep.reading(), plan, study.arrangement()),
              one(answer.values().get(i))
                  + ", wanted "
                  + bound(keep)
                  + (governs ? "; this limit comes first" : "")));
    }
    return entries;
  }

  private Told cuts(String question, CutPlan.Answer answer) {
    List<CutPlan.Cut> cuts = answer.cuts();
    Optional<Kind<?>> mass = Optional.of(Kind.MASS);
    Optional<Kind<?>> kind = answer.study().reading().kind();
    String label = RangeRows.label(answer.study().reading(), plan, answer.study().arrangement());
    List<Table.Row> rows = new ArrayList<>();
    rows.add(row("Cut, along the stem", units.length(), cuts, cut -> Found.of(cut.at())));
    rows.add(row("Length of the piece", units.length(), cuts, cut -> Found.of(cut.length())));
    rows.add(row("Mass of the piece", mass, cuts, cut -> Found.of(cut.mass())));
    rows.add(row("Fall until the rope is taut", units.length(), cuts, CutPlan.Cut::fall));
    rows.add(row(label, kind, cuts, CutPlan.Cut::value));
    rows.add(row("  in two halves, the greater", kind, cuts, CutPlan.Cut::halved));
    List<Entry> entries = new ArrayList<>();
    for (int i = 0; i < cuts.size(); i++) {
      String at = Integer.toString(i + 1);
      cuts.get(i)
          .value()
          .reason()
          .ifPresent(reason -> entries.add(new Entry(at, Page.clean(reason))));
    }
    return new Told(question, new Table(numbers(cuts.size()), List.copyOf(rows)), entries);
  }

  private Told changed(String question, WhatChanged.Answer answer) {
    List<Table.Row> rows = new ArrayList<>();
    List<Entry> entries = new ArrayList<>();
    for (WhatChanged.Row row : answer.rows()) {
      String label =
          RangeRows.label(row.reading(), plan, answer.study().from(), answer.study().to());
      rows.add(
          row(
              label,
              row.reading().kind(),
              List.of(row.before(), row.after(), row.difference()),
              Function.identity()));
      if (!row.parts().isEmpty()) {
        entries.add(new Entry("", ShareRows.sentence(answer.study(), row, plan, units)));
      } else {
        row.difference()
            .reason()
            .ifPresent(reason -> entries.add(new Entry("", label + ": " + Page.clean(reason))));
      }
    }
    return new Told(
        question, new Table(List.of("before", "after", "difference"), List.copyOf(rows)), entries);
  }

  private Told stations(String question, BestStations.Answer answer) {
    List<BestStations.Best> counts = answer.byCount();
    List<Table.Row> rows = new ArrayList<>();
    rows.add(
        row(
            RangeRows.label(answer.study().reading(), plan, answer.study().arrangement()),
            answer.study().reading().kind(),
            counts,
            BestStations.Best::value));
    for (int k = 0; k < answer.study().mostPoints(); k++) {
      int index = k;
      rows.add(
          row(
              "Point " + (k + 2) + ", along the stem",
              units.length(),
              counts,
              best ->
                  index < best.stations().size()
                      ? Found.of(best.stations().get(index))
                      : Found.none("")));
    }
    List<Entry> entries = new ArrayList<>();
    if (answer.enoughIndex() >= 0) {
      entries.add(
          new Entry(
              "enough",
              points(answer.enoughIndex() + 1)
                  + (answer.enoughIndex() == 0 ? " comes" : " come")
                  + " within a thousandth of the least"));
    }
    for (BestStations.Best best : counts) {
      best.value()
          .reason()
          .ifPresent(
              reason ->
                  entries.add(new Entry(points(best.stations().size() + 1), Page.clean(reason))));
    }
    return new Told(
        question,
        new Table(
            IntStream.rangeClosed(1, counts.size()).mapToObj(StudyRows::points).toList(),
            List.copyOf(rows)),
        entries);
  }

  private static String points(int count) {
    return count + (count == 1 ? " point" : " points");
  }

  private <T> Table.Row row(
      String label, Optional<Kind<?>> kind, List<T> all, Function<T, Found> found) {
    return row(label, units.scale(kind, greatest(all, found)), all, found);
  }

  private static <T> Table.Row row(
      String label, Scale scale, List<T> all, Function<T, Found> found) {
    return new Table.Row(
        label, scale.shown(), all.stream().map(found).map(one -> bare(one, scale)).toList());
  }

  private static <T> double greatest(List<T> all, Function<T, Found> found) {
    return all.stream()
        .map(found)
        .flatMap(one -> one.figure().stream())
        .mapToDouble(figure -> Math.abs(si(figure)))
        .max()
        .orElse(0);
  }

  /** Each to three figures: one row may hold numbers of very different size. */
  private static String bare(Found found, Scale scale) {
    return found
        .figure()
        .map(figure -> scale.bare(si(figure), scale.decimals(si(figure))))
        .orElse(NOTHING);
  }

  private String one(Found found) {
    return found.figure().map(this::one).orElseGet(() -> none(found));
  }

  private static String one(Found found, Scale scale) {
    return found.figure().map(figure -> scale.one(si(figure))).orElseGet(() -> none(found));
  }

  private String one(Figure figure) {
    return units.scale(figure.kind(), Math.abs(si(figure))).one(si(figure));
  }

  /** A number of the plan, in units that people read. */
  private String stated(Figure figure) {
    if (figure.kind().isEmpty()) {
      return Figures.stated(figure.ratio());
    }
    // What a sweep works out in between has noise in its last digits.
    String text = figure.text();
    int blank = text.indexOf(' ');
    return quantity(
        Figures.stated(Double.parseDouble(text.substring(0, blank))) + text.substring(blank));
  }

  /** The same for one that was found: no more figures than others have. */
  private String stated(Found found) {
    return found
        .figure()
        .map(f -> f.kind().isEmpty() ? Figures.three(f.ratio()) : quantity(f.rounded()))
        .orElseGet(() -> none(found));
  }

  private String quantity(String text) {
    return units.stated(text, false).replace(" ", Scale.HARD_BLANK);
  }

  private static String none(Found found) {
    return "none: " + Page.clean(found.reason().orElse(""));
  }

  private String bound(Keep keep) {
    return (keep.sense() == Keep.Sense.AT_MOST ? "at most " : "at least ") + one(keep.limit());
  }

  /** An arrangement by its number and its name. */
  private String way(String id) {
    for (int i = 0; i < plan.arrangements().size(); i++) {
      if (plan.arrangements().get(i).id().equals(id)) {
        return "arrangement " + (i + 1);
      }
    }
    return "arrangement \"" + Page.clean(id) + "\"";
  }

  private String lower(Reading reading, String arrangement) {
    String label = RangeRows.label(reading, plan, arrangement);
    return label.substring(0, 1).toLowerCase(Locale.ROOT) + label.substring(1);
  }

  private static List<String> numbers(int count) {
    return IntStream.rangeClosed(1, count).mapToObj(Integer::toString).toList();
  }

  private static String number(String stated) {
    int blank = stated.indexOf(Scale.HARD_BLANK);
    return blank < 0 ? stated : stated.substring(0, blank);
  }

  private static String unit(String stated) {
    int blank = stated.indexOf(Scale.HARD_BLANK);
    return blank < 0 ? "" : stated.substring(blank + 1);
  }

  private static double si(Figure figure) {
    return RangeRows.si(figure);
  }
}
