package org.boleline.statics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.boleline.units.Amounts.kilograms;
import static org.boleline.units.Amounts.newtonMetresPerRadian;

import java.util.List;
import java.util.function.UnaryOperator;
import org.boleline.plan.Arrangement;
import org.boleline.plan.Contact;
import org.boleline.plan.Piece;
import org.boleline.plan.Plan;
import org.boleline.rope.FrictionRing;
import org.boleline.rope.Motion;
import org.boleline.stem.Root;
import org.boleline.stem.ShapeIs;
import org.boleline.stem.Stem;
import org.boleline.units.Kind;
import org.boleline.units.Si;
import org.junit.jupiter.api.Test;

/** The checks see what they are there to see: numbers of one plan do not pass for another one. */
class EquilibriumCheckTest {
  private static final LeaningRig RIG =
      new LeaningRig(0.4, 0.2, 0.3, 34, 0.5, List.of(0.95, 0.6), 0.3, 0.4);

  private static Plan plan() {
    return RIG.changed(LeaningRig.Change.NONE, new FrictionRing(0.2), Motion.LOWERING);
  }

  /** The numbers of the plan's solution, said to be those of another plan. */
  private static Solution passedOffAs(Plan other) {
    Solution found = Rigs.sound(plan());
    return new Solution(
        other,
        other.arrangements().get(0),
        found.motion(),
        found.residualForceRatio(),
        found.residualMomentRatio(),
        found.stiffnessRatio(),
        found.legs(),
        found.contacts(),
        Rigs.newtons(found.tailTension()),
        Double.NaN,
        found.stems(),
        null,
        List.of());
  }

  private static Plan withStem(UnaryOperator<Stem.Builder> change) {
    Stem stem = plan().stems().get(0);
    return plan().toBuilder().stems(List.of(change.apply(stem.toBuilder()).build())).build();
  }

  private static Plan withContacts(UnaryOperator<Contact> change) {
    Arrangement arrangement = plan().arrangements().get(0);
    List<Contact> contacts = arrangement.contacts().stream().map(change).toList();
    return plan().toBuilder()
        .arrangements(List.of(arrangement.toBuilder().contacts(contacts).build()))
        .build();
  }

  @Test
  void its_own_plan_passes() {
    assertThat(EquilibriumCheck.of(passedOffAs(plan()))).isEmpty();
    assertThat(passedOffAs(plan()).check()).isEmpty();
  }

  @Test
  void a_heavier_piece_does_not() {
    double mass = Si.value(plan().piece().mass(), Kind.MASS, "mass");
    Plan other = plan().toBuilder().piece(Piece.of(kilograms(1.00001 * mass))).build();
    assertThat(EquilibriumCheck.of(passedOffAs(other))).isNotEmpty();
    assertThat(passedOffAs(other).check()).isNotEmpty();
  }

  @Test
  void other_friction_does_not() {
    Plan other =
        withContacts(
            c ->
                Contact.of(c.stem(), c.at(), new FrictionRing(0.20001))
                    .withOffset(c.offset())
                    .withSling(c.sling()));
    assertThat(EquilibriumCheck.of(passedOffAs(other))).isNotEmpty();
    assertThat(passedOffAs(other).check()).isNotEmpty();
  }

  @Test
  void another_sling_does_not() {
    Plan other =
        withContacts(
            c -> {
              double sling = Si.value(c.sling(), Kind.LENGTH, "sling");
              return c.withSling(Si.of(1.0001 * sling, Kind.LENGTH));
            });
    assertThat(EquilibriumCheck.of(passedOffAs(other))).isNotEmpty();
    assertThat(passedOffAs(other).check()).isNotEmpty();
  }

  @Test
  void denser_wood_does_not() {
    Plan other = withStem(s -> s.wood(Rigs.wood(LeaningRig.MODULUS, 1.001 * LeaningRig.DENSITY)));
    assertThat(EquilibriumCheck.of(passedOffAs(other))).isNotEmpty();
    assertThat(passedOffAs(other).check()).isNotEmpty();
  }

  @Test
  void stiffer_wood_does_not() {
    Plan other = withStem(s -> s.wood(Rigs.wood(1.001 * LeaningRig.MODULUS, LeaningRig.DENSITY)));
    assertThat(EquilibriumCheck.of(passedOffAs(other))).isNotEmpty();
  }

  @Test
  void a_stiffer_root_does_not() {
    double stiffness = new GivenStem(plan().stems().get(0), Rigs.GRAVITY).rootStiffness();
    Plan other = withStem(s -> s.root(Root.Turning.of(newtonMetresPerRadian(1.01 * stiffness))));
    assertThat(EquilibriumCheck.of(passedOffAs(other))).isNotEmpty();
  }

  @Test
  void a_shape_as_standing_does_not_pass_for_a_stress_free_one() {
    Plan other = withStem(s -> s.shapeIs(ShapeIs.AS_STANDING));
    assertThat(EquilibriumCheck.of(passedOffAs(other))).isNotEmpty();
  }
}
