package org.boleline.internal.sampling;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.stream.IntStream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.apache.commons.math3.random.SobolSequenceGenerator;
import org.boleline.Tolerances;
import org.junit.jupiter.api.Test;

class SobolPointsTest {
  private static final int COORDINATES = 12;

  @Test
  void plain_points_are_those_of_commons_math() {
    SobolSequenceGenerator generator = new SobolSequenceGenerator(COORDINATES);
    SobolPoints points = SobolPoints.of(COORDINATES, 0);

    for (int i = 0; i < 5000; i++) {
      int index = i;
      assertThat(IntStream.range(0, COORDINATES).mapToDouble(d -> points.plain(index, d)).toArray())
          .isEqualTo(generator.nextVector());
    }
  }

  /** Owen 1995: scrambling keeps a net a net. Each of 2^m equal cells holds one point. */
  @Property(tries = 20)
  void scrambled_points_fill_every_elementary_cell(
      @ForAll long seed, @ForAll @IntRange(min = 0, max = 40) int scramble) {
    SobolPoints points = SobolPoints.of(COORDINATES, seed);
    for (int d = 0; d < COORDINATES; d++) {
      boolean[] filled = new boolean[256];
      for (int i = 0; i < 256; i++) {
        filled[(int) (256 * points.at(i, d, scramble))] = true;
      }
      assertThat(filled).doesNotContain(false);
    }
    boolean[] filled = new boolean[256]; // the first two coordinates are a (0, 8, 2) net
    for (int i = 0; i < 256; i++) {
      int across = (int) (16 * points.at(i, 0, scramble));
      filled[16 * across + (int) (16 * points.at(i, 1, scramble))] = true;
    }
    assertThat(filled).doesNotContain(false);
  }

  @Test
  void one_scrambled_point_falls_anywhere_alike() {
    SobolPoints points = SobolPoints.of(2, 7);
    int draws = 20_000;
    double[] mean = new double[4];
    for (int scramble = 0; scramble < draws; scramble++) {
      double x = points.at(0, 0, scramble);
      double y = points.at(5, 1, scramble);
      mean[0] += x / draws;
      mean[1] += x * x / draws;
      mean[2] += y / draws;
      mean[3] += x * y / draws;
    }

    // moments of uniform draws; five standard deviations of a mean of 20 000
    double spread = 5 / Math.sqrt(12.0 * draws);
    assertThat(mean[0]).isCloseTo(0.5, Tolerances.absolute(spread));
    assertThat(mean[1]).isCloseTo(1 / 3.0, Tolerances.absolute(spread));
    assertThat(mean[2]).isCloseTo(0.5, Tolerances.absolute(spread));
    assertThat(mean[3]).isCloseTo(0.25, Tolerances.absolute(spread));
  }

  /** Owen 1997: the error of a smooth integral falls nearly as n^-1.5, that of chance as n^-0.5. */
  @Test
  void a_smooth_integral_is_far_nearer_than_by_chance() {
    SobolPoints points = SobolPoints.of(4, 3);
    int count = 4096;
    double sum = 0;
    for (int i = 0; i < count; i++) {
      double product = 1;
      for (int d = 0; d < 4; d++) {
        product *= 1 + (points.at(i, d, 0) - 0.5);
      }
      sum += product / count;
    }

    double byChance = Math.sqrt((Math.pow(1 + 1 / 12.0, 4) - 1) / count);
    assertThat(sum).isCloseTo(1, Tolerances.absolute(byChance / 50));
  }
}
