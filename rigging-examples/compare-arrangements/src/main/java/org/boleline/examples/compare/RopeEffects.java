package org.boleline.examples.compare;

import static org.boleline.examples.compare.Pair.differ;
import static org.boleline.examples.compare.Pair.insteadOf;
import static org.boleline.examples.compare.Pair.newtons;

import java.util.ArrayList;
import java.util.List;
import org.boleline.rope.Motion;
import org.boleline.statics.ContactResult;
import org.boleline.statics.Solution;
import org.boleline.units.Kind;
import org.boleline.units.Si;

/** What a change does to tensions, traced through friction: at every point and on the wraps. */
final class RopeEffects {
  private final Pair pair;
  private final Solution from;
  private final Solution to;
  private final UnitSystem units;

  RopeEffects(Pair pair) {
    this.pair = pair;
    from = pair.from();
    to = pair.to();
    units = pair.units();
  }

  void addTo(List<Effect> effects) {
    effects.add(tail());
    hand(effects);
    held(effects);
    slack(effects);
  }

  static double load(Solution state) {
    return newtons(state.legs().get(0).tension());
  }

  /** What friction at all points multiplies the load's tension by. */
  private static double passed(Solution state) {
    return factors(state).stream().reduce(1.0, (a, b) -> a * b);
  }

  /** What friction at each point that bears multiplies tension by. */
  private static List<Double> factors(Solution state) {
    return state.contacts().stream()
        .filter(ContactResult::bears)
        .map(contact -> newtons(contact.tensionOut()) / newtons(contact.tensionIn()))
        .toList();
  }

  /** The part of the tail's tension that the weight of the rope makes. */
  private static double ofRope(Solution state) {
    boolean weighed = state.legs().stream().anyMatch(leg -> newtons(leg.weight()) > 0);
    return weighed ? newtons(state.tailTension()) - load(state) * passed(state) : 0;
  }

  private Effect tail() {
    double a = newtons(from.tailTension());
    double b = newtons(to.tailTension());
    List<String> causes = new ArrayList<>();
    if (differ(passed(from), passed(to))) {
      causes.add(
          "friction at the points multiplies the load's tension by "
              + frictions(to)
              + " instead of "
              + frictions(from)
              + why());
    }
    if (differ(ofRope(from), ofRope(to))) {
      causes.add(ropeWeight(ofRope(from), ofRope(to)));
    }
    if (differ(load(from), load(to))) {
      causes.add("the load leg itself carries " + insteadOf(units::force, load(from), load(to)));
    }
    return new Effect(
        Effect.difference(a, b),
        "the tail carries "
            + insteadOf(units::force, a, b)
            + hands()
            + (causes.isEmpty() ? "" : ", because " + Wording.join(causes)));
  }

  /** Says what the weight of the rope does to the tail. */
  private String ropeWeight(double a, double b) {
    if (a != 0 && b != 0) {
      return "the weight of the rope makes " + insteadOf(units::force, a, b) + " of it";
    }
    double part = a == 0 ? b : a;
    return "the weight of the rope "
        + (b == 0 ? "no longer " : "")
        + (part < 0 ? "takes " : "adds ")
        + units.oneForce(Math.abs(part))
        + (part < 0 ? " off it" : " to it");
  }

  /** What the hands hold, in brackets, where that follows the tail. */
  private String hands() {
    if (from.handTension().isEmpty() || to.handTension().isEmpty()) {
      return "";
    }
    double a = newtons(from.handTension().get());
    double b = newtons(to.handTension().get());
    return wrapsDiffer() || !differ(a, b)
        ? ""
        : " (the hand " + insteadOf(units::force, a, b) + ")";
  }

  /** The product of the tension ratios, and its factors if there are several. */
  private static String frictions(Solution state) {
    List<String> factors = factors(state).stream().map(x -> Figures.fixed(x, 3)).toList();
    String product = Figures.fixed(passed(state), 3);
    return factors.size() > 1 ? product + " (" + String.join(" × ", factors) + ")" : product;
  }

  /** Why the product of frictions changes, where the difference of the plans does not say so. */
  private String why() {
    if (from.motion() != to.motion()) {
      return to.motion() == Motion.RAISING
          ? ", as in raising it adds to the load and no longer carries part of it"
          : ", as in lowering it carries part of the load and no longer adds to it";
    }
    double a = turns(from);
    double b = turns(to);
    return pair.difference().hasSameHardware() && differ(a, b)
        ? ", as the rope turns by " + Pair.degrees(b) + " in all instead of " + Pair.degrees(a)
        : "";
  }

  private static double turns(Solution state) {
    return state.contacts().stream().mapToDouble(RopeEffects::turn).sum();
  }

  /** The turn at a contact, in degrees. */
  static double turn(ContactResult contact) {
    return Math.toDegrees(Si.value(contact.turn().angle(), Kind.ANGLE, "turn"));
  }

  private static double passedByWraps(Solution state) {
    return newtons(state.handTension().orElseThrow()) / newtons(state.tailTension());
  }

  private boolean wrapsDiffer() {
    return differ(passedByWraps(from), passedByWraps(to));
  }

  /** What the wraps do to the tail's tension. */
  private static String wraps(Solution state) {
    double passed = passedByWraps(state);
    if (!differ(passed, 1)) {
      return "no wraps";
    }
    return passed < 1
        ? "wraps that divide the tail's tension by " + Figures.three(1 / passed)
        : "wraps that multiply the tail's tension by " + Figures.three(passed);
  }

  private void hand(List<Effect> effects) {
    if (to.handTension().isEmpty()) {
      return;
    }
    double b = newtons(to.handTension().get());
    if (from.handTension().isEmpty()) {
      effects.add(
          new Effect(
              Effect.WORTH_A_WORD, "the hand holds " + units.oneForce(b) + ", with " + wraps(to)));
    } else if (wrapsDiffer()) {
      double a = newtons(from.handTension().get());
      effects.add(
          new Effect(
              Effect.difference(a, b),
              "the hand holds "
                  + insteadOf(units::force, a, b)
                  + ", with "
                  + wraps(to)
                  + " instead of "
                  + wraps(from)));
    }
  }

  private void held(List<Effect> effects) {
    boolean before = pair.first().otherEnd().isPresent();
    boolean after = pair.second().otherEnd().isPresent();
    if (before == after) {
      return;
    }
    Solution held = before ? pair.first() : pair.second();
    effects.add(
        new Effect(
            1,
            "at rest the tail may carry anything from "
                + units.oneForce(newtons(held.tailTension()))
                + " to "
                + units.oneForce(newtons(held.otherEnd().orElseThrow().tailTension()))
                + ", as friction may act either way (compared here: about to "
                + (to.motion() == Motion.LOWERING ? "run" : "rise")
                + ")"));
  }

  private void slack(List<Effect> effects) {
    List<String> places = new ArrayList<>();
    for (int j = 0; j < to.contacts().size(); j++) {
      ContactResult contact = to.contacts().get(j);
      if (!contact.bears() && pair.difference().boreBefore(j, from)) {
        places.add(pair.wording().place(contact.stem(), contact.at()));
      }
    }
    if (!places.isEmpty()) {
      boolean several = places.size() > 1;
      effects.add(
          new Effect(
              1,
              (several ? "the slings at " : "the sling at ")
                  + Wording.join(places)
                  + (several ? " hang slack" : " hangs slack")
                  + ", because the rope passes within reach"));
    }
  }
}
