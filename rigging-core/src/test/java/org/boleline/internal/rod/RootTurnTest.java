package org.boleline.internal.rod;

import static org.assertj.core.api.Assertions.assertThat;

import org.boleline.Tolerances;
import org.junit.jupiter.api.Test;

/** Series and closed form are the same function, and the slopes are theirs. */
class RootTurnTest {
  private static RootTurn at(double f) {
    RootTurn turn = new RootTurn();
    turn.of(f);
    return turn;
  }

  @Test
  void the_series_meets_the_closed_form() {
    RootTurn below = at(Math.nextDown(0.3));
    RootTurn above = at(0.3);
    assertThat(below.first).isCloseTo(above.first, Tolerances.relative(Tolerances.RESIDUAL));
    assertThat(below.second).isCloseTo(above.second, Tolerances.relative(Tolerances.RESIDUAL));
    assertThat(below.firstSlope)
        .isCloseTo(above.firstSlope, Tolerances.relative(Tolerances.RESIDUAL));
    assertThat(below.secondSlope)
        .isCloseTo(above.secondSlope, Tolerances.relative(Tolerances.RESIDUAL));
  }

  @Test
  void slopes_are_derivatives_over_the_size() {
    for (double f : new double[] {0.05, 0.2, 0.5, 1, 2, 3}) {
      double h = 1e-4;
      RootTurn turn = at(f);
      assertThat((at(f + h).first - at(f - h).first) / (2 * h * f))
          .isCloseTo(turn.firstSlope, Tolerances.relative(Tolerances.CENTRAL_DIFFERENCE));
      assertThat((at(f + h).second - at(f - h).second) / (2 * h * f))
          .isCloseTo(turn.secondSlope, Tolerances.relative(Tolerances.CENTRAL_DIFFERENCE));
    }
  }
}
