package org.boleline.statics;

import static org.boleline.units.Amounts.degrees;
import static org.boleline.units.Amounts.kilograms;
import static org.boleline.units.Amounts.metres;
import static org.boleline.units.Amounts.newtonMetresPerRadian;
import static org.boleline.units.Amounts.pascals;
import static org.boleline.units.Amounts.radians;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import javax.measure.quantity.Length;
import org.boleline.explain.PlanRefusedException;
import org.boleline.geometry.Heading;
import org.boleline.geometry.Vector;
import org.boleline.plan.Arrangement;
import org.boleline.plan.Contact;
import org.boleline.plan.Piece;
import org.boleline.plan.Plan;
import org.boleline.plan.Tagline;
import org.boleline.plan.Tail;
import org.boleline.rope.Bark;
import org.boleline.rope.FrictionRing;
import org.boleline.rope.Hardware;
import org.boleline.rope.Ideal;
import org.boleline.rope.Motion;
import org.boleline.rope.Sheave;
import org.boleline.stem.Diameters;
import org.boleline.stem.Mark;
import org.boleline.stem.PointMass;
import org.boleline.stem.Root;
import org.boleline.stem.ShapeIs;
import org.boleline.stem.Stem;
import org.boleline.stem.StemShape;
import org.boleline.units.Amounts;
import org.boleline.units.Kind;
import org.boleline.units.Si;
import org.boleline.wood.WoodProperties;

/**
 * Valid plans drawn from a seed, one arrangement each.
 *
 * <p>Far wider than tree work: stems from stout to slenderer than they can stand, plumb to nearly
 * level; points in any order on any stem; slings up to 2 m; 5 kg to 3 t on the rope.
 */
public final class RandomPlans {
  private static final List<Motion> MOTIONS = List.of(Motion.values());
  private final SplittableRandom random;

  private RandomPlans(long seed) {
    random = new SplittableRandom(seed);
  }

  /** The plan of a seed; always the same one. */
  public static Plan of(long seed) {
    RandomPlans draw = new RandomPlans(seed);
    while (true) {
      try {
        return draw.plan("seed " + seed);
      } catch (PlanRefusedException e) {
        // Two points at one place: drawn again.
      }
    }
  }

  /**
   * The plan of a seed without friction, slings, kinks or roots that turn, if that leaves a plan:
   * one with a potential.
   */
  static Optional<Plan> conservative(long seed) {
    Plan plan = of(seed);
    for (Stem stem : plan.stems()) {
      if (stem.shape() instanceof StemShape.ByPoints || stem.root() instanceof Root.Turning) {
        return Optional.empty();
      }
    }
    List<Contact> contacts =
        plan.arrangements().get(0).contacts().stream()
            .map(c -> Contact.of(c.stem(), c.at(), Ideal.INSTANCE).withOffset(c.offset()))
            .toList();
    try {
      return Optional.of(
          plan.toBuilder()
              .arrangements(
                  List.of(
                      plan.arrangements().get(0).toBuilder()
                          .contacts(contacts)
                          .motion(Motion.LOWERING)
                          .build()))
              .build());
    } catch (PlanRefusedException e) {
      return Optional.empty(); // two points at one place without their slings
    }
  }

  private double between(double low, double high) {
    return low + (high - low) * random.nextDouble();
  }

  /** Even over the orders of magnitude. */
  private double spread(double low, double high) {
    return low * Math.pow(high / low, random.nextDouble());
  }

  private boolean once(int in) {
    return random.nextInt(in) == 0;
  }

  private Plan plan(String title) {
    int count = new int[] {1, 1, 1, 1, 2, 2, 2, 3}[random.nextInt(8)];
    List<Stem> stems = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      stems.add(stem(i));
    }
    return Plan.builder()
        .title(title)
        .stems(stems)
        .piece(Piece.of(kilograms(spread(5, 3000))))
        .arrangements(List.of(arrangement(stems)))
        .build();
  }

  private Stem stem(int index) {
    double length = between(4, 22);
    Stem.Builder stem = Stem.builder("stem " + index);
    StemShape shape = shape(index, length, stem);
    length = shape.length(Kind.LENGTH);
    stem.shape(shape).diameters(diameters(length)).wood(wood());
    stem.shapeIs(random.nextBoolean() ? ShapeIs.STRESS_FREE : ShapeIs.AS_STANDING);
    stem.ownWeight(!once(4));
    if (once(3)) {
      stem.root(Root.Turning.of(newtonMetresPerRadian(spread(3e4, 1e8))));
    }
    List<PointMass> masses = new ArrayList<>();
    for (int m = random.nextInt(6) - 3; m > 0; m--) {
      masses.add(PointMass.of(metres(between(0, length)), kilograms(spread(1, 150))));
    }
    stem.masses(masses);
    if (once(3)) {
      stem.marks(List.of(Mark.of("anywhere", metres(between(0, length)))));
    }
    return stem.build();
  }

  /** The shape; sets the base too. */
  private StemShape shape(int index, double length, Stem.Builder stem) {
    double[] base = {0, 0, 0};
    if (index > 0 || once(2)) {
      double away = index == 0 ? between(0, 1) : between(0.8, 7);
      double toward = between(-Math.PI, Math.PI);
      base = new double[] {away * Math.cos(toward), away * Math.sin(toward), between(-1, 2)};
    }
    double lean =
        switch (random.nextInt(6)) {
          case 0 -> 0;
          case 1 -> spread(1e-7, 3e-2);
          case 2 -> between(0, 1.5);
          default -> between(0.05, 0.9);
        };
    double azimuth = between(-Math.PI, Math.PI);
    int kind = random.nextInt(4);
    if (kind < 2) {
      stem.base(Vector.ofSi(Kind.LENGTH, base));
      return StemShape.Straight.of(Heading.of(radians(lean), radians(azimuth)), metres(length));
    }
    double[] at = rising(2 + random.nextInt(5), length);
    double bend = between(-0.5, 0.7);
    double swing = once(2) ? 0 : between(-1, 1);
    if (kind == 2) {
      stem.base(Vector.ofSi(Kind.LENGTH, base));
      List<StemShape.Station> stations = new ArrayList<>();
      for (double s : at) {
        double x = s / length;
        stations.add(
            StemShape.Station.of(
                metres(s),
                Heading.of(
                    radians(Math.abs(lean + bend * x) + between(0, 0.03)),
                    radians(azimuth + swing * x))));
      }
      return StemShape.ByStations.of(stations);
    }
    List<Vector<Length>> points = new ArrayList<>();
    double[] p = base.clone();
    points.add(Vector.ofSi(Kind.LENGTH, p));
    for (int i = 1; i < at.length; i++) {
      double x = at[i] / length;
      double[] t = Plain.direction(Math.abs(lean + bend * x), azimuth + swing * x);
      p = Plain.plus(p, Plain.times(at[i] - at[i - 1], t));
      points.add(Vector.ofSi(Kind.LENGTH, p));
    }
    return StemShape.ByPoints.of(points);
  }

  /** Stations from zero to a length, well apart. */
  private double[] rising(int count, double length) {
    double[] at = new double[count];
    for (int i = 1; i < count; i++) {
      at[i] = at[i - 1] + between(0.3, 1);
    }
    double whole = at[count - 1];
    for (int i = 0; i < count; i++) {
      at[i] *= length / whole;
    }
    at[count - 1] = length;
    return at;
  }

  private Diameters diameters(double length) {
    double slenderness =
        switch (random.nextInt(5)) {
          case 0 -> between(60, 170);
          case 1 -> between(12, 25);
          default -> between(25, 60);
        };
    double base = length / slenderness;
    double top = base * between(0.2, 1);
    double[] at = rising(2 + random.nextInt(4), length);
    List<Diameters.Entry> entries = new ArrayList<>();
    boolean hollow = once(3);
    double outer = base;
    double cavity = 0;
    for (int i = 0; i < at.length; i++) {
      double x = at[i] / length;
      double next = (base + x * (top - base)) * (i == 0 ? 1 : between(0.9, 1.1));
      double nextCavity = hollow && once(2) ? next * between(0.1, 0.85) : 0;
      boolean step = i > 0 && i < at.length - 1 && once(3);
      entries.add(entry(at[i], step ? outer * between(0.8, 1) : next, step ? cavity : nextCavity));
      if (step) {
        entries.add(entry(at[i], next, nextCavity));
      }
      outer = next;
      cavity = nextCavity;
    }
    return Diameters.of(entries);
  }

  private static Diameters.Entry entry(double at, double outer, double cavity) {
    double d = Math.max(0.02, outer);
    return Diameters.Entry.of(metres(at), metres(d), metres(Math.min(cavity, 0.9 * d)));
  }

  private WoodProperties wood() {
    double modulus = spread(4e9, 1.5e10);
    WoodProperties.Builder wood =
        WoodProperties.builder()
            .modulusOfElasticity(pascals(modulus))
            .density(Amounts.kilogramsPerCubicMetre(between(400, 1200)));
    if (once(3)) {
      wood.shearModulus(pascals(modulus / between(6, 25)));
    }
    if (!once(4)) {
      wood.compressionStrength(pascals(between(1e7, 4e7)));
    }
    if (!once(3)) {
      wood.bendingStrength(pascals(between(2e7, 9e7)));
    }
    return wood.build();
  }

  private Arrangement arrangement(List<Stem> stems) {
    int count = once(3) ? 1 + random.nextInt(12) : 1 + random.nextInt(4);
    boolean oneStem = once(2);
    int first = random.nextInt(stems.size());
    int style = random.nextInt(4);
    Hardware same = hardware();
    boolean alike = random.nextBoolean();
    boolean slings = random.nextBoolean();
    List<Contact> contacts = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      Stem stem = stems.get(oneStem ? first : random.nextInt(stems.size()));
      double length = stem.shape().length(Kind.LENGTH);
      double at = once(6) ? length : length * between(style == 3 ? 0.02 : 0.2, 1);
      Contact contact = Contact.of(stem.id(), metres(at), alike ? same : hardware());
      if (slings && !once(4)) {
        contact = contact.withSling(metres(once(3) ? between(0.4, 2) : between(0.02, 0.4)));
      }
      if (once(3)) {
        contact = contact.withOffset(metres(between(-0.5, 0.5)));
      }
      contacts.add(contact);
      if (once(12) && i + 1 < count) {
        contacts.add(contact.withOffset(metres(between(0.05, 0.5))).withSling(metres(0.1)));
        i++;
      }
    }
    if (style < 2) {
      contacts.sort(Comparator.comparingDouble(RandomPlans::station).reversed());
    } else if (style == 2) {
      contacts.sort(Comparator.comparingDouble(RandomPlans::station));
    }
    Arrangement.Builder arrangement =
        Arrangement.builder("random")
            .motion(MOTIONS.get(random.nextInt(MOTIONS.size())))
            .contacts(contacts)
            .tail(tail(stems));
    if (once(5)) {
      arrangement.tagline(Tagline.of(degrees(between(0, 60)), radians(between(-3, 3))));
    }
    return arrangement.build();
  }

  private static double station(Contact contact) {
    return Si.value(contact.at(), Kind.LENGTH, "at");
  }

  private Hardware hardware() {
    return switch (random.nextInt(4)) {
      case 0 -> Ideal.INSTANCE;
      case 1 -> new FrictionRing(between(0, 0.6));
      case 2 -> new Sheave(between(0.8, 1));
      default -> new Bark(between(0.1, 0.8));
    };
  }

  private Tail tail(List<Stem> stems) {
    Stem stem = stems.get(random.nextInt(stems.size()));
    double[] base = stem.base().in(Kind.LENGTH);
    return switch (random.nextInt(5)) {
      case 0 -> Tail.Down.DOWN;
      case 1 -> Tail.Point.of(Vector.ofSi(Kind.LENGTH, base));
      case 2 -> {
        double at = stem.shape().length(Kind.LENGTH) * between(0, once(4) ? 1 : 0.3);
        Tail.Device device =
            Tail.Device.of(stem.id(), metres(at), between(0.1, 0.4), random.nextInt(9) / 2.0);
        yield once(2) ? device : device.withOffset(metres(between(-0.4, 0.4)));
      }
      default ->
          Tail.Point.of(
              Vector.ofSi(
                  Kind.LENGTH, between(-15, 15), between(-15, 15), Math.min(0, between(-1, 1))));
    };
  }
}
