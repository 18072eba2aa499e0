package org.boleline.statics;

import java.util.List;
import org.boleline.internal.coupled.RigSpec;
import org.boleline.internal.coupled.StemSpec;
import org.boleline.internal.friction.FrictionKernel;
import org.boleline.internal.path.RopePath;
import org.boleline.plan.Arrangement;
import org.boleline.plan.Contact;
import org.boleline.plan.Plan;
import org.boleline.plan.Tagline;
import org.boleline.plan.Tail;
import org.boleline.rope.Bark;
import org.boleline.rope.FrictionRing;
import org.boleline.rope.Hardware;
import org.boleline.rope.Ideal;
import org.boleline.rope.Motion;
import org.boleline.rope.Rope;
import org.boleline.rope.Sheave;
import org.boleline.stem.PointMass;
import org.boleline.stem.Root;
import org.boleline.stem.ShapeIs;
import org.boleline.stem.Stem;
import org.boleline.units.Kind;
import org.boleline.units.Si;
import org.boleline.wood.WoodProperties;

/** A plan in SI doubles, ready for the kernels; made once for all its arrangements. */
final class Resolved {
  private static final double[] PLUMB = {0, 0, -1};
  private static final double[] NOWHERE = {0, 0, 0};

  final Plan plan;
  final double gravity;
  final double pieceWeight;
  final StemSpec[] stems;
  final StemGeometry[] geometry;

  Resolved(Plan plan) {
    this.plan = plan;
    gravity = Si.value(plan.gravity(), Kind.ACCELERATION, "gravity");
    pieceWeight = gravity * Si.value(plan.piece().mass(), Kind.MASS, "mass");
    int n = plan.stems().size();
    stems = new StemSpec[n];
    geometry = new StemGeometry[n];
    for (int i = 0; i < n; i++) {
      geometry[i] = new StemGeometry(plan.stems().get(i));
      stems[i] = stem(plan.stems().get(i), geometry[i]);
    }
  }

  private StemSpec stem(Stem stem, StemGeometry shape) {
    WoodProperties wood = stem.wood();
    double length = Si.value(stem.length(), Kind.LENGTH, "length");
    double[] breaks = shape.breaks(length);
    List<PointMass> masses = stem.masses();
    double[] massAt = new double[masses.size()];
    double[] massWeight = new double[masses.size()];
    for (int m = 0; m < massAt.length; m++) {
      double at = Math.min(length, Si.value(masses.get(m).at(), Kind.LENGTH, "at"));
      massAt[m] = StemGeometry.snapped(StemGeometry.snapped(at, 0, length), breaks);
      massWeight[m] = gravity * Si.value(masses.get(m).mass(), Kind.MASS, "mass");
    }
    double density = Si.value(wood.density(), Kind.DENSITY, "density");
    return new StemSpec(
        stem.base().in(Kind.LENGTH),
        length,
        breaks,
        shape,
        Si.value(wood.modulusOfElasticity(), Kind.PRESSURE, "modulusOfElasticity"),
        Si.value(wood.shearModulus(), Kind.PRESSURE, "shearModulus"),
        stem.ownWeight() ? gravity * density : 0,
        stem.root() instanceof Root.Turning turning
            ? Si.value(
                turning.rotationalStiffness(), Kind.ROTATIONAL_STIFFNESS, "rotationalStiffness")
            : Double.POSITIVE_INFINITY,
        massAt,
        massWeight,
        stem.shapeIs() == ShapeIs.AS_STANDING);
  }

  int stemIndex(String id) {
    for (int i = 0; i < plan.stems().size(); i++) {
      if (plan.stems().get(i).id().equals(id)) {
        return i;
      }
    }
    throw new AssertionError("the plan let pass a contact on no stem: " + id);
  }

  /** The arrangement, with friction acting as in one motion (never held). */
  RigSpec spec(Arrangement arrangement, Motion motion) {
    return spec(arrangement, motion, 1);
  }

  /** The same with a multiple of the load. */
  RigSpec spec(Arrangement arrangement, Motion motion, double factor) {
    List<Contact> contacts = arrangement.contacts();
    int n = contacts.size();
    boolean onDevice = arrangement.tail() instanceof Tail.Device;
    int all = onDevice ? n + 1 : n;
    int[] contactStem = new int[all];
    double[] contactAt = new double[all];
    double[][] contactArm = new double[all][];
    int[] law = new int[n];
    double[] parameter = new double[n];
    double[] sling = new double[n];
    double[] ropeWeight = new double[n];
    for (int j = 0; j < n; j++) {
      Contact contact = contacts.get(j);
      place(
          j,
          contact.stem(),
          Si.value(contact.at(), Kind.LENGTH, "at"),
          Si.value(contact.offset(), Kind.LENGTH, "offset"),
          contactStem,
          contactAt,
          contactArm);
      sling[j] = Si.value(contact.sling(), Kind.LENGTH, "sling");
      if (contact.hasRopeWeight()) {
        ropeWeight[j] = factor * ropeWeight();
      }
      law[j] = law(contact.hardware());
      parameter[j] = parameter(contact.hardware());
    }
    double[] endPoint = NOWHERE;
    RopePath.End end = RopePath.End.DOWN;
    if (arrangement.tail() instanceof Tail.Device device) {
      end = RopePath.End.DEVICE;
      place(
          n,
          device.stem(),
          Si.value(device.at(), Kind.LENGTH, "at"),
          Si.value(device.offset(), Kind.LENGTH, "offset"),
          contactStem,
          contactAt,
          contactArm);
    } else if (arrangement.tail() instanceof Tail.Point point) {
      end = RopePath.End.POINT;
      endPoint = point.position().in(Kind.LENGTH);
    }
    return new RigSpec(
        stems,
        contactStem,
        contactAt,
        contactArm,
        law,
        parameter,
        sling,
        ropeWeight,
        motion == Motion.RAISING,
        loadDirection(arrangement),
        end,
        endPoint,
        factor * loadTension(arrangement));
  }

  /** Weight of each length of the rope, N/m; the plan states its linear density. */
  double ropeWeight() {
    return gravity
        * plan.rope()
            .flatMap(Rope::linearDensity)
            .map(density -> Si.value(density, Kind.LINEAR_DENSITY, "linearDensity"))
            .orElseThrow();
  }

  private void place(
      int j,
      String stem,
      double at,
      double offset,
      int[] contactStem,
      double[] contactAt,
      double[][] contactArm) {
    int i = stemIndex(stem);
    contactStem[j] = i;
    double length = stems[i].length();
    double s = StemGeometry.snapped(Math.min(at, length), 0, length);
    contactAt[j] =
        StemGeometry.snapped(StemGeometry.snapped(s, stems[i].breaks()), stems[i].massAt());
    contactArm[j] = geometry[i].arm(contactAt[j], offset);
  }

  static int law(Hardware hardware) {
    if (hardware instanceof Ideal) {
      return FrictionKernel.IDEAL;
    }
    return hardware instanceof Sheave ? FrictionKernel.SHEAVE : FrictionKernel.ROUND;
  }

  static double parameter(Hardware hardware) {
    if (hardware instanceof FrictionRing ring) {
      return ring.friction();
    }
    if (hardware instanceof Bark bark) {
      return bark.friction();
    }
    return hardware instanceof Sheave sheave ? sheave.efficiency() : 1;
  }

  static double[] loadDirection(Arrangement arrangement) {
    if (arrangement.tagline().isEmpty()) {
      return PLUMB.clone();
    }
    Tagline tagline = arrangement.tagline().get();
    double angle = Si.value(tagline.angle(), Kind.ANGLE, "angle");
    double azimuth = Si.value(tagline.azimuth(), Kind.ANGLE, "azimuth");
    return new double[] {
      Math.sin(angle) * Math.cos(azimuth), Math.sin(angle) * Math.sin(azimuth), -Math.cos(angle)
    };
  }

  /** Tension of the load leg: the piece's weight, and more if a level tagline holds it aside. */
  double loadTension(Arrangement arrangement) {
    return pieceWeight / -loadDirection(arrangement)[2];
  }
}
