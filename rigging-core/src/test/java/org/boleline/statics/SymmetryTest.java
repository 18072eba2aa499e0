package org.boleline.statics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.domains.Domain;
import net.jqwik.api.domains.DomainContext;
import org.boleline.Tolerances;
import org.boleline.plan.Arrangement;
import org.boleline.plan.Plan;
import org.boleline.rope.FrictionRing;
import org.boleline.rope.Hardware;
import org.boleline.rope.Ideal;
import org.boleline.rope.Motion;
import org.boleline.rope.Sheave;
import org.boleline.units.Kind;
import org.boleline.units.Si;

/** Answers that may not depend on where one looks from, in which unit, or in which order. */
@Domain(LeaningRig.Domain.class)
@Domain(DomainContext.Global.class)
class SymmetryTest {
  @Provide
  Arbitrary<Hardware> hardware() {
    return Arbitraries.of(Ideal.INSTANCE, new FrictionRing(0.25), new Sheave(0.95));
  }

  private static Solution solution(
      LeaningRig rig, LeaningRig.Change change, Hardware hardware, Motion motion) {
    return Rigs.sound(rig.changed(change, hardware, motion));
  }

  /** The second result is the first one, moved and scaled. */
  private static void assertChanged(
      Solution given, Solution changed, LeaningRig.Change change, double lengths, double forces) {
    StemResult a = given.stems().get(0);
    StemResult b = changed.stems().get(0);
    assertMoved(a.tipMovement().in(Kind.LENGTH), b.tipMovement().in(Kind.LENGTH), change, lengths);
    assertMoved(a.tipPosition().in(Kind.LENGTH), b.tipPosition().in(Kind.LENGTH), change, lengths);
    assertMoved(a.base().force().in(Kind.FORCE), b.base().force().in(Kind.FORCE), change, forces);
    double[] moment = a.base().moment().in(Kind.MOMENT);
    // A moment is an axial vector: a mirror turns it round.
    double sign = change.mirrored() ? -1 : 1;
    assertMoved(
        Plain.times(sign, moment), b.base().moment().in(Kind.MOMENT), change, forces * lengths);
    double stress = forces / lengths / lengths;
    assertClose(Rigs.stress(a.bendingStress()) * stress, Rigs.stress(b.bendingStress()));
    assertClose(Rigs.stress(a.compressionStress()) * stress, Rigs.stress(b.compressionStress()));
    assertThat(changed.stiffnessRatio())
        .isCloseTo(given.stiffnessRatio(), within(Tolerances.LEAST_EIGENVALUE));
    assertClose(forces * Rigs.newtons(given.tailTension()), Rigs.newtons(changed.tailTension()));
    for (int j = 0; j < given.contacts().size(); j++) {
      ContactResult c = given.contacts().get(j);
      ContactResult d = changed.contacts().get(j);
      assertThat(d.bears()).isEqualTo(c.bears());
      assertMoved(c.force().in(Kind.FORCE), d.force().in(Kind.FORCE), change, forces);
      assertMoved(c.position().in(Kind.LENGTH), d.position().in(Kind.LENGTH), change, lengths);
      assertThat(Si.value(d.turn().angle(), Kind.ANGLE, "turn"))
          .isCloseTo(
              Si.value(c.turn().angle(), Kind.ANGLE, "turn"), within(Tolerances.SAME_SOLUTION));
    }
  }

  private static void assertMoved(
      double[] given, double[] changed, LeaningRig.Change change, double factor) {
    double[] wanted = Plain.times(factor, change.moved(given));
    assertThat(Plain.size(Plain.minus(changed, wanted)))
        .isLessThanOrEqualTo(Tolerances.SAME_SOLUTION * Plain.size(wanted));
  }

  private static void assertClose(double wanted, double found) {
    assertThat(found).isCloseTo(wanted, within(Tolerances.SAME_SOLUTION * Math.abs(wanted)));
  }

  @Property(tries = 40)
  void turned_about_the_vertical_all_turns_with_it(
      @ForAll LeaningRig rig,
      @ForAll("hardware") Hardware hardware,
      @ForAll Motion motion,
      @ForAll @DoubleRange(min = -4, max = 4) double turn) {
    LeaningRig.Change change = new LeaningRig.Change(1, 1, 1, 1, turn, false);
    assertChanged(
        solution(rig, LeaningRig.Change.NONE, hardware, motion),
        solution(rig, change, hardware, motion),
        change,
        1,
        1);
  }

  @Property(tries = 30)
  void a_mirror_shows_the_same(
      @ForAll LeaningRig rig, @ForAll("hardware") Hardware hardware, @ForAll Motion motion) {
    LeaningRig.Change change = new LeaningRig.Change(1, 1, 1, 1, 0, true);
    assertChanged(
        solution(rig, LeaningRig.Change.NONE, hardware, motion),
        solution(rig, change, hardware, motion),
        change,
        1,
        1);
  }

  /** Lengths x c, E x c and the load x c^3 at one density: the same shape, stresses x c. */
  @Property(tries = 30)
  void a_larger_rig_of_stiffer_wood_bends_alike(
      @ForAll LeaningRig rig,
      @ForAll("hardware") Hardware hardware,
      @ForAll Motion motion,
      @ForAll @DoubleRange(min = 0.6, max = 2) double c) {
    LeaningRig.Change change = new LeaningRig.Change(c, c * c * c, c, 1, 0, false);
    assertChanged(
        solution(rig, LeaningRig.Change.NONE, hardware, motion),
        solution(rig, change, hardware, motion),
        change,
        c,
        c * c * c);
  }

  /**
   * Lengths x c and the load x c^2 with the same E and no own weight: same shape, same stresses.
   */
  @Property(tries = 30)
  void a_larger_weightless_rig_bends_alike(
      @ForAll LeaningRig rig,
      @ForAll("hardware") Hardware hardware,
      @ForAll Motion motion,
      @ForAll @DoubleRange(min = 0.6, max = 2) double c) {
    LeaningRig.Change none = new LeaningRig.Change(1, 1, 1, 1e-12, 0, false);
    LeaningRig.Change change = new LeaningRig.Change(c, c * c, 1, 1e-12, 0, false);
    assertChanged(
        solution(rig, none, hardware, motion),
        solution(rig, change, hardware, motion),
        change,
        c,
        c * c);
  }

  /** E, density and the load x c: the same shape, forces x c. */
  @Property(tries = 30)
  void stiffer_denser_wood_under_more_load_bends_alike(
      @ForAll LeaningRig rig,
      @ForAll("hardware") Hardware hardware,
      @ForAll Motion motion,
      @ForAll @DoubleRange(min = 0.3, max = 3) double c) {
    LeaningRig.Change change = new LeaningRig.Change(1, c, c, c, 0, false);
    assertChanged(
        solution(rig, LeaningRig.Change.NONE, hardware, motion),
        solution(rig, change, hardware, motion),
        change,
        1,
        c);
  }

  /** Bit for bit, cautions aside, which name the place in the plan. */
  @Property(tries = 20)
  void the_order_of_arrangements_changes_nothing(@ForAll LeaningRig rig, @ForAll Random random) {
    List<Arrangement> arrangements = new ArrayList<>();
    arrangements.add(rig.over(Ideal.INSTANCE).id("ideal").build());
    arrangements.add(rig.aside(new FrictionRing(0.3)).id("rings").build());
    arrangements.add(rig.aside(new Sheave(0.9)).id("sheaves").motion(Motion.RAISING).build());
    arrangements.add(rig.over(new FrictionRing(0.1)).id("held").motion(Motion.HELD).build());
    Plan plan = rig.plan(rig.over(Ideal.INSTANCE)).toBuilder().arrangements(arrangements).build();
    StaticResult found = Statics.analyse(plan);
    List<Arrangement> shuffled = new ArrayList<>(arrangements);
    Collections.shuffle(shuffled, random);
    StaticResult other = Statics.analyse(plan.toBuilder().arrangements(shuffled).build());
    for (int i = 0; i < arrangements.size(); i++) {
      String id = arrangements.get(i).id();
      assertThat(other.arrangements().get(i).id()).isEqualTo(shuffled.get(i).id());
      List<String> wanted = Numbers.withoutCautions(found.arrangement(id).orElseThrow());
      assertThat(Numbers.withoutCautions(other.arrangement(id).orElseThrow())).isEqualTo(wanted);
      assertThat(Numbers.withoutCautions(Statics.analyse(plan, id).orElseThrow()))
          .isEqualTo(wanted);
      Rigs.sound(found.arrangement(id).orElseThrow().solution().orElseThrow());
    }
  }
}
