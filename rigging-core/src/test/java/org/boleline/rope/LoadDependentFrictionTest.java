package org.boleline.rope;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.boleline.Tolerances.EXACT;
import static org.boleline.Tolerances.ROUNDING;
import static org.boleline.Tolerances.relative;
import static org.boleline.units.Amounts.kilonewtons;
import static org.boleline.units.Amounts.metres;
import static org.boleline.units.Amounts.millimetres;
import static org.boleline.units.Amounts.newtons;
import static org.boleline.units.Amounts.radians;

import javax.measure.Quantity;
import javax.measure.quantity.Force;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import org.boleline.geometry.Turn;
import org.boleline.units.Kind;
import org.boleline.units.Si;
import org.junit.jupiter.api.Test;

class LoadDependentFrictionTest {
  private static final LoadDependentFriction FIBRE =
      LoadDependentFriction.of(0.2, kilonewtons(1), millimetres(30), 0.8);

  @Test
  void the_finding_it_was_stated_by_is_met() {
    assertThat(FIBRE.frictionAt(kilonewtons(1), millimetres(30)))
        .isCloseTo(0.2, relative(ROUNDING));
    assertThat(FIBRE.exponent()).isEqualTo(0.8);
  }

  @Test
  void
      the_coefficient_of_the_form_a_times_line_load_to_the_n_is_the_one_at_one_newton_on_one_metre() {
    // By hand: T_tight^0.2 = 1000^0.2 + 0.2 * 0.9 * 0.05^0.2 * pi.
    LoadDependentFriction law = LoadDependentFriction.of(0.9, newtons(1), metres(1), 0.8);
    double byHand =
        Math.pow(Math.pow(1000, 0.2) + 0.2 * 0.9 * Math.pow(0.05, 0.2) * Math.PI, 1 / 0.2);
    assertThat(n(law.fromSlack(Turn.HALF, metres(0.05), kilonewtons(1)).tight()))
        .isCloseTo(byHand, relative(EXACT));
  }

  @Property
  void friction_falls_as_the_load_rises_where_the_exponent_is_below_one(
      @ForAll @Scale(9) @DoubleRange(min = 10, max = 1e4) double tension) {
    assertThat(FIBRE.frictionAt(newtons(tension * 1.1), millimetres(30)))
        .isLessThan(FIBRE.frictionAt(newtons(tension), millimetres(30)));
    // A larger drum spreads the load: friction rises with the radius.
    assertThat(FIBRE.frictionAt(newtons(tension), millimetres(60)))
        .isGreaterThan(FIBRE.frictionAt(newtons(tension), millimetres(30)));
  }

  @Property
  void one_direction_undoes_the_other(
      @ForAll @Scale(9) @DoubleRange(min = 10, max = 1e4) double slack,
      @ForAll @Scale(15) @DoubleRange(min = 0, max = 12) double turn) {
    Turn w = Turn.of(radians(turn));
    ContactTensions up = FIBRE.fromSlack(w, millimetres(30), newtons(slack));
    ContactTensions down = FIBRE.fromTight(w, millimetres(30), up.tight());
    assertThat(n(down.slack())).isCloseTo(slack, relative(EXACT));
    assertThat(n(up.slack())).isEqualTo(slack);
    assertThat(up.steps()).hasSize(1);
    assertThat(up.steps().get(0).result()).isEqualTo(n(up.tight()));
  }

  @Property
  void with_exponent_one_it_is_a_ring_whatever_the_radius(
      @ForAll @Scale(15) @DoubleRange(min = 0, max = 0.6) double friction,
      @ForAll @Scale(9) @DoubleRange(min = 0.005, max = 0.5) double radius,
      @ForAll @Scale(9) @DoubleRange(min = 0, max = 1e4) double tight) {
    LoadDependentFriction law =
        LoadDependentFriction.of(friction, kilonewtons(1), millimetres(30), 1);
    assertThat(n(law.fromTight(Turn.HALF, metres(radius), newtons(tight)).slack()))
        .isCloseTo(
            n(
                ContactTensions.fromTight(new FrictionRing(friction), Turn.HALF, newtons(tight))
                    .slack()),
            relative(ROUNDING));
  }

  @Test
  void friction_alone_may_hold_and_the_slack_side_is_zero_then() {
    ContactTensions held = FIBRE.fromTight(Turn.ofWraps(6), millimetres(30), newtons(1));
    assertThat(n(held.slack())).isZero();
    // And the other way round: with no hand at all the device holds that much and more.
    assertThat(n(FIBRE.fromSlack(Turn.ofWraps(6), millimetres(30), newtons(0)).tight()))
        .isGreaterThan(1);
  }

  @Test
  void above_exponent_one_no_finite_tension_may_slip_which_is_refused() {
    LoadDependentFriction grabbing =
        LoadDependentFriction.of(0.5, newtons(100), millimetres(30), 1.5);
    assertThatIllegalArgumentException()
        .isThrownBy(() -> grabbing.fromSlack(Turn.ofWraps(2), millimetres(30), kilonewtons(1)))
        .withMessageContaining("FRI-9");
  }

  @Test
  void arguments_outside_their_range_are_refused_by_name() {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> LoadDependentFriction.of(3, newtons(1), metres(1), 0.8))
        .withMessageContaining("friction");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> LoadDependentFriction.of(0.2, newtons(0), metres(1), 0.8))
        .withMessageContaining("tension");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> LoadDependentFriction.of(0.2, newtons(1), metres(0), 0.8))
        .withMessageContaining("radius");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> LoadDependentFriction.of(0.2, newtons(1), metres(1), Double.NaN))
        .withMessageContaining("exponent");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> LoadDependentFriction.of(0.2, newtons(1e-200), metres(1e200), 0.8))
        .withMessageContaining("tension over radius");
  }

  @Test
  void equality_is_exact() {
    LoadDependentFriction same = LoadDependentFriction.of(0.2, newtons(1000), metres(0.03), 0.8);
    assertThat(FIBRE).isEqualTo(same).hasSameHashCodeAs(same);
    assertThat(FIBRE)
        .isNotEqualTo(LoadDependentFriction.of(0.2, newtons(1000), metres(0.03), 0.81));
    assertThat(LoadDependentFriction.of(0.2, newtons(1), metres(1), 0.8))
        .hasToString("friction 0.2 at 1 N/m, exponent 0.8");
  }

  private static double n(Quantity<Force> force) {
    return Si.value(force, Kind.FORCE, "force");
  }
}
