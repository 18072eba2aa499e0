package org.boleline.study;

import static java.util.Objects.requireNonNull;

import java.util.ArrayList;
import java.util.List;
import org.boleline.drop.DropResult;
import org.boleline.explain.Caution;
import org.boleline.explain.Datum;
import org.boleline.limits.Check;
import org.boleline.limits.Checks;
import org.boleline.plan.Arrangement;
import org.boleline.plan.Plan;
import org.boleline.rope.Motion;
import org.boleline.stem.Diameters;
import org.boleline.stem.Stem;
import org.boleline.units.Kind;
import org.boleline.units.QuantityText;
import org.jspecify.annotations.Nullable;

/**
 * A plan and what was worked out of it, to be kept: inputs, assumptions, results, cautions,
 * versions, and a blank for the competent person. Nothing in it says that work may be done.
 *
 * <p>Immutable and thread-safe.
 */
public final class PlanRecord {
  private final Checks checks;
  private final List<RangeResult> ranges;
  private final List<String> versions;

  private PlanRecord(Checks checks, List<RangeResult> ranges, List<String> versions) {
    this.checks = checks;
    this.ranges = List.copyOf(ranges);
    this.versions = List.copyOf(versions);
  }

  /**
   * Makes a record.
   *
   * @param checks the analysis of the plan, not null
   * @param ranges ranges of its arrangements, at most one each; may be empty, not null
   * @param versions names and versions of the programs that were used, not null
   * @return the record
   */
  public static PlanRecord of(Checks checks, List<RangeResult> ranges, List<String> versions) {
    return new PlanRecord(requireNonNull(checks, "checks"), ranges, versions);
  }

  /**
   * Returns the analysis that is recorded.
   *
   * @return the checks, with the plan and its results
   */
  public Checks checks() {
    return checks;
  }

  /**
   * Returns the ranges that are recorded.
   *
   * @return the ranges; empty if none were studied
   */
  public List<RangeResult> ranges() {
    return ranges;
  }

  /**
   * Returns the versions that are recorded.
   *
   * @return names and versions of programs
   */
  public List<String> versions() {
    return versions;
  }

  /**
   * Returns the record in parts: the plan, its inputs, assumptions, results of each arrangement,
   * cautions, versions, and what the competent person is to fill in.
   *
   * @return the parts
   */
  public List<RecordSection> sections() {
    Plan plan = checks.statics().plan();
    List<RecordSection> sections = new ArrayList<>();
    sections.add(new RecordSection("Plan", head(plan)));
    sections.add(new RecordSection("Inputs", inputs(plan)));
    sections.add(new RecordSection("Assumptions", assumptions()));
    for (Arrangement arrangement : plan.arrangements()) {
      sections.add(
          new RecordSection("Results of " + arrangement.id(), results(plan, arrangement.id())));
    }
    sections.add(new RecordSection("Cautions", cautions(plan)));
    sections.add(
        new RecordSection("Versions", versions.stream().map(v -> new RecordLine("", v)).toList()));
    sections.add(
        new RecordSection(
            "For the competent person on site",
            List.of(
                new RecordLine("Name", ""),
                new RecordLine("Date", ""),
                new RecordLine("Checked against local codes and makers' instructions", ""),
                new RecordLine("Decision and conditions", ""),
                new RecordLine("Signature", ""))));
    return List.copyOf(sections);
  }

  private static List<RecordLine> head(Plan plan) {
    List<RecordLine> lines = new ArrayList<>();
    lines.add(new RecordLine("Title", plan.title().isEmpty() ? "none" : plan.title()));
    if (!plan.notes().isEmpty()) {
      lines.add(new RecordLine("Notes", plan.notes()));
    }
    for (Arrangement arrangement : plan.arrangements()) {
      lines.add(
          new RecordLine(
              "Arrangement " + arrangement.id(),
              arrangement.motion().text()
                  + "; "
                  + String.join(
                      "; ", arrangement.contacts().stream().map(Object::toString).toList())
                  + "; "
                  + arrangement.tail()));
    }
    return lines;
  }

  private static List<RecordLine> inputs(Plan plan) {
    List<RecordLine> lines = new ArrayList<>();
    for (Stem stem : plan.stems()) {
      lines.add(new RecordLine("shape of " + stem.id(), stem.shape().toString()));
      for (Diameters.Entry entry : stem.diameters().entries()) {
        lines.add(
            new RecordLine(
                "diameter of " + stem.id() + " at " + QuantityText.print(entry.at(), Kind.LENGTH),
                QuantityText.print(entry.outer(), Kind.LENGTH)
                    + (entry.isHollow()
                        ? ", cavity " + QuantityText.print(entry.cavity(), Kind.LENGTH)
                        : "")));
      }
    }
    for (Input input : Input.all(plan)) {
      lines.add(
          new RecordLine(input.name() + " (" + input.pointer() + ")", input.value(plan).text()));
    }
    return lines;
  }

  private List<RecordLine> assumptions() {
    List<RecordLine> lines = new ArrayList<>();
    for (Datum datum : checks.drops().map(DropResult::taken).orElseGet(checks.statics()::taken)) {
      lines.add(line(datum));
    }
    if (!ranges.isEmpty()) {
      ranges.get(0).taken().forEach(datum -> lines.add(line(datum)));
    }
    return lines;
  }

  private static RecordLine line(Datum datum) {
    return new RecordLine(
        datum.name(),
        datum.value()
            + (datum.spread() == null ? "" : "; " + datum.spread())
            + " ("
            + datum.source().id()
            + ")");
  }

  private List<RecordLine> results(Plan plan, String id) {
    Evaluation evaluation = Evaluation.of(checks, id);
    List<RecordLine> lines = new ArrayList<>();
    lines.add(new RecordLine("outcome", evaluation.slow().outcome().text()));
    for (Reading reading : readings(plan, evaluation)) {
      Found found = reading.value(evaluation);
      lines.add(
          new RecordLine(
              reading.nameIn(evaluation.plan().arrangements().get(0).motion()),
              found
                  .figure()
                  .map(Figure::rounded)
                  .orElseGet(() -> "none: " + found.reason().orElseThrow())));
    }
    checks
        .arrangement(id)
        .ifPresent(
            found -> {
              if (!found.whyNot().isEmpty()) {
                lines.add(new RecordLine("limits", "not checked: " + found.whyNot()));
              }
              for (Check check : found.checks()) {
                lines.add(new RecordLine("limit", check.sentence()));
              }
            });
    @Nullable RangeResult of = ranges(id);
    if (of != null) {
      lines.add(new RecordLine("samples", of.words()));
      for (ReadingRange range : of.readings()) {
        range.words().ifPresent(w -> lines.add(new RecordLine("range of " + range.name(), w)));
      }
    }
    return lines;
  }

  private @Nullable RangeResult ranges(String id) {
    return ranges.stream()
        .filter(range -> range.study().arrangement().equals(id))
        .findFirst()
        .orElse(null);
  }

  private static List<Reading> readings(Plan plan, Evaluation evaluation) {
    List<Reading> readings = new ArrayList<>(List.of(Reading.loadLeg()));
    Arrangement arrangement = evaluation.plan().arrangements().get(0);
    for (int i = 0; i < arrangement.contacts().size(); i++) {
      readings.add(Reading.contactForce(i));
    }
    readings.add(Reading.tail());
    readings.add(Reading.hand());
    for (int i = 0; i < plan.stems().size(); i++) {
      readings.add(Reading.baseMoment(i));
      readings.add(Reading.compressionStress(i));
      readings.add(Reading.tensionStress(i));
      readings.add(Reading.tipMovement(i));
    }
    if (arrangement.motion() == Motion.HELD) {
      readings.addAll(readings.stream().map(Reading::aboutToRise).toList());
    }
    if (evaluation.drop().isPresent()) {
      readings.add(Reading.lockedLoadLeg());
      readings.add(Reading.lockedClearance());
      readings.add(Reading.letRunLoadLeg());
      readings.add(Reading.run());
    }
    return readings;
  }

  private List<RecordLine> cautions(Plan plan) {
    List<RecordLine> lines = new ArrayList<>();
    for (Arrangement arrangement : plan.arrangements()) {
      String id = arrangement.id();
      for (Caution caution : Briefing.cautions(checks, Evaluation.of(checks, id), id, ranges(id))) {
        lines.add(new RecordLine(id, caution.sentence()));
      }
    }
    return lines;
  }

  /**
   * Returns the record as plain text.
   *
   * @return lines without ends, an empty one between parts
   */
  public List<String> lines() {
    List<String> lines = new ArrayList<>();
    for (RecordSection section : sections()) {
      if (!lines.isEmpty()) {
        lines.add("");
      }
      lines.addAll(section.print());
    }
    return lines;
  }

  @Override
  public String toString() {
    return "record of " + checks.statics().plan();
  }
}
