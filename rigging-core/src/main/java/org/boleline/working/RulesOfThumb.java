package org.boleline.working;

import java.util.ArrayList;
import java.util.List;
import org.boleline.drop.DropFound;
import org.boleline.geometry.IncludedAngle;
import org.boleline.plan.Contact;
import org.boleline.rope.FrictionRing;
import org.boleline.rope.Motion;
import org.boleline.rope.Sheave;
import org.boleline.statics.ContactResult;
import org.boleline.statics.Solution;
import org.boleline.statics.StemResult;
import org.boleline.units.Kind;
import org.boleline.units.Si;
import org.boleline.wood.Log;

/**
 * Sets the rules of thumb beside the model: their number, the model's, and on which side they lie.
 *
 * <p>A rule is compared where its own case is near: the top point, a ring, sheaves while raising, a
 * fall. That a rule lies on the high side for one plan does not mean that it does for another.
 */
public final class RulesOfThumb {
  /** The ends of what is possible at rest, behind a title. */
  static final String ABOUT_TO_RUN = ", about to run";

  static final String ABOUT_TO_RISE = ", about to rise";

  private RulesOfThumb() {}

  /**
   * Compares the rules that speak of slow motion. A load that is held is compared at both ends of
   * what is possible at rest: a rule may lie on the high side at one and on the low side at the
   * other.
   *
   * @param solution the solution of an arrangement
   * @return the comparisons, in the order of the rules; those of a held load at both ends, one end
   *     after the other
   */
  public static List<RuleCompared> of(Solution solution) {
    String of = " of arrangement " + solution.id();
    if (solution.otherEnd().isEmpty()) {
      return compared(solution, of);
    }
    List<RuleCompared> both = new ArrayList<>(compared(solution, of + ABOUT_TO_RUN));
    both.addAll(compared(solution.otherEnd().get(), of + ABOUT_TO_RISE));
    return List.copyOf(both);
  }

  private static List<RuleCompared> compared(Solution solution, String of) {
    List<RuleCompared> top = new ArrayList<>();
    List<RuleCompared> points = new ArrayList<>();
    List<RuleCompared> rings = new ArrayList<>();
    List<RuleCompared> base = new ArrayList<>();
    double weight = weight(solution);
    boolean raising = solution.motion() == Motion.RAISING;
    int bearing = 0;
    int sheaves = 0;
    for (int i = 0; i < solution.contacts().size(); i++) {
      ContactResult contact = solution.contacts().get(i);
      if (!contact.bears()) {
        continue;
      }
      Contact stated = solution.arrangement().contacts().get(i);
      String where = "contact " + (i + 1) + of;
      double tension = Worksheets.newtons(contact.tensionIn());
      double force = Worksheets.newtons(contact.forceMagnitude());
      if (bearing == 0) {
        top.add(
            new RuleCompared(
                RuleOfThumb.DOUBLE_LOAD, where, RuleFormulas.DOUBLE_LOAD.step(weight), force));
        base.add(reach(solution, of, contact, weight));
      }
      bearing++;
      double legs = Si.value(IncludedAngle.from(contact.turn()).angle(), Kind.ANGLE, "legs");
      points.add(
          new RuleCompared(
              RuleOfThumb.ONE_TENSION, where, RuleFormulas.ONE_TENSION.step(tension, legs), force));
      if (stated.hardware() instanceof FrictionRing && !raising) {
        rings.add(
            new RuleCompared(
                RuleOfThumb.HALF_BY_RING,
                where,
                RuleFormulas.HALF_BY_RING.step(tension),
                Worksheets.newtons(contact.tensionOut())));
      }
      if (stated.hardware() instanceof Sheave) {
        sheaves++;
      }
    }
    List<RuleCompared> all = new ArrayList<>(top);
    all.addAll(points);
    all.addAll(rings);
    if (raising && bearing > 0 && sheaves == bearing) {
      all.add(
          new RuleCompared(
              RuleOfThumb.TENTH_BY_SHEAVE,
              "tail" + of,
              RuleOfThumb.TENTH_BY_SHEAVE.formula().step(weight, sheaves, 1),
              Worksheets.newtons(solution.tailTension())));
    }
    all.addAll(base);
    return List.copyOf(all);
  }

  /**
   * Compares the rules that speak of a catch.
   *
   * @param drop the drop of an arrangement
   * @return the comparisons
   */
  public static List<RuleCompared> of(DropFound drop) {
    double mass = Si.value(drop.plan().piece().mass(), Kind.MASS, "mass");
    double gravity = Si.value(drop.plan().gravity(), Kind.ACCELERATION, "gravity");
    double fall = Si.value(drop.spec().fall(), Kind.LENGTH, "fall");
    return List.of(
        new RuleCompared(
            RuleOfThumb.FEET_AND_ONE,
            "load leg of arrangement " + drop.id(),
            RuleFormulas.FEET_AND_ONE.step(mass * gravity, fall),
            Worksheets.newtons(drop.loads().loadLeg())));
  }

  /**
   * Compares the rule that speaks of the weight of a log.
   *
   * @param log the log
   * @return the comparison
   */
  public static List<RuleCompared> of(Log log) {
    return List.of(
        new RuleCompared(
            RuleOfThumb.PI_AS_THREE,
            "a log",
            RuleFormulas.PI_AS_THREE.step(
                Si.value(log.midDiameter(), Kind.LENGTH, "middle"),
                Si.value(log.length(), Kind.LENGTH, "length"),
                Si.value(log.density(), Kind.DENSITY, "density"),
                Si.value(Log.standardGravity(), Kind.ACCELERATION, "gravity")),
            Worksheets.newtons(log.weight())));
  }

  /**
   * Makes a worksheet of comparisons.
   *
   * @param compared the comparisons
   * @return the worksheet: each rule with what it assumes, its number, and the model's
   */
  public static Worksheet worksheet(List<RuleCompared> compared) {
    List<Line> lines = new ArrayList<>();
    for (RuleCompared one : compared) {
      lines.add(new Line.Calculation(one.rule().words() + ", " + one.where(), one.step()));
      lines.add(new Line.Remark(one.sentence()));
    }
    return Worksheet.of("Rules of thumb beside the model", lines);
  }

  private static RuleCompared reach(
      Solution solution, String of, ContactResult contact, double weight) {
    StemResult stem = solution.stem(contact.stem()).orElseThrow();
    double[] stations = stem.profile().stations(Kind.LENGTH);
    double[][] axis = stem.profile().unloadedPositions(Kind.LENGTH);
    double at = Si.value(contact.at(), Kind.LENGTH, "at");
    int nearest = 0;
    for (int i = 1; i < stations.length; i++) {
      if (Math.abs(stations[i] - at) < Math.abs(stations[nearest] - at)) {
        nearest = i;
      }
    }
    double level = Math.hypot(axis[nearest][0] - axis[0][0], axis[nearest][1] - axis[0][1]);
    return new RuleCompared(
        RuleOfThumb.WEIGHT_TIMES_REACH,
        "stem " + stem.id() + of,
        RuleFormulas.WEIGHT_TIMES_REACH.step(weight, level),
        Si.value(stem.riggingBase().momentMagnitude(), Kind.MOMENT, "moment"));
  }

  private static double weight(Solution solution) {
    double mass = Si.value(solution.plan().piece().mass(), Kind.MASS, "mass");
    return mass * Si.value(solution.plan().gravity(), Kind.ACCELERATION, "gravity");
  }
}
