package org.boleline.benchmarks;

import static org.boleline.units.Amounts.degrees;
import static org.boleline.units.Amounts.gigapascals;
import static org.boleline.units.Amounts.kilograms;
import static org.boleline.units.Amounts.kilogramsPerCubicMetre;
import static org.boleline.units.Amounts.megapascals;
import static org.boleline.units.Amounts.metres;
import static org.boleline.units.Amounts.newtonMetresPerRadian;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.boleline.geometry.Heading;
import org.boleline.geometry.Vector;
import org.boleline.plan.Arrangement;
import org.boleline.plan.Contact;
import org.boleline.plan.Piece;
import org.boleline.plan.Plan;
import org.boleline.plan.Tail;
import org.boleline.rope.FrictionRing;
import org.boleline.rope.Motion;
import org.boleline.stem.Diameters;
import org.boleline.stem.Root;
import org.boleline.stem.Stem;
import org.boleline.stem.StemShape;
import org.boleline.units.Kind;
import org.boleline.wood.WoodProperties;

/**
 * Plans to solve: leaning, curved, tapered stems like the demo's hornbeam, and rings from the top
 * down. Stations are shifted a little by a random number with a fixed seed, so that no two legs are
 * alike. Invented.
 */
final class Rigs {
  private static final long SEED = 20260101;
  private static final double LENGTH = 12;
  private static final double[] LEAN_AT = {0, 3, 6, 9, 12};
  private static final double[] LEAN = {16, 20, 27, 36, 45};
  private static final double[] DIAMETER = {0.36, 0.33, 0.29, 0.24, 0.19};

  private Rigs() {}

  /**
   * Makes a plan with the plainest stem: straight, leaning, clamped and without own weight.
   *
   * @param contacts number of rings
   * @return the plan
   */
  static Plan straight(int contacts) {
    Stem stem =
        Stem.builder(id(0))
            .shape(StemShape.Straight.of(Heading.of(degrees(25), degrees(0)), metres(LENGTH)))
            .diameters(Diameters.tapering(metres(LENGTH), metres(0.36), metres(0.16)))
            .wood(WoodProperties.of(gigapascals(9), kilogramsPerCubicMetre(1000)))
            .ownWeight(false)
            .build();
    return plan(List.of(stem), contacts, 0);
  }

  /**
   * Makes a plan of one arrangement, lowering to a device at the base of the first stem.
   *
   * @param contacts number of rings, dealt out to the stems from the top down
   * @param stems number of stems, four metres apart
   * @param slingMetres length of every sling
   * @param hasStrength whether the strength of the wood is stated
   * @return the plan
   */
  static Plan plan(int contacts, int stems, double slingMetres, boolean hasStrength) {
    List<Stem> standing = new ArrayList<>();
    for (int i = 0; i < stems; i++) {
      standing.add(stem(i, hasStrength));
    }
    return plan(standing, contacts, slingMetres);
  }

  private static Plan plan(List<Stem> stems, int contacts, double slingMetres) {
    Random random = new Random(SEED);
    List<Contact> points = new ArrayList<>();
    for (int j = 0; j < contacts; j++) {
      double spacing = (0.96 - 0.15) * LENGTH / contacts;
      double at = 0.96 * LENGTH - (j + 0.2 * random.nextDouble()) * spacing;
      Contact point = Contact.of(id(j % stems.size()), metres(at), new FrictionRing(0.2));
      points.add(slingMetres > 0 ? point.withSling(metres(slingMetres)) : point);
    }
    return Plan.builder()
        .title("benchmark")
        .stems(stems)
        .piece(Piece.of(kilograms(95)))
        .arrangements(
            List.of(
                Arrangement.builder("only")
                    .motion(Motion.LOWERING)
                    .contacts(points)
                    .tail(Tail.Device.of(id(0), metres(0.8), 0.18, 2))
                    .build()))
        .build();
  }

  private static String id(int stem) {
    return "stem " + stem;
  }

  private static Stem stem(int index, boolean hasStrength) {
    List<StemShape.Station> stations = new ArrayList<>();
    List<Diameters.Entry> diameters = new ArrayList<>();
    for (int i = 0; i < LEAN.length; i++) {
      Heading heading = Heading.of(degrees(LEAN[i]), degrees(10 * index));
      stations.add(StemShape.Station.of(metres(LEAN_AT[i]), heading));
      diameters.add(Diameters.Entry.of(metres(LEAN_AT[i]), metres(DIAMETER[i])));
    }
    WoodProperties.Builder wood =
        WoodProperties.builder()
            .modulusOfElasticity(gigapascals(8))
            .density(kilogramsPerCubicMetre(990));
    if (hasStrength) {
      wood.compressionStrength(megapascals(16));
    }
    return Stem.builder(id(index))
        .base(Vector.ofSi(Kind.LENGTH, 0, 4.0 * index, 0))
        .shape(StemShape.ByStations.of(stations))
        .diameters(Diameters.of(diameters))
        .wood(wood.build())
        .root(Root.Turning.of(newtonMetresPerRadian(0.8e6)))
        .build();
  }
}
