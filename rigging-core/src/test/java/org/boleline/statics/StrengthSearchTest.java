package org.boleline.statics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.boleline.units.Amounts.gigapascals;
import static org.boleline.units.Amounts.kilogramsPerCubicMetre;
import static org.boleline.units.Amounts.megapascals;
import static org.boleline.units.Amounts.metres;

import org.boleline.Tolerances;
import org.boleline.plan.Arrangement;
import org.boleline.plan.Tail;
import org.boleline.rope.FrictionRing;
import org.boleline.stem.Stem;
import org.boleline.wood.WoodProperties;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class StrengthSearchTest {
  private static final double WEIGHT = 1471;

  private static Stem.Builder stem(double strength) {
    WoodProperties wood =
        WoodProperties.builder()
            .modulusOfElasticity(gigapascals(9))
            .density(kilogramsPerCubicMetre(1000))
            .bendingStrength(megapascals(strength))
            .build();
    return Rigs.straight(12, Math.toRadians(25), 0, 0.36, 0.16, wood);
  }

  private static Arrangement.Builder arrangement() {
    return Rigs.through(new FrictionRing(0.2), 11.5)
        .tail(Tail.Device.of("stem", metres(1), 0.2, 2));
  }

  /** The load that many times greater, solved by itself, stresses the stem to its strength. */
  @ParameterizedTest
  @ValueSource(doubles = {4, 8, 15, 30, 60, 120})
  void the_load_times_the_factor_reaches_the_strength(double strength) {
    StemResult stem = Rigs.solution(stem(strength), arrangement(), WEIGHT).stems().get(0);
    double factor = stem.strengthReach().orElseThrow().loadFactor();
    StemResult there = Rigs.solution(stem(strength), arrangement(), factor * WEIGHT).stems().get(0);

    assertThat(Rigs.stress(there.tensionStress()))
        .isCloseTo(1e6 * strength, Tolerances.relative(Tolerances.SOLVED_CASE));
  }
}
