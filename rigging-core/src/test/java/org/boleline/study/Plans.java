package org.boleline.study;

import static org.boleline.units.Amounts.degrees;
import static org.boleline.units.Amounts.gigapascals;
import static org.boleline.units.Amounts.kilograms;
import static org.boleline.units.Amounts.kilogramsPerCubicMetre;
import static org.boleline.units.Amounts.kilonewtons;
import static org.boleline.units.Amounts.megapascals;
import static org.boleline.units.Amounts.metres;
import static org.boleline.units.Amounts.newtons;
import static org.boleline.units.Amounts.seconds;

import java.util.List;
import org.boleline.geometry.Heading;
import org.boleline.geometry.Vector;
import org.boleline.plan.Arrangement;
import org.boleline.plan.AskedFactor;
import org.boleline.plan.Contact;
import org.boleline.plan.DropSpec;
import org.boleline.plan.Limits;
import org.boleline.plan.PartLimit;
import org.boleline.plan.Piece;
import org.boleline.plan.Plan;
import org.boleline.plan.Tail;
import org.boleline.rope.FrictionRing;
import org.boleline.rope.Motion;
import org.boleline.rope.Rope;
import org.boleline.rope.StretchPoint;
import org.boleline.stem.Diameters;
import org.boleline.stem.Mark;
import org.boleline.stem.Stem;
import org.boleline.stem.StemShape;
import org.boleline.units.Kind;
import org.boleline.wood.WoodProperties;

/** Invented plans for the tests of studies. */
final class Plans {
  static final double G = 9.80665;
  static final String RIGID = "rigid";

  private Plans() {}

  /** A leaning stem of the trade's usual size that bends, with three ways to rig it. */
  static Plan bending() {
    Stem stem =
        Stem.builder("stem")
            .shape(StemShape.Straight.of(Heading.of(degrees(20), degrees(0)), metres(12)))
            .diameters(Diameters.tapering(metres(12), metres(0.40), metres(0.15)))
            .wood(
                WoodProperties.builder()
                    .modulusOfElasticity(gigapascals(8))
                    .density(kilogramsPerCubicMetre(900))
                    .bendingStrength(megapascals(45))
                    .build())
            .marks(List.of(Mark.of("pole", metres(6))))
            .build();
    Contact top = Contact.of("stem", metres(11), new FrictionRing(0.2));
    Contact mid = Contact.of("stem", metres(6), new FrictionRing(0.2));
    return Plan.builder()
        .stems(List.of(stem))
        .piece(Piece.of(kilograms(100)))
        .arrangements(
            List.of(
                Arrangement.builder("away")
                    .motion(Motion.LOWERING)
                    .contacts(List.of(top))
                    .tail(Tail.Point.of(Vector.of(metres(-6), metres(0), metres(0))))
                    .build(),
                Arrangement.builder("device")
                    .motion(Motion.LOWERING)
                    .contacts(List.of(top))
                    .tail(Tail.Device.of("stem", metres(1), 0.2, 1.5))
                    .build(),
                Arrangement.builder("two points")
                    .motion(Motion.RAISING)
                    .contacts(List.of(top, mid))
                    .tail(Tail.Device.of("stem", metres(1), 0.2, 1.5))
                    .build()))
        .build();
  }

  /**
   * A plumb spar, weightless and all but rigid: up to a ring at 10 m, 0.3 m off the axis, and
   * straight back down to a device at the foot, also 0.3 m off.
   */
  static Plan rigid() {
    Stem spar =
        Stem.builder("spar")
            .shape(StemShape.Straight.of(Heading.of(degrees(0), degrees(0)), metres(12)))
            .diameters(Diameters.tapering(metres(12), metres(1), metres(1)))
            .wood(WoodProperties.of(gigapascals(9000), kilogramsPerCubicMetre(1)))
            .ownWeight(false)
            .build();
    return Plan.builder()
        .stems(List.of(spar))
        .piece(Piece.of(kilograms(100)))
        .rope(
            Rope.UNSTATED
                .withMinimumBreakingStrength(kilonewtons(50))
                .withStretch(List.of(StretchPoint.of(kilonewtons(10), 0.05))))
        .arrangements(
            List.of(
                Arrangement.builder(RIGID)
                    .motion(Motion.LOWERING)
                    .contacts(
                        List.of(
                            Contact.of("spar", metres(10), new FrictionRing(0.2))
                                .withOffset(metres(0.3))))
                    .tail(Tail.Device.of("spar", metres(1), 0.2, 1.5).withOffset(metres(0.3)))
                    .drop(DropSpec.of(metres(1), DropSpec.ByHand.of(newtons(200), seconds(0))))
                    .build()))
        .build();
  }

  /**
   * The same with limits of the rope at the piece and of the hand, checked in slow motion; a factor
   * of 10 is asked of the rope.
   */
  static Plan limited() {
    return rigid().toBuilder()
        .limits(
            Limits.of(newtons(400), List.of(AskedFactor.of("rope", 10, "an invented rule")))
                .withParts(
                    List.of(
                        PartLimit.builder(PartLimit.Part.ROPE, "rope at the piece")
                            .place("piece")
                            .demand(PartLimit.Demand.STATIC)
                            .build())))
        .build();
  }

  static Figure of(double si, Kind<?> kind) {
    return Figure.of(si, kind);
  }
}
