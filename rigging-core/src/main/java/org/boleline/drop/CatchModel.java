package org.boleline.drop;

import java.util.ArrayList;
import java.util.List;
import javax.measure.quantity.Force;
import org.boleline.explain.Step;
import org.boleline.geometry.Vector;
import org.boleline.internal.drop.CatchKernel;
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
  private final double[] gives;
  private final double give;

  CatchModel(StretchCurve curve, CatchPath path, double[] lengths) {
    this.curve = curve;
    this.path = path;
    this.lengths = lengths;
    kernel = StretchKernels.of(curve);
    products = path.products();
    List<CatchPoint> points = path.points();
    gives = new double[points.size()];
    Double atLoad = path.loadSpring();
    double sum = atLoad == null ? 0 : 1 / atLoad;
    for (int j = 0; j < gives.length; j++) {
      Double spring = points.get(j).springRate();
      if (spring != null) {
        gives[j] =
            CatchKernel.give(products[j], products[j + 1], points.get(j).turnRadians(), spring);
        sum += gives[j];
      }
    }
    give = sum;
  }

  CatchModel withLoadLegLonger(double run) {
    double[] longer = lengths.clone();
    longer[0] += run;
    return new CatchModel(curve, path, longer);
  }

  boolean hasSprings() {
    return path.loadSpring() != null
        || path.points().stream().anyMatch(point -> point.springRate() != null);
  }

  double travel(double tension) {
    return CatchKernel.travel(kernel, lengths, products, give, tension);
  }

  double work(double tension) {
    return CatchKernel.work(kernel, lengths, products, give, tension);
  }

  /** Greatest tension; on a linear rope from the closed form, whose steps are noted. */
  double peak(double weight, double energy, List<Step> steps) {
    if (curve instanceof LinearStretch linear) {
      double effective = lengths[lengths.length - 1];
      for (int i = lengths.length - 2; i >= 0; i--) {
        Step step =
            DropFormulas.EFFECTIVE_LENGTH.step(
                lengths[i], effective, path.points().get(i).tensionRatio());
        steps.add(step);
        effective = step.result();
      }
      double modulus = Si.value(linear.modulus(), Kind.FORCE, "modulus");
      Step stiffness = DropFormulas.EFFECTIVE_STIFFNESS.step(effective, modulus, give);
      Step peak = DropFormulas.LINEAR_PEAK.step(weight, stiffness.result(), energy / weight);
      steps.add(stiffness);
      steps.add(peak);
      steps.add(DropFormulas.LINEAR_STRETCH.step(peak.result(), stiffness.result()));
      return peak.result();
    }
    double peak = CatchKernel.peak(kernel, lengths, products, give, weight, energy);
    steps.add(DropFormulas.ENERGY_LEFT.step(energy, weight, travel(peak), work(peak)));
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

  double storedInRope(double tension) {
    double sum = 0;
    for (int i = 0; i < lengths.length; i++) {
      sum += lengths[i] * kernel.energy(kernel.strain(tension / products[i]));
    }
    return sum;
  }

  double storedInSprings(double tension) {
    Double atLoad = path.loadSpring();
    double sum = atLoad == null ? 0 : tension * tension / (2 * atLoad);
    List<CatchPoint> points = path.points();
    for (int j = 0; j < points.size(); j++) {
      Double spring = points.get(j).springRate();
      if (spring != null) {
        double share =
            CatchKernel.forceShare(products[j], products[j + 1], points.get(j).turnRadians());
        double force = share * tension;
        sum += force * force / (2 * spring);
      }
    }
    return sum;
  }

  /** Heat at every point while the tension rises from nothing. */
  List<Double> heats(double tension) {
    List<Double> heats = new ArrayList<>();
    for (int j = 0; j < gives.length; j++) {
      double[] slip = CatchKernel.slip(kernel, lengths, products, j, tension);
      double drop = 1 / products[j] - 1 / products[j + 1];
      heats.add(slip[1] + drop * springSlip(j) * tension * tension / 2);
    }
    return heats;
  }

  /** Rope that passes a point for each newton at the load because points give way. */
  private double springSlip(int j) {
    CatchPoint point = path.points().get(j);
    Double spring = point.springRate();
    double slip =
        spring == null
            ? 0
            : CatchKernel.ownSlip(products[j], products[j + 1], point.turnRadians(), spring);
    for (int i = j + 1; i < gives.length; i++) {
      slip += gives[i];
    }
    return slip;
  }

  /** Whether the rope passes a point toward the load throughout, as the tension rises. */
  boolean slipsTowardLoad(int j, double tension) {
    double bySprings = springSlip(j);
    if (bySprings >= 0) {
      return true;
    }
    double before = 0;
    for (int look = 1; look <= LOOKS; look++) {
      double t = tension * look / LOOKS;
      double passed = CatchKernel.slip(kernel, lengths, products, j, t)[0] + bySprings * t;
      if (passed < before) {
        return false;
      }
      before = passed;
    }
    return true;
  }
}
