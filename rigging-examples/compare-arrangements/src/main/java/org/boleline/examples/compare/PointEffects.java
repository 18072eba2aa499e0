package org.boleline.examples.compare;

import static org.boleline.examples.compare.Pair.insteadOf;
import static org.boleline.examples.compare.Pair.newtons;

import java.util.ArrayList;
import java.util.List;
import org.boleline.statics.ContactResult;
import org.boleline.statics.Leg;
import org.boleline.statics.Solution;
import org.boleline.statics.StemResult;
import org.boleline.units.Kind;

/**
 * What a change does to the forces on the points, traced through tension and direction of the legs,
 * and to the movement of the outer point.
 */
final class PointEffects {
  /** A movement keeps step with a moment if their ratios are this near, as a logarithm. */
  private static final double IN_STEP = 0.15;

  /** A cause that does less than this share of another is left out. */
  private static final double LESSER = 0.3;

  private final Pair pair;
  private final Solution from;
  private final Solution to;
  private final UnitSystem units;

  /** The outer point before and after: the first contact. */
  private final ContactResult first;

  private final ContactResult second;

  PointEffects(Pair pair) {
    this.pair = pair;
    from = pair.from();
    to = pair.to();
    units = pair.units();
    first = from.contacts().get(0);
    second = to.contacts().get(0);
  }

  void addForcesTo(List<Effect> effects) {
    outerPoint(effects);
    addedPoints(effects);
  }

  private void outerPoint(List<Effect> effects) {
    if (!first.bears() || !second.bears()) {
      return;
    }
    double a = newtons(first.forceMagnitude());
    double b = newtons(second.forceMagnitude());
    double c = newtons(first.across());
    double d = newtons(second.across());
    boolean across = Effect.difference(c, d) > Effect.difference(a, b);
    effects.add(
        new Effect(
            Math.max(Effect.difference(a, b), Effect.difference(c, d)),
            (across
                    ? "the force across the stem at the outer point "
                        + Pair.fromTo(units::force, c, d)
                    : "the force on the outer point " + Pair.fromTo(units::force, a, b))
                + legCause(across)));
  }

  /** Whether the tension or the direction of the leg behind changes the force. */
  private String legCause(boolean across) {
    double[] axis = across ? axis() : new double[3];
    double[] load = Triple.times(-newtons(first.tensionIn()), unit(from.legs().get(0)));
    double[] back = unit(from.legs().get(1));
    double[] otherBack = unit(to.legs().get(1));
    double a = newtons(first.tensionOut());
    double b = newtons(second.tensionOut());
    double before = Triple.across(Triple.plus(load, Triple.times(a, back)), axis);
    double byTension =
        Math.abs(Triple.across(Triple.plus(load, Triple.times(b, back)), axis) - before);
    double byDirection =
        Math.abs(Triple.across(Triple.plus(load, Triple.times(a, otherBack)), axis) - before);
    List<String> causes = new ArrayList<>();
    if (byTension >= LESSER * byDirection) {
      causes.add("the leg behind it carries " + insteadOf(units::force, a, b));
    }
    if (byDirection >= LESSER * byTension) {
      causes.add(
          "the rope turns there by "
              + Pair.degrees(RopeEffects.turn(second))
              + " instead of "
              + Pair.degrees(RopeEffects.turn(first)));
    }
    return ", because " + Wording.join(causes);
  }

  /** Direction of the loaded axis at the outer point. */
  private double[] axis() {
    StemResult stem = from.stem(first.stem()).orElseThrow();
    double[] stations = stem.profile().stations(Kind.LENGTH);
    double at = Wording.metres(first.at());
    int nearest = 0;
    for (int i = 1; i < stations.length; i++) {
      nearest = Math.abs(stations[i] - at) < Math.abs(stations[nearest] - at) ? i : nearest;
    }
    return stem.profile().directions()[nearest];
  }

  private static double[] unit(Leg leg) {
    return Triple.times(1 / newtons(leg.tension()), leg.pull().in(Kind.FORCE));
  }

  private void addedPoints(List<Effect> effects) {
    List<String> forces = new ArrayList<>();
    double greatest = 0;
    for (int index : pair.difference().added()) {
      ContactResult contact = to.contacts().get(index);
      if (contact.bears()) {
        double force = newtons(contact.forceMagnitude());
        greatest = Math.max(greatest, force);
        forces.add(
            units.oneForce(force) + " (turn " + Pair.degrees(RopeEffects.turn(contact)) + ")");
      }
    }
    String stray = stray();
    if (!forces.isEmpty()) {
      effects.add(
          new Effect(
              Math.max(Effect.WORTH_A_WORD, Math.min(1, greatest / RopeEffects.load(to))),
              (forces.size() > 1 ? "the added points take " : "the added point takes ")
                  + Wording.join(forces)
                  + (stray.isEmpty() ? "" : ", with the rope " + stray)));
    } else if (!stray.isEmpty() && !pair.difference().hasSamePoints()) {
      effects.add(new Effect(Effect.WORTH_A_WORD, "the rope runs " + stray));
    }
  }

  /** How near the rope keeps to the stem of the outer point, if that changes. */
  private String stray() {
    String stem = first.stem();
    if (!stem.equals(second.stem())) {
      return "";
    }
    double a = RopeBeside.stem(from, stem);
    double b = RopeBeside.stem(to, stem);
    return Double.isNaN(a) || Double.isNaN(b) || Effect.difference(a, b) < Effect.LEAST
        ? ""
        : "within " + insteadOf(x -> units.length(), a, b) + " of the stem's axis";
  }

  void addMovementTo(List<Effect> effects) {
    double[] a = first.movement().in(Kind.LENGTH);
    double[] b = second.movement().in(Kind.LENGTH);
    double before = Triple.size(a);
    double after = Triple.size(b);
    double greater = Math.max(before, after);
    if (greater == 0) {
      return;
    }
    String text =
        Triple.dot(a, b) < 0
            ? upOrDown(b[2]) + " instead of " + upOrDown(a[2])
            : insteadOf(units::movement, before, after) + vertical(a[2], b[2]);
    effects.add(
        new Effect(
            Math.min(1, Triple.size(Triple.minus(b, a)) / greater),
            "the outer point moves " + text + inStep(a, b)));
  }

  private String vertical(double a, double b) {
    if (a > 0 != b > 0) {
      return "";
    }
    return (b > 0 ? " (up " : " (down ")
        + insteadOf(units::movement, Math.abs(a), Math.abs(b))
        + ")";
  }

  private String upOrDown(double z) {
    return units.movement(Math.abs(z)).one(Math.abs(z)) + (z < 0 ? " down" : " up");
  }

  /** Names the rig's moment at the base if the movement keeps step with it. */
  private String inStep(double[] a, double[] b) {
    if (!first.stem().equals(second.stem())) {
      return "";
    }
    double[] m = moment(from);
    double[] n = moment(to);
    double moments = Triple.dot(m, n) / Triple.dot(m, m);
    double movements = Triple.dot(a, b) / Triple.dot(a, a);
    boolean near = moments * movements > 0 && Math.abs(Math.log(movements / moments)) <= IN_STEP;
    if (!near || !Pair.differ(moments, 1)) {
      return "";
    }
    return ", in step with the moment of load and rope at the base, "
        + (moments > 0
            ? insteadOf(units::moment, Triple.size(m), Triple.size(n))
            : units.oneMoment(Triple.size(n))
                + " the other way instead of "
                + units.oneMoment(Triple.size(m)));
  }

  /** Moment of load and rope at the base of the outer point's stem. */
  private double[] moment(Solution state) {
    return state.stem(first.stem()).orElseThrow().riggingBase().moment().in(Kind.MOMENT);
  }
}
