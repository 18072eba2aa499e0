package org.boleline.statics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.boleline.units.Amounts.kilogramsPerCubicMetre;
import static org.boleline.units.Amounts.metres;
import static org.boleline.units.Amounts.newtonMetresPerRadian;
import static org.boleline.units.Amounts.pascals;

import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.Assume;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.domains.Domain;
import net.jqwik.api.domains.DomainContext;
import org.boleline.Tolerances;
import org.boleline.plan.Arrangement;
import org.boleline.plan.Contact;
import org.boleline.rope.Bark;
import org.boleline.rope.FrictionRing;
import org.boleline.rope.Ideal;
import org.boleline.rope.Motion;
import org.boleline.rope.Sheave;
import org.boleline.stem.Diameters;
import org.boleline.stem.Root;
import org.boleline.stem.ShapeIs;
import org.boleline.stem.Stem;
import org.boleline.units.Kind;
import org.boleline.wood.WoodProperties;
import org.junit.jupiter.api.Test;

/** One arrangement that has to run into another, and answers that may only go one way. */
@Domain(LeaningRig.Domain.class)
@Domain(DomainContext.Global.class)
class LimitingCasesTest {
  @Property(tries = 40)
  void no_friction_is_ideal(@ForAll LeaningRig rig, @ForAll Motion motion) {
    List<String> ideal =
        Numbers.withoutCautions(rig.solution(rig.aside(Ideal.INSTANCE).motion(motion)));
    assertThat(Numbers.withoutCautions(rig.solution(rig.aside(new FrictionRing(0)).motion(motion))))
        .isEqualTo(ideal);
    assertThat(Numbers.withoutCautions(rig.solution(rig.aside(new Bark(0)).motion(motion))))
        .isEqualTo(ideal);
    assertThat(Numbers.withoutCautions(rig.solution(rig.aside(new Sheave(1)).motion(motion))))
        .isEqualTo(ideal);
  }

  @Property(tries = 30)
  void without_own_weight_density_counts_for_nothing(
      @ForAll LeaningRig rig, @ForAll @DoubleRange(min = 1, max = 3000) double density) {
    Stem.Builder stem = rig.stem().ownWeight(false);
    Solution found = Rigs.sound(stem, rig.aside(new FrictionRing(0.2)), rig.weight());
    Solution other =
        Rigs.sound(
            stem.wood(
                WoodProperties.builder()
                    .modulusOfElasticity(pascals(LeaningRig.MODULUS))
                    .density(kilogramsPerCubicMetre(density))
                    .build()),
            rig.aside(new FrictionRing(0.2)),
            rig.weight());
    assertThat(Numbers.of(other)).isEqualTo(Numbers.of(found));
  }

  @Property(tries = 30)
  void a_stiff_root_is_a_clamped_one(@ForAll LeaningRig rig) {
    Arrangement.Builder arrangement = rig.aside(Ideal.INSTANCE);
    double[] clamped = Rigs.tipMovement(Rigs.sound(rig.stem(), arrangement, rig.weight()));
    double moved = Plain.size(clamped);
    double last = Double.POSITIVE_INFINITY;
    for (double stiffness : new double[] {1e8, 1e10, 1e15}) {
      Stem.Builder stem = rig.stem().root(Root.Turning.of(newtonMetresPerRadian(stiffness)));
      double[] turning = Rigs.tipMovement(Rigs.sound(stem, arrangement, rig.weight()));
      double gap = Plain.size(Plain.minus(turning, clamped));
      assertThat(gap).isLessThan(last);
      last = gap + Tolerances.OTHER_CELLS * moved;
    }
    assertThat(last).isLessThan(2 * Tolerances.OTHER_CELLS * moved);
  }

  /** A long sling below the first point lets the rope pass straight: it might as well be away. */
  @Property(tries = 60)
  void a_slack_sling_might_as_well_not_be_there(
      @ForAll LeaningRig rig,
      @ForAll @DoubleRange(min = 0.2, max = 2) double sling,
      @ForAll Motion motion) {
    Arrangement with =
        rig.aside(new FrictionRing(0.2))
            .motion(motion)
            .contacts(
                rig.points().stream()
                    .map(
                        x ->
                            Contact.of("stem", metres(x * LeaningRig.LENGTH), new FrictionRing(0.2))
                                .withSling(metres(sling)))
                    .toList())
            .build();
    Solution found = rig.solution(with.toBuilder());
    List<Contact> bearing = new ArrayList<>();
    List<ContactResult> wanted = new ArrayList<>();
    for (int j = 0; j < found.contacts().size(); j++) {
      if (found.contacts().get(j).bears()) {
        bearing.add(with.contacts().get(j));
        wanted.add(found.contacts().get(j));
      } else {
        assertThat(found.contacts().get(j).force().in(Kind.FORCE)).containsExactly(0, 0, 0);
        assertThat(Rigs.newtons(found.contacts().get(j).tensionOut()))
            .isEqualTo(Rigs.newtons(found.contacts().get(j).tensionIn()));
      }
    }
    Assume.that(bearing.size() < with.contacts().size());
    Solution without = rig.solution(with.toBuilder().contacts(bearing));
    double moved = Plain.size(Rigs.tipMovement(found));
    double load = Rigs.newtons(found.legs().get(0).tension());
    String of = rig + ", slings of " + sling + " m, " + motion;
    assertSame(of, Rigs.tipMovement(without), Rigs.tipMovement(found), moved);
    for (int j = 0; j < wanted.size(); j++) {
      assertSame(
          of,
          without.contacts().get(j).force().in(Kind.FORCE),
          wanted.get(j).force().in(Kind.FORCE),
          load);
      if (Rigs.newtons(wanted.get(j).forceMagnitude()) > Tolerances.OTHER_CELLS * load) {
        assertSame(
            of,
            without.contacts().get(j).position().in(Kind.LENGTH),
            wanted.get(j).position().in(Kind.LENGTH),
            moved);
      }
    }
  }

  /**
   * The rope from a higher point down to the load passes the lower one within its sling's reach.
   */
  @Test
  void a_first_point_that_the_load_passes_within_reach_is_slack() {
    Stem.Builder stiff =
        Rigs.straight(
            12, 0, 0, 0.36, 0.16, WoodProperties.of(pascals(1e13), kilogramsPerCubicMetre(1)));
    for (double offset : new double[] {0.4, 0.47, 0.498}) {
      Arrangement.Builder arrangement =
          Rigs.ideal(10)
              .contacts(
                  List.of(
                      Contact.of("stem", metres(10), new FrictionRing(0.3))
                          .withSling(metres(0.5))
                          .withOffset(metres(offset)),
                      Contact.of("stem", metres(11), new FrictionRing(0.3))))
              .tail(Rigs.point(-3, 0, 0));
      Solution found = Rigs.sound(stiff, arrangement, 981);
      assertThat(found.contacts().get(0).bears()).isFalse();
      assertThat(found.contacts().get(1).bears()).isTrue();
    }
  }

  /** The rig is named with a difference, so that a rare one can be tried again. */
  private static void assertSame(String of, double[] found, double[] wanted, double scale) {
    assertThat(Plain.size(Plain.minus(found, wanted)))
        .as("%s", of)
        .isLessThanOrEqualTo(Tolerances.OTHER_CELLS * scale);
  }

  @Property(tries = 40)
  void more_load_moves_the_tip_further(
      @ForAll LeaningRig rig, @ForAll @DoubleRange(min = 1.01, max = 3) double more) {
    Arrangement.Builder arrangement = rig.over(new FrictionRing(0.2));
    Solution less = Rigs.sound(rig.stem(), arrangement, rig.weight() / more);
    Solution full = Rigs.sound(rig.stem(), arrangement, rig.weight());
    assertThat(Plain.size(Rigs.tipMovement(full)))
        .isGreaterThan(Plain.size(Rigs.tipMovement(less)));
    assertThat(Rigs.stress(full.stems().get(0).bendingStress()))
        .isGreaterThan(Rigs.stress(less.stems().get(0).bendingStress()));
  }

  /** Own weight is off: with it, a cavity also takes load away. */
  @Property(tries = 40)
  void a_larger_cavity_never_lowers_a_stress(
      @ForAll LeaningRig rig,
      @ForAll @DoubleRange(min = 0.1, max = 0.8) double from,
      @ForAll @DoubleRange(min = 0, max = 0.85) double small,
      @ForAll @DoubleRange(min = 0, max = 0.85) double large) {
    Assume.that(small < large);
    StemResult sounder = hollow(rig, from, small);
    StemResult hollower = hollow(rig, from, large);
    assertThat(Rigs.stress(hollower.bendingStress()))
        .isGreaterThanOrEqualTo(
            Rigs.stress(sounder.bendingStress()) * (1 - Tolerances.SOLVED_CASE));
    assertThat(Rigs.stress(hollower.compressionStress()))
        .isGreaterThanOrEqualTo(
            Rigs.stress(sounder.compressionStress()) * (1 - Tolerances.SOLVED_CASE));
    assertThat(Plain.size(hollower.tipMovement().in(Kind.LENGTH)))
        .isGreaterThanOrEqualTo(
            Plain.size(sounder.tipMovement().in(Kind.LENGTH)) * (1 - Tolerances.SOLVED_CASE));
  }

  /** A stem with a step to a hollow part, from a place along it over a tenth of its length. */
  private static StemResult hollow(LeaningRig rig, double from, double share) {
    List<Diameters.Entry> entries = new ArrayList<>();
    for (double x : new double[] {0, from, from, from + 0.1, from + 0.1, 1}) {
      double d = rig.base() * (1 + (rig.taper() - 1) * x);
      boolean inside = entries.size() == 2 || entries.size() == 3;
      entries.add(
          Diameters.Entry.of(
              metres(x * LeaningRig.LENGTH), metres(d), metres(inside ? share * d : 0)));
    }
    Stem.Builder stem = rig.stem().ownWeight(false).diameters(Diameters.of(entries));
    return Rigs.sound(stem, rig.over(Ideal.INSTANCE), rig.weight()).stems().get(0);
  }

  /** As standing: next to no load, next to no movement, and in proportion. */
  @Property(tries = 30)
  void a_stem_as_standing_does_not_move_without_a_load(@ForAll LeaningRig rig) {
    Stem.Builder stem = rig.stem().shapeIs(ShapeIs.AS_STANDING);
    double before = Double.NaN;
    for (double weight : new double[] {1, 1e-2, 1e-4}) {
      Solution found = Rigs.sound(stem, rig.over(Ideal.INSTANCE), weight);
      double moved = Plain.size(Rigs.tipMovement(found));
      assertThat(moved).isPositive().isLessThan(weight * 1e-2);
      if (!Double.isNaN(before)) {
        assertThat(moved / before).isCloseTo(1e-2, within(1e-2 * Tolerances.IN_PROPORTION));
      }
      before = moved;
    }
  }
}
