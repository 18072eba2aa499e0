package org.boleline.statics;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;
import org.boleline.Tolerances;
import org.boleline.plan.Arrangement;
import org.boleline.plan.Contact;
import org.boleline.plan.Tagline;
import org.boleline.plan.Tail;
import org.boleline.rope.Bark;
import org.boleline.rope.FrictionRing;
import org.boleline.rope.Hardware;
import org.boleline.rope.Motion;
import org.boleline.rope.Rope;
import org.boleline.rope.Sheave;
import org.boleline.stem.Stem;
import org.boleline.units.Kind;
import org.boleline.units.Si;

/**
 * Tells what is wrong with a solution, from the plan and the solution's numbers alone.
 *
 * <p>Rope: every tension, direction and turn again from the places of the contacts. Stems: every
 * internal force and moment again from the rope's forces and the weights; then the shape that the
 * sections take under these moments, integrated from the base, has to be the shape they act in.
 * Shares no code with the library but the reading of quantities.
 */
final class EquilibriumCheck {
  private final Solution solution;
  private final Arrangement arrangement;
  private final double gravity;
  private final double load;
  private final List<String> wrong = new ArrayList<>();

  private EquilibriumCheck(Solution solution) {
    this.solution = solution;
    arrangement = solution.arrangement();
    gravity = Si.value(solution.plan().gravity(), Kind.ACCELERATION, "gravity");
    load =
        gravity
            * Si.value(solution.plan().piece().mass(), Kind.MASS, "mass")
            / -loadDirection(arrangement)[2];
  }

  /** What is wrong, in words; empty if all is in balance. */
  static List<String> of(Solution solution) {
    EquilibriumCheck check = new EquilibriumCheck(solution);
    for (String line : Numbers.of(solution)) {
      // Within a solution without a device the tension in the hand is kept as NaN, and never shown.
      boolean noNumber = line.contains("NaN") && !line.contains("handTension");
      if (noNumber || line.contains("Infinity")) {
        check.wrong.add("not a number: " + line);
      }
    }
    check.rope();
    for (int i = 0; i < solution.stems().size(); i++) {
      check.stem(i);
    }
    check.atMost("residual force", solution.residualForceRatio(), Tolerances.RESIDUAL);
    check.atMost("residual moment", solution.residualMomentRatio(), Tolerances.RESIDUAL);
    if (!(solution.stiffnessRatio() > 0)) {
      check.wrong.add("stiffness ratio " + solution.stiffnessRatio() + " called stable");
    }
    return check.wrong;
  }

  private void atMost(String what, double size, double allowed) {
    if (!(size <= allowed)) {
      wrong.add(what + ": " + size + " over " + allowed);
    }
  }

  private void same(String what, double[] found, double[] wanted, double allowed) {
    atMost(what, Plain.size(Plain.minus(found, wanted)), allowed);
  }

  private static double[] loadDirection(Arrangement arrangement) {
    if (arrangement.tagline().isEmpty()) {
      return new double[] {0, 0, -1};
    }
    Tagline tagline = arrangement.tagline().get();
    double angle = Si.value(tagline.angle(), Kind.ANGLE, "angle");
    return Plain.direction(Math.PI - angle, Si.value(tagline.azimuth(), Kind.ANGLE, "azimuth"));
  }

  private void rope() {
    List<ContactResult> bearing =
        solution.contacts().stream().filter(ContactResult::bears).toList();
    double[] end = end();
    double tension = load;
    double passing = load;
    double[] in = loadDirection(arrangement);
    List<double[]> begins = new ArrayList<>();
    begins.add(Plain.times(-load, in));
    List<double[]> places = bearing.stream().map(c -> c.position().in(Kind.LENGTH)).toList();
    int leg = 0;
    for (int j = 0; j < solution.contacts().size(); j++) {
      ContactResult contact = solution.contacts().get(j);
      Contact stated = arrangement.contacts().get(j);
      String name = "contact " + j + " ";
      double[] force = contact.force().in(Kind.FORCE);
      double[] arm =
          Plain.minus(contact.position().in(Kind.LENGTH), contact.attachment().in(Kind.LENGTH));
      double sling = Si.value(stated.sling(), Kind.LENGTH, "sling");
      atMost(
          name + "tension before",
          Math.abs(
                  Si.value(contact.tensionIn(), Kind.FORCE, "in")
                      - (contact.bears() ? tension : passing))
              / load,
          Tolerances.RESIDUAL);
      double after = Si.value(contact.tensionOut(), Kind.FORCE, "out");
      if (!contact.bears()) {
        atMost(name + "force of a slack sling", Plain.size(force), 0);
        atMost(name + "change of tension", Math.abs(after - passing) / load, Tolerances.RESIDUAL);
        continue;
      }
      double[] out =
          leg + 1 < places.size()
              ? Plain.unit(Plain.minus(places.get(leg + 1), places.get(leg)))
              : end == null
                  ? new double[] {0, 0, -1}
                  : Plain.unit(Plain.minus(end, places.get(leg)));
      double half = 0;
      if (stated.hasRopeWeight() && (leg + 1 < places.size() || end != null)) {
        double[] to = leg + 1 < places.size() ? places.get(leg + 1) : end;
        half = 0.5 * ropeWeight() * Plain.size(Plain.minus(to, places.get(leg)));
      }
      // |chord out - half z| = after
      double level = half * half * (1 - out[2] * out[2]);
      double chord = half * out[2] + Math.sqrt(after * after - level);
      double[] hanging = {0, 0, -half};
      double[] begin = Plain.plus(Plain.times(chord, out), hanging);
      double[] back = Plain.plus(Plain.times(-chord, out), hanging);
      begins.add(begin);
      double turn = Math.PI - angle(in, begin);
      atMost(
          name + "turn",
          Math.abs(turn - Si.value(contact.turn().angle(), Kind.ANGLE, "turn")),
          Tolerances.ANGLE_OF_VECTORS);
      double ratio = tightOverSlack(stated.hardware(), turn);
      double wanted = solution.motion() == Motion.RAISING ? tension * ratio : tension / ratio;
      atMost(name + "friction", Math.abs(after - wanted) / wanted, Tolerances.ANGLE_OF_VECTORS);
      double[] sum = Plain.plus(Plain.times(tension, in), begin);
      same(name + "force", force, sum, Tolerances.RESIDUAL * load * Math.max(1, ratio));
      atMost(name + "length of sling", Math.abs(Plain.size(arm) - sling), Tolerances.RESIDUAL);
      if (sling > 0) {
        double pull = Plain.dot(force, arm) / sling;
        atMost(name + "pull of sling", -pull / load, Tolerances.RESIDUAL);
        same(
            name + "line of sling",
            force,
            Plain.times(pull / sling, arm),
            Tolerances.RESIDUAL * load * Math.max(1, ratio));
      }
      in = Plain.unit(back);
      tension = Plain.size(back);
      passing = after;
      leg++;
    }
    atMost(
        "tension at the tail",
        Math.abs(Si.value(solution.tailTension(), Kind.FORCE, "tail") - tension) / load,
        Tolerances.RESIDUAL);
    if (places.isEmpty() && end == null) {
      wrong.add("nothing bears the piece");
      return;
    }
    slackSlings(places, end);
    legs(begins);
  }

  private double ropeWeight() {
    return gravity
        * Si.value(
            solution.plan().rope().flatMap(Rope::linearDensity).orElseThrow(),
            Kind.LINEAR_DENSITY,
            "linear density");
  }

  private double[] end() {
    if (arrangement.tail() instanceof Tail.Point point) {
      return point.position().in(Kind.LENGTH);
    }
    if (arrangement.tail() instanceof Tail.Device) {
      return solution.legs().get(solution.legs().size() - 1).end().orElseThrow().in(Kind.LENGTH);
    }
    return null;
  }

  private static double angle(double[] a, double[] b) {
    return Math.atan2(Plain.size(Plain.cross(a, b)), Plain.dot(a, b));
  }

  private static double tightOverSlack(Hardware hardware, double turn) {
    if (hardware instanceof FrictionRing ring) {
      return Math.exp(ring.friction() * turn);
    }
    if (hardware instanceof Bark bark) {
      return Math.exp(bark.friction() * turn);
    }
    if (hardware instanceof Sheave sheave) {
      // (1 - c^2) t^2 - 2 (1 - c^2 cos w) t + (1 - c^2) = 0, the root of 1 or more
      double c2 = Math.pow((1 - sheave.efficiency()) / (1 + sheave.efficiency()), 2);
      double b = (1 - c2 * Math.cos(turn)) / (1 - c2);
      return b + Math.sqrt(Math.max(0, b * b - 1));
    }
    return 1;
  }

  /** Along the rope, in order, each slack sling has to find a place within its reach. */
  private void slackSlings(List<double[]> places, double[] end) {
    int leg = 0;
    double passed = Double.NEGATIVE_INFINITY;
    for (int j = 0; j < solution.contacts().size(); j++) {
      ContactResult contact = solution.contacts().get(j);
      if (contact.bears()) {
        leg++;
        passed = 0;
        continue;
      }
      double[] from;
      double[] along;
      double most;
      if (leg == 0) {
        from = places.isEmpty() ? end : places.get(0);
        along = Plain.times(-1, loadDirection(arrangement));
        most = 0;
      } else {
        from = places.get(leg - 1);
        double[] to = leg < places.size() ? places.get(leg) : end;
        along = to == null ? new double[] {0, 0, -1} : Plain.unit(Plain.minus(to, from));
        most = to == null ? Double.POSITIVE_INFINITY : Plain.size(Plain.minus(to, from));
      }
      double sling = Si.value(arrangement.contacts().get(j).sling(), Kind.LENGTH, "sling");
      double[] to = Plain.minus(contact.attachment().in(Kind.LENGTH), from);
      double x = Plain.dot(to, along);
      double off = Plain.size(Plain.minus(to, Plain.times(x, along)));
      double half = Math.sqrt(Math.max(0, sling * sling - off * off));
      passed = Math.max(passed, x - half);
      double late = Math.max(passed - Math.min(x + half, most), 0);
      atMost("contact " + j + " reach of a slack sling", off - sling, Tolerances.RESIDUAL);
      atMost("contact " + j + " order along the rope", late, Tolerances.ANGLE_OF_VECTORS);
    }
  }

  private void legs(List<double[]> begins) {
    if (solution.legs().size() != begins.size()) {
      wrong.add("legs: " + solution.legs().size() + " for " + begins.size());
      return;
    }
    for (int i = 0; i < begins.size(); i++) {
      same(
          "pull of leg " + i,
          solution.legs().get(i).pull().in(Kind.FORCE),
          begins.get(i),
          Tolerances.RESIDUAL * Math.max(load, Plain.size(begins.get(i))));
    }
  }

  private void stem(int i) {
    StemResult result = solution.stems().get(i);
    Stem stem = solution.plan().stems().get(i);
    GivenStem given = new GivenStem(stem, gravity);
    String name = stem.id() + " ";
    StemProfile profile = result.profile();
    int[] rows = rows(profile.stations(Kind.LENGTH));
    double[] stations = pick(profile.stations(Kind.LENGTH), rows);
    double[][] positions = pick(profile.positions(Kind.LENGTH), rows);

    List<BentStem.Pull> pulls = pulls(solution, stem.id());
    BentStem standing =
        given.isStanding() ? BentStem.given(given, stations).loaded(List.of(), gravity) : null;
    BentStem loaded = BentStem.settled(given, stations, positions, pulls, gravity, standing);
    BentStem.Shape shape = loaded.answer;
    double[][] directions = pick(profile.directions(), rows);
    double worstPlace = 0;
    double worstDirection = 0;
    for (int s = 0; s < stations.length; s++) {
      worstPlace = Math.max(worstPlace, Plain.size(Plain.minus(positions[s], shape.place(s))));
      worstDirection =
          Math.max(worstDirection, Plain.size(Plain.minus(directions[s], shape.direction(s))));
    }
    atMost(name + "shape", worstPlace / given.length, Tolerances.SHAPE_FROM_MOMENTS);
    atMost(name + "directions", worstDirection, Tolerances.SHAPE_FROM_MOMENTS);
    attachments(stem, given, loaded);
    sections(name, result, rows, loaded);

    double[][] unloaded = pick(profile.unloadedPositions(Kind.LENGTH), rows);
    BentStem rest =
        given.isStanding()
            ? standing
            : BentStem.settled(given, stations, unloaded, List.of(), gravity, null);
    double worstRest = 0;
    for (int s = 0; s < stations.length; s++) {
      double[] p = given.isStanding() ? standing.position[standing.index[s]] : rest.answer.place(s);
      worstRest = Math.max(worstRest, Plain.size(Plain.minus(unloaded[s], p)));
    }
    atMost(name + "shape at rest", worstRest / given.length, Tolerances.SHAPE_FROM_MOMENTS);
    int last = stations.length - 1;
    same(
        name + "tip movement",
        result.tipMovement().in(Kind.LENGTH),
        Plain.minus(positions[last], unloaded[last]),
        Tolerances.RESIDUAL * given.length);
  }

  /** Rows of a profile, without those that rounding puts beside another one. */
  private static int[] rows(double[] stations) {
    return IntStream.range(0, stations.length)
        .filter(i -> i == 0 || stations[i] - stations[i - 1] > 1e-9)
        .toArray();
  }

  private static double[] pick(double[] from, int[] rows) {
    return Arrays.stream(rows).mapToDouble(i -> from[i]).toArray();
  }

  private static double[][] pick(double[][] from, int[] rows) {
    return Arrays.stream(rows).mapToObj(i -> from[i]).toArray(double[][]::new);
  }

  static List<BentStem.Pull> pulls(Solution solution, String stem) {
    List<BentStem.Pull> pulls = new ArrayList<>();
    for (ContactResult contact : solution.contacts()) {
      if (contact.stem().equals(stem) && contact.bears()) {
        pulls.add(
            new BentStem.Pull(
                Si.value(contact.at(), Kind.LENGTH, "at"),
                contact.attachment().in(Kind.LENGTH),
                contact.force().in(Kind.FORCE)));
      }
    }
    if (solution.arrangement().tail() instanceof Tail.Device device && device.stem().equals(stem)) {
      Leg last = solution.legs().get(solution.legs().size() - 1);
      pulls.add(
          new BentStem.Pull(
              Si.value(device.at(), Kind.LENGTH, "at"),
              last.end().orElseThrow().in(Kind.LENGTH),
              last.pullAtEnd().in(Kind.FORCE)));
    }
    return pulls;
  }

  /** Attachments sit where the turned sections have them. */
  private void attachments(Stem stem, GivenStem given, BentStem loaded) {
    for (int j = 0; j < solution.contacts().size(); j++) {
      ContactResult contact = solution.contacts().get(j);
      if (contact.stem().equals(stem.id())) {
        double offset = Si.value(arrangement.contacts().get(j).offset(), Kind.LENGTH, "offset");
        attachment(
            "contact " + j + " attachment",
            Si.value(contact.at(), Kind.LENGTH, "at"),
            offset,
            contact.attachment().in(Kind.LENGTH),
            given,
            loaded);
      }
    }
    if (arrangement.tail() instanceof Tail.Device device && device.stem().equals(stem.id())) {
      attachment(
          "device",
          Si.value(device.at(), Kind.LENGTH, "at"),
          Si.value(device.offset(), Kind.LENGTH, "offset"),
          end(),
          given,
          loaded);
    }
  }

  private void attachment(
      String name, double at, double offset, double[] found, GivenStem given, BentStem loaded) {
    int g = loaded.nearest(at);
    int s = Arrays.binarySearch(loaded.index, g);
    double[] arm = Plain.outOf(loaded.answer.frame(s), given.arm(at, offset));
    same(
        name,
        found,
        Plain.plus(loaded.position[g], arm),
        Tolerances.SHAPE_FROM_MOMENTS * given.length);
  }

  /** Internal forces, stresses, base and shares. */
  private void sections(String name, StemResult result, int[] rows, BentStem loaded) {
    StemProfile profile = result.profile();
    GivenStem given = loaded.given;
    double[][] forces = pick(profile.forces(Kind.FORCE), rows);
    double[][] moments = pick(profile.moments(Kind.MOMENT), rows);
    double[] bending = pick(profile.bendingStress(Kind.PRESSURE), rows);
    double[] axial = pick(profile.axialStress(Kind.PRESSURE), rows);
    double scale = Double.MIN_NORMAL;
    for (double[] f : loaded.forceBelow) {
      scale = Math.max(scale, Plain.size(f));
    }
    double momentScale = 0;
    for (double[] m : loaded.momentBelow) {
      momentScale = Math.max(momentScale, Plain.size(m));
    }
    momentScale = Math.max(momentScale, 1e-3 * scale * given.length);
    double worstForce = 0;
    double worstMoment = 0;
    double worstBending = 0;
    for (int s = 0; s < forces.length; s++) {
      int g = loaded.index[s];
      if (s > 0) {
        worstForce = Math.max(worstForce, Plain.size(Plain.minus(forces[s], loaded.forceBelow[g])));
        worstMoment =
            Math.max(worstMoment, Plain.size(Plain.minus(moments[s], loaded.momentBelow[g])));
        double[] stress = stress(loaded, g, false);
        worstBending = Math.max(worstBending, Math.abs(bending[s] - stress[0]));
        worstBending = Math.max(worstBending, Math.abs(axial[s] - stress[1]));
      }
    }
    atMost(name + "force in the sections", worstForce / scale, Tolerances.SHAPE_FROM_MOMENTS);
    atMost(
        name + "moment in the sections", worstMoment / momentScale, Tolerances.SHAPE_FROM_MOMENTS);
    double mostBending = greatest(loaded, stress -> stress[0]);
    double stressScale =
        Math.max(Double.MIN_NORMAL, mostBending + greatest(loaded, stress -> Math.abs(stress[1])));
    atMost(name + "stresses", worstBending / stressScale, Tolerances.SHAPE_FROM_MOMENTS);
    extreme(name + "bending stress", result.bendingStress(), mostBending, stressScale);
    extreme(
        name + "compression stress",
        result.compressionStress(),
        greatest(loaded, stress -> stress[0] - stress[1]),
        stressScale);
    extreme(
        name + "tension stress",
        result.tensionStress(),
        greatest(loaded, stress -> stress[0] + stress[1]),
        stressScale);
    same(
        name + "force at the base",
        Plain.times(-1, result.base().force().in(Kind.FORCE)),
        loaded.forceBelow[0],
        Tolerances.SHAPE_FROM_MOMENTS * scale);
    same(
        name + "moment at the base",
        Plain.times(-1, result.base().moment().in(Kind.MOMENT)),
        loaded.momentBelow[0],
        Tolerances.SHAPE_FROM_MOMENTS * momentScale);
    double[] shareForce = new double[3];
    double[] shareMoment = new double[3];
    for (Share share : result.shares()) {
      shareForce = Plain.plus(shareForce, share.force().in(Kind.FORCE));
      shareMoment = Plain.plus(shareMoment, share.moment().in(Kind.MOMENT));
    }
    same(
        name + "sum of shares",
        shareForce,
        loaded.forceBelow[0],
        Tolerances.SHAPE_FROM_MOMENTS * scale);
    same(
        name + "sum of moment shares",
        shareMoment,
        loaded.momentBelow[0],
        Tolerances.SHAPE_FROM_MOMENTS * momentScale);
  }

  /** Bending stress, and axial stress with tension positive, on one side of a grid point. */
  static double[] stress(BentStem bent, int g, boolean above) {
    double s = bent.grid[g];
    double side = above ? s + 1e-9 : s - 1e-9;
    double[] t = Plain.unit(above ? bent.tangentAbove[g] : bent.tangentBelow[g]);
    double[] m = above ? bent.momentAbove[g] : bent.momentBelow[g];
    double[] f = above ? bent.forceAbove[g] : bent.forceBelow[g];
    double bending = Plain.size(Plain.cross(m, t));
    return new double[] {
      bending * bent.given.outer(s, side) / 2 / bent.given.secondMoment(s, side),
      Plain.dot(f, t) / bent.given.area(s, side)
    };
  }

  /** The greatest of what one makes of bending and axial stress, all along the grid. */
  private static double greatest(BentStem bent, ToDoubleFunction<double[]> of) {
    double most = Double.NEGATIVE_INFINITY;
    for (int g = 0; g < bent.grid.length; g++) {
      if (g > 0) {
        most = Math.max(most, of.applyAsDouble(stress(bent, g, false)));
      }
      if (g + 1 < bent.grid.length) {
        most = Math.max(most, of.applyAsDouble(stress(bent, g, true)));
      }
    }
    return most;
  }

  /** The greatest value is at least that at any place looked at, and no more than fits between. */
  private void extreme(String name, Extreme found, double looked, double scale) {
    double value = Si.value(found.value(), Kind.PRESSURE, name);
    atMost(name + " missed", (looked - value) / scale, Tolerances.SHAPE_FROM_MOMENTS);
    atMost(name + " invented", (value - looked) / scale, Tolerances.BETWEEN_STATIONS);
  }
}
