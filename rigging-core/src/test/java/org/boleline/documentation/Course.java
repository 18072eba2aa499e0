package org.boleline.documentation;

import static java.util.Locale.ROOT;
import static org.boleline.documentation.FirstPlan.in;
import static org.boleline.units.Amounts.degrees;
import static org.boleline.units.Amounts.gigapascals;
import static org.boleline.units.Amounts.kilograms;
import static org.boleline.units.Amounts.kilogramsPerCubicMetre;
import static org.boleline.units.Amounts.kilonewtons;
import static org.boleline.units.Amounts.metres;
import static org.boleline.units.Amounts.newtons;

import java.io.PrintStream;
import java.util.Arrays;
import java.util.List;
import org.boleline.drop.CatchPath;
import org.boleline.drop.CatchPoint;
import org.boleline.drop.Caught;
import org.boleline.drop.LinearStretch;
import org.boleline.drop.RopeCatch;
import org.boleline.drop.RopeStretch;
import org.boleline.explain.Source;
import org.boleline.geometry.IncludedAngle;
import org.boleline.geometry.Turn;
import org.boleline.plan.Arrangement;
import org.boleline.plan.Contact;
import org.boleline.plan.Tail;
import org.boleline.rope.ContactTensions;
import org.boleline.rope.FrictionRing;
import org.boleline.rope.Hardware;
import org.boleline.rope.Ideal;
import org.boleline.rope.Motion;
import org.boleline.rope.Sheave;
import org.boleline.rope.TwoLegForce;
import org.boleline.rope.Wraps;
import org.boleline.statics.ArrangementResult;
import org.boleline.statics.Solution;
import org.boleline.statics.Statics;
import org.boleline.statics.StemResult;
import org.boleline.stem.TaperedCantilever;
import org.boleline.units.Units;
import org.boleline.wood.Log;
import org.boleline.wood.Section;
import org.boleline.working.Worksheets;

/** The code of the lessons in docs/course. */
final class Course {
  private Course() {}

  // 1. Two legs

  static void multipliers(PrintStream out) {
    // region multipliers
    for (int angle = 0; angle <= 180; angle += 30) {
      double multiplier = TwoLegForce.equalTensionMultiplier(IncludedAngle.of(degrees(angle)));
      out.printf(ROOT, "%3d degrees between the legs: %.2f times the tension%n", angle, multiplier);
    }
    // endregion
  }

  static void twoLegs(PrintStream out) {
    // region two-legs
    TwoLegForce force = TwoLegForce.of(newtons(932), newtons(484), IncludedAngle.of(degrees(30)));
    String sheet = Worksheets.of(force).withFigures(3).plainText();
    // endregion
    out.print(sheet.substring(0, sheet.indexOf("2. Angle")).stripTrailing() + "\n");
  }

  // 2. Friction

  static void bothWays(PrintStream out) {
    // region both-ways
    Hardware ring = new FrictionRing(0.25);
    Turn half = Turn.HALF;
    ContactTensions lowering = ContactTensions.fromTight(ring, half, newtons(932));
    ContactTensions raising = ContactTensions.fromSlack(ring, half, newtons(932));
    out.printf(ROOT, "load 932 N, lowering: hold %4.0f N%n", in(Units.NEWTON, lowering.slack()));
    out.printf(ROOT, "load 932 N, raising:  pull %4.0f N%n", in(Units.NEWTON, raising.tight()));
    // endregion
  }

  static void chain(PrintStream out) {
    // region chain
    Hardware ring = new FrictionRing(0.25);
    Turn half = Turn.HALF;
    Turn little = Turn.of(degrees(10));
    ContactTensions first = ContactTensions.fromTight(ring, half, newtons(932));
    ContactTensions second = ContactTensions.fromTight(ring, little, first.slack());
    ContactTensions third = ContactTensions.fromTight(ring, little, second.slack());
    ContactTensions allAtOnce =
        ContactTensions.fromTight(ring, Turn.of(degrees(200)), newtons(932));
    out.printf(ROOT, "three rings: %.1f N%n", in(Units.NEWTON, third.slack()));
    out.printf(ROOT, "one ring, all the turn: %.1f N%n", in(Units.NEWTON, allAtOnce.slack()));
    // endregion
  }

  static void wraps(PrintStream out) {
    // region wraps
    for (double friction : new double[] {0.12, 0.18, 0.25}) {
      Wraps wraps = Wraps.needed(newtons(887), newtons(150), friction);
      out.printf(ROOT, "friction %.2f: %.2f wraps%n", friction, wraps.exactWraps());
    }
    // endregion
  }

  // 3. Weight

  static void weight(PrintStream out) {
    // region weight
    for (double density : new double[] {930, 990, 1050}) {
      Log log = Log.of(metres(1.5), metres(0.24), metres(0.215), kilogramsPerCubicMetre(density));
      out.printf(
          ROOT,
          "%4.0f kg/m3: %.1f kg, balance point %.3f m from the large end%n",
          density,
          in(Units.KILOGRAM, log.mass()),
          in(Units.METRE, log.balancePoint()));
    }
    // endregion
  }

  static void thicker(PrintStream out) {
    // region thicker
    double[] masses = new double[2];
    for (int i = 0; i < 2; i++) {
      double d = i == 0 ? 0.24 : 0.264;
      masses[i] =
          in(
              Units.KILOGRAM,
              Log.of(metres(1.5), metres(d), metres(d), kilogramsPerCubicMetre(990)).mass());
    }
    out.printf(ROOT, "a tenth thicker: %.2f times the mass%n", masses[1] / masses[0]);
    // endregion
  }

  // 4. The stem as a beam

  static void beam(PrintStream out) {
    // region beam
    for (double tip : new double[] {0.36, 0.19}) {
      TaperedCantilever stem =
          TaperedCantilever.of(
              metres(11.6), metres(0.36), metres(tip), gigapascals(8), newtons(900));
      out.printf(
          ROOT,
          "tip %.2f m thick: moves %.2f m, greatest stress %.2f MPa, %.1f m from the tip%n",
          tip,
          in(Units.METRE, stem.tipDeflection()),
          in(Units.MEGAPASCAL, stem.greatestStress()),
          in(Units.METRE, stem.greatestStressFromTip()));
    }
    // endregion
  }

  static void cavity(PrintStream out) {
    // region cavity
    for (double cavity : new double[] {0.10, 0.18, 0.24, 0.30}) {
      Section section = Section.hollow(metres(0.36), metres(cavity));
      out.printf(
          ROOT,
          "cavity %.2f of 0.36 m: %2.0f %% of the wood, %2.0f %% of the section modulus%n",
          cavity,
          100 * section.areaShare(),
          100 * section.sectionModulusShare());
    }
    // endregion
  }

  // 5. A catch

  // region rope
  /**
   * A modulus of 110 kN: a tenth of 55 kN stretches it by a twentieth, as the invented rope does.
   */
  static RopeStretch rope() {
    return RopeStretch.forDrop(LinearStretch.of(kilonewtons(110)), Source.PLAN);
  }

  // endregion

  static void catches(PrintStream out) {
    // region catches
    for (double fall : new double[] {0, 0.5, 1, 2}) {
      RopeCatch made =
          RopeCatch.of(
              kilograms(95),
              metres(fall),
              rope(),
              CatchPath.of(metres(2)).over(CatchPoint.of(Ideal.INSTANCE, Turn.HALF), metres(11)));
      Caught caught = made.locked();
      out.printf(
          ROOT,
          "falls %.1f m: %4.1f times its weight, point %5.2f kN%n",
          fall,
          caught.overWeightRatio(),
          in(Units.KILONEWTON, caught.loads().points().get(0).magnitude()));
    }
    // endregion
  }

  static void catchFriction(PrintStream out) {
    // region catch-friction
    for (Hardware point : List.of(Ideal.INSTANCE, new Sheave(0.95), new FrictionRing(0.25))) {
      CatchPath path = CatchPath.of(metres(2)).over(CatchPoint.of(point, Turn.HALF), metres(11));
      Caught caught = RopeCatch.of(kilograms(95), metres(1), rope(), path).locked();
      out.printf(
          ROOT,
          "%-7s load leg %5.2f kN, behind the point %5.2f kN, point %5.2f kN%n",
          point.name(),
          in(Units.KILONEWTON, caught.loads().loadLeg()),
          in(Units.KILONEWTON, caught.loads().legs().get(1)),
          in(Units.KILONEWTON, caught.loads().points().get(0).magnitude()));
    }
    // endregion
  }

  // 6. More points

  // region points
  static Arrangement points(Hardware hardware, Motion motion, double... stations) {
    List<Contact> contacts =
        Arrays.stream(stations)
            .mapToObj(at -> Contact.of("hornbeam", metres(at), hardware).withSling(metres(0.2)))
            .toList();
    return Arrangement.builder(stations.length + " " + hardware.name())
        .motion(motion)
        .contacts(contacts)
        .tail(Tail.Device.of("hornbeam", metres(0.8), 0.18, 2))
        .build();
  }

  // endregion

  static void more(PrintStream out, Motion motion) {
    // region more
    Hardware ring = new FrictionRing(0.25);
    Hardware sheave = new Sheave(0.95);
    List<Arrangement> arrangements =
        List.of(
            points(sheave, motion, 11.6),
            points(sheave, motion, 11.6, 8.0, 4.5),
            points(ring, motion, 11.6),
            points(ring, motion, 11.6, 8.0),
            points(ring, motion, 11.6, 8.0, 4.5),
            points(ring, motion, 11.6, 9.5, 7.5, 5.5, 3.5));
    for (ArrangementResult result :
        Statics.analyse(FirstPlan.plan().toBuilder().arrangements(arrangements).build())
            .arrangements()) {
      Solution found = result.solution().orElseThrow();
      StemResult stem = found.stem("hornbeam").orElseThrow();
      List<Double> forces =
          found.contacts().stream()
              .map(contact -> in(Units.NEWTON, contact.forceMagnitude()))
              .toList();
      out.printf(
          ROOT,
          "%-8s first point %4.0f N  device %4.0f N  base %5.2f kN.m  point moves %.3f m%n",
          found.id(),
          forces.get(0),
          in(Units.NEWTON, found.tailTension()),
          in(Units.KILONEWTON_METRE, stem.base().moment().magnitude()),
          in(Units.METRE, stem.marks().get(0).movement().magnitude()));
    }
    // endregion
  }

  static void lowering(PrintStream out) {
    more(out, Motion.LOWERING);
  }

  static void raising(PrintStream out) {
    more(out, Motion.RAISING);
  }
}
