package org.boleline.statics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.boleline.units.Amounts.kilograms;
import static org.boleline.units.Amounts.kilogramsPerCubicMetre;
import static org.boleline.units.Amounts.metres;
import static org.boleline.units.Amounts.pascals;
import static org.boleline.units.Amounts.radians;

import java.util.List;
import javax.measure.Quantity;
import javax.measure.quantity.Force;
import org.boleline.Tolerances;
import org.boleline.geometry.Heading;
import org.boleline.geometry.Vector;
import org.boleline.plan.Arrangement;
import org.boleline.plan.Contact;
import org.boleline.plan.Piece;
import org.boleline.plan.Plan;
import org.boleline.plan.Tail;
import org.boleline.rope.Hardware;
import org.boleline.rope.Ideal;
import org.boleline.rope.Motion;
import org.boleline.stem.Diameters;
import org.boleline.stem.ShapeIs;
import org.boleline.stem.Stem;
import org.boleline.stem.StemShape;
import org.boleline.units.Kind;
import org.boleline.units.Si;
import org.boleline.wood.WoodProperties;

/** Plans for tests, made of few numbers. */
final class Rigs {
  static final double GRAVITY = 9.80665;

  private Rigs() {}

  /** Wood with a modulus and a density. */
  static WoodProperties wood(double modulus, double density) {
    return WoodProperties.of(pascals(modulus), kilogramsPerCubicMetre(density));
  }

  /** A straight stress-free stem. */
  static Stem.Builder straight(
      double length, double lean, double azimuth, double base, double tip, WoodProperties wood) {
    return Stem.builder("stem")
        .shape(StemShape.Straight.of(Heading.of(radians(lean), radians(azimuth)), metres(length)))
        .shapeIs(ShapeIs.STRESS_FREE)
        .diameters(
            Diameters.of(
                List.of(
                    Diameters.Entry.of(metres(0), metres(base)),
                    Diameters.Entry.of(metres(length), metres(tip)))))
        .wood(wood);
  }

  /** An arrangement with contacts of one hardware. */
  static Arrangement.Builder through(Hardware hardware, double... stations) {
    List<Contact> contacts =
        java.util.Arrays.stream(stations)
            .mapToObj(at -> Contact.of("stem", metres(at), hardware))
            .toList();
    return Arrangement.builder("only")
        .motion(Motion.LOWERING)
        .contacts(contacts)
        .tail(point(0, 0, 0));
  }

  /** An arrangement with frictionless contacts. */
  static Arrangement.Builder ideal(double... stations) {
    return through(Ideal.INSTANCE, stations);
  }

  static Tail.Point point(double x, double y, double z) {
    return Tail.Point.of(Vector.ofSi(Kind.LENGTH, x, y, z));
  }

  /** A plan of one stem and one arrangement, with a piece of a given weight. */
  static Plan plan(Stem.Builder stem, Arrangement.Builder arrangement, double weight) {
    return Plan.builder()
        .title("test")
        .stems(List.of(stem.build()))
        .piece(Piece.of(kilograms(weight / GRAVITY)))
        .arrangements(List.of(arrangement.build()))
        .build();
  }

  static ArrangementResult result(
      Stem.Builder stem, Arrangement.Builder arrangement, double weight) {
    return Statics.analyse(plan(stem, arrangement, weight)).arrangements().get(0);
  }

  static Solution solution(Stem.Builder stem, Arrangement.Builder arrangement, double weight) {
    return result(stem, arrangement, weight).solution().orElseThrow();
  }

  /** A solution that its own check finds nothing wrong with. */
  static Solution sound(Stem.Builder stem, Arrangement.Builder arrangement, double weight) {
    return sound(plan(stem, arrangement, weight));
  }

  /**
   * The solution of a plan's first arrangement, one that its own check finds nothing wrong with.
   */
  static Solution sound(Plan plan) {
    return sound(Statics.analyse(plan).arrangements().get(0).solution().orElseThrow());
  }

  static Solution sound(Solution solution) {
    assertThat(solution.check()).isEmpty();
    assertThat(solution.residualForceRatio()).isBetween(0.0, Tolerances.RESIDUAL);
    assertThat(solution.residualMomentRatio()).isBetween(0.0, Tolerances.RESIDUAL);
    assertThat(solution.stiffnessRatio()).isPositive();
    solution.otherEnd().ifPresent(Rigs::sound);
    return solution;
  }

  static double newtons(Quantity<Force> force) {
    return Si.value(force, Kind.FORCE, "force");
  }

  static double stress(Extreme stress) {
    return Si.value(stress.value(), Kind.PRESSURE, "stress");
  }

  static double[] tipMovement(Solution solution) {
    return solution.stems().get(0).tipMovement().in(Kind.LENGTH);
  }

  static double[] total(Solution solution) {
    double[] sum = new double[3];
    for (ContactResult contact : solution.contacts()) {
      sum = Plain.plus(sum, contact.force().in(Kind.FORCE));
    }
    return sum;
  }

  static double roundSecondMoment(double diameter) {
    return Math.PI / 64 * Math.pow(diameter, 4);
  }
}
