package org.boleline.working;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import javax.measure.Quantity;
import javax.measure.quantity.Energy;
import javax.measure.quantity.Force;
import javax.measure.quantity.Length;
import org.boleline.drop.Caught;
import org.boleline.drop.CutFormulas;
import org.boleline.drop.CutGeometry;
import org.boleline.drop.DropFormulas;
import org.boleline.drop.DropFound;
import org.boleline.drop.EnergyAccount;
import org.boleline.drop.LetRun;
import org.boleline.drop.LinearCatch;
import org.boleline.drop.StandardFall;
import org.boleline.drop.Stop;
import org.boleline.drop.Swing;
import org.boleline.drop.SwingCatch;
import org.boleline.explain.Formula;
import org.boleline.explain.Step;
import org.boleline.explain.Symbol;
import org.boleline.geometry.IncludedAngle;
import org.boleline.geometry.Turn;
import org.boleline.limits.Check;
import org.boleline.limits.LimitFormulas;
import org.boleline.rope.ContactTensions;
import org.boleline.rope.FrictionFormulas;
import org.boleline.rope.FrictionFound;
import org.boleline.rope.Hardware;
import org.boleline.rope.HoldRange;
import org.boleline.rope.Motion;
import org.boleline.rope.Sheave;
import org.boleline.rope.Tackle;
import org.boleline.rope.TwoLegForce;
import org.boleline.rope.Wraps;
import org.boleline.stem.TaperedCantilever;
import org.boleline.units.Kind;
import org.boleline.units.QuantityText;
import org.boleline.units.Si;
import org.boleline.wood.Log;
import org.boleline.wood.Section;
import org.boleline.wood.StrengthLoss;
import org.boleline.wood.WoodFormulas;

/**
 * Worksheets of results: each lists the steps that the result itself holds.
 *
 * <p>The balance of a solved rig has worksheets of its own, in {@link RigWorksheets}.
 */
public final class Worksheets {
  private Worksheets() {}

  /**
   * Makes the worksheet of the tensions at one contact. A fixed round contact has its ratio piece
   * by piece as a second route, a sheave the balance about its pin.
   *
   * @param tensions the tensions
   * @return the worksheet
   */
  public static Worksheet of(ContactTensions tensions) {
    return Worksheet.ofSteps("Tension over a contact", tensions.steps())
        .plus(SecondRoutes.ratios("", tensions.steps()));
  }

  /**
   * Makes the worksheet of the tensions at a sheave, with the balance about its pin as a second
   * route.
   *
   * @param sheave the sheave
   * @param turn turn of the rope
   * @param tight tension on the tight side
   * @return the worksheet; its second line is that of {@link ContactTensions#fromTight}
   */
  public static Worksheet ofSheave(Sheave sheave, Turn turn, Quantity<Force> tight) {
    return Worksheet.of(
        "Tension over a sheave", of(ContactTensions.fromTight(sheave, turn, tight)).lines());
  }

  /**
   * Makes the worksheet of a rope that runs over contacts one after the other, with the force on
   * each of them. Each contact has the second route of {@link #of(ContactTensions)}.
   *
   * @param motion lowering or raising
   * @param load tension of the load
   * @param hardware the contacts, from the load on
   * @param turns the turn at each of them
   * @return the worksheet; every contact has the lines of {@link ContactTensions} and, up to half a
   *     turn, those of {@link TwoLegForce}
   * @throws IllegalArgumentException if the lists differ in length or the motion is held
   */
  public static Worksheet ofChain(
      Motion motion, Quantity<Force> load, List<Hardware> hardware, List<Turn> turns) {
    if (hardware.size() != turns.size()) {
      throw new IllegalArgumentException(
          "turns: wants " + hardware.size() + ", one for each contact, got " + turns.size());
    }
    if (motion == Motion.HELD) {
      throw new IllegalArgumentException("motion: wants lowering or raising, got held");
    }
    List<Line> lines = new ArrayList<>();
    Quantity<Force> tension = load;
    for (int i = 0; i < hardware.size(); i++) {
      String contact = "Contact " + (i + 1);
      boolean lowering = motion == Motion.LOWERING;
      ContactTensions tensions =
          lowering
              ? ContactTensions.fromTight(hardware.get(i), turns.get(i), tension)
              : ContactTensions.fromSlack(hardware.get(i), turns.get(i), tension);
      Quantity<Force> after = lowering ? tensions.slack() : tensions.tight();
      List<Step> steps = new ArrayList<>(tensions.steps());
      if (turns.get(i).wraps() <= 0.5) {
        steps.addAll(TwoLegForce.of(tension, after, IncludedAngle.from(turns.get(i))).steps());
      }
      steps.forEach(step -> lines.add(new Line.Calculation(contact, step)));
      lines.addAll(SecondRoutes.ratios(contact + ", ", steps));
      tension = after;
    }
    return Worksheet.of("Rope over contacts, " + motion.text(), lines);
  }

  /**
   * Makes the worksheet of the range of tensions that hold a load, with the second routes of {@link
   * #of(ContactTensions)}.
   *
   * @param range the range
   * @return the worksheet
   */
  public static Worksheet of(HoldRange range) {
    return Worksheet.ofSteps("Tensions that hold a load", range.steps())
        .plus(SecondRoutes.ratios("", range.steps()));
  }

  /**
   * Makes the worksheet of friction found from a pair of tensions, with the load over the friction
   * found as a second route.
   *
   * @param found the friction
   * @return the worksheet
   */
  public static Worksheet of(FrictionFound found) {
    return Worksheet.ofSteps("Friction from a pair of tensions", found.steps())
        .plus(SecondRoutes.load(found));
  }

  /**
   * Makes the worksheet of the force of two legs, with the sum of components as a second route.
   *
   * @param force the force
   * @return the worksheet
   */
  public static Worksheet of(TwoLegForce force) {
    return Worksheet.ofSteps("Force of two legs on the point between them", force.steps())
        .plus(List.of(SecondRoutes.size(force)));
  }

  /**
   * Makes the worksheet of wraps needed, with what the hand holds at that many, and with wraps laid
   * piece by piece as a second route.
   *
   * @param wraps the wraps
   * @return the worksheet
   */
  public static Worksheet of(Wraps wraps) {
    Step needed = wraps.steps().get(0);
    double turn = 2 * Math.PI * needed.result() + needed.input(3);
    Step ratio = FrictionFormulas.CAPSTAN.step(needed.input(2), turn);
    return Worksheet.ofSteps("Wraps around a lowering device", wraps.steps())
        .plus(
            List.of(
                new Line.Remark(
                    "Back again: with exactly the wraps needed, the hand must come out as stated,"
                        + " unless none are needed."),
                new Line.Calculation("Exactly the wraps needed", ratio),
                new Line.Calculation(
                    "Hand at exactly the wraps needed",
                    FrictionFormulas.SLACK_TENSION.step(needed.input(0), ratio.result())),
                SecondRoutes.wraps(needed)));
  }

  /**
   * Makes the worksheet of a tackle under a load, with the closed form of its ratio as a second
   * route.
   *
   * @param tackle the tackle
   * @param load the load
   * @return the worksheet
   */
  public static Worksheet of(Tackle tackle, Quantity<Force> load) {
    return Worksheet.ofSteps("Line pull of a tackle", tackle.steps())
        .plus(List.of(line(tackle.linePullStep(load)), SecondRoutes.ratio(tackle)));
  }

  /**
   * Makes the worksheet of a log's weight and balance point, with both from two halves as a second
   * route.
   *
   * @param log the log
   * @return the worksheet
   */
  public static Worksheet of(Log log) {
    Quantity<Length> none = Si.of(0, Kind.LENGTH);
    double half = Si.value(log.length(), Kind.LENGTH, "length") / 2;
    Log first = log.between(none, Si.of(half, Kind.LENGTH));
    Log second = log.between(Si.of(half, Kind.LENGTH), log.length());
    Step whole = last(log.steps(), WoodFormulas.LOG_WEIGHT);
    Step balance = last(log.steps(), WoodFormulas.BALANCE_POINT);
    double w1 = newtons(first.weight());
    double w2 = newtons(second.weight());
    double z1 = last(first.steps(), WoodFormulas.BALANCE_POINT).result();
    double z2 = half + last(second.steps(), WoodFormulas.BALANCE_POINT).result();
    return Worksheet.ofSteps("Weight and balance point of a log", log.steps())
        .plus(
            List.of(
                new Line.TwoRoutes(
                    "Weight",
                    "of the whole log",
                    whole,
                    "of the two halves, each by the same formulas",
                    EquilibriumFormulas.FORCE_SUM.step(w1, w2)),
                new Line.TwoRoutes(
                    "Balance point",
                    "of the whole log",
                    balance,
                    "by the weights and balance points of the two halves",
                    EquilibriumFormulas.BALANCE_OF_PARTS.step(w1, z1, w2, z2))));
  }

  /**
   * Makes the worksheet of a section's properties, with its least second moment of area about a
   * shifted axis as a second route.
   *
   * @param section the section
   * @return the worksheet
   */
  public static Worksheet of(Section section) {
    List<Step> steps = section.steps();
    Step least = last(steps, WoodFormulas.LEAST_SECOND_MOMENT);
    return Worksheet.ofSteps("Properties of a section", steps)
        .plus(
            List.of(
                new Line.TwoRoutes(
                    "Least second moment of area",
                    "in one formula",
                    least,
                    "about the outer centre, then shifted to the centroid",
                    EquilibriumFormulas.SHIFTED_SECOND_MOMENT.step(
                        least.input(0),
                        least.input(1),
                        least.input(2),
                        last(steps, WoodFormulas.AREA).result(),
                        last(steps, WoodFormulas.CENTROID_POSITION).result()))));
  }

  /**
   * Makes the worksheet of what a cavity takes from a section. A closed cavity at the centre has
   * the power of its diameter as a second route.
   *
   * @param loss the loss
   * @return the worksheet
   */
  public static Worksheet of(StrengthLoss loss) {
    return Worksheet.ofSteps("Strength lost to a cavity", loss.steps())
        .plus(SecondRoutes.loss(loss));
  }

  /**
   * Makes the worksheet of a tapered cantilever, with deflection and slope added up slice by slice
   * as second routes, and the closed form of the greatest stress where there is one.
   *
   * @param cantilever the cantilever
   * @return the worksheet
   */
  public static Worksheet of(TaperedCantilever cantilever) {
    return Worksheet.ofSteps("Tapered cantilever", cantilever.steps())
        .plus(SecondRoutes.of(cantilever));
  }

  /**
   * Makes the worksheet of a stop by a constant force, with its energies as a second route.
   *
   * @param stop the stop
   * @return the worksheet
   */
  public static Worksheet of(Stop stop) {
    return Worksheet.ofSteps("Stop by a constant force", stop.steps())
        .plus(List.of(SecondRoutes.energy(stop)));
  }

  /**
   * Makes the worksheet of a catch by a linear spring, with its energies as a second route.
   *
   * @param caught the catch
   * @return the worksheet
   */
  public static Worksheet of(LinearCatch caught) {
    List<Line> lines = new ArrayList<>();
    for (Step step : caught.steps()) {
      boolean bySpeed = step.formula().equals(DropFormulas.SPEED_PEAK);
      String what = bySpeed ? "Greatest tension by the speed alone, gravity left out" : "";
      lines.add(new Line.Calculation(what, step));
    }
    return Worksheet.of("Catch by energy balance", lines).plus(energies(caught.steps()));
  }

  /**
   * Makes the worksheet of a standard fall, with that of one metre of the rope as a second route.
   *
   * @param fall the fall
   * @return the worksheet
   */
  public static Worksheet of(StandardFall fall) {
    Worksheet sheet = Worksheet.ofSteps("Standard fall", fall.steps());
    double weight = fall.steps().get(0).result();
    Step peak = fall.steps().get(fall.steps().size() - 1);
    if (peak.formula() != DropFormulas.STANDARD_PEAK) {
      return sheet;
    }
    return sheet.plus(
        List.of(
            new Line.TwoRoutes(
                "Greatest tension",
                "by fall factor",
                peak,
                "of one metre of the rope: k = EA / 1 m, h = f times 1 m",
                DropFormulas.LINEAR_PEAK.step(weight, peak.input(2), peak.input(1)))));
  }

  /**
   * Makes the worksheet of a catch on a locked rope that runs over points with friction, with its
   * energy account.
   *
   * @param caught the catch
   * @return the worksheet
   */
  public static Worksheet of(Caught caught) {
    return Worksheet.ofSteps("Catch on a locked rope", caught.steps())
        .plus(energies(caught.steps()))
        .plus(searched(caught.steps(), caught.peak()))
        .plus(account(caught.energy()));
  }

  /**
   * Makes the worksheet of a catch that is let run, with its energy account where it stops.
   *
   * @param run the catch
   * @return the worksheet
   */
  public static Worksheet of(LetRun run) {
    Worksheet sheet = Worksheet.ofSteps("Catch that is let run", run.steps());
    return run instanceof LetRun.Stopped stopped ? sheet.plus(account(stopped.energy())) : sheet;
  }

  /**
   * Makes the worksheet of a drop of a plan.
   *
   * @param drop the drop
   * @return the worksheet, with the run of its device if there is one
   */
  public static Worksheet of(DropFound drop) {
    Worksheet sheet = Worksheet.ofSteps("Drop of arrangement " + drop.id(), drop.steps());
    if (drop.energy().isPresent()) {
      sheet =
          sheet
              .plus(searched(drop.steps(), drop.loads().loadLeg()))
              .plus(account(drop.energy().get()));
    }
    sheet = sheet.plus(List.of(new Line.Remark(drop.knownBias())));
    if (drop.inTime().isPresent()) {
      sheet =
          sheet.plus(
              List.of(
                  new Line.Remark(
                      "These steps are of the energy balance. The catch in time is followed step by"
                          + " step and has no working by hand.")));
    }
    return drop.letRun().isPresent() ? sheet.plus(of(drop.letRun().get()).lines()) : sheet;
  }

  /**
   * Makes the worksheet of a swing's greatest tension and of what the rope catches, with the closed
   * form as a second route.
   *
   * @param swing the swing
   * @return the worksheet
   */
  public static Worksheet of(Swing swing) {
    List<Line> lines = new ArrayList<>();
    for (SwingCatch caught : swing.catches()) {
      caught.steps().forEach(step -> lines.add(new Line.Calculation("Rope comes taut", step)));
    }
    Step speed = swing.steps().get(0);
    Step tension = swing.steps().get(1);
    lines.add(line(speed));
    lines.add(line(tension));
    lines.add(SecondRoutes.tension(speed, tension));
    return Worksheet.of("Greatest tension of a swing", lines);
  }

  /**
   * Makes the worksheet of a cut above the point that holds the piece. A plumb stem with the point
   * on its axis has the short formula as a second route.
   *
   * @param cut the geometry
   * @return the worksheet
   */
  public static Worksheet of(CutGeometry cut) {
    Worksheet sheet = Worksheet.ofSteps("Fall of a piece that is cut above the point", cut.steps());
    Step depth = last(cut.steps(), CutFormulas.POINT_DEPTH);
    Step leg = last(cut.steps(), CutFormulas.LOAD_LEG);
    Step fall = last(cut.steps(), CutFormulas.BALANCE_FALL);
    if (depth.input(1) != 0 || depth.input(3) != 0) {
      return sheet;
    }
    return sheet.plus(
        List.of(
            new Line.TwoRoutes(
                "Fall of the balance point",
                "from place to place",
                fall,
                "by the short formula of a plumb stem",
                CutFormulas.PLUMB_FALL.step(
                    depth.input(0), depth.input(2), fall.input(0), fall.input(1), leg.input(1)))));
  }

  /**
   * Makes the worksheet of a check of demand against capacity.
   *
   * @param check the check
   * @return the worksheet, which ends with what was asked, by whom, and whether it is met
   */
  public static Worksheet of(Check check) {
    List<Line> lines = new ArrayList<>();
    for (Step step : check.steps()) {
      lines.add(line(inUnitOf(check.kind(), step)));
    }
    lines.add(new Line.Remark(check.sentence()));
    return Worksheet.of("Check of " + check.name() + ", " + check.where(), lines);
  }

  /** The factor between two stresses or moments has their unit, not that of a force. */
  private static Step inUnitOf(Kind<?> kind, Step step) {
    Formula factor = LimitFormulas.FACTOR;
    if (step.formula() != factor || kind == Kind.FORCE) {
      return step;
    }
    List<Symbol> inputs =
        factor.inputs().stream()
            .map(s -> new Symbol(s.name(), s.meaning(), kind.ucum(), s.least(), s.most()))
            .toList();
    return Formula.of(
            factor.id(),
            factor.text(),
            factor.result(),
            inputs,
            factor.validity(),
            factor.source(),
            factor::value)
        .step(step.input(0), step.input(1));
  }

  /** The energies of a catch by a linear spring, if its steps have one. */
  private static List<Line> energies(List<Step> steps) {
    if (steps.stream().noneMatch(step -> step.formula() == DropFormulas.LINEAR_PEAK)) {
      return List.of();
    }
    Step peak = last(steps, DropFormulas.LINEAR_PEAK);
    Step stretch = last(steps, DropFormulas.LINEAR_STRETCH);
    return List.of(
        new Line.TwoRoutes(
            "Energy at the lowest point",
            "work of the weight",
            EquilibriumFormulas.WORK_OF_WEIGHT.step(peak.input(0), peak.input(2), stretch.result()),
            "taken up by the spring",
            EquilibriumFormulas.SPRING_ENERGY.step(peak.input(1), stretch.result())));
  }

  /** What to say where no formula gives the peak. */
  private static List<Line> searched(List<Step> steps, Quantity<Force> peak) {
    return steps.stream().anyMatch(step -> step.formula() == DropFormulas.LINEAR_PEAK)
        ? List.of()
        : List.of(
            new Line.Remark(
                "The rope's curve gives no formula for the peak. Its load leg, "
                    + QuantityText.print(peak, Kind.FORCE)
                    + ", is searched for: the tension at which the energy left, DRO-13, is"
                    + " nothing."));
  }

  private static List<Line> account(EnergyAccount energy) {
    List<String> names = new ArrayList<>(List.of("stored in rope", "stored in springs"));
    List<Quantity<Energy>> parts =
        new ArrayList<>(List.of(energy.storedInRope(), energy.storedInSprings()));
    for (int i = 0; i < energy.heatAtPoints().size(); i++) {
      names.add("heat at point " + (i + 1));
      parts.add(energy.heatAtPoints().get(i));
    }
    names.addAll(List.of("heat in device", "taken by hand"));
    parts.addAll(List.of(energy.heatInDeviceAtMost(), energy.takenByHand()));
    List<double[]> rows = new ArrayList<>();
    double sum = 0;
    for (Quantity<Energy> part : parts) {
      double joules = Si.value(part, Kind.ENERGY, "energy");
      sum = EquilibriumFormulas.ENERGY_SUM.value(sum, joules);
      rows.add(new double[] {joules});
    }
    double given = Si.value(energy.given(), Kind.ENERGY, "given");
    names.addAll(List.of("sum", "given by weight", "difference"));
    rows.addAll(List.of(new double[] {sum}, new double[] {given}, new double[] {sum - given}));
    return List.of(
        new Line.Table(
            "Where the energy goes",
            List.of(EquilibriumFormulas.ENERGY_SUM),
            List.of(
                new Symbol(
                    "E",
                    "energy",
                    Kind.ENERGY.ucum(),
                    Double.NEGATIVE_INFINITY,
                    Double.POSITIVE_INFINITY)),
            names,
            rows.toArray(new double[0][])));
  }

  static Line line(Step step) {
    return new Line.Calculation("", step);
  }

  static Step last(List<Step> steps, Formula formula) {
    return IntStream.iterate(steps.size() - 1, i -> i >= 0, i -> i - 1)
        .mapToObj(steps::get)
        .filter(step -> step.formula() == formula)
        .findFirst()
        .orElseThrow();
  }

  static double newtons(Quantity<Force> force) {
    return Si.value(force, Kind.FORCE, "force");
  }
}
