package org.boleline.examples.compare;

import static org.boleline.examples.compare.Pair.insteadOf;

import java.util.List;
import org.boleline.plan.Tail;
import org.boleline.statics.Share;
import org.boleline.statics.Solution;
import org.boleline.statics.StemResult;
import org.boleline.units.Kind;

/** What a change does to one stem: its base moment, traced through its parts, and its stress. */
final class StemEffects {
  /** A station that moves by less than this, in metres, is the same. */
  private static final double SAME_STATION = 0.05;

  /** Moments that differ by less than this, in degrees, turn the base the same way. */
  private static final double SAME_DIRECTION = 5;

  private final Pair pair;
  private final Solution from;
  private final Solution to;
  private final UnitSystem units;
  private final StemResult first;
  private final StemResult second;

  StemEffects(Pair pair, int stem) {
    this.pair = pair;
    from = pair.from();
    to = pair.to();
    units = pair.units();
    first = from.stems().get(stem);
    second = to.stems().get(stem);
  }

  void addTo(List<Effect> effects) {
    baseMoment(effects);
    stress(effects);
  }

  private String named(String what) {
    return what + pair.wording().ofStem(first.id()) + " ";
  }

  private void baseMoment(List<Effect> effects) {
    // Parts are compared along the greater of both moments; the moments themselves are told whole.
    BaseMoment a = BaseMoment.of(first);
    BaseMoment b = BaseMoment.of(second);
    boolean firstIsGreater = a.total() >= b.total();
    BaseMoment before = firstIsGreater ? a : b.alongside(first);
    BaseMoment after = firstIsGreater ? a.alongside(second) : b;
    double weight = Effect.difference(before.total(), after.total());
    if (weight >= Effect.LEAST) {
      effects.add(
          new Effect(
              weight,
              named("the base moment")
                  + goes(a.total(), b.total(), a.turnTo(second))
                  + cause(before, after)));
    } else if (endsOnTheStem()) {
      // Told all the same: one would expect it to change.
      effects.add(
          new Effect(
              Effect.LEAST,
              named("the base moment")
                  + "stays near "
                  + units.oneMoment(after.total())
                  + ", because the rope ends on the stem itself and so only load × reach and"
                  + " weights turn its base"));
    }
  }

  /** How the whole moment goes from the first to the second, and what follows stands along. */
  private String goes(double before, double after, double turn) {
    if (180 - turn < SAME_DIRECTION) {
      return "turns over from "
          + units.oneMoment(before)
          + " to "
          + units.oneMoment(after)
          + " the other way, because ";
    }
    return Pair.fromTo(units::moment, before, after)
        + (turn < SAME_DIRECTION
            ? ", because "
            : " and turns by " + Pair.degrees(turn) + ", because along the greater of both ");
  }

  private boolean endsOnTheStem() {
    return pair.plan().stems().size() == 1 && holdsTail(from) && holdsTail(to);
  }

  /** Whether the tail closes on this stem. */
  private boolean holdsTail(Solution state) {
    return state.arrangement().tail() instanceof Tail.Device device
        && device.stem().equals(first.id());
  }

  /** The part of the moment that changes most, and what it is made of. */
  private String cause(BaseMoment before, BaseMoment after) {
    Share.Origin most = Share.Origin.LOAD;
    for (Share.Origin origin : Share.Origin.values()) {
      if (Math.abs(after.part(origin) - before.part(origin))
          > Math.abs(after.part(most) - before.part(most))) {
        most = origin;
      }
    }
    return switch (most) {
      case LOAD ->
          product(
              "load × reach",
              most,
              before,
              after,
              "the load no longer hangs on this stem",
              "the load now hangs on this stem");
      case TAIL ->
          product(
              "tail × arm",
              most,
              before,
              after,
              holdsTail(to)
                  ? "the tail now ends on the stem"
                  : "the tail now leaves from another stem",
              holdsTail(from)
                  ? "the tail no longer ends on the stem"
                  : "the tail now leaves from this stem");
      case OTHER_STEMS -> "legs to other stems " + turned(before, after, most);
      case OWN_WEIGHT -> "own weight" + moved(before, after, most);
      case MASSES -> "the weight of the hung masses" + moved(before, after, most);
      case ROPE_WEIGHT -> "the weight of the rope's legs" + moved(before, after, most);
    };
  }

  private String moved(BaseMoment before, BaseMoment after, Share.Origin origin) {
    return " turns it by "
        + insteadOf(units::moment, before.part(origin), after.part(origin))
        + " as the stem moves";
  }

  /** Says how a part turns the base, with words for its sign. */
  private String turned(BaseMoment before, BaseMoment after, Share.Origin origin) {
    double a = before.part(origin);
    double b = after.part(origin);
    if (!after.has(origin)) {
      return "no longer " + verb(a) + units.oneMoment(Math.abs(a));
    }
    if (!before.has(origin)) {
      return "now " + verb(b) + units.oneMoment(Math.abs(b));
    }
    return a * b < 0
        ? verb(b)
            + units.oneMoment(Math.abs(b))
            + " where before they "
            + verb(a)
            + units.oneMoment(Math.abs(a))
        : verb(b) + insteadOf(units::moment, Math.abs(a), Math.abs(b));
  }

  private static String verb(double part) {
    return part < 0 ? "relieve it by " : "load it with ";
  }

  /** A part that is a force times an arm. */
  private String product(
      String name,
      Share.Origin origin,
      BaseMoment before,
      BaseMoment after,
      String whyOut,
      String whyIn) {
    if (!after.has(origin)) {
      return name + ", " + withArm(origin, before, first) + ", drops out: " + whyOut;
    }
    if (!before.has(origin)) {
      return name + ", " + withArm(origin, after, second) + ", comes in: " + whyIn;
    }
    return name
        + " is "
        + withArm(origin, after, second)
        + " instead of "
        + withArm(origin, before, first);
  }

  /** A part, and in brackets the force and the arm that make it. */
  private String withArm(Share.Origin origin, BaseMoment moment, StemResult stem) {
    double part = moment.part(origin);
    double force = force(origin, stem);
    return units.oneMoment(part)
        + (force == 0
            ? ""
            : " (" + units.oneForce(force) + " × " + units.oneLength(part / force) + ")");
  }

  private static double force(Share.Origin origin, StemResult stem) {
    for (Share share : stem.shares()) {
      if (share.origin() == origin) {
        return Triple.size(share.force().in(Kind.FORCE));
      }
    }
    return 0;
  }

  private void stress(List<Effect> effects) {
    FibreStress before = FibreStress.of(first);
    FibreStress after = FibreStress.of(second);
    boolean moved = Math.abs(after.at() - before.at()) > SAME_STATION;
    String text =
        named("the greatest fibre stress")
            + Pair.fromTo(units::stress, before.pascals(), after.pascals())
            + (moved
                ? " and moves from "
                    + units.oneLength(before.at())
                    + " to "
                    + units.oneLength(after.at())
                : " at " + units.oneLength(after.at()));
    double weight = Effect.difference(before.pascals(), after.pascals());
    if (first.strengthReach().isPresent() && second.strengthReach().isPresent()) {
      double a = first.strengthReach().get().loadFactor();
      double b = second.strengthReach().get().loadFactor();
      weight = Math.max(weight, Effect.difference(a, b));
      text +=
          ", so that the strength is reached at "
              + Figures.three(b)
              + " times this load instead of "
              + Figures.three(a);
    }
    effects.add(new Effect(weight, text));
  }
}
