package org.boleline.drop;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.boleline.units.Amounts.degrees;
import static org.boleline.units.Amounts.kilograms;
import static org.boleline.units.Amounts.metres;
import static org.boleline.units.Amounts.seconds;

import org.boleline.Tolerances;
import org.boleline.explain.PlanRefusedException;
import org.boleline.units.Kind;
import org.boleline.units.Si;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class SwingHistoryTest {
  private static final double G = 9.80665;

  /**
   * The time to and fro is 2 pi sqrt(L/g) over the arithmetic-geometric mean of 1 and cos(a/2): the
   * complete elliptic integral of the pendulum by the mean of Gauss, from memory.
   */
  private static double period(double length, double angle) {
    double a = 1;
    double b = Math.cos(angle / 2);
    for (int i = 0; i < 40; i++) {
      double mean = (a + b) / 2;
      b = Math.sqrt(a * b);
      a = mean;
    }
    return 2 * Math.PI * Math.sqrt(length / G) / a;
  }

  @ParameterizedTest
  @ValueSource(doubles = {5, 40, 75, 90})
  void a_taut_swing_is_back_after_the_time_of_the_closed_form(double angle) {
    double length = 6;
    double period = period(length, Math.toRadians(angle));
    Swing swing = Swing.of(kilograms(100), metres(length), degrees(angle));
    SwingHistory history = swing.history(seconds(period / 4), seconds(2 * period));
    assertThat(history.count()).isEqualTo(9);
    double[][] piece = history.piece(Kind.LENGTH);
    double out = length * Math.sin(Math.toRadians(angle));
    double[] wanted = {out, 0, -out, 0, out, 0, -out, 0, out};
    for (int i = 0; i < wanted.length; i++) {
      assertThat(piece[i][0]).isCloseTo(wanted[i], within(Tolerances.DRAWN));
    }
    // at the lowest place the tension is that of the swing's own answer
    assertThat(history.tensions(Kind.FORCE)[1])
        .isCloseTo(
            Si.value(swing.greatestTension(), Kind.FORCE, "tension"),
            within(Tolerances.DRAWN * 100 * G));
  }

  @Test
  void a_slack_rope_lets_the_piece_fall_freely_until_it_is_taut() {
    Swing swing = Swing.of(kilograms(100), metres(6), degrees(60)).withSlack(metres(1));
    SwingHistory history = swing.history(seconds(0.01), seconds(4));
    assertThat(history.count()).isEqualTo(401);
    double caught = Si.value(swing.catches().get(0).flightTime(), Kind.TIME, "time");
    double[][] piece = history.piece(Kind.LENGTH);
    double[] times = history.times(Kind.TIME);
    double[] tensions = history.tensions(Kind.FORCE);
    double top = -5 * Math.cos(Math.toRadians(60));
    for (int i = 0; i < times.length; i++) {
      if (times[i] < caught) {
        double fallen = top - G * times[i] * times[i] / 2;
        assertThat(piece[i][2]).isCloseTo(fallen, within(Tolerances.DRAWN));
        assertThat(tensions[i]).isZero();
      } else if (tensions[i] > 0) {
        assertThat(Math.hypot(piece[i][0], piece[i][2])).isCloseTo(6, within(Tolerances.DRAWN));
      }
    }
  }

  @Test
  void times_outside_their_range_are_refused_together() {
    Swing swing = Swing.of(kilograms(100), metres(6), degrees(60));
    assertThatThrownBy(() -> swing.history(seconds(0), seconds(1000)))
        .isInstanceOf(PlanRefusedException.class)
        .hasMessageContaining("/every")
        .hasMessageContaining("/until");
  }
}
