package org.boleline.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.function.DoubleUnaryOperator;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.boleline.Tolerances;
import org.boleline.units.Kind;
import org.hipparchus.distribution.continuous.LogNormalDistribution;
import org.hipparchus.distribution.continuous.NormalDistribution;
import org.hipparchus.distribution.continuous.TriangularDistribution;
import org.junit.jupiter.api.Test;

/** Distributions against those of another library, Hipparchus, and by hand. */
class SpreadTest {
  private static Figure mass(double kilograms) {
    return Figure.of(kilograms, Kind.MASS);
  }

  private static void same(Spread spread, DoubleUnaryOperator expected) {
    for (double p = 0.001; p < 1; p += 0.013) {
      assertThat(spread.quantile(p).si())
          .isCloseTo(expected.applyAsDouble(p), Tolerances.relative(Tolerances.OTHER_QUANTILES));
    }
  }

  @Test
  void quantiles_are_those_of_another_library() {
    same(
        Spread.normal(mass(90), 0.1),
        p -> new NormalDistribution(90, 9).inverseCumulativeProbability(p));
    same(
        Spread.normal(mass(90), mass(30)),
        p -> new NormalDistribution(90, 30).inverseCumulativeProbability(p));
    double s = Math.sqrt(Math.log(1 + 0.09));
    same(
        Spread.lognormal(mass(90), 0.3),
        p ->
            new LogNormalDistribution(Math.log(90) - s * s / 2, s).inverseCumulativeProbability(p));
    same(
        Spread.triangular(mass(60), mass(70), mass(120)),
        p -> new TriangularDistribution(60, 70, 120).inverseCumulativeProbability(p));
    same(Spread.uniform(mass(60), mass(120)), p -> 60 + 60 * p);
  }

  @Test
  void a_cut_distribution_is_the_rest_made_whole() {
    NormalDistribution normal = new NormalDistribution(90, 30);
    double below = normal.cumulativeProbability(60);
    double rest = normal.cumulativeProbability(150) - below;

    same(
        Spread.normal(mass(90), mass(30)).atLeast(mass(60)).atMost(mass(150)),
        p -> normal.inverseCumulativeProbability(below + p * rest));
  }

  @Test
  void two_quantiles_come_back() {
    Spread.Quantile lower = new Spread.Quantile(0.05, mass(70));
    Spread.Quantile upper = new Spread.Quantile(0.9, mass(130));
    for (Spread spread :
        new Spread[] {Spread.normal(lower, upper), Spread.lognormal(lower, upper)}) {
      assertThat(spread.quantile(0.05).si())
          .isCloseTo(70, Tolerances.relative(Tolerances.OTHER_QUANTILES));
      assertThat(spread.quantile(0.9).si())
          .isCloseTo(130, Tolerances.relative(Tolerances.OTHER_QUANTILES));
    }
  }

  @Property(tries = 200)
  void more_share_is_more_and_none_leaves_the_cut(
      @ForAll @DoubleRange(min = 0.01, max = 0.98) double p,
      @ForAll @DoubleRange(min = 0.05, max = 1) double variation) {
    for (Spread spread :
        new Spread[] {
          Spread.normal(mass(90), variation).atLeast(mass(45)),
          Spread.lognormal(mass(90), variation).atMost(mass(200)),
          Spread.triangular(mass(10), mass(90), mass(90 + 100 * variation)),
          Spread.interval(mass(10), mass(10 + 100 * variation))
        }) {
      assertThat(spread.at(p)).isLessThan(spread.at(p + 0.01));
    }
    assertThat(Spread.normal(mass(90), variation).atLeast(mass(45)).at(Double.MIN_NORMAL))
        .isGreaterThanOrEqualTo(45);
  }

  @Test
  void what_is_no_spread_is_refused_by_name() {
    assertThatThrownBy(() -> Spread.interval(mass(2), mass(1)))
        .hasMessageStartingWith("most: wants");
    assertThatThrownBy(() -> Spread.normal(mass(2), 0)).hasMessageStartingWith("variation: wants");
    assertThatThrownBy(() -> Spread.normal(mass(0), 0.1))
        .hasMessageStartingWith("deviation: wants");
    assertThatThrownBy(() -> Spread.lognormal(mass(-2), 0.1)).hasMessageStartingWith("mean: wants");
    assertThatThrownBy(() -> Spread.uniform(mass(1), Figure.ofRatio(2)))
        .isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> Spread.uniform(mass(1), mass(2)).atLeast(mass(3)))
        .hasMessageStartingWith("atLeast: wants");
    assertThatThrownBy(() -> Spread.interval(mass(1), mass(2)).atLeast(mass(1.5)))
        .hasMessageStartingWith("atLeast: wants");
  }
}
