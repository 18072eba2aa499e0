package org.boleline.internal.sampling;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.List;
import org.boleline.Tolerances;
import org.junit.jupiter.api.Test;

class SampleRunTest {
  private static final double A = 7;
  private static final double B = 0.1;

  /** Ishigami and Homma 1990: a function whose shares are known in closed form. */
  private static byte ishigami(double[] x, double[] found) {
    double s2 = Math.sin(x[1]);
    found[0] = Math.sin(x[0]) * (1 + B * Math.pow(x[2], 4)) + A * s2 * s2;
    return 0;
  }

  private static double[] cube(double[] u) {
    return Arrays.stream(u).map(v -> Math.PI * (2 * v - 1)).toArray();
  }

  private static SampleRun run(int rows, int[] groups) {
    SampleRun run =
        new SampleRun(
            new SampleRun.Spec(groups, 1, rows, rows, 8, List.of()),
            11,
            SampleRunTest::cube,
            SampleRunTest::ishigami);
    for (int block = run.blocks() - 1; block >= 0; block--) {
      run.run(block, () -> false);
    }
    return run;
  }

  @Test
  void shares_of_the_ishigami_function_are_those_of_its_integrals() {
    // E[x^4] = pi^4/5 and E[x^8] = pi^8/9 on (-pi, pi); sin^2 has mean 1/2 and variance 1/8
    double e4 = Math.pow(Math.PI, 4) / 5;
    double e8 = Math.pow(Math.PI, 8) / 9;
    double alone1 = (1 + B * e4) * (1 + B * e4) / 2;
    double alone2 = A * A / 8;
    double together13 = B * B * (e8 - e4 * e4) / 2;
    double all = alone1 + alone2 + together13;
    double[] first = {alone1 / all, alone2 / all, 0};
    double[] total = {(alone1 + together13) / all, alone2 / all, together13 / all};
    // as printed in texts on sensitivity analysis for a = 7, b = 0.1
    assertThat(first[0]).isCloseTo(0.3139, Tolerances.printedTo(1e-4));
    assertThat(first[1]).isCloseTo(0.4424, Tolerances.printedTo(1e-4));
    assertThat(total[0]).isCloseTo(0.5576, Tolerances.printedTo(1e-4));
    assertThat(total[2]).isCloseTo(0.2437, Tolerances.printedTo(1e-4));

    SampleRun run = run(1 << 17, new int[] {0, 1, 2});

    for (int i = 0; i < 3; i++) {
      ShareKernel.Sums sums = run.shares(0, i, -1, A / 2);
      assertThat(sums.variance()).isCloseTo(all, Tolerances.relative(Tolerances.MANY_SAMPLES));
      assertThat(sums.alone() / sums.variance())
          .isCloseTo(first[i], Tolerances.absolute(Tolerances.MANY_SAMPLES));
      assertThat(sums.changed() / sums.variance() / 2)
          .isCloseTo(total[i], Tolerances.absolute(Tolerances.MANY_SAMPLES));
    }
  }

  @Test
  void a_group_of_inputs_has_the_share_of_all_of_them() {
    SampleRun run = run(1 << 16, new int[] {0, 1, 0});
    ShareKernel.Sums sums = run.shares(0, 0, -1, A / 2);

    assertThat(sums.alone() / sums.variance())
        .isCloseTo(1 - 0.4424, Tolerances.absolute(Tolerances.MANY_SAMPLES));
    assertThat(sums.changed() / sums.variance() / 2)
        .isCloseTo(1 - 0.4424, Tolerances.absolute(Tolerances.MANY_SAMPLES));
  }

  @Test
  void rows_without_a_number_are_left_out_and_counted() {
    SampleRun run =
        new SampleRun(
            new SampleRun.Spec(
                new int[1], 1, 64, 64, 4, List.of(new double[] {0}, new double[] {1})),
            1,
            u -> u,
            (x, found) -> {
              found[0] = x[0] < 0.25 ? Double.NaN : x[0];
              return (byte) (x[0] < 0.25 ? 1 : 0);
            });
    for (int block = 0; block < run.blocks(); block++) {
      run.run(block, () -> false);
    }

    assertThat(run.rows()).isEqualTo(64 + 2 * 64 + 2);
    assertThat(Arrays.stream(run.samples(0)).filter(Double::isNaN).count()).isEqualTo(16);
    assertThat(run.corners(0)).containsExactly(Double.NaN, 1);
    assertThat(run.ending(run.rows() - 2)).isEqualTo((byte) 1);
    assertThat(run.shares(0, 0, -1, 0.5).rows()).isBetween(30, 40); // near 9/16 of 64
  }
}
