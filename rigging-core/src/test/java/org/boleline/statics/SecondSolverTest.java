package org.boleline.statics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.boleline.units.Amounts.metres;

import java.util.List;
import org.boleline.Tolerances;
import org.boleline.plan.Arrangement;
import org.boleline.plan.Contact;
import org.boleline.rope.Ideal;
import org.boleline.rope.Motion;
import org.boleline.stem.Stem;
import org.boleline.units.Kind;
import org.boleline.units.Si;
import org.ejml.simple.SimpleMatrix;
import org.hipparchus.ode.ODEState;
import org.hipparchus.ode.OrdinaryDifferentialEquation;
import org.hipparchus.ode.nonstiff.DormandPrince853Integrator;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The same stems by methods of another kind. */
class SecondSolverTest {
  private static final double MODULUS = 9e9;
  private static final double DENSITY = 950;

  /** Place, slope from plumb, moment and force of what is above, in the plane of the lean. */
  private static final class Elastica implements OrdinaryDifferentialEquation {
    private final double length;
    private final double base;
    private final double tip;

    Elastica(double length, double base, double tip) {
      this.length = length;
      this.base = base;
      this.tip = tip;
    }

    @Override
    public int getDimension() {
      return 6;
    }

    /**
     * x' = sin a, z' = cos a, a' = m / (E I), m' = -(x' fz - z' fx), fx' = 0, fz' = weight for each
     * length.
     */
    @Override
    public double[] computeDerivatives(double s, double[] y) {
      double d = base + (tip - base) * s / length;
      double rigidity = MODULUS * Rigs.roundSecondMoment(d);
      double weight = Rigs.GRAVITY * DENSITY * Math.PI / 4 * d * d;
      double sine = Math.sin(y[2]);
      double cosine = Math.cos(y[2]);
      return new double[] {sine, cosine, y[3] / rigidity, sine * y[5] - cosine * y[4], 0, weight};
    }
  }

  /**
   * The elastica as an initial value problem, started with the base reaction found and carried to
   * the tip, where no moment and no force may be left.
   *
   * <p>Reference: Dormand and Prince 8(5,3) as in Hipparchus.
   */
  @ParameterizedTest
  @CsvSource({
    // length, lean, base, tip, point, weight, tail x
    "12, 0.5, 0.30, 0.15, 11, 800, 0",
    "12, 0.1, 0.25, 0.20, 12, 600, -3",
    "10, 1.2, 0.22, 0.10, 7.5, 900, 4",
    "15, 0.8, 0.35, 0.12, 14, 400, -10",
    "9, 0.3, 0.15, 0.08, 8, 120, 1"
  })
  void the_elastica_from_the_base_reaction_ends_free_at_the_tip(
      double length,
      double lean,
      double base,
      double tip,
      double point,
      double weight,
      double tailX) {
    Stem.Builder stem = Rigs.straight(length, lean, 0, base, tip, Rigs.wood(MODULUS, DENSITY));
    Solution found = Rigs.sound(stem, Rigs.ideal(point).tail(Rigs.point(tailX, 0, 0)), weight);
    Reaction reaction = found.stems().get(0).base();
    double[] force = Plain.times(-1, reaction.force().in(Kind.FORCE));
    double moment = -reaction.moment().in(Kind.MOMENT)[1];
    double[] pull = found.contacts().get(0).force().in(Kind.FORCE);

    DormandPrince853Integrator integrator =
        new DormandPrince853Integrator(1e-10, 0.2, 1e-13, 1e-13);
    Elastica elastica = new Elastica(length, base, tip);
    double[] y = {0, 0, lean, moment, force[0], force[2]};
    y = integrator.integrate(elastica, new ODEState(0, y), point).getPrimaryState();
    double[] place = found.contacts().get(0).position().in(Kind.LENGTH);
    assertThat(Math.hypot(y[0] - place[0], y[1] - place[2]))
        .isLessThan(Tolerances.FROM_BASE_TO_TIP * length);
    y[4] -= pull[0];
    y[5] -= pull[2];
    if (point < length) {
      y = integrator.integrate(elastica, new ODEState(point, y), length).getPrimaryState();
    }
    double[] tipPlace = found.stems().get(0).tipPosition().in(Kind.LENGTH);
    assertThat(Math.hypot(y[0] - tipPlace[0], y[1] - tipPlace[2]))
        .isLessThan(Tolerances.FROM_BASE_TO_TIP * length);
    assertThat(Math.abs(y[3])).isLessThan(Tolerances.FROM_BASE_TO_TIP * Math.abs(moment));
    assertThat(Math.hypot(y[4], y[5])).isLessThan(Tolerances.EXACT * Plain.size(force));
    assertThat(tipPlace[1]).isCloseTo(0, within(Tolerances.EXACT));
  }

  /**
   * A tapered stem under a small load as a plane frame of straight beam elements with cubic shape
   * functions, solved with EJML. The forces of the rope follow from the stated shape.
   *
   * <p>Source of the element: consistent stiffness of a Bernoulli beam, the integral of E I N'' N''
   * over cubic Hermite functions (any text on finite elements), here with four Gauss points.
   */
  @ParameterizedTest
  @CsvSource({
    // lean, base, tip, weight
    "0.6, 0.30, 0.12, 0.001",
    "1.0, 0.20, 0.20, 0.001",
    "0.2, 0.40, 0.10, 0.001"
  })
  void a_frame_of_beam_elements_moves_as_far_under_a_small_load(
      double lean, double base, double tip, double weight) {
    double length = 12;
    double[] points = {11.4, 7.2, 3.6};
    Stem.Builder stem =
        Rigs.straight(length, lean, 0, base, tip, Rigs.wood(MODULUS, DENSITY)).ownWeight(false);
    Arrangement.Builder arrangement =
        Arrangement.builder("only")
            .motion(Motion.LOWERING)
            .contacts(
                List.of(
                    Contact.of("stem", metres(points[0]), Ideal.INSTANCE),
                    Contact.of("stem", metres(points[1]), Ideal.INSTANCE).withOffset(metres(0.3)),
                    Contact.of("stem", metres(points[2]), Ideal.INSTANCE)))
            .tail(Rigs.point(-2, 0, 0));
    Solution found = Rigs.sound(stem, arrangement, weight);

    double[] axis = {Math.sin(lean), Math.cos(lean)};
    double[] across = {Math.cos(lean), -Math.sin(lean)};
    double[][] places = new double[4][];
    for (int j = 0; j < 3; j++) {
      double arm = j == 1 ? 0.3 : 0;
      places[j] =
          new double[] {
            points[j] * axis[0] + arm * across[0], points[j] * axis[1] + arm * across[1]
          };
    }
    places[3] = new double[] {-2, 0};

    int elements = 120;
    double h = length / elements;
    SimpleMatrix stiffness = new SimpleMatrix(2 * elements + 2, 2 * elements + 2);
    for (int e = 0; e < elements; e++) {
      addElement(stiffness, e, h, base, tip, length);
    }
    SimpleMatrix load = new SimpleMatrix(2 * elements + 2, 1);
    double[] before = {0, -1};
    for (int j = 0; j < 3; j++) {
      double x = places[j + 1][0] - places[j][0];
      double z = places[j + 1][1] - places[j][1];
      double[] after = {x / Math.hypot(x, z), z / Math.hypot(x, z)};
      double[] force = {weight * (before[0] + after[0]), weight * (before[1] + after[1])};
      int node = (int) Math.round(points[j] / h);
      double along = force[0] * axis[0] + force[1] * axis[1];
      double sideways = force[0] * across[0] + force[1] * across[1];
      double arm = j == 1 ? 0.3 : 0;
      load.set(2 * node, load.get(2 * node) + sideways);
      // A turn toward "across" is positive; a force along the axis on an arm works against it.
      load.set(2 * node + 1, load.get(2 * node + 1) - arm * along);
      before = new double[] {-after[0], -after[1]};
    }
    SimpleMatrix free = stiffness.extractMatrix(2, 2 * elements + 2, 2, 2 * elements + 2);
    SimpleMatrix moved = free.solve(load.extractMatrix(2, 2 * elements + 2, 0, 1));
    double tipAcross = moved.get(2 * elements - 2);

    double[] tipMovement = Rigs.tipMovement(found);
    double foundAcross = tipMovement[0] * across[0] + tipMovement[2] * across[1];
    assertThat(foundAcross)
        .isCloseTo(tipAcross, within(Tolerances.BEAM_ELEMENTS * Math.abs(tipAcross)));
    for (int j = 0; j < 3; j++) {
      double[] movement = found.contacts().get(j).movement().in(Kind.LENGTH);
      int node = (int) Math.round(points[j] / h);
      double wanted = moved.get(2 * node - 2);
      assertThat(movement[0] * across[0] + movement[2] * across[1])
          .isCloseTo(wanted, within(Tolerances.BEAM_ELEMENTS * Math.abs(tipAcross)));
    }
    assertThat(Si.value(found.tailTension(), Kind.FORCE, "tail"))
        .isCloseTo(weight, within(Tolerances.EXACT * weight));
  }

  private static void addElement(
      SimpleMatrix stiffness, int e, double h, double base, double tip, double length) {
    double[] at = {
      0.06943184420297371, 0.33000947820757187, 0.6699905217924281, 0.9305681557970263
    };
    double[] share = {
      0.17392742256872692, 0.32607257743127305, 0.32607257743127305, 0.17392742256872692
    };
    for (int g = 0; g < 4; g++) {
      double x = at[g];
      double d = base + (tip - base) * (e + x) * h / length;
      double[] curvature = {
        (12 * x - 6) / h / h, (6 * x - 4) / h, (6 - 12 * x) / h / h, (6 * x - 2) / h
      };
      for (int i = 0; i < 4; i++) {
        for (int j = 0; j < 4; j++) {
          double k =
              MODULUS * Rigs.roundSecondMoment(d) * curvature[i] * curvature[j] * share[g] * h;
          int row = 2 * e + i;
          int column = 2 * e + j;
          stiffness.set(row, column, stiffness.get(row, column) + k);
        }
      }
    }
  }
}
