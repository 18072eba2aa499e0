package org.boleline.drop;

import static org.assertj.core.api.Assertions.assertThat;
import static org.boleline.Tolerances.relative;
import static org.boleline.drop.CatchNumbers.m;
import static org.boleline.drop.CatchNumbers.n;
import static org.boleline.units.Amounts.degrees;
import static org.boleline.units.Amounts.kilograms;
import static org.boleline.units.Amounts.kilogramsPerCubicMetre;
import static org.boleline.units.Amounts.kilonewtons;
import static org.boleline.units.Amounts.metres;
import static org.boleline.units.Amounts.newtons;
import static org.boleline.units.Amounts.pascals;
import static org.boleline.units.Amounts.seconds;

import java.util.Arrays;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.boleline.Tolerances;
import org.boleline.explain.Source;
import org.boleline.geometry.Heading;
import org.boleline.geometry.Vector;
import org.boleline.plan.Arrangement;
import org.boleline.plan.Contact;
import org.boleline.plan.Piece;
import org.boleline.plan.Plan;
import org.boleline.plan.Tail;
import org.boleline.rope.FrictionRing;
import org.boleline.rope.Hardware;
import org.boleline.rope.Motion;
import org.boleline.statics.RigAtRest;
import org.boleline.statics.Solution;
import org.boleline.statics.Statics;
import org.boleline.stem.Diameters;
import org.boleline.stem.Stem;
import org.boleline.stem.StemShape;
import org.boleline.units.Kind;
import org.boleline.units.Si;
import org.boleline.wood.WoodProperties;
import org.junit.jupiter.api.Test;

/** Catches on stems that bend, against limits that other parts of the library know. Invented. */
class CatchOnStemsTest {
  private static final RopeStretch ROPE =
      RopeStretch.forDrop(LinearStretch.of(kilonewtons(200)), Source.PLAN);
  private static final double DEVICE = 0.8;

  private static Plan plan(double modulus, double density, double friction, double mass) {
    Stem stem =
        Stem.builder("stem")
            .shape(StemShape.Straight.of(Heading.of(degrees(20), degrees(30)), metres(12)))
            .diameters(Diameters.tapering(metres(12), metres(0.36), metres(0.2)))
            .wood(WoodProperties.of(pascals(modulus), kilogramsPerCubicMetre(density)))
            .build();
    List<Contact> contacts =
        List.of(
            Contact.of("stem", metres(11.5), new FrictionRing(friction)),
            Contact.of("stem", metres(7), new FrictionRing(friction)).withOffset(metres(0.2)));
    return Plan.builder()
        .stems(List.of(stem))
        .piece(Piece.of(kilograms(mass)))
        .arrangements(
            List.of(
                Arrangement.builder("way")
                    .motion(Motion.LOWERING)
                    .contacts(contacts)
                    .tail(Tail.Device.of("stem", metres(DEVICE), 0.2, 2))
                    .build()))
        .build();
  }

  private static CatchInTime.Builder drop(RigAtRest rig, double friction, double mass, double h) {
    Hardware ring = new FrictionRing(friction);
    RopeLine line = RopeLine.over(rig, List.of(ring, ring));
    double[] top = rig.points().get(0).in(Kind.LENGTH);
    return CatchInTime.builder(
        FallingPiece.point(
            kilograms(mass), Vector.ofSi(Kind.LENGTH, top[0], top[1], top[2] - 3 + h)),
        ROPE,
        line,
        metres(3));
  }

  private static RigAtRest rig(Plan plan) {
    return RigAtRest.of(plan, "way").orElseThrow();
  }

  private static TimedCatch.Followed followed(CatchInTime.Builder builder) {
    TimedCatch.Followed caught = (TimedCatch.Followed) builder.build().follow();
    assertThat(caught.energy().residualShare()).isLessThan(Tolerances.ENERGY_ACCOUNT);
    return caught;
  }

  @Property(tries = 5)
  void a_stem_without_bound_on_its_stiffness_is_a_rigid_one(
      @ForAll @DoubleRange(min = 0, max = 0.3) double friction,
      @ForAll @DoubleRange(min = 0.1, max = 2) double h) {
    RigAtRest rig = rig(plan(1e13, 900, friction, 100));
    TimedCatch.Followed rigid = followed(drop(rig, friction, 100, h).over(seconds(1)));
    TimedCatch.Followed stiff =
        followed(drop(rig, friction, 100, h).onStems(rig, 0.03).over(seconds(1)));
    assertThat(n(stiff.loadLeg().firstPulse()))
        .isCloseTo(n(rigid.loadLeg().firstPulse()), relative(1e-3));
  }

  /** Nearly without mass, the stem follows at once: springs of the catch by energy. */
  @Test
  void a_light_stem_is_a_spring() {
    double friction = 0.1;
    RigAtRest rig = rig(plan(2e10, 2, friction, 100));
    TimedCatch.Followed light =
        followed(
            drop(rig, friction, 100, 0.5)
                .onStems(rig, 0.03)
                .countingRopeWhereItLay()
                .over(seconds(0.6)));
    CatchPath path =
        RopeLine.over(rig, List.of(new FrictionRing(friction), new FrictionRing(friction)))
            .path(metres(3));
    PointGive give = PointGive.of(rig.kernel().compliance(new int[] {0, 1}), metres(1), newtons(1));
    RopeCatch rigid = RopeCatch.of(kilograms(100), metres(0.5), ROPE, path);
    RopeCatch giving = RopeCatch.of(kilograms(100), metres(0.5), ROPE, path.withGive(give));
    double softened = n(rigid.locked().peak()) - n(giving.locked().peak());
    assertThat(softened).isGreaterThan(100);
    assertThat(n(light.loadLeg().firstPulse()) - n(giving.locked().peak()))
        // The springs stay at their first directions; here the legs turn as the top moves.
        .isBetween(-0.2 * softened, 0.2 * softened);
  }

  /** When all has come to rest, the base moment is that of the statics; so is the fibre stress. */
  @Test
  void at_rest_it_carries_what_the_statics_say() {
    double friction = 1e-4;
    Plan plan = plan(9e10, 900, friction, 100);
    RigAtRest rig = rig(plan);
    TimedCatch.Followed caught =
        followed(
            drop(rig, friction, 100, 0)
                .onStems(rig, 0.5)
                .losing(0.9, 1e-4)
                .over(seconds(30))
                .sampled(seconds(0.05)));
    Solution slow = (Solution) Statics.analyse(plan).arrangements().get(0);
    double[] slowMoment = slow.stems().get(0).base().moment().in(Kind.MOMENT);
    double[][] moments = caught.history().baseMoments(0, Kind.MOMENT);
    double[] stresses = caught.history().stresses(0, Kind.PRESSURE);
    double[] mean = new double[3];
    int last = 200;
    for (int i = moments.length - last; i < moments.length; i++) {
      for (int d = 0; d < 3; d++) {
        mean[d] += moments[i][d] / last;
      }
    }
    double size = n3(slowMoment);
    for (int d = 0; d < 3; d++) {
      // What the ground does to the stem is the other way round.
      assertThat(mean[d]).isBetween(-slowMoment[d] - 0.02 * size, -slowMoment[d] + 0.02 * size);
    }
    double stress =
        Arrays.stream(stresses, stresses.length - last, stresses.length).average().orElseThrow();
    double slowStress =
        Math.max(
            Si.value(slow.stems().get(0).compressionStress().value(), Kind.PRESSURE, "s"),
            Si.value(slow.stems().get(0).tensionStress().value(), Kind.PRESSURE, "s"));
    assertThat(stress).isCloseTo(slowStress, relative(0.03));
    assertThat(m(caught.depth().overall())).isPositive();
  }

  private static double n3(double[] v) {
    return Math.sqrt(v[0] * v[0] + v[1] * v[1] + v[2] * v[2]);
  }

  /** A heavy stem first holds back: the force is above that of springs, and the tip lags behind. */
  @Test
  void samples_are_even_and_hold_the_peak() {
    RigAtRest rig = rig(plan(9e9, 900, 0.2, 100));
    TimedCatch.Followed caught =
        followed(drop(rig, 0.2, 100, 1).onStems(rig, 0.03).over(seconds(2)).sampled(seconds(1e-3)));
    CatchHistory history = caught.history();
    double[] times = history.times(Kind.TIME);
    assertThat(times).hasSize(2001);
    for (int i = 0; i < times.length; i++) {
      assertThat(times[i]).isBetween(i * 1e-3 - 1e-9, i * 1e-3 + 1e-9);
    }
    double most = Arrays.stream(history.tensions(0, Kind.FORCE)).max().orElseThrow();
    assertThat(most)
        .isBetween(0.999 * n(caught.loadLeg().overall()), n(caught.loadLeg().overall()));
    double[][] pulls = history.forces(0, Kind.FORCE);
    double greatest = Arrays.stream(pulls).mapToDouble(CatchOnStemsTest::n3).max().orElseThrow();
    assertThat(greatest)
        .isBetween(
            0.999 * n(caught.points().get(0).overall()), n(caught.points().get(0).overall()));
    double moment =
        Arrays.stream(history.baseMoments(0, Kind.MOMENT))
            .mapToDouble(CatchOnStemsTest::n3)
            .max()
            .orElseThrow();
    double peak = Si.value(caught.baseMoments().get(0).overall(), Kind.MOMENT, "moment");
    assertThat(moment).isBetween(0.995 * peak, peak * (1 + 1e-9));
    double[][] tip = history.places(0, Kind.LENGTH);
    assertThat(tip[900][2]).isLessThan(tip[0][2]);
  }
}
