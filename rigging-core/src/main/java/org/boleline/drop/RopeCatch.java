package org.boleline.drop;

import static java.util.Objects.requireNonNull;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import javax.measure.Quantity;
import javax.measure.quantity.Acceleration;
import javax.measure.quantity.Force;
import javax.measure.quantity.Length;
import javax.measure.quantity.Mass;
import org.boleline.explain.Caution;
import org.boleline.explain.CautionCode;
import org.boleline.explain.PlanRefusedException;
import org.boleline.explain.Refusal;
import org.boleline.explain.Refusals;
import org.boleline.explain.Step;
import org.boleline.geometry.Turn;
import org.boleline.internal.drop.CatchKernel;
import org.boleline.internal.drop.CatchState;
import org.boleline.plan.DropSpec;
import org.boleline.rope.Hardware;
import org.boleline.units.Kind;
import org.boleline.units.Moment;
import org.boleline.units.QuantityText;
import org.boleline.units.Si;

/**
 * A piece that falls free and is caught by a rope that runs over points.
 *
 * <p>While the tension rises the rope slips toward the load at every point, so every leg behind one
 * carries less and gives less. The work of the load leg is known exactly for any stretch curve, and
 * the greatest tension is where it has taken up all that the weight gave.
 *
 * <p>Left out: mass and damping of the rope, turning of the piece. Rope that passes from leg to leg
 * is counted where it lay when the rope was taut, or where it is ({@link #withPassingRope}). No
 * comparison with measured drops is claimed.
 *
 * <p>Immutable and thread-safe; equality is exact.
 *
 * <pre>{@code
 * RopeCatch piece = RopeCatch.of(kilograms(200), metres(2), rope, path);
 * piece.locked().peak();
 * piece.letRun(DropSpec.Slipping.of(kilonewtons(3))); // with the locked catch beside it
 * }</pre>
 */
public final class RopeCatch {
  /** So close to the locked tension, nothing runs. */
  private static final double ROUNDING = 1e-14;

  private final double mass;
  private final double fall;
  private final RopeStretch rope;
  private final CatchPath path;
  private final double gravity;
  private final double tieToCentre;
  private final boolean passing;

  private RopeCatch(
      double mass,
      double fall,
      RopeStretch rope,
      CatchPath path,
      double gravity,
      double tieToCentre,
      boolean passing) {
    this.mass = mass;
    this.fall = fall;
    this.rope = rope;
    this.path = path;
    this.gravity = gravity;
    this.tieToCentre = tieToCentre;
    this.passing = passing;
  }

  /**
   * Obtains a catch under standard gravity, of a piece that is tied at its centre of gravity.
   *
   * @param mass mass of the piece, from 1 mg to 1000 t, not null
   * @param fall how far the centre of gravity falls until the rope is taut, from zero to twice the
   *     load leg, at most 200 m, not null
   * @param rope stretch of the rope, not null
   * @param path legs and points, not null
   * @return the catch
   * @throws org.boleline.explain.PlanRefusedException if a value is outside its range
   */
  public static RopeCatch of(
      Quantity<Mass> mass, Quantity<Length> fall, RopeStretch rope, CatchPath path) {
    return of(mass, fall, rope, path, Si.of(0, Kind.LENGTH));
  }

  /**
   * Obtains a catch under standard gravity, of a piece that is tied off its centre of gravity and
   * may turn over as it falls.
   *
   * @param mass mass of the piece, from 1 mg to 1000 t, not null
   * @param fall how far the centre of gravity falls until the rope is taut, from zero to twice the
   *     load leg and {@code tieToCentre} together, at most 200 m, not null
   * @param rope stretch of the rope, not null
   * @param path legs and points, not null
   * @param tieToCentre from where the rope is tied on to the centre of gravity, from zero to 200 m,
   *     not null
   * @return the catch
   * @throws org.boleline.explain.PlanRefusedException if a value is outside its range
   */
  public static RopeCatch of(
      Quantity<Mass> mass,
      Quantity<Length> fall,
      RopeStretch rope,
      CatchPath path,
      Quantity<Length> tieToCentre) {
    requireNonNull(mass, "mass");
    requireNonNull(fall, "fall");
    requireNonNull(rope, "rope");
    requireNonNull(path, "path");
    requireNonNull(tieToCentre, "tieToCentre");
    return Refusals.check(
        refusals -> {
          double m =
              refusals
                  .at("mass")
                  .between(mass, Kind.MASS, CatchBounds.LEAST_MASS, CatchBounds.MASS);
          double h = refusals.at("fall").between(fall, Kind.LENGTH, 0, CatchBounds.FALL);
          double tie =
              refusals.at("tieToCentre").between(tieToCentre, Kind.LENGTH, 0, CatchBounds.FALL);
          double most = 2 * (path.lengthArray()[0] + tie);
          if (h > most) {
            refusals
                .at("fall")
                .add(
                    Refusal.Code.CONFLICT,
                    "at most twice the load leg and the distance from tie to centre of gravity"
                        + " together, "
                        + QuantityText.print(Si.of(most, Kind.LENGTH), Kind.LENGTH)
                        + ": the rope is taut before",
                    QuantityText.print(fall, Kind.LENGTH));
          }
          return new RopeCatch(m, h, rope, path, CatchBounds.STANDARD_GRAVITY_M_PER_S2, tie, false);
        });
  }

  /**
   * Returns this catch under another gravity.
   *
   * @param newGravity acceleration of gravity, from 1 mm/s2 to 1000 m/s2, not null
   * @return the catch
   * @throws org.boleline.explain.PlanRefusedException if it is outside its range
   */
  public RopeCatch withGravity(Quantity<Acceleration> newGravity) {
    return new RopeCatch(
        mass, fall, rope, path, CatchBounds.gravity(newGravity), tieToCentre, passing);
  }

  /**
   * Returns this catch with rope that passes a point counted where it is, or where it lay.
   *
   * <p>Where it lay, as by default, leaves out that rope which has passed into the next leg
   * stretches as that leg does, and is off by the order of the strain. Where it is: each leg behind
   * a point holds L / (1 + e) of rope, the load leg all the rest.
   *
   * @equation x = n * (1 + e1) - L1, n = L1 + sum of L_i * e_i / (1 + e_i) over the legs behind; A
   *     = integral of T over x; G = T * (1 + e) - U
   * @validity as {@link #locked}; points that do not give way
   * @source energy balance, derived
   * @accuracy relative error of the peak below 1e-11
   * @param whereItIs true for rope counted where it is, false for where it lay when it was taut
   * @return the catch
   * @throws org.boleline.explain.PlanRefusedException if rope is to be counted where it is and a
   *     point gives way
   */
  public RopeCatch withPassingRope(boolean whereItIs) {
    return Refusals.check(
        refusals -> {
          if (whereItIs && path.pointsGive()) {
            refusals
                .at("path")
                .add(
                    Refusal.Code.CONFLICT,
                    "points that do not give way where rope is counted where it is",
                    "a path with points that give way");
          }
          return new RopeCatch(mass, fall, rope, path, gravity, tieToCentre, whereItIs);
        });
  }

  /**
   * Returns the catch with the rope made fast where it is held.
   *
   * @equation W * (h + x) = sum of P_i * L_i * U(e(T / P_i)), the greatest T; for a linear rope F =
   *     W * (1 + sqrt(1 + 2 * k * h / W)) with k = EA / (L1 + L2 / t1 + L3 / (t1 * t2) + ...)
   * @validity rope slips toward the load at every point while the tension rises; no mass and
   *     damping of the rope; piece falls straight
   * @source energy balance, derived
   * @accuracy relative error of the peak below 1e-12
   * @return the catch
   */
  public Caught locked() {
    List<Step> steps = new ArrayList<>();
    double weight = weight(steps);
    CatchModel model = model(0);
    double energy = weight * fall;
    CatchState peak = model.peak(weight, energy, steps);
    CatchLoads loads = model.loads(peak.tension(), steps);
    EnergyAccount account =
        new EnergyAccount(
            energy + weight * peak.travel(),
            model.storedInRope(peak),
            model.storedInSprings(peak),
            model.heats(peak),
            0,
            0);
    return new Caught(loads, weight, peak.travel(), fall, account, steps, cautions(model, peak));
  }

  /**
   * Returns the catch with a device that slips at a set tension.
   *
   * @equation T = T_slip * P; s = K / (T - W); Q = T_slip * s
   * @validity as {@link #locked}; slip tension the same at any speed and heat
   * @source energy balance, derived
   * @accuracy relative error below 1e-12 of run plus stretch
   * @param device the device, not null
   * @return whether and where the piece stops
   */
  public LetRun letRun(DropSpec.Slipping device) {
    return run(Si.value(device.slipTension(), Kind.FORCE, "slipTension"), 0, 0, 0);
  }

  /**
   * Returns the catch with wraps on a device and a hand behind them, which holds after a delay;
   * until then the rope runs without tension.
   *
   * @equation d = v * T_d + g * T_d^2 / 2, then as with a device that slips at T_hand * t
   * @validity as {@link #locked}; the rope that ran before the hold is part of the load leg then
   * @source energy balance and free fall, derived
   * @accuracy relative error below 1e-12 of run plus stretch
   * @param hand force and delay of the hand, not null
   * @param device what the wraps lie on, as it acts in a catch, not null
   * @param wraps turn of the rope on the device, not null
   * @return whether and where the piece stops
   * @throws org.boleline.explain.PlanRefusedException if the tension at the device is above 1e100 N
   */
  public LetRun letRun(DropSpec.ByHand hand, Hardware device, Turn wraps) {
    return letRun(hand, device, wraps, Si.of(0, Kind.FORCE));
  }

  /**
   * Returns the catch with wraps on a device and a hand behind them, which holds after a delay;
   * until then the rope runs under an idle tension.
   *
   * <p>The stretch of the rope under the idle tension is left out: its energy counts as heat, and
   * the rope stretches from nothing when the hand holds.
   *
   * @equation d = v * T_d + (g - T / m) * T_d^2 / 2, then as with a device that slips at T_hand * t
   * @validity as {@link #locked}; idle tension well below the one at which the device holds
   * @source energy balance and motion under constant force, derived
   * @accuracy relative error below 1e-12 of run plus stretch
   * @param hand force and delay of the hand, not null
   * @param device what the wraps lie on, as it acts in a catch, not null
   * @param wraps turn of the rope on the device, not null
   * @param idle tension of the leg into the device until the hand holds, zero or more, not null
   * @return whether and where the piece stops
   * @throws org.boleline.explain.PlanRefusedException if the idle tension is negative, holds the
   *     piece already, or is above the tension at which the device slips under the hand, or that
   *     tension is above 1e100 N
   */
  public LetRun letRun(DropSpec.ByHand hand, Hardware device, Turn wraps, Quantity<Force> idle) {
    requireNonNull(idle, "idle");
    double force = Si.value(hand.handForce(), Kind.FORCE, "handForce");
    double delay = Si.value(hand.delay(), Kind.TIME, "delay");
    double ratio = device.tensionRatio(wraps);
    double slip = force * ratio;
    if (!(slip <= CatchBounds.SLIP)) {
      throw new PlanRefusedException(
          List.of(
              new Refusal(
                  Refusal.Code.OUT_OF_RANGE,
                  "/wraps",
                  "a tension at the device of at most 1e100 N",
                  wraps.toString())));
    }
    double products = path.products()[path.points().size()];
    double idleNewtons =
        Refusals.check(
            refusals -> {
              Refusals at = refusals.at("idle");
              double value = at.between(idle, Kind.FORCE, 0, CatchBounds.FORCE);
              if (value * products >= mass * gravity) {
                at.add(
                    Refusal.Code.CONFLICT,
                    "a tension that does not hold the piece already; state such a one as a slip"
                        + " tension",
                    QuantityText.print(idle, Kind.FORCE));
              } else if (value > slip) {
                at.add(
                    Refusal.Code.CONFLICT,
                    "at most the tension at which the device slips under the hand",
                    QuantityText.print(idle, Kind.FORCE));
              }
              return value;
            });
    return run(slip, 1 / ratio, delay, idleNewtons);
  }

  /**
   * Returns the catch that is let run for just a length: the slip tension follows.
   *
   * @equation K = s * (T - W), with K = E + W * x - A, the one T above W
   * @validity as {@link #locked}; slip tension the same at any speed and heat
   * @source energy balance, derived
   * @accuracy relative error below 1e-12 of run plus stretch
   * @param run length of the run at the load, from zero to 1 km, not null; zero is the locked rope
   * @return the catch with a device that slips so that the piece stops after this run
   * @throws org.boleline.explain.PlanRefusedException if the run is outside its range
   */
  public LetRun running(Quantity<Length> run) {
    requireNonNull(run, "run");
    double length =
        Refusals.check(
            refusals -> refusals.at("run").between(run, Kind.LENGTH, 0, CatchBounds.LEG));
    double weight = mass * gravity;
    double tension = model(0).rest(weight, weight * fall, length).tension();
    double[] products = path.products();
    return run(tension / products[products.length - 1], 0, 0, 0);
  }

  /**
   * Returns the run that keeps the moment about the base of a stem, from the points that sit on it,
   * at a moment of choice.
   *
   * @equation T = M / arm
   * @validity as {@link #locked}; no moment of the stem's own weight, stem where it stood
   * @source moments, derived
   * @accuracy rounding only
   * @param arm moment for each newton of the load leg, not null
   * @param greatest the moment, above zero, at most 1 TN.m, not null
   * @return as {@link #keepingLoadLeg}
   * @throws org.boleline.explain.PlanRefusedException if the moment is outside its range, or the
   *     arm is so short that no tension gives it
   */
  public LetRun keepingMoment(MomentArm arm, Quantity<Moment> greatest) {
    requireNonNull(arm, "arm");
    requireNonNull(greatest, "greatest");
    double moment =
        Refusals.check(
            refusals ->
                refusals.at("greatest").aboveZero(greatest, Kind.MOMENT, CatchBounds.MOMENT));
    double[] products = path.products();
    double slip = moment / arm.metres() / products[products.length - 1];
    return run(reachable(slip, "an arm with a length", arm.toString()), 0, 0, 0);
  }

  /**
   * Returns the run that keeps the load leg at a tension of choice.
   *
   * @param greatest the tension, above zero, at most 1 GN, not null
   * @return the catch with a device that slips so that the load leg carries just this; with no run
   *     if the locked catch stays below, and never stopping if the tension does not exceed the
   *     weight
   * @throws org.boleline.explain.PlanRefusedException if the tension is outside its range
   */
  public LetRun keepingLoadLeg(Quantity<Force> greatest) {
    return keepingLeg(0, greatest);
  }

  /**
   * Returns the run that keeps a leg at a tension of choice.
   *
   * @param leg number of the leg, 0 is the load leg
   * @param greatest the tension of that leg, above zero, at most 1 GN, not null
   * @return as {@link #keepingLoadLeg}
   * @throws IndexOutOfBoundsException if there is no such leg
   * @throws org.boleline.explain.PlanRefusedException if the tension is outside its range
   */
  public LetRun keepingLeg(int leg, Quantity<Force> greatest) {
    double[] products = path.products();
    double last = products[products.length - 1];
    return run(chosen(greatest) * (products[leg] / last), 0, 0, 0);
  }

  /**
   * Returns the run that keeps the force on a point at a force of choice.
   *
   * @param point number of the point, 0 is the first from the load
   * @param greatest the force on that point, above zero, at most 1 GN, not null
   * @return as {@link #keepingLoadLeg}
   * @throws IndexOutOfBoundsException if there is no such point
   * @throws org.boleline.explain.PlanRefusedException if the force is outside its range, or both
   *     legs of the point pull against each other so that no tension gives that force
   */
  public LetRun keepingPoint(int point, Quantity<Force> greatest) {
    double[] products = path.products();
    double turn = path.points().get(point).turnRadians();
    double share = CatchKernel.forceShare(products[point], products[point + 1], turn);
    double force = chosen(greatest);
    double slip = force / share / products[products.length - 1];
    return run(
        reachable(slip, "a point that the rope turns at", path.points().get(point).toString()),
        0,
        0,
        0);
  }

  /** A slip tension, unless it is beyond all bounds. */
  private static double reachable(double slip, String wants, String got) {
    return Refusals.check(
        refusals -> {
          if (!(slip <= CatchBounds.FORCE * CatchBounds.RATIO)) {
            refusals.at("greatest").add(Refusal.Code.CONFLICT, wants, got);
          }
          return slip;
        });
  }

  private static double chosen(Quantity<Force> greatest) {
    requireNonNull(greatest, "greatest");
    return Refusals.check(
        refusals -> refusals.at("greatest").aboveZero(greatest, Kind.FORCE, CatchBounds.FORCE));
  }

  /** Behind: tension of the hand over tension into the device; 0 if there is no hand. */
  private LetRun run(double slip, double behind, double delay, double idle) {
    Caught locked = locked();
    List<Step> steps = new ArrayList<>();
    double weight = weight(steps);
    double[] products = path.products();
    double product = products[products.length - 1];
    double freeRun = 0;
    if (delay > 0) {
      Step speed = DropFormulas.FALL_SPEED.step(gravity, fall);
      Step free =
          DropFormulas.DELAY_FALL.step(speed.result(), delay, gravity, idle * product, mass);
      steps.add(speed);
      steps.add(free);
      freeRun = free.result();
    }
    CatchModel model = model(freeRun);
    double energy = weight * (fall + freeRun) - idle * product * freeRun;
    Step atLoad = DropFormulas.SLIP_AT_LOAD.step(slip, product);
    steps.add(atLoad);
    List<Step> peakSteps = new ArrayList<>();
    CatchState held = model.peak(weight, energy, peakSteps);
    boolean slips = atLoad.result() < held.tension() * (1 - ROUNDING);
    CatchState state = slips ? model.at(atLoad.result()) : held;
    double tension = state.tension();
    double slipRun = 0;
    List<Caution> cautions = cautions(model, state);
    if (slips || freeRun > 0) {
      cautions.add(mayFail(locked, tension));
    }
    if (slips) {
      Step left = DropFormulas.ENERGY_LEFT.step(energy, weight, state.travel(), state.work());
      steps.add(left);
      if (tension <= weight) {
        CatchLoads loads = model.loads(tension, steps);
        double speed = Math.sqrt(2 * Math.max(0, left.result()) / mass);
        return new LetRun.NeverStops(
            new RunAnswer(locked, loads, slip, List.copyOf(steps), List.copyOf(cautions)),
            freeRun,
            speed,
            Math.max(0, gravity - tension / mass));
      }
      Step run = DropFormulas.RUN.step(Math.max(0, left.result()), tension, weight);
      steps.add(run);
      slipRun = run.result();
    } else {
      steps.addAll(peakSteps);
    }
    CatchLoads loads = model.loads(tension, steps);
    CatchModel.Ran ran = model.ran(state, slipRun, behind, steps);
    Step idleHeat = DropFormulas.SLIP_HEAT.step(idle, idle * behind, freeRun);
    if (freeRun > 0) {
      steps.add(idleHeat);
    }
    List<Double> heats = new ArrayList<>(model.heats(state));
    for (int j = 0; j < heats.size(); j++) {
      double drop = 1 / products[j] - 1 / products[j + 1];
      heats.set(j, heats.get(j) + ran.points().get(j) + drop * idle * product * freeRun);
    }
    EnergyAccount account =
        new EnergyAccount(
            weight * (fall + freeRun + state.travel() + slipRun),
            model.storedInRope(state) + ran.rope(),
            model.storedInSprings(state),
            heats,
            ran.device() + idleHeat.result(),
            ran.hand() + behind * idle * freeRun);
    return new LetRun.Stopped(
        new RunAnswer(locked, loads, slip, List.copyOf(steps), List.copyOf(cautions)),
        freeRun,
        slipRun,
        state.travel(),
        fall,
        account);
  }

  private double weight(List<Step> steps) {
    Step weight = DropFormulas.WEIGHT_OF_PIECE.step(mass, gravity);
    steps.add(weight);
    return weight.result();
  }

  private CatchModel model(double longer) {
    return new CatchModel(rope.curve(), path, longer, passing);
  }

  private List<Caution> cautions(CatchModel model, CatchState state) {
    double tension = state.tension();
    List<Caution> found = new ArrayList<>();
    found.add(new Caution(CautionCode.CATCH_BY_ENERGY, "", Map.of()));
    if (rope.pull() == RopeStretch.Pull.SLOW) {
      found.add(new Caution(CautionCode.SLOW_STRETCH_CURVE, "/rope", Map.of()));
    }
    if (rope.wear() == RopeStretch.Wear.NEW) {
      found.add(new Caution(CautionCode.NEW_ROPE_CURVE, "/rope", Map.of()));
    }
    if (rope.curve() instanceof TabulatedStretch table
        && tension > Si.value(table.last().tension(), Kind.FORCE, "tension")) {
      found.add(
          new Caution(
              CautionCode.STRETCH_EXTRAPOLATED,
              "/rope",
              Map.of(
                  "tension",
                  newtons(tension),
                  "last",
                  newtons(Si.value(table.last().tension(), Kind.FORCE, "tension")))));
    }
    if (path.hasSprings()) {
      found.add(new Caution(CautionCode.SPRINGS_WITHOUT_MASS, "", Map.of()));
    }
    List<CatchPoint> points = path.points();
    for (int j = 0; j < points.size(); j++) {
      String place = "/points/" + j;
      for (Step step : points.get(j).steps()) {
        found.addAll(step.cautions(place));
      }
      if (!model.slipsTowardLoad(j, state)) {
        found.add(
            new Caution(
                CautionCode.SLIP_NOT_TOWARD_LOAD, place, Map.of("point", String.valueOf(j + 1))));
      }
    }
    return found;
  }

  private static Caution mayFail(Caught locked, double running) {
    return new Caution(
        CautionCode.LET_RUN_MAY_FAIL,
        "",
        Map.of(
            "locked",
            newtons(Si.value(locked.peak(), Kind.FORCE, "peak")),
            "running",
            newtons(running)));
  }

  private static String newtons(double value) {
    return QuantityText.number(value, 3) + " N";
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof RopeCatch c
        && Double.compare(mass, c.mass) == 0
        && Double.compare(fall, c.fall) == 0
        && Double.compare(gravity, c.gravity) == 0
        && Double.compare(tieToCentre, c.tieToCentre) == 0
        && passing == c.passing
        && rope.equals(c.rope)
        && path.equals(c.path);
  }

  @Override
  public int hashCode() {
    return 31 * (31 * Double.hashCode(mass) + Double.hashCode(fall)) + path.hashCode();
  }

  @Override
  public String toString() {
    return QuantityText.number(mass)
        + " kg falling "
        + QuantityText.number(fall)
        + " m into "
        + path;
  }
}
