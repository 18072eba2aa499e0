package org.boleline.study;

import static java.util.Objects.requireNonNull;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import javax.measure.Quantity;
import javax.measure.quantity.Force;
import javax.measure.quantity.Length;
import org.boleline.drop.DropAnswer;
import org.boleline.drop.DropFound;
import org.boleline.drop.DropNotAnalysed;
import org.boleline.drop.LetRun;
import org.boleline.explain.Caution;
import org.boleline.explain.PlanRefusedException;
import org.boleline.limits.ArrangementChecks;
import org.boleline.limits.Checks;
import org.boleline.plan.Arrangement;
import org.boleline.plan.Limits;
import org.boleline.plan.Plan;
import org.boleline.plan.Tail;
import org.boleline.statics.Solution;
import org.boleline.units.Kind;
import org.boleline.units.QuantityText;
import org.boleline.units.Si;
import org.jspecify.annotations.Nullable;

/**
 * What a crew wants to hear before a cut: mass, wraps, run or hold, worst point, cautions.
 *
 * <p>It repeats what was worked out and judges nothing: local codes, makers' instructions and the
 * competent person on site do.
 *
 * <p>Immutable and thread-safe.
 */
public final class Briefing {
  private final RecordSection section;

  private Briefing(RecordSection section) {
    this.section = section;
  }

  /**
   * Briefs on a cut.
   *
   * @param cut what the crew calls it, not null
   * @param checks the analysis of its plan, not null
   * @param arrangement id of the arrangement that is used, not null
   * @return the briefing
   * @throws PlanRefusedException if the plan has no such arrangement
   */
  public static Briefing of(String cut, Checks checks, String arrangement) {
    return of(cut, checks, arrangement, null);
  }

  /**
   * Briefs on a cut whose inputs are ranges.
   *
   * @param cut what the crew calls it, not null
   * @param checks the analysis of its plan, not null
   * @param ranges ranges of the arrangement that is used, not null
   * @return the briefing
   * @throws PlanRefusedException if the plan has no such arrangement
   */
  public static Briefing of(String cut, Checks checks, RangeResult ranges) {
    return of(cut, checks, ranges.study().arrangement(), ranges);
  }

  private static Briefing of(
      String cut, Checks checks, String arrangement, @Nullable RangeResult ranges) {
    requireNonNull(cut, "cut");
    Evaluation evaluation = Evaluation.of(checks, arrangement);
    Plan plan = evaluation.plan();
    Arrangement used = plan.arrangements().get(0);
    List<RecordLine> lines = new ArrayList<>();
    lines.add(new RecordLine("Arrangement", arrangement + ", " + used.motion().text()));
    lines.add(new RecordLine("Mass", mass(plan, ranges)));
    Optional<String> none = Reading.loadLeg().value(evaluation).reason();
    if (none.isPresent()) {
      lines.add(new RecordLine("No figures", none.get()));
    } else {
      lines.add(new RecordLine("Wraps", wraps(checks, used, (Solution) evaluation.slow())));
      lines.add(new RecordLine("Run or hold", runOrHold(used, evaluation)));
      lines.add(new RecordLine("Worst point", worstPoint(used, evaluation)));
      checks
          .arrangement(arrangement)
          .flatMap(ArrangementChecks::weakest)
          .ifPresent(check -> lines.add(new RecordLine("Most used", check.sentence())));
      if (ranges != null) {
        lines.addAll(ranges(ranges));
      }
    }
    for (Caution caution : cautions(checks, evaluation, arrangement, ranges)) {
      lines.add(new RecordLine("Caution", caution.sentence()));
    }
    return new Briefing(new RecordSection("Cut: " + cut, lines));
  }

  private static String mass(Plan plan, @Nullable RangeResult ranges) {
    String planned =
        QuantityText.print(plan.piece().mass(), Kind.MASS)
            + " as planned, weighs "
            + force(
                Si.value(plan.piece().mass(), Kind.MASS, "mass")
                    * Si.value(plan.gravity(), Kind.ACCELERATION, "gravity"));
    List<String> spreads =
        ranges == null
            ? List.of()
            : ranges.study().bearing().stream()
                .filter(r -> r.inputs().stream().anyMatch(i -> i.pointer().startsWith("/piece/")))
                .map(r -> r.name() + " " + r.spread().words() + ", by " + r.source().id())
                .toList();
    return planned + "; " + (spreads.isEmpty() ? "no range stated" : String.join("; ", spreads));
  }

  private static String force(double newtons) {
    return Figure.of(newtons, Kind.FORCE).rounded();
  }

  private static String wraps(Checks checks, Arrangement used, Solution slow) {
    if (!(used.tail() instanceof Tail.Device device)) {
      return "no device, " + used.tail() + ", pull " + force(newtons(slow.tailTension()));
    }
    String limit =
        checks
            .statics()
            .plan()
            .limits()
            .flatMap(Limits::handForce)
            .map(hand -> "; the plan states " + force(newtons(hand)) + " for a hand")
            .orElse("");
    return QuantityText.number(device.wraps())
        + " on the device, hand "
        + force(newtons(slow.handTension().orElseThrow()))
        + slow.otherEnd()
            .map(rise -> " to " + force(newtons(rise.handTension().orElseThrow())))
            .orElse("")
        + limit;
  }

  private static double newtons(Quantity<Force> force) {
    return Si.value(force, Kind.FORCE, "force");
  }

  private static String runOrHold(Arrangement used, Evaluation evaluation) {
    @Nullable DropAnswer answer = evaluation.drop().orElse(null);
    if (answer == null) {
      return used.drop().isEmpty()
          ? "no drop stated: slow and steady, " + used.motion().text()
          : "the drop was not worked out";
    }
    if (answer instanceof DropNotAnalysed not) {
      return "the drop was not worked out: " + not.reason();
    }
    DropFound drop = (DropFound) answer;
    @Nullable LetRun run = drop.letRun().orElse(null);
    if (run == null) {
      return "hold: the rope is made fast; room needed below the piece "
          + length(drop.clearanceNeeded());
    }
    return run instanceof LetRun.Stopped stopped
        ? "let run "
            + length(stopped.run())
            + ", then it holds; room needed below the piece "
            + length(stopped.clearanceNeeded())
        : "let run: the piece never stops";
  }

  private static String length(Quantity<Length> length) {
    return Figure.of(Si.value(length, Kind.LENGTH, "length"), Kind.LENGTH).rounded();
  }

  private static String worstPoint(Arrangement used, Evaluation evaluation) {
    List<String> found = new ArrayList<>();
    for (Peak peak : Peak.of(evaluation)) {
      int worst = peak.worstContact();
      found.add(
          force(peak.forceOn(worst))
              + " on point "
              + (worst + 1)
              + ", "
              + used.contacts().get(worst)
              + " ("
              + peak.state()
              + ")");
    }
    return String.join("; ", found);
  }

  private static List<RecordLine> ranges(RangeResult ranges) {
    List<RecordLine> lines = new ArrayList<>();
    for (ReadingRange range : ranges.readings()) {
      range.words().ifPresent(words -> lines.add(new RecordLine(range.name(), words)));
    }
    return lines;
  }

  /** Cautions of one arrangement and of the plan, in this order, none twice. */
  static List<Caution> cautions(
      Checks checks, Evaluation evaluation, String arrangement, @Nullable RangeResult ranges) {
    List<Arrangement> all = checks.statics().plan().arrangements();
    String others = "/arrangements/";
    String own = others + all.stream().map(Arrangement::id).toList().indexOf(arrangement) + "/";
    return Stream.of(
            evaluation.slow().cautions().stream(),
            evaluation.drop().stream().flatMap(drop -> drop.cautions().stream()),
            checks.arrangement(arrangement).stream().flatMap(c -> c.cautions().stream()),
            Stream.ofNullable(ranges).flatMap(r -> r.cautions().stream()),
            checks.cautions().stream()
                .filter(c -> !c.place().startsWith(others) || (c.place() + "/").startsWith(own)))
        .flatMap(stream -> stream)
        .distinct()
        .toList();
  }

  /**
   * Returns the briefing in parts.
   *
   * @return its lines under the name of the cut
   */
  public RecordSection section() {
    return section;
  }

  /**
   * Returns the briefing as plain text.
   *
   * @return lines without ends
   */
  public List<String> lines() {
    return section.print();
  }

  @Override
  public String toString() {
    return section.title();
  }
}
