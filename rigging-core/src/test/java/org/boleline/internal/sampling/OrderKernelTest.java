package org.boleline.internal.sampling;

import static org.assertj.core.api.Assertions.assertThat;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.boleline.Tolerances;
import org.junit.jupiter.api.Test;

class OrderKernelTest {
  /** By hand: the median of 5 lies between the least and the greatest with 1 - 2/2^5. */
  @Test
  void the_median_of_five_draws_by_hand() {
    assertThat(OrderKernel.between(5, 0.5, 1, 5))
        .isCloseTo(1 - 2 / 32.0, Tolerances.relative(Tolerances.EXACT));
    assertThat(OrderKernel.below(5, 0.5, 0.04)).isEqualTo(1);
    assertThat(OrderKernel.above(5, 0.5, 0.04)).isEqualTo(5);
    assertThat(OrderKernel.below(5, 0.5, 0.03)).isZero();
  }

  /** Wilks 1941, widely printed: 59 draws reach beyond the 95th percentile with 95 percent. */
  @Test
  void fifty_nine_draws_are_the_fewest_that_bound_the_95th_percentile() {
    assertThat(OrderKernel.above(59, 0.95, 0.05)).isEqualTo(59);
    assertThat(OrderKernel.above(58, 0.95, 0.05)).isEqualTo(59); // above all 58
  }

  /** By hand: no event in n draws leaves p with (1 - p)^n = miss; the rule of three. */
  @Test
  void a_chance_that_never_showed_by_hand() {
    assertThat(OrderKernel.leastChance(100, 0, 0.05)).isZero();
    assertThat(OrderKernel.mostChance(100, 0, 0.05))
        .isCloseTo(1 - Math.pow(0.05, 0.01), Tolerances.relative(Tolerances.EXACT));
    assertThat(OrderKernel.mostChance(100, 100, 0.05)).isEqualTo(1);
  }

  /** By hand: of two draws none is below the median with a chance of exactly a quarter. */
  @Test
  void at_a_tie_the_wider_bound_is_kept() {
    assertThat(OrderKernel.below(2, 0.5, 0.25)).isZero();
  }

  @Property(tries = 200)
  void ranks_cover_a_quantile_as_often_as_asked_and_no_narrower_ones_do(
      @ForAll @IntRange(min = 2, max = 3000) int n,
      @ForAll @DoubleRange(min = 0.01, max = 0.99) double p,
      @ForAll @DoubleRange(min = 0.5, max = 0.99) double confidence) {
    double miss = (1 - confidence) / 2;
    int r = OrderKernel.below(n, p, miss);
    int s = OrderKernel.above(n, p, miss);

    assertThat(r).isLessThan(s);
    assertThat(OrderKernel.between(n, p, r, s))
        .isGreaterThanOrEqualTo(confidence - Tolerances.ACCOUNT);
    assertThat(1 - OrderKernel.between(n, p, 0, s - 1))
        .isGreaterThanOrEqualTo(miss - Tolerances.ACCOUNT); // equal at a tie
    assertThat(1 - OrderKernel.between(n, p, r + 1, n + 1))
        .isGreaterThanOrEqualTo(miss - Tolerances.ACCOUNT); // equal at a tie
  }
}
