package org.boleline.internal.sampling;

import java.util.Arrays;
import java.util.List;
import java.util.concurrent.CancellationException;
import java.util.function.BooleanSupplier;
import java.util.function.UnaryOperator;

/**
 * Runs a model over samples, over the further rows that shares of variance need, and over given
 * corners.
 *
 * <p>Rows are numbered: samples first, then for each row of shares the run with inputs b and one
 * run for each group of inputs, then the corners. A row follows from its number alone and has its
 * own place in the results, so blocks of rows can run in any order and on any thread.
 */
public final class SampleRun {
  /** Rows of a block. */
  public static final int BLOCK = 32;

  /** A model: numbers in, numbers out. */
  @FunctionalInterface
  public interface Model {
    /**
     * Runs the model.
     *
     * @param inputs one number for each input; not to be kept
     * @param readings where the results go; NaN for one that has no number
     * @return how it ended, in the code of the model; 0 for a run with results
     */
    byte run(double[] inputs, double[] readings);
  }

  /** What is run. */
  public static final class Spec {
    private final int[] groups;
    private final int groupCount;
    private final int readings;
    private final int samples;
    private final int shareRows;
    private final int scrambles;
    private final double[][] corners;

    /**
     * States what is run.
     *
     * @param groups for each input its group; groups count from 0
     * @param readings number of results
     * @param samples number of samples
     * @param shareRows number of rows for shares, at most {@code samples}
     * @param scrambles number of independent scrambles, dealt out in turn
     * @param corners further inputs to run
     */
    public Spec(
        int[] groups,
        int readings,
        int samples,
        int shareRows,
        int scrambles,
        List<double[]> corners) {
      this.groups = groups.clone();
      this.groupCount = Arrays.stream(groups).max().orElse(-1) + 1;
      this.readings = readings;
      this.samples = samples;
      this.shareRows = shareRows;
      this.scrambles = scrambles;
      this.corners = corners.stream().map(double[]::clone).toArray(double[][]::new);
    }
  }

  private final Spec spec;
  private final SobolPoints points;
  private final UnaryOperator<double[]> draw;
  private final Model model;
  private final double[][] a;
  private final double[][] b;
  private final double[][][] ab;
  private final double[][] atCorners;
  private final byte[] endings;

  /**
   * Makes a run that has not begun.
   *
   * @param spec what is run
   * @param seed seed of the scrambles
   * @param draw makes inputs of uniform draws, in place or anew
   * @param model the model
   */
  public SampleRun(Spec spec, long seed, UnaryOperator<double[]> draw, Model model) {
    this.spec = spec;
    this.points = SobolPoints.of(2 * spec.groups.length, seed);
    this.draw = draw;
    this.model = model;
    this.a = new double[spec.readings][spec.samples];
    this.b = new double[spec.readings][spec.shareRows];
    this.ab = new double[spec.groupCount][spec.readings][spec.shareRows];
    this.atCorners = new double[spec.readings][spec.corners.length];
    this.endings = new byte[rows()];
  }

  /**
   * Returns the number of rows of all kinds.
   *
   * @return how often the model runs
   */
  public int rows() {
    return Math.addExact(
        spec.samples + spec.corners.length,
        Math.multiplyExact(spec.shareRows, spec.groupCount + 1));
  }

  /**
   * Returns the number of blocks.
   *
   * @return blocks that make up all rows
   */
  public int blocks() {
    return (rows() + BLOCK - 1) / BLOCK;
  }

  /**
   * Runs one block.
   *
   * @param block which one
   * @param cancelled asked before each row
   * @return number of rows run
   * @throws CancellationException if {@code cancelled} says so
   */
  public int run(int block, BooleanSupplier cancelled) {
    int from = block * BLOCK;
    int to = Math.min(rows(), from + BLOCK);
    double[] found = new double[spec.readings];
    for (int row = from; row < to; row++) {
      if (cancelled.getAsBoolean()) {
        throw new CancellationException();
      }
      Arrays.fill(found, Double.NaN);
      endings[row] = model.run(inputs(row), found);
      keep(row, found);
    }
    return to - from;
  }

  private void keep(int row, double[] found) {
    int place = row;
    double[][] kept = a;
    if (isCorner(row)) {
      place = row - (rows() - spec.corners.length);
      kept = atCorners;
    } else if (row >= spec.samples) {
      int group = (row - spec.samples) % (spec.groupCount + 1) - 1;
      place = (row - spec.samples) / (spec.groupCount + 1);
      kept = group < 0 ? b : ab[group];
    }
    for (int i = 0; i < found.length; i++) {
      kept[i][place] = found[i];
    }
  }

  private boolean isCorner(int row) {
    return row >= rows() - spec.corners.length;
  }

  /**
   * Returns the inputs of a row.
   *
   * @param row which one
   * @return one number for each input
   */
  public double[] inputs(int row) {
    if (isCorner(row)) {
      return spec.corners[row - (rows() - spec.corners.length)].clone();
    }
    boolean sample = row < spec.samples;
    int beyond = row - spec.samples;
    int group = sample ? -1 : beyond % (spec.groupCount + 1) - 1;
    int number = sample ? row : beyond / (spec.groupCount + 1);
    double[] uniform = new double[spec.groups.length];
    for (int i = 0; i < uniform.length; i++) {
      boolean second = !sample && (group < 0 || spec.groups[i] == group);
      uniform[i] =
          points.at(
              number / spec.scrambles,
              second ? spec.groups.length + i : i,
              number % spec.scrambles);
    }
    return draw.apply(uniform);
  }

  /**
   * Returns how a row ended.
   *
   * @param row which one
   * @return the model's code
   */
  public byte ending(int row) {
    return endings[row];
  }

  /**
   * Returns the results of the samples.
   *
   * @param reading which result
   * @return one number for each sample, NaN where there is none; not to be changed
   */
  public double[] samples(int reading) {
    return a[reading];
  }

  /**
   * Returns the results at the corners.
   *
   * @param reading which result
   * @return one number for each corner, NaN where there is none; not to be changed
   */
  public double[] corners(int reading) {
    return atCorners[reading];
  }

  /**
   * Returns the sums that shares of variance come from.
   *
   * @param reading which result
   * @param group which group of inputs
   * @param scramble rows of one scramble; -1 for all
   * @param centre a number near the mean
   * @return the sums
   */
  public ShareKernel.Sums shares(int reading, int group, int scramble, double centre) {
    ShareKernel.Sums sums = new ShareKernel.Sums();
    sums.add(
        a[reading],
        b[reading],
        ab[group][reading],
        Math.max(scramble, 0),
        scramble < 0 ? 1 : spec.scrambles,
        centre);
    return sums;
  }
}
