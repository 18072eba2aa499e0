package org.boleline.statics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;
import static org.boleline.units.Amounts.kilograms;
import static org.boleline.units.Amounts.metres;

import java.util.List;
import org.boleline.Tolerances;
import org.boleline.plan.Plan;
import org.boleline.stem.PointMass;
import org.boleline.stem.Stem;
import org.boleline.units.Kind;
import org.boleline.units.Si;
import org.junit.jupiter.api.Test;

class RigAtRestTest {
  private static final double E = 9e9;
  private static final double DENSITY = 900;
  private static final double LENGTH = 12;
  private static final double DIAMETER = 0.35;

  private static Stem.Builder stem(double lean, double tip) {
    return Rigs.straight(LENGTH, lean, 0, DIAMETER, tip, Rigs.wood(E, DENSITY)).ownWeight(false);
  }

  private static RigAtRest atRest(Stem.Builder stem, double... stations) {
    Plan plan = Rigs.plan(stem, Rigs.ideal(stations), 100);
    return RigAtRest.of(plan, "only").orElseThrow();
  }

  private static double lowest(Stem.Builder stem) {
    return hertz(atRest(stem, LENGTH), 0);
  }

  private static double hertz(RigAtRest rig, int mode) {
    return Si.value(rig.frequencies("stem").get(mode), Kind.FREQUENCY, "frequency");
  }

  /** f = beta^2 / (2 pi L^2) sqrt(E I / (rho A)) at the base. */
  private static double frequency(double betaSquared) {
    return betaSquared * DIAMETER / 4 * Math.sqrt(E / DENSITY) / (2 * Math.PI * LENGTH * LENGTH);
  }

  /** Source: frequency coefficients of clamped-free bars, any text on vibration; 3.51602 exact. */
  @Test
  void a_uniform_stem_swings_at_the_frequencies_of_the_textbook() {
    RigAtRest rig = atRest(stem(0.5, DIAMETER), LENGTH);
    double[] betas = {1.8751040687119611, 4.694091132974175, 7.854757438237613};
    for (int k = 0; k < betas.length; k++) {
      double expected = frequency(betas[k] * betas[k]);
      for (int plane = 0; plane < 2; plane++) {
        assertThat(hertz(rig, 2 * k + plane))
            .isCloseTo(expected, withinPercentage(100 * Tolerances.SOLVED_CASE * Math.pow(10, k)));
      }
    }
  }

  /** Source: a solution with independent code for a frustum of half the diameter at its top. */
  @Test
  void a_tapered_stem_swings_faster() {
    assertThat(lowest(stem(0.2, DIAMETER / 2)))
        .isCloseTo(frequency(4.62517), withinPercentage(100 * Tolerances.SIX_FIGURES));
  }

  /**
   * Source: a solution with independent code, 0.72929 Hz; with a share of 33/140 of the stem's mass
   * at its tip instead, 0.73145 Hz.
   */
  @Test
  void a_mass_at_the_tip_slows_it() {
    Stem.Builder laden =
        stem(0, DIAMETER).masses(List.of(PointMass.of(metres(LENGTH), kilograms(300))));
    // Weight of the mass alone would soften the plumb stem: see the test of own weight.
    double heavy = lowest(laden);
    double stiffness = 3 * E * Math.PI / 64 * Math.pow(DIAMETER, 4) / Math.pow(LENGTH, 3);
    double softened = 1 - 6.0 / 5 * 300 * Rigs.GRAVITY / LENGTH / stiffness;
    assertThat(heavy).isCloseTo(0.72929 * Math.sqrt(softened), withinPercentage(0.05));
  }

  /**
   * Source: a plumb column under own weight loses its stiffness at q L^3 = 7.837 E I (Greenhill); a
   * frequency goes down nearly with the square root of what is left (Southwell's bound).
   */
  @Test
  void own_weight_slows_a_plumb_stem() {
    double ei = E * Math.PI / 64 * Math.pow(DIAMETER, 4);
    double q = DENSITY * Rigs.GRAVITY * Math.PI / 4 * DIAMETER * DIAMETER;
    double left = 1 - q * Math.pow(LENGTH, 3) / (7.8373 * ei);
    double with = lowest(stem(0, DIAMETER).ownWeight(true));
    double without = lowest(stem(0, DIAMETER));
    assertThat(with * with / (without * without)).isCloseTo(left, within(0.01));
  }

  /** Source: cantilever with an end load, L^3 / (3 E I), and with a load on the way (textbook). */
  @Test
  void points_give_way_as_on_a_cantilever() {
    RigAtRest rig = atRest(stem(0, DIAMETER), LENGTH, 5);
    double ei = E * Math.PI / 64 * Math.pow(DIAMETER, 4);
    double[][] c = rig.kernel().compliance();
    assertThat(c[0][0])
        .isCloseTo(Math.pow(LENGTH, 3) / (3 * ei), withinPercentage(100 * Tolerances.EXACT));
    assertThat(c[1][4])
        .isCloseTo(25 * (3 * LENGTH - 5) / (6 * ei), withinPercentage(100 * Tolerances.EXACT));
    assertThat(c[3][3]).isCloseTo(125 / (3 * ei), withinPercentage(100 * Tolerances.EXACT));
    assertThat(c[0][1]).isCloseTo(0, within(Tolerances.EXACT * c[0][0]));
  }

  @Test
  void modes_are_counted_until_they_make_up_the_give() {
    RigAtRest rig = atRest(stem(0.5, DIAMETER), LENGTH);
    assertThat(rig.kernel().shareByModes()).isBetween(0.99, 1.0);
    assertThat(rig.modes("stem")).isBetween(1, 6);
  }
}
