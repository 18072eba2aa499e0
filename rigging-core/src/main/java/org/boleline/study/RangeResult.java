package org.boleline.study;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.boleline.explain.Caution;
import org.boleline.explain.CautionCode;
import org.boleline.explain.Datum;
import org.boleline.internal.sampling.SampleRun;
import org.boleline.units.QuantityText;

/**
 * What a study of ranges found, reading by reading, and how its samples ended.
 *
 * <p>Immutable and thread-safe.
 */
public final class RangeResult {
  private final RangeStudy study;
  private final int[] endings = new int[RangeStudy.NOT_SOLVED + 1];
  private final List<ReadingRange> readings;

  RangeResult(RangeStudy study, SampleRun run) {
    this.study = study;
    for (int row = 0; row < study.samples(); row++) {
      endings[run.ending(row)]++;
    }
    List<Found> planned = Reading.values(study.plan(), study.arrangement(), study.readings());
    List<ReadingRange> found = new ArrayList<>();
    for (int i = 0; i < study.readings().size(); i++) {
      found.add(new ReadingRange(study, run, i, planned.get(i)));
    }
    this.readings = List.copyOf(found);
  }

  /**
   * Returns what was studied.
   *
   * @return the study
   */
  public RangeStudy study() {
    return study;
  }

  /**
   * Returns the ranges of the readings.
   *
   * @return one for each reading of the study, in their order
   */
  public List<ReadingRange> readings() {
    return readings;
  }

  /**
   * Returns how many samples were solved.
   *
   * @return samples with a stable state
   */
  public int solvedCount() {
    return endings[RangeStudy.SOLVED];
  }

  /**
   * Returns how many samples make a plan that is refused.
   *
   * @return the count, such as of samples with a modulus below zero
   */
  public int refusedCount() {
    return endings[RangeStudy.REFUSED];
  }

  /**
   * Returns how many samples lose stability before the full load.
   *
   * @return the count
   */
  public int unstableCount() {
    return endings[RangeStudy.UNSTABLE];
  }

  /**
   * Returns how many samples the solver gave up.
   *
   * @return the count
   */
  public int notSolvedCount() {
    return endings[RangeStudy.NOT_SOLVED];
  }

  /**
   * Tells whether every range that bears on the arrangement is a distribution, so that quantiles
   * and chances have a meaning.
   *
   * @return true if so; false if there is an interval
   */
  public boolean hasDistributionsOnly() {
    return study.bearing().stream().noneMatch(range -> range.spread().isInterval());
  }

  /**
   * Returns what to read with care.
   *
   * @return that there are intervals, and that samples have no result
   */
  public List<Caution> cautions() {
    List<Caution> cautions = new ArrayList<>();
    if (!hasDistributionsOnly()) {
      cautions.add(
          new Caution(
              CautionCode.RANGE_OF_A_BOX, "/ranges", Map.of("arrangement", study.arrangement())));
    }
    if (solvedCount() < study.samples()) {
      Map<String, String> values = new LinkedHashMap<>();
      values.put("arrangement", study.arrangement());
      values.put("lost", "" + (study.samples() - solvedCount()));
      values.put("samples", "" + study.samples());
      values.put("unstable", "" + unstableCount());
      values.put("refused", "" + refusedCount());
      values.put("notSolved", "" + notSolvedCount());
      cautions.add(new Caution(CautionCode.SAMPLES_WITHOUT_RESULT, "/ranges", values));
    }
    return cautions;
  }

  /**
   * Returns what the study took: each range with its source.
   *
   * @return the ranges as data, in their order
   */
  public List<Datum> taken() {
    List<Datum> taken = new ArrayList<>();
    for (Range range : study.ranges()) {
      for (Input input : range.inputs()) {
        taken.add(
            new Datum(
                input.pointer(),
                input.value(study.plan()).text(),
                range.source(),
                range.spread().words()));
      }
    }
    return taken;
  }

  /** How the samples ended, in words. */
  String words() {
    return study.samples()
        + " (seed "
        + study.seed()
        + "): "
        + solvedCount()
        + " solved, "
        + unstableCount()
        + " unstable, "
        + refusedCount()
        + " refused, "
        + notSolvedCount()
        + " not solved";
  }

  @Override
  public String toString() {
    return study.arrangement()
        + ": "
        + QuantityText.number(solvedCount())
        + " of "
        + QuantityText.number(study.samples())
        + " samples solved";
  }
}
