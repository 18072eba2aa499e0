package org.boleline.json;

import static org.boleline.units.Amounts.degrees;
import static org.boleline.units.Amounts.gigapascals;
import static org.boleline.units.Amounts.kilograms;
import static org.boleline.units.Amounts.kilogramsPerCubicMetre;
import static org.boleline.units.Amounts.megapascals;
import static org.boleline.units.Amounts.metres;
import static org.boleline.units.Amounts.newtonMetresPerRadian;
import static org.boleline.units.Amounts.newtons;
import static org.boleline.units.Amounts.seconds;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.boleline.geometry.Heading;
import org.boleline.geometry.Vector;
import org.boleline.plan.Arrangement;
import org.boleline.plan.Contact;
import org.boleline.plan.DropSpec;
import org.boleline.plan.Piece;
import org.boleline.plan.Plan;
import org.boleline.plan.Tail;
import org.boleline.rope.FrictionRing;
import org.boleline.rope.Hardware;
import org.boleline.rope.Ideal;
import org.boleline.rope.Motion;
import org.boleline.rope.Rope;
import org.boleline.rope.Sheave;
import org.boleline.rope.StretchPoint;
import org.boleline.stem.Diameters;
import org.boleline.stem.Mark;
import org.boleline.stem.Root;
import org.boleline.stem.ShapeIs;
import org.boleline.stem.Stem;
import org.boleline.stem.StemShape;
import org.boleline.units.Kind;
import org.boleline.wood.WoodProperties;

/**
 * Plans that a seed makes, of the kind a crew could meet: one or two leaning stems, points from the
 * top down, every motion, tail and hardware, slings that bear and slings that do not, stems that
 * lose stability.
 */
final class RandomRig {
  private static final List<Motion> MOTIONS = List.of(Motion.values());

  private final Random random;

  /** For drops: so that they change nothing of the rigs. */
  private final Random drops;

  RandomRig(long seed) {
    random = new Random(seed);
    drops = new Random(~seed);
    for (int i = 0; i < 5; i++) {
      random.nextDouble();
    }
  }

  private boolean oneIn(int many) {
    return random.nextInt(many) == 0;
  }

  private double from(double least, double most) {
    return least + random.nextDouble() * (most - least);
  }

  Plan plan() {
    List<Stem> stems = new ArrayList<>();
    double length = from(6, 18);
    stems.add(stem("first", length, 0));
    if (oneIn(3)) {
      stems.add(stem("second", length, from(3, 8)));
    }
    List<Arrangement> arrangements = new ArrayList<>();
    int ways = 1 + random.nextInt(3);
    for (int i = 0; i < ways; i++) {
      arrangements.add(arrangement("way " + i, stems, length));
    }
    return Plan.builder()
        .title(oneIn(2) ? "" : "Rig \u00fc " + random.nextInt(1000))
        .stems(stems)
        .piece(Piece.of(kilograms(from(20, 600))))
        .rope(drops.nextInt(4) == 0 ? Rope.UNSTATED : rope())
        .arrangements(arrangements)
        .build();
  }

  private Stem stem(String id, double length, double away) {
    double lean = oneIn(4) ? from(0, 1) : from(1, 50);
    double diameter = length / (oneIn(4) ? from(60, 140) : from(20, 60));
    WoodProperties.Builder wood =
        WoodProperties.builder()
            .modulusOfElasticity(gigapascals(from(5, 12)))
            .density(kilogramsPerCubicMetre(from(600, 1100)));
    if (oneIn(2)) {
      wood.compressionStrength(megapascals(from(10, 25)));
    }
    if (oneIn(3)) {
      wood.bendingStrength(megapascals(from(20, 60)));
    }
    Stem.Builder stem =
        Stem.builder(id)
            .base(Vector.ofSi(Kind.LENGTH, away, 0, 0))
            .shape(
                StemShape.ByStations.of(
                    List.of(
                        StemShape.Station.of(metres(0), heading(lean)),
                        StemShape.Station.of(metres(length), heading(lean + from(0, 20))))))
            .shapeIs(oneIn(3) ? ShapeIs.STRESS_FREE : ShapeIs.AS_STANDING)
            .diameters(Diameters.tapering(metres(length), metres(diameter), metres(0.5 * diameter)))
            .wood(wood.build())
            .ownWeight(!oneIn(5));
    if (oneIn(2)) {
      stem.root(Root.Turning.of(newtonMetresPerRadian(from(2e5, 4e6))));
    }
    if (oneIn(2)) {
      stem.marks(List.of(Mark.of("middle", metres(0.5 * length))));
    }
    return stem.build();
  }

  private Heading heading(double lean) {
    return Heading.of(degrees(lean), degrees(from(-20, 20)));
  }

  private Arrangement arrangement(String id, List<Stem> stems, double length) {
    List<Contact> contacts = new ArrayList<>();
    int count = 1 + random.nextInt(5);
    double sling = oneIn(2) ? 0 : from(0.05, oneIn(4) ? 2 : 0.4);
    for (int i = 0; i < count; i++) {
      double at = length * (0.95 - 0.8 * i / count) - from(0, 0.05) * length;
      String stem = i > 0 && oneIn(3) ? stems.get(stems.size() - 1).id() : "first";
      Contact contact = Contact.of(stem, metres(at), hardware());
      contacts.add(sling > 0 ? contact.withSling(metres(sling)) : contact);
    }
    Motion motion = MOTIONS.get(random.nextInt(3));
    Tail tail = tail();
    Arrangement.Builder way = Arrangement.builder(id).motion(motion).contacts(contacts).tail(tail);
    return drops.nextBoolean() ? way.build() : way.drop(drop(tail instanceof Tail.Device)).build();
  }

  private double dropFrom(double least, double most) {
    return least + drops.nextDouble() * (most - least);
  }

  private Rope rope() {
    List<StretchPoint> curve =
        List.of(StretchPoint.of(newtons(dropFrom(3e3, 1e4)), dropFrom(0.02, 0.1)));
    return drops.nextBoolean()
        ? Rope.UNSTATED.withStretch(curve)
        : Rope.UNSTATED.withDropStretch(curve);
  }

  private DropSpec drop(boolean withDevice) {
    DropSpec.Hold hold =
        switch (drops.nextInt(withDevice ? 3 : 2)) {
          case 0 -> DropSpec.Locked.LOCKED;
          case 1 -> DropSpec.Slipping.of(newtons(dropFrom(10, 5000)));
          default -> DropSpec.ByHand.of(newtons(dropFrom(0, 400)), seconds(dropFrom(0, 1)));
        };
    DropSpec drop = DropSpec.of(metres(dropFrom(0, 4)), hold);
    return drops.nextInt(4) == 0 ? drop.withConstantForceOver(metres(dropFrom(0.1, 2))) : drop;
  }

  private Hardware hardware() {
    return switch (random.nextInt(3)) {
      case 0 -> new FrictionRing(from(0.1, 0.4));
      case 1 -> new Sheave(from(0.85, 0.98));
      default -> Ideal.INSTANCE;
    };
  }

  private Tail tail() {
    return switch (random.nextInt(3)) {
      case 0 -> Tail.Down.DOWN;
      case 1 -> Tail.Point.of(Vector.ofSi(Kind.LENGTH, from(-8, 8), from(-8, 8), 0));
      default -> Tail.Device.of("first", metres(0.8), from(0.1, 0.25), random.nextInt(4));
    };
  }
}
