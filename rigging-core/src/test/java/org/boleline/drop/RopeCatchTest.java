package org.boleline.drop;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.boleline.Tolerances.ACCOUNT;
import static org.boleline.Tolerances.EXACT;
import static org.boleline.Tolerances.ROUNDING;
import static org.boleline.Tolerances.absolute;
import static org.boleline.Tolerances.relative;
import static org.boleline.drop.CatchNumbers.j;
import static org.boleline.drop.CatchNumbers.m;
import static org.boleline.drop.CatchNumbers.n;
import static org.boleline.units.Amounts.degrees;
import static org.boleline.units.Amounts.kilograms;
import static org.boleline.units.Amounts.kilonewtons;
import static org.boleline.units.Amounts.metres;
import static org.boleline.units.Amounts.newtons;
import static org.boleline.units.Amounts.radians;
import static org.boleline.units.Amounts.seconds;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import javax.measure.quantity.Length;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.LongRange;
import net.jqwik.api.constraints.Scale;
import org.boleline.explain.CautionCode;
import org.boleline.explain.PlanRefusedException;
import org.boleline.explain.Refusal;
import org.boleline.explain.Source;
import org.boleline.geometry.Turn;
import org.boleline.geometry.Vector;
import org.boleline.plan.DropSpec;
import org.boleline.rope.FrictionRing;
import org.boleline.rope.Ideal;
import org.boleline.rope.Sheave;
import org.boleline.rope.StretchPoint;
import org.boleline.units.Kind;
import org.boleline.units.Si;
import org.junit.jupiter.api.Test;

class RopeCatchTest {
  private static final double G = 9.80665;

  private static RopeStretch drop(StretchCurve curve) {
    return RopeStretch.forDrop(curve, Source.PLAN);
  }

  private static final TabulatedStretch TABLE =
      TabulatedStretch.of(
          List.of(
              StretchPoint.of(newtons(4000), 0.03),
              StretchPoint.of(newtons(11000), 0.05),
              StretchPoint.of(newtons(40000), 0.1)));

  /** What was drawn, in SI numbers, so that a check can change one thing. */
  private record Drawn(
      double mass,
      double fall,
      StretchCurve curve,
      List<Double> lengths,
      List<Double> frictions,
      List<Double> turns,
      List<Double> springs) {
    CatchPath path(double lengthFactor) {
      CatchPath path = CatchPath.of(metres(lengths.get(0) * lengthFactor));
      for (int i = 0; i < frictions.size(); i++) {
        CatchPoint point =
            CatchPoint.of(new FrictionRing(frictions.get(i)), Turn.of(radians(turns.get(i))));
        if (springs.get(i) > 0) {
          point = point.withStiffness(Si.of(springs.get(i), Kind.STIFFNESS));
        }
        path = path.over(point, metres(lengths.get(i + 1) * lengthFactor));
      }
      return path;
    }

    RopeCatch piece() {
      return RopeCatch.of(kilograms(mass), metres(fall), drop(curve), path(1));
    }
  }

  private static Drawn drawn(long seed, boolean springs) {
    SplittableRandom random = new SplittableRandom(seed);
    StretchCurve[] curves = {
      LinearStretch.of(kilonewtons(random.nextDouble(50, 500))),
      PowerStretch.of(
          StretchPoint.of(kilonewtons(random.nextDouble(2, 20)), 0.05), random.nextDouble(1, 3)),
      TABLE.times(random.nextDouble(0.3, 3))
    };
    List<Double> lengths = new ArrayList<>(List.of(random.nextDouble(1, 10)));
    List<Double> frictions = new ArrayList<>();
    List<Double> turns = new ArrayList<>();
    List<Double> rates = new ArrayList<>();
    int points = random.nextInt(0, 6);
    for (int i = 0; i < points; i++) {
      frictions.add(random.nextDouble(0, 0.4));
      turns.add(random.nextDouble(0.1, 3.1));
      lengths.add(random.nextDouble(0, 15));
      rates.add(springs && random.nextBoolean() ? random.nextDouble(1e4, 1e6) : 0);
    }
    return new Drawn(
        random.nextDouble(5, 800),
        random.nextDouble(0, 2 * lengths.get(0)),
        curves[random.nextInt(3)],
        lengths,
        frictions,
        turns,
        rates);
  }

  @Property(tries = 300)
  void lengths_and_fall_doubled_leave_the_peak(@ForAll @LongRange(min = 0) long seed) {
    Drawn d = drawn(seed, false);
    RopeCatch twice =
        RopeCatch.of(kilograms(d.mass()), metres(2 * d.fall()), drop(d.curve()), d.path(2));
    assertThat(n(twice.locked().peak())).isCloseTo(n(d.piece().locked().peak()), relative(EXACT));
    assertThat(m(twice.locked().stretch()))
        .isCloseTo(2 * m(d.piece().locked().stretch()), relative(EXACT));
  }

  @Property(tries = 300)
  void without_friction_the_split_of_the_rope_does_not_matter(
      @ForAll @LongRange(min = 0) long seed,
      @ForAll @Scale(6) @DoubleRange(min = 0.2, max = 0.8) double share) {
    Drawn d = drawn(seed, false);
    double whole = d.lengths().stream().mapToDouble(Double::doubleValue).sum();
    double first = Math.max(d.lengths().get(0), share * whole);
    CatchPath one = CatchPath.of(metres(whole));
    CatchPath split =
        CatchPath.of(metres(first))
            .over(CatchPoint.of(Ideal.INSTANCE, Turn.HALF), metres((whole - first) / 3))
            .over(CatchPoint.of(new Sheave(1), Turn.HALF), metres((whole - first) * 2 / 3));
    assertThat(n(catchOn(d, split).peak())).isCloseTo(n(catchOn(d, one).peak()), relative(EXACT));
  }

  private static Caught catchOn(Drawn d, CatchPath path) {
    return RopeCatch.of(kilograms(d.mass()), metres(d.fall()), drop(d.curve()), path).locked();
  }

  @Property(tries = 300)
  void energy_is_accounted_for(@ForAll @LongRange(min = 0) long seed) {
    Drawn d = drawn(seed, true);
    Caught caught = d.piece().locked();
    assertThat(caught.energy().residualShare()).isLessThan(EXACT);
    assertThat(j(caught.energy().given()))
        .isCloseTo(d.mass() * G * (d.fall() + m(caught.stretch())), relative(EXACT));
  }

  @Property(tries = 300)
  void energy_of_a_run_is_accounted_for_as_well(
      @ForAll @LongRange(min = 0) long seed,
      @ForAll @Scale(6) @DoubleRange(min = 0, max = 1) double force,
      @ForAll @Scale(6) @DoubleRange(min = 0, max = 1) double delay,
      @ForAll @Scale(6) @DoubleRange(min = 0, max = 1) double idle) {
    Drawn d = drawn(seed, true);
    double product = 1;
    for (CatchPoint point : d.path(1).points()) {
      product *= point.tensionRatio();
    }
    double weight = d.mass() * G;
    double slip = weight / product * (1.01 + 5 * force);
    FrictionRing device = new FrictionRing(0.2);
    Turn wraps = Turn.ofWraps(1.5);
    double hand = slip / device.tensionRatio(wraps);
    LetRun run =
        d.piece()
            .letRun(
                DropSpec.ByHand.of(newtons(hand), seconds(delay)),
                device,
                wraps,
                newtons(0.9 * idle * weight / product));
    assertThat(run).isInstanceOf(LetRun.Stopped.class);
    LetRun.Stopped stopped = (LetRun.Stopped) run;
    assertThat(stopped.energy().residualShare()).isLessThan(EXACT);
    assertThat(j(stopped.energy().given()))
        .isCloseTo(weight * (d.fall() + m(stopped.run()) + m(stopped.stretch())), relative(EXACT));
    assertThat(m(stopped.clearanceNeeded()))
        .isCloseTo(d.fall() + m(stopped.run()) + m(stopped.stretch()), relative(EXACT));
    // What the hand takes is its tension times the whole run where nothing ran before the hold.
    if (delay == 0) {
      assertThat(j(stopped.energy().takenByHand()))
          .isCloseTo(hand * m(stopped.run()), absolute(EXACT * weight));
    }
  }

  @Property(tries = 200)
  void a_linear_rope_has_the_stiffness_of_its_legs_in_series(
      @ForAll @LongRange(min = 0) long seed) {
    Drawn d = drawn(seed, false);
    double ea = 180e3;
    double give = 0;
    double product = 1;
    for (int i = 0; i < d.lengths().size(); i++) {
      if (i > 0) {
        product *= Math.exp(d.frictions().get(i - 1) * d.turns().get(i - 1));
      }
      give += d.lengths().get(i) / ea / product;
    }
    LinearCatch single =
        LinearCatch.of(kilograms(d.mass()), metres(d.fall()), Si.of(1 / give, Kind.STIFFNESS));
    Caught caught =
        RopeCatch.of(
                kilograms(d.mass()),
                metres(d.fall()),
                drop(LinearStretch.of(newtons(ea))),
                d.path(1))
            .locked();
    assertThat(n(caught.peak())).isCloseTo(n(single.peak()), relative(EXACT));
    assertThat(m(caught.stretch())).isCloseTo(m(single.stretch()), relative(EXACT));
  }

  @Property(tries = 200)
  void trial_finds_what_the_closed_form_says(@ForAll @LongRange(min = 0) long seed) {
    // A power law of exponent 1 and a table of one point are linear, but solved by trial.
    Drawn d = drawn(seed, true);
    StretchPoint point = StretchPoint.of(newtons(9000), 0.05);
    double closed =
        n(
            RopeCatch.of(
                    kilograms(d.mass()),
                    metres(d.fall()),
                    drop(LinearStretch.of(kilonewtons(180))),
                    d.path(1))
                .locked()
                .peak());
    for (StretchCurve curve :
        List.of(PowerStretch.of(point, 1), TabulatedStretch.of(List.of(point)))) {
      assertThat(
              n(
                  RopeCatch.of(kilograms(d.mass()), metres(d.fall()), drop(curve), d.path(1))
                      .locked()
                      .peak()))
          .isCloseTo(closed, relative(EXACT));
    }
  }

  @Property(tries = 100)
  void a_power_law_on_one_leg_without_fall_has_a_closed_form(
      @ForAll @Scale(6) @DoubleRange(min = 1, max = 3) double exponent,
      @ForAll @Scale(3) @DoubleRange(min = 10, max = 900) double mass) {
    // No fall: W L e = L T e / (n + 1), so T = (n + 1) W; twice the weight on a linear rope.
    PowerStretch curve = PowerStretch.of(StretchPoint.of(newtons(9000), 0.05), exponent);
    Caught caught =
        RopeCatch.of(kilograms(mass), metres(0), drop(curve), CatchPath.of(metres(7))).locked();
    assertThat(caught.overWeightRatio()).isCloseTo(exponent + 1, relative(EXACT));
  }

  @Property(tries = 200)
  void without_a_fall_a_linear_rope_pulls_with_twice_the_weight(
      @ForAll @LongRange(min = 0) long seed) {
    Drawn d = drawn(seed, true);
    Caught caught =
        RopeCatch.of(
                kilograms(d.mass()), metres(0), drop(LinearStretch.of(kilonewtons(200))), d.path(1))
            .locked();
    assertThat(caught.overWeightRatio()).isCloseTo(2, relative(EXACT));
  }

  @Property(tries = 200)
  void mass_and_stiffness_scaled_alike_scale_the_forces(
      @ForAll @LongRange(min = 0) long seed,
      @ForAll @Scale(4) @DoubleRange(min = 0.1, max = 9) double factor) {
    Drawn d = drawn(seed, false);
    Caught scaled =
        RopeCatch.of(
                kilograms(d.mass() * factor),
                metres(d.fall()),
                drop(d.curve().times(factor)),
                d.path(1))
            .locked();
    assertThat(n(scaled.peak())).isCloseTo(factor * n(d.piece().locked().peak()), relative(EXACT));
    assertThat(m(scaled.stretch())).isCloseTo(m(d.piece().locked().stretch()), relative(EXACT));
  }

  @Property(tries = 200)
  void gravity_counts_through_the_weight_alone(@ForAll @LongRange(min = 0) long seed) {
    // An energy balance knows weight, not mass: twice gravity is twice the mass.
    Drawn d = drawn(seed, false);
    Caught heavy =
        RopeCatch.of(kilograms(2 * d.mass()), metres(d.fall()), drop(d.curve()), d.path(1))
            .locked();
    Caught strong = d.piece().withGravity(Si.of(2 * G, Kind.ACCELERATION)).locked();
    assertThat(n(strong.peak())).isCloseTo(n(heavy.peak()), relative(EXACT));
  }

  @Property(tries = 200)
  void a_slip_tension_above_the_locked_one_is_the_locked_catch(
      @ForAll @LongRange(min = 0) long seed) {
    Drawn d = drawn(seed, true);
    LetRun run = d.piece().letRun(DropSpec.Slipping.of(newtons(1e9)));
    assertThat(run).isInstanceOf(LetRun.Stopped.class);
    LetRun.Stopped stopped = (LetRun.Stopped) run;
    assertThat(n(stopped.loads().loadLeg())).isEqualTo(n(stopped.locked().peak()));
    assertThat(m(stopped.run())).isZero();
    assertThat(m(stopped.clearanceNeeded())).isEqualTo(m(stopped.locked().clearanceNeeded()));
    assertThat(run.cautions()).noneMatch(c -> c.code() == CautionCode.LET_RUN_MAY_FAIL);
  }

  @Property(tries = 200)
  void just_below_the_locked_tension_the_run_vanishes(@ForAll @LongRange(min = 0) long seed) {
    Drawn d = drawn(seed, false);
    double peak = n(d.piece().locked().peak());
    LetRun.Stopped stopped = (LetRun.Stopped) d.piece().keepingLoadLeg(newtons(peak * (1 - 1e-10)));
    assertThat(m(stopped.run())).isCloseTo(0, absolute(EXACT * 1000));
    assertThat(n(stopped.loads().loadLeg())).isCloseTo(peak, relative(EXACT));
  }

  @Property(tries = 200)
  void a_run_keeps_what_was_chosen(
      @ForAll @LongRange(min = 0) long seed,
      @ForAll @Scale(6) @DoubleRange(min = 0.05, max = 0.95) double share) {
    Drawn d = drawn(seed, false);
    Caught locked = d.piece().locked();
    double weight = d.mass() * G;
    double chosen = weight + share * (n(locked.peak()) - weight);
    int last = d.frictions().size();
    LetRun.Stopped byLoad = (LetRun.Stopped) d.piece().keepingLoadLeg(newtons(chosen));
    assertThat(n(byLoad.loads().loadLeg())).isCloseTo(chosen, relative(EXACT));
    double lastLeg = chosen * n(locked.loads().legs().get(last)) / n(locked.peak());
    LetRun.Stopped byLeg = (LetRun.Stopped) d.piece().keepingLeg(last, newtons(lastLeg));
    assertThat(m(byLeg.run())).isCloseTo(m(byLoad.run()), relative(EXACT));
    assertThat(n(byLeg.slipTension())).isCloseTo(lastLeg, relative(EXACT));
    if (last > 0) {
      double force = chosen * n(locked.loads().points().get(0).magnitude()) / n(locked.peak());
      LetRun.Stopped byPoint = (LetRun.Stopped) d.piece().keepingPoint(0, newtons(force));
      assertThat(m(byPoint.run())).isCloseTo(m(byLoad.run()), relative(EXACT));
      assertThat(n(byPoint.loads().points().get(0).magnitude())).isCloseTo(force, relative(EXACT));
    }
  }

  @Property(tries = 200)
  void a_lower_slip_tension_runs_farther(@ForAll @LongRange(min = 0) long seed) {
    Drawn d = drawn(seed, false);
    double weight = d.mass() * G;
    LetRun.Stopped less = (LetRun.Stopped) d.piece().keepingLoadLeg(newtons(1.2 * weight));
    LetRun.Stopped more = (LetRun.Stopped) d.piece().keepingLoadLeg(newtons(1.5 * weight));
    assertThat(m(less.run())).isGreaterThan(m(more.run()));
    assertThat(m(more.run())).isPositive();
  }

  @Property(tries = 200)
  void more_mass_pulls_harder_at_the_same_geometry(@ForAll @LongRange(min = 0) long seed) {
    // Kane, Brena and Autio 2009: mass of the piece predicts the forces best.
    Drawn d = drawn(seed, true);
    Caught heavier =
        RopeCatch.of(kilograms(1.1 * d.mass()), metres(d.fall()), drop(d.curve()), d.path(1))
            .locked();
    assertThat(n(heavier.peak())).isGreaterThan(n(d.piece().locked().peak()));
  }

  @Property(tries = 200)
  void very_stiff_springs_are_no_springs(@ForAll @LongRange(min = 0) long seed) {
    Drawn d = drawn(seed, false);
    double modulus = 300e3;
    RopeStretch rope = drop(LinearStretch.of(newtons(modulus)));
    CatchPath stiff = CatchPath.of(metres(d.lengths().get(0)));
    for (int i = 0; i < d.frictions().size(); i++) {
      stiff =
          stiff.over(
              d.path(1).points().get(i).withStiffness(Si.of(1e12, Kind.STIFFNESS)),
              metres(d.lengths().get(i + 1)));
    }
    stiff = stiff.withSpringAtLoad(Si.of(1e12, Kind.STIFFNESS));
    double with =
        n(RopeCatch.of(kilograms(d.mass()), metres(d.fall()), rope, stiff).locked().peak());
    double without =
        n(RopeCatch.of(kilograms(d.mass()), metres(d.fall()), rope, d.path(1)).locked().peak());
    // Each point adds at most 4 / K to the give of the load leg alone, the load 1 / K; the peak
    // changes by less than the give does.
    double share = (4 * d.frictions().size() + 1) / 1e12 / (d.lengths().get(0) / modulus);
    assertThat(with).isBetween(without * (1 - share), without * (1 + ROUNDING));
  }

  @Test
  void a_point_on_a_spring_by_vectors() {
    // By another route: small steps of tension; point moved by force over stiffness; legs of given
    // directions; the work of friction summed.
    double[] in = {0, 0, -1};
    double[] out = {Math.sin(0.4), 0, -Math.cos(0.4)};
    double stiffness = 4e4;
    double friction = 0.15;
    CatchPoint point =
        CatchPoint.between(
                new FrictionRing(friction),
                Vector.ofSi(Kind.LENGTH, in),
                Vector.ofSi(Kind.LENGTH, 3 * out[0], 0, 3 * out[2]))
            .withStiffness(Si.of(stiffness, Kind.STIFFNESS));
    double ratio = Math.exp(friction * (Math.PI - 0.4));
    double ea = 2e5;
    Caught caught =
        RopeCatch.of(
                kilograms(150),
                metres(1.5),
                drop(LinearStretch.of(newtons(ea))),
                CatchPath.of(metres(2)).over(point, metres(9)))
            .locked();
    double peak = n(caught.peak());
    int steps = 1000;
    double heat = 0;
    double travel = 0;
    double passedBefore = 0;
    for (int i = 1; i <= steps; i++) {
      double t = peak * i / steps;
      double dot = 0;
      double outward = 0;
      for (int c = 0; c < 3; c++) {
        double moved = t * (in[c] + out[c] / ratio) / stiffness;
        dot += moved * (in[c] + out[c]);
        outward += moved * out[c];
      }
      double passed = 9 * t / ratio / ea + outward;
      heat += (t - peak / (2 * steps)) * (1 - 1 / ratio) * (passed - passedBefore);
      passedBefore = passed;
      travel = 2 * t / ea + 9 * t / ratio / ea + dot;
    }
    assertThat(m(caught.stretch())).isCloseTo(travel, relative(EXACT));
    assertThat(j(caught.energy().heatAtPoints().get(0))).isCloseTo(heat, relative(EXACT));
    assertThat(n(caught.loads().points().get(0).magnitude()))
        .isCloseTo(
            n(caught.loads().points().get(0).vector().orElseThrow().magnitude()), relative(EXACT));
    assertThat(caught.energy().residualShare()).isLessThan(EXACT);
    assertThat(caught.cautions()).anyMatch(c -> c.code() == CautionCode.SPRINGS_WITHOUT_MASS);
  }

  @Test
  void force_on_a_point_as_a_vector_turns_with_the_legs() {
    // Load leg plumb, tail level: by hand, friction 0 and a quarter turn.
    CatchPoint point =
        CatchPoint.between(
            Ideal.INSTANCE, Vector.ofSi(Kind.LENGTH, 0, 0, -2), Vector.ofSi(Kind.LENGTH, 5, 0, 0));
    assertThat(Si.value(point.turn().angle(), Kind.ANGLE, "turn"))
        .isCloseTo(Math.PI / 2, relative(ROUNDING));
    CatchLoads loads =
        RopeCatch.of(
                kilograms(100),
                metres(1),
                drop(TABLE),
                CatchPath.of(metres(2)).over(point, metres(5)))
            .locked()
            .loads();
    double[] force = loads.points().get(0).vector().orElseThrow().in(Kind.FORCE);
    double t = n(loads.loadLeg());
    assertThat(force[0]).isCloseTo(t, relative(ROUNDING));
    assertThat(force[1]).isZero();
    assertThat(force[2]).isCloseTo(-t, relative(ROUNDING));
  }

  private static RopeCatch plain() {
    return RopeCatch.of(
        kilograms(100),
        metres(2),
        drop(LinearStretch.of(kilonewtons(100))),
        CatchPath.of(metres(3)).over(CatchPoint.of(new FrictionRing(0.1), Turn.HALF), metres(10)));
  }

  @Test
  void a_device_that_slips_too_early_never_stops_the_piece() {
    double limit = 100 * G / Math.exp(0.1 * Math.PI);
    LetRun run = plain().letRun(DropSpec.Slipping.of(newtons(limit * 0.99)));
    assertThat(run).isInstanceOf(LetRun.NeverStops.class);
    LetRun.NeverStops never = (LetRun.NeverStops) run;
    // Newton: what is left of gravity.
    assertThat(Si.value(never.acceleration(), Kind.ACCELERATION, "a"))
        .isCloseTo(0.01 * G, relative(EXACT));
    assertThat(Si.value(never.speedAtSlip(), Kind.SPEED, "v")).isGreaterThan(Math.sqrt(2 * G * 2));
    assertThat(n(never.locked().peak())).isEqualTo(n(plain().locked().peak()));
    assertThat(run.cautions()).anyMatch(c -> c.code() == CautionCode.LET_RUN_MAY_FAIL);
    assertThat(plain().letRun(DropSpec.Slipping.of(newtons(limit * 1.01))))
        .isInstanceOf(LetRun.Stopped.class);
    assertThat(plain().keepingLoadLeg(newtons(100 * G))).isInstanceOf(LetRun.NeverStops.class);
  }

  @Test
  void a_hand_that_lets_go_never_stops_the_piece() {
    LetRun run =
        plain()
            .letRun(
                DropSpec.ByHand.of(newtons(0), seconds(0)), new FrictionRing(0.2), Turn.ofWraps(3));
    assertThat(run).isInstanceOf(LetRun.NeverStops.class);
    assertThat(n(run.loads().loadLeg())).isZero();
    assertThat(Si.value(((LetRun.NeverStops) run).speedAtSlip(), Kind.SPEED, "v"))
        .isCloseTo(Math.sqrt(4 * G), relative(EXACT));
  }

  @Test
  void a_delay_is_a_longer_fall_on_a_longer_rope() {
    // By hand: v = sqrt(2 g 2), d = v t + g t^2 / 2 at t = 0.3 s.
    double d = Math.sqrt(4 * G) * 0.3 + G * 0.045;
    LetRun.Stopped run =
        (LetRun.Stopped)
            plain()
                .letRun(
                    DropSpec.ByHand.of(kilonewtons(900), seconds(0.3)),
                    new FrictionRing(0.2),
                    Turn.ofWraps(2));
    assertThat(m(run.runBeforeHold())).isCloseTo(d, relative(EXACT));
    assertThat(m(run.run())).isCloseTo(d, relative(EXACT));
    Caught longer =
        RopeCatch.of(
                kilograms(100),
                metres(2 + d),
                drop(LinearStretch.of(kilonewtons(100))),
                CatchPath.of(metres(3 + d))
                    .over(CatchPoint.of(new FrictionRing(0.1), Turn.HALF), metres(10)))
            .locked();
    assertThat(n(run.loads().loadLeg())).isCloseTo(n(longer.peak()), relative(EXACT));
    assertThat(run.cautions()).anyMatch(c -> c.code() == CautionCode.LET_RUN_MAY_FAIL);
  }

  @Test
  void a_hand_behind_wraps_slips_like_a_device_set_to_that_tension() {
    double ratio = Math.exp(0.2 * 2 * Math.PI);
    LetRun.Stopped hand =
        (LetRun.Stopped)
            plain()
                .letRun(
                    DropSpec.ByHand.of(newtons(400), seconds(0)),
                    new FrictionRing(0.2),
                    Turn.ofWraps(1));
    LetRun.Stopped device =
        (LetRun.Stopped) plain().letRun(DropSpec.Slipping.of(newtons(400 * ratio)));
    assertThat(m(hand.run())).isCloseTo(m(device.run()), relative(EXACT));
    assertThat(j(hand.energy().heatInDeviceAtMost()) + j(hand.energy().takenByHand()))
        .isCloseTo(j(device.energy().heatInDeviceAtMost()), relative(EXACT));
    assertThat(j(hand.energy().takenByHand())).isCloseTo(400 * m(hand.run()), relative(EXACT));
    assertThat(j(device.energy().takenByHand())).isZero();
  }

  @Test
  void cautions_tell_what_the_curve_is_of() {
    RopeStretch slow =
        new RopeStretch(TABLE, RopeStretch.Pull.SLOW, RopeStretch.Wear.NEW, Source.PLAN);
    CatchPath path = CatchPath.of(metres(3));
    assertThat(codes(RopeCatch.of(kilograms(50), metres(2), slow, path).locked()))
        .containsExactly(
            CautionCode.CATCH_BY_ENERGY,
            CautionCode.SLOW_STRETCH_CURVE,
            CautionCode.NEW_ROPE_CURVE);
    RopeStretch stiffer = slow.stiffenedForDrop(1.5, Source.PLAN);
    assertThat(stiffer.curve()).isEqualTo(TABLE.times(1.5));
    assertThat(codes(RopeCatch.of(kilograms(50), metres(2), stiffer, path).locked()))
        .containsExactly(CautionCode.CATCH_BY_ENERGY, CautionCode.NEW_ROPE_CURVE);
    assertThatExceptionOfType(IllegalStateException.class)
        .isThrownBy(() -> stiffer.stiffenedForDrop(1.1, Source.PLAN));
  }

  @Test
  void a_caution_tells_when_the_table_was_left_and_not_before() {
    // Find a mass whose peak lies just below, and just above, the last point.
    CatchPath path = CatchPath.of(metres(3));
    double low = 10;
    double high = 1000;
    while (high - low > 1e-6) {
      double mass = (low + high) / 2;
      double peak = n(RopeCatch.of(kilograms(mass), metres(3), drop(TABLE), path).locked().peak());
      if (peak <= 40000) {
        low = mass;
      } else {
        high = mass;
      }
    }
    assertThat(codes(RopeCatch.of(kilograms(low), metres(3), drop(TABLE), path).locked()))
        .doesNotContain(CautionCode.STRETCH_EXTRAPOLATED);
    assertThat(codes(RopeCatch.of(kilograms(high), metres(3), drop(TABLE), path).locked()))
        .contains(CautionCode.STRETCH_EXTRAPOLATED);
  }

  @Test
  void a_caution_tells_when_a_point_drags_the_rope_back() {
    // A soft point at a shallow redirect with much friction moves along with the load leg; hardly
    // any rope lies behind it.
    CatchPoint soft =
        CatchPoint.of(new FrictionRing(0.4), Turn.of(degrees(20)))
            .withStiffness(Si.of(1e4, Kind.STIFFNESS));
    RopeStretch rope = drop(LinearStretch.of(kilonewtons(300)));
    CatchPath little = CatchPath.of(metres(3)).over(soft, metres(0.01));
    CatchPath much = CatchPath.of(metres(3)).over(soft, metres(30));
    assertThat(codes(RopeCatch.of(kilograms(50), metres(1), rope, little).locked()))
        .contains(CautionCode.SLIP_NOT_TOWARD_LOAD);
    assertThat(codes(RopeCatch.of(kilograms(50), metres(1), rope, much).locked()))
        .doesNotContain(CautionCode.SLIP_NOT_TOWARD_LOAD);
  }

  @Test
  void friction_outside_its_range_is_cautioned() {
    RopeCatch rough =
        RopeCatch.of(
            kilograms(50),
            metres(1),
            drop(TABLE),
            CatchPath.of(metres(3))
                .over(CatchPoint.of(new FrictionRing(0.9), Turn.HALF), metres(1)));
    assertThat(codes(rough.locked())).contains(CautionCode.OUTSIDE_RANGE);
  }

  private static List<CautionCode> codes(Caught caught) {
    return caught.cautions().stream().map(c -> c.code()).toList();
  }

  @Test
  void numbers_are_those_of_their_steps() {
    Caught caught = plain().locked();
    assertThat(caught.steps().stream().map(s -> s.formula().id()))
        .containsExactly("DRO-1", "DRO-9", "DRO-10", "DRO-4", "DRO-8", "FRI-2", "FRI-6", "FOR-1");
    assertThat(caught.steps().get(3).result()).isEqualTo(n(caught.peak()));
    assertThat(caught.steps().get(4).result()).isCloseTo(m(caught.stretch()), relative(ROUNDING));
    assertThat(caught.steps().get(6).result()).isEqualTo(n(caught.loads().legs().get(1)));
    assertThat(caught.steps().get(7).result())
        .isEqualTo(n(caught.loads().points().get(0).magnitude()));
    Caught byTrial =
        RopeCatch.of(kilograms(100), metres(2), drop(TABLE), CatchPath.of(metres(3))).locked();
    // The balance at the peak that was found, its remainder against what fell.
    assertThat(byTrial.steps().get(1).formula().id()).isEqualTo("DRO-13");
    assertThat(byTrial.steps().get(1).result() / (200 * G)).isCloseTo(0, absolute(EXACT));
  }

  @Test
  void what_describes_no_catch_is_refused_all_at_once() {
    CatchPath path = CatchPath.of(metres(3));
    assertThatExceptionOfType(PlanRefusedException.class)
        .isThrownBy(() -> RopeCatch.of(kilograms(0), metres(-1), drop(TABLE), path))
        .satisfies(
            e ->
                assertThat(e.refusals())
                    .extracting(Refusal::place)
                    .containsExactly("/mass", "/fall"));
    refused(Refusal.Code.OUT_OF_RANGE, "/loadLeg", () -> CatchPath.of(metres(0)));
    refused(
        Refusal.Code.OUT_OF_RANGE,
        "/nextLeg",
        () -> path.over(CatchPoint.of(Ideal.INSTANCE, Turn.HALF), metres(-1)));
    refused(Refusal.Code.OUT_OF_RANGE, "/tensionRatio", () -> CatchPoint.ofRatio(0.9, Turn.HALF));
    refused(
        Refusal.Code.OUT_OF_RANGE,
        "/toTail",
        () ->
            CatchPoint.between(
                Ideal.INSTANCE,
                Vector.ofSi(Kind.LENGTH, 0, 0, -1),
                Vector.ofSi(Kind.LENGTH, 0, 0, 0)));
    refused(Refusal.Code.OUT_OF_RANGE, "/greatest", () -> plain().keepingLoadLeg(newtons(0)));
    refused(
        Refusal.Code.CONFLICT,
        "/idle",
        () ->
            plain()
                .letRun(
                    DropSpec.ByHand.of(newtons(900), seconds(1)),
                    new FrictionRing(0.2),
                    Turn.ofWraps(3),
                    newtons(1000)));
    refused(
        Refusal.Code.CONFLICT,
        "/greatest",
        () ->
            RopeCatch.of(
                    kilograms(10),
                    metres(1),
                    drop(TABLE),
                    path.over(CatchPoint.of(Ideal.INSTANCE, Turn.NONE), metres(2)))
                .keepingPoint(0, newtons(1000)));
    CatchPath[] many = {path};
    refused(
        Refusal.Code.OUT_OF_RANGE,
        "/points",
        () -> {
          for (int i = 0; i < 25; i++) {
            many[0] = many[0].over(CatchPoint.of(Ideal.INSTANCE, Turn.HALF), metres(1));
          }
        });
  }

  @Test
  void a_rope_shorter_than_the_fall_is_refused() {
    CatchPath path = CatchPath.of(metres(3));
    refused(
        Refusal.Code.CONFLICT,
        "/fall",
        () -> RopeCatch.of(kilograms(10), metres(6.01), drop(TABLE), path));
    assertThat(RopeCatch.of(kilograms(10), metres(6), drop(TABLE), path).locked().peak())
        .isNotNull();
    // A piece that is tied at its butt turns over: its centre falls farther than the rope alone
    // allows.
    assertThat(RopeCatch.of(kilograms(10), metres(9), drop(TABLE), path, metres(1.5)).locked())
        .isNotNull();
    refused(
        Refusal.Code.CONFLICT,
        "/fall",
        () -> RopeCatch.of(kilograms(10), metres(9.01), drop(TABLE), path, metres(1.5)));
  }

  private static void refused(Refusal.Code code, String place, Runnable making) {
    assertThatExceptionOfType(PlanRefusedException.class)
        .isThrownBy(making::run)
        .satisfies(
            e -> {
              assertThat(e.refusals()).hasSize(1);
              assertThat(e.refusals().get(0).code()).isEqualTo(code);
              assertThat(e.refusals().get(0).place()).isEqualTo(place);
            });
  }

  @Provide
  Arbitrary<Drawn> extremes() {
    Arbitrary<Double> masses = Arbitraries.of(1e-3, 1.0, 1e6);
    Arbitrary<Double> moduli = Arbitraries.of(1.0, 1e5, 1e9);
    Arbitrary<Double> falls = Arbitraries.of(0.0, 1e-6, 2.0, 200.0);
    return Combinators.combine(masses, moduli, falls)
        .as(
            (mass, modulus, fall) ->
                new Drawn(
                    mass,
                    fall,
                    PowerStretch.of(StretchPoint.of(newtons(modulus), 0.1), 2),
                    List.of(150.0),
                    List.of(),
                    List.of(),
                    List.of()));
  }

  @Property
  void at_the_ends_of_the_ranges_numbers_stay_finite(@ForAll("extremes") Drawn d) {
    Caught caught = d.piece().locked();
    assertThat(n(caught.peak())).isFinite().isGreaterThan(d.mass() * G);
    assertThat(caught.energy().residualShare()).isLessThan(EXACT);
  }

  @Property(tries = 200)
  void a_run_of_choice_stops_after_just_that(
      @ForAll @LongRange(min = 0) long seed,
      @ForAll @Scale(6) @DoubleRange(min = 0.01, max = 20) double length) {
    Drawn d = drawn(seed, true);
    LetRun.Stopped run = (LetRun.Stopped) d.piece().running(metres(length));
    // The run comes back from DRO-12, in which rounding of the energy counts over T - W.
    assertThat(m(run.run())).isCloseTo(length, relative(EXACT));
    assertThat(run.energy().residualShare()).isLessThan(ACCOUNT);
    assertThat(n(run.loads().loadLeg())).isLessThan(n(d.piece().locked().peak()));
    LetRun.Stopped longer = (LetRun.Stopped) d.piece().running(metres(1.1 * length));
    assertThat(n(longer.slipTension())).isLessThan(n(run.slipTension()));
  }

  @Test
  void a_run_on_one_linear_leg_has_a_closed_form() {
    // Spring k, weight W, fall h, run s: W (h + x + s) = k x^2 / 2 + T s with x = T / k gives
    // T = W - k s + sqrt((W - k s)^2 + 2 k W (h + s)).
    double w = 100 * G;
    double k = 100e3 / 3;
    RopeCatch piece =
        RopeCatch.of(
            kilograms(100),
            metres(2),
            drop(LinearStretch.of(kilonewtons(100))),
            CatchPath.of(metres(3)));
    for (double s : new double[] {0, 0.1, 1, 5}) {
      double part = w - k * s;
      double tension = part + Math.sqrt(part * part + 2 * k * w * (2 + s));
      assertThat(n(piece.running(metres(s)).loads().loadLeg())).isCloseTo(tension, relative(EXACT));
    }
  }

  @Property(tries = 100)
  void no_run_is_the_locked_catch(@ForAll @LongRange(min = 0) long seed) {
    Drawn d = drawn(seed, true);
    LetRun.Stopped run = (LetRun.Stopped) d.piece().running(metres(0));
    assertThat(m(run.run())).isZero();
    assertThat(n(run.loads().loadLeg())).isEqualTo(n(d.piece().locked().peak()));
    assertThat(run.cautions()).noneMatch(c -> c.code() == CautionCode.LET_RUN_MAY_FAIL);
  }

  @Test
  void a_run_keeps_the_moment_at_the_base() {
    // By hand: load leg plumb, tail level along +x, at 10 m above the base and 0.3 m beside it.
    // F = T (1 / t, 0, -1), r = (0.3, 0, 10): the moment about y is T (10 / t + 0.3).
    FrictionRing ring = new FrictionRing(0.2);
    CatchPoint point =
        CatchPoint.between(
            ring, Vector.ofSi(Kind.LENGTH, 0, 0, -2), Vector.ofSi(Kind.LENGTH, 4, 0, 0));
    CatchPath path = CatchPath.of(metres(2)).over(point, metres(4)).over(point, metres(1));
    double t = Math.exp(0.2 * Math.PI / 2);
    Vector<Length> base = Vector.ofSi(Kind.LENGTH, 1, 2, 3);
    MomentArm arm = MomentArm.of(path, base, Map.of(0, Vector.ofSi(Kind.LENGTH, 1.3, 2, 13)));
    assertThat(arm.vector().in(Kind.LENGTH)[1]).isCloseTo(10 / t + 0.3, relative(ROUNDING));
    assertThat(m(arm.length())).isCloseTo(10 / t + 0.3, relative(ROUNDING));
    RopeCatch piece = RopeCatch.of(kilograms(100), metres(2), drop(TABLE), path);
    double half = n(piece.locked().peak()) / 2;
    LetRun run = piece.keepingMoment(arm, Si.of(half * (10 / t + 0.3), Kind.MOMENT));
    assertThat(n(run.loads().loadLeg())).isCloseTo(half, relative(EXACT));
    // The same point once more, as the second of the path: all tensions over t.
    MomentArm both =
        MomentArm.of(
            path,
            base,
            Map.of(
                1, Vector.ofSi(Kind.LENGTH, 1.3, 2, 13), 0, Vector.ofSi(Kind.LENGTH, 1.3, 2, 13)));
    assertThat(m(both.length())).isCloseTo((10 / t + 0.3) * (1 + 1 / t), relative(ROUNDING));
    MomentArm none = MomentArm.of(path, base, Map.of());
    refused(
        Refusal.Code.CONFLICT,
        "/greatest",
        () -> piece.keepingMoment(none, Si.of(1000, Kind.MOMENT)));
    assertThatExceptionOfType(IndexOutOfBoundsException.class)
        .isThrownBy(() -> MomentArm.of(path, base, Map.of(2, base)));
    CatchPath turns = CatchPath.of(metres(2)).over(CatchPoint.of(ring, Turn.HALF), metres(1));
    refused(Refusal.Code.MISSING, "/points/0", () -> MomentArm.of(turns, base, Map.of(0, base)));
    assertThat(none)
        .isEqualTo(MomentArm.of(path, base, Map.of()))
        .hasSameHashCodeAs(MomentArm.of(path, base, Map.of()))
        .isNotEqualTo(arm);
  }

  @Property(tries = 200)
  void friction_at_the_top_raises_the_load_leg_and_hardly_the_force_on_the_point(
      @ForAll @Scale(6) @DoubleRange(min = 0.1, max = 0.25) double friction,
      @ForAll @Scale(6) @DoubleRange(min = 10, max = 20) double share,
      @ForAll @Scale(6) @DoubleRange(min = 3, max = 4) double fall) {
    // Kane 2023 in words. In numbers: where the peak is many weights it goes as the square root of
    // the stiffness, 1 / (r + 1 / t) with r load leg over tail; so the force on a point with a half
    // turn goes as (1 + 1 / t) / sqrt(r + 1 / t), level near r = 0, t = 1. With a short tail or a
    // soft fall it goes down by more than that.
    Caught smooth = overTop(0, share, fall);
    Caught rough = overTop(friction, share, fall);
    double leg = n(rough.peak()) / n(smooth.peak()) - 1;
    double point =
        n(rough.loads().points().get(0).magnitude()) / n(smooth.loads().points().get(0).magnitude())
            - 1;
    assertThat(leg).isPositive();
    assertThat(Math.abs(point)).isLessThan(leg / 3);
  }

  private static Caught overTop(double friction, double share, double fall) {
    CatchPath path =
        CatchPath.of(metres(2))
            .over(CatchPoint.of(new FrictionRing(friction), Turn.HALF), metres(2 * share));
    return RopeCatch.of(
            kilograms(100), metres(fall), drop(LinearStretch.of(kilonewtons(150))), path)
        .locked();
  }

  @Property(tries = 500)
  void an_account_of_a_small_mass_on_a_steep_curve_closes(@ForAll @LongRange(min = 0) long seed) {
    // One rounding of tension at the foot of a level stretch moves the strain by many.
    SplittableRandom random = new SplittableRandom(seed);
    List<StretchPoint> points = new ArrayList<>();
    double strain = 0;
    double tension = 0;
    for (int i = 0; i < random.nextInt(2, 6); i++) {
      strain += Math.pow(10, random.nextDouble(-4, -1));
      tension += Math.pow(10, random.nextDouble(1, 5));
      points.add(StretchPoint.of(newtons(tension), strain));
    }
    CatchPath path =
        CatchPath.of(metres(2))
            .over(CatchPoint.ofRatio(random.nextDouble(1, 3), Turn.HALF), metres(3));
    Caught caught =
        RopeCatch.of(
                kilograms(Math.pow(10, random.nextDouble(-3, 2))),
                metres(random.nextDouble(0, 4)),
                drop(TabulatedStretch.of(points)),
                path)
            .locked();
    assertThat(caught.energy().residualShare()).isLessThan(ACCOUNT);
  }

  @Test
  void a_curve_with_a_level_part_is_solved() {
    // Newton's method alone went to and fro over the level part here.
    StretchCurve curve =
        TabulatedStretch.of(
            List.of(
                StretchPoint.of(newtons(2111.5351148318705), 3.5264853285998227E-4),
                StretchPoint.of(newtons(2399.687956523227), 5.737999296207631E-4),
                StretchPoint.of(newtons(5465.233413624113), 0.08320915815867068),
                StretchPoint.of(newtons(34553.07642103019), 0.08340345756431025)));
    CatchPath path =
        CatchPath.of(metres(2))
            .over(CatchPoint.ofRatio(1.3, Turn.HALF), metres(1))
            .over(CatchPoint.ofRatio(2.2 / 1.3, Turn.HALF), metres(4));
    Caught caught =
        RopeCatch.of(kilograms(77.51655245027251), metres(0.840651538732565), drop(curve), path)
            .locked();
    assertThat(caught.energy().residualShare()).isLessThan(ACCOUNT);
  }

  @Property(tries = 500)
  void out_of_the_ranges_is_refused_and_within_them_all_is_finite(
      @ForAll("anything") double mass,
      @ForAll("anything") double force,
      @ForAll("anything") double length,
      @ForAll("anything") double gravity,
      @ForAll("anything") double stiffness,
      @ForAll("anything") double slip) {
    try {
      StretchPoint point = StretchPoint.of(newtons(force), 0.05);
      for (StretchCurve curve :
          List.of(
              LinearStretch.of(newtons(force)),
              PowerStretch.of(point, 0.25),
              PowerStretch.of(point, 10),
              TabulatedStretch.of(List.of(point, StretchPoint.of(newtons(2 * force), 0.3))))) {
        CatchPath path = CatchPath.of(metres(length));
        for (int i = 0; i < 4; i++) {
          path =
              path.over(
                  CatchPoint.ofRatio(i == 0 ? 1e6 : 1.3, Turn.of(degrees(100)))
                      .withStiffness(Si.of(stiffness, Kind.STIFFNESS)),
                  metres(i));
        }
        RopeCatch piece =
            RopeCatch.of(kilograms(mass), metres(Math.min(2 * length, 100)), drop(curve), path)
                .withGravity(Si.of(gravity, Kind.ACCELERATION));
        assertThat(n(piece.locked().peak())).isFinite();
        assertThat(n(piece.letRun(DropSpec.Slipping.of(newtons(slip))).loads().loadLeg()))
            .isFinite();
        assertThat(n(piece.running(metres(length)).loads().loadLeg())).isFinite();
      }
    } catch (PlanRefusedException refused) {
      assertThat(refused.refusals()).isNotEmpty();
    }
  }

  @Provide
  Arbitrary<Double> anything() {
    return Arbitraries.of(
        1e-305, 1e-6, 1e-3, 1.0, 1.0, 30.0, 30.0, 900.0, 1000.0, 1000.0, 1e6, 1e9, 1e12, 1e305);
  }

  @Test
  void masses_and_stiffnesses_out_of_this_world_are_refused() {
    CatchPath path = CatchPath.of(metres(3));
    refused(
        Refusal.Code.OUT_OF_RANGE,
        "/mass",
        () -> RopeCatch.of(kilograms(1e-305), metres(1), drop(TABLE), path));
    refused(
        Refusal.Code.OUT_OF_RANGE,
        "/mass",
        () -> LinearCatch.of(kilograms(1e-305), metres(1), Si.of(1e4, Kind.STIFFNESS)));
    refused(
        Refusal.Code.OUT_OF_RANGE,
        "/stiffness",
        () -> path.withSpringAtLoad(Si.of(1e-300, Kind.STIFFNESS)));
    refused(Refusal.Code.OUT_OF_RANGE, "/modulus", () -> LinearStretch.of(newtons(1e-300)));
    refused(Refusal.Code.OUT_OF_RANGE, "/loadLeg", () -> CatchPath.of(metres(1e-300)));
    refused(
        Refusal.Code.OUT_OF_RANGE,
        "/gravity",
        () -> plain().withGravity(Si.of(1e-300, Kind.ACCELERATION)));
    refused(
        Refusal.Code.OUT_OF_RANGE,
        "/wraps",
        () ->
            plain()
                .letRun(
                    DropSpec.ByHand.of(newtons(400), seconds(0)),
                    new FrictionRing(2),
                    Turn.ofWraps(20)));
    assertThat(
            RopeCatch.of(kilograms(1e-6), metres(1), drop(TABLE), path)
                .locked()
                .energy()
                .residualShare())
        .isLessThan(ACCOUNT);
  }

  @Test
  void equality_is_exact() {
    assertThat(plain()).isEqualTo(plain()).hasSameHashCodeAs(plain());
    assertThat(plain().withGravity(Si.of(9.8, Kind.ACCELERATION))).isNotEqualTo(plain());
    assertThat(plain()).isNotEqualTo(drawn(1, true).piece());
    CatchPoint point = CatchPoint.ofRatio(1.2, Turn.HALF);
    assertThat(point)
        .isEqualTo(CatchPoint.ofRatio(1.2, Turn.HALF))
        .hasSameHashCodeAs(CatchPoint.ofRatio(1.2, Turn.HALF))
        .isNotEqualTo(point.withStiffness(Si.of(1, Kind.STIFFNESS)));
    LinearCatch linear = LinearCatch.of(kilograms(1), metres(1), Si.of(100, Kind.STIFFNESS));
    assertThat(linear)
        .isEqualTo(LinearCatch.of(kilograms(1), metres(1), Si.of(100, Kind.STIFFNESS)))
        .isNotEqualTo(linear.withGravity(Si.of(9.8, Kind.ACCELERATION)));
  }
}
