package org.boleline.statics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.boleline.units.Amounts.metres;

import java.util.List;
import org.boleline.Tolerances;
import org.boleline.stem.Diameters;
import org.boleline.stem.PointMass;
import org.boleline.stem.Stem;
import org.boleline.units.Amounts;
import org.boleline.units.Kind;
import org.junit.jupiter.api.Test;

/** Stations that only rounding keeps apart. */
class RoundedStationsTest {
  private static final double LENGTH = 10;
  private static final double MIDDLE = 5;

  /** A stem with a step, a mass and a point in the middle, each as far off as told. */
  private static Solution solution(double step, double mass, double point, double end) {
    Stem.Builder stem =
        Rigs.straight(LENGTH, 0.4, 0.3, 0.3, 0.2, Rigs.wood(9e9, 900))
            .diameters(
                Diameters.of(
                    List.of(
                        Diameters.Entry.of(metres(0), metres(0.3)),
                        Diameters.Entry.of(metres(MIDDLE + step), metres(0.28)),
                        Diameters.Entry.of(metres(MIDDLE + step), metres(0.22)),
                        Diameters.Entry.of(metres(LENGTH), metres(0.2)))))
            .masses(List.of(PointMass.of(metres(MIDDLE + mass), Amounts.kilograms(20))));
    return Rigs.sound(stem, Rigs.ideal(LENGTH + end, MIDDLE + point), 500);
  }

  @Test
  void are_one_station() {
    double ulp = Math.ulp(LENGTH);
    double[] exact = Rigs.tipMovement(solution(0, 0, 0, 0));
    for (double[] off :
        new double[][] {{ulp, 0, -ulp, 0}, {0, ulp, 0, -ulp}, {-ulp, -ulp, ulp, -ulp}}) {
      Solution rounded = solution(off[0], off[1], off[2], off[3]);
      assertThat(Plain.size(Plain.minus(Rigs.tipMovement(rounded), exact)))
          .isLessThan(Tolerances.EXACT);
      double[] stations = rounded.stems().get(0).profile().stations(Kind.LENGTH);
      for (int i = 1; i < stations.length; i++) {
        assertThat(stations[i] - stations[i - 1]).isGreaterThan(1e-3);
      }
    }
  }
}
