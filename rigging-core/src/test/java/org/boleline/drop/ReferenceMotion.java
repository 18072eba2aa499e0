package org.boleline.drop;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.boleline.internal.drop.StretchKernel;

/**
 * A catch in time by small equal steps: a plain second way, for checks.
 *
 * <p>Each step is half a push, a free flight and half a push. In free flight the piece turns about
 * its fixed spin exactly (a body alike about its axis) and each mode swings exactly. At the end of
 * the flight the rope is laid anew over its points: the pattern of points that hold and points over
 * which rope passes is tried and mended until no tension lies outside its bounds and no rope passes
 * toward the looser side. Runs of legs between two points that hold share their rope, so each has
 * one unknown tension. Rope has no speed here and no event is located but the first touch within a
 * step.
 *
 * <p>All numbers in SI units, upward is the third coordinate.
 */
final class ReferenceMotion {
  static final double GRAVITY = 9.80665;

  /** A mode: angular frequency, share of critical damping, movement of each point and the end. */
  record Mode(double frequency, double damping, double[][] atPoints, double[] atEnd) {}

  /** What the end of the rope is in. */
  enum Device {
    /** Nothing passes. */
    LOCKED,
    /** Rope passes at a tension. */
    SLIPS,
    /** No hold until a delay after the rope was first taut, then as {@link #SLIPS}. */
    BY_HAND
  }

  /** What moves: plain fields, to be read by other checks as well. */
  static final class Given {
    double gravity = GRAVITY;
    double mass = 1;
    double axialInertia = 1;
    double transverseInertia = 1;
    double[] axis = {0, 0, 1};
    double[] centre = {0, 0, 0};
    double[] velocity = {0, 0, 0};
    double[] spin = {0, 0, 0};

    /** From the centre of gravity to the knot, at the start. */
    double[] tie = {0, 0, 0};

    double[][] points = {};
    double[] ratios = {};
    double[] end = {0, 0, 0};
    StretchCurve curve;

    /** Rope without load in each leg; in a slack rope only the sum counts. */
    double[] natural = {};

    /** Strain is counted on a constant length of each leg: rope that passes stays as stiff. */
    boolean whereItLay;

    /** These constant lengths; null for those when the rope is first taut. */
    double[] lay;

    Device device = Device.LOCKED;
    double slipTension;
    double delay;
    double hysteresis;
    double hysteresisStrain = 1;
    List<Mode> modes = new ArrayList<>();

    /** What it was drawn from, for the message of a failing check. */
    String name = "";

    @Override
    public String toString() {
      return name;
    }

    static Given piece(double mass, double... centre) {
      Given given = new Given();
      given.mass = mass;
      given.centre = centre;
      return given;
    }

    Given moving(double... velocity) {
      this.velocity = velocity;
      return this;
    }

    Given body(double axial, double transverse, double[] axis, double[] tie) {
      axialInertia = axial;
      transverseInertia = transverse;
      this.axis = axis;
      this.tie = tie;
      return this;
    }

    Given over(double ratio, double... point) {
      points = Arrays.copyOf(points, points.length + 1);
      points[points.length - 1] = point;
      ratios = Arrays.copyOf(ratios, ratios.length + 1);
      ratios[ratios.length - 1] = ratio;
      return this;
    }

    Given to(double... end) {
      this.end = end;
      return this;
    }

    Given rope(StretchCurve curve, double... natural) {
      this.curve = curve;
      this.natural = natural;
      return this;
    }

    Given countedWhereItLay(double... lay) {
      whereItLay = true;
      this.lay = lay.length == 0 ? null : lay;
      return this;
    }

    Given slips(double tension) {
      device = Device.SLIPS;
      slipTension = tension;
      return this;
    }

    Given byHand(double tension, double delay) {
      device = Device.BY_HAND;
      slipTension = tension;
      this.delay = delay;
      return this;
    }

    Given mode(Mode mode) {
      modes.add(mode);
      return this;
    }
  }

  /** One moment. */
  record Moment(
      double time,
      double[] tensions,
      double[][] forces,
      double[] centre,
      double[] velocity,
      double[] axis,
      double[] q,
      double fed) {}

  /** Sums of energy at the end; the gap is what the account misses. */
  record Energies(
      double kinetic,
      double gravity,
      double rope,
      double modes,
      double[] points,
      double device,
      double hysteresis,
      double damping,
      double start) {
    double heat() {
      return Arrays.stream(points).sum() + device + hysteresis + damping;
    }

    double gap() {
      return kinetic + gravity + rope + modes + heat() - start;
    }
  }

  private static final int MOST_PATTERNS = 200;
  private static final double LEAST_PASSED = 1e-12;
  private static final double LEAST_FORCE = 1e-7;

  final List<Moment> moments = new ArrayList<>();

  /** Greatest tension of each leg, force on each point and the end, and swing of each mode. */
  final double[] greatestTension;

  final double[] greatestForce;
  final double[] greatestSwing;

  /** When each leg's tension was greatest. */
  final double[] timeOfGreatest;

  /** The greatest excess of a tension over its bound at a point, in newtons. */
  double worstExcess;

  /** The largest gap of the account at any step, over all energy that came in until then. */
  double worstGap;

  private final Given given;
  private final StretchKernel curve;
  private final double step;
  private final int legs;
  private double time;

  private final double[] x;
  private final double[] v;
  private final double[] spinMomentum;
  private double[] axis;
  private double[] tie;
  private final double[] q;
  private final double[] rate;

  private final double[][] nodes;
  private final double[][] units;
  private final double[] length;
  private final double[] before;

  private final double[] natural;
  private double[] lay;
  private final double[] strain;
  private final double[] memory;
  private final double[] tension;
  private final int[] passing;
  private boolean running;
  private boolean taut;
  private double firstTaut = Double.NaN;
  private double fed;

  private final double[] pointHeat;
  private double deviceHeat;
  private double hysteresisLoss;
  private double dampingLoss;
  private final double startEnergy;
  private final double startKinetic;
  private double lowest;

  /** Follows a catch for a time, keeping one step in so many. */
  ReferenceMotion(Given given, double step, double duration, int every) {
    this.given = given;
    this.step = step;
    curve = StretchKernels.of(given.curve);
    legs = given.points.length + 1;
    if (given.natural.length != legs) {
      throw new IllegalArgumentException("rope: wants a length for each leg");
    }
    x = given.centre.clone();
    v = given.velocity.clone();
    axis = times(1 / size(given.axis), given.axis);
    tie = given.tie.clone();
    spinMomentum =
        plus(
            times(given.transverseInertia, given.spin),
            (given.axialInertia - given.transverseInertia) * dot(given.spin, axis),
            axis);
    q = new double[given.modes.size()];
    rate = new double[q.length];
    nodes = new double[legs + 1][];
    units = new double[legs][];
    length = new double[legs];
    before = new double[legs];
    natural = given.natural.clone();
    lay = given.lay;
    strain = new double[legs];
    memory = new double[legs];
    tension = new double[legs];
    passing = new int[legs - 1];
    pointHeat = new double[legs - 1];
    greatestTension = new double[legs];
    timeOfGreatest = new double[legs];
    greatestForce = new double[legs];
    greatestSwing = new double[q.length];

    geometry();
    System.arraycopy(length, 0, before, 0, legs);
    if (sum(length) > sum(natural)) {
      taut = true;
      firstTaut = 0;
      lay = lay == null ? natural.clone() : lay;
      solve();
      Arrays.fill(pointHeat, 0);
      deviceHeat = 0;
      hysteresisLoss = 0;
    }
    startEnergy = energies().kinetic + energies().gravity + energies().rope;
    startKinetic = energies().kinetic;
    lowest = x[2];
    record(true);
    long steps = Math.round(duration / step);
    for (long i = 1; i <= steps; i++) {
      push(step / 2);
      fly();
      time = i * step;
      System.arraycopy(length, 0, before, 0, legs);
      geometry();
      rope();
      push(step / 2);
      record(i % every == 0);
    }
  }

  // The piece and the stem.

  private void push(double dt) {
    double[] pull = times(tension[0], units[0]);
    double[] moment = cross(tie, pull);
    for (int c = 0; c < 3; c++) {
      v[c] += dt * (pull[c] / given.mass - (c == 2 ? given.gravity : 0));
      spinMomentum[c] += dt * moment[c];
    }
    for (int k = 0; k < q.length; k++) {
      Mode mode = given.modes.get(k);
      double push = -tension[legs - 1] * dot(units[legs - 1], mode.atEnd());
      for (int j = 0; j < legs - 1; j++) {
        push += dot(forceOn(j), mode.atPoints()[j]);
      }
      rate[k] += dt * push;
    }
  }

  /** Force of the rope on a point; the last one is the end. */
  private double[] forceOn(int j) {
    double[] force = times(-tension[j], units[j]);
    return j == legs - 1 ? force : plus(force, tension[j + 1], units[j + 1]);
  }

  private void fly() {
    for (int c = 0; c < 3; c++) {
      x[c] += step * v[c];
    }
    // Free turning of a body alike about its axis: about the axis, then all about the momentum.
    double own =
        dot(spinMomentum, axis) * (1 / given.axialInertia - 1 / given.transverseInertia) * step;
    tie = turned(tie, axis, own);
    double whole = size(spinMomentum);
    if (whole > 0) {
      double[] about = times(1 / whole, spinMomentum);
      tie = turned(tie, about, whole / given.transverseInertia * step);
      axis = turned(axis, about, whole / given.transverseInertia * step);
    }
    for (int k = 0; k < q.length; k++) {
      double held = modeEnergy(k);
      double w = given.modes.get(k).frequency();
      double z = given.modes.get(k).damping();
      double wd = w * Math.sqrt(1 - z * z);
      double decay = Math.exp(-z * w * step);
      double cos = Math.cos(wd * step);
      double sin = Math.sin(wd * step) / wd;
      double old = q[k];
      q[k] = decay * (old * (cos + z * w * sin) + rate[k] * sin);
      rate[k] = decay * (rate[k] * (cos - z * w * sin) - w * w * old * sin);
      dampingLoss += held - modeEnergy(k);
    }
  }

  private double modeEnergy(int k) {
    double w = given.modes.get(k).frequency();
    return (rate[k] * rate[k] + w * w * q[k] * q[k]) / 2;
  }

  private void geometry() {
    nodes[0] = plus(x, 1, tie);
    for (int j = 0; j < legs; j++) {
      boolean last = j == legs - 1;
      double[] place = last ? given.end : given.points[j];
      for (int k = 0; k < q.length; k++) {
        Mode mode = given.modes.get(k);
        place = plus(place, q[k], last ? mode.atEnd() : mode.atPoints()[j]);
      }
      nodes[j + 1] = place;
      double[] along = plus(place, -1, nodes[j]);
      length[j] = size(along);
      units[j] = times(1 / length[j], along);
    }
  }

  // The rope.

  private void rope() {
    double whole = sum(length);
    double from = time - step;
    if (given.device == Device.BY_HAND && !(time > firstTaut + given.delay)) {
      if (whole > sum(natural)) {
        if (Double.isNaN(firstTaut)) {
          firstTaut = from + step * touch();
          layAt(touch());
          lay = lay == null ? natural.clone() : lay;
        }
        fed += whole - sum(natural);
        layAt(1);
      }
      return;
    }
    if (given.device == Device.BY_HAND && from <= firstTaut + given.delay) {
      // The hand takes hold within this step.
      double share = (firstTaut + given.delay - from) / step;
      double then = sum(before) + share * (whole - sum(before));
      if (then > sum(natural)) {
        fed += then - sum(natural);
        layAt(share);
      }
    }
    if (whole <= sum(natural)) {
      if (taut) {
        for (int i = 0; i < legs; i++) {
          memory[i] = memoryAt(i, 0);
          strain[i] = 0;
          tension[i] = 0;
        }
        taut = false;
      }
      return;
    }
    if (!taut) {
      taut = true;
      layAt(touch());
      if (Double.isNaN(firstTaut)) {
        firstTaut = from + step * touch();
        lay = lay == null ? natural.clone() : lay;
      }
      Arrays.fill(passing, 1);
    }
    solve();
  }

  /** Share of the step after which the slack rope is taut. */
  private double touch() {
    double share = (sum(natural) - sum(before)) / (sum(length) - sum(before));
    return Math.max(0, Math.min(1, share));
  }

  /** Lays the slack rope straight into all legs, as long as they are at a share of the step. */
  private void layAt(double share) {
    for (int i = 0; i < legs; i++) {
      natural[i] = before[i] + share * (length[i] - before[i]);
    }
  }

  /** Finds tensions, strains and rope of all legs at the new lengths. */
  private void solve() {
    double[] t = new double[legs];
    double[] held = new double[legs];
    double[] passed = new double[legs];
    for (int attempt = 0; ; attempt++) {
      if (attempt == MOST_PATTERNS) {
        throw new AssertionError("no pattern of passing at " + time);
      }
      double[] share = new double[legs];
      int first = 0;
      for (int i = 0; i < legs; i++) {
        share[i] = i == first ? 1 : share[i - 1] * Math.pow(given.ratios[i - 1], -passing[i - 1]);
        if (i == legs - 1 || !passes(i)) {
          double pull =
              i == legs - 1 && running
                  ? given.slipTension / share[i]
                  : sharedTension(first, i, share);
          for (int k = first; k <= i; k++) {
            t[k] = pull * share[k];
            held[k] = naturalAt(k, t[k]);
          }
          first = i + 1;
        }
      }
      double sum = 0;
      for (int i = 0; i < legs; i++) {
        sum += held[i] - natural[i];
        passed[i] = (i < legs - 1 ? passes(i) : running) ? sum : 0;
      }
      if (!mend(t, passed, attempt > MOST_PATTERNS / 4)) {
        break;
      }
    }
    accept(t, held, passed);
  }

  private boolean passes(int j) {
    return passing[j] != 0 || given.ratios[j] == 1;
  }

  /** Mends the pattern, all of it or the first place that is wrong; says whether it had to. */
  private boolean mend(double[] t, double[] passed, boolean oneOnly) {
    boolean mended = false;
    if (given.device != Device.LOCKED) {
      boolean wanted =
          running
              ? passed[legs - 1] >= -LEAST_PASSED
              : t[legs - 1] > given.slipTension + LEAST_FORCE;
      mended = wanted != running;
      running = wanted;
    }
    for (int j = 0; j < legs - 1 && !(mended && oneOnly); j++) {
      if (given.ratios[j] == 1) {
        continue;
      }
      int wanted = passing[j];
      if (wanted == 0) {
        if (t[j] > given.ratios[j] * t[j + 1] + LEAST_FORCE) {
          wanted = 1;
        } else if (t[j + 1] > given.ratios[j] * t[j] + LEAST_FORCE) {
          wanted = -1;
        }
      } else if (wanted * passed[j] < -LEAST_PASSED) {
        wanted = 0;
      }
      mended |= wanted != passing[j];
      passing[j] = wanted;
    }
    return mended;
  }

  /** Takes over a solution and counts the heat, each by the mean over the step. */
  private void accept(double[] t, double[] held, double[] passed) {
    double[] drive = new double[legs];
    for (int i = 0; i < legs; i++) {
      double e = strainAt(i, t[i]);
      double missing = curve.tension(strain[i]) - tension[i];
      double missingThen = curve.tension(e) - t[i];
      double base = given.whereItLay ? lay[i] : natural[i];
      double baseThen = given.whereItLay ? lay[i] : held[i];
      hysteresisLoss += (base * missing + baseThen * missingThen) / 2 * (strain[i] - e);
      drive[i] = (drive(strain[i], tension[i]) + drive(e, t[i])) / 2;
      memory[i] = memoryAt(i, e);
      strain[i] = e;
      tension[i] = t[i];
      natural[i] = held[i];
    }
    for (int j = 0; j < legs - 1; j++) {
      pointHeat[j] += (drive[j] - drive[j + 1]) * passed[j];
      worstExcess =
          Math.max(
              worstExcess,
              Math.max(t[j] - given.ratios[j] * t[j + 1], t[j + 1] - given.ratios[j] * t[j]));
    }
    deviceHeat += drive[legs - 1] * passed[legs - 1];
    fed += passed[legs - 1];
  }

  /** Work on a leg for each metre of rope that goes into it. */
  private double drive(double e, double t) {
    return given.whereItLay ? t : t * (1 + e) - curve.energy(e);
  }

  /** The tension of the first of some legs that share their rope. */
  private double sharedTension(int first, int last, double[] share) {
    double rope = 0;
    for (int i = first; i <= last; i++) {
      rope += natural[i];
    }
    double low = 0;
    double fLow = excess(first, last, share, 0, rope);
    if (fLow <= 0) {
      return 0;
    }
    double high = Double.POSITIVE_INFINITY;
    double a = low;
    double fa = fLow;
    double b = tension[first] > 0 ? tension[first] : 1;
    if (b > 10) {
      a = b * 0.999;
      fa = excess(first, last, share, a, rope);
    }
    for (int i = 0; i < 200; i++) {
      double fb = excess(first, last, share, b, rope);
      if (fb > 0) {
        low = Math.max(low, b);
      } else {
        high = Math.min(high, b);
      }
      double next = b - fb * (b - a) / (fb - fa);
      if (Math.abs(next - b) <= 1e-10 + 1e-13 * b) {
        return next;
      }
      if (!(next >= low && next <= high)) {
        next = Double.isInfinite(high) ? 10 * low + 1 : (low + high) / 2;
      }
      if (high - low <= 1e-11 + 1e-15 * low) {
        return next;
      }
      a = b;
      fa = fb;
      b = next;
    }
    throw new AssertionError("no shared tension at " + time);
  }

  private double excess(int first, int last, double[] share, double t, double rope) {
    double sum = -rope;
    for (int i = first; i <= last; i++) {
      sum += naturalAt(i, t * share[i]);
    }
    return sum;
  }

  private double naturalAt(int i, double t) {
    double e = strainAt(i, t);
    return given.whereItLay ? length[i] - lay[i] * e : length[i] / (1 + e);
  }

  /** How far the rope has come down from its curve of loading, at a new strain. */
  private double memoryAt(int i, double e) {
    double fade = Math.exp(-Math.abs(e - strain[i]) / given.hysteresisStrain);
    return e >= strain[i] ? memory[i] * fade : 1 - (1 - memory[i]) * fade;
  }

  private double tensionAt(int i, double e) {
    return curve.tension(e) * (1 - given.hysteresis * memoryAt(i, e));
  }

  private double strainAt(int i, double t) {
    // Rounding may leave next to nothing below zero, of which a power is not a number.
    if (given.hysteresis == 0 || t <= 0) {
      return curve.strain(Math.max(0, t));
    }
    // The curve of loading lies above all others: it gives the lower bound.
    double low = curve.strain(t);
    double high = curve.strain(t / (1 - given.hysteresis));
    double a = low;
    double fa = tensionAt(i, a) - t;
    double b = strain[i] > low && strain[i] < high ? strain[i] : high;
    for (int k = 0; k < 200; k++) {
      double fb = tensionAt(i, b) - t;
      if (fb < 0) {
        low = b;
      } else {
        high = b;
      }
      double next = b - fb * (b - a) / (fb - fa);
      if (fb == 0 || Math.abs(next - b) <= 1e-16 + 1e-15 * b || high - low <= 1e-15 * high) {
        return b;
      }
      if (!(next > low && next < high)) {
        next = (low + high) / 2;
      }
      a = b;
      fa = fb;
      b = next;
    }
    return b;
  }

  // What came out.

  private void record(boolean keep) {
    double[][] forces = new double[legs][];
    for (int i = 0; i < legs; i++) {
      forces[i] = forceOn(i);
      if (tension[i] > greatestTension[i]) {
        greatestTension[i] = tension[i];
        timeOfGreatest[i] = time;
      }
      greatestForce[i] = Math.max(greatestForce[i], size(forces[i]));
    }
    for (int k = 0; k < q.length; k++) {
      greatestSwing[k] = Math.max(greatestSwing[k], Math.abs(q[k]));
    }
    lowest = Math.min(lowest, x[2]);
    double input = startKinetic + given.mass * given.gravity * (given.centre[2] - lowest);
    if (input > 0) {
      worstGap = Math.max(worstGap, Math.abs(energies().gap()) / input);
    }
    if (keep) {
      moments.add(
          new Moment(time, tension.clone(), forces, x.clone(), v.clone(), axis, q.clone(), fed));
    }
  }

  Energies energies() {
    double along = dot(spinMomentum, axis);
    double turning =
        dot(spinMomentum, spinMomentum) / given.transverseInertia
            + along * along * (1 / given.axialInertia - 1 / given.transverseInertia);
    double stored = 0;
    for (int i = 0; i < legs; i++) {
      if (taut) {
        stored += (given.whereItLay ? lay[i] : natural[i]) * curve.energy(strain[i]);
      }
    }
    double swinging = 0;
    for (int k = 0; k < q.length; k++) {
      swinging += modeEnergy(k);
    }
    return new Energies(
        (given.mass * dot(v, v) + turning) / 2,
        given.mass * given.gravity * x[2],
        stored,
        swinging,
        pointHeat.clone(),
        deviceHeat,
        hysteresisLoss,
        dampingLoss,
        startEnergy);
  }

  // Vectors.

  static double dot(double[] a, double[] b) {
    return a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
  }

  static double size(double[] a) {
    return Math.sqrt(dot(a, a));
  }

  static double[] times(double s, double[] a) {
    return new double[] {s * a[0], s * a[1], s * a[2]};
  }

  static double[] plus(double[] a, double s, double[] b) {
    return new double[] {a[0] + s * b[0], a[1] + s * b[1], a[2] + s * b[2]};
  }

  static double[] cross(double[] a, double[] b) {
    return new double[] {
      a[1] * b[2] - a[2] * b[1], a[2] * b[0] - a[0] * b[2], a[0] * b[1] - a[1] * b[0]
    };
  }

  /** Turned about a unit vector (Rodrigues). */
  private static double[] turned(double[] a, double[] about, double angle) {
    double half = Math.sin(angle / 2);
    return plus(
        plus(a, Math.sin(angle), cross(about, a)), 2 * half * half, cross(about, cross(about, a)));
  }

  private static double sum(double[] a) {
    double sum = 0;
    for (double one : a) {
      sum += one;
    }
    return sum;
  }
}
