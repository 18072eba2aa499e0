package org.boleline.study;

import static java.util.Objects.requireNonNull;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.Callable;
import java.util.concurrent.CancellationException;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Future;
import java.util.function.BooleanSupplier;
import org.boleline.explain.PlanRefusedException;
import org.boleline.explain.Refusal;
import org.boleline.explain.Refusals;
import org.boleline.internal.sampling.NormalKernel;
import org.boleline.internal.sampling.SampleRun;
import org.boleline.plan.Arrangement;
import org.boleline.plan.Plan;
import org.boleline.statics.LostStability;
import org.boleline.statics.NotSolved;
import org.jspecify.annotations.Nullable;

/**
 * How sure the figures of an arrangement are, when its inputs are ranges.
 *
 * <p>Each sample draws every range anew and evaluates the plan as a whole. Samples are points of a
 * Sobol sequence, in several independent scrambles. A sample follows from the seed and its number
 * alone: the same study gives the same result, bit for bit, on any number of threads.
 *
 * <p>Immutable and thread-safe. It starts no thread: it works in the caller's, or on the threads of
 * an executor that the caller gives.
 *
 * <pre>{@code
 * RangeResult result =
 *     RangeStudy.of(plan, "three rings", ranges, List.of(Reading.baseMoment(0)))
 *         .withSamples(8192)
 *         .run();
 * result.readings().get(0).quantile(0.95); // with its confidence
 * }</pre>
 */
public final class RangeStudy {
  /** Samples that are drawn unless a study asks for another number. */
  public static final int DEFAULT_SAMPLES = 1024;

  /** Independent scrambles that samples are dealt out to. */
  public static final int SCRAMBLES = 16;

  /** Intervals up to this number are tried at all corners of their box. */
  static final int MOST_CORNERED = 8;

  private static final int MOST_SAMPLES = 10_000_000;
  private static final int MOST_RANGES = 200;

  /** How a sample ended. */
  static final byte SOLVED = 0;

  static final byte REFUSED = 1;
  static final byte UNSTABLE = 2;
  static final byte NOT_SOLVED = 3;

  private record Pair(Range first, Range second) {}

  private final Plan plan;
  private final String arrangement;
  private final List<Range> ranges;
  private final List<Reading> readings;
  private final int samples;
  private final long seed;
  private final int shareRows;
  private final double confidence;
  private final Map<Pair, Double> correlations;

  private RangeStudy(
      Plan plan,
      String arrangement,
      List<Range> ranges,
      List<Reading> readings,
      int samples,
      long seed,
      int shareRows,
      double confidence,
      Map<Pair, Double> correlations) {
    this.plan = plan;
    this.arrangement = arrangement;
    this.ranges = ranges;
    this.readings = readings;
    this.samples = samples;
    this.seed = seed;
    this.shareRows = shareRows;
    this.confidence = confidence;
    this.correlations = correlations;
  }

  /**
   * Obtains a study with {@link #DEFAULT_SAMPLES} samples, seed 1, no shares and a confidence of
   * 0.95.
   *
   * @param plan the plan, not null
   * @param arrangement id of the arrangement, not null
   * @param ranges ranges of inputs of this plan, at least one, no input twice; those of other
   *     arrangements are drawn and change nothing
   * @param readings what is to be read, at least one
   * @return the study
   * @throws PlanRefusedException if the plan has no such arrangement or input, or a list is empty
   *     or names something twice
   */
  public static RangeStudy of(
      Plan plan, String arrangement, List<Range> ranges, List<Reading> readings) {
    requireNonNull(plan, "plan");
    Evaluation.find(plan, arrangement);
    Refusals.check(
        refusals -> {
          Set<Input> seen = new HashSet<>();
          for (int i = 0; i < ranges.size(); i++) {
            Refusals place = refusals.at("ranges").at(i).at("input");
            for (Input input : ranges.get(i).inputs()) {
              if (!seen.add(input)) {
                place.add(Refusal.Code.DUPLICATE, "an input with one range", input.pointer());
              }
              try {
                input.value(plan);
              } catch (PlanRefusedException e) {
                place.add(
                    Refusal.Code.UNKNOWN_REFERENCE, "a number that this plan has", input.pointer());
              }
            }
          }
          count(refusals.at("ranges"), ranges.size(), MOST_RANGES, "range");
          count(refusals.at("rangeStudy").at("readings"), readings.size(), 1000, "reading");
          return ranges;
        });
    return new RangeStudy(
        plan,
        arrangement,
        List.copyOf(ranges),
        List.copyOf(readings),
        DEFAULT_SAMPLES,
        1,
        0,
        0.95,
        Map.of());
  }

  private static void count(Refusals refusals, int count, int most, String what) {
    if (count < 1 || count > most) {
      refusals.add(Refusal.Code.OUT_OF_RANGE, "one " + what + " or more, to " + most, "" + count);
    }
  }

  /**
   * Returns a copy with another number of samples; powers of two are spread most evenly.
   *
   * @param sampleCount the number, from {@link #SCRAMBLES} to ten million
   * @return the copy; it has no more rows for shares than samples
   * @throws IllegalArgumentException if the number is outside that
   */
  public RangeStudy withSamples(int sampleCount) {
    between("samples", sampleCount, SCRAMBLES, MOST_SAMPLES);
    return new RangeStudy(
        plan,
        arrangement,
        ranges,
        readings,
        sampleCount,
        seed,
        Math.min(shareRows, sampleCount),
        confidence,
        correlations);
  }

  /**
   * Returns a copy with another seed.
   *
   * @param newSeed any number
   * @return the copy
   */
  public RangeStudy withSeed(long newSeed) {
    return new RangeStudy(
        plan, arrangement, ranges, readings, samples, newSeed, shareRows, confidence, correlations);
  }

  /**
   * Returns a copy that also works out which range matters most. Each row costs one evaluation, and
   * one more for each range or group of correlated ranges.
   *
   * @param rowCount rows, 0 for none, at most as many as samples
   * @return the copy
   * @throws IllegalArgumentException if the number is outside that
   */
  public RangeStudy withShares(int rowCount) {
    between("shares", rowCount, 0, samples);
    return new RangeStudy(
        plan, arrangement, ranges, readings, samples, seed, rowCount, confidence, correlations);
  }

  /**
   * Returns a copy with another confidence of quantiles and chances.
   *
   * @param confidenceShare how often the bounds shall hold, above 0 and below 1
   * @return the copy
   * @throws IllegalArgumentException if the number is outside that
   */
  public RangeStudy withConfidence(double confidenceShare) {
    if (!(confidenceShare > 0 && confidenceShare < 1)) {
      throw new IllegalArgumentException(
          "confidence: wants a number above 0 and below 1, got " + confidenceShare);
    }
    return new RangeStudy(
        plan,
        arrangement,
        ranges,
        readings,
        samples,
        seed,
        shareRows,
        confidenceShare,
        correlations);
  }

  /**
   * Returns a copy in which two ranges are correlated, by a Gaussian copula: the ratio is that of
   * the normal scores of both. For normal distributions it is the correlation itself.
   *
   * @param first a range of this study, a distribution, not null
   * @param second another one, a distribution, not null
   * @param correlationRatio above -1 and below 1
   * @return the copy
   * @throws IllegalArgumentException if a range is not of this study, is an interval, or the ratio
   *     is outside that or goes with no set of correlations that there can be
   */
  public RangeStudy withCorrelation(Range first, Range second, double correlationRatio) {
    int a = ranges.indexOf(first);
    int b = ranges.indexOf(second);
    if (a < 0 || b < 0 || a == b || first.spread().isInterval() || second.spread().isInterval()) {
      throw new IllegalArgumentException(
          "between: wants two distributions of this study, got " + first + " and " + second);
    }
    Map<Pair, Double> more = new LinkedHashMap<>(correlations);
    more.put(a < b ? new Pair(first, second) : new Pair(second, first), correlationRatio);
    RangeStudy copy =
        new RangeStudy(
            plan, arrangement, ranges, readings, samples, seed, shareRows, confidence, more);
    if (!(Math.abs(correlationRatio) < 1) || NormalKernel.factor(copy.matrix()) == null) {
      throw new IllegalArgumentException(
          "coefficient: wants a correlation that there can be beside the others, got "
              + correlationRatio);
    }
    return copy;
  }

  private static void between(String name, int value, int least, int most) {
    if (value < least || value > most) {
      throw new IllegalArgumentException(
          name + ": wants a number from " + least + " to " + most + ", got " + value);
    }
  }

  private double[][] matrix() {
    int n = ranges.size();
    double[][] matrix = new double[n][n];
    for (int i = 0; i < n; i++) {
      matrix[i][i] = 1;
    }
    correlations.forEach(
        (pair, ratio) -> {
          int a = ranges.indexOf(pair.first());
          int b = ranges.indexOf(pair.second());
          matrix[a][b] = ratio;
          matrix[b][a] = ratio;
        });
    return matrix;
  }

  /**
   * Returns the plan.
   *
   * @return the plan
   */
  public Plan plan() {
    return plan;
  }

  /**
   * Returns the id of the arrangement.
   *
   * @return the id
   */
  public String arrangement() {
    return arrangement;
  }

  /**
   * Returns the ranges.
   *
   * @return the ranges, in the order they were given
   */
  public List<Range> ranges() {
    return ranges;
  }

  /**
   * Returns what is read.
   *
   * @return the readings, in the order they were given
   */
  public List<Reading> readings() {
    return readings;
  }

  /**
   * Returns the number of samples.
   *
   * @return the number
   */
  public int samples() {
    return samples;
  }

  /**
   * Returns the seed.
   *
   * @return the seed
   */
  public long seed() {
    return seed;
  }

  /**
   * Returns how often the bounds of quantiles and chances shall hold.
   *
   * @return the share, above 0 and below 1
   */
  public double confidenceShare() {
    return confidence;
  }

  /** Rows for shares. */
  int shareRows() {
    return shareRows;
  }

  /**
   * Returns the ranges that bear on the arrangement.
   *
   * @return those with an input that is not of another arrangement
   */
  public List<Range> bearing() {
    return ranges.stream().filter(range -> !own(range).isEmpty()).toList();
  }

  /** Inputs of a range that bear on the arrangement, as those of a plan with it alone. */
  private List<Input> own(Range range) {
    List<Input> own = new ArrayList<>();
    String here = "/arrangements/" + plan.arrangements().indexOf(find()) + "/";
    for (Input input : range.inputs()) {
      String pointer = input.pointer();
      if (!pointer.startsWith("/arrangements/")) {
        own.add(input);
      } else if (pointer.startsWith(here)) {
        own.add(Input.parse("/arrangements/0/" + pointer.substring(here.length())));
      }
    }
    return own;
  }

  private Arrangement find() {
    return Evaluation.find(plan, arrangement);
  }

  /** For each range its group: correlated ones together; -1 for one that bears on nothing. */
  int[] groups() {
    int n = ranges.size();
    double[][] matrix = matrix();
    int[] root = new int[n];
    for (int i = 0; i < n; i++) {
      root[i] = i;
    }
    for (int i = 0; i < n; i++) {
      for (int j = 0; j < i; j++) {
        if (matrix[i][j] != 0) {
          int from = Math.max(root[i], root[j]);
          int to = Math.min(root[i], root[j]);
          for (int k = 0; k < n; k++) {
            root[k] = root[k] == from ? to : root[k];
          }
        }
      }
    }
    int[] groups = new int[n];
    Map<Integer, Integer> numbers = new LinkedHashMap<>();
    Set<Integer> bearing = new HashSet<>();
    for (int i = 0; i < n; i++) {
      if (!own(ranges.get(i)).isEmpty()) {
        bearing.add(root[i]);
      }
    }
    for (int i = 0; i < n; i++) {
      groups[i] =
          bearing.contains(root[i]) ? numbers.computeIfAbsent(root[i], key -> numbers.size()) : -1;
    }
    return groups;
  }

  /** Corners of the box of intervals, distributions at their medians; ends one by one if many. */
  private List<double[]> corners() {
    double[] middle = new double[ranges.size()];
    List<Integer> boxed = new ArrayList<>();
    for (int i = 0; i < middle.length; i++) {
      middle[i] = ranges.get(i).spread().at(0.5);
      if (ranges.get(i).spread().isInterval() && !own(ranges.get(i)).isEmpty()) {
        boxed.add(i);
      }
    }
    List<double[]> corners = new ArrayList<>();
    boolean all = boxed.size() <= MOST_CORNERED;
    int count = boxed.isEmpty() ? 0 : all ? 1 << boxed.size() : 2 * boxed.size();
    for (int corner = 0; corner < count; corner++) {
      double[] at = middle.clone();
      for (int k = 0; k < boxed.size(); k++) {
        if (all || corner / 2 == k) {
          boolean upper = all ? ((corner >>> k) & 1) == 1 : corner % 2 == 1;
          at[boxed.get(k)] = ranges.get(boxed.get(k)).spread().at(upper ? 1 : 0);
        }
      }
      corners.add(at);
    }
    return corners;
  }

  private SampleRun begin() {
    Plan alone = plan.toBuilder().arrangements(List.of(find())).build();
    List<List<Input>> inputs = ranges.stream().map(this::own).toList();
    double @Nullable [][] factor = correlations.isEmpty() ? null : NormalKernel.factor(matrix());
    return new SampleRun(
        new SampleRun.Spec(groups(), readings.size(), samples, shareRows, SCRAMBLES, corners()),
        seed,
        uniform -> {
          if (factor != null) {
            NormalKernel.correlate(factor, uniform);
          }
          for (int i = 0; i < uniform.length; i++) {
            uniform[i] = ranges.get(i).spread().at(uniform[i]);
          }
          return uniform;
        },
        (values, found) -> evaluate(alone, inputs, values, found));
  }

  private byte evaluate(Plan alone, List<List<Input>> inputs, double[] values, double[] found) {
    try {
      Plan drawn = alone;
      for (int i = 0; i < values.length; i++) {
        for (Input input : inputs.get(i)) {
          drawn = input.with(drawn, values[i]);
        }
      }
      Evaluation evaluation = Evaluation.of(drawn, arrangement, readings);
      for (int i = 0; i < found.length; i++) {
        found[i] = readings.get(i).value(evaluation).si();
      }
      return evaluation.slow() instanceof LostStability
          ? UNSTABLE
          : evaluation.slow() instanceof NotSolved ? NOT_SOLVED : SOLVED;
    } catch (PlanRefusedException e) {
      return REFUSED;
    }
  }

  /**
   * Runs the study in the caller's thread.
   *
   * @return the result
   */
  public RangeResult run() {
    return run(RangeWatch.NONE);
  }

  /**
   * Runs the study in the caller's thread.
   *
   * @param watch looks on, not null
   * @return the result
   * @throws CancellationException if the watch stops it
   */
  public RangeResult run(RangeWatch watch) {
    SampleRun run = begin();
    Block block = new Block(run, watch);
    for (int i = 0; i < run.blocks(); i++) {
      block.run(i, watch::isCancelled);
    }
    return new RangeResult(this, run);
  }

  /**
   * Runs the study on the threads of an executor. The result is that of {@link #run()}, bit for
   * bit.
   *
   * @param watch looks on, not null
   * @param executor does the work in many small tasks; not one whose only thread is the caller's
   * @return the result
   * @throws CancellationException if the watch stops it
   * @throws InterruptedException if the caller is interrupted; tasks that have not begun are
   *     dropped
   */
  public RangeResult run(RangeWatch watch, ExecutorService executor) throws InterruptedException {
    SampleRun run = begin();
    Block block = new Block(run, watch);
    List<Callable<Integer>> tasks = new ArrayList<>();
    for (int i = 0; i < run.blocks(); i++) {
      int number = i;
      tasks.add(() -> block.run(number, watch::isCancelled));
    }
    for (Future<Integer> future : executor.invokeAll(tasks)) {
      try {
        future.get();
      } catch (ExecutionException e) {
        if (e.getCause() instanceof RuntimeException cause) {
          throw cause;
        }
        if (e.getCause() instanceof Error cause) {
          throw cause;
        }
        throw new IllegalStateException(e);
      }
    }
    return new RangeResult(this, run);
  }

  /** Runs blocks and counts what is done. */
  private static final class Block {
    private final SampleRun run;
    private final RangeWatch watch;
    private int done;

    Block(SampleRun run, RangeWatch watch) {
      this.run = run;
      this.watch = watch;
    }

    int run(int number, BooleanSupplier cancelled) {
      int rows = run.run(number, cancelled);
      synchronized (this) {
        done += rows;
        watch.progress(done, run.rows());
      }
      return rows;
    }
  }
}
