package org.boleline.internal.coupled;

import static org.assertj.core.api.Assertions.assertThat;

import org.boleline.Tolerances;
import org.boleline.internal.friction.FrictionKernel;
import org.boleline.internal.path.RopePath;
import org.boleline.internal.rod.Rod;
import org.junit.jupiter.api.Test;

/** The tangent is the derivative of the residual, also where stem and root have turned far. */
class TangentTest {
  private static final double LENGTH = 10;
  private static final double DIAMETER = 0.2;
  private static final double MODULUS = 8e9;

  /** Moment that turns the tip by more than a radian, N.m. */
  private static final double MOMENT = 4e4;

  private static final Rod.Profile PROFILE =
      new Rod.Profile() {
        @Override
        public void tangent(double at, double cellMiddle, double[] out) {
          double lean = 0.2 + 0.05 * at;
          out[0] = Math.sin(lean);
          out[1] = 0;
          out[2] = Math.cos(lean);
        }

        @Override
        public double outer(double at, double cellMiddle) {
          return DIAMETER * (1 - 0.05 * at);
        }

        @Override
        public double cavity(double at, double cellMiddle) {
          return 0;
        }
      };

  private static RigState state(double sling, double rootStiffness, boolean raising) {
    StemSpec stem =
        new StemSpec(
            new double[3],
            LENGTH,
            new double[0],
            PROFILE,
            MODULUS,
            MODULUS / 16,
            9000,
            rootStiffness,
            new double[] {8},
            new double[] {300},
            false);
    RigSpec spec =
        new RigSpec(
            new StemSpec[] {stem},
            new int[] {0, 0, 0},
            new double[] {9.5, 6, 1},
            new double[][] {{0, 0, 0}, {0.1, 0, -0.05}, {0, 0.1, 0}},
            new int[] {FrictionKernel.ROUND, FrictionKernel.SHEAVE},
            new double[] {0.2, 0.95},
            new double[] {sling, 0.5 * sling},
            raising,
            new double[] {0, 0, -1},
            RopePath.End.DEVICE,
            new double[3],
            400);
    RigState state = new RigState(Mesh.of(spec).halved().halved().rig());
    state.gravity = 1;
    state.loadFactor = 1;
    return state;
  }

  private static void assertTangent(double sling, double stiffness, boolean raising) {
    RigState state = state(sling, stiffness, raising);
    int n = state.y.length;
    double[] base = new double[n];
    double[] dy = new double[n];
    state.evenBending(base);
    for (int i = 0; i < n; i++) {
      dy[i] = base[i] * Math.sin(3.0 * i / n);
      base[i] *= MOMENT * Math.cos(2.0 * i / n);
    }
    // The root turns by up to more than a radian.
    if (Double.isFinite(stiffness)) {
      double size = Math.sqrt(stiffness);
      base[n - 2] = 1.1 * size;
      base[n - 1] = -0.7 * size;
      dy[n - 2] = size / MOMENT;
      dy[n - 1] = 2 * size / MOMENT;
    }
    double[] coarse = difference(state, base, dy, 2e-3);
    double[] fine = difference(state, base, dy, 1e-3);
    System.arraycopy(base, 0, state.y, 0, n);
    assertThat(state.evaluate()).isTrue();
    double[] tangent = new double[n];
    state.tangent(dy, tangent);
    double gap = 0;
    for (int i = 0; i < n; i++) {
      double extrapolated = (4 * fine[i] - coarse[i]) / 3;
      gap += (tangent[i] - extrapolated) * (tangent[i] - extrapolated);
    }
    assertThat(Math.sqrt(gap)).isLessThan(Tolerances.CENTRAL_DIFFERENCE * Krylov.norm(tangent));
  }

  private static double[] difference(RigState state, double[] base, double[] dy, double step) {
    double[] out = new double[base.length];
    for (int side = -1; side <= 1; side += 2) {
      for (int i = 0; i < base.length; i++) {
        state.y[i] = base[i] + side * step * MOMENT * dy[i];
      }
      assertThat(state.evaluate()).isTrue();
      for (int i = 0; i < base.length; i++) {
        out[i] += side * state.residual[i] / (2 * step * MOMENT);
      }
    }
    return out;
  }

  @Test
  void it_is_the_derivative_for_a_clamped_stem() {
    assertTangent(0, Double.POSITIVE_INFINITY, false);
  }

  @Test
  void it_is_the_derivative_with_slings_and_raising() {
    assertTangent(0.3, Double.POSITIVE_INFINITY, true);
  }

  @Test
  void it_is_the_derivative_where_the_root_turned_far() {
    assertTangent(0, 2e4, false);
    assertTangent(0.3, 2e4, true);
  }
}
