package org.boleline.drop;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.boleline.Tolerances.ACCOUNT;
import static org.boleline.Tolerances.EXACT;
import static org.boleline.Tolerances.POWER;
import static org.boleline.Tolerances.TRAPEZOIDS;
import static org.boleline.Tolerances.absolute;
import static org.boleline.Tolerances.relative;
import static org.boleline.drop.CatchNumbers.j;
import static org.boleline.drop.CatchNumbers.m;
import static org.boleline.drop.CatchNumbers.n;
import static org.boleline.units.Amounts.kilograms;
import static org.boleline.units.Amounts.kilonewtons;
import static org.boleline.units.Amounts.metres;
import static org.boleline.units.Amounts.newtons;
import static org.boleline.units.Amounts.seconds;

import java.util.List;
import java.util.SplittableRandom;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.LongRange;
import org.boleline.explain.PlanRefusedException;
import org.boleline.explain.Refusal;
import org.boleline.explain.Source;
import org.boleline.geometry.Turn;
import org.boleline.plan.DropSpec;
import org.boleline.rope.FrictionRing;
import org.boleline.rope.StretchPoint;
import org.boleline.units.Kind;
import org.boleline.units.Si;
import org.junit.jupiter.api.Test;

class PassingRopeTest {
  private static final double G = 9.80665;

  private static CatchPath path(double[] lengths, double[] ratios) {
    CatchPath path = CatchPath.of(metres(lengths[0]));
    for (int i = 0; i < ratios.length; i++) {
      path = path.over(CatchPoint.ofRatio(ratios[i], Turn.HALF), metres(lengths[i + 1]));
    }
    return path;
  }

  private static StretchCurve curve(SplittableRandom random) {
    StretchCurve[] curves = {
      LinearStretch.of(kilonewtons(random.nextDouble(50, 500))),
      PowerStretch.of(
          StretchPoint.of(kilonewtons(random.nextDouble(2, 20)), 0.05), random.nextDouble(0.6, 3)),
      TabulatedStretch.of(
          List.of(
              StretchPoint.of(newtons(4000), random.nextDouble(0.01, 0.04)),
              StretchPoint.of(newtons(11000), 0.05),
              StretchPoint.of(newtons(40000), 0.1)))
    };
    return curves[random.nextInt(3)];
  }

  private static RopeCatch drawn(long seed, int fewest, boolean friction) {
    SplittableRandom random = new SplittableRandom(seed);
    StretchCurve curve = curve(random);
    int points = random.nextInt(fewest, fewest + 4);
    double[] lengths = new double[points + 1];
    double[] ratios = new double[points];
    lengths[0] = random.nextDouble(1, 5);
    for (int i = 0; i < points; i++) {
      lengths[i + 1] = random.nextDouble(0, 10);
      ratios[i] = friction ? random.nextDouble(1, 2.5) : 1;
    }
    return RopeCatch.of(
        kilograms(random.nextDouble(5, 500)),
        metres(random.nextDouble(0, 2 * lengths[0])),
        RopeStretch.forDrop(curve, Source.PLAN),
        path(lengths, ratios));
  }

  @Property(tries = 100)
  void without_friction_it_does_not_matter_where_rope_is_counted(
      @ForAll @LongRange(min = 0) long seed) {
    // All rope has one strain then: the load comes down by strain times all rope.
    RopeCatch piece = drawn(seed, 0, false);
    Caught laid = piece.locked();
    Caught passing = piece.withPassingRope(true).locked();
    assertThat(n(passing.peak())).isCloseTo(n(laid.peak()), relative(EXACT));
    assertThat(m(passing.stretch())).isCloseTo(m(laid.stretch()), relative(EXACT));
    assertThat(j(passing.energy().storedInRope()))
        .isCloseTo(j(laid.energy().storedInRope()), relative(EXACT));
  }

  @Property(tries = 100)
  void energy_is_accounted_for(@ForAll @LongRange(min = 0) long seed) {
    // Work and heats come from different integrals.
    RopeCatch piece = drawn(seed, 1, true).withPassingRope(true);
    assertThat(piece.locked().energy().residualShare()).isLessThan(EXACT);
    LetRun.Stopped run = (LetRun.Stopped) piece.running(metres(0.7));
    assertThat(m(run.run())).isCloseTo(0.7, absolute(EXACT * m(run.clearanceNeeded())));
    assertThat(run.energy().residualShare()).isLessThan(EXACT);
    assertThat(n(run.loads().loadLeg())).isLessThan(n(piece.locked().peak()));
  }

  @Test
  void energy_of_a_hand_that_holds_late_is_accounted_for() {
    RopeCatch piece = drawn(5, 2, true).withPassingRope(true);
    double last = n(piece.locked().loads().legs().get(2));
    FrictionRing device = new FrictionRing(0.2);
    Turn wraps = Turn.ofWraps(1);
    LetRun.Stopped run =
        (LetRun.Stopped)
            piece.letRun(
                DropSpec.ByHand.of(newtons(0.4 * last / device.tensionRatio(wraps)), seconds(0.2)),
                device,
                wraps,
                newtons(20));
    assertThat(m(run.run())).isGreaterThan(m(run.runBeforeHold()));
    assertThat(m(run.runBeforeHold())).isPositive();
    assertThat(run.energy().residualShare()).isLessThan(EXACT);
    assertThat(run.steps().stream().map(s -> s.formula().id()))
        .contains("DRO-18", "DRO-19", "DRO-20");
  }

  @Property(tries = 50)
  void a_linear_rope_over_one_point_has_a_closed_form(@ForAll @LongRange(min = 0) long seed) {
    // s = T / EA, ratio t: x = L1 s + (1 + s) L2 s / (t + s). By parts the work is T x less the
    // integral of x over T; (1 + s) s / (t + s) = s + 1 - t + t (t - 1) / (t + s).
    SplittableRandom random = new SplittableRandom(seed);
    double ea = random.nextDouble(5e4, 5e5);
    double t = random.nextDouble(1, 4);
    double l1 = random.nextDouble(1, 5);
    double l2 = random.nextDouble(0, 20);
    double mass = random.nextDouble(10, 500);
    double fall = random.nextDouble(0, 2 * l1);
    Caught caught =
        RopeCatch.of(
                kilograms(mass),
                metres(fall),
                RopeStretch.forDrop(LinearStretch.of(newtons(ea)), Source.PLAN),
                path(new double[] {l1, l2}, new double[] {t}))
            .withPassingRope(true)
            .locked();
    double s = n(caught.peak()) / ea;
    double x = l1 * s + (1 + s) * l2 * s / (t + s);
    double rest = l1 * s * s / 2 + l2 * (s * s / 2 + (1 - t) * s + t * (t - 1) * Math.log1p(s / t));
    assertThat(m(caught.stretch())).isCloseTo(x, relative(ACCOUNT));
    assertThat(ea * (s * x - rest)).isCloseTo(mass * G * (fall + x), relative(EXACT));
  }

  @Property(tries = 20)
  void rope_followed_in_small_steps_does_the_same(@ForAll @LongRange(min = 0) long seed) {
    // By another route: rope is handed from leg to leg in small steps of tension; work and heat are
    // sums of trapezoids.
    SplittableRandom random = new SplittableRandom(seed);
    double tr = 0.05;
    double power = random.nextDouble(1, 2);
    double reference = 9000;
    double[] l = {2, random.nextDouble(0, 5), random.nextDouble(1, 9)};
    double[] t = {random.nextDouble(1, 2), random.nextDouble(1, 2)};
    double[] p = {1, t[0], t[0] * t[1]};
    Caught caught =
        RopeCatch.of(
                kilograms(100),
                metres(2),
                RopeStretch.forDrop(
                    PowerStretch.of(StretchPoint.of(newtons(reference), tr), power), Source.PLAN),
                path(l, t))
            .withPassingRope(true)
            .locked();
    int steps = 20_000;
    double peak = n(caught.peak());
    double[] rope = l.clone();
    double[] bringsBefore = new double[3];
    double lengthBefore = l[0];
    double work = 0;
    double[] heat = new double[2];
    double tensionBefore = 0;
    for (int i = 1; i <= steps; i++) {
      // Even steps of strain, not of tension: the curve is steep at the origin.
      double tension = peak * Math.pow((double) i / steps, power);
      double[] brings = new double[3];
      double[] e = new double[3];
      for (int k = 0; k < 3; k++) {
        e[k] = tr * Math.pow(tension / p[k] / reference, 1 / power);
        brings[k] = tension / p[k] * (1 + e[k]) - tension / p[k] * e[k] / (power + 1);
      }
      double out2 = rope[2] - l[2] / (1 + e[2]);
      double out1 = rope[1] + out2 - l[1] / (1 + e[1]);
      rope[2] -= out2;
      rope[1] += out2 - out1;
      rope[0] += out1;
      double length = rope[0] * (1 + e[0]);
      work += (tension + tensionBefore) / 2 * (length - lengthBefore);
      heat[0] += (brings[0] - brings[1] + bringsBefore[0] - bringsBefore[1]) / 2 * out1;
      heat[1] += (brings[1] - brings[2] + bringsBefore[1] - bringsBefore[2]) / 2 * out2;
      lengthBefore = length;
      tensionBefore = tension;
      bringsBefore = brings;
    }
    double given = j(caught.energy().given());
    assertThat(m(caught.stretch())).isCloseTo(lengthBefore - l[0], relative(EXACT));
    assertThat(work).isCloseTo(given, relative(TRAPEZOIDS));
    for (int k = 0; k < 2; k++) {
      assertThat(j(caught.energy().heatAtPoints().get(k)))
          .isCloseTo(heat[k], absolute(TRAPEZOIDS * given));
    }
  }

  @Test
  void both_ways_of_counting_meet_as_the_strain_goes_to_nothing() {
    double[] off = new double[2];
    double[] strain = new double[2];
    for (int i = 0; i < 2; i++) {
      double ea = i == 0 ? 1e7 : 1e8;
      RopeCatch piece =
          RopeCatch.of(
              kilograms(20),
              metres(0.1),
              RopeStretch.forDrop(LinearStretch.of(newtons(ea)), Source.PLAN),
              path(new double[] {2, 9, 3}, new double[] {1.5, 1.3}));
      double laid = n(piece.locked().peak());
      strain[i] = laid / ea;
      off[i] = Math.abs(n(piece.withPassingRope(true).locked().peak()) / laid - 1);
      assertThat(off[i]).isBetween(0.01 * strain[i], strain[i]);
    }
    assertThat(Math.log(off[0] / off[1]) / Math.log(strain[0] / strain[1]))
        .isCloseTo(1, absolute(POWER));
  }

  @Property(tries = 50)
  void a_spring_at_the_load_alone_goes_with_it(@ForAll @LongRange(min = 0) long seed) {
    SplittableRandom random = new SplittableRandom(seed);
    RopeStretch rope = RopeStretch.forDrop(curve(random), Source.PLAN);
    CatchPath path =
        path(new double[] {3, 7}, new double[] {1.4}).withSpringAtLoad(Si.of(5e4, Kind.STIFFNESS));
    Caught caught =
        RopeCatch.of(kilograms(90), metres(2), rope, path).withPassingRope(true).locked();
    assertThat(caught.energy().residualShare()).isLessThan(EXACT);
    assertThat(j(caught.energy().storedInSprings()))
        .isCloseTo(n(caught.peak()) * n(caught.peak()) / 1e5, relative(EXACT));
  }

  @Test
  void points_that_give_way_are_refused() {
    CatchPath path =
        CatchPath.of(metres(3))
            .over(
                CatchPoint.ofRatio(1.4, Turn.HALF).withStiffness(Si.of(1e5, Kind.STIFFNESS)),
                metres(4));
    RopeCatch piece =
        RopeCatch.of(
            kilograms(90),
            metres(2),
            RopeStretch.forDrop(LinearStretch.of(kilonewtons(90)), Source.PLAN),
            path);
    assertThatExceptionOfType(PlanRefusedException.class)
        .isThrownBy(() -> piece.withPassingRope(true))
        .satisfies(
            e -> {
              assertThat(e.refusals().get(0).code()).isEqualTo(Refusal.Code.CONFLICT);
              assertThat(e.refusals().get(0).place()).isEqualTo("/path");
            });
    assertThat(piece.withPassingRope(false)).isEqualTo(piece);
    RopeCatch plain = drawn(1, 1, true);
    assertThat(plain.withPassingRope(true)).isNotEqualTo(plain);
  }
}
