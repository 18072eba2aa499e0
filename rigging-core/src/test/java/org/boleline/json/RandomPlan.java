package org.boleline.json;

import static org.boleline.units.Amounts.degrees;
import static org.boleline.units.Amounts.kilograms;
import static org.boleline.units.Amounts.kilogramsPerCubicMetre;
import static org.boleline.units.Amounts.metres;
import static org.boleline.units.Amounts.newtonMetres;
import static org.boleline.units.Amounts.newtons;
import static org.boleline.units.Amounts.pascals;
import static org.boleline.units.Amounts.seconds;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.boleline.geometry.Heading;
import org.boleline.geometry.IncludedAngle;
import org.boleline.geometry.Vector;
import org.boleline.plan.Arrangement;
import org.boleline.plan.AskedFactor;
import org.boleline.plan.Contact;
import org.boleline.plan.DropSpec;
import org.boleline.plan.Hitch;
import org.boleline.plan.Limits;
import org.boleline.plan.PartLimit;
import org.boleline.plan.Piece;
import org.boleline.plan.Plan;
import org.boleline.plan.Reduction;
import org.boleline.plan.Tagline;
import org.boleline.plan.Tail;
import org.boleline.rope.Bark;
import org.boleline.rope.FrictionRing;
import org.boleline.rope.Hardware;
import org.boleline.rope.Ideal;
import org.boleline.rope.Motion;
import org.boleline.rope.Rope;
import org.boleline.rope.Sheave;
import org.boleline.rope.StretchPoint;
import org.boleline.stem.Diameters;
import org.boleline.stem.Mark;
import org.boleline.stem.PointMass;
import org.boleline.stem.Root;
import org.boleline.stem.ShapeIs;
import org.boleline.stem.Stem;
import org.boleline.stem.StemShape;
import org.boleline.units.Kind;
import org.boleline.units.Si;
import org.boleline.wood.Log;
import org.boleline.wood.Species;
import org.boleline.wood.SpeciesPack;
import org.boleline.wood.WoodProperties;

/** Plans that a seed makes, with every form of every part; numbers with all their digits. */
public final class RandomPlan {
  private static final List<Motion> MOTIONS = List.of(Motion.values());

  private final Random random;
  private final List<Stem> stems = new ArrayList<>();
  private boolean ropeHasWeight;
  private boolean ropeHasStrength;
  private boolean ropeHasDiameter;

  /** The plan of a seed; always the same one. */
  public static Plan of(long seed) {
    return new RandomPlan(seed).plan();
  }

  RandomPlan(long seed) {
    this.random = new Random(seed);
  }

  private boolean maybe() {
    return random.nextBoolean();
  }

  private double from(double least, double most) {
    return least + random.nextDouble() * (most - least);
  }

  private int upTo(int most) {
    return 1 + random.nextInt(most);
  }

  Plan plan() {
    int count = upTo(3);
    for (int i = 0; i < count; i++) {
      stems.add(stem("stem " + i));
    }
    Plan.Builder plan = Plan.builder().stems(stems).piece(piece());
    if (maybe()) {
      plan.title("Plan ü \"" + random.nextInt() + "\"").notes("a\nb\\");
    }
    if (maybe()) {
      plan.gravity(Si.of(from(1, 20), Kind.ACCELERATION));
    }
    if (maybe()) {
      Rope rope = rope();
      ropeHasWeight = rope.linearDensity().isPresent();
      ropeHasStrength = rope.minimumBreakingStrength().isPresent();
      ropeHasDiameter = rope.diameter().isPresent();
      plan.rope(rope);
    }
    List<Arrangement> arrangements = new ArrayList<>();
    int ways = upTo(3);
    for (int i = 0; i < ways; i++) {
      arrangements.add(arrangement("way " + i));
    }
    if (maybe()) {
      plan.limits(limits());
    }
    return plan.arrangements(arrangements).build();
  }

  private Heading heading() {
    return Heading.of(degrees(from(0, 180)), degrees(from(-400, 400)));
  }

  private Vector<Length> position() {
    return Vector.ofSi(Kind.LENGTH, from(-20, 20), from(-20, 20), from(-5, 20));
  }

  private Stem stem(String id) {
    double length = from(1, 30);
    StemShape shape =
        switch (random.nextInt(3)) {
          case 0 -> StemShape.Straight.of(heading(), metres(length));
          case 1 ->
              StemShape.ByStations.of(
                  List.of(
                      StemShape.Station.of(metres(0), heading()),
                      StemShape.Station.of(metres(length / 3), heading()),
                      StemShape.Station.of(metres(length), heading())));
          default -> StemShape.ByPoints.of(List.of(position(), position(), position()));
        };
    Quantity<Length> end = shape.length();
    Stem.Builder stem = Stem.builder(id).shape(shape).diameters(diameters(end)).wood(wood());
    if (maybe() && !(shape instanceof StemShape.ByPoints)) {
      stem.base(position());
    }
    if (maybe()) {
      stem.shapeIs(maybe() ? ShapeIs.AS_STANDING : ShapeIs.STRESS_FREE);
    }
    if (maybe()) {
      stem.ownWeight(maybe());
    }
    if (maybe()) {
      stem.root(
          maybe()
              ? Root.Clamped.CLAMPED
              : Root.Turning.of(Si.of(from(1, 1e8), Kind.ROTATIONAL_STIFFNESS)));
    }
    if (maybe()) {
      stem.masses(List.of(PointMass.of(end, kilograms(from(0, 500)))));
    }
    if (maybe()) {
      stem.marks(List.of(Mark.of("end", end), Mark.of("base", metres(0))));
    }
    return stem.build();
  }

  private Diameters diameters(Quantity<Length> end) {
    double length = Si.value(end, Kind.LENGTH, "length");
    Quantity<Length> outer = metres(from(0.3, 1));
    return maybe()
        ? Diameters.tapering(end, outer, metres(from(0.05, 0.3)))
        : Diameters.of(
            List.of(
                Diameters.Entry.of(metres(0), outer),
                Diameters.Entry.of(metres(length / 7), outer),
                Diameters.Entry.of(metres(length / 7), outer, metres(from(0, 0.29))),
                Diameters.Entry.of(end, outer)));
  }

  private WoodProperties wood() {
    WoodProperties.Builder wood = WoodProperties.builder();
    if (maybe()) {
      wood.species(species());
    }
    wood.modulusOfElasticity(pascals(from(1e9, 2e10)))
        .density(kilogramsPerCubicMetre(from(300, 1200)));
    if (maybe()) {
      wood.shearModulus(pascals(from(1e8, 2e9)));
    }
    if (maybe()) {
      wood.bendingStrength(pascals(from(1e7, 1e8)));
    }
    if (maybe()) {
      wood.compressionStrength(pascals(from(1e7, 1e8)));
    }
    return wood.build();
  }

  private Species species() {
    List<Species> all = SpeciesPack.standard().all();
    return all.get(random.nextInt(all.size()));
  }

  private Piece piece() {
    if (maybe()) {
      return Piece.of(kilograms(from(1, 500)));
    }
    Log log =
        Log.of(
            metres(from(0.5, 5)),
            metres(from(0.3, 1)),
            metres(from(0, 0.3)),
            kilogramsPerCubicMetre(from(300, 1200)));
    return maybe() ? Piece.of(log) : Piece.of(log, kilograms(from(0, 100)));
  }

  private Rope rope() {
    Rope rope = Rope.UNSTATED;
    if (maybe()) {
      rope = rope.withMinimumBreakingStrength(newtons(from(1e4, 1e5)));
    }
    if (maybe()) {
      rope = rope.withDiameter(metres(from(0.01, 0.02)));
    }
    if (maybe()) {
      rope = rope.withLinearDensity(Si.of(from(0.05, 0.3), Kind.LINEAR_DENSITY));
    }
    if (maybe()) {
      rope =
          rope.withStretch(
              List.of(
                  StretchPoint.of(newtons(from(1, 100)), from(0.001, 0.01)),
                  StretchPoint.of(newtons(from(1000, 5000)), from(0.02, 0.1))));
    }
    if (maybe()) {
      rope =
          rope.withDropStretch(List.of(StretchPoint.of(newtons(from(1, 1e4)), from(0.001, 0.1))));
    }
    return rope;
  }

  private Arrangement arrangement(String id) {
    List<Contact> contacts = new ArrayList<>();
    int count = upTo(24);
    for (int i = 0; i < count; i++) {
      contacts.add(contact(i));
    }
    Tail tail = tail();
    Arrangement.Builder arrangement =
        Arrangement.builder(id)
            .motion(MOTIONS.get(random.nextInt(3)))
            .contacts(contacts)
            .tail(tail);
    if (maybe()) {
      arrangement.tagline(Tagline.of(degrees(from(0, 85)), degrees(from(-360, 360))));
    }
    if (maybe()) {
      arrangement.drop(drop(tail instanceof Tail.Device));
    }
    return arrangement.build();
  }

  private DropSpec drop(boolean withDevice) {
    double fall = from(0, 10);
    DropSpec drop = DropSpec.of(metres(fall), hold(withDevice));
    if (maybe()) {
      drop = drop.withLoadLeg(metres(fall / 2 + from(0.01, 2)));
    }
    if (maybe()) {
      drop = drop.withTieToCentre(metres(from(0, 2)));
    }
    return switch (random.nextInt(5)) {
      case 0 -> drop;
      case 1 -> drop.withConstantForceOver(metres(from(0.01, 5)));
      case 2 -> drop.withLevel(DropSpec.Level.RIGID_POINTS);
      case 3 -> drop.withLevel(DropSpec.Level.GIVING_POINTS);
      default -> drop.withLevel(DropSpec.Level.IN_TIME);
    };
  }

  private Stem anyStem() {
    return stems.get(random.nextInt(stems.size()));
  }

  private Quantity<Length> station(Stem stem, double least, double most) {
    return metres(from(least, most) * Si.value(stem.length(), Kind.LENGTH, "length"));
  }

  /** Even and odd contacts keep to different halves of a stem, so that neighbours are apart. */
  private Contact contact(int index) {
    Stem stem = anyStem();
    double least = index % 2 == 0 ? 0.3 : 0.7;
    Contact contact = Contact.of(stem.id(), station(stem, least, least + 0.29), hardware());
    if (maybe()) {
      contact = contact.withSling(metres(from(0, 2)));
    }
    if (maybe()) {
      contact = contact.withOffset(metres(from(-1, 1)));
    }
    if (maybe()) {
      contact = contact.withHardwareInCatch(hardware());
    }
    if (maybe()) {
      contact = contact.withSlingStiffness(Si.of(from(1, 1e6), Kind.STIFFNESS));
    }
    if (maybe()) {
      contact = contact.withOpens(maybe());
    }
    return contact.withRopeWeight(ropeHasWeight && maybe());
  }

  private Hardware hardware() {
    return switch (random.nextInt(4)) {
      case 0 -> new FrictionRing(from(0, 1));
      case 1 -> new Sheave(from(0.5, 1));
      case 2 -> new Bark(from(0, 2));
      default -> Ideal.INSTANCE;
    };
  }

  private Tail tail() {
    return switch (random.nextInt(3)) {
      case 0 -> Tail.Down.DOWN;
      case 1 -> Tail.Point.of(position());
      default -> device();
    };
  }

  private Tail device() {
    Stem stem = anyStem();
    Tail.Device device = Tail.Device.of(stem.id(), station(stem, 0, 0.2), from(0, 1), from(0, 5));
    if (maybe()) {
      device = device.withFrictionInCatch(from(0, 1));
    }
    return maybe() ? device : device.withOffset(metres(from(-1, 1)));
  }

  private DropSpec.Hold hold(boolean withDevice) {
    return switch (random.nextInt(withDevice ? 3 : 2)) {
      case 0 -> DropSpec.Locked.LOCKED;
      case 1 -> DropSpec.Slipping.of(newtons(from(1, 1e4)));
      default -> DropSpec.ByHand.of(newtons(from(0, 500)), seconds(from(0, 3)));
    };
  }

  private Limits limits() {
    List<AskedFactor> factors = List.of(AskedFactor.of("rope", from(1, 20), "the crew leader"));
    Limits limits = maybe() ? Limits.of(factors) : Limits.of(newtons(from(1, 500)), factors);
    List<PartLimit> parts = new ArrayList<>();
    for (PartLimit.Part part : PartLimit.Part.values()) {
      boolean possible =
          part != PartLimit.Part.HAND && (part != PartLimit.Part.BEND || ropeHasDiameter);
      if (possible && maybe()) {
        parts.add(part(part));
      }
    }
    return limits.withParts(parts);
  }

  private PartLimit part(PartLimit.Part part) {
    PartLimit.Builder builder = PartLimit.builder(part, "the " + part.text());
    if (part != PartLimit.Part.BEND && maybe()) {
      builder.demand(any(PartLimit.Demand.values()));
    }
    switch (part) {
      case ROPE -> {
        if (!ropeHasStrength || maybe()) {
          force(builder);
        }
        if (maybe()) {
          builder.place(any("piece", "tail", "contacts", "contacts/0"));
        }
      }
      case BEND -> builder.diameter(metres(from(0.02, 0.1)));
      case SLING ->
          force(builder)
              .hitch(
                  any(
                      Hitch.Vertical.VERTICAL,
                      Hitch.Choker.of(from(0.1, 1)),
                      Hitch.Choker.of(from(0.1, 1)).withAngle(degrees(from(0, 180))),
                      new Hitch.Basket(IncludedAngle.of(degrees(from(0, 170))))));
      case HARDWARE, DEVICE -> force(builder);
      case STEM -> {
        if (maybe()) {
          builder.stress(pascals(from(1e6, 1e8)));
        }
        if (maybe()) {
          Stem stem = anyStem();
          builder.stem(stem.id()).station(station(stem, 0, 1));
        }
      }
      case ANCHORAGE -> builder.moment(newtonMetres(from(1e3, 1e6)));
      case HAND -> throw new AssertionError(part);
    }
    if ((part == PartLimit.Part.ROPE || part == PartLimit.Part.SLING) && maybe()) {
      builder
          .reductions(
              List.of(
                  Reduction.of("wear", from(0.5, 1)).withSource("nobody"),
                  ropeHasDiameter
                      ? Reduction.ofBend(
                          "bend",
                          metres(from(0.02, 0.1)),
                          List.of(
                              new Reduction.AtRatio(1, from(0.1, 0.5)),
                              new Reduction.AtRatio(from(2, 5), from(0.5, 1))))
                      : Reduction.of("knot", from(0.3, 1))))
          .combined(any(Reduction.Combined.values()));
    }
    return builder.build();
  }

  private PartLimit.Builder force(PartLimit.Builder builder) {
    return builder.force(newtons(from(1e3, 1e5)), any(PartLimit.CapacityIs.values()));
  }

  @SafeVarargs
  private <T> T any(T... choices) {
    return choices[random.nextInt(choices.length)];
  }
}
