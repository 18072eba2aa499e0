package org.boleline.internal.section;

import static org.assertj.core.api.Assertions.assertThat;
import static org.boleline.Tolerances.EXACT;
import static org.boleline.Tolerances.ROUNDING;
import static org.boleline.Tolerances.relative;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.hipparchus.analysis.integration.TrapezoidIntegrator;
import org.junit.jupiter.api.Test;

class LogKernelTest {
  private static final double[] AT = {0, 3, 6, 6, 9};
  private static final double[] DIAMETER = {0.4, 0.35, 0.30, 0.25, 0.1};

  private static double diameter(double at) {
    if (at < 3) {
      return 0.4 - 0.05 * at / 3;
    }
    return at < 6 ? 0.35 - 0.05 * (at - 3) / 3 : 0.25 - 0.15 * (at - 6) / 3;
  }

  /** Second route: trapezia over the area, which is smooth between stations. */
  @Test
  void volume_and_moment_agree_with_a_sum_over_slices() {
    TrapezoidIntegrator trapezia = new TrapezoidIntegrator(1e-12, 1e-12, 3, 24);
    double volume = 0;
    double moment = 0;
    double[] parts = {1, 3, 6, 8};
    for (int i = 1; i < parts.length; i++) {
      double last = Math.nextDown(parts[i]);
      volume += trapezia.integrate(40_000_000, z -> slice(z), parts[i - 1], last);
      moment += trapezia.integrate(40_000_000, z -> z * slice(z), parts[i - 1], last);
    }
    assertThat(LogKernel.volumeBetween(AT, DIAMETER, 1, 8)).isCloseTo(volume, relative(EXACT));
    assertThat(LogKernel.firstMomentBetween(AT, DIAMETER, 1, 8)).isCloseTo(moment, relative(EXACT));
  }

  private static double slice(double at) {
    return Math.PI / 4 * diameter(at) * diameter(at);
  }

  @Property
  void parts_add_up_to_the_whole(
      @ForAll @DoubleRange(min = 0, max = 9) double a,
      @ForAll @DoubleRange(min = 0, max = 9) double b) {
    double low = Math.min(a, b);
    double high = Math.max(a, b);
    double whole = LogKernel.volumeBetween(AT, DIAMETER, 0, 9);
    double parts =
        LogKernel.volumeBetween(AT, DIAMETER, 0, low)
            + LogKernel.volumeBetween(AT, DIAMETER, low, high)
            + LogKernel.volumeBetween(AT, DIAMETER, high, 9);
    assertThat(parts).isCloseTo(whole, relative(10 * ROUNDING));
  }

  @Test
  void one_span_is_a_cone_frustum_with_its_balance_point() {
    double[] at = {0, 4};
    double[] diameter = {0.4, 0.1};
    double volume = LogKernel.volumeBetween(at, diameter, 0, 4);
    assertThat(volume).isCloseTo(LogKernel.coneFrustum(4, 0.4, 0.1), relative(ROUNDING));
    assertThat(LogKernel.firstMomentBetween(at, diameter, 0, 4) / volume)
        .isCloseTo(LogKernel.balancePoint(4, 0.4, 0.1), relative(ROUNDING));
  }
}
