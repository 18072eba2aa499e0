package org.boleline.examples.compare;

import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleFunction;
import javax.measure.Quantity;
import javax.measure.quantity.Force;
import org.boleline.plan.Plan;
import org.boleline.plan.Tail;
import org.boleline.rope.Motion;
import org.boleline.statics.ContactResult;
import org.boleline.statics.Leg;
import org.boleline.statics.Share;
import org.boleline.statics.Solution;
import org.boleline.statics.StemResult;
import org.boleline.units.Kind;
import org.boleline.units.Si;

/**
 * Finds what changes between two stable states, and traces each change to its cause by the numbers:
 * tensions through the product of frictions, base moments through their parts, forces on points
 * through tension and direction of the legs.
 */
final class Effects {
  /** Two changes count as one in step with the other if they are this near. */
  private static final double IN_STEP = 0.15;

  /** Below this a number stays as it is. */
  private static final double STAYS = 0.01;

  /** Weight of what a change brings that was not there before. */
  private static final double WORTH_A_WORD = 0.1;

  private final Solution from;
  private final Solution to;
  private final Solution wholeFrom;
  private final Solution wholeTo;
  private final PlanDifference difference;
  private final Wording wording;
  private final UnitSystem units;
  private final Plan plan;

  /**
   * Prepares.
   *
   * @param from the first state
   * @param to the second state, of the same motion where one of both is held
   * @param wholeFrom the first arrangement's answer, with both ends if it is held
   * @param wholeTo the second arrangement's answer
   */
  Effects(
      Solution from,
      Solution to,
      Solution wholeFrom,
      Solution wholeTo,
      PlanDifference difference,
      Wording wording) {
    this.from = from;
    this.to = to;
    this.wholeFrom = wholeFrom;
    this.wholeTo = wholeTo;
    this.difference = difference;
    this.wording = wording;
    units = wording.units();
    plan = from.plan();
  }

  /** All of them, causes before what follows from them. */
  List<Effect> all() {
    List<Effect> effects = new ArrayList<>();
    effects.add(tail());
    hand(effects);
    held(effects);
    slack(effects);
    outerPoint(effects);
    addedPoints(effects);
    for (int stem = 0; stem < plan.stems().size(); stem++) {
      baseMoment(stem, effects);
      stress(stem, effects);
    }
    movement(effects);
    return effects;
  }

  // Numbers in pairs

  private static double newtons(Quantity<Force> force) {
    return Si.value(force, Kind.FORCE, "force");
  }

  private String insteadOf(DoubleFunction<Scale> kind, double a, double b) {
    Scale scale = kind.apply(Math.max(Math.abs(a), Math.abs(b)));
    int decimals = scale.decimals(Math.max(Math.abs(a), Math.abs(b)));
    String unit = Scale.HARD_BLANK + scale.shown();
    return scale.bare(b, decimals) + unit + " instead of " + scale.bare(a, decimals) + unit;
  }

  private String fromTo(DoubleFunction<Scale> kind, double a, double b) {
    Scale scale = kind.apply(Math.max(Math.abs(a), Math.abs(b)));
    int decimals = scale.decimals(Math.max(Math.abs(a), Math.abs(b)));
    return (b > a ? "rises from " : "falls from ")
        + scale.bare(a, decimals)
        + " to "
        + scale.bare(b, decimals)
        + Scale.HARD_BLANK
        + scale.shown();
  }

  // Tensions

  private static double load(Solution state) {
    return newtons(state.legs().get(0).tension());
  }

  /** The tail's tension as a multiple of the load leg's. */
  private static double passed(Solution state) {
    return newtons(state.tailTension()) / load(state);
  }

  private Effect tail() {
    double a = newtons(from.tailTension());
    double b = newtons(to.tailTension());
    StringBuilder text = new StringBuilder("the tail carries ");
    text.append(insteadOf(units::force, a, b)).append(hands());
    double frictions = Effect.difference(passed(from), passed(to));
    if (frictions >= STAYS) {
      text.append(", because friction at the points multiplies the load's tension by ")
          .append(frictions(to))
          .append(" instead of ")
          .append(frictions(from))
          .append(why());
    } else {
      text.append(", because the load leg itself carries ")
          .append(insteadOf(units::force, load(from), load(to)));
    }
    return new Effect(Effect.difference(a, b), text.toString());
  }

  /** What the hands hold, in brackets, if both have a device and hold otherwise than before. */
  private String hands() {
    if (from.handTension().isEmpty() || to.handTension().isEmpty()) {
      return "";
    }
    double a = newtons(from.handTension().get());
    double b = newtons(to.handTension().get());
    return wrapsDiffer() || Effect.difference(a, b) < STAYS
        ? ""
        : " (the hand " + insteadOf(units::force, a, b) + ")";
  }

  /** The product of the tension ratios, and its factors if there are several. */
  private static String frictions(Solution state) {
    List<String> factors = new ArrayList<>();
    for (ContactResult contact : state.contacts()) {
      if (contact.bears()) {
        factors.add(Figures.fixed(newtons(contact.tensionOut()) / newtons(contact.tensionIn()), 3));
      }
    }
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
    return difference.hasSameHardware() && Effect.difference(a, b) >= STAYS
        ? ", as the rope turns by " + degrees(b) + " in all instead of " + degrees(a)
        : "";
  }

  private static double turns(Solution state) {
    return state.contacts().stream().mapToDouble(Effects::turn).sum();
  }

  private static double turn(ContactResult contact) {
    return Math.toDegrees(Si.value(contact.turn().angle(), Kind.ANGLE, "turn"));
  }

  private static String degrees(double angle) {
    return Figures.fixed(angle, angle < 10 ? 1 : 0) + "°";
  }

  private static double passedByWraps(Solution state) {
    return newtons(state.handTension().orElseThrow()) / newtons(state.tailTension());
  }

  private boolean wrapsDiffer() {
    return Effect.difference(passedByWraps(from), passedByWraps(to)) >= STAYS;
  }

  /** What the wraps do to the tail's tension. */
  private static String wraps(Solution state) {
    double passed = passedByWraps(state);
    if (Math.abs(passed - 1) < STAYS) {
      return "no wraps";
    }
    return passed < 1
        ? "wraps that divide the tail's tension by " + Figures.three(1 / passed)
        : "wraps that multiply the tail's tension by " + Figures.three(passed);
  }

  private void hand(List<Effect> effects) {
    boolean before = from.handTension().isPresent();
    boolean after = to.handTension().isPresent();
    if (before && after && wrapsDiffer()) {
      double a = newtons(from.handTension().get());
      double b = newtons(to.handTension().get());
      effects.add(
          new Effect(
              Effect.difference(a, b),
              "the hand holds "
                  + insteadOf(units::force, a, b)
                  + ", with "
                  + wraps(to)
                  + " instead of "
                  + wraps(from)));
    } else if (after && !before) {
      effects.add(
          new Effect(
              WORTH_A_WORD,
              "the hand holds "
                  + units.oneForce(newtons(to.handTension().get()))
                  + ", with "
                  + wraps(to)));
    }
  }

  private void held(List<Effect> effects) {
    boolean before = wholeFrom.otherEnd().isPresent();
    boolean after = wholeTo.otherEnd().isPresent();
    if (before != after) {
      Solution held = before ? wholeFrom : wholeTo;
      double least = newtons(held.tailTension());
      double most = newtons(held.otherEnd().orElseThrow().tailTension());
      String end = to.motion() == Motion.LOWERING ? "about to run" : "about to rise";
      effects.add(
          new Effect(
              1,
              "at rest the tail may carry anything from "
                  + units.oneForce(least)
                  + " to "
                  + units.oneForce(most)
                  + ", as friction may act either way (compared here: "
                  + end
                  + ")"));
    }
  }

  // Points

  private void outerPoint(List<Effect> effects) {
    ContactResult a = from.contacts().get(0);
    ContactResult b = to.contacts().get(0);
    if (!a.bears() || !b.bears()) {
      return;
    }
    double force = Effect.difference(newtons(a.forceMagnitude()), newtons(b.forceMagnitude()));
    double across = Effect.difference(newtons(a.across()), newtons(b.across()));
    boolean tellAcross = across > force;
    String what =
        tellAcross
            ? "the force across the stem at the outer point "
                + fromTo(units::force, newtons(a.across()), newtons(b.across()))
            : "the force on the outer point "
                + fromTo(units::force, newtons(a.forceMagnitude()), newtons(b.forceMagnitude()));
    effects.add(new Effect(Math.max(force, across), what + legCause(a, b, tellAcross)));
  }

  /** Whether the tension or the direction of the leg behind point 1 changes the force there. */
  private String legCause(ContactResult a, ContactResult b, boolean across) {
    double[] axis = axis(a);
    double[] load = scaled(unit(from.legs().get(0)), -newtons(a.tensionIn()));
    double[] back = unit(legBehind(from));
    double before = size(plus(load, scaled(back, newtons(a.tensionOut()))), axis, across);
    double byTension =
        Math.abs(size(plus(load, scaled(back, newtons(b.tensionOut()))), axis, across) - before);
    double[] otherBack = unit(legBehind(to));
    double byDirection =
        Math.abs(
            size(plus(load, scaled(otherBack, newtons(a.tensionOut()))), axis, across) - before);
    String turn = "the rope turns there by " + degrees(turn(b)) + " instead of " + degrees(turn(a));
    String tension =
        "the leg behind it carries "
            + insteadOf(units::force, newtons(a.tensionOut()), newtons(b.tensionOut()));
    if (byTension < 0.3 * byDirection) {
      return ", because " + turn;
    }
    return ", because " + (byDirection < 0.3 * byTension ? tension : tension + " and " + turn);
  }

  /** The leg between point 1 and what follows it. */
  private static Leg legBehind(Solution state) {
    return state.legs().get(1);
  }

  /** Direction of the axis at a point: the force's part along it and across it tell no more. */
  private double[] axis(ContactResult contact) {
    StemResult stem = from.stem(contact.stem()).orElseThrow();
    double[] stations = stem.profile().stations(Kind.LENGTH);
    double at = Wording.metres(contact.at());
    int nearest = 0;
    for (int i = 1; i < stations.length; i++) {
      nearest = Math.abs(stations[i] - at) < Math.abs(stations[nearest] - at) ? i : nearest;
    }
    return stem.profile().directions()[nearest];
  }

  private static double[] unit(Leg leg) {
    return scaled(leg.pull().in(Kind.FORCE), 1 / newtons(leg.tension()));
  }

  private static double[] scaled(double[] v, double by) {
    return new double[] {by * v[0], by * v[1], by * v[2]};
  }

  private static double[] plus(double[] a, double[] b) {
    return new double[] {a[0] + b[0], a[1] + b[1], a[2] + b[2]};
  }

  private static double dot(double[] a, double[] b) {
    return a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
  }

  private static double size(double[] force, double[] axis, boolean across) {
    double along = across ? dot(force, axis) : 0;
    return Math.sqrt(Math.max(0, dot(force, force) - along * along));
  }

  private void addedPoints(List<Effect> effects) {
    List<String> forces = new ArrayList<>();
    double greatest = 0;
    for (int index : difference.added()) {
      ContactResult contact = to.contacts().get(index);
      if (contact.bears()) {
        double force = newtons(contact.forceMagnitude());
        greatest = Math.max(greatest, force);
        forces.add(units.oneForce(force) + " (turn " + degrees(turn(contact)) + ")");
      }
    }
    String stray = stray();
    if (!forces.isEmpty()) {
      effects.add(
          new Effect(
              Math.max(WORTH_A_WORD, Math.min(1, greatest / load(to))),
              (forces.size() > 1 ? "the added points take " : "the added point takes ")
                  + Wording.join(forces)
                  + (stray.isEmpty() ? "" : " and " + stray)));
    } else if (!stray.isEmpty() && !difference.hasSamePoints()) {
      effects.add(new Effect(WORTH_A_WORD, "the points left " + stray));
    }
  }

  /** How near the rope keeps to the stem of point 1, if that changes. */
  private String stray() {
    String stem = from.contacts().get(0).stem();
    if (!stem.equals(to.contacts().get(0).stem())) {
      return "";
    }
    double a = RopeBeside.stem(from, stem);
    double b = RopeBeside.stem(to, stem);
    return Double.isNaN(a) || Double.isNaN(b) || Effect.difference(a, b) < Effect.LEAST
        ? ""
        : "keep the rope within " + insteadOf(x -> units.length(), a, b) + " of the stem's axis";
  }

  private void slack(List<Effect> effects) {
    List<String> places = new ArrayList<>();
    for (int j = 0; j < to.contacts().size(); j++) {
      ContactResult contact = to.contacts().get(j);
      if (!contact.bears() && difference.borePreviously(j, from)) {
        places.add(wording.place(contact.stem(), contact.at()));
      }
    }
    if (!places.isEmpty()) {
      effects.add(
          new Effect(
              1,
              (places.size() > 1 ? "the slings at " : "the sling at ")
                  + Wording.join(places)
                  + (places.size() > 1 ? " hang" : " hangs")
                  + " slack, because the rope passes within reach"));
    }
  }

  // Stems

  private static double[] metres(ContactResult contact) {
    return contact.movement().in(Kind.LENGTH);
  }

  private void movement(List<Effect> effects) {
    double[] a = metres(from.contacts().get(0));
    double[] b = metres(to.contacts().get(0));
    double before = Math.sqrt(dot(a, a));
    double after = Math.sqrt(dot(b, b));
    double[] apart = plus(b, scaled(a, -1));
    double greater = Math.max(before, after);
    if (greater == 0) {
      return;
    }
    boolean turned = dot(a, b) < 0;
    String text =
        turned
            ? "the outer point moves " + upOrDown(b) + " instead of " + upOrDown(a)
            : "the outer point moves "
                + insteadOf(units::movement, before, after)
                + vertical(a[2], b[2]);
    effects.add(
        new Effect(Math.min(1, Math.sqrt(dot(apart, apart)) / greater), text + inStep(a, b)));
  }

  private String vertical(double a, double b) {
    if (a > 0 != b > 0) {
      return "";
    }
    return " ("
        + (b > 0 ? "up " : "down ")
        + insteadOf(units::movement, Math.abs(a), Math.abs(b))
        + ")";
  }

  private String upOrDown(double[] movement) {
    return units.movement(Math.abs(movement[2])).one(Math.abs(movement[2]))
        + (movement[2] < 0 ? " down" : " up");
  }

  /** Names the rig's moment at the base if the movement keeps step with it. */
  private String inStep(double[] a, double[] b) {
    ContactResult first = from.contacts().get(0);
    ContactResult second = to.contacts().get(0);
    if (!first.stem().equals(second.stem())) {
      return "";
    }
    double[] m = from.stem(first.stem()).orElseThrow().riggingBase().moment().in(Kind.MOMENT);
    double[] n = to.stem(first.stem()).orElseThrow().riggingBase().moment().in(Kind.MOMENT);
    double moments = dot(m, n) / dot(m, m);
    double movements = dot(a, b) / dot(a, a);
    boolean near = moments * movements > 0 && Math.abs(Math.log(movements / moments)) <= IN_STEP;
    if (!near || Math.abs(moments - 1) < STAYS) {
      return "";
    }
    double before = Math.sqrt(dot(m, m));
    double after = Math.sqrt(dot(n, n));
    return ", in step with the moment of load and rope at the base, "
        + (moments > 0
            ? insteadOf(units::moment, before, after)
            : units.oneMoment(after) + " the other way instead of " + units.oneMoment(before));
  }

  private String of(int stem) {
    return wording.ofStem(plan.stems().get(stem).id());
  }

  private void baseMoment(int stem, List<Effect> effects) {
    StemResult a = from.stems().get(stem);
    StemResult b = to.stems().get(stem);
    BaseMoment first = BaseMoment.of(a);
    BaseMoment second = BaseMoment.of(b);
    boolean firstIsGreater = first.total() >= second.total();
    BaseMoment before = firstIsGreater ? first : second.alongside(a);
    BaseMoment after = firstIsGreater ? first.alongside(b) : second;
    double weight = Effect.difference(before.total(), after.total());
    String what = "the base moment" + of(stem) + " ";
    if (weight >= Effect.LEAST) {
      effects.add(
          new Effect(
              weight, what + moment(before.total(), after.total()) + part(before, after, a, b)));
    } else if (endsOnTheStem(before, after)) {
      // Told all the same: it is what one would expect to change.
      effects.add(
          new Effect(
              Effect.LEAST,
              what
                  + "stays near "
                  + units.oneMoment(after.total())
                  + ", because the rope ends on the stem itself and so only load × reach and"
                  + " weights turn its base"));
    }
  }

  private String moment(double before, double after) {
    return before * after < 0
        ? "turns over from "
            + units.oneMoment(Math.abs(before))
            + " to "
            + units.oneMoment(Math.abs(after))
            + " the other way"
        : fromTo(units::moment, before, after);
  }

  private boolean endsOnTheStem(BaseMoment before, BaseMoment after) {
    return plan.stems().size() == 1
        && from.arrangement().tail() instanceof Tail.Device
        && to.arrangement().tail() instanceof Tail.Device
        && !before.has(Share.Origin.TAIL)
        && !after.has(Share.Origin.TAIL);
  }

  /** The part of a base moment that changes most, and what it is made of. */
  private String part(BaseMoment before, BaseMoment after, StemResult a, StemResult b) {
    Share.Origin most = Share.Origin.LOAD;
    for (Share.Origin origin : Share.Origin.values()) {
      if (Math.abs(after.part(origin) - before.part(origin))
          > Math.abs(after.part(most) - before.part(most))) {
        most = origin;
      }
    }
    double x = before.part(most);
    double y = after.part(most);
    return switch (most) {
      case LOAD ->
          ", because load × reach is "
              + insteadOf(units::moment, x, y)
              + arms(most, x, y, a, b, " of reach");
      case TAIL -> tailPart(before, after, a, b);
      case OTHER_STEMS -> ", because legs to other stems " + turned(before, after, most);
      case OWN_WEIGHT ->
          ", because own weight turns it by "
              + insteadOf(units::moment, x, y)
              + " as the stem moves";
      case MASSES ->
          ", because the hung masses turn it by "
              + insteadOf(units::moment, x, y)
              + " as the stem moves";
    };
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

  private String tailPart(BaseMoment before, BaseMoment after, StemResult a, StemResult b) {
    Share.Origin tail = Share.Origin.TAIL;
    if (!after.has(tail)) {
      return ", because tail × arm, "
          + units.oneMoment(before.part(tail))
          + arm(tail, before.part(tail), a)
          + ", drops out: the tail now ends on the stem";
    }
    if (!before.has(tail)) {
      return ", because tail × arm, "
          + units.oneMoment(after.part(tail))
          + arm(tail, after.part(tail), b)
          + ", comes in: the tail no longer ends on the stem";
    }
    return ", because tail × arm is "
        + insteadOf(units::moment, before.part(tail), after.part(tail))
        + arms(tail, before.part(tail), after.part(tail), a, b, " of arm");
  }

  private static double share(Share.Origin origin, StemResult stem) {
    for (Share share : stem.shares()) {
      if (share.origin() == origin) {
        double[] force = share.force().in(Kind.FORCE);
        return Math.sqrt(dot(force, force));
      }
    }
    return 0;
  }

  /** A moment as force times arm, in brackets. */
  private String arm(Share.Origin origin, double moment, StemResult stem) {
    double force = share(origin, stem);
    return force == 0
        ? ""
        : " (" + units.oneForce(force) + " × " + units.oneLength(Math.abs(moment) / force) + ")";
  }

  private String arms(
      Share.Origin origin, double before, double after, StemResult a, StemResult b, String what) {
    double first = share(origin, a);
    double second = share(origin, b);
    return first == 0 || second == 0
        ? ""
        : " ("
            + units.oneForce(second)
            + " × "
            + units.oneLength(Math.abs(after) / second)
            + what
            + " instead of "
            + units.oneForce(first)
            + " × "
            + units.oneLength(Math.abs(before) / first)
            + ")";
  }

  private void stress(int stem, List<Effect> effects) {
    StemResult a = from.stems().get(stem);
    StemResult b = to.stems().get(stem);
    FibreStress before = FibreStress.of(a);
    FibreStress after = FibreStress.of(b);
    boolean moved = Math.abs(after.at() - before.at()) > 0.05;
    String text =
        "the greatest fibre stress"
            + of(stem)
            + " "
            + fromTo(units::stress, before.pascals(), after.pascals())
            + (moved
                ? " and moves from "
                    + units.oneLength(before.at())
                    + " to "
                    + units.oneLength(after.at())
                : " at " + units.oneLength(after.at()));
    double weight = Effect.difference(before.pascals(), after.pascals());
    if (a.strengthReach().isPresent() && b.strengthReach().isPresent()) {
      double first = a.strengthReach().get().loadFactor();
      double second = b.strengthReach().get().loadFactor();
      weight = Math.max(weight, Effect.difference(first, second));
      text +=
          ", so that the strength is reached at "
              + Figures.three(second)
              + " times this load instead of "
              + Figures.three(first);
    }
    effects.add(new Effect(weight, text));
  }
}
