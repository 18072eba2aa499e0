package org.boleline.documentation;

import static java.util.Locale.ROOT;
import static org.boleline.units.Amounts.degrees;
import static org.boleline.units.Amounts.gigapascals;
import static org.boleline.units.Amounts.kilograms;
import static org.boleline.units.Amounts.kilogramsPerCubicMetre;
import static org.boleline.units.Amounts.megapascals;
import static org.boleline.units.Amounts.metres;
import static org.boleline.units.Amounts.newtonMetresPerRadian;

import java.io.PrintStream;
import java.util.List;
import javax.measure.Quantity;
import javax.measure.Unit;
import org.boleline.explain.Caution;
import org.boleline.explain.Datum;
import org.boleline.geometry.Heading;
import org.boleline.plan.Arrangement;
import org.boleline.plan.Contact;
import org.boleline.plan.Piece;
import org.boleline.plan.Plan;
import org.boleline.plan.Tail;
import org.boleline.rope.FrictionRing;
import org.boleline.rope.Motion;
import org.boleline.rope.Sheave;
import org.boleline.statics.ArrangementResult;
import org.boleline.statics.ContactResult;
import org.boleline.statics.Reaction;
import org.boleline.statics.Share;
import org.boleline.statics.Solution;
import org.boleline.statics.Statics;
import org.boleline.statics.StemResult;
import org.boleline.stem.Diameters;
import org.boleline.stem.Mark;
import org.boleline.stem.Root;
import org.boleline.stem.Stem;
import org.boleline.stem.StemShape.ByStations;
import org.boleline.stem.StemShape.Station;
import org.boleline.units.Units;
import org.boleline.wood.WoodProperties;

/** The code of docs/learn/01-first-plan.md. */
final class FirstPlan {
  private FirstPlan() {}

  static Stem stem() {
    // region stem
    ByStations shape =
        ByStations.of(
            List.of(
                Station.of(metres(0), Heading.of(degrees(16), degrees(0))),
                Station.of(metres(3), Heading.of(degrees(20), degrees(0))),
                Station.of(metres(6), Heading.of(degrees(27), degrees(0))),
                Station.of(metres(9), Heading.of(degrees(36), degrees(0))),
                Station.of(metres(12), Heading.of(degrees(45), degrees(0)))));
    Diameters diameters =
        Diameters.of(
            List.of(
                Diameters.Entry.of(metres(0), metres(0.36)),
                Diameters.Entry.of(metres(3), metres(0.33)),
                Diameters.Entry.of(metres(6), metres(0.29)),
                Diameters.Entry.of(metres(9), metres(0.24)),
                Diameters.Entry.of(metres(12), metres(0.19))));
    WoodProperties wood =
        WoodProperties.builder()
            .modulusOfElasticity(gigapascals(8.0))
            .density(kilogramsPerCubicMetre(990))
            .compressionStrength(megapascals(16))
            .build();
    Stem hornbeam =
        Stem.builder("hornbeam")
            .shape(shape)
            .diameters(diameters)
            .wood(wood)
            .root(Root.Turning.of(newtonMetresPerRadian(0.8e6)))
            .marks(List.of(Mark.of("outer point", metres(11.6))))
            .build();
    // endregion
    return hornbeam;
  }

  static Plan plan() {
    Stem hornbeam = stem();
    // region arrangement
    Contact sheave = Contact.of("hornbeam", metres(11.6), new Sheave(0.95)).withSling(metres(0.20));
    Arrangement straightDown =
        Arrangement.builder("one sheave, tail straight down")
            .motion(Motion.LOWERING)
            .contacts(List.of(sheave))
            .tail(Tail.Down.DOWN)
            .build();
    // endregion
    // region plan
    Plan plan =
        Plan.builder()
            .title("Hornbeam over a glasshouse: first plan")
            .stems(List.of(hornbeam))
            .piece(Piece.of(kilograms(95)))
            .arrangements(List.of(straightDown))
            .build();
    // endregion
    return plan;
  }

  static Solution solution() {
    Plan plan = plan();
    // region solve
    ArrangementResult result = Statics.analyse(plan).arrangements().get(0);
    Solution solution = result.solution().orElseThrow();
    // endregion
    return solution;
  }

  // region in
  static <Q extends Quantity<Q>> double in(Unit<Q> unit, Quantity<Q> quantity) {
    return quantity.to(unit).getValue().doubleValue();
  }

  // endregion

  static void rope(PrintStream out) {
    Solution solution = solution();
    // region rope
    ContactResult point = solution.contacts().get(0);
    out.printf(ROOT, "load leg         %6.0f N%n", in(Units.NEWTON, point.tensionIn()));
    out.printf(ROOT, "tail             %6.0f N%n", in(Units.NEWTON, solution.tailTension()));
    out.printf(ROOT, "turn             %6.1f deg%n", in(Units.DEGREE, point.turn().angle()));
    out.printf(ROOT, "force on point   %6.0f N%n", in(Units.NEWTON, point.forceMagnitude()));
    out.printf(ROOT, "  along stem     %6.0f N%n", in(Units.NEWTON, point.along()));
    out.printf(ROOT, "  across stem    %6.0f N%n", in(Units.NEWTON, point.across()));
    // endregion
  }

  static void stemResult(PrintStream out) {
    Solution solution = solution();
    // region stem-result
    StemResult stem = solution.stem("hornbeam").orElseThrow();
    Reaction base = stem.base();
    out.printf(ROOT, "base moment      %6.2f kN.m%n", kNm(base));
    out.printf(ROOT, "  from the rig   %6.2f kN.m%n", kNm(stem.riggingBase()));
    out.printf(
        ROOT,
        "outer point      %6.3f m moved%n",
        in(Units.METRE, stem.marks().get(0).movement().magnitude()));
    out.printf(
        ROOT,
        "compression      %6.2f MPa at %.2f m%n",
        in(Units.MEGAPASCAL, stem.compressionStress().value()),
        in(Units.METRE, stem.compressionStress().at()));
    out.printf(
        ROOT,
        "strength reached %6.2f times the rig load%n",
        stem.strengthReach().orElseThrow().loadFactor());
    // endregion
  }

  static double kNm(Reaction reaction) {
    return in(Units.KILONEWTON_METRE, reaction.momentMagnitude());
  }

  static void shares(PrintStream out) {
    StemResult stem = solution().stem("hornbeam").orElseThrow();
    // region shares
    for (Share share : stem.shares()) {
      out.printf(
          ROOT,
          "%-10s %6.2f kN.m%n",
          share.origin(),
          in(Units.KILONEWTON_METRE, share.moment().magnitude()));
    }
    // endregion
  }

  static Plan comparison() {
    Plan plan = plan();
    Arrangement straightDown = plan.arrangements().get(0);
    // region comparison
    Tail device = Tail.Device.of("hornbeam", metres(0.8), 0.18, 2);
    Arrangement atTheBase =
        straightDown.toBuilder().id("one sheave, device at the base").tail(device).build();
    Arrangement threeRings =
        atTheBase.toBuilder()
            .id("three rings, device at the base")
            .contacts(List.of(ring(11.6), ring(8.0), ring(4.5)))
            .build();
    Plan comparison =
        plan.toBuilder().arrangements(List.of(straightDown, atTheBase, threeRings)).build();
    // endregion
    return comparison;
  }

  // region ring
  static Contact ring(double at) {
    return Contact.of("hornbeam", metres(at), new FrictionRing(0.25)).withSling(metres(0.20));
  }

  // endregion

  static void compared(PrintStream out) {
    Plan comparison = comparison();
    // region compare
    for (ArrangementResult result : Statics.analyse(comparison).arrangements()) {
      Solution found = result.solution().orElseThrow();
      StemResult stem = found.stem("hornbeam").orElseThrow();
      out.printf(
          ROOT,
          "%-32s tail %4.0f N  base %5.2f kN.m  point moves %.3f m%n",
          found.id(),
          in(Units.NEWTON, found.tailTension()),
          kNm(stem.base()),
          in(Units.METRE, stem.marks().get(0).movement().magnitude()));
    }
    // endregion
  }

  static void taken(PrintStream out) {
    Plan plan = plan();
    // region taken
    for (Datum datum : plan.taken()) {
      out.printf(ROOT, "%s = %s (%s)%n", datum.name(), datum.value(), datum.source().id());
    }
    // endregion
  }

  static void cautions(PrintStream out) {
    Solution solution = solution();
    // region cautions
    for (Caution caution : solution.cautions()) {
      out.printf(ROOT, "%s %s%n", caution.code(), caution.place());
      out.printf(ROOT, "  %s%n", caution.sentence());
    }
    // endregion
  }
}
