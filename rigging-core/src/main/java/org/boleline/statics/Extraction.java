package org.boleline.statics;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.Force;
import javax.measure.quantity.Length;
import javax.measure.quantity.Pressure;
import org.boleline.explain.Caution;
import org.boleline.geometry.Turn;
import org.boleline.geometry.Vector;
import org.boleline.internal.coupled.Rig;
import org.boleline.internal.coupled.RigSolver;
import org.boleline.internal.coupled.RigState;
import org.boleline.internal.friction.FrictionKernel;
import org.boleline.internal.path.RopePath;
import org.boleline.internal.rod.RodState;
import org.boleline.internal.rod.Section;
import org.boleline.internal.rod.StressScan;
import org.boleline.plan.Arrangement;
import org.boleline.plan.Contact;
import org.boleline.plan.Plan;
import org.boleline.plan.Tail;
import org.boleline.rope.Motion;
import org.boleline.stem.Mark;
import org.boleline.stem.Stem;
import org.boleline.units.Kind;
import org.boleline.units.Si;
import org.boleline.wood.WoodProperties;
import org.jspecify.annotations.Nullable;

/** Reads a solved state into a {@link Solution}. */
final class Extraction {
  private static final double MOST_LOAD_FACTOR = 1000;
  private static final int PROFILE_PARTS = 4;
  private static final double[] DOWN = {0, 0, -1};

  private final Resolved resolved;
  private final Plan plan;
  private final Arrangement arrangement;
  private final int index;
  private final Motion motion;
  private final RigSolver solver;
  private final RigState state;
  private final RopePath path;
  private final double load;
  private final List<Caution> reachCautions = new ArrayList<>();

  Extraction(Resolved resolved, int index, Motion motion, RigSolver solver) {
    this.resolved = resolved;
    this.plan = resolved.plan;
    this.index = index;
    this.arrangement = plan.arrangements().get(index);
    this.motion = motion;
    this.solver = solver;
    this.state = solver.state();
    this.path = state.path();
    this.load = state.rig().load();
  }

  Solution solution() {
    List<ContactResult> contacts = contacts();
    List<Leg> legs = legs(contacts);
    double tail = load * path.tailTension();
    double hand = hand(tail);
    double residualForce = residualForce();
    double residualMoment = state.unbalancedShare();
    double stiffness = solver.stiffness();
    List<StemParts> parts = new ArrayList<>();
    for (int i = 0; i < resolved.stems.length; i++) {
      parts.add(new StemParts(i, contacts));
    }
    List<StemResult> stems = new ArrayList<>();
    List<Optional<StrengthReach>> reaches = strengthReaches(parts);
    for (int i = 0; i < parts.size(); i++) {
      stems.add(parts.get(i).result(reaches.get(i)));
    }
    Solution found =
        new Solution(
            plan,
            arrangement,
            motion,
            residualForce,
            residualMoment,
            stiffness,
            legs,
            contacts,
            tail,
            hand,
            stems,
            null,
            List.of());
    List<Caution> cautions = new ArrayList<>(Cautions.of(found, resolved, index));
    cautions.addAll(reachCautions);
    return found.with(null, cautions);
  }

  private double hand(double tail) {
    if (arrangement.tail() instanceof Tail.Device device) {
      double ratio = FrictionKernel.capstan(device.friction(), 2 * Math.PI * device.wraps());
      return motion == Motion.RAISING ? tail * ratio : tail / ratio;
    }
    return Double.NaN;
  }

  private static Vector<Length> place(double[] a, int i) {
    return Vector.ofSi(Kind.LENGTH, a[i], a[i + 1], a[i + 2]);
  }

  private List<ContactResult> contacts() {
    List<ContactResult> out = new ArrayList<>();
    double before = load;
    Rig rig = state.rig();
    for (int j = 0; j < path.contacts(); j++) {
      Contact contact = arrangement.contacts().get(j);
      int stem = rig.contactStem(j);
      double at = rig.contactAt(j);
      double after = load * path.tension()[j];
      Section loaded = new Section(state.rods()[stem]);
      loaded.read(at);
      double[] movement = movement(stem, at);
      double[] f = new double[3];
      double size2 = 0;
      double along = 0;
      for (int d = 0; d < 3; d++) {
        f[d] = load * path.force()[3 * j + d];
        size2 += f[d] * f[d];
        along -= f[d] * loaded.direction()[d];
      }
      out.add(
          new ContactResult(
              contact.stem(),
              at,
              path.bears()[j],
              Turn.of(Si.of(path.turn()[j], Kind.ANGLE)),
              before,
              after,
              Vector.ofSi(Kind.FORCE, f),
              path.bears()[j] ? place(path.place(), 3 * j) : place(loaded.position(), 0),
              place(path.attachment(), 3 * j),
              Vector.ofSi(Kind.LENGTH, movement),
              along,
              Math.sqrt(Math.max(0, size2 - along * along))));
      before = after;
    }
    return out;
  }

  private double[] movement(int stem, double at) {
    Section loaded = new Section(state.rods()[stem]);
    Section rest = new Section(solver.rest().rods()[stem]);
    loaded.read(at);
    rest.read(at);
    double[] out = new double[3];
    for (int d = 0; d < 3; d++) {
      out[d] = loaded.position()[d] - rest.position()[d];
    }
    return out;
  }

  private List<Leg> legs(List<ContactResult> contacts) {
    List<Leg> out = new ArrayList<>();
    double[] up = negative(Resolved.loadDirection(arrangement));
    String from = "piece";
    double tension = load;
    Vector<Length> begin = null;
    for (int j = 0; j < contacts.size(); j++) {
      if (!path.bears()[j]) {
        continue;
      }
      Vector<Length> end = contacts.get(j).position();
      String to = "contacts/" + j;
      out.add(leg(from, to, tension, begin, end, up));
      from = to;
      begin = end;
      tension = load * path.tension()[j];
    }
    Vector<Length> end =
        path.end() == RopePath.End.DOWN ? null : place(path.attachment(), 3 * path.contacts());
    String to = path.end() == RopePath.End.DEVICE ? "device" : "tail";
    out.add(leg(from, to, tension, begin, end, begin == null ? up : DOWN));
    return out;
  }

  private static Leg leg(
      String from,
      String to,
      double tension,
      @Nullable Vector<Length> begin,
      @Nullable Vector<Length> end,
      double[] otherwise) {
    double[] direction =
        begin == null || end == null
            ? otherwise
            : direction(begin.in(Kind.LENGTH), end.in(Kind.LENGTH));
    Vector<Force> pull =
        Vector.ofSi(
            Kind.FORCE, tension * direction[0], tension * direction[1], tension * direction[2]);
    return new Leg(from, to, tension, pull, begin, end);
  }

  private static double[] negative(double[] v) {
    return new double[] {-v[0], -v[1], -v[2]};
  }

  private static double[] direction(double[] a, double[] b) {
    double x = b[0] - a[0];
    double y = b[1] - a[1];
    double z = b[2] - a[2];
    double size = Math.sqrt(x * x + y * y + z * z);
    return new double[] {x / size, y / size, z / size};
  }

  /** Largest force across a sling, which can only pull along itself, relative to the load. */
  private double residualForce() {
    double most = 0;
    for (int j = 0; j < path.contacts(); j++) {
      double[] arm = new double[3];
      double size = 0;
      double along = 0;
      for (int d = 0; d < 3; d++) {
        arm[d] = path.place()[3 * j + d] - path.attachment()[3 * j + d];
        size += arm[d] * arm[d];
        along += arm[d] * path.force()[3 * j + d];
      }
      if (!path.bears()[j] || size == 0) {
        continue;
      }
      double across = 0;
      for (int d = 0; d < 3; d++) {
        double gap = path.force()[3 * j + d] - along / size * arm[d];
        across += gap * gap;
      }
      most = Math.max(most, Math.sqrt(across));
    }
    return most;
  }

  /** All of a stem's result but the share of the load at which its strength is reached. */
  private final class StemParts {
    private final int stem;
    private final RodState rod;
    private final Stem stated;
    private final Section section;
    private final double length;
    private final Vector<Length> tip;
    private final Vector<Length> tipMovement;
    private final Reaction base;
    private final Reaction riggingBase;
    private final List<Share> shares;
    private final StressScan.Peak bending;
    final StressScan.Peak compression;
    final StressScan.Peak tension;
    private final List<MarkResult> marks;
    private final StemProfile profile;

    StemParts(int stem, List<ContactResult> contacts) {
      this.stem = stem;
      rod = state.rods()[stem];
      stated = plan.stems().get(stem);
      section = new Section(rod);
      length = resolved.stems[stem].length();
      section.read(length);
      tip = place(section.position(), 0);
      tipMovement = Vector.ofSi(Kind.LENGTH, movement(stem, length));
      section.read(0);
      double[] direction = section.direction().clone();
      double[] force = rod.forceFrom(0);
      double[] moment = rod.momentFrom(0);
      base = reaction(force, moment, direction);
      double[] rigForce = new double[3];
      double[] rigMoment = new double[3];
      Rig rig = state.rig();
      for (int j = 0; j < rig.contactRod().length; j++) {
        if (rig.contactRod()[j] == stem) {
          double[] f = new double[3];
          for (int d = 0; d < 3; d++) {
            f[d] = load * path.force()[3 * j + d];
          }
          add(rigForce, rigMoment, f, Arrays.copyOfRange(path.attachment(), 3 * j, 3 * j + 3));
        }
      }
      riggingBase = reaction(rigForce, rigMoment, direction);
      shares = shares(contacts, force, moment, rigForce, rigMoment);
      StressScan scan = new StressScan(rod);
      bending = scan.bending();
      compression = scan.compression();
      tension = scan.tension();
      marks = marks();
      profile = profile();
    }

    private Reaction reaction(double[] force, double[] moment, double[] direction) {
      double axial = 0;
      double size = 0;
      for (int d = 0; d < 3; d++) {
        axial += force[d] * direction[d];
        size += force[d] * force[d];
      }
      return new Reaction(
          Vector.ofSi(Kind.FORCE, negative(force)),
          Vector.ofSi(Kind.MOMENT, negative(moment)),
          axial,
          Math.sqrt(Math.max(0, size - axial * axial)));
    }

    /** Adds a force and its moment about the base. */
    private void add(double[] force, double[] moment, double[] f, double[] at) {
      double[] b = rod.position(0);
      double x = at[0] - b[0];
      double y = at[1] - b[1];
      double z = at[2] - b[2];
      for (int d = 0; d < 3; d++) {
        force[d] += f[d];
      }
      moment[0] += y * f[2] - z * f[1];
      moment[1] += z * f[0] - x * f[2];
      moment[2] += x * f[1] - y * f[0];
    }

    private List<Share> shares(
        List<ContactResult> contacts,
        double[] force,
        double[] moment,
        double[] rigForce,
        double[] rigMoment) {
      double[][] loads = new double[2][3];
      double[][] tails = new double[2][3];
      double[][] others = new double[2][3];
      double[] before = Resolved.loadDirection(arrangement);
      double tensionBefore = load;
      int stemBefore = -1;
      double[] placeBefore = null;
      for (int j = 0; j <= contacts.size(); j++) {
        boolean device = j == contacts.size() && path.end() == RopePath.End.DEVICE;
        if (j < contacts.size() ? !path.bears()[j] : !device) {
          continue;
        }
        int here = state.rig().contactRod()[j];
        double[] at =
            device
                ? Arrays.copyOfRange(path.attachment(), 3 * j, 3 * j + 3)
                : contacts.get(j).position().in(Kind.LENGTH);
        if (placeBefore == null) {
          if (here == stem) {
            add(loads[0], loads[1], scaled(before, tensionBefore), at);
          }
        } else if (here != stemBefore) {
          double[] pull = scaled(direction(placeBefore, at), tensionBefore);
          if (stemBefore == stem) {
            add(others[0], others[1], pull, placeBefore);
          }
          if (here == stem) {
            add(others[0], others[1], negative(pull), at);
          }
        }
        placeBefore = at;
        stemBefore = here;
        tensionBefore = device ? tensionBefore : load * path.tension()[j];
      }
      if (path.end() != RopePath.End.DEVICE && stemBefore == stem && placeBefore != null) {
        double[] out = {0, 0, -1};
        if (path.end() == RopePath.End.POINT) {
          int e = 3 * path.contacts();
          out = direction(placeBefore, Arrays.copyOfRange(path.attachment(), e, e + 3));
        }
        add(tails[0], tails[1], scaled(out, tensionBefore), placeBefore);
      }
      double[][] masses = new double[2][3];
      for (int m = 0; m < resolved.stems[stem].massAt().length; m++) {
        section.read(resolved.stems[stem].massAt()[m]);
        double[] weight = {0, 0, -resolved.stems[stem].massWeight()[m]};
        add(masses[0], masses[1], weight, section.position());
      }
      double[][] own = new double[2][3];
      for (int d = 0; d < 3; d++) {
        own[0][d] = force[d] - rigForce[d] - masses[0][d];
        own[1][d] = moment[d] - rigMoment[d] - masses[1][d];
      }
      if (resolved.stems[stem].weightDensity() == 0) {
        own = new double[2][3];
      }
      List<Share> out = new ArrayList<>();
      share(out, Share.Origin.LOAD, loads);
      share(out, Share.Origin.TAIL, tails);
      share(out, Share.Origin.OTHER_STEMS, others);
      share(out, Share.Origin.OWN_WEIGHT, own);
      share(out, Share.Origin.MASSES, masses);
      return out;
    }

    private void share(List<Share> out, Share.Origin origin, double[][] part) {
      boolean none = true;
      for (double x : part[0]) {
        none &= x == 0;
      }
      if (!none) {
        out.add(
            new Share(origin, Vector.ofSi(Kind.FORCE, part[0]), Vector.ofSi(Kind.MOMENT, part[1])));
      }
    }

    private double[] scaled(double[] v, double by) {
      return new double[] {by * v[0], by * v[1], by * v[2]};
    }

    private List<MarkResult> marks() {
      List<MarkResult> out = new ArrayList<>();
      for (Mark mark : stated.marks()) {
        double at = Math.min(length, Si.value(mark.at(), Kind.LENGTH, "at"));
        section.read(at);
        out.add(
            new MarkResult(
                mark.name(),
                at,
                place(section.position(), 0),
                Vector.ofSi(Kind.LENGTH, movement(stem, at))));
      }
      return out;
    }

    private StemProfile profile() {
      int cells = rod.rod().nodes() - 1;
      int n = cells * PROFILE_PARTS + 1;
      double[] s = new double[n];
      double[][] unloaded = new double[n][];
      double[][] positions = new double[n][];
      double[][] directions = new double[n][];
      double[][] forces = new double[n][];
      double[][] moments = new double[n][];
      double[] bendingStress = new double[n];
      double[] axialStress = new double[n];
      Section rest = new Section(solver.rest().rods()[stem]);
      for (int i = 0; i < n; i++) {
        int cell = Math.max(0, (i - 1) / PROFILE_PARTS);
        double x = (double) (i - cell * PROFILE_PARTS) / PROFILE_PARTS;
        double from = rod.rod().nodeAt(cell);
        double to = rod.rod().nodeAt(cell + 1);
        section.read(cell, x);
        rest.readPosition(cell, x);
        s[i] = x == 1 ? to : from + x * (to - from);
        unloaded[i] = rest.position().clone();
        positions[i] = section.position().clone();
        directions[i] = section.direction().clone();
        forces[i] = section.force().clone();
        moments[i] = section.moment().clone();
        bendingStress[i] = section.bendingStress();
        axialStress[i] = section.axialStress();
      }
      return new StemProfile(
          s, unloaded, positions, directions, forces, moments, bendingStress, axialStress);
    }

    StemResult result(Optional<StrengthReach> reach) {
      return new StemResult(
          stated.id(),
          tip,
          tipMovement,
          base,
          riggingBase,
          shares,
          extreme(bending),
          extreme(compression),
          extreme(tension),
          reach,
          marks,
          profile);
    }

    private Extreme extreme(StressScan.Peak peak) {
      return new Extreme(peak.value(), peak.at());
    }
  }

  private List<Optional<StrengthReach>> strengthReaches(List<StemParts> parts) {
    List<Optional<StrengthReach>> out = new ArrayList<>();
    for (int i = 0; i < parts.size(); i++) {
      WoodProperties wood = plan.stems().get(i).wood();
      double compression = strength(wood.compressionStrength());
      double bending = strength(wood.bendingStrength());
      if (Double.isInfinite(compression) && Double.isInfinite(bending)) {
        out.add(Optional.empty());
        continue;
      }
      out.add(reach(i, parts.get(i), compression, bending));
    }
    return out;
  }

  private static double strength(Optional<Quantity<Pressure>> stated) {
    return stated.map(s -> Si.value(s, Kind.PRESSURE, "strength")).orElse(Double.POSITIVE_INFINITY);
  }

  /** How much of the strength is used, and which strength is the first to be reached. */
  private static double use(RodState rod, double compression, double bending) {
    StressScan scan = new StressScan(rod);
    double use = 0;
    if (compression < Double.POSITIVE_INFINITY) {
      use = scan.compression().value() / compression;
    }
    if (bending < Double.POSITIVE_INFINITY) {
      use = Math.max(use, scan.tension().value() / bending);
    }
    return use;
  }

  /** Which of the two strengths is used more. */
  private static StrengthReach.Governing governing(
      RodState rod, double compression, double bending) {
    StressScan scan = new StressScan(rod);
    return scan.compression().value() / compression >= scan.tension().value() / bending
        ? StrengthReach.Governing.COMPRESSION
        : StrengthReach.Governing.BENDING;
  }

  private Optional<StrengthReach> reach(
      int stem, StemParts parts, double compression, double bending) {
    double full =
        Math.max(parts.compression.value() / compression, parts.tension.value() / bending);
    RodState atRest = solver.rest().rods()[stem];
    double resting = use(atRest, compression, bending);
    if (resting >= 1) {
      return Optional.of(new StrengthReach(0, governing(atRest, compression, bending)));
    }
    StrengthSearch search =
        new StrengthSearch(
            solver,
            factor -> RigSolver.solvedIfEasy(resolved.spec(arrangement, motion, factor)),
            found -> use(found.state().rods()[stem], compression, bending),
            resting,
            full);
    double factor = search.factor(MOST_LOAD_FACTOR);
    if (search.lostAt() < Double.POSITIVE_INFINITY) {
      reachCautions.add(
          Cautions.stabilityBeforeStrength(index, plan.stems().get(stem), search.lostAt()));
      return Optional.empty();
    }
    if (Double.isNaN(factor)) {
      return Optional.empty();
    }
    RodState there = search.solver().state().rods()[stem];
    return Optional.of(new StrengthReach(factor, governing(there, compression, bending)));
  }
}
