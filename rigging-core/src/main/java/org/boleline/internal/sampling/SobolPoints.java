package org.boleline.internal.sampling;

import org.apache.commons.math3.random.SobolSequenceGenerator;

/**
 * Points of a Sobol sequence, each scramble of them by Owen's nested scrambling.
 *
 * <p>A point is found from its index alone: it is the exclusive or of the direction numbers that
 * the Gray code of its index names. The direction numbers are read off the generator of Commons
 * Math. Scrambling flips each binary digit of a coordinate by a coin that hangs on the digits
 * before it; the coins are a hash of the seed, the scramble, the coordinate and those digits.
 */
public final class SobolPoints {
  /** Points that can be told apart. */
  public static final int MOST_POINTS = 1 << 30;

  private static final int BITS = 52;
  private static final int DEPTH = 32;
  private static final double SCALE = 0x1p-52;
  private static final long GOLDEN = 0x9E3779B97F4A7C15L;

  private final long[][] directions;
  private final long seed;

  private SobolPoints(long[][] directions, long seed) {
    this.directions = directions;
    this.seed = seed;
  }

  /**
   * Obtains the points of a space.
   *
   * @param dimension number of coordinates, 1 to 1000
   * @param seed seed of the scrambles
   * @return the points
   */
  public static SobolPoints of(int dimension, long seed) {
    SobolSequenceGenerator generator = new SobolSequenceGenerator(dimension);
    long[][] directions = new long[dimension][30];
    long[] before = new long[dimension];
    for (int k = 0; k < 30; k++) {
      double[] point = generator.skipTo(1 << k); // its Gray code is 2^k + 2^(k-1)
      for (int d = 0; d < dimension; d++) {
        directions[d][k] = (long) (point[d] / SCALE) ^ before[d];
        before[d] = directions[d][k];
      }
    }
    return new SobolPoints(directions, seed);
  }

  /**
   * Returns a coordinate of a scrambled point.
   *
   * @param index index of the point, from 0 to below {@link #MOST_POINTS}
   * @param coordinate which coordinate
   * @param scramble which of the independent scrambles, from 0
   * @return the coordinate, above 0 and below 1
   */
  public double at(int index, int coordinate, int scramble) {
    long key = mix(mix(seed + GOLDEN * (scramble + 1L)) + GOLDEN * (coordinate + 1L));
    return (scrambled(digits(index, coordinate), key) + 0.5) * SCALE;
  }

  /**
   * Returns a coordinate of a point as the sequence has it.
   *
   * @param index index of the point
   * @param coordinate which coordinate
   * @return the coordinate, from 0 to below 1
   */
  public double plain(int index, int coordinate) {
    return digits(index, coordinate) * SCALE;
  }

  private long digits(int index, int coordinate) {
    long found = 0;
    for (int gray = index ^ (index >>> 1); gray != 0; gray &= gray - 1) {
      found ^= directions[coordinate][Integer.numberOfTrailingZeros(gray)];
    }
    return found;
  }

  private static long scrambled(long digits, long key) {
    long found = 0;
    for (int depth = 0; depth < DEPTH; depth++) {
      int place = BITS - 1 - depth;
      long branch = (1L << depth) | (digits >>> (place + 1));
      found |= (((digits >>> place) ^ mix(key + GOLDEN * branch)) & 1) << place;
    }
    long last = (1L << DEPTH) | (digits >>> (BITS - DEPTH));
    return found | (mix(key + GOLDEN * last) >>> (64 - (BITS - DEPTH)));
  }

  /** The finalizer of SplitMix64: every bit of the result hangs on every bit of the input. */
  private static long mix(long bits) {
    long z = bits;
    z = (z ^ (z >>> 30)) * 0xBF58476D1CE4E5B9L;
    z = (z ^ (z >>> 27)) * 0x94D049BB133111EBL;
    return z ^ (z >>> 31);
  }
}
