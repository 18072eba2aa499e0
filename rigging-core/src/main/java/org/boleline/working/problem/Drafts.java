package org.boleline.working.problem;

import static org.boleline.working.problem.Draw.text;

import java.util.ArrayList;
import java.util.List;
import javax.measure.Quantity;
import javax.measure.quantity.Angle;
import javax.measure.quantity.Force;
import javax.measure.quantity.Length;
import javax.measure.quantity.Mass;
import org.boleline.drop.CatchPath;
import org.boleline.drop.CatchPoint;
import org.boleline.drop.DropFormulas;
import org.boleline.drop.LinearCatch;
import org.boleline.drop.LinearStretch;
import org.boleline.drop.RopeCatch;
import org.boleline.drop.RopeStretch;
import org.boleline.drop.Stop;
import org.boleline.explain.Source;
import org.boleline.explain.Step;
import org.boleline.geometry.IncludedAngle;
import org.boleline.geometry.Turn;
import org.boleline.rope.ContactTensions;
import org.boleline.rope.FrictionRing;
import org.boleline.rope.Hardware;
import org.boleline.rope.Motion;
import org.boleline.rope.Sheave;
import org.boleline.rope.TwoLegForce;
import org.boleline.rope.Wraps;
import org.boleline.stem.TaperedCantilever;
import org.boleline.units.Kind;
import org.boleline.units.QuantityText;
import org.boleline.units.Si;
import org.boleline.wood.Log;
import org.boleline.working.EquilibriumFormulas;
import org.boleline.working.Line;
import org.boleline.working.Worksheet;
import org.boleline.working.Worksheets;

/** How each kind of problem is drawn and worked. */
final class Drafts {
  private static final double GRAVITY = 9.80665;
  private static final String WITH_GRAVITY = " Take gravity as 9.80665 m/s2.";
  private static final double MOST_STRESS = 30e6;
  private static final double MOST_CATCH = 30e3;
  private static final double LEAST_HAND = 20;
  private static final double MOST_HAND = 400;

  /** More is no log but a root flare. */
  private static final double MOST_TAPER = 0.08;

  private Drafts() {}

  static Draft draw(ProblemKind kind, Level level, Draw draw) {
    return switch (kind) {
      case FRICTION -> friction(level, draw);
      case REDIRECTS -> redirects(level, draw);
      case WEIGHTS -> weights(level, draw);
      case BEAMS -> beams(level, draw);
      case CATCHES -> catches(level, draw);
      case ARRANGEMENTS -> arrangements(level, draw);
    };
  }

  // Friction

  private static Draft friction(Level level, Draw draw) {
    double mu = draw.number(0.12, 0.3, 0.01);
    FrictionRing ring = new FrictionRing(mu);
    double load = draw.number(600, 5000, 100);
    if (level == Level.FIRST) {
      double turn = draw.of(List.of(60.0, 90.0, 120.0, 180.0, 270.0, 360.0));
      ContactTensions tensions =
          ContactTensions.fromTight(ring, Turn.of(degrees(turn)), newtons(load));
      return Draft.of(
          "A rope turns "
              + text(turn)
              + " degrees around a friction ring; the coefficient of friction is "
              + text(mu)
              + ". A load of "
              + text(load)
              + " N is being lowered. What tension is left behind the ring?",
          Worksheets.of(tensions),
          "FRI-6",
          1,
          "N");
    }
    double legs = draw.number(10, 85, 5);
    Turn turn = Turn.between(IncludedAngle.of(degrees(legs)));
    if (level == Level.SECOND) {
      return Draft.of(
          "A rope runs up from a load of "
              + text(load)
              + " N to a friction ring and comes down from it; the angle between its two legs is "
              + text(legs)
              + " degrees, the coefficient of friction "
              + text(mu)
              + ". What pull behind the ring raises the load?",
          Worksheets.of(ContactTensions.fromSlack(ring, turn, newtons(load))),
          "FRI-7",
          1,
          "N");
    }
    double hand = draw.number(100, 250, 10);
    double post = draw.number(0.15, 0.25, 0.01);
    ContactTensions tensions = ContactTensions.fromTight(ring, turn, newtons(load));
    Wraps wraps = Wraps.needed(tensions.slack(), newtons(hand), post);
    Worksheet sheet =
        Worksheet.of(
            "Ring and lowering device",
            both(
                Worksheets.of(tensions).lines(),
                Worksheet.ofSteps("", wraps.steps().subList(0, 1)).lines()));
    double needed = wraps.exactWraps();
    return Draft.of(
            "A load of "
                + text(load)
                + " N is lowered over a friction ring (coefficient of friction "
                + text(mu)
                + ", "
                + text(legs)
                + " degrees between the legs). The tail comes to a lowering device with a"
                + " coefficient of friction of "
                + text(post)
                + ". How many wraps let a hand hold it with "
                + text(hand)
                + " N? Do not round up.",
            sheet,
            "FRI-11",
            1,
            "1")
        .fitting(needed >= 0.5 && needed <= 5);
  }

  // Redirects

  private static Draft redirects(Level level, Draw draw) {
    double load = draw.number(600, 5000, 100);
    double legs = draw.number(20, 85, 5);
    if (level == Level.FIRST) {
      return Draft.of(
          "A rope with a tension of "
              + text(load)
              + " N runs over a sheave without friction. The angle between its legs is "
              + text(legs)
              + " degrees. What force does the sheave bear?",
          Worksheets.of(
              TwoLegForce.withEqualTensions(newtons(load), IncludedAngle.of(degrees(legs)))),
          "FOR-4",
          1,
          "N");
    }
    double mu = draw.number(0.12, 0.3, 0.01);
    Turn top = Turn.between(IncludedAngle.of(degrees(legs)));
    if (level == Level.SECOND) {
      return Draft.of(
          "A load of "
              + text(load)
              + " N is lowered over a friction ring with a coefficient of friction of "
              + text(mu)
              + " and "
              + text(legs)
              + " degrees between the legs. What force does the ring bear?",
          Worksheets.ofChain(
              Motion.LOWERING, newtons(load), List.of(new FrictionRing(mu)), List.of(top)),
          "FOR-1",
          1,
          "N");
    }
    double second = draw.number(25, 80, 5);
    double efficiency = draw.number(0.88, 0.95, 0.01);
    List<Hardware> hardware = List.of(new FrictionRing(mu), new Sheave(efficiency));
    return Draft.of(
        "A load of "
            + text(load)
            + " N is lowered. The rope runs over a friction ring (coefficient of friction "
            + text(mu)
            + ", "
            + text(legs)
            + " degrees between the legs) and then over a sheave (slack over tight tension "
            + text(efficiency)
            + " at a half turn), which turns it by "
            + text(second)
            + " degrees. What force does the sheave bear?",
        Worksheets.ofChain(
            Motion.LOWERING, newtons(load), hardware, List.of(top, Turn.of(degrees(second)))),
        "FOR-1",
        2,
        "N");
  }

  // Weights

  private static Draft weights(Level level, Draw draw) {
    // so much taper that the thickness in the middle will not do
    boolean tapers = level != Level.FIRST;
    double length = tapers ? draw.number(2, 9, 0.1) : draw.number(1, 4, 0.1);
    double large = draw.number(25, 70, 1);
    double density = draw.number(750, 1100, 10);
    double small = tapers ? Math.rint(large * draw.number(0.3, 0.55, 0.01)) : large;
    boolean fits = (large - small) / 100 <= MOST_TAPER * length;
    Log log =
        Log.of(
            Si.of(length, Kind.LENGTH),
            centimetres(large),
            centimetres(small),
            Si.of(density, Kind.DENSITY));
    String green = ", its green density " + text(density) + " kg/m3. ";
    if (level == Level.FIRST) {
      return Draft.of(
          "A log is "
              + text(length)
              + " m long and "
              + text(large)
              + " cm thick all along"
              + green
              + "What does it weigh?"
              + WITH_GRAVITY,
          Worksheets.of(log),
          "LOG-9",
          1,
          "N");
    }
    String log2 =
        "The top of a stem is "
            + text(length)
            + " m long, "
            + text(large)
            + " cm thick at its large end and "
            + text(small)
            + " cm at its small end; it tapers evenly";
    Draft draft =
        level == Level.SECOND
            ? Draft.of(
                log2 + green + "What does it weigh?" + WITH_GRAVITY,
                Worksheets.of(log),
                "LOG-9",
                1,
                "N")
            : Draft.of(
                log2 + ". How far from the large end is its balance point?",
                Worksheets.of(log),
                "LOG-10",
                1,
                "m");
    return draft.fitting(fits);
  }

  // Beams

  private static Draft beams(Level level, Draw draw) {
    double length = draw.number(5, 14, 0.5);
    double base = draw.number(30, 70, 1);
    double tip = draw.number(12, 28, 1);
    double modulus = draw.number(6, 12, 0.5);
    double force = draw.number(200, 2500, 50);
    TaperedCantilever beam =
        TaperedCantilever.of(
            Si.of(length, Kind.LENGTH),
            centimetres(base),
            centimetres(tip),
            QuantityText.parse(text(modulus) + " GPa", Kind.PRESSURE),
            newtons(force));
    String stem =
        "A stem is "
            + text(length)
            + " m long and clamped at its base. A force of "
            + text(force)
            + " N pulls square to it at its tip. ";
    boolean fits =
        length <= 45 * base / 100
            && tip < 0.8 * base
            && pascals(beam) <= MOST_STRESS
            && Si.value(beam.tipDeflection(), Kind.LENGTH, "deflection") <= length / 6;
    Worksheet sheet = Worksheets.of(beam);
    Draft draft =
        switch (level) {
          case FIRST ->
              Draft.of(stem + "What is the bending moment at its base?", sheet, "BEA-1", 1, "N.m");
          case SECOND ->
              Draft.of(
                  stem
                      + "It is round and "
                      + text(base)
                      + " cm thick at the base. What is the bending stress of the outermost fibre"
                      + " there?",
                  sheet,
                  "BEA-3",
                  1,
                  "MPa");
          case THIRD ->
              Draft.of(
                  stem
                      + "It is round, "
                      + text(base)
                      + " cm thick at the base and "
                      + text(tip)
                      + " cm at the tip, and tapers evenly. Its modulus of elasticity is "
                      + text(modulus)
                      + " GPa. How far does the tip move?",
                  sheet,
                  "BEA-6",
                  1,
                  "m");
        };
    return draft.fitting(fits);
  }

  private static double pascals(TaperedCantilever beam) {
    return Si.value(beam.greatestStress(), Kind.PRESSURE, "stress");
  }

  // Catches

  private static Draft catches(Level level, Draw draw) {
    double mass = draw.number(60, 300, 10);
    double fall = draw.number(0.5, 3, 0.1);
    String piece = "A piece of " + text(mass) + " kg ";
    if (level == Level.FIRST) {
      double speed = draw.number(2, 7, 0.1);
      double way = draw.number(0.4, 2, 0.1);
      Stop stop = Stop.of(kilograms(mass), Si.of(speed, Kind.SPEED), Si.of(way, Kind.LENGTH));
      return Draft.of(
              piece
                  + "falls with "
                  + text(speed)
                  + " m/s when the rope comes taut, and is stopped over "
                  + text(way)
                  + " m by a steady force. How great is that force?"
                  + WITH_GRAVITY,
              Worksheets.of(stop),
              "DRO-3",
              1,
              "N")
          .fitting(Si.value(stop.force(), Kind.FORCE, "force") <= MOST_CATCH);
    }
    if (level == Level.SECOND) {
      double stiffness = draw.number(6, 40, 1);
      LinearCatch caught =
          LinearCatch.of(
              kilograms(mass), Si.of(fall, Kind.LENGTH), Si.of(1000 * stiffness, Kind.STIFFNESS));
      return Draft.of(
              piece
                  + "falls "
                  + text(fall)
                  + " m before the rope comes taut. The rope catches it like a spring of "
                  + text(stiffness)
                  + " kN/m. What is the greatest tension?"
                  + WITH_GRAVITY,
              Worksheets.of(caught),
              "DRO-4",
              1,
              "N")
          .fitting(Si.value(caught.peak(), Kind.FORCE, "peak") <= MOST_CATCH);
    }
    double leg = draw.number(1.5, 4, 0.1);
    double behind = draw.number(6, 18, 0.5);
    double modulus = draw.number(80, 300, 10);
    double mu = draw.number(0.12, 0.3, 0.01);
    double legs = draw.number(10, 85, 5);
    boolean possible = fall <= 2 * leg;
    RopeCatch rope =
        RopeCatch.of(
            kilograms(mass),
            Si.of(possible ? fall : leg, Kind.LENGTH),
            RopeStretch.forDrop(LinearStretch.of(newtons(1000 * modulus)), Source.PLAN),
            CatchPath.of(Si.of(leg, Kind.LENGTH))
                .over(
                    CatchPoint.of(
                        new FrictionRing(mu), Turn.between(IncludedAngle.of(degrees(legs)))),
                    Si.of(behind, Kind.LENGTH)));
    Worksheet sheet = inOrder(Worksheets.of(rope.locked()));
    return Draft.of(
            piece
                + "falls "
                + text(fall)
                + " m before the rope comes taut. From the piece to a friction ring there are "
                + text(leg)
                + " m of rope, behind the ring "
                + text(behind)
                + " m to where it is locked. The rope's tension over strain is "
                + text(modulus)
                + " kN, the coefficient of friction at the ring "
                + text(mu)
                + ", the angle between the legs "
                + text(legs)
                + " degrees. What is the greatest tension of the load leg?"
                + WITH_GRAVITY,
            sheet,
            "DRO-4",
            1,
            "N")
        .fitting(possible && peak(sheet) <= MOST_CATCH);
  }

  private static double peak(Worksheet sheet) {
    return sheet.steps().stream()
        .filter(step -> step.formula().equals(DropFormulas.LINEAR_PEAK))
        .mapToDouble(Step::result)
        .max()
        .orElseThrow();
  }

  /** The worksheet with the friction at the ring first, since the rest stands on it. */
  private static Worksheet inOrder(Worksheet sheet) {
    List<Line> first = new ArrayList<>();
    List<Line> rest = new ArrayList<>();
    for (Line line : sheet.lines()) {
      boolean ratio =
          line instanceof Line.Calculation one && one.step().formula().id().equals("FRI-2");
      (ratio ? first : rest).add(line);
    }
    return Worksheet.of(sheet.title(), both(first, rest));
  }

  // Whole arrangements

  private static Draft arrangements(Level level, Draw draw) {
    double mass = draw.number(80, 400, 10);
    double mu = draw.number(0.12, 0.3, 0.01);
    double out = draw.number(0.8, 4, 0.1);
    double height = draw.number(8, 16, 0.5);
    boolean byHand = level == Level.SECOND;
    Motion motion = byHand || draw.either() ? Motion.LOWERING : Motion.RAISING;
    String moved = motion == Motion.LOWERING ? "lowered" : "raised";
    Step weight = DropFormulas.WEIGHT_OF_PIECE.step(mass, GRAVITY);
    List<Line> lines = new ArrayList<>(List.of(new Line.Calculation("", weight)));
    String start =
        "Take a leaning stem as stiff. Its top point, a friction ring with a coefficient of"
            + " friction of "
            + text(mu)
            + ", is "
            + text(height)
            + " m above the base and "
            + text(out)
            + " m out from it, toward the lean. A piece of "
            + text(mass)
            + " kg hangs straight down from it and is being "
            + moved
            + ". ";
    if (level == Level.FIRST) {
      Step tail = tail(lines, motion, new FrictionRing(mu), Turn.HALF, weight.result());
      Step pull = EquilibriumFormulas.FORCE_SUM.step(weight.result(), tail.result());
      lines.add(new Line.Calculation("On the top point, straight down", pull));
      Step moment = EquilibriumFormulas.OVERTURNING.step(pull.result(), out, 0, height);
      lines.add(new Line.Calculation("", moment));
      return Draft.of(
          start
              + "The tail comes straight down to a winch that is anchored in the ground below the"
              + " point. What moment does the rigging bring to the base?"
              + WITH_GRAVITY,
          Worksheet.of("Tail straight down", lines),
          "EQU-27",
          1,
          "N.m");
    }
    if (level == Level.SECOND) {
      double first = draw.number(20, 80, 5);
      double second = draw.number(5, 30, 5);
      double post = draw.number(0.15, 0.25, 0.01);
      double wraps = draw.number(0.5, 2.5, 0.5);
      Turn top = Turn.between(IncludedAngle.of(degrees(first)));
      Step behind = tail(lines, motion, new FrictionRing(mu), top, weight.result());
      Step foot =
          tail(lines, motion, new FrictionRing(mu), Turn.of(degrees(second)), behind.result());
      Step hand = tail(lines, motion, new FrictionRing(post), Turn.ofWraps(wraps), foot.result());
      return new Draft(
              start
                  + "The angle between the legs is "
                  + text(first)
                  + " degrees. On its way down along the stem the rope runs through a second such"
                  + " ring, which turns it by "
                  + text(second)
                  + " degrees, and ends with "
                  + text(wraps)
                  + (wraps == 1 ? " wrap" : " wraps")
                  + " on a lowering device with a coefficient of friction of "
                  + text(post)
                  + ". What pull does the hand at the device need?"
                  + WITH_GRAVITY,
              Worksheet.of("Redirects along the stem, and a lowering device", lines),
              hand,
              "N",
              true)
          .fitting(hand.result() >= LEAST_HAND && hand.result() <= MOST_HAND);
    }
    double below = draw.number(20, 65, 5);
    Step tail =
        tail(
            lines,
            motion,
            new FrictionRing(mu),
            Turn.between(IncludedAngle.of(degrees(90 - below))),
            weight.result());
    double angle = Si.value(degrees(below), Kind.ANGLE, "below");
    Step level2 = EquilibriumFormulas.LEVEL_PART.step(tail.result(), angle);
    Step plumb = EquilibriumFormulas.PLUMB_PART.step(tail.result(), angle);
    Step pull = EquilibriumFormulas.FORCE_SUM.step(weight.result(), plumb.result());
    lines.add(new Line.Calculation("Tail", level2));
    lines.add(new Line.Calculation("Tail", plumb));
    lines.add(new Line.Calculation("On the top point, straight down", pull));
    Step moment = EquilibriumFormulas.OVERTURNING.step(pull.result(), out, level2.result(), height);
    lines.add(new Line.Calculation("", moment));
    return Draft.of(
            start
                + "The tail runs from the point to the foot of another tree on the side away from"
                + " the lean, "
                + text(below)
                + " degrees below level. What moment does the rigging bring to the base? Count it"
                + " positive toward the lean."
                + WITH_GRAVITY,
            Worksheet.of("Tail to the foot of another tree", lines),
            "EQU-27",
            1,
            "N.m")
        .fitting(Math.abs(moment.result()) >= 500);
  }

  /** The tension behind a contact when the load moves, with its lines. */
  private static Step tail(
      List<Line> lines, Motion motion, FrictionRing ring, Turn turn, double before) {
    ContactTensions tensions =
        motion == Motion.LOWERING
            ? ContactTensions.fromTight(ring, turn, newtons(before))
            : ContactTensions.fromSlack(ring, turn, newtons(before));
    tensions.steps().forEach(step -> lines.add(new Line.Calculation("", step)));
    return tensions.steps().get(tensions.steps().size() - 1);
  }

  private static List<Line> both(List<Line> first, List<Line> second) {
    List<Line> all = new ArrayList<>(first);
    all.addAll(second);
    return all;
  }

  private static Quantity<Angle> degrees(double value) {
    return QuantityText.parse(text(value) + " deg", Kind.ANGLE);
  }

  private static Quantity<Length> centimetres(double value) {
    return QuantityText.parse(text(value) + " cm", Kind.LENGTH);
  }

  private static Quantity<Mass> kilograms(double value) {
    return Si.of(value, Kind.MASS);
  }

  private static Quantity<Force> newtons(double value) {
    return Si.of(value, Kind.FORCE);
  }
}
