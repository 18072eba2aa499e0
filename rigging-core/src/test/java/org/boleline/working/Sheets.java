package org.boleline.working;

import static org.boleline.units.Amounts.centimetres;
import static org.boleline.units.Amounts.degrees;
import static org.boleline.units.Amounts.gigapascals;
import static org.boleline.units.Amounts.kilograms;
import static org.boleline.units.Amounts.kilogramsPerCubicMetre;
import static org.boleline.units.Amounts.kilonewtons;
import static org.boleline.units.Amounts.metres;
import static org.boleline.units.Amounts.newtons;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import javax.measure.Quantity;
import org.boleline.drop.CatchPath;
import org.boleline.drop.CatchPoint;
import org.boleline.drop.Caught;
import org.boleline.drop.CutGeometry;
import org.boleline.drop.DropFound;
import org.boleline.drop.DropResult;
import org.boleline.drop.Drops;
import org.boleline.drop.LetRun;
import org.boleline.drop.LinearCatch;
import org.boleline.drop.LinearStretch;
import org.boleline.drop.RopeCatch;
import org.boleline.drop.RopeStretch;
import org.boleline.drop.StandardFall;
import org.boleline.drop.Stop;
import org.boleline.drop.Swing;
import org.boleline.explain.Source;
import org.boleline.geometry.IncludedAngle;
import org.boleline.geometry.Turn;
import org.boleline.json.PlanReader;
import org.boleline.limits.ArrangementChecks;
import org.boleline.limits.Check;
import org.boleline.limits.Checks;
import org.boleline.plan.DropSpec;
import org.boleline.plan.Plan;
import org.boleline.rope.ContactTensions;
import org.boleline.rope.FrictionFound;
import org.boleline.rope.FrictionRing;
import org.boleline.rope.HoldRange;
import org.boleline.rope.Motion;
import org.boleline.rope.Sheave;
import org.boleline.rope.Tackle;
import org.boleline.rope.TwoLegForce;
import org.boleline.rope.Wraps;
import org.boleline.statics.Solution;
import org.boleline.statics.StaticResult;
import org.boleline.statics.Statics;
import org.boleline.statics.StemResult;
import org.boleline.stem.TaperedCantilever;
import org.boleline.units.Kind;
import org.boleline.units.Si;
import org.boleline.units.Units;
import org.boleline.wood.Log;
import org.boleline.wood.Section;
import org.boleline.wood.StrengthLoss;
import tech.units.indriya.quantity.Quantities;

/** One worksheet of each kind, with the number of the library that it must show. Invented data. */
final class Sheets {
  /** A worksheet and the library's number, in the SI unit. */
  record Case(String name, Worksheet sheet, double headline) {
    @Override
    public String toString() {
      return name;
    }
  }

  private Sheets() {}

  static StaticResult solved() {
    return Statics.analyse(plan("everything.json"));
  }

  static Plan plan(String name) {
    try (InputStream stream = Sheets.class.getResourceAsStream("/plans/" + name)) {
      return PlanReader.read(stream);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  static List<Case> all() {
    List<Case> all = new ArrayList<>(single());
    StaticResult statics = solved();
    DropResult drops = Drops.analyse(statics);
    statics.arrangements().forEach(a -> a.solution().ifPresent(s -> all.addAll(of(s))));
    drops.answers().stream()
        .filter(DropFound.class::isInstance)
        .map(DropFound.class::cast)
        .forEach(
            drop ->
                all.add(
                    new Case(
                        "drop " + drop.id(),
                        Worksheets.of(drop),
                        Si.value(drop.loads().points().get(0).magnitude(), Kind.FORCE, ""))));
    for (ArrangementChecks one : Checks.of(drops).arrangements()) {
      for (Check check : one.checks()) {
        check
            .factorFound()
            .ifPresent(factor -> all.add(new Case("check " + check, Worksheets.of(check), factor)));
      }
    }
    return all;
  }

  static List<Case> of(Solution solution) {
    List<Case> all = new ArrayList<>();
    String id = solution.id();
    solution
        .handTension()
        .ifPresent(
            hand ->
                all.add(
                    new Case(
                        "rope " + id,
                        RigWorksheets.ofRope(solution),
                        Si.value(hand, Kind.FORCE, ""))));
    for (StemResult stem : solution.stems()) {
      all.add(
          new Case(
              "base " + id + " " + stem.id(),
              RigWorksheets.ofBase(solution, stem.id()),
              Si.value(stem.base().momentMagnitude(), Kind.MOMENT, "")));
      int middle = stem.profile().count() / 2;
      double[] moment = stem.profile().moments(Kind.MOMENT)[middle];
      all.add(
          new Case(
              "cut " + id + " " + stem.id(),
              RigWorksheets.ofCut(
                  solution, stem.id(), metres(stem.profile().stations(Kind.LENGTH)[middle])),
              Math.sqrt(moment[0] * moment[0] + moment[1] * moment[1] + moment[2] * moment[2])));
    }
    return all;
  }

  private static List<Case> single() {
    List<Case> all = new ArrayList<>();
    FrictionRing ring = new FrictionRing(0.2);
    ContactTensions tensions = ContactTensions.fromTight(ring, Turn.HALF, newtons(2000));
    add(all, "contact", Worksheets.of(tensions), tensions.slack(), Kind.FORCE);
    Sheave sheave = new Sheave(0.9);
    Turn quarter = Turn.of(degrees(80));
    add(
        all,
        "sheave",
        Worksheets.ofSheave(sheave, quarter, newtons(1700)),
        ContactTensions.fromTight(sheave, quarter, newtons(1700)).slack(),
        Kind.FORCE);
    ContactTensions next = ContactTensions.fromTight(sheave, quarter, tensions.slack());
    add(
        all,
        "chain",
        Worksheets.ofChain(
            Motion.LOWERING, newtons(2000), List.of(ring, sheave), List.of(Turn.HALF, quarter)),
        next.slack(),
        Kind.FORCE);
    ContactTensions up = ContactTensions.fromSlack(ring, Turn.ofWraps(1.5), newtons(300));
    add(
        all,
        "chain, raising",
        Worksheets.ofChain(Motion.RAISING, newtons(300), List.of(ring), List.of(Turn.ofWraps(1.5))),
        up.tight(),
        Kind.FORCE);
    HoldRange range = HoldRange.of(newtons(900)).past(ring, Turn.HALF);
    add(all, "held", Worksheets.of(range), range.least(), Kind.FORCE);
    FrictionFound found = FrictionFound.from(newtons(880), newtons(350), Turn.HALF);
    add(all, "friction found", Worksheets.of(found), found.load(), Kind.FORCE);
    TwoLegForce legs = TwoLegForce.of(newtons(931.6), newtons(484), IncludedAngle.of(degrees(30)));
    add(all, "two legs", Worksheets.of(legs), legs.magnitude(), Kind.FORCE);
    TwoLegForce equal =
        TwoLegForce.withEqualTensions(newtons(931.6), IncludedAngle.of(degrees(30)));
    add(all, "equal legs", Worksheets.of(equal), equal.magnitude(), Kind.FORCE);
    Wraps wraps = Wraps.needed(newtons(4000), newtons(150), 0.18).withOtherTurn(Turn.HALF);
    all.add(new Case("wraps", Worksheets.of(wraps), wraps.exactWraps()));
    Tackle tackle = Tackle.of(4, sheave).withLeadSheaves(1);
    add(
        all,
        "tackle",
        Worksheets.of(tackle, newtons(5000)),
        tackle.linePull(newtons(5000)),
        Kind.FORCE);
    Log log = Log.of(metres(2.4), centimetres(45), centimetres(38), kilogramsPerCubicMetre(950));
    add(all, "log", Worksheets.of(log), log.weight(), Kind.FORCE);
    add(all, "balance", Worksheets.of(log), log.balancePoint(), Kind.LENGTH);
    Section section = Section.offCentre(centimetres(50), centimetres(30), centimetres(4));
    add(
        all,
        "section",
        Worksheets.of(section),
        section.leastSecondMoment(),
        Kind.SECOND_MOMENT_OF_AREA);
    all.add(
        new Case(
            "loss",
            Worksheets.of(StrengthLoss.of(section)),
            StrengthLoss.of(section).sectionModulusShareLost().orElseThrow()));
    TaperedCantilever beam =
        TaperedCantilever.of(
            metres(9), centimetres(40), centimetres(16), gigapascals(9), newtons(400));
    add(all, "cantilever", Worksheets.of(beam), beam.greatestStress(), Kind.PRESSURE);
    Stop stop =
        Stop.of(kilograms(80), Quantities.getQuantity(4.0, Units.METRE_PER_SECOND), metres(0.8));
    add(all, "stop", Worksheets.of(stop), stop.force(), Kind.FORCE);
    LinearCatch linear =
        LinearCatch.of(
            kilograms(200), metres(2), Quantities.getQuantity(25e3, Units.NEWTON_PER_METRE));
    add(all, "linear catch", Worksheets.of(linear), linear.peak(), Kind.FORCE);
    StandardFall fall = StandardFall.of(kilograms(80), 0.3, kilonewtons(40));
    add(all, "standard fall", Worksheets.of(fall), fall.peak(), Kind.FORCE);
    RopeCatch rope =
        RopeCatch.of(
            kilograms(200),
            metres(2),
            RopeStretch.forDrop(LinearStretch.of(kilonewtons(250)), Source.PLAN),
            CatchPath.of(metres(2)).over(CatchPoint.of(ring, Turn.HALF), metres(13)));
    Caught caught = rope.locked();
    add(all, "friction catch", Worksheets.of(caught), caught.peak(), Kind.FORCE);
    LetRun run = rope.letRun(DropSpec.Slipping.of(kilonewtons(3)));
    add(all, "run-out", Worksheets.of(run), ((LetRun.Stopped) run).run(), Kind.LENGTH);
    CutGeometry.Builder above =
        CutGeometry.builder()
            .cutHeight(metres(12))
            .piece(metres(3), metres(1.3))
            .tie(metres(0.5))
            .attachment(metres(0.4))
            .sling(metres(0.3));
    add(all, "cut", Worksheets.of(above.build()), above.build().fall(), Kind.LENGTH);
    Swing swing = Swing.of(kilograms(150), metres(6), degrees(50));
    add(all, "swing", Worksheets.of(swing), swing.greatestTension(), Kind.FORCE);
    Swing slack = swing.withSlack(metres(1));
    add(all, "swing with slack", Worksheets.of(slack), slack.greatestTension(), Kind.FORCE);
    return all;
  }

  private static <Q extends Quantity<Q>> void add(
      List<Case> all, String name, Worksheet sheet, Quantity<Q> headline, Kind<Q> kind) {
    all.add(new Case(name, sheet, Si.value(headline, kind, name)));
  }
}
