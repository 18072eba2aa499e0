package org.boleline.internal.sampling;

import static org.assertj.core.api.Assertions.assertThat;

import org.boleline.Tolerances;
import org.junit.jupiter.api.Test;

class NormalKernelTest {
  /** Tables of the normal distribution in statistics texts, to the figures printed there. */
  @Test
  void quantiles_are_those_of_printed_tables() {
    assertThat(NormalKernel.quantile(0.975)).isCloseTo(1.959964, Tolerances.printedTo(1e-6));
    assertThat(NormalKernel.quantile(0.95)).isCloseTo(1.644854, Tolerances.printedTo(1e-6));
    assertThat(NormalKernel.quantile(0.5)).isZero();
    assertThat(NormalKernel.share(1)).isCloseTo(0.841345, Tolerances.printedTo(1e-6));
    assertThat(NormalKernel.share(-3)).isCloseTo(0.00134990, Tolerances.printedTo(1e-8));
  }

  @Test
  void there_and_back_is_the_same_share() {
    for (double p = 1e-9; p < 1; p += 0.013) {
      assertThat(NormalKernel.share(NormalKernel.quantile(p)))
          .isCloseTo(p, Tolerances.relative(Tolerances.BACK_FROM_A_TAIL));
    }
  }

  /** Kruskal 1958: a normal copula of correlation r has the rank correlation 6/pi asin(r/2). */
  @Test
  void correlated_draws_have_the_rank_correlation_of_theory() {
    double r = 0.7;
    double[][] factor = NormalKernel.factor(new double[][] {{1, r, 0}, {r, 1, 0}, {0, 0, 1}});
    SobolPoints points = SobolPoints.of(3, 5);
    int count = 1 << 14;
    double product = 0;
    double other = 0;
    for (int i = 0; i < count; i++) {
      double[] u = {points.at(i, 0, 0), points.at(i, 1, 0), points.at(i, 2, 0)};
      double third = u[2];
      NormalKernel.correlate(factor, u);
      assertThat(u[2]).isEqualTo(third);
      product += 12 * (u[0] - 0.5) * (u[1] - 0.5) / count;
      other += 12 * (u[0] - 0.5) * (u[2] - 0.5) / count;
    }

    assertThat(product)
        .isCloseTo(6 / Math.PI * Math.asin(r / 2), Tolerances.absolute(Tolerances.MANY_SAMPLES));
    assertThat(other).isCloseTo(0, Tolerances.absolute(Tolerances.MANY_SAMPLES));
  }

  @Test
  void impossible_correlations_have_no_factor() {
    assertThat(NormalKernel.factor(new double[][] {{1, 0.9, -0.9}, {0.9, 1, 0.9}, {-0.9, 0.9, 1}}))
        .isNull();
    assertThat(NormalKernel.factor(new double[][] {{1, 1}, {1, 1}})).isNull();
  }
}
