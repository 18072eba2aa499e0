package org.boleline.statics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.boleline.units.Amounts.metres;

import java.util.List;
import java.util.Optional;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.domains.Domain;
import net.jqwik.api.domains.DomainContext;
import org.boleline.Tolerances;
import org.boleline.geometry.Vector;
import org.boleline.plan.Arrangement;
import org.boleline.plan.Contact;
import org.boleline.plan.Piece;
import org.boleline.plan.Plan;
import org.boleline.plan.Tail;
import org.boleline.rope.Bark;
import org.boleline.rope.FrictionRing;
import org.boleline.rope.Hardware;
import org.boleline.rope.Ideal;
import org.boleline.rope.Motion;
import org.boleline.rope.Sheave;
import org.boleline.stem.Stem;
import org.boleline.units.Amounts;
import org.boleline.units.Kind;
import org.boleline.units.Si;
import org.junit.jupiter.api.Test;

/** What the laws of statics ask of every solution, whatever the rope does between its ends. */
@Domain(LeaningRig.Domain.class)
@Domain(DomainContext.Global.class)
class BalancePropertiesTest {
  private static final double[] DOWN = {0, 0, -1};

  @Provide
  Arbitrary<Hardware> hardware() {
    return Arbitraries.of(Ideal.INSTANCE, new FrictionRing(0.25), new Sheave(0.95), new Bark(0.4));
  }

  private static double[] loadPull(Solution solution) {
    return Plain.times(Rigs.newtons(solution.legs().get(0).tension()), DOWN);
  }

  private static double[] moment(double[] place, double[] force) {
    return Plain.cross(place, force);
  }

  private static double[] firstPlace(Solution solution) {
    return solution.contacts().stream()
        .filter(ContactResult::bears)
        .findFirst()
        .orElseThrow()
        .position()
        .in(Kind.LENGTH);
  }

  private static void assertVector(double[] found, double[] wanted, double allowed) {
    assertThat(Plain.size(Plain.minus(found, wanted))).isLessThanOrEqualTo(allowed);
  }

  private static double[] share(Solution solution, Share.Origin origin, boolean moment) {
    Optional<Share> share =
        solution.stems().get(0).shares().stream().filter(s -> s.origin() == origin).findFirst();
    return share
        .map(s -> moment ? s.moment().in(Kind.MOMENT) : s.force().in(Kind.FORCE))
        .orElse(new double[3]);
  }

  /** Equilibrium of the whole rope, whose ends carry all that comes in. */
  @Property(tries = 60)
  void forces_of_all_points_add_up_to_the_tensions_at_both_ends(
      @ForAll LeaningRig rig, @ForAll("hardware") Hardware hardware, @ForAll Motion motion) {
    Solution found = rig.solution(rig.aside(hardware).motion(motion));
    double load = Rigs.newtons(found.legs().get(0).tension());
    double[] last = found.contacts().get(found.contacts().size() - 1).position().in(Kind.LENGTH);
    double[] end = {0, rig.side() * LeaningRig.LENGTH, 0};
    double[] tail =
        Plain.times(Rigs.newtons(found.tailTension()), Plain.unit(Plain.minus(end, last)));
    double[] ends = Plain.plus(loadPull(found), tail);
    double allowed = Tolerances.RESIDUAL * Math.max(load, Plain.size(tail));
    assertVector(Rigs.total(found), ends, allowed);
    assertVector(
        Plain.times(-1, found.stems().get(0).riggingBase().force().in(Kind.FORCE)), ends, allowed);
    assertVector(share(found, Share.Origin.LOAD, false), loadPull(found), allowed);
    assertVector(share(found, Share.Origin.TAIL, false), tail, allowed);
  }

  /** A device on the stem closes the rope: the stem as a whole feels the load alone. */
  @Property(tries = 40)
  void a_device_on_the_same_stem_leaves_the_load_alone(
      @ForAll LeaningRig rig,
      @ForAll("hardware") Hardware hardware,
      @ForAll Motion motion,
      @ForAll @DoubleRange(min = 0.02, max = 0.15) double at,
      @ForAll @DoubleRange(min = 0, max = 3) double wraps) {
    Tail.Device device = Tail.Device.of("stem", metres(at * LeaningRig.LENGTH), 0.2, wraps);
    Solution found = rig.solution(rig.over(hardware).motion(motion).tail(device));
    double load = Rigs.newtons(found.legs().get(0).tension());
    Reaction base = found.stems().get(0).riggingBase();
    double allowed = Tolerances.RESIDUAL * Math.max(load, Rigs.newtons(found.tailTension()));
    assertVector(Plain.times(-1, base.force().in(Kind.FORCE)), loadPull(found), allowed);
    assertVector(
        Plain.times(-1, base.moment().in(Kind.MOMENT)),
        moment(firstPlace(found), loadPull(found)),
        allowed * LeaningRig.LENGTH);
    assertThat(share(found, Share.Origin.TAIL, false)).containsExactly(0, 0, 0);
    double ratio = Math.exp(0.2 * 2 * Math.PI * wraps);
    double hand = Rigs.newtons(found.handTension().orElseThrow());
    double tail = Rigs.newtons(found.tailTension());
    double wanted = found.motion() == Motion.RAISING ? tail * ratio : tail / ratio;
    assertThat(hand).isCloseTo(wanted, within(Tolerances.EXACT * wanted));
  }

  /** Base moment = load x reach + own weight, if the tail pulls through the base. */
  @Property(tries = 60)
  void points_between_do_not_change_the_base_moment(
      @ForAll LeaningRig rig, @ForAll("hardware") Hardware hardware, @ForAll Motion motion) {
    Solution found = rig.solution(rig.over(hardware).motion(motion));
    double load = Rigs.newtons(found.legs().get(0).tension());
    StemResult stem = found.stems().get(0);
    double[] reach = firstPlace(found);
    double allowed =
        Tolerances.RESIDUAL * LeaningRig.LENGTH * Math.max(load, Rigs.newtons(found.tailTension()));
    assertThat(Si.value(stem.riggingBase().momentMagnitude(), Kind.MOMENT, "moment"))
        .isCloseTo(load * Math.hypot(reach[0], reach[1]), within(allowed));
    assertVector(share(found, Share.Origin.TAIL, true), new double[3], allowed);
    assertVector(
        Plain.times(-1, stem.base().moment().in(Kind.MOMENT)),
        Plain.plus(moment(reach, loadPull(found)), share(found, Share.Origin.OWN_WEIGHT, true)),
        allowed);

    // The same load and reach over the first point alone: the moment per reach is again the load.
    Solution alone = rig.solution(Rigs.through(hardware, rig.stations()[0]).motion(motion));
    double[] aloneReach = firstPlace(alone);
    assertThat(
            Si.value(alone.stems().get(0).riggingBase().momentMagnitude(), Kind.MOMENT, "moment"))
        .isCloseTo(load * Math.hypot(aloneReach[0], aloneReach[1]), within(allowed));
  }

  /** Base moment = load x reach + tail x arm + own weight. */
  @Property(tries = 40)
  void a_tail_aside_adds_its_tension_times_its_arm(
      @ForAll LeaningRig rig, @ForAll("hardware") Hardware hardware, @ForAll Motion motion) {
    Solution found = rig.solution(rig.aside(hardware).motion(motion));
    double[] last = found.contacts().get(found.contacts().size() - 1).position().in(Kind.LENGTH);
    double[] end = {0, rig.side() * LeaningRig.LENGTH, 0};
    double tension = Rigs.newtons(found.tailTension());
    double[] tail = Plain.times(tension, Plain.unit(Plain.minus(end, last)));
    double[] wanted = Plain.plus(moment(firstPlace(found), loadPull(found)), moment(end, tail));
    double scale = Math.max(tension, Rigs.newtons(found.legs().get(0).tension()));
    assertVector(
        Plain.times(-1, found.stems().get(0).riggingBase().moment().in(Kind.MOMENT)),
        wanted,
        Tolerances.RESIDUAL * scale * LeaningRig.LENGTH);
  }

  /** Volume of a frustum of a cone; its moment by summing thin slices of the loaded shape. */
  @Property(tries = 30)
  void own_weight_is_that_of_the_frustum_in_the_loaded_shape(@ForAll LeaningRig rig) {
    Solution found = rig.solution(rig.over(Ideal.INSTANCE));
    double d = rig.base();
    double e = rig.taper() * rig.base();
    double volume = Math.PI / 12 * LeaningRig.LENGTH * (d * d + d * e + e * e);
    double weight = Rigs.GRAVITY * LeaningRig.DENSITY * volume;
    double[] force = share(found, Share.Origin.OWN_WEIGHT, false);
    assertVector(force, Plain.times(weight, DOWN), Tolerances.EXACT * weight);

    StemProfile profile = found.stems().get(0).profile();
    double[] at = profile.stations(Kind.LENGTH);
    double[][] place = profile.positions(Kind.LENGTH);
    double[] sum = new double[3];
    for (int i = 1; i < at.length; i++) {
      double middle = 0.5 * (at[i] + at[i - 1]);
      double width = d + (e - d) * middle / LeaningRig.LENGTH;
      double slice =
          Rigs.GRAVITY * LeaningRig.DENSITY * Math.PI / 4 * width * width * (at[i] - at[i - 1]);
      double[] centre = Plain.times(0.5, Plain.plus(place[i], place[i - 1]));
      sum = Plain.plus(sum, moment(centre, Plain.times(slice, DOWN)));
    }
    double[] moment = share(found, Share.Origin.OWN_WEIGHT, true);
    assertVector(moment, sum, Tolerances.THIN_SLICES * weight * LeaningRig.LENGTH);
  }

  /**
   * At equal turns every ring multiplies by the same ratio, up in raising and down in lowering.
   *
   * <p>Source: Delaney, Physics for Roping Technicians, 2022, pp. 82-88, for the pair over one
   * contact; the product is derived from it. The stem is all but rigid, so that the turns are
   * equal.
   */
  @Property(tries = 50)
  void raising_times_lowering_tension_is_the_square_of_the_load(
      @ForAll LeaningRig rig, @ForAll("hardware") Hardware hardware) {
    double load = 0.1;
    Stem.Builder rigid = rig.stem().wood(Rigs.wood(1e13, 1)).ownWeight(false);
    Solution lowering = Rigs.sound(rigid, rig.aside(hardware).motion(Motion.LOWERING), load);
    Solution raising = Rigs.sound(rigid, rig.aside(hardware).motion(Motion.RAISING), load);
    assertThat(Rigs.newtons(lowering.tailTension()) * Rigs.newtons(raising.tailTension()))
        .isCloseTo(load * load, within(Tolerances.ALL_BUT_RIGID * load * load));
    assertThat(Rigs.newtons(lowering.tailTension())).isLessThanOrEqualTo(load);
  }

  @Property(tries = 40)
  void held_is_the_interval_from_lowering_to_raising(
      @ForAll LeaningRig rig, @ForAll("hardware") Hardware hardware) {
    Solution held = rig.solution(rig.aside(hardware).motion(Motion.HELD));
    Solution other = held.otherEnd().orElseThrow();
    Solution lowering = rig.solution(rig.aside(hardware).motion(Motion.LOWERING));
    Solution raising = rig.solution(rig.aside(hardware).motion(Motion.RAISING));
    assertThat(Numbers.withoutCautions(held.with(null, List.of())))
        .isEqualTo(Numbers.withoutCautions(lowering));
    assertThat(Numbers.withoutCautions(other)).isEqualTo(Numbers.withoutCautions(raising));
    double load = Rigs.newtons(held.legs().get(0).tension());
    assertThat(Rigs.newtons(held.tailTension())).isLessThanOrEqualTo(load);
    assertThat(Rigs.newtons(other.tailTension())).isGreaterThanOrEqualTo(load);
    if (hardware != Ideal.INSTANCE) {
      assertThat(Rigs.newtons(held.tailTension())).isLessThan(Rigs.newtons(other.tailTension()));
    }
  }

  /**
   * Two stems: what the rope between them takes from one it gives to the other, and together they
   * feel the two ends alone.
   */
  @Test
  void legs_between_stems_cancel() {
    Stem leaning = Rigs.straight(12, 0.4, 0, 0.35, 0.2, Rigs.wood(9e9, 900)).id("leaning").build();
    Stem behind =
        Rigs.straight(14, 0.1, 2.5, 0.4, 0.25, Rigs.wood(9e9, 900))
            .id("behind")
            .base(Vector.ofSi(Kind.LENGTH, -2, 1, 0.5))
            .build();
    Arrangement arrangement =
        Arrangement.builder("both")
            .motion(Motion.LOWERING)
            .contacts(
                List.of(
                    Contact.of("leaning", metres(11), new FrictionRing(0.2)),
                    Contact.of("behind", metres(12), new Sheave(0.95))))
            .tail(Rigs.point(-4, -1, 0))
            .build();
    Solution found =
        Rigs.sound(
            Plan.builder()
                .title("two stems")
                .stems(List.of(leaning, behind))
                .piece(Piece.of(Amounts.kilograms(150)))
                .arrangements(List.of(arrangement))
                .build());
    double[] others = new double[3];
    double[] aboutOrigin = new double[3];
    for (int i = 0; i < 2; i++) {
      double[] base = found.plan().stems().get(i).base().in(Kind.LENGTH);
      for (Share share : found.stems().get(i).shares()) {
        if (share.origin() == Share.Origin.OTHER_STEMS) {
          double[] force = share.force().in(Kind.FORCE);
          assertThat(Plain.size(force)).isGreaterThan(500);
          others = Plain.plus(others, force);
          aboutOrigin =
              Plain.plus(
                  aboutOrigin,
                  Plain.plus(share.moment().in(Kind.MOMENT), Plain.cross(base, force)));
        }
      }
    }
    double load = 150 * Rigs.GRAVITY;
    assertVector(others, new double[3], Tolerances.RESIDUAL * load);
    assertVector(aboutOrigin, new double[3], Tolerances.RESIDUAL * load * 14);
  }
}
