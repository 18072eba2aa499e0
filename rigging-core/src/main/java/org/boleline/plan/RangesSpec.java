package org.boleline.plan;

import java.util.List;
import java.util.OptionalInt;
import java.util.OptionalLong;

/**
 * Ranges of inputs, and the study that a person asks for with them.
 *
 * @param ranges the ranges
 * @param samples number of samples, if stated
 * @param shares number of rows for shares of the spread, if stated
 * @param seed the seed, if stated
 * @param readings JSON pointers into an arrangement of a result; empty for the usual figures
 * @param over limits whose chance to be exceeded is asked for
 * @param correlations ranges that go together
 */
public record RangesSpec(
    List<RangeSpec> ranges,
    OptionalInt samples,
    OptionalInt shares,
    OptionalLong seed,
    List<String> readings,
    List<Over> over,
    List<Correlated> correlations) {
  /**
   * Makes a statement; the lists are copied.
   *
   * @param ranges the ranges
   * @param samples number of samples, if stated
   * @param shares number of rows for shares of the spread, if stated
   * @param seed the seed, if stated
   * @param readings JSON pointers into an arrangement of a result; empty for the usual figures
   * @param over limits whose chance to be exceeded is asked for
   * @param correlations ranges that go together
   */
  public RangesSpec {
    ranges = List.copyOf(ranges);
    readings = List.copyOf(readings);
    over = List.copyOf(over);
    correlations = List.copyOf(correlations);
  }

  /**
   * A limit whose chance to be exceeded is asked for.
   *
   * @param reading JSON pointer into an arrangement of a result
   * @param limit the figure, as plan files write it
   */
  public record Over(String reading, String limit) {}

  /**
   * Two ranges that go together.
   *
   * @param first JSON pointer of an input of one range
   * @param second JSON pointer of an input of the other
   * @param coefficientRatio correlation of their normal scores
   */
  public record Correlated(String first, String second, double coefficientRatio) {}

  /**
   * Obtains ranges with a study that is left to the defaults.
   *
   * @param ranges the ranges
   * @return the statement
   */
  public static RangesSpec of(List<RangeSpec> ranges) {
    return new RangesSpec(
        ranges,
        OptionalInt.empty(),
        OptionalInt.empty(),
        OptionalLong.empty(),
        List.of(),
        List.of(),
        List.of());
  }
}
