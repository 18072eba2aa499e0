package org.boleline.working.check;

import static org.boleline.units.Amounts.degrees;
import static org.boleline.units.Amounts.kilograms;
import static org.boleline.units.Amounts.kilogramsPerCubicMetre;
import static org.boleline.units.Amounts.metres;
import static org.boleline.units.Amounts.newtons;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.function.Function;
import org.boleline.drop.CatchPath;
import org.boleline.drop.CatchPoint;
import org.boleline.drop.CutGeometry;
import org.boleline.drop.LinearCatch;
import org.boleline.drop.LinearStretch;
import org.boleline.drop.RopeCatch;
import org.boleline.drop.RopeStretch;
import org.boleline.drop.Stop;
import org.boleline.drop.Swing;
import org.boleline.explain.Source;
import org.boleline.explain.Step;
import org.boleline.geometry.Heading;
import org.boleline.geometry.IncludedAngle;
import org.boleline.geometry.Turn;
import org.boleline.json.PlanReader;
import org.boleline.limits.LimitFormulas;
import org.boleline.plan.DropSpec;
import org.boleline.rope.ContactTensions;
import org.boleline.rope.FrictionRing;
import org.boleline.rope.Motion;
import org.boleline.rope.TwoLegForce;
import org.boleline.rope.Wraps;
import org.boleline.statics.Share;
import org.boleline.statics.Solution;
import org.boleline.statics.Statics;
import org.boleline.stem.TaperedCantilever;
import org.boleline.units.Kind;
import org.boleline.units.Units;
import org.boleline.wood.Log;
import org.boleline.wood.Section;
import org.boleline.working.EquilibriumFormulas;
import org.boleline.working.RigWorksheets;
import org.boleline.working.Worksheet;
import org.boleline.working.Worksheets;
import tech.units.indriya.quantity.Quantities;

/**
 * Calculations with a slip in them, worked out here by plain arithmetic and not by the library.
 * Each slip is planted into every kind of calculation that it can be made in. Invented data.
 */
final class Planted {
  private static final double G = 9.80665;

  /** As most books have it. */
  private static final double ROUNDED_G = 9.81;

  private static final double FEET = 0.3048;

  /** Behind the id of a formula, for its second use. */
  static final String SECOND = " (2)";

  /**
   * A wrong number.
   *
   * @param slip how it came about
   * @param before the steps that were written down, rightly, before it
   * @param name the step: id of its formula, with " (2)" for its second use
   * @param wrong the number, in the unit
   * @param unit the unit
   */
  record Plant(Slip slip, List<String> before, String name, double wrong, String unit) {
    boolean isCounted() {
      return name.endsWith(SECOND);
    }
  }

  /** A kind of calculation with the numbers of one case. */
  static final class Sheet {
    final Worksheet worksheet;
    final List<Plant> plants = new ArrayList<>();
    final Map<String, String> units = new LinkedHashMap<>();

    Sheet(Worksheet worksheet) {
      this.worksheet = worksheet;
      for (Step step : worksheet.steps()) {
        units.putIfAbsent(step.formula().id(), step.formula().result().unit());
      }
    }

    Sheet plant(Slip slip, String name, double wrong, String... before) {
      String unit = units.get(name.replace(SECOND, ""));
      plants.add(new Plant(slip, List.of(before), name, wrong, unit));
      return this;
    }
  }

  /** The kinds, each with how a case of it is made. */
  static final Map<String, Function<SplittableRandom, Sheet>> KINDS = new LinkedHashMap<>();

  static {
    KINDS.put("friction", Planted::friction);
    KINDS.put("two legs", Planted::twoLegs);
    KINDS.put("equal legs", Planted::equalLegs);
    KINDS.put("redirects", Planted::redirects);
    KINDS.put("redirects with one angle", Planted::redirectsWithOneAngle);
    KINDS.put("arrangement", Planted::arrangement);
    KINDS.put("wraps", Planted::wraps);
    KINDS.put("log", Planted::log);
    KINDS.put("even log", Planted::evenLog);
    KINDS.put("section", Planted::section);
    KINDS.put("cantilever", Planted::cantilever);
    KINDS.put("stout cantilever", Planted::stoutCantilever);
    KINDS.put("base moment", Planted::base);
    KINDS.put("stop", Planted::stop);
    KINDS.put("energy catch", Planted::energyCatch);
    KINDS.put("friction catch", Planted::frictionCatch);
    KINDS.put("run-out", Planted::runOut);
    KINDS.put("swing", Planted::swing);
    KINDS.put("cut above the point", Planted::cut);
    KINDS.put("checks", Planted::checks);
  }

  private Planted() {}

  /** A number as a person writes it, with so many figures. */
  static String written(double value, String unit, int figures) {
    String text =
        new BigDecimal(value)
            .round(new MathContext(figures))
            .toString()
            .replace("E+", "e")
            .replace("E", "e");
    return unit.equals("1") ? text : text + " " + unit;
  }

  private static double between(SplittableRandom random, double least, double most) {
    return least + (most - least) * random.nextDouble();
  }

  private static Sheet friction(SplittableRandom random) {
    double mu = between(random, 0.1, 0.35);
    double angle = between(random, 0.2, 2.6);
    double turn = Math.PI - angle;
    double tight = between(random, 500, 6000);
    double ratio = Math.exp(mu * turn);
    double rough = Double.parseDouble(written(ratio, "1", 2));
    return new Sheet(
            Worksheets.of(
                ContactTensions.fromTight(
                    new FrictionRing(mu),
                    Turn.between(IncludedAngle.of(degrees(Math.toDegrees(angle)))),
                    newtons(tight))))
        .plant(Slip.ANGLE_FOR_TURN, "FRI-2", Math.exp(mu * angle))
        .plant(Slip.ANGLE_FOR_TURN, "FRI-6", tight / Math.exp(mu * angle))
        .plant(Slip.FRICTION_REVERSED, "FRI-2", 1 / ratio)
        .plant(Slip.FRICTION_REVERSED, "FRI-6", tight * ratio)
        .plant(Slip.FRICTION_REVERSED, "FRI-6", tight * ratio, "FRI-2")
        .plant(Slip.NO_FRICTION, "FRI-6", tight)
        .plant(Slip.HALF_ANGLE, "FRI-2", Math.exp(mu * (Math.PI - angle / 2)))
        .plant(Slip.DEGREES_FOR_RADIANS, "FRI-2", Math.exp(mu * Math.toDegrees(turn)))
        .plant(Slip.WRAPS_FOR_RADIANS, "FRI-2", Math.exp(mu * turn / (2 * Math.PI)))
        .plant(Slip.PI_IS_THREE, "FRI-2", Math.exp(mu * Math.toDegrees(turn) * 3 / 180))
        .plant(Slip.MASS_FOR_FORCE, "FRI-6", tight / G / ratio, "FRI-2")
        .plant(Slip.POUND_MASS_FOR_FORCE, "FRI-6", tight / ratio * G / FEET, "FRI-2")
        .plant(Slip.CONVERSION, "FRI-6", tight / 1000 / ratio, "FRI-2")
        .plant(Slip.EARLY_ROUNDING, "FRI-6", tight / rough);
  }

  private static Sheet twoLegs(SplittableRandom random) {
    double t1 = between(random, 500, 6000);
    double t2 = t1 * between(random, 0.3, 0.9);
    double q = between(random, 0.2, 2.8);
    double cos = Math.cos(q);
    double right = Math.sqrt(t1 * t1 + t2 * t2 + 2 * t1 * t2 * cos);
    return new Sheet(
            Worksheets.of(
                TwoLegForce.of(
                    newtons(t1), newtons(t2), IncludedAngle.of(degrees(Math.toDegrees(q))))))
        .plant(Slip.ONE_TENSION, "FOR-1", t1 * Math.sqrt(2 + 2 * cos))
        .plant(Slip.ONE_TENSION, "FOR-1", t2 * Math.sqrt(2 + 2 * cos))
        .plant(Slip.LEGS_ADDED, "FOR-1", t1 + t2)
        .plant(Slip.WRONG_SIGN, "FOR-1", Math.sqrt(t1 * t1 + t2 * t2 - 2 * t1 * t2 * cos))
        .plant(Slip.ANGLE_FOR_TURN, "FOR-1", Math.sqrt(t1 * t1 + t2 * t2 - 2 * t1 * t2 * cos))
        .plant(
            Slip.DEGREES_FOR_RADIANS,
            "FOR-1",
            Math.sqrt(t1 * t1 + t2 * t2 + 2 * t1 * t2 * Math.cos(Math.toDegrees(q))))
        .plant(
            Slip.HALF_ANGLE, "FOR-1", Math.sqrt(t1 * t1 + t2 * t2 + 2 * t1 * t2 * Math.cos(q / 2)))
        .plant(
            Slip.SINE_FOR_COSINE, "FOR-1", Math.sqrt(t1 * t1 + t2 * t2 + 2 * t1 * t2 * Math.sin(q)))
        .plant(Slip.MASS_FOR_FORCE, "FOR-1", right / G)
        .plant(Slip.CONVERSION, "FOR-1", right / 1000);
  }

  private static Sheet equalLegs(SplittableRandom random) {
    double t = between(random, 500, 6000);
    double q = between(random, 0.2, 2.8);
    return new Sheet(
            Worksheets.of(
                TwoLegForce.withEqualTensions(
                    newtons(t), IncludedAngle.of(degrees(Math.toDegrees(q))))))
        .plant(Slip.DEGREES_FOR_RADIANS, "FOR-3", 2 * Math.cos(Math.toDegrees(q) / 2))
        .plant(Slip.HALF_ANGLE, "FOR-3", 2 * Math.cos(q))
        .plant(Slip.HALF_ANGLE, "FOR-4", 2 * t * Math.cos(q / 4))
        .plant(Slip.SINE_FOR_COSINE, "FOR-3", 2 * Math.sin(q / 2))
        .plant(Slip.ANGLE_FOR_TURN, "FOR-3", 2 * Math.cos((Math.PI - q) / 2))
        .plant(Slip.LEGS_ADDED, "FOR-4", 2 * t)
        .plant(Slip.MASS_FOR_FORCE, "FOR-4", 2 * t / G * Math.cos(q / 2), "FOR-3")
        .plant(Slip.CONVERSION, "FOR-4", 2 * t / 1000 * Math.cos(q / 2));
  }

  private static Sheet redirects(SplittableRandom random) {
    double mu = between(random, 0.1, 0.35);
    double over = between(random, 0.1, 0.35);
    double first = between(random, 0.2, 2.4);
    double second = between(random, 0.2, 1.2);
    double load = between(random, 500, 6000);
    double t1 = Math.exp(mu * (Math.PI - first));
    double t2 = Math.exp(over * second);
    return new Sheet(
            Worksheets.ofChain(
                Motion.LOWERING,
                newtons(load),
                List.of(new FrictionRing(mu), new FrictionRing(over)),
                List.of(
                    Turn.between(IncludedAngle.of(degrees(Math.toDegrees(first)))),
                    Turn.of(degrees(Math.toDegrees(second))))))
        .plant(Slip.FRICTION_REVERSED, "FRI-6", load * t1)
        .plant(Slip.NO_FRICTION, "FRI-6", load)
        .plant(Slip.ONE_TENSION, "FOR-1", load * Math.sqrt(2 + 2 * Math.cos(first)), "FRI-6")
        .plant(Slip.ANGLE_FOR_TURN, "FRI-6", load / Math.exp(mu * first))
        .plant(Slip.FRICTION_REVERSED, "FRI-6 (2)", load * t1 * t2)
        .plant(Slip.FRICTION_REVERSED, "FRI-6 (2)", load / t1 * t2, "FRI-6")
        .plant(Slip.NO_FRICTION, "FRI-6 (2)", load)
        .plant(Slip.NO_FRICTION, "FRI-6 (2)", load / t1, "FRI-6");
  }

  /** The angle between the legs of the first point is the turn at the second. */
  private static Sheet redirectsWithOneAngle(SplittableRandom random) {
    double mu = between(random, 0.1, 0.35);
    double over = between(random, 0.1, 0.35);
    double angle = Math.toRadians(20 + 5 * random.nextInt(12));
    double load = between(random, 500, 6000);
    double right = load / Math.exp(mu * (Math.PI - angle));
    double wrong = load / Math.exp(mu * angle);
    double t2 = Math.exp(over * angle);
    double cos = Math.cos(Math.PI - angle);
    return new Sheet(
            Worksheets.ofChain(
                Motion.LOWERING,
                newtons(load),
                List.of(new FrictionRing(mu), new FrictionRing(over)),
                List.of(
                    Turn.between(IncludedAngle.of(degrees(Math.toDegrees(angle)))),
                    Turn.of(degrees(Math.toDegrees(angle))))))
        .plant(Slip.ANGLE_FOR_TURN, "FRI-6", wrong)
        .plant(Slip.ANGLE_FOR_TURN, "FRI-6 (2)", wrong / t2)
        .plant(Slip.ANGLE_FOR_TURN, "FOR-1 (2)", legs(wrong, wrong / t2, cos))
        .plant(Slip.ANGLE_FOR_TURN, "FOR-1 (2)", legs(right, right / t2, -cos), "FRI-6 (2)")
        .plant(Slip.LEGS_ADDED, "FOR-1 (2)", right + right / t2)
        .plant(Slip.ONE_TENSION, "FOR-1 (2)", right * Math.sqrt(2 + 2 * cos));
  }

  private static double legs(double t1, double t2, double cos) {
    return Math.sqrt(t1 * t1 + t2 * t2 + 2 * t1 * t2 * cos);
  }

  /** Tail to the foot of another tree, as a sum of moments. */
  private static Sheet arrangement(SplittableRandom random) {
    double weight = between(random, 800, 4000);
    double tail = weight / between(random, 1.2, 2.5);
    double below = between(random, 0.3, 1.2);
    double out = between(random, 0.8, 4);
    double height = between(random, 8, 16);
    double level = tail * Math.cos(below);
    double plumb = tail * Math.sin(below);
    double swappedPull = weight + level;
    return new Sheet(
            Worksheet.ofSteps(
                "Tail to the foot of another tree",
                List.of(
                    EquilibriumFormulas.LEVEL_PART.step(tail, below),
                    EquilibriumFormulas.PLUMB_PART.step(tail, below),
                    EquilibriumFormulas.FORCE_SUM.step(weight, plumb),
                    EquilibriumFormulas.OVERTURNING.step(weight + plumb, out, level, height))))
        .plant(Slip.SINE_FOR_COSINE, "EQU-25", plumb)
        .plant(Slip.SINE_FOR_COSINE, "EQU-27", swappedPull * out - plumb * height)
        .plant(Slip.SINE_FOR_COSINE, "EQU-27", swappedPull * out - level * height, "EQU-25")
        .plant(Slip.WRONG_SIGN, "EQU-27", (weight + plumb) * out + level * height)
        .plant(Slip.WRONG_SIGN, "EQU-27", level * height - (weight + plumb) * out)
        .plant(Slip.DEGREES_FOR_RADIANS, "EQU-26", tail * Math.sin(Math.toDegrees(below)));
  }

  private static Sheet wraps(SplittableRandom random) {
    double mu = between(random, 0.1, 0.3);
    double tight = between(random, 2000, 9000);
    double hand = between(random, 80, 300);
    double log = Math.log(tight / hand);
    return new Sheet(Worksheets.of(Wraps.needed(newtons(tight), newtons(hand), mu)))
        .plant(Slip.WRAPS_FOR_RADIANS, "FRI-11", log / mu)
        .plant(Slip.PI_IS_THREE, "FRI-11", log / (2 * 3 * mu))
        .plant(Slip.MASS_FOR_FORCE, "FRI-11", Math.log(tight / (hand / G)) / (2 * Math.PI * mu))
        .plant(Slip.CONVERSION, "FRI-11", Math.log(tight / (hand / 1000)) / (2 * Math.PI * mu));
  }

  private static Sheet log(SplittableRandom random) {
    double length = between(random, 1, 5);
    double large = between(random, 0.25, 0.8);
    double small = large * between(random, 0.5, 0.95);
    double density = between(random, 700, 1100);
    double volume = Math.PI / 12 * length * (large * large + large * small + small * small);
    return new Sheet(
            Worksheets.of(
                Log.of(
                    metres(length), metres(large), metres(small), kilogramsPerCubicMetre(density))))
        .plant(Slip.DIAMETER_FOR_RADIUS, "LOG-1", volume * 4)
        .plant(Slip.DIAMETER_FOR_RADIUS, "LOG-8", volume / 4 * density)
        .plant(Slip.PI_IS_THREE, "LOG-1", volume * 3 / Math.PI)
        .plant(Slip.PI_IS_THREE, "LOG-9", volume * 3 / Math.PI * density * G)
        .plant(Slip.PI_IS_THREE, "LOG-9", volume * 3 / Math.PI * density * ROUNDED_G)
        .plant(Slip.DIAMETER_FOR_RADIUS, "LOG-9", volume * 4 * density * ROUNDED_G)
        .plant(Slip.OTHER_GRAVITY, "LOG-9", volume * density * 10)
        .plant(Slip.CONVERSION, "LOG-1", volume * 1e4)
        .plant(Slip.CONVERSION, "LOG-1", volume / FEET)
        .plant(Slip.MASS_FOR_FORCE, "LOG-9", volume * density, "LOG-1", "LOG-8")
        .plant(Slip.POUND_MASS_FOR_FORCE, "LOG-9", volume * density * G * G / FEET, "LOG-8");
  }

  /** A log without taper, as a cylinder. */
  private static Sheet evenLog(SplittableRandom random) {
    double length = between(random, 1, 5);
    double thick = between(random, 0.25, 0.8);
    double density = between(random, 700, 1100);
    double weight = Math.PI / 4 * thick * thick * length * density * G;
    return new Sheet(
            Worksheets.of(
                Log.of(
                    metres(length), metres(thick), metres(thick), kilogramsPerCubicMetre(density))))
        .plant(Slip.WRONG_POWER, "LOG-1", Math.PI / 4 * thick * length)
        .plant(Slip.WRONG_POWER, "LOG-9", weight / thick)
        .plant(Slip.DIAMETER_FOR_RADIUS, "LOG-9", weight * 4)
        .plant(Slip.DIAMETER_FOR_RADIUS, "LOG-9", weight * 4 / G * 9.8)
        .plant(Slip.OTHER_GRAVITY, "LOG-9", weight / G * 10);
  }

  private static Sheet section(SplittableRandom random) {
    double outer = between(random, 0.3, 1);
    double cavity = outer * between(random, 0.3, 0.8);
    double area = Math.PI / 4 * (outer * outer - cavity * cavity);
    double inertia = Math.PI / 64 * (Math.pow(outer, 4) - Math.pow(cavity, 4));
    double cubed = Math.PI / 64 * (Math.pow(outer, 3) - Math.pow(cavity, 3));
    return new Sheet(Worksheets.of(Section.offCentre(metres(outer), metres(cavity), metres(0))))
        .plant(Slip.DIAMETER_FOR_RADIUS, "SEC-1", area / 4)
        .plant(Slip.DIAMETER_FOR_RADIUS, "SEC-1", area * 4)
        .plant(Slip.DIAMETER_FOR_RADIUS, "SEC-3", inertia * 16, "SEC-1")
        .plant(Slip.DIAMETER_FOR_RADIUS, "SEC-5", inertia / outer, "SEC-4")
        .plant(Slip.WRONG_POWER, "SEC-3", cubed)
        .plant(Slip.WRONG_POWER, "SEC-3", cubed * 0.01)
        .plant(Slip.PI_IS_THREE, "SEC-3", inertia * 3 / Math.PI)
        .plant(Slip.CONVERSION, "SEC-1", area * 1e4)
        .plant(Slip.CONVERSION, "SEC-4", inertia * 1e8);
  }

  private static Sheet cantilever(SplittableRandom random) {
    double length = between(random, 4, 15);
    double base = between(random, 0.3, 0.8);
    double tip = base * between(random, 0.2, 0.6);
    double modulus = between(random, 5, 12) * 1e9;
    double force = between(random, 200, 3000);
    double moment = force * length;
    double stress = 32 * moment / (Math.PI * base * base * base);
    double move =
        64 * force * Math.pow(length, 3) / (3 * Math.PI * modulus * Math.pow(base, 3) * tip);
    return new Sheet(
            Worksheets.of(
                TaperedCantilever.of(
                    metres(length),
                    metres(base),
                    metres(tip),
                    Quantities.getQuantity(modulus, Units.PASCAL),
                    newtons(force))))
        .plant(Slip.NO_ARM, "BEA-1", force)
        .plant(Slip.MASS_FOR_FORCE, "BEA-1", moment / G)
        .plant(Slip.CONVERSION, "BEA-1", moment / 1000)
        .plant(Slip.WRONG_POWER, "BEA-3", 32 * moment / (Math.PI * base * base), "BEA-1")
        .plant(Slip.WRONG_POWER, "BEA-3", 32 * moment / (Math.PI * base * base * 0.001), "BEA-1")
        .plant(Slip.DIAMETER_FOR_RADIUS, "BEA-3", stress * 8, "BEA-1")
        .plant(Slip.DIAMETER_FOR_RADIUS, "BEA-3", stress / 8)
        .plant(Slip.PI_IS_THREE, "BEA-3", stress * Math.PI / 3, "BEA-1")
        .plant(Slip.WRONG_POWER, "BEA-6", move / length)
        .plant(Slip.DIAMETER_FOR_RADIUS, "BEA-6", move * 16)
        .plant(Slip.MASS_FOR_FORCE, "BEA-6", move / G)
        .plant(Slip.CONVERSION, "BEA-6", move * 1000);
  }

  /** So little taper that the greatest stress is at the base. */
  private static Sheet stoutCantilever(SplittableRandom random) {
    double length = between(random, 4, 15);
    double base = between(random, 0.3, 0.8);
    double tip = base * between(random, 0.7, 0.95);
    double modulus = between(random, 5, 12) * 1e9;
    double force = between(random, 200, 3000);
    double move =
        64 * force * Math.pow(length, 3) / (3 * Math.PI * modulus * Math.pow(base, 3) * tip);
    return new Sheet(
            Worksheets.of(
                TaperedCantilever.of(
                    metres(length),
                    metres(base),
                    metres(tip),
                    Quantities.getQuantity(modulus, Units.PASCAL),
                    newtons(force))))
        .plant(Slip.DIAMETER_FOR_RADIUS, "BEA-6", move * 2)
        .plant(Slip.DIAMETER_FOR_RADIUS, "BEA-6", move * 8)
        .plant(Slip.DIAMETER_FOR_RADIUS, "BEA-6", move / 2)
        .plant(Slip.WRONG_POWER, "BEA-6", move / length)
        .plant(Slip.CONVERSION, "BEA-6", move * 1e6);
  }

  /** A stem whose own weight bends it, the same in every case. */
  private static Sheet base(SplittableRandom random) {
    Solution solution = Rig.SOLUTION;
    String stem =
        solution.stems().stream()
            .filter(one -> own(one.shares()) != null)
            .findFirst()
            .orElseThrow()
            .id();
    List<Share> shares = solution.stem(stem).orElseThrow().shares();
    Share own = own(shares);
    int axis = Math.abs(own.moment().in(Kind.MOMENT)[0]) > 1 ? 0 : 1;
    double before = 0;
    for (Share share : shares.subList(0, shares.indexOf(own))) {
      before += share.moment().in(Kind.MOMENT)[axis];
    }
    double sum = before + own.moment().in(Kind.MOMENT)[axis];
    String[] names = new String[axis * shares.size() + shares.indexOf(own)];
    Arrays.fill(names, "EQU-6");
    return new Sheet(RigWorksheets.ofShares(solution, stem))
        .plant(Slip.NO_OWN_WEIGHT, "EQU-6", before, names)
        .plant(Slip.CONVERSION, "EQU-6", sum / 1000, names);
  }

  private static Share own(List<Share> shares) {
    return shares.stream()
        .filter(share -> share.origin() == Share.Origin.OWN_WEIGHT)
        .findFirst()
        .orElse(null);
  }

  /** Solved once. */
  private static final class Rig {
    static final Solution SOLUTION = solved();

    private static Solution solved() {
      try (InputStream stream = Planted.class.getResourceAsStream("/plans/everything.json")) {
        return Statics.analyse(PlanReader.read(stream)).arrangements().stream()
            .flatMap(arrangement -> arrangement.solution().stream())
            .findFirst()
            .orElseThrow();
      } catch (IOException e) {
        throw new UncheckedIOException(e);
      }
    }
  }

  private static Sheet stop(SplittableRandom random) {
    double mass = between(random, 50, 400);
    double speed = between(random, 2, 8);
    double way = between(random, 0.3, 2);
    double right = mass * (G + speed * speed / (2 * way));
    return new Sheet(
            Worksheets.of(
                Stop.of(
                    kilograms(mass),
                    Quantities.getQuantity(speed, Units.METRE_PER_SECOND),
                    metres(way))))
        .plant(Slip.NO_OWN_WEIGHT, "DRO-3", mass * speed * speed / (2 * way))
        .plant(Slip.STATIC_FOR_PEAK, "DRO-3", mass * G)
        .plant(Slip.MASS_FOR_FORCE, "DRO-1", mass)
        .plant(Slip.MASS_FOR_FORCE, "DRO-3", right / G, "DRO-1")
        .plant(Slip.OTHER_GRAVITY, "DRO-1", mass * 10)
        .plant(Slip.WRONG_SIGN, "DRO-3", mass * (G - speed * speed / (2 * way)))
        .plant(Slip.CONVERSION, "DRO-3", mass * (ROUNDED_G + speed * speed / (2 * way * 1000)))
        .plant(Slip.WRONG_POWER, "DRO-3", mass * (G + speed / (2 * way)))
        .plant(Slip.CONVERSION, "DRO-3", mass * (G + speed * speed / (2 * way * 100)));
  }

  private static Sheet energyCatch(SplittableRandom random) {
    double mass = between(random, 50, 400);
    double fall = between(random, 0.5, 4);
    double stiffness = between(random, 8e3, 60e3);
    double weight = mass * G;
    double peak = peak(weight, stiffness, fall);
    return new Sheet(
            Worksheets.of(
                LinearCatch.of(
                    kilograms(mass),
                    metres(fall),
                    Quantities.getQuantity(stiffness, Units.NEWTON_PER_METRE))))
        .plant(Slip.NO_OWN_WEIGHT, "DRO-4", Math.sqrt(2 * weight * stiffness * fall), "DRO-1")
        .plant(Slip.STATIC_FOR_PEAK, "DRO-4", weight)
        .plant(Slip.MASS_FOR_FORCE, "DRO-1", mass)
        .plant(Slip.MASS_FOR_FORCE, "DRO-4", peak(mass, stiffness, fall))
        .plant(Slip.POUND_MASS_FOR_FORCE, "DRO-1", weight * G / FEET)
        .plant(Slip.CONVERSION, "DRO-4", peak(weight, stiffness / 1000, fall), "DRO-1")
        .plant(Slip.CONVERSION, "DRO-4", peak(mass * ROUNDED_G, stiffness / 1000, fall))
        .plant(Slip.WRONG_SIGN, "DRO-4", peak - 2 * weight)
        .plant(Slip.CONVERSION, "DRO-8", peak / stiffness * 1000, "DRO-4")
        .plant(Slip.STATIC_FOR_PEAK, "DRO-8", weight / stiffness, "DRO-1", "DRO-4");
  }

  private static double peak(double weight, double stiffness, double fall) {
    return weight * (1 + Math.sqrt(1 + 2 * stiffness * fall / weight));
  }

  private static Sheet frictionCatch(SplittableRandom random) {
    double mass = between(random, 50, 400);
    double fall = between(random, 0.5, 4);
    double leg = between(random, 2, 4);
    double behind = between(random, 5, 18);
    double modulus = between(random, 100e3, 400e3);
    double mu = between(random, 0.1, 0.3);
    double angle = between(random, 0.3, 1.4);
    double ratio = Math.exp(mu * (Math.PI - angle));
    double mixed = Math.exp(mu * angle);
    double weight = mass * G;
    double length = leg + behind / ratio;
    return new Sheet(
            Worksheets.of(
                RopeCatch.of(
                        kilograms(mass),
                        metres(fall),
                        RopeStretch.forDrop(LinearStretch.of(newtons(modulus)), Source.PLAN),
                        CatchPath.of(metres(leg))
                            .over(
                                CatchPoint.of(
                                    new FrictionRing(mu),
                                    Turn.between(IncludedAngle.of(degrees(Math.toDegrees(angle))))),
                                metres(behind)))
                    .locked()))
        .plant(Slip.ROPE_ON_ONE_SIDE, "DRO-9", leg)
        .plant(Slip.ROPE_ON_ONE_SIDE, "DRO-9", behind / ratio)
        .plant(Slip.ROPE_ON_ONE_SIDE, "DRO-10", modulus / leg)
        .plant(Slip.ROPE_ON_ONE_SIDE, "DRO-4", peak(weight, modulus / leg, fall))
        .plant(Slip.ANGLE_FOR_TURN, "DRO-9", leg + behind / mixed)
        .plant(Slip.FRICTION_REVERSED, "DRO-9", leg + behind * ratio)
        .plant(Slip.NO_FRICTION, "DRO-9", leg + behind)
        .plant(Slip.NO_FRICTION, "DRO-4", peak(weight, modulus / (leg + behind), fall))
        .plant(Slip.CONVERSION, "DRO-10", modulus / 1000 / length, "DRO-9")
        .plant(
            Slip.NO_OWN_WEIGHT,
            "DRO-4",
            Math.sqrt(2 * weight * modulus / length * fall),
            "DRO-9",
            "DRO-10")
        .plant(Slip.STATIC_FOR_PEAK, "FRI-6", weight / ratio, "DRO-4")
        .plant(Slip.MASS_FOR_FORCE, "DRO-4", peak(mass, modulus / length, fall), "DRO-10");
  }

  private static Sheet runOut(SplittableRandom random) {
    double mass = between(random, 60, 300);
    double fall = between(random, 0.5, 3);
    double leg = between(random, 2, 4);
    double behind = between(random, 5, 18);
    double slip = between(random, 2, 5) * mass * G;
    Worksheet sheet =
        Worksheets.of(
            RopeCatch.of(
                    kilograms(mass),
                    metres(fall),
                    RopeStretch.forDrop(LinearStretch.of(newtons(300e3)), Source.PLAN),
                    CatchPath.of(metres(leg))
                        .over(CatchPoint.of(new FrictionRing(0.2), Turn.HALF), metres(behind)))
                .letRun(DropSpec.Slipping.of(newtons(slip))));
    Step run =
        sheet.steps().stream()
            .filter(step -> step.formula().id().equals("DRO-12"))
            .findFirst()
            .orElse(null);
    Sheet planted = new Sheet(sheet);
    if (run == null) {
      return planted;
    }
    double energy = run.input(0);
    double tension = run.input(1);
    double weight = mass * G;
    return planted
        .plant(Slip.NO_OWN_WEIGHT, "DRO-12", energy / tension, "DRO-11", "DRO-13")
        .plant(Slip.MASS_FOR_FORCE, "DRO-12", energy / (tension - mass), "DRO-13")
        .plant(Slip.CONVERSION, "DRO-12", energy / 1000 / (tension - weight), "DRO-13")
        .plant(Slip.MASS_FOR_FORCE, "DRO-11", tension / G);
  }

  private static Sheet swing(SplittableRandom random) {
    double mass = between(random, 50, 300);
    double rope = between(random, 2, 10);
    double angle = between(random, 0.3, 1.4);
    double speed = Math.sqrt(2 * G * rope * (1 - Math.cos(angle)));
    double inDegrees = 1 - Math.cos(Math.toDegrees(angle));
    return new Sheet(
            Worksheets.of(Swing.of(kilograms(mass), metres(rope), degrees(Math.toDegrees(angle)))))
        .plant(Slip.DEGREES_FOR_RADIANS, "SWI-4", Math.sqrt(2 * G * rope * inDegrees))
        .plant(Slip.CONVERSION, "SWI-4", speed / FEET)
        .plant(Slip.NO_OWN_WEIGHT, "SWI-5", mass * speed * speed / rope, "SWI-4")
        .plant(Slip.STATIC_FOR_PEAK, "SWI-5", mass * G)
        .plant(Slip.MASS_FOR_FORCE, "SWI-5", mass * (speed * speed / rope + G) / G, "SWI-4")
        .plant(Slip.WRONG_POWER, "SWI-5", mass * (speed / rope + G), "SWI-4");
  }

  private static Sheet cut(SplittableRandom random) {
    double below = between(random, 0.3, 1);
    double sling = between(random, 0.1, 0.6);
    double tie = between(random, 0.3, 1);
    double balance = between(random, 1.1, 2.5);
    double lean = between(random, 0.05, 0.6);
    double depth = below * Math.cos(lean) + sling;
    double across = (tie + below) * Math.sin(lean);
    double rope = Math.hypot(tie * Math.cos(lean) + depth, across);
    double fall = balance * Math.cos(lean) + depth + rope + balance - tie;
    return new Sheet(
            Worksheets.of(
                CutGeometry.builder()
                    .cutHeight(metres(14))
                    .heading(Heading.of(degrees(Math.toDegrees(lean)), degrees(0)))
                    .piece(metres(2 * balance + 1), metres(balance))
                    .tie(metres(tie))
                    .attachment(metres(below))
                    .sling(metres(sling))
                    .build()))
        .plant(Slip.SINE_FOR_COSINE, "CUT-1", below * Math.sin(lean) + sling)
        .plant(Slip.DEGREES_FOR_RADIANS, "CUT-1", below * Math.cos(Math.toDegrees(lean)) + sling)
        .plant(Slip.ROPE_ON_ONE_SIDE, "CUT-6", fall - rope, "CUT-1", "CUT-3")
        .plant(Slip.CONVERSION, "CUT-6", fall / FEET, "CUT-1", "CUT-3");
  }

  private static Sheet checks(SplittableRandom random) {
    double capacity = between(random, 10e3, 60e3);
    double demand = capacity / between(random, 1.5, 12);
    double q = between(random, 0.3, 2.2);
    double bend = between(random, 0.03, 0.2);
    double rope = between(random, 0.01, 0.02);
    return new Sheet(
            Worksheet.ofSteps(
                "Checks",
                List.of(
                    LimitFormulas.BASKET.step(capacity, q),
                    LimitFormulas.BEND_RATIO.step(bend, rope),
                    LimitFormulas.FACTOR.step(capacity * 0.9, demand))))
        .plant(Slip.HALF_ANGLE, "LIM-6", 2 * capacity * Math.cos(q / 4))
        .plant(Slip.HALF_ANGLE, "LIM-6", 2 * capacity * Math.cos(q))
        .plant(Slip.SINE_FOR_COSINE, "LIM-6", 2 * capacity * Math.sin(q / 2))
        .plant(Slip.DEGREES_FOR_RADIANS, "LIM-6", 2 * capacity * Math.cos(Math.toDegrees(q) / 2))
        .plant(Slip.DIAMETER_FOR_RADIUS, "LIM-5", bend / 2 / rope)
        .plant(Slip.CONVERSION, "LIM-5", bend * 10 / rope)
        .plant(Slip.MASS_FOR_FORCE, "LIM-1", capacity * 0.9 / demand * G)
        .plant(Slip.CONVERSION, "LIM-1", capacity * 0.9 / demand / 1000);
  }
}
