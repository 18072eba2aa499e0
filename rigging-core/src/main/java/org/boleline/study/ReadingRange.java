package org.boleline.study;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.boleline.explain.PlanRefusedException;
import org.boleline.explain.Refusal;
import org.boleline.internal.sampling.OrderKernel;
import org.boleline.internal.sampling.SampleRun;
import org.boleline.internal.sampling.ShareKernel;
import org.jspecify.annotations.Nullable;

/**
 * How far one reading may be off, as a study of ranges found.
 *
 * <p>Least and greatest are there for any ranges. Mean, quantiles and chances need distributions
 * for all of them: of an interval nobody knows which part is likelier.
 *
 * <p>Immutable and thread-safe.
 */
public final class ReadingRange {
  private final RangeStudy study;
  private final Reading reading;
  private final Found planned;
  private final double[] sorted;
  private final double[][] ofScrambles;
  private final double mean;
  private final double deviation;
  private final @Nullable FoundAt least;
  private final @Nullable FoundAt greatest;
  private final int interval;
  private final List<SpreadShare> shares;

  ReadingRange(RangeStudy study, SampleRun run, int index, Found planned) {
    this.study = study;
    this.reading = study.readings().get(index);
    this.planned = planned;
    double[] samples = run.samples(index);
    this.sorted = sorted(samples, 0, 1);
    this.ofScrambles = new double[RangeStudy.SCRAMBLES][];
    for (int scramble = 0; scramble < ofScrambles.length; scramble++) {
      ofScrambles[scramble] = sorted(samples, scramble, ofScrambles.length);
    }
    this.mean = mean(sorted);
    this.deviation = deviation(sorted, mean);
    this.least = extreme(run, index, 1);
    this.greatest = extreme(run, index, -1);
    this.interval = firstInterval();
    this.shares = shares(run, index);
  }

  private static double[] sorted(double[] values, int from, int step) {
    double[] found = new double[(values.length - from + step - 1) / step];
    int count = 0;
    for (int i = from; i < values.length; i += step) {
      if (!Double.isNaN(values[i])) {
        found[count++] = values[i];
      }
    }
    found = Arrays.copyOf(found, count);
    Arrays.sort(found);
    return found;
  }

  private static double mean(double[] values) {
    double centre = values.length == 0 ? 0 : values[values.length / 2];
    double sum = 0;
    for (double value : values) {
      sum += value - centre;
    }
    return centre + sum / values.length;
  }

  private static double deviation(double[] values, double mean) {
    double sum = 0;
    for (double value : values) {
      sum += (value - mean) * (value - mean);
    }
    return Math.sqrt(sum / (values.length - 1));
  }

  private int firstInterval() {
    for (Range range : study.bearing()) {
      if (range.spread().isInterval()) {
        return study.ranges().indexOf(range);
      }
    }
    return -1;
  }

  private @Nullable FoundAt extreme(SampleRun run, int index, int sign) {
    double best = Double.POSITIVE_INFINITY;
    int row = -1;
    double[] samples = run.samples(index);
    double[] corners = run.corners(index);
    int firstCorner = run.rows() - corners.length;
    for (int i = 0; i < samples.length + corners.length; i++) {
      double value = sign * (i < samples.length ? samples[i] : corners[i - samples.length]);
      if (value < best) {
        best = value;
        row = i < samples.length ? i : firstCorner + i - samples.length;
      }
    }
    if (row < 0) {
      return null;
    }
    double[] inputs = run.inputs(row);
    List<Figure> figures = new ArrayList<>();
    for (int i = 0; i < inputs.length; i++) {
      figures.add(Figure.of(inputs[i], study.ranges().get(i).spread().like().kind().orElse(null)));
    }
    return new FoundAt(figure(sign * best), row >= firstCorner, figures);
  }

  private Figure figure(double si) {
    return Figure.of(si, reading.kindOrNull());
  }

  private List<SpreadShare> shares(SampleRun run, int index) {
    List<SpreadShare> found = new ArrayList<>();
    int[] groups = study.groups();
    int count = Arrays.stream(groups).max().orElse(-1) + 1;
    for (int group = 0; group < count && study.shareRows() > 0; group++) {
      List<Range> members = new ArrayList<>();
      for (int i = 0; i < groups.length; i++) {
        if (groups[i] == group) {
          members.add(study.ranges().get(i));
        }
      }
      ShareKernel.Sums all = run.shares(index, group, -1, mean);
      if (!(all.rows() > 1 && all.variance() > 0)) {
        return List.of(); // nothing spreads, or nothing is solved
      }
      double[] first = new double[RangeStudy.SCRAMBLES];
      double[] total = new double[RangeStudy.SCRAMBLES];
      for (int scramble = 0; scramble < first.length; scramble++) {
        ShareKernel.Sums sums = run.shares(index, group, scramble, mean);
        first[scramble] = sums.alone() / all.variance();
        total[scramble] = sums.changed() / (2 * all.variance());
      }
      found.add(
          new SpreadShare(
              members,
              RangeFormulas.FIRST_SHARE.value(all.alone(), all.variance()),
              errorOr(first, 1),
              RangeFormulas.TOTAL_SHARE.value(all.changed(), all.variance()),
              errorOr(total, 1),
              all.rows()));
    }
    return List.copyOf(found);
  }

  /** Standard error over scrambles, or a stand-in where a scramble has no number. */
  private static double errorOr(double[] ofScrambles, double otherwise) {
    double spread = deviation(ofScrambles, mean(ofScrambles));
    return Double.isFinite(spread)
        ? RangeFormulas.STANDARD_ERROR.value(spread, ofScrambles.length)
        : otherwise;
  }

  private Found error(double[] ofScrambles) {
    double error = errorOr(ofScrambles, Double.NaN);
    return Double.isNaN(error)
        ? Found.none("a scramble has no figure: take more samples")
        : Found.of(figure(error));
  }

  /**
   * Returns what was read.
   *
   * @return the reading
   */
  public Reading reading() {
    return reading;
  }

  /**
   * Returns the name of what was read, and for a held load the end it is read at.
   *
   * @return for instance {@code base moment of stem 1, about to run}
   */
  public String name() {
    return reading.nameIn(Evaluation.find(study.plan(), study.arrangement()).motion());
  }

  /**
   * Returns the figure at the plan's own values.
   *
   * @return the figure, or why there is none
   */
  public Found asPlanned() {
    return planned;
  }

  /**
   * Returns how many samples have a figure.
   *
   * @return the count
   */
  public int count() {
    return sorted.length;
  }

  /**
   * Returns how many samples have none: unstable, refused, not solved, or without this reading.
   *
   * @return the count
   */
  public int lostCount() {
    return study.samples() - sorted.length;
  }

  /**
   * Returns the least figure found, over samples and corners.
   *
   * @return the figure and where; empty if no sample has one
   */
  public Optional<FoundAt> least() {
    return Optional.ofNullable(least);
  }

  /**
   * Returns the greatest figure found, over samples and corners.
   *
   * @return the figure and where; empty if no sample has one
   */
  public Optional<FoundAt> greatest() {
    return Optional.ofNullable(greatest);
  }

  /**
   * Returns the mean over samples that have a figure.
   *
   * @return the mean, or why there is none
   */
  public Found mean() {
    return ofDistributions(mean);
  }

  /**
   * Returns the standard error of the mean, from the independent scrambles (RNG-4).
   *
   * @return the error, or why there is none
   */
  public Found meanError() {
    double[] means = new double[ofScrambles.length];
    for (int i = 0; i < means.length; i++) {
      means[i] = mean(ofScrambles[i]);
    }
    Found error = error(means);
    return error.figure().isPresent() ? ofDistributions(error.si()) : error;
  }

  /**
   * Returns the standard deviation over samples that have a figure.
   *
   * @return the deviation, or why there is none
   */
  public Found deviation() {
    return ofDistributions(deviation);
  }

  private Found ofDistributions(double si) {
    if (interval >= 0) {
      return Found.none(
          "an interval says what can be, not how likely it is: "
              + study.ranges().get(interval).name());
    }
    return Double.isFinite(si)
        ? Found.of(figure(si))
        : Found.none("no sample, or one alone, has a figure");
  }

  /**
   * Returns a quantile over samples that have a figure.
   *
   * @equation P = sum(i = r to s - 1, choose(n, i) * p^i * (1 - p)^(n - i)) (RNG-3,
   *     docs/theory/ranges.md)
   * @validity distributions for all ranges; samples without a figure are left out, so it is the
   *     quantile among the others
   * @source statistics texts
   * @accuracy as its bounds and its standard error say
   * @param share the share of samples that stays below, above 0 and below 1
   * @return the quantile; empty if no sample has a figure
   * @throws PlanRefusedException if a range is an interval; holds its place
   * @throws IllegalArgumentException if the share is outside that
   */
  public Optional<QuantileFound> quantile(double share) {
    requireDistributions("a quantile");
    if (!(share > 0 && share < 1)) {
      throw new IllegalArgumentException("share: wants a number above 0 and below 1, got " + share);
    }
    if (sorted.length == 0) {
      return Optional.empty();
    }
    int n = sorted.length;
    double miss = (1 - study.confidenceShare()) / 2;
    int r = OrderKernel.below(n, share, miss);
    int s = OrderKernel.above(n, share, miss);
    double[] each = new double[ofScrambles.length];
    for (int i = 0; i < each.length; i++) {
      double[] own = ofScrambles[i];
      each[i] = own.length == 0 ? Double.NaN : own[OrderKernel.rank(own.length, share) - 1];
    }
    return Optional.of(
        new QuantileFound(
            share,
            figure(sorted[OrderKernel.rank(n, share) - 1]),
            bound(r),
            bound(s),
            RangeFormulas.QUANTILE_CONFIDENCE.value(n, share, r, s),
            error(each)));
  }

  private Found bound(int rank) {
    return rank >= 1 && rank <= sorted.length
        ? Found.of(figure(sorted[rank - 1]))
        : Found.none("too few samples for a bound with this confidence");
  }

  /**
   * Returns the chance that the reading exceeds a limit.
   *
   * @equation q such that sum(i = k to n, choose(n, i) * q^i * (1 - q)^(n - i)) = c (RNG-7,
   *     docs/theory/ranges.md)
   * @validity distributions for all ranges; no better than they are
   * @source statistics texts
   * @accuracy as its bounds say
   * @param limit the limit, of the kind of the reading, not null
   * @return the chance with its bounds
   * @throws PlanRefusedException if a range is an interval; holds its place
   * @throws IllegalArgumentException if the limit is of another kind
   */
  public Chance chanceOver(Figure limit) {
    limit.requireKind(reading.kindOrNull());
    requireDistributions("a chance over a limit");
    int above = 0;
    for (double value : sorted) {
      above += value > limit.si() ? 1 : 0;
    }
    int n = study.samples();
    double miss = (1 - study.confidenceShare()) / 2;
    return new Chance(
        limit,
        above,
        lostCount(),
        n,
        RangeFormulas.LEAST_CHANCE.value(n, above, miss),
        1 - RangeFormulas.LEAST_CHANCE.value(n, n - above - lostCount(), miss),
        study.confidenceShare());
  }

  private void requireDistributions(String what) {
    if (interval >= 0) {
      throw new PlanRefusedException(
          List.of(
              new Refusal(
                  Refusal.Code.CONFLICT,
                  "/ranges/" + interval + "/interval",
                  "a distribution for every range, as " + what + " is asked for",
                  "an interval, which gives only least and greatest")));
    }
  }

  /**
   * Returns what matters most: the share of the spread that each range makes.
   *
   * <p>Where a range is an interval, it was drawn evenly from end to end: a way to look through the
   * box, not a statement of what is likely.
   *
   * @equation S = A / V; T = D / (2 * V) (RNG-5, RNG-6, docs/theory/ranges.md)
   * @validity ranges independent, or correlated ones taken as one
   * @source Saltelli et al. 2010; Jansen 1999
   * @accuracy as its standard errors say
   * @return a share for each range or group of correlated ones that bears on the arrangement, in
   *     their order; empty if none were asked for or nothing spreads
   */
  public List<SpreadShare> shares() {
    return shares;
  }

  /** The range in words; empty if no sample has a figure. */
  Optional<String> words() {
    if (least == null || greatest == null) {
      return Optional.empty();
    }
    String ends = least.value().rounded() + " to " + greatest.value().rounded();
    return Optional.of(
        interval >= 0
            ? ends + " found over the box"
            : "5 to 95 percent: "
                + quantile(0.05).orElseThrow().value().rounded()
                + " to "
                + quantile(0.95).orElseThrow().value().rounded()
                + "; median "
                + quantile(0.5).orElseThrow().value().rounded());
  }

  @Override
  public String toString() {
    return reading.pointer()
        + ": "
        + (least == null || greatest == null
            ? "none"
            : least.value().text() + " to " + greatest.value().text());
  }
}
