package org.boleline.statics;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.Force;
import org.boleline.explain.Caution;
import org.boleline.explain.CautionCode;
import org.boleline.explain.Datum;
import org.boleline.explain.Source;
import org.boleline.plan.Arrangement;
import org.boleline.plan.Limits;
import org.boleline.plan.Plan;
import org.boleline.plan.Tail;
import org.boleline.rope.Motion;
import org.boleline.rope.Rope;
import org.boleline.rope.Wraps;
import org.boleline.stem.Stem;
import org.boleline.units.Kind;
import org.boleline.units.LinearDensity;
import org.boleline.units.QuantityText;
import org.boleline.units.Si;

/** Finds what is to be read with care in a plan and its solutions. */
final class Cautions {
  /** A stem whose tip moves by more than this share of its length is worth a second look. */
  private static final double LARGE_MOVEMENT = 0.1;

  /** Below this stiffness ratio small errors of the inputs weigh much. */
  private static final double LOW_STIFFNESS = 0.3;

  /** A tail nearer than this to the plumb line of the load is under the load, m. */
  private static final double UNDER_LOAD = 2;

  /** A leg that weighs more than this share of its tension sags visibly. */
  private static final double SAGGING = 0.2;

  /** A hand leg above this share of the load is worth a word. */
  private static final double HAND_LEG = 0.05;

  private Cautions() {}

  static List<Caution> ofPlan(Plan plan) {
    List<Caution> found = new ArrayList<>();
    found.add(new Caution(CautionCode.SLOW_AND_STEADY, "", Map.of()));
    for (int i = 0; i < plan.arrangements().size(); i++) {
      if (plan.arrangements().get(i).drop().isPresent()) {
        found.add(
            new Caution(
                CautionCode.DROP_NOT_ANALYSED,
                "/arrangements/" + i + "/drop",
                Map.of("why", "this analysis is of slow motion only")));
      }
    }
    plan.limits()
        .filter(limits -> !limits.factors().isEmpty() || !limits.parts().isEmpty())
        .map(limits -> limits.factors().isEmpty() ? "/limits/parts" : "/limits/factors")
        .ifPresent(
            place -> found.add(new Caution(CautionCode.LIMITS_NOT_CHECKED, place, Map.of())));
    for (Datum datum : plan.taken()) {
      if (datum.source().reading() == Source.Reading.FROM_MEMORY) {
        found.add(
            new Caution(
                CautionCode.DATUM_FROM_MEMORY,
                datum.name(),
                Map.of("name", datum.name(), "value", datum.value())));
      }
    }
    for (int i = 0; i < plan.stems().size(); i++) {
      Stem stem = plan.stems().get(i);
      String place = "/stems/" + i + "/wood";
      if (stem.wood().compressionStrength().isEmpty() && stem.wood().bendingStrength().isEmpty()) {
        found.add(new Caution(CautionCode.NO_STRENGTH, place, Map.of("stem", stem.id())));
      }
      boolean fromData =
          stem.taken().stream().anyMatch(datum -> datum.source().reading() == Source.Reading.READ);
      if (fromData) {
        found.add(new Caution(CautionCode.CLEAR_WOOD_DATA, place, Map.of("stem", stem.id())));
      }
    }
    return found;
  }

  static Caution held(int arrangement) {
    return new Caution(
        CautionCode.HELD_IS_A_RANGE, "/arrangements/" + arrangement + "/motion", Map.of());
  }

  static Caution stabilityBeforeStrength(int arrangement, Stem stem, double factor) {
    return new Caution(
        CautionCode.STABILITY_BEFORE_STRENGTH,
        "/arrangements/" + arrangement,
        Map.of("stem", stem.id(), "factor", rounded(factor)));
  }

  static List<Caution> of(Solution solution, Resolved resolved, int index) {
    List<Caution> found = new ArrayList<>();
    String place = "/arrangements/" + index;
    stiffnessAndMovement(solution, place, found);
    strength(solution, place, found);
    contacts(solution, place, found);
    tailAndHand(solution, place, found);
    ropeWeight(solution, resolved, place, found);
    found.addAll(LegsThroughStems.of(solution, resolved, place));
    return found;
  }

  private static void stiffnessAndMovement(Solution solution, String place, List<Caution> found) {
    if (solution.stiffnessRatio() < LOW_STIFFNESS) {
      found.add(
          new Caution(
              CautionCode.LOW_STIFFNESS,
              place,
              Map.of("ratio", rounded(solution.stiffnessRatio()))));
    }
    for (int i = 0; i < solution.stems().size(); i++) {
      StemResult stem = solution.stems().get(i);
      double movement = Si.value(stem.tipMovement().magnitude(), Kind.LENGTH, "movement");
      double length = Si.value(solution.plan().stems().get(i).length(), Kind.LENGTH, "length");
      if (movement > LARGE_MOVEMENT * length) {
        found.add(
            new Caution(
                CautionCode.LARGE_MOVEMENT,
                place,
                Map.of("stem", stem.id(), "movement", rounded(movement) + " m")));
      }
    }
  }

  private static void strength(Solution solution, String place, List<Caution> found) {
    for (StemResult stem : solution.stems()) {
      stem.strengthReach()
          .filter(reach -> reach.loadFactor() < 1)
          .ifPresent(
              reach ->
                  found.add(
                      new Caution(
                          CautionCode.STRENGTH_REACHED,
                          place,
                          Map.of("stem", stem.id(), "factor", rounded(reach.loadFactor())))));
    }
  }

  private static void contacts(Solution solution, String place, List<Caution> found) {
    Arrangement arrangement = solution.arrangement();
    for (int j = 0; j < solution.contacts().size(); j++) {
      ContactResult contact = solution.contacts().get(j);
      double z = Si.value(contact.position().z(), Kind.LENGTH, "z");
      double baseZ =
          solution.plan().stems().stream()
              .filter(stem -> stem.id().equals(contact.stem()))
              .mapToDouble(stem -> Si.value(stem.base().z(), Kind.LENGTH, "z"))
              .findFirst()
              .orElse(0);
      if (z < baseZ) {
        found.add(
            new Caution(
                CautionCode.BELOW_BASE,
                place + "/contacts/" + j,
                Map.of("contact", Integer.toString(j + 1))));
      }
      found.addAll(
          arrangement
              .contacts()
              .get(j)
              .hardware()
              .step(contact.turn())
              .cautions(place + "/contacts/" + j + "/hardware"));
    }
  }

  private static void tailAndHand(Solution solution, String place, List<Caution> found) {
    Arrangement arrangement = solution.arrangement();
    Tail tail = arrangement.tail();
    if (!solution.contacts().isEmpty() && arrangement.tagline().isEmpty()) {
      underLoad(solution, tail, place, found);
    }
    if (!(tail instanceof Tail.Device device)) {
      return;
    }
    Quantity<Force> hand =
        solution.handTension().orElseThrow(() -> new AssertionError("a device without a hand"));
    double handNewtons = Si.value(hand, Kind.FORCE, "hand");
    double load = Si.value(solution.legs().get(0).tension(), Kind.FORCE, "load");
    boolean throughWraps = solution.motion() == Motion.RAISING && device.wraps() > 0;
    if (handNewtons > HAND_LEG * load && !throughWraps) {
      found.add(
          new Caution(
              CautionCode.HAND_LEG_LEFT_OUT,
              place + "/tail",
              Map.of("stem", device.stem(), "hand", force(handNewtons))));
    }
    if (solution.motion() == Motion.RAISING) {
      if (throughWraps) {
        found.add(
            new Caution(
                CautionCode.RAISING_THROUGH_WRAPS,
                place + "/tail",
                Map.of("wraps", QuantityText.number(device.wraps()), "hand", force(handNewtons))));
      }
      return;
    }
    solution
        .plan()
        .limits()
        .flatMap(Limits::handForce)
        .ifPresent(
            stated -> {
              double limit = Si.value(stated, Kind.FORCE, "hand force");
              if (handNewtons > limit) {
                found.add(
                    new Caution(
                        CautionCode.HOLD_ABOVE_HAND_FORCE,
                        place + "/tail/device",
                        Map.of(
                            "needed", force(handNewtons),
                            "stated", force(limit),
                            "wraps", wraps(solution, stated, device.friction()))));
              }
            });
  }

  private static void ropeWeight(
      Solution solution, Resolved resolved, String place, List<Caution> found) {
    Optional<Quantity<LinearDensity>> density = solution.plan().rope().flatMap(Rope::linearDensity);
    if (density.isEmpty()) {
      return;
    }
    double length = 0;
    for (Leg leg : solution.legs()) {
      double weighed = Si.value(leg.weight(), Kind.FORCE, "weight");
      double least =
          Math.min(
              Si.value(leg.tension(), Kind.FORCE, "tension"),
              Si.value(leg.tensionAtEnd(), Kind.FORCE, "tension"));
      if (weighed > SAGGING * least) {
        found.add(
            new Caution(
                CautionCode.ROPE_SAGS,
                place,
                Map.of(
                    "from",
                    leg.from(),
                    "to",
                    leg.to(),
                    "weight",
                    force(weighed),
                    "tension",
                    force(least))));
      }
      if (weighed == 0 && leg.begin().isPresent() && leg.end().isPresent()) {
        double[] a = leg.begin().get().in(Kind.LENGTH);
        double[] b = leg.end().get().in(Kind.LENGTH);
        length += Math.hypot(Math.hypot(b[0] - a[0], b[1] - a[1]), b[2] - a[2]);
      }
    }
    double perLength = Si.value(density.get(), Kind.LINEAR_DENSITY, "linear density");
    double weight = resolved.gravity * perLength * length;
    if (weight > 0) {
      found.add(
          new Caution(
              CautionCode.ROPE_WEIGHT_LEFT_OUT,
              place,
              Map.of(
                  "weight",
                  force(weight),
                  "share",
                  rounded(100 * weight / resolved.pieceWeight) + " %")));
    }
  }

  private static String wraps(Solution solution, Quantity<Force> hand, double friction) {
    if (friction == 0) {
      return "no number of";
    }
    return QuantityText.number(
        Wraps.needed(solution.tailTension(), hand, friction).nextHalfWraps());
  }

  private static void underLoad(Solution solution, Tail tail, String place, List<Caution> found) {
    ContactResult first =
        solution.contacts().stream()
            .filter(ContactResult::bears)
            .findFirst()
            .orElse(solution.contacts().get(0));
    double[] load = first.position().in(Kind.LENGTH);
    double[] ground;
    if (tail instanceof Tail.Point point) {
      ground = point.position().in(Kind.LENGTH);
    } else if (tail instanceof Tail.Down) {
      ContactResult last = first;
      for (ContactResult contact : solution.contacts()) {
        last = contact.bears() ? contact : last;
      }
      ground = last.position().in(Kind.LENGTH);
    } else {
      return;
    }
    double distance = Math.hypot(ground[0] - load[0], ground[1] - load[1]);
    if (distance < UNDER_LOAD) {
      found.add(
          new Caution(
              CautionCode.TAIL_UNDER_LOAD,
              place + "/tail",
              Map.of("distance", rounded(distance) + " m")));
    }
  }

  private static String force(double newtons) {
    return rounded(newtons) + " N";
  }

  /** Three figures, for sentences. */
  static String rounded(double value) {
    return QuantityText.number(value, 3);
  }
}
