package org.boleline.statics;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.boleline.geometry.Vector;
import org.boleline.plan.Arrangement;
import org.boleline.plan.Contact;
import org.boleline.plan.Tail;
import org.boleline.rope.Bark;
import org.boleline.rope.FrictionRing;
import org.boleline.rope.Hardware;
import org.boleline.rope.Motion;
import org.boleline.rope.Rope;
import org.boleline.rope.Sheave;
import org.boleline.stem.Diameters;
import org.boleline.stem.PointMass;
import org.boleline.stem.Stem;
import org.boleline.stem.StemShape;
import org.boleline.units.Kind;
import org.boleline.units.Si;

/**
 * Recomputes a solution's balance from its numbers alone.
 *
 * <p>Shares no code with the solver: plain statics on positions, tensions and the stems as the plan
 * states them; own weight is summed over thin slices of the shape the result gives.
 */
final class BalanceCheck {
  private static final double EXACT = 1e-9;

  /** Own weight is summed over slices of a shape known at stations only. */
  private static final double SLICED = 1e-6;

  /** The profile's places are read between those the solver keeps. */
  private static final double READ = 1e-7;

  private static final int SLICES = 4;

  private final Solution solution;
  private final Arrangement arrangement;
  private final double load;
  private final double gravity;
  private final List<Imbalance> found = new ArrayList<>();

  private BalanceCheck(Solution solution) {
    this.solution = solution;
    arrangement = solution.arrangement();
    load = Si.value(solution.legs().get(0).tension(), Kind.FORCE, "load");
    gravity = Si.value(solution.plan().gravity(), Kind.ACCELERATION, "gravity");
  }

  static List<Imbalance> of(Solution solution) {
    BalanceCheck check = new BalanceCheck(solution);
    check.piece();
    check.legs();
    check.contacts();
    for (int i = 0; i < solution.stems().size(); i++) {
      check.stem(i);
    }
    return List.copyOf(check.found);
  }

  private void note(String what, String place, double size, double allowed) {
    if (!(size <= allowed)) {
      found.add(new Imbalance(what, place, size, allowed));
    }
  }

  /** The upright part of the load leg's tension carries the piece. */
  private void piece() {
    double weight = gravity * Si.value(solution.plan().piece().mass(), Kind.MASS, "mass");
    double upward = solution.legs().get(0).pull().in(Kind.FORCE)[2];
    note("weight of the piece", "legs/0", Math.abs(upward - weight) / weight, EXACT);
  }

  private void contacts() {
    int leg = 0;
    for (int j = 0; j < solution.contacts().size(); j++) {
      ContactResult contact = solution.contacts().get(j);
      Contact stated = arrangement.contacts().get(j);
      String place = "contacts/" + j;
      double sling = Si.value(stated.sling(), Kind.LENGTH, "sling");
      double[] force = contact.force().in(Kind.FORCE);
      double[] attachment = contact.attachment().in(Kind.LENGTH);
      if (!contact.bears()) {
        note("force of a slack sling", place, size(force) / load, 0);
        note("reach of a slack sling", place, beyond(leg, attachment, sling), EXACT);
        continue;
      }
      double[] in = unit(solution.legs().get(leg).pullAtEnd().in(Kind.FORCE));
      double[] out = unit(solution.legs().get(leg + 1).pull().in(Kind.FORCE));
      double before = Si.value(contact.tensionIn(), Kind.FORCE, "tension");
      double after = Si.value(contact.tensionOut(), Kind.FORCE, "tension");
      double[] sum = plus(times(in, before), times(out, after));
      note("force of both legs", place, size(minus(sum, force)) / load, EXACT);
      note("directions of the legs", place, legGap(leg), EXACT);
      note("friction", place, frictionGap(stated.hardware(), in, out, before, after), EXACT);
      double[] arm = minus(contact.position().in(Kind.LENGTH), attachment);
      note("length of the sling", place, Math.abs(size(arm) - sling), EXACT);
      if (sling > 0) {
        double pull = dot(force, arm) / sling;
        note("pull of the sling", place, Math.max(0, -pull) / load, EXACT);
        note(
            "line of the sling", place, size(minus(force, times(arm, pull / sling))) / load, EXACT);
      }
      leg++;
    }
  }

  /** How far a leg's stated direction is off the line between its two ends. */
  private double legGap(int leg) {
    Leg before = solution.legs().get(leg);
    if (before.begin().isEmpty() || before.end().isEmpty()) {
      return 0;
    }
    double[] line =
        unit(minus(before.end().get().in(Kind.LENGTH), before.begin().get().in(Kind.LENGTH)));
    return size(minus(line, chord(before)));
  }

  /**
   * Direction of a leg between its ends: its pull, less the half of its weight that hangs there.
   */
  private static double[] chord(Leg leg) {
    double half = 0.5 * Si.value(leg.weight(), Kind.FORCE, "weight");
    return unit(plus(leg.pull().in(Kind.FORCE), new double[] {0, 0, half}));
  }

  /** Every leg hangs in balance and weighs what its rope weighs. */
  private void legs() {
    double perLength =
        gravity
            * solution
                .plan()
                .rope()
                .flatMap(Rope::linearDensity)
                .map(density -> Si.value(density, Kind.LINEAR_DENSITY, "linear density"))
                .orElse(0.0);
    for (int i = 0; i < solution.legs().size(); i++) {
      Leg leg = solution.legs().get(i);
      String place = "legs/" + i;
      double weight = Si.value(leg.weight(), Kind.FORCE, "weight");
      double[] pull = leg.pull().in(Kind.FORCE);
      double[] back = leg.pullAtEnd().in(Kind.FORCE);
      double[] sum = plus(plus(pull, back), new double[] {0, 0, weight});
      note("balance of the leg", place, size(sum) / load, EXACT);
      double begin = Si.value(leg.tension(), Kind.FORCE, "tension");
      double end = Si.value(leg.tensionAtEnd(), Kind.FORCE, "tension");
      note("tension of the leg", place, Math.abs(size(pull) - begin) / load, EXACT);
      note("tension at the leg's end", place, Math.abs(size(back) - end) / load, EXACT);
      boolean counts =
          leg.begin().isPresent()
              && leg.end().isPresent()
              && arrangement
                  .contacts()
                  .get(Integer.parseInt(leg.from().substring("contacts/".length())))
                  .hasRopeWeight();
      double wanted = 0;
      if (counts) {
        double[] line =
            minus(
                leg.end().orElseThrow().in(Kind.LENGTH), leg.begin().orElseThrow().in(Kind.LENGTH));
        wanted = perLength * size(line);
      }
      note("weight of the leg", place, Math.abs(weight - wanted) / load, EXACT);
    }
  }

  private double frictionGap(
      Hardware hardware, double[] in, double[] out, double before, double after) {
    double turn = Math.PI - Math.acos(Math.max(-1, Math.min(1, dot(in, out))));
    double sine = size(cross(in, out));
    if (sine < 0.1) {
      turn = dot(in, out) < 0 ? Math.asin(sine) : Math.PI - Math.asin(sine);
    }
    boolean raising = solution.motion() == Motion.RAISING;
    double tight = raising ? after : before;
    double slack = raising ? before : after;
    double expected = 1;
    if (hardware instanceof FrictionRing ring) {
      expected = Math.exp(ring.friction() * turn);
    } else if (hardware instanceof Bark bark) {
      expected = Math.exp(bark.friction() * turn);
    } else if (hardware instanceof Sheave sheave) {
      double c = (1 - sheave.efficiency()) / (1 + sheave.efficiency());
      double resultant = size(plus(times(in, before), times(out, after)));
      return Math.abs(tight - slack - c * resultant) / load;
    }
    return Math.abs(tight / slack - expected) / expected;
  }

  /** How far the rope passes outside the reach of a slack sling. */
  private double beyond(int leg, double[] attachment, double sling) {
    Leg passing = solution.legs().get(leg);
    double[] along = chord(passing);
    Optional<double[]> begin = passing.begin().map(v -> v.in(Kind.LENGTH));
    Optional<double[]> end = passing.end().map(v -> v.in(Kind.LENGTH));
    if (begin.isEmpty() && end.isEmpty()) {
      return 0;
    }
    double[] from = begin.or(() -> end).orElseThrow();
    double x = dot(minus(attachment, from), along);
    if (begin.isPresent()) {
      double most = end.map(e -> dot(minus(e, from), along)).orElse(Double.POSITIVE_INFINITY);
      x = Math.max(0, Math.min(most, x));
    } else {
      x = Math.min(0, x);
    }
    double distance = size(minus(attachment, plus(from, times(along, x))));
    return Math.max(0, distance - sling);
  }

  private void stem(int i) {
    StemResult result = solution.stems().get(i);
    Stem stated = solution.plan().stems().get(i);
    String place = "stems/" + i;
    double[] stations = result.profile().stations(Kind.LENGTH);
    double[][] axis = result.profile().positions(Kind.LENGTH);
    double[][] directions = result.profile().directions();
    double[][] forces = result.profile().forces(Kind.FORCE);
    double[][] moments = result.profile().moments(Kind.MOMENT);
    double length = stations[stations.length - 1];
    double weight = weight(stated, length);
    double[] force = new double[3];
    double[] moment = new double[3];
    double worst = 0;
    double worstForce = 0;
    for (int s = stations.length - 1; s >= 0; s--) {
      point(stated, stations, s, axis[s], force, moment);
      double[] about = minus(moment, cross(axis[s], force));
      if (s > 0) {
        worstForce = Math.max(worstForce, size(minus(force, forces[s])));
        worst = Math.max(worst, size(minus(about, moments[s])));
        slices(stated, stations, axis, directions, s, force, moment);
      }
    }
    double scale = load + weight;
    note("force in the sections", place, worstForce / scale, SLICED);
    note("moment in the sections", place, worst / (scale * length), SLICED);
    double[] base = times(result.base().force().in(Kind.FORCE), -1);
    double[] baseMoment = times(result.base().moment().in(Kind.MOMENT), -1);
    note("force at the base", place, size(minus(force, base)) / scale, SLICED);
    double[] about = minus(moment, cross(axis[0], force));
    note("moment at the base", place, size(minus(about, baseMoment)) / (scale * length), SLICED);
    shares(result, place, base, baseMoment, scale, length);
    stretch(stations, axis, place);
  }

  private void shares(
      StemResult result,
      String place,
      double[] base,
      double[] baseMoment,
      double scale,
      double length) {
    double[] force = new double[3];
    double[] moment = new double[3];
    for (Share share : result.shares()) {
      add(force, share.force().in(Kind.FORCE));
      add(moment, share.moment().in(Kind.MOMENT));
    }
    note("sum of the shares' forces", place, size(minus(force, base)) / scale, EXACT);
    note(
        "sum of the shares' moments",
        place,
        size(minus(moment, baseMoment)) / (scale * length),
        EXACT);
  }

  /** Chords are never longer than the arc: a stem bends but does not stretch. */
  private void stretch(double[] stations, double[][] axis, String place) {
    double worst = 0;
    for (int s = 1; s < stations.length; s++) {
      double chord = size(minus(axis[s], axis[s - 1]));
      worst = Math.max(worst, chord - (stations[s] - stations[s - 1]));
    }
    note("length of the axis", place, worst / stations[stations.length - 1], READ);
  }

  /** Adds what acts at a station itself: contacts, device, hung masses. */
  private void point(
      Stem stem, double[] stations, int s, double[] at, double[] force, double[] moment) {
    for (ActingForce acting : acting(stem, stations, s, at)) {
      double[] f = acting.force().in(Kind.FORCE);
      add(force, f);
      add(moment, cross(acting.position().in(Kind.LENGTH), f));
    }
  }

  private List<ActingForce> acting(Stem stem, double[] stations, int s, double[] at) {
    List<ActingForce> acting = new ArrayList<>();
    for (int j = 0; j < solution.contacts().size(); j++) {
      ContactResult contact = solution.contacts().get(j);
      if (contact.stem().equals(stem.id())
          && nearest(stations, Si.value(contact.at(), Kind.LENGTH, "at")) == s) {
        acting.add(new ActingForce("contact " + (j + 1), contact.force(), contact.attachment()));
      }
    }
    if (arrangement.tail() instanceof Tail.Device device
        && device.stem().equals(stem.id())
        && nearest(stations, Si.value(device.at(), Kind.LENGTH, "at")) == s) {
      Leg last = solution.legs().get(solution.legs().size() - 1);
      acting.add(new ActingForce("device", last.pullAtEnd(), last.end().orElseThrow()));
    }
    for (int j = 0; j < stem.masses().size(); j++) {
      PointMass mass = stem.masses().get(j);
      if (nearest(stations, Si.value(mass.at(), Kind.LENGTH, "at")) == s) {
        acting.add(
            new ActingForce(
                "mass " + (j + 1),
                Vector.ofSi(Kind.FORCE, 0, 0, -gravity * Si.value(mass.mass(), Kind.MASS, "mass")),
                Vector.ofSi(Kind.LENGTH, at)));
      }
    }
    return acting;
  }

  /** What acts on a stem at and above a station of its profile. */
  static List<ActingForce> above(Solution solution, StemResult result, double at) {
    BalanceCheck check = new BalanceCheck(solution);
    Stem stem =
        solution.plan().stems().stream()
            .filter(one -> one.id().equals(result.id()))
            .findFirst()
            .orElseThrow();
    double[] stations = result.profile().stations(Kind.LENGTH);
    double[][] axis = result.profile().positions(Kind.LENGTH);
    double[][] directions = result.profile().directions();
    int cut = nearest(stations, at);
    List<ActingForce> acting = new ArrayList<>();
    double[] weight = new double[3];
    double[] moment = new double[3];
    for (int s = stations.length - 1; s >= cut; s--) {
      acting.addAll(check.acting(stem, stations, s, axis[s]));
      if (s > cut) {
        check.slices(stem, stations, axis, directions, s, weight, moment);
      }
    }
    if (weight[2] != 0) {
      // the plumb line on which the whole weight has the moment of its slices
      double x = -moment[1] / weight[2];
      double y = moment[0] / weight[2];
      acting.add(
          new ActingForce(
              ActingForce.OWN_WEIGHT,
              Vector.ofSi(Kind.FORCE, weight),
              Vector.ofSi(Kind.LENGTH, x, y, axis[cut][2])));
    }
    return List.copyOf(acting);
  }

  private static int nearest(double[] stations, double at) {
    int best = 0;
    for (int i = 1; i < stations.length; i++) {
      if (Math.abs(stations[i] - at) < Math.abs(stations[best] - at)) {
        best = i;
      }
    }
    return best;
  }

  private double weight(Stem stem, double length) {
    double sum = 0;
    int parts = 2000;
    for (int i = 0; i < parts; i++) {
      double at = length * (i + 0.5) / parts;
      sum += weightPerLength(stem, at) * length / parts;
    }
    return sum;
  }

  private double weightPerLength(Stem stem, double at) {
    if (!stem.ownWeight()) {
      return 0;
    }
    double density = Si.value(stem.wood().density(), Kind.DENSITY, "density");
    Diameters diameters = stem.diameters();
    double outer = linear(diameters.stations(Kind.LENGTH), diameters.outer(Kind.LENGTH), at);
    double cavity = linear(diameters.stations(Kind.LENGTH), diameters.cavity(Kind.LENGTH), at);
    return gravity * density * Math.PI / 4 * (outer * outer - cavity * cavity);
  }

  private static double linear(double[] x, double[] y, double at) {
    for (int i = 0; i + 1 < x.length; i++) {
      if (at >= x[i] && at <= x[i + 1] && x[i + 1] > x[i]) {
        return y[i] + (y[i + 1] - y[i]) * (at - x[i]) / (x[i + 1] - x[i]);
      }
    }
    return y[y.length - 1];
  }

  /** Adds the weight of the part between two stations, slice by slice (Simpson's rule). */
  private void slices(
      Stem stem,
      double[] stations,
      double[][] axis,
      double[][] directions,
      int s,
      double[] force,
      double[] moment) {
    double low = stations[s - 1];
    double h = stations[s] - low;
    double[] start = directions[s - 1];
    if (stem.shape() instanceof StemShape.ByPoints) {
      // The line may have a kink here, and the result tells the direction just below it.
      double[] chord = unit(minus(axis[s], axis[s - 1]));
      start = minus(times(chord, 2 * dot(chord, directions[s])), directions[s]);
    }
    for (int slice = 0; slice < SLICES; slice++) {
      for (int k = 0; k < 3; k++) {
        double x = (slice + 0.5 * k) / SLICES;
        double inside = Math.max(1e-12, Math.min(1 - 1e-12, x));
        double rule = (k == 1 ? 4.0 : 1.0) / 6 / SLICES;
        double[] f = {0, 0, -weightPerLength(stem, low + inside * h) * rule * h};
        add(force, f);
        add(moment, cross(hermite(axis[s - 1], start, axis[s], directions[s], x, h), f));
      }
    }
  }

  /** A point between two stations, from their positions and directions. */
  private static double[] hermite(
      double[] from, double[] start, double[] to, double[] end, double x, double h) {
    double[] out = new double[3];
    double h00 = (1 + 2 * x) * (1 - x) * (1 - x);
    double h10 = x * (1 - x) * (1 - x);
    double h01 = x * x * (3 - 2 * x);
    double h11 = x * x * (x - 1);
    for (int d = 0; d < 3; d++) {
      out[d] = h00 * from[d] + h10 * h * start[d] + h01 * to[d] + h11 * h * end[d];
    }
    return out;
  }

  private static double dot(double[] a, double[] b) {
    return a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
  }

  private static double size(double[] a) {
    return Math.sqrt(dot(a, a));
  }

  private static double[] plus(double[] a, double[] b) {
    return new double[] {a[0] + b[0], a[1] + b[1], a[2] + b[2]};
  }

  private static double[] minus(double[] a, double[] b) {
    return new double[] {a[0] - b[0], a[1] - b[1], a[2] - b[2]};
  }

  private static double[] times(double[] a, double by) {
    return new double[] {by * a[0], by * a[1], by * a[2]};
  }

  private static double[] unit(double[] a) {
    return times(a, 1 / size(a));
  }

  private static double[] cross(double[] a, double[] b) {
    return new double[] {
      a[1] * b[2] - a[2] * b[1], a[2] * b[0] - a[0] * b[2], a[0] * b[1] - a[1] * b[0]
    };
  }

  private static void add(double[] to, double[] a) {
    for (int d = 0; d < 3; d++) {
      to[d] += a[d];
    }
  }
}
