package org.boleline.statics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.stream.IntStream;
import org.boleline.Tolerances;
import org.boleline.stem.Stem;
import org.boleline.units.Kind;
import org.boleline.units.Si;
import org.hipparchus.special.elliptic.legendre.LegendreEllipticIntegral;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The solver against closed forms of the mechanics of slender rods. */
class ClosedFormTest {
  private static final double LENGTH = 10;
  private static final double DIAMETER = 0.2;
  private static final double MODULUS = 9e9;
  private static final double RIGIDITY = MODULUS * Rigs.roundSecondMoment(DIAMETER);

  private static Stem.Builder uniform(double lean) {
    return Rigs.straight(LENGTH, lean, 0, DIAMETER, DIAMETER, Rigs.wood(MODULUS, 1000))
        .ownWeight(false);
  }

  /** Frictionless over a far tail straight below: twice the weight, straight down, at the tip. */
  private static Solution hanging(double tipLoad) {
    return Rigs.solution(
        uniform(Math.PI / 2),
        Rigs.ideal(LENGTH).tail(org.boleline.plan.Tail.Down.DOWN),
        tipLoad / 2);
  }

  /**
   * Drop, reach and slope of a horizontal cantilever under a tip load.
   *
   * <p>Source: Bisshopp and Drucker, Large deflection of cantilever beams, Quarterly of Applied
   * Mathematics 3 (1945) 272-275, in elliptic integrals; evaluated here with Hipparchus.
   */
  @ParameterizedTest
  @ValueSource(doubles = {0.1, 1, 3, 10})
  void a_horizontal_cantilever_bends_as_the_elliptic_integrals_say(double loadNumber) {
    Solution found = hanging(loadNumber * RIGIDITY / LENGTH / LENGTH);
    double root = Math.sqrt(loadNumber);
    double low = 0.5 * (1 + 1e-15);
    double high = 1 - 1e-15;
    for (int i = 0; i < 200; i++) {
      double m = 0.5 * (low + high);
      double start = Math.asin(1 / Math.sqrt(2 * m));
      double length = LegendreEllipticIntegral.bigK(m) - LegendreEllipticIntegral.bigF(start, m);
      if (length < root) {
        low = m;
      } else {
        high = m;
      }
    }
    double m = 0.5 * (low + high);
    double start = Math.asin(1 / Math.sqrt(2 * m));
    double e = LegendreEllipticIntegral.bigE(m) - LegendreEllipticIntegral.bigE(start, m);
    double drop = 1 - 2 * e / root;
    double slope = Math.asin(2 * m - 1);
    double reach = Math.sqrt(2 * Math.sin(slope)) / root;

    double[] movement = found.stems().get(0).tipMovement().in(Kind.LENGTH);
    assertThat(-movement[2] / LENGTH).isCloseTo(drop, within(Tolerances.SOLVED_CASE * drop));
    assertThat(1 + movement[0] / LENGTH).isCloseTo(reach, within(Tolerances.SOLVED_CASE * reach));
    double[][] directions = found.stems().get(0).profile().directions();
    double[] tip = directions[directions.length - 1];
    assertThat(Math.atan2(-tip[2], tip[0])).isCloseTo(slope, within(Tolerances.SOLVED_CASE));
  }

  /**
   * The same at two load numbers, as printed values. Source: elliptic integrals of Bisshopp and
   * Drucker 1945, evaluated to eight figures.
   */
  @ParameterizedTest
  @CsvSource({"1, 0.30172077, 0.05643324, 0.46135195", "10, 0.81060902, 0.55499560, 1.43028554"})
  void a_horizontal_cantilever_meets_printed_figures(
      double loadNumber, double drop, double shortening, double slope) {
    Solution found = hanging(loadNumber * RIGIDITY / LENGTH / LENGTH);
    double[] movement = found.stems().get(0).tipMovement().in(Kind.LENGTH);
    assertThat(-movement[2] / LENGTH).isCloseTo(drop, within(Tolerances.SOLVED_CASE * drop));
    assertThat(-movement[0] / LENGTH)
        .isCloseTo(shortening, within(Tolerances.SOLVED_CASE * shortening));
    double[][] directions = found.stems().get(0).profile().directions();
    double[] tip = directions[directions.length - 1];
    assertThat(Math.atan2(-tip[2], tip[0])).isCloseTo(slope, within(Tolerances.SOLVED_CASE));
  }

  /**
   * Tip deflection of a linearly tapered round cantilever: (P L^3 / (3 E I_base)) (d_base / d_tip).
   *
   * <p>Source: closed form of the beam equation, derived (two routes agree). Small loads: the
   * large-deflection part is of second order in the slope.
   */
  @Test
  void a_tapered_cantilever_deflects_by_the_closed_form_under_a_small_load() {
    double base = 0.40;
    double tip = 0.20;
    double load = 0.5;
    Solution found =
        Rigs.solution(
            Rigs.straight(8, Math.PI / 2, 0, base, tip, Rigs.wood(8e9, 900)).ownWeight(false),
            Rigs.ideal(8).tail(org.boleline.plan.Tail.Down.DOWN),
            load / 2);
    double closed = load * 512 / (3 * 8e9 * Rigs.roundSecondMoment(base)) * base / tip;
    assertThat(-found.stems().get(0).tipMovement().in(Kind.LENGTH)[2])
        .isCloseTo(closed, within(Tolerances.SOLVED_CASE * closed));
  }

  /**
   * Greatest stress of a tapered round cantilever with an end load: where d = 1.5 d_tip.
   *
   * <p>Source: worked exercise with d_base = 2 d_tip, greatest stress at mid length; general form
   * derived: sigma = 128 P L / (27 pi (d_base - d_tip) d_tip^2).
   */
  @Test
  void a_tapered_cantilever_is_stressed_most_where_it_is_half_as_thick_again_as_at_the_tip() {
    double load = 5;
    Solution found =
        Rigs.solution(
            Rigs.straight(8, Math.PI / 2, 0, 0.40, 0.20, Rigs.wood(8e9, 900)).ownWeight(false),
            Rigs.ideal(8).tail(org.boleline.plan.Tail.Down.DOWN),
            load / 2);
    Extreme stress = found.stems().get(0).bendingStress();
    double closed = 128 * load * 8 / (27 * Math.PI * 0.2 * 0.04);
    assertThat(Si.value(stress.value(), Kind.PRESSURE, "stress"))
        .isCloseTo(closed, within(Tolerances.SOLVED_CASE * closed));
    assertThat(Si.value(stress.at(), Kind.LENGTH, "at")).isCloseTo(4, within(1e-3));
  }

  /**
   * Self-buckling of a uniform column: w L^3 / (E I) = 7.83734744.
   *
   * <p>Source: Greenhill 1881; nine quarters of the square of the first zero of the Bessel function
   * of order minus one third.
   */
  @Test
  void a_uniform_column_buckles_under_own_weight_where_greenhill_says() {
    double weightDensity = 1.25 * 7.83734744 * RIGIDITY / Math.pow(LENGTH, 3);
    double density = weightDensity / Rigs.GRAVITY / (Math.PI / 4 * DIAMETER * DIAMETER);
    Stem.Builder stem =
        Rigs.straight(LENGTH, 0, 0, DIAMETER, DIAMETER, Rigs.wood(MODULUS, density));
    LostStability lost = (LostStability) Rigs.result(stem, Rigs.ideal(LENGTH), 1);
    assertThat(lost.loadFactor()).isZero();
    assertThat(lost.ownWeightFactor()).isCloseTo(0.8, within(0.8 * Tolerances.SOLVED_CASE));
  }

  /**
   * Upright uniform weightless stem, ideal redirect at the tip, rope to the base: W L^2 / (E I) =
   * 2.05792918.
   *
   * <p>Derivation: the rope turns with the stem, so the lateral force at the tip is W delta / L and
   * the axial force 2 W; with k^2 = 2 W / (E I) the beam-column gives tan(k L) = -k L, whose first
   * root is 2.02875784, and W L^2 / (E I) is half its square.
   */
  @Test
  void an_upright_stem_with_the_rope_back_to_its_base_loses_stability_at_the_known_load() {
    double root = 2.02875784;
    assertThat(Math.tan(root)).isCloseTo(-root, within(1e-6));
    double critical = 0.5 * root * root * RIGIDITY / LENGTH / LENGTH;
    LostStability lost =
        (LostStability) Rigs.result(uniform(0), Rigs.ideal(LENGTH), 1.5 * critical);
    assertThat(lost.loadFactor() * 1.5).isCloseTo(1, within(Tolerances.SOLVED_CASE));
    Solution below = Rigs.solution(uniform(0), Rigs.ideal(LENGTH), 0.5 * critical);
    assertThat(below.stiffnessRatio()).isBetween(0.4, 0.6);
  }

  /**
   * With ever more ideal redirects on the axis the rope follows the stem, only the tip's force is
   * left, and the critical load tends to pi^2 / 4 (Euler's column, load along the axis as a dead
   * weight plus the rope's own line of action).
   */
  @Test
  void with_many_redirects_the_critical_load_tends_to_a_quarter_of_pi_squared() {
    double euler = Math.PI * Math.PI / 4 * RIGIDITY / LENGTH / LENGTH;
    double last = 0;
    for (int count : new int[] {1, 3, 6, 12, 24}) {
      double[] stations =
          IntStream.range(0, count).mapToDouble(i -> LENGTH * (count - i) / count).toArray();
      LostStability lost =
          (LostStability) Rigs.result(uniform(0), Rigs.ideal(stations), 1.5 * euler);
      double factor = 1.5 * lost.loadFactor();
      assertThat(factor).isGreaterThan(last).isLessThan(1);
      last = factor;
    }
    assertThat(last).isCloseTo(1, within(0.001));
  }

  /** A root that turns: the tip moves by M L / k more (rotational spring, statics). */
  @Test
  void a_root_that_turns_adds_moment_over_stiffness_times_length() {
    double stiffness = 1e5;
    double load = 1;
    Stem.Builder turning =
        uniform(Math.PI / 2)
            .root(
                org.boleline.stem.Root.Turning.of(
                    org.boleline.units.Amounts.newtonMetresPerRadian(stiffness)));
    Solution clamped =
        Rigs.solution(
            uniform(Math.PI / 2),
            Rigs.ideal(LENGTH).tail(org.boleline.plan.Tail.Down.DOWN),
            load / 2);
    Solution sprung =
        Rigs.solution(turning, Rigs.ideal(LENGTH).tail(org.boleline.plan.Tail.Down.DOWN), load / 2);
    double extra =
        clamped.stems().get(0).tipMovement().in(Kind.LENGTH)[2]
            - sprung.stems().get(0).tipMovement().in(Kind.LENGTH)[2];
    double expected = load * LENGTH / stiffness * LENGTH;
    assertThat(extra).isCloseTo(expected, within(Tolerances.SOLVED_CASE * expected));
  }
}
