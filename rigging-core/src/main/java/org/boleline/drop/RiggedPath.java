package org.boleline.drop;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.Force;
import javax.measure.quantity.Length;
import org.boleline.explain.Caution;
import org.boleline.explain.CautionCode;
import org.boleline.explain.Datum;
import org.boleline.explain.PlanRefusedException;
import org.boleline.explain.Source;
import org.boleline.geometry.Vector;
import org.boleline.plan.Arrangement;
import org.boleline.plan.Contact;
import org.boleline.plan.DropSpec;
import org.boleline.plan.Plan;
import org.boleline.plan.Tail;
import org.boleline.rope.Hardware;
import org.boleline.statics.Leg;
import org.boleline.statics.RigAtRest;
import org.boleline.statics.Solution;
import org.boleline.stem.Stem;
import org.boleline.units.Amounts;
import org.boleline.units.Kind;
import org.boleline.units.Moment;
import org.boleline.units.QuantityText;
import org.boleline.units.Si;
import org.boleline.units.Stiffness;

/**
 * The way of the rope of a plan when the slow load hangs on it: contacts that bear, and the end.
 *
 * <p>The load leg is plumb here, also with a tagline: the piece falls straight.
 */
final class RiggedPath {
  private static final double[] DOWN = {0, 0, -1};
  private static final Source TAIL_END =
      new Source(
          "assumption",
          "assumption of this library, no source: a tail that is pulled straight down ends at the"
              + " height of the lowest base of a stem",
          Source.Reading.DEFAULT);

  private final Solution slow;
  private final int index;
  private final List<Integer> bearing = new ArrayList<>();
  private final List<double[]> places = new ArrayList<>();
  private final double[] end;
  private final Optional<RigAtRest> rest;

  /** The way of the arrangement with that index. */
  RiggedPath(Solution slow, int index) {
    this.slow = slow;
    this.index = index;
    for (int j = 0; j < slow.contacts().size(); j++) {
      if (slow.contacts().get(j).bears()) {
        bearing.add(j);
        places.add(slow.contacts().get(j).position().in(Kind.LENGTH));
      }
    }
    Leg last = slow.legs().get(slow.legs().size() - 1);
    end = last.end().map(place -> place.in(Kind.LENGTH)).orElseGet(this::below);
    rest = RigAtRest.of(slow.plan(), slow.id());
  }

  Plan plan() {
    return slow.plan();
  }

  Arrangement arrangement() {
    return slow.arrangement();
  }

  /** The end of a tail that is pulled straight down. */
  private double[] below() {
    if (places.isEmpty()) {
      return new double[3];
    }
    double[] last = places.get(places.size() - 1);
    return new double[] {last[0], last[1], Math.min(last[2], lowestBase(slow.plan()))};
  }

  private static double lowestBase(Plan plan) {
    return plan.stems().stream()
        .mapToDouble(stem -> stem.base().in(Kind.LENGTH)[2])
        .min()
        .orElseThrow();
  }

  /** The assumption about the end of the rope, if one is made. */
  static Optional<Datum> assumed(Plan plan, int index) {
    return plan.arrangements().get(index).tail() instanceof Tail.Down
        ? Optional.of(
            new Datum(
                "/arrangements/" + index + "/tail/endHeight",
                QuantityText.print(Si.of(lowestBase(plan), Kind.LENGTH), Kind.LENGTH),
                TAIL_END,
                null))
        : Optional.empty();
  }

  /** Indexes of the contacts that the rope bears on, from the piece on. */
  List<Integer> bearing() {
    return List.copyOf(bearing);
  }

  /** From where to where each leg runs, as the legs of the slow result. */
  List<String[]> ends() {
    return slow.legs().stream().map(leg -> new String[] {leg.from(), leg.to()}).toList();
  }

  private Contact contact(int point) {
    return slow.arrangement().contacts().get(bearing.get(point));
  }

  private static double[] between(double[] from, double[] to) {
    return new double[] {to[0] - from[0], to[1] - from[1], to[2] - from[2]};
  }

  private double[] next(int point) {
    return point + 1 < places.size() ? places.get(point + 1) : end;
  }

  private double[] toTail(int point) {
    boolean straightDown =
        point + 1 == places.size() && slow.arrangement().tail() instanceof Tail.Down;
    return straightDown ? DOWN : between(places.get(point), next(point));
  }

  private static Vector<Length> vector(double[] v) {
    return Vector.ofSi(Kind.LENGTH, v[0], v[1], v[2]);
  }

  private static double length(double[] v) {
    return Math.sqrt(v[0] * v[0] + v[1] * v[1] + v[2] * v[2]);
  }

  /**
   * Legs and points for a catch.
   *
   * @param loadLeg length of the load leg
   * @param giving whether stems and stated springs of slings give way
   */
  CatchPath path(Quantity<Length> loadLeg, boolean giving) {
    CatchPath path = CatchPath.of(loadLeg);
    for (int point = 0; point < places.size(); point++) {
      Contact contact = contact(point);
      double[] here = places.get(point);
      double[] toLoad = point == 0 ? DOWN : between(here, places.get(point - 1));
      CatchPoint made =
          CatchPoint.between(
              contact.hardwareInCatch().orElse(contact.hardware()),
              vector(toLoad),
              vector(toTail(point)));
      Optional<Quantity<Stiffness>> spring = contact.slingStiffness();
      if (giving && spring.isPresent()) {
        made = made.withStiffness(spring.get());
      }
      path = path.over(made, Si.of(length(between(here, next(point))), Kind.LENGTH));
    }
    return giving ? onStems(path) : path;
  }

  /** The path with points on stems that give way; as it is if these points would lift the load. */
  private CatchPath onStems(CatchPath path) {
    if (rest.isEmpty() || bearing.isEmpty()) {
      return path;
    }
    int[] contacts = bearing.stream().mapToInt(Integer::intValue).toArray();
    try {
      return path.withGive(
          PointGive.of(
              rest.get().kernel().compliance(contacts), Amounts.metres(1), Amounts.newtons(1)));
    } catch (PlanRefusedException e) {
      return path;
    }
  }

  /** The same fall in time, from when the rope comes taut; empty if the stems do not stand. */
  Optional<CatchInTime.Builder> inTime(DropSpec spec, RopeStretch stretch) {
    if (rest.isEmpty() || rest.get().bearing().isEmpty()) {
      return Optional.empty();
    }
    RigAtRest rig = rest.get();
    List<Hardware> hardware =
        rig.bearing().stream()
            .map(j -> slow.arrangement().contacts().get(j))
            .map(contact -> contact.hardwareInCatch().orElse(contact.hardware()))
            .toList();
    double[] top = rig.points().get(0).in(Kind.LENGTH);
    double gravity = Si.value(slow.plan().gravity(), Kind.ACCELERATION, "gravity");
    double leg = Si.value(spec.loadLeg(), Kind.LENGTH, "loadLeg");
    double fall = Si.value(spec.fall(), Kind.LENGTH, "fall");
    FallingPiece piece =
        FallingPiece.point(
                slow.plan().piece().mass(), Vector.ofSi(Kind.LENGTH, top[0], top[1], top[2] - leg))
            .moving(Vector.ofSi(Kind.SPEED, 0, 0, -DropFormulas.FALL_SPEED.value(gravity, fall)));
    return Optional.of(
        CatchInTime.builder(piece, stretch, RopeLine.over(rig, hardware), spec.loadLeg())
            .onStems(rig, spec.stemDampingRatio())
            .gravity(slow.plan().gravity())
            .over(spec.duration()));
  }

  /** From where to where each leg of the catch in time runs. */
  List<String[]> endsInTime() {
    List<String[]> ends = new ArrayList<>();
    String from = "piece";
    for (int j : rest.orElseThrow().bearing()) {
      ends.add(new String[] {from, "contacts/" + j});
      from = "contacts/" + j;
    }
    boolean device = slow.arrangement().tail() instanceof Tail.Device;
    ends.add(new String[] {from, device ? "device" : "tail"});
    return ends;
  }

  /** A caution for each contact whose friction in a catch is not stated. */
  List<Caution> frictionCautions() {
    List<Caution> found = new ArrayList<>();
    for (int point = 0; point < places.size(); point++) {
      Contact contact = contact(point);
      if (contact.hardwareInCatch().isEmpty()) {
        found.add(slowFriction(place(bearing.get(point)), contact.hardware().name()));
      }
    }
    return found;
  }

  static Caution slowFriction(String place, String hardware) {
    return new Caution(CautionCode.CATCH_FRICTION_SLOW, place, Map.of("hardware", hardware));
  }

  /** Place of a contact's hardware in the plan. */
  private String place(int contact) {
    boolean own = slow.arrangement().contacts().get(contact).hardwareInCatch().isPresent();
    return "/arrangements/"
        + index
        + "/contacts/"
        + contact
        + (own ? "/hardwareInCatch" : "/hardware");
  }

  /** A caution of a catch by energy, with its place in the plan and contacts counted as there. */
  Caution placed(Caution caution) {
    return placed(caution, bearing);
  }

  /** The same of a catch in time, whose rope may bear on other contacts. */
  Caution placedInTime(Caution caution) {
    return placed(caution, rest.orElseThrow().bearing());
  }

  private Caution placed(Caution caution, List<Integer> contacts) {
    String points = "/points/";
    if (caution.place().isEmpty()) {
      return new Caution(caution.code(), "/arrangements/" + index + "/drop", caution.values());
    }
    if (!caution.place().startsWith(points)) {
      return caution;
    }
    int behind = (caution.place() + "/").indexOf('/', points.length());
    int point = Integer.parseInt(caution.place().substring(points.length(), behind));
    Map<String, String> values =
        caution.values().containsKey("point")
            ? Map.of("point", String.valueOf(contacts.get(point) + 1))
            : caution.values();
    return new Caution(
        caution.code(), place(contacts.get(point)) + caution.place().substring(behind), values);
  }

  /** Moment of the rope about the base of every stem, in the order of the plan. */
  List<Vector<Moment>> baseMoments(CatchLoads loads) {
    List<Vector<Moment>> moments = new ArrayList<>();
    for (Stem stem : slow.plan().stems()) {
      double[] base = stem.base().in(Kind.LENGTH);
      double[] sum = new double[3];
      for (int point = 0; point < places.size(); point++) {
        if (contact(point).stem().equals(stem.id())) {
          Vector<Force> force = loads.points().get(point).vector().orElseThrow();
          addMoment(sum, between(base, places.get(point)), force.in(Kind.FORCE));
        }
      }
      if (slow.arrangement().tail() instanceof Tail.Device device
          && device.stem().equals(stem.id())) {
        double[] pull = places.isEmpty() ? DOWN : between(end, places.get(places.size() - 1));
        double scale = loads.lastLeg() / length(pull);
        addMoment(
            sum,
            between(base, end),
            new double[] {scale * pull[0], scale * pull[1], scale * pull[2]});
      }
      moments.add(Vector.ofSi(Kind.MOMENT, sum[0], sum[1], sum[2]));
    }
    return moments;
  }

  private static void addMoment(double[] sum, double[] arm, double[] force) {
    sum[0] += arm[1] * force[2] - arm[2] * force[1];
    sum[1] += arm[2] * force[0] - arm[0] * force[2];
    sum[2] += arm[0] * force[1] - arm[1] * force[0];
  }
}
