package org.boleline.drop;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;
import org.hipparchus.analysis.UnivariateFunction;
import org.hipparchus.analysis.solvers.BracketedUnivariateSolver;
import org.hipparchus.analysis.solvers.BracketingNthOrderBrentSolver;
import org.hipparchus.ode.ODEState;
import org.hipparchus.ode.ODEStateAndDerivative;
import org.hipparchus.ode.OrdinaryDifferentialEquation;
import org.hipparchus.ode.events.Action;
import org.hipparchus.ode.events.AdaptableInterval;
import org.hipparchus.ode.events.ODEEventDetector;
import org.hipparchus.ode.events.ODEEventHandler;
import org.hipparchus.ode.nonstiff.DormandPrince853Integrator;

/**
 * A mass on a cord, step by step in level and upward coordinates: a plain second way to a swing.
 *
 * <p>The cord's pull follows from the condition that the distance stays what it is, or there is
 * none. No angle, no energy and no closed form in it. Reference: Dormand and Prince 8(5,3) as in
 * Hipparchus.
 */
final class PendulumSteps {
  static final double GRAVITY = 9.80665;

  private final double mass;
  private final double length;

  /** Speed along the cord at each moment when it comes taut, and the angle there. */
  final List<double[]> catches = new ArrayList<>();

  /** Pull each time the mass passes below the point, and where the cord begins to pull. */
  final List<Double> pulls = new ArrayList<>();

  /** Height over the point each time the mass turns downward with a taut cord. */
  final List<Double> turns = new ArrayList<>();

  PendulumSteps(double mass, double length) {
    this.mass = mass;
    this.length = length;
  }

  private double pull(double[] y) {
    double[] v = {y[2], y[3]};
    return mass * (v[0] * v[0] + v[1] * v[1] - GRAVITY * y[1]) / length;
  }

  /** Follows the mass for a time from level place, height, level and upward speed. */
  void follow(double[] start, double duration) {
    double[] y = start;
    double time = 0;
    boolean taut = Math.hypot(y[0], y[1]) >= length * (1 - 1e-12);
    while (time < duration) {
      if (taut) {
        double along = (y[0] * y[2] + y[1] * y[3]) / length;
        if (along > 1e-9) {
          catches.add(new double[] {along, Math.atan2(y[0], -y[1])});
        }
        if (along >= -1e-9) {
          y = new double[] {y[0], y[1], y[2] - along * y[0] / length, y[3] - along * y[1] / length};
        }
        taut = along >= -1e-9 && pull(y) > 1e-9 * mass;
        if (taut) {
          pulls.add(pull(y));
        }
      }
      ODEStateAndDerivative end = stretch(taut, new ODEState(time, y), duration);
      time = end.getTime();
      y = end.getPrimaryState();
      taut = !taut; // a stretch ends where the cord comes taut or goes slack
    }
  }

  private ODEStateAndDerivative stretch(boolean taut, ODEState from, double until) {
    DormandPrince853Integrator integrator =
        new DormandPrince853Integrator(1e-12, 0.05, 1e-12, 1e-12);
    if (taut) {
      integrator.addEventDetector(new Event(this::pull, false, Action.STOP, x -> {}));
      integrator.addEventDetector(
          new Event(
              y -> y[0],
              null,
              Action.CONTINUE,
              y -> {
                if (y[1] < 0) {
                  pulls.add(pull(y));
                }
              }));
      integrator.addEventDetector(
          new Event(y -> y[3], false, Action.CONTINUE, y -> turns.add(y[1])));
    } else {
      integrator.addEventDetector(
          new Event(y -> y[0] * y[0] + y[1] * y[1] - length * length, true, Action.STOP, y -> {}));
    }
    return integrator.integrate(
        new OrdinaryDifferentialEquation() {
          @Override
          public int getDimension() {
            return 4;
          }

          @Override
          public double[] computeDerivatives(double t, double[] y) {
            double share = taut ? pull(y) / mass / length : 0;
            return new double[] {y[2], y[3], -share * y[0], -GRAVITY - share * y[1]};
          }
        },
        from,
        until);
  }

  /** What happens where a function of the state passes zero, upward, downward or either way. */
  private record Event(
      ToDoubleFunction<double[]> of,
      Boolean upward,
      Action action,
      java.util.function.Consumer<double[]> then)
      implements ODEEventDetector {
    @Override
    public AdaptableInterval getMaxCheckInterval() {
      return AdaptableInterval.of(0.01);
    }

    @Override
    public int getMaxIterationCount() {
      return 100;
    }

    @Override
    public BracketedUnivariateSolver<UnivariateFunction> getSolver() {
      return new BracketingNthOrderBrentSolver(0, 1e-14, 0, 5);
    }

    @Override
    public ODEEventHandler getHandler() {
      return (state, detector, increasing) -> {
        if (upward != null && upward != increasing) {
          return Action.CONTINUE;
        }
        then.accept(state.getPrimaryState());
        return action;
      };
    }

    @Override
    public double g(ODEStateAndDerivative state) {
      return of.applyAsDouble(state.getPrimaryState());
    }
  }
}
