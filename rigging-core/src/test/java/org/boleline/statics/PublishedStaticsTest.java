package org.boleline.statics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.boleline.units.Amounts.degrees;
import static org.boleline.units.Amounts.kilograms;
import static org.boleline.units.Amounts.newtonMetresPerRadian;
import static org.boleline.units.Amounts.radians;

import java.util.List;
import org.boleline.Tolerances;
import org.boleline.geometry.Vector;
import org.boleline.plan.Arrangement;
import org.boleline.plan.Piece;
import org.boleline.plan.Plan;
import org.boleline.plan.Tagline;
import org.boleline.plan.Tail;
import org.boleline.stem.Root;
import org.boleline.stem.Stem;
import org.boleline.units.Kind;
import org.boleline.units.Si;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Stems and ropes against figures and formulas in print. */
class PublishedStaticsTest {
  /** All but rigid: the shape stays as stated. */
  private static final double RIGID = 1e13;

  private static Arrangement.Builder straightDown(double at) {
    return Rigs.ideal(at).tail(Tail.Down.DOWN);
  }

  private static double baseMoment(Solution solution) {
    return Si.value(solution.stems().get(0).base().momentMagnitude(), Kind.MOMENT, "moment");
  }

  /**
   * Bending moment at the foot of a 10 m branch under 1000 N at an angle to it: M = r R sin.
   *
   * <p>Source: Arboriculture Australia, Tree rescue manual, 2022, p. 120: 5000, 7071 and 10 000 N m
   * at 30, 45 and 90 degrees.
   */
  @ParameterizedTest
  @CsvSource({"30, 5000", "45, 7071", "90, 10000"})
  void the_moment_of_a_pull_is_reach_times_force_times_sine(double angle, double printed) {
    Stem.Builder stem =
        Rigs.straight(10, Math.toRadians(angle), 0, 0.5, 0.5, Rigs.wood(RIGID, 1)).ownWeight(false);
    Solution found = Rigs.sound(stem, straightDown(10), 500);
    assertThat(Plain.size(Rigs.total(found))).isCloseTo(1000, within(1000 * Tolerances.EXACT));
    assertThat(baseMoment(found)).isCloseTo(printed, Tolerances.printedTo(1));
  }

  /**
   * A root that turns by 0.25 degrees moves a point 10 m up by 43.6 mm.
   *
   * <p>Source: 0.25 degrees is the limit of the pulling test (Detter and Rust 2018); the movement
   * is the rotational spring M L / k, derived.
   */
  @Test
  void a_quarter_of_a_degree_at_the_root_moves_a_point_ten_metres_up_by_44_mm() {
    double angle = Math.toRadians(0.25);
    double moment = 1000 * 10 * Math.cos(angle);
    Stem.Builder stem =
        Rigs.straight(10, Math.PI / 2, 0, 0.5, 0.5, Rigs.wood(RIGID, 1))
            .ownWeight(false)
            .root(Root.Turning.of(newtonMetresPerRadian(moment / angle)));
    Solution found = Rigs.sound(stem, straightDown(10), 500);
    assertThat(1000 * Plain.size(Rigs.tipMovement(found)))
        .isCloseTo(43.6, Tolerances.printedTo(0.1));
  }

  /**
   * A tapered cantilever: 5 kN at the end of 8 m, 0.40 to 0.20 m, E 8 GPa: tip 0.1697653 m, slope
   * 0.0424413 rad, greatest stress 7.54512 MPa at 4.0 m from the tip, 6.36620 MPa at the base.
   *
   * <p>Source: closed form of the linear beam, derived, agreed by quadrature to 15 digits. Solved
   * at a ten-thousandth of the load, where large movements play no part.
   */
  @Test
  void a_tapered_cantilever_meets_the_linear_figures() {
    double scale = 1e-4;
    Stem.Builder stem =
        Rigs.straight(8, Math.PI / 2, 0, 0.40, 0.20, Rigs.wood(8e9, 900)).ownWeight(false);
    Solution found = Rigs.sound(stem, straightDown(8), 0.5 * 5000 * scale);
    StemResult result = found.stems().get(0);
    assertThat(Plain.size(Rigs.tipMovement(found)) / scale)
        .isCloseTo(0.1697653, Tolerances.relative(Tolerances.SIX_FIGURES));
    double[][] directions = result.profile().directions();
    double[] tip = directions[directions.length - 1];
    assertThat(Math.atan2(-tip[2], tip[0]) / scale)
        .isCloseTo(0.0424413, Tolerances.relative(Tolerances.SIX_FIGURES));
    assertThat(Rigs.stress(result.bendingStress()) / scale)
        .isCloseTo(7.54512e6, Tolerances.relative(Tolerances.SIX_FIGURES));
    assertThat(Si.value(result.bendingStress().at(), Kind.LENGTH, "at"))
        .isCloseTo(8 - 4.0, within(Tolerances.PLACE_OF_A_FLAT_TOP));
    assertThat(result.profile().bendingStress(Kind.PRESSURE)[0] / scale)
        .isCloseTo(6.36620e6, Tolerances.relative(Tolerances.SIX_FIGURES));
  }

  private static final double SPAR_DIAMETER = 0.40;
  private static final double ANCHOR_HEIGHT = 10;
  private static final double SPAR_GRAVITY = 9.81;

  /** The part of the spar from 1 m above ground up, under a force at its top. */
  private static Solution spar(double angle, double force) {
    Stem stem =
        Rigs.straight(ANCHOR_HEIGHT - 1, 0, 0, SPAR_DIAMETER, SPAR_DIAMETER, Rigs.wood(RIGID, 1000))
            .base(Vector.ofSi(Kind.LENGTH, 0, 0, 1))
            .build();
    Arrangement.Builder arrangement = Rigs.ideal(ANCHOR_HEIGHT - 1);
    double weight;
    if (angle <= 45) {
      // Load leg plumb, tail out by twice the angle: the force halves it.
      double out = Math.toRadians(2 * angle);
      arrangement =
          angle == 0
              ? straightDown(ANCHOR_HEIGHT - 1)
              : arrangement.tail(
                  Rigs.point(100 * Math.sin(out), 0, ANCHOR_HEIGHT - 100 * Math.cos(out)));
      weight = force / 2 / Math.cos(Math.toRadians(angle));
    } else {
      // A level force: both legs 60 degrees from plumb, one down, one up.
      double out = Math.toRadians(60);
      arrangement
          .tagline(Tagline.of(degrees(60), radians(0)))
          .tail(Rigs.point(100 * Math.sin(out), 0, ANCHOR_HEIGHT + 100 * Math.cos(out)));
      weight = force / 2 / Math.sin(out) * Math.cos(out);
    }
    return Rigs.sound(
        Plan.builder()
            .title("spar")
            .gravity(Si.of(SPAR_GRAVITY, Kind.ACCELERATION))
            .stems(List.of(stem))
            .piece(Piece.of(kilograms(weight / SPAR_GRAVITY)))
            .arrangements(List.of(arrangement.build()))
            .build());
  }

  /**
   * Static capacity of a spar: F = (pi/4) d^2 [sigma - (H - 1) rho g] / [cos a + 8 sin a (H - 1) /
   * d], d the diameter 1 m above ground, a the angle of the force from the stem's axis.
   *
   * <p>Source: HSE Research Report 668 (Detter, Cowell, McKeown, Howard 2008), as reprinted in
   * Arboriculture Australia, Tree rescue manual, 2022, p. 136; derived again: edge stress is axial
   * plus bending plus weight of a cylinder. At d 0.40 m, H 10 m, 20 MPa, 1000 kg/m3 the figures are
   * 2502.18 kN straight down and 13.9010 kN level (derived).
   */
  @ParameterizedTest
  @CsvSource({"0, 2502.18", "5, 150.0", "20, ", "45, ", "90, 13.9010"})
  void a_spar_under_the_force_of_the_report_reaches_its_strength(double angle, Double printed) {
    double strength = 20e6;
    double a = Math.toRadians(angle);
    double area = Math.PI / 4 * SPAR_DIAMETER * SPAR_DIAMETER;
    double weight = (ANCHOR_HEIGHT - 1) * 1000 * SPAR_GRAVITY;
    double lever = 8 * (ANCHOR_HEIGHT - 1) / SPAR_DIAMETER;
    double force = area * (strength - weight) / (Math.cos(a) + Math.sin(a) * lever);
    if (printed != null) {
      double tolerance = angle == 5 ? Tolerances.FOUR_FIGURES : Tolerances.SIX_FIGURES;
      assertThat(force / 1000).isCloseTo(printed, Tolerances.relative(tolerance));
    }
    Solution found = spar(angle, force);
    assertThat(Plain.size(Rigs.total(found)))
        .isCloseTo(force, Tolerances.relative(Tolerances.STIFF_SPAR));
    StemResult result = found.stems().get(0);
    assertThat(Rigs.stress(result.compressionStress()))
        .isCloseTo(strength, Tolerances.relative(Tolerances.STIFF_SPAR));
    assertThat(Si.value(result.compressionStress().at(), Kind.LENGTH, "at"))
        .isCloseTo(0, within(Tolerances.EXACT));
    double bending = force * Math.sin(a) * lever / area;
    double axial = force * Math.cos(a) / area + weight;
    if (angle > 0) {
      assertThat(Rigs.stress(result.tensionStress()))
          .isCloseTo(bending - axial, Tolerances.relative(Tolerances.STIFF_SPAR));
    }
  }

  /**
   * Height at which a uniform stem buckles under its own weight: h = 0.7883 (E / (rho g))^(1/3)
   * d^(2/3); its cube is in proportion to the weight.
   *
   * <p>Source: Greenhill 1881, in the form with the diameter; constant (7.83735 / 16)^(1/3).
   */
  @ParameterizedTest
  @ValueSource(doubles = {1.05, 1.2, 1.6})
  void a_tall_stem_buckles_above_greenhills_height(double over) {
    double modulus = 9e9;
    double density = 900;
    double diameter = 0.1;
    double height =
        0.7883 * Math.cbrt(modulus / density / Rigs.GRAVITY) * Math.pow(diameter, 2.0 / 3);
    LostStability lost =
        (LostStability)
            Rigs.result(
                Rigs.straight(over * height, 0, 0, diameter, diameter, Rigs.wood(modulus, density)),
                Rigs.ideal(over * height),
                1);
    assertThat(1 / Math.cbrt(lost.ownWeightFactor()))
        .isCloseTo(over, Tolerances.relative(Tolerances.GREENHILL_CONSTANT));
    Rigs.sound(
        Rigs.straight(height / over, 0, 0, diameter, diameter, Rigs.wood(modulus, density)),
        Rigs.ideal(height / over),
        1e-3);
  }
}
