package org.boleline.drop;

import java.util.ArrayList;
import java.util.List;
import javax.measure.quantity.Force;
import org.boleline.explain.Step;
import org.boleline.geometry.Vector;
import org.boleline.internal.drop.CatchRope;
import org.boleline.internal.drop.CatchState;
import org.boleline.internal.drop.LaidRope;
import org.boleline.internal.drop.PassingRope;
import org.boleline.internal.drop.StretchKernel;
import org.boleline.rope.FrictionFormulas;
import org.boleline.units.Kind;
import org.boleline.units.Si;
import org.jspecify.annotations.Nullable;

/** A rope on its path in SI doubles; everything is a function of the tension of the load leg. */
final class CatchModel {
  /** How many tensions up to the greatest are looked at for the direction of slip. */
  private static final int LOOKS = 64;

  private final StretchCurve curve;
  private final StretchKernel kernel;
  private final CatchPath path;
  private final double[] lengths;
  private final double[] products;
  private final CatchGive gives;
  private final CatchRope rope;
  private final boolean passing;

  CatchModel(StretchCurve curve, CatchPath path, double longer, boolean passing) {
    this.curve = curve;
    this.path = path;
    this.passing = passing;
    lengths = path.lengthArray();
    lengths[0] += longer;
    kernel = StretchKernels.of(curve);
    products = path.products();
    gives = path.gives();
    rope =
        passing
            ? new PassingRope(kernel, lengths, products, gives.sum())
            : new LaidRope(kernel, lengths, products, gives.sum());
  }

  CatchState at(double tension) {
    return rope.at(tension);
  }

  /** At rest after a run; zero for none. */
  CatchState rest(double weight, double energy, double run) {
    return rope.rest(weight, energy, run);
  }

  /** At rest without a run; on a linear rope from the closed form, whose steps are noted. */
  CatchState peak(double weight, double energy, List<Step> steps) {
    if (curve instanceof LinearStretch linear && !passing) {
      double effective = lengths[lengths.length - 1];
      for (int i = lengths.length - 2; i >= 0; i--) {
        Step step =
            DropFormulas.EFFECTIVE_LENGTH.step(
                lengths[i], effective, path.points().get(i).tensionRatio());
        steps.add(step);
        effective = step.result();
      }
      double modulus = Si.value(linear.modulus(), Kind.FORCE, "modulus");
      Step stiffness = DropFormulas.EFFECTIVE_STIFFNESS.step(effective, modulus, gives.sum());
      Step peak = DropFormulas.LINEAR_PEAK.step(weight, stiffness.result(), energy / weight);
      steps.add(stiffness);
      steps.add(peak);
      steps.add(DropFormulas.LINEAR_STRETCH.step(peak.result(), stiffness.result()));
      return rope.at(peak.result());
    }
    CatchState peak = rope.rest(weight, energy, 0);
    steps.add(DropFormulas.ENERGY_LEFT.step(energy, weight, peak.travel(), peak.work()));
    return peak;
  }

  CatchLoads loads(double tension, List<Step> steps) {
    List<Double> tensions = new ArrayList<>();
    List<PointLoad> loads = new ArrayList<>();
    tensions.add(tension);
    double tight = tension;
    for (CatchPoint point : path.points()) {
      steps.addAll(point.steps());
      Step slack = FrictionFormulas.SLACK_TENSION.step(tight, point.tensionRatio());
      Step force =
          FrictionFormulas.TWO_LEG_FORCE.step(tight, slack.result(), Math.PI - point.turnRadians());
      steps.add(slack);
      steps.add(force);
      loads.add(
          new PointLoad(
              tight, slack.result(), force.result(), vector(point, tight, slack.result())));
      tight = slack.result();
      tensions.add(tight);
    }
    return new CatchLoads(tensions, loads);
  }

  private static @Nullable Vector<Force> vector(CatchPoint point, double tight, double slack) {
    double[] d = point.directions();
    if (d == null) {
      return null;
    }
    return Vector.ofSi(
        Kind.FORCE,
        tight * d[0] + slack * d[3],
        tight * d[1] + slack * d[4],
        tight * d[2] + slack * d[5]);
  }

  double storedInRope(CatchState state) {
    return rope.stored(state);
  }

  double storedInSprings(CatchState state) {
    return gives.stored() * state.tension() * state.tension();
  }

  /** Heat at every point while the tension rises from nothing. */
  List<Double> heats(CatchState state) {
    List<Double> heats = new ArrayList<>();
    double square = state.tension() * state.tension();
    for (int j = 0; j < products.length - 1; j++) {
      double drop = 1 / products[j] - 1 / products[j + 1];
      heats.add(rope.heat(j, state) + drop * gives.slip(j) * square / 2);
    }
    return heats;
  }

  /**
   * Where the energy of a run at constant tension goes.
   *
   * @param points heat at every point
   * @param device heat in the device
   * @param hand what the hand behind the device takes
   * @param rope what the rope that ran stores in the load leg
   */
  record Ran(List<Double> points, double device, double hand, double rope) {}

  /** Behind: tension of the hand over tension into the device; 0 if there is no hand. */
  Ran ran(CatchState state, double run, double behind, List<Step> steps) {
    int last = products.length - 1;
    double[] over = new double[products.length];
    for (int i = 0; i <= last; i++) {
      over[i] = rope.brought(i, state);
    }
    double tight = state.tension() / products[last];
    double slack = tight * behind;
    double length = run;
    double stored = 0;
    Step heat;
    if (passing) {
      Step unloaded = DropFormulas.UNLOADED_LENGTH.step(run, rope.strain(0, state));
      length = unloaded.result();
      stored = length * kernel.energy(rope.strain(0, state));
      double e = rope.strain(last, state);
      Step into = DropFormulas.BROUGHT_OVER.step(tight, e, kernel.energy(e));
      e = kernel.strain(slack);
      Step out = DropFormulas.BROUGHT_OVER.step(slack, e, kernel.energy(e));
      slack = out.result();
      heat = DropFormulas.PASSING_HEAT.step(into.result(), slack, length);
      steps.addAll(List.of(unloaded, into, out, heat));
    } else {
      heat = DropFormulas.SLIP_HEAT.step(tight, slack, length);
      steps.add(heat);
    }
    List<Double> points = new ArrayList<>();
    for (int j = 0; j < last; j++) {
      points.add((over[j] - over[j + 1]) * length);
    }
    return new Ran(points, heat.result(), slack * length, stored);
  }

  /** Whether the rope passes a point toward the load throughout, as the tension rises. */
  boolean slipsTowardLoad(int j, CatchState state) {
    double bySprings = gives.slip(j);
    if (bySprings >= 0) {
      return true;
    }
    double before = 0;
    for (int look = 1; look <= LOOKS; look++) {
      double t = state.tension() * look / LOOKS;
      double passed = rope.passed(j, rope.at(t)) + bySprings * t;
      if (passed < before) {
        return false;
      }
      before = passed;
    }
    return true;
  }
}
