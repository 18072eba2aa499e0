package org.boleline.statics;

import static org.boleline.units.Amounts.kilograms;
import static org.boleline.units.Amounts.metres;
import static org.boleline.units.Amounts.newtonMetresPerRadian;
import static org.boleline.units.Amounts.radians;

import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.Provide;
import net.jqwik.api.domains.DomainContextBase;
import org.boleline.geometry.Heading;
import org.boleline.plan.Arrangement;
import org.boleline.plan.Contact;
import org.boleline.plan.Plan;
import org.boleline.rope.Hardware;
import org.boleline.rope.Motion;
import org.boleline.stem.Diameters;
import org.boleline.stem.PointMass;
import org.boleline.stem.Root;
import org.boleline.stem.ShapeIs;
import org.boleline.stem.Stem;
import org.boleline.stem.StemShape;

/**
 * A leaning stem that bends in space and a rope over points along it, as numbers without dimension.
 *
 * @param lean lean at the base, rad
 * @param bend how much the lean grows to the tip, rad
 * @param swing how much the azimuth grows to the tip, rad
 * @param slenderness length over diameter at the base
 * @param taper diameter at the tip over that at the base
 * @param points stations of the points over the length, falling
 * @param load weight of the piece over (E I at the base / length squared)
 * @param side where the tail ends: beside the base, over the length
 */
record LeaningRig(
    double lean,
    double bend,
    double swing,
    double slenderness,
    double taper,
    List<Double> points,
    double load,
    double side) {
  static final double LENGTH = 12;
  static final double MODULUS = 9e9;
  static final double DENSITY = 950;

  /**
   * What a property changes: factors of all lengths, of the load, of the moduli, of the density; a
   * turn about the vertical; left and right exchanged.
   */
  record Change(
      double lengths, double load, double moduli, double density, double turn, boolean mirrored) {
    static final Change NONE = new Change(1, 1, 1, 1, 0, false);

    /** The azimuth of a direction after mirror and turn. */
    double azimuth(double azimuth) {
      return turn + (mirrored ? -azimuth : azimuth);
    }

    /** A vector after mirror and turn, without any factor. */
    double[] moved(double... v) {
      return Plain.turned(turn, new double[] {v[0], mirrored ? -v[1] : v[1], v[2]});
    }
  }

  double base() {
    return LENGTH / slenderness;
  }

  double weight() {
    return load * MODULUS * Rigs.roundSecondMoment(base()) / LENGTH / LENGTH;
  }

  double[] stations() {
    return points.stream().mapToDouble(x -> x * LENGTH).toArray();
  }

  /** The stem, stress-free, with own weight and a clamped root. */
  Stem.Builder stem() {
    return stem(Change.NONE);
  }

  Stem.Builder stem(Change change) {
    double length = change.lengths * LENGTH;
    List<StemShape.Station> stations = new ArrayList<>();
    for (double x : new double[] {0, 0.4, 1}) {
      stations.add(
          StemShape.Station.of(
              metres(x * length),
              Heading.of(radians(lean + bend * x), radians(change.azimuth(swing * x)))));
    }
    double base = change.lengths * base();
    return Stem.builder("stem")
        .shape(StemShape.ByStations.of(stations))
        .shapeIs(ShapeIs.STRESS_FREE)
        .diameters(Diameters.tapering(metres(length), metres(base), metres(taper * base)))
        .wood(Rigs.wood(change.moduli * MODULUS, change.density * DENSITY));
  }

  /** The points with one hardware, lowering; the tail runs to the base. */
  Arrangement.Builder over(Hardware hardware) {
    return Rigs.through(hardware, stations());
  }

  /** The points with one hardware, lowering; the tail runs to the ground beside the base. */
  Arrangement.Builder aside(Hardware hardware) {
    return over(hardware).tail(Rigs.point(0, side * LENGTH, 0));
  }

  Plan plan(Arrangement.Builder arrangement) {
    return Rigs.plan(stem(), arrangement, weight());
  }

  Solution solution(Arrangement.Builder arrangement) {
    return Rigs.sound(stem(), arrangement, weight());
  }

  /**
   * A plan with all that has a direction or a dimension: slings, offsets, a mass, a root that
   * turns, a tail aside.
   */
  Plan changed(Change change, Hardware hardware, Motion motion) {
    double length = change.lengths * LENGTH;
    Stem.Builder stem =
        stem(change)
            .root(
                Root.Turning.of(
                    newtonMetresPerRadian(
                        30
                            * MODULUS
                            * Rigs.roundSecondMoment(base())
                            / LENGTH
                            * change.moduli
                            * Math.pow(change.lengths, 3))))
            .masses(
                List.of(
                    PointMass.of(
                        metres(0.9 * length),
                        kilograms(15 * change.density * Math.pow(change.lengths, 3)))));
    List<Contact> contacts = new ArrayList<>();
    for (double x : points) {
      contacts.add(
          Contact.of("stem", metres(x * length), hardware)
              .withOffset(metres(0.5 * change.lengths * base()))
              .withSling(metres(contacts.isEmpty() ? 0.02 * length : 0)));
    }
    double[] end = change.moved(-0.1 * length, side * length, 0);
    return Rigs.plan(
        stem,
        Arrangement.builder("only")
            .motion(motion)
            .contacts(contacts)
            .tail(Rigs.point(end[0], end[1], end[2])),
        change.load * weight());
  }

  /** Leaning rigs that keep ample stiffness. */
  static final class Domain extends DomainContextBase {
    @Provide
    Arbitrary<LeaningRig> rigs() {
      Arbitrary<List<Double>> points =
          Combinators.combine(
                  Arbitraries.integers().between(14, 20),
                  Arbitraries.integers().between(4, 13).set().ofMaxSize(4))
              .as(
                  (first, others) -> {
                    List<Double> shares = new ArrayList<>();
                    shares.add(first / 20.0);
                    others.stream()
                        .sorted(java.util.Comparator.reverseOrder())
                        .forEach(x -> shares.add(x / 20.0));
                    return List.copyOf(shares);
                  });
      return Combinators.combine(
              Arbitraries.doubles().between(0.1, 0.8),
              Arbitraries.doubles().between(-0.05, 0.3),
              Arbitraries.doubles().between(-0.5, 0.5),
              Arbitraries.doubles().between(25, 50),
              Arbitraries.doubles().between(0.4, 1),
              points,
              Arbitraries.doubles().between(0.01, 0.4),
              Arbitraries.doubles().between(-0.8, 0.8))
          .as(LeaningRig::new);
    }
  }
}
