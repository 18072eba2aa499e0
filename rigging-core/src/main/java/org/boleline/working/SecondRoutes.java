package org.boleline.working;

import java.util.ArrayList;
import java.util.List;
import org.boleline.drop.DropFormulas;
import org.boleline.drop.Stop;
import org.boleline.drop.SwingFormulas;
import org.boleline.explain.Step;
import org.boleline.rope.FrictionFormulas;
import org.boleline.rope.FrictionFound;
import org.boleline.rope.Tackle;
import org.boleline.rope.TwoLegForce;
import org.boleline.stem.BeamFormulas;
import org.boleline.stem.TaperedCantilever;
import org.boleline.wood.StrengthLoss;
import org.boleline.wood.WoodFormulas;

/** Second routes to the numbers of single calculations. */
final class SecondRoutes {
  /** So many that a tension ratio is good to a few millionths. */
  private static final int PIECES = 100_000;

  /** So small that wraps are good to a billionth. */
  private static final double TURN_OF_PIECE = 1e-3;

  /** So many that deflections are good to a millionth, whatever the taper. */
  private static final int SLICES = 10_000;

  private SecondRoutes() {}

  /**
   * Of each ratio over a round contact or a sheave that the steps hold, once. The step behind a
   * ratio is the tension that it gives.
   */
  static List<Line> ratios(String where, List<Step> steps) {
    List<Line> lines = new ArrayList<>();
    for (Step step : steps.stream().distinct().toList()) {
      if (step.formula() == FrictionFormulas.CAPSTAN) {
        lines.add(
            new Line.TwoRoutes(
                Shown.capital(where + "tension ratio"),
                "by the law of belt friction",
                step,
                "by the balance of many short pieces of the rope",
                EquilibriumFormulas.BY_PIECES.step(step.input(0), step.input(1), PIECES)));
      } else if (step.formula() == FrictionFormulas.SHEAVE && step.input(1) <= Math.PI) {
        lines.addAll(pin(where, steps, step));
      }
    }
    return lines;
  }

  /** What a sheave takes from the tension, beside the moment balance about its pin. */
  private static List<Line> pin(String where, List<Step> steps, Step ratio) {
    Step other = steps.get(steps.indexOf(ratio) + 1);
    boolean slack = other.formula() == FrictionFormulas.SLACK_TENSION;
    double tightSide = slack ? other.input(0) : other.result();
    double slackSide = slack ? other.result() : other.input(0);
    List<Line> lines = new ArrayList<>();
    Step force =
        steps.stream()
            .filter(step -> step.formula() == FrictionFormulas.TWO_LEG_FORCE)
            .findFirst()
            .orElse(null);
    if (force == null) {
      double legs = Math.PI - ratio.input(1);
      force = FrictionFormulas.TWO_LEG_FORCE.step(tightSide, slackSide, legs);
      lines.add(Worksheets.line(force));
    }
    lines.add(
        new Line.TwoRoutes(
            Shown.capital(where + "what the sheave takes"),
            "by the tensions",
            EquilibriumFormulas.DRAG_BY_TENSIONS.step(tightSide, slackSide),
            "by the moment balance about the pin",
            EquilibriumFormulas.DRAG_BY_PIN.step(ratio.input(0), force.result())));
    return lines;
  }

  static List<Line> load(FrictionFound found) {
    Step friction = found.steps().get(0);
    Step load = found.steps().get(1);
    Step ratio = FrictionFormulas.CAPSTAN.step(friction.result(), friction.input(2));
    return List.of(
        new Line.Calculation("With the friction found", ratio),
        new Line.TwoRoutes(
            "Load",
            "by both tensions alone",
            load,
            "by the friction found and the raising tension",
            FrictionFormulas.SLACK_TENSION.step(friction.input(0), ratio.result())));
  }

  static Line size(TwoLegForce force) {
    List<Step> steps = force.steps();
    Step first = steps.get(0);
    if (first.formula() == FrictionFormulas.TWO_LEG_FORCE) {
      return size(first, "by the law of cosines", first.input(0), first.input(1), first.input(2));
    }
    Step last = steps.get(1);
    double tension = last.input(0);
    return size(last, "by the factor of the angle", tension, tension, first.input(0));
  }

  private static Line size(Step size, String route, double one, double other, double angle) {
    return new Line.TwoRoutes(
        "Force on the point",
        route,
        size,
        "by components along and across the first leg",
        EquilibriumFormulas.TWO_LEGS.step(one, other, angle));
  }

  static Line wraps(Step needed) {
    return new Line.TwoRoutes(
        "Wraps needed",
        "by the law of belt friction",
        needed,
        "by short pieces of the rope, one after the other",
        EquilibriumFormulas.WRAPS_BY_PIECES.step(
            needed.input(0), needed.input(1), needed.input(2), needed.input(3), TURN_OF_PIECE));
  }

  static Line ratio(Tackle tackle) {
    Step ratio = tackle.steps().get(0);
    return new Line.TwoRoutes(
        "Load over line pull",
        "part of line by part of line",
        ratio,
        "by the sum in closed form",
        EquilibriumFormulas.TACKLE_SUM.step(ratio.input(0), ratio.input(1), ratio.input(2)));
  }

  static List<Line> loss(StrengthLoss loss) {
    List<Step> steps = loss.steps();
    boolean atTheCentre =
        steps.stream()
            .anyMatch(
                one -> one.formula() == WoodFormulas.LEAST_SECOND_MOMENT && one.input(2) == 0);
    if (!atTheCentre || loss.sectionModulusShareLost().isEmpty()) {
      return List.of();
    }
    Step left = Worksheets.last(steps, WoodFormulas.LOSS);
    Step power = Worksheets.last(steps, WoodFormulas.CODER_INDEX);
    return List.of(
        new Line.TwoRoutes(
            "Section modulus lost",
            "by the section moduli with and without the cavity",
            left,
            "by the fourth power of the diameters, for a cavity at the centre",
            power));
  }

  static List<Line> of(TaperedCantilever cantilever) {
    List<Step> steps = cantilever.steps();
    List<Line> lines = new ArrayList<>();
    cantilever
        .greatestStressStep()
        .ifPresent(
            one ->
                lines.add(
                    new Line.TwoRoutes(
                        "Greatest stress",
                        "by moment and diameter at its place",
                        Worksheets.last(steps, BeamFormulas.STRESS),
                        "by one formula",
                        one)));
    Step deflection = Worksheets.last(steps, BeamFormulas.DEFLECTION);
    double[] beam = new double[deflection.formula().inputs().size() + 1];
    for (int i = 0; i < beam.length - 1; i++) {
      beam[i] = deflection.input(i);
    }
    beam[beam.length - 1] = SLICES;
    lines.add(
        new Line.TwoRoutes(
            "Deflection of the tip",
            "in one formula",
            deflection,
            "the bending of each slice times its distance from the tip, added up",
            EquilibriumFormulas.DEFLECTION_BY_SLICES.step(beam)));
    lines.add(
        new Line.TwoRoutes(
            "Slope of the tip",
            "in one formula",
            Worksheets.last(steps, BeamFormulas.SLOPE),
            "the bending of each slice, added up",
            EquilibriumFormulas.SLOPE_BY_SLICES.step(beam)));
    return lines;
  }

  static Line energy(Stop stop) {
    Step weight = Worksheets.last(stop.steps(), DropFormulas.WEIGHT_OF_PIECE);
    Step force = Worksheets.last(stop.steps(), DropFormulas.CONSTANT_FORCE_STOP);
    return new Line.TwoRoutes(
        "Energy taken up",
        "work of the force less that of the weight",
        EquilibriumFormulas.WORK_OF_STOP.step(force.result(), weight.result(), force.input(3)),
        "energy of motion when the rope comes taut",
        EquilibriumFormulas.ENERGY_OF_MOTION.step(force.input(0), force.input(2)));
  }

  static Line tension(Step speed, Step tension) {
    boolean released = speed.input(0) == 0 && Math.abs(speed.input(3)) <= Math.PI / 2;
    Step closed =
        released
            ? SwingFormulas.RELEASED_TENSION.step(
                tension.input(0), tension.input(3), Math.abs(speed.input(3)), speed.input(4))
            : EquilibriumFormulas.SWING_TENSION.step(
                tension.input(0),
                speed.input(0),
                tension.input(2),
                tension.input(3),
                speed.input(3),
                speed.input(4));
    return new Line.TwoRoutes(
        "Greatest tension",
        "by the speed there",
        tension,
        released
            ? "by the closed form of a swing let go at rest"
            : "by the closed form, without the speed there",
        closed);
  }
}
