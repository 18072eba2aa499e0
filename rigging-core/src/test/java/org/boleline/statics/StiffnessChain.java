package org.boleline.statics;

import java.util.ArrayList;
import java.util.List;
import org.boleline.plan.Plan;
import org.boleline.plan.Tail;
import org.boleline.stem.PointMass;
import org.boleline.units.Kind;
import org.boleline.units.Si;
import org.ejml.data.DMatrixRMaj;
import org.ejml.dense.row.factory.DecompositionFactory_DDRM;
import org.ejml.interfaces.decomposition.EigenDecomposition_F64;

/**
 * The least stiffness ratio of a frictionless rig by another road: every stem a chain of stiff
 * links with springs between, in the shape found; the second differences of the loads' potential
 * against the springs.
 *
 * <p>Good to the square of a link's length. Wants stems without kinks and points without slings.
 */
final class StiffnessChain {
  /** Turn of a joint in a second difference, rad. */
  private static final double TURN = 1e-3;

  private final Solution solution;
  private final double load;
  private final double gravity;
  private final List<Link> links = new ArrayList<>();
  private final List<Weight> weights = new ArrayList<>();
  private final List<Held> rope = new ArrayList<>();
  private final double[] loadDirection;
  private final double[] end;

  /** A link above its joint; the joint's springs, level ones only at a root. */
  @SuppressWarnings("ArrayRecordComponent") // never compared
  private record Link(
      int below, double[] joint, double[] tangent, double bend, double twist, boolean root) {}

  /** A point that a link carries. */
  @SuppressWarnings("ArrayRecordComponent") // never compared
  private record Held(int link, double[] place) {}

  private record Weight(Held held, double newtons) {}

  private StiffnessChain(Solution solution, int count) {
    this.solution = solution;
    Plan plan = solution.plan();
    gravity = Si.value(plan.gravity(), Kind.ACCELERATION, "gravity");
    Leg first = solution.legs().get(0);
    load = Rigs.newtons(first.tension());
    loadDirection = Plain.times(-1 / load, first.pull().in(Kind.FORCE));
    List<int[]> spans = new ArrayList<>();
    for (int i = 0; i < plan.stems().size(); i++) {
      int from = links.size();
      stem(i, count);
      spans.add(new int[] {from, links.size()});
    }
    for (int j = 0; j < solution.contacts().size(); j++) {
      ContactResult contact = solution.contacts().get(j);
      rope.add(
          held(
              spans,
              contact.stem(),
              Si.value(contact.at(), Kind.LENGTH, "at"),
              contact.attachment().in(Kind.LENGTH),
              count));
    }
    if (solution.arrangement().tail() instanceof Tail.Device device) {
      Leg last = solution.legs().get(solution.legs().size() - 1);
      rope.add(
          held(
              spans,
              device.stem(),
              Si.value(device.at(), Kind.LENGTH, "at"),
              last.end().orElseThrow().in(Kind.LENGTH),
              count));
      end = null;
    } else if (solution.arrangement().tail() instanceof Tail.Point point) {
      end = point.position().in(Kind.LENGTH);
    } else {
      end = null;
    }
  }

  private Held held(List<int[]> spans, String stem, double at, double[] place, int count) {
    Plan plan = solution.plan();
    for (int i = 0; i < plan.stems().size(); i++) {
      if (plan.stems().get(i).id().equals(stem)) {
        double length = Si.value(plan.stems().get(i).length(), Kind.LENGTH, "length");
        return new Held(linkAt(spans.get(i)[0], at, length, count), place);
      }
    }
    throw new AssertionError(stem);
  }

  /** The root's link first, then joints in the middle of equal parts. */
  private static int linkAt(int from, double at, double length, int count) {
    return from + (int) Math.floor(at / length * count + 0.5 + 1e-12);
  }

  private void stem(int i, int count) {
    GivenStem given = new GivenStem(solution.plan().stems().get(i), gravity);
    StemProfile profile = solution.stems().get(i).profile();
    double h = given.length / count;
    int from = links.size();
    links.add(
        new Link(-1, place(profile, 0)[0], place(profile, 0)[1], given.rootStiffness(), 0, true));
    for (int c = 0; c < count; c++) {
      double s = (c + 0.5) * h;
      double[][] at = place(profile, s);
      double rigidity = given.modulus * given.secondMoment(s, s);
      double torsion = given.shearModulus * 2 * given.secondMoment(s, s);
      links.add(new Link(from + c, at[0], Plain.unit(at[1]), rigidity / h, torsion / h, false));
      for (double x : new double[] {0.5 - Math.sqrt(1.0 / 12), 0.5 + Math.sqrt(1.0 / 12)}) {
        double u = (c + x) * h;
        double[] centre = place(profile, u)[0];
        weights.add(
            new Weight(
                new Held(linkAt(from, u, given.length, count), centre),
                0.5 * h * given.weightPerLength(u, u)));
      }
    }
    for (PointMass mass : given.stem.masses()) {
      double s = Si.value(mass.at(), Kind.LENGTH, "at");
      weights.add(
          new Weight(
              new Held(linkAt(from, s, given.length, count), place(profile, s)[0]),
              gravity * Si.value(mass.mass(), Kind.MASS, "mass")));
    }
  }

  /** Place and slope of the loaded axis: the cubic between two stations. */
  private static double[][] place(StemProfile profile, double s) {
    double[] at = profile.stations(Kind.LENGTH);
    double[][] p = profile.positions(Kind.LENGTH);
    double[][] t = profile.directions();
    int i = 1;
    while (i + 1 < at.length && at[i] < s) {
      i++;
    }
    double h = at[i] - at[i - 1];
    return BentStem.hermite(p[i - 1], t[i - 1], p[i], t[i], h, (s - at[i - 1]) / h);
  }

  /** Least stiffness ratio, extrapolated from two lengths of links. */
  static double ratio(Solution solution, int count) {
    double coarse = new StiffnessChain(solution, count).least();
    double fine = new StiffnessChain(solution, 2 * count).least();
    return fine + (fine - coarse) / 3;
  }

  private double least() {
    int n = 3 * links.size();
    double[] none = new double[n];
    double[] basis = new double[n];
    boolean[] free = new boolean[n];
    for (int l = 0; l < links.size(); l++) {
      for (int d = 0; d < 3; d++) {
        free[3 * l + d] =
            !links.get(l).root || (d < 2 && links.get(l).bend < Double.POSITIVE_INFINITY);
      }
    }
    // Second differences of the potential; turns are measured so that each spring counts as one.
    double[] step = new double[n];
    for (int a = 0; a < n; a++) {
      step[a] = TURN * Math.sqrt(links.get(a / 3).bend);
    }
    DMatrixRMaj matrix = new DMatrixRMaj(n, n);
    double middle = potential(none);
    double[] plus = new double[n];
    for (int a = 0; a < n; a++) {
      if (free[a]) {
        basis[a] = step[a];
        plus[a] = potential(basis);
        basis[a] = 0;
      }
    }
    double[] minus = new double[n];
    for (int a = 0; a < n; a++) {
      if (free[a]) {
        basis[a] = -step[a];
        minus[a] = potential(basis);
        basis[a] = 0;
      }
    }
    for (int a = 0; a < n; a++) {
      matrix.set(a, a, 1);
      for (int b = 0; b <= a; b++) {
        if (!free[a] || !free[b]) {
          continue;
        }
        double second;
        if (a == b) {
          second = plus[a] - 2 * middle + minus[a];
        } else {
          basis[a] = step[a];
          basis[b] = step[b];
          double both = potential(basis);
          basis[a] = -step[a];
          basis[b] = -step[b];
          double against = potential(basis);
          basis[a] = 0;
          basis[b] = 0;
          second = 0.5 * (both + against - plus[a] - minus[a] - plus[b] - minus[b] + 2 * middle);
        }
        double value = second / step[a] / step[b];
        matrix.set(a, b, value + (a == b ? 1 : 0));
        matrix.set(b, a, matrix.get(a, b));
      }
    }
    EigenDecomposition_F64<DMatrixRMaj> found = DecompositionFactory_DDRM.eig(n, false, true);
    if (!found.decompose(matrix)) {
      throw new AssertionError("no eigenvalues");
    }
    double least = Double.POSITIVE_INFINITY;
    for (int a = 0; a < n; a++) {
      least = Math.min(least, found.getEigenvalue(a).getReal());
    }
    return least;
  }

  /** Potential of weights and rope after small turns of the joints, each in units of its spring. */
  private double potential(double[] turns) {
    int n = links.size();
    double[][][] frame = new double[n][][];
    double[][] joint = new double[n][];
    for (int l = 0; l < n; l++) {
      Link link = links.get(l);
      double[] v = {turns[3 * l], turns[3 * l + 1], turns[3 * l + 2]};
      double[] turn;
      if (link.root) {
        turn = Plain.times(1 / Math.sqrt(link.bend), v);
      } else {
        double along = Plain.dot(v, link.tangent);
        double bend = 1 / Math.sqrt(link.bend);
        turn =
            Plain.plus(
                Plain.times(bend, v),
                Plain.times((1 / Math.sqrt(link.twist) - bend) * along, link.tangent));
      }
      double[][] unit = {{1, 0, 0}, {0, 1, 0}, {0, 0, 1}};
      double[][] below = link.below < 0 ? unit : frame[link.below];
      joint[l] =
          link.below < 0
              ? link.joint
              : Plain.plus(
                  joint[link.below],
                  Plain.outOf(below, Plain.minus(link.joint, links.get(link.below).joint)));
      double[][] own = Plain.turned(turn, unit);
      frame[l] =
          new double[][] {
            Plain.outOf(below, own[0]), Plain.outOf(below, own[1]), Plain.outOf(below, own[2])
          };
    }
    double sum = 0;
    for (Weight weight : weights) {
      sum += weight.newtons * place(weight.held, joint, frame)[2];
    }
    double[] before = null;
    for (Held point : rope) {
      double[] here = place(point, joint, frame);
      sum +=
          before == null
              ? -load * Plain.dot(loadDirection, here)
              : load * Plain.size(Plain.minus(here, before));
      before = here;
    }
    if (end != null) {
      sum += load * Plain.size(Plain.minus(end, before));
    } else if (solution.arrangement().tail() instanceof Tail.Down) {
      sum += load * before[2];
    }
    return sum;
  }

  private double[] place(Held held, double[][] joint, double[][][] frame) {
    return Plain.plus(
        joint[held.link],
        Plain.outOf(frame[held.link], Plain.minus(held.place, links.get(held.link).joint)));
  }
}
