package org.boleline.rope;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.boleline.Tolerances.EXACT;
import static org.boleline.Tolerances.ROUNDING;
import static org.boleline.Tolerances.ROUNDING_ABSOLUTE;
import static org.boleline.Tolerances.absolute;
import static org.boleline.Tolerances.relative;
import static org.boleline.units.Amounts.degrees;
import static org.boleline.units.Amounts.kilonewtons;
import static org.boleline.units.Amounts.newtons;
import static org.boleline.units.Amounts.radians;

import javax.measure.Quantity;
import javax.measure.quantity.Angle;
import javax.measure.quantity.Force;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import org.boleline.geometry.IncludedAngle;
import org.boleline.geometry.Turn;
import org.boleline.geometry.Vector;
import org.boleline.units.Kind;
import org.boleline.units.Si;
import org.junit.jupiter.api.Test;

class TwoLegForceTest {
  @Property
  void it_is_the_sum_of_two_vectors(
      @ForAll @Scale(9) @DoubleRange(min = 1, max = 1e5) double first,
      @ForAll @Scale(9) @DoubleRange(min = 1, max = 1e5) double second,
      @ForAll @Scale(15) @DoubleRange(min = 0, max = 3) double legs) {
    TwoLegForce force =
        TwoLegForce.of(newtons(first), newtons(second), IncludedAngle.of(radians(legs)));
    // First leg along +x, second one turned from it by the angle between the legs.
    double x = first + second * Math.cos(legs);
    double y = second * Math.sin(legs);
    assertThat(n(force.magnitude())).isCloseTo(Math.sqrt(x * x + y * y), relative(EXACT));
    assertThat(rad(force.angleFromFirst())).isCloseTo(Math.atan2(y, x), absolute(EXACT));
  }

  @Property
  void it_meets_the_cosine_rule(
      @ForAll @Scale(9) @DoubleRange(min = 1, max = 1e5) double first,
      @ForAll @Scale(9) @DoubleRange(min = 1, max = 1e5) double second,
      @ForAll @Scale(15) @DoubleRange(min = 0, max = Math.PI) double legs) {
    double magnitude =
        n(
            TwoLegForce.of(newtons(first), newtons(second), IncludedAngle.of(radians(legs)))
                .magnitude());
    double squares = first * first + second * second;
    assertThat(magnitude * magnitude)
        .isCloseTo(squares + 2 * first * second * Math.cos(legs), absolute(ROUNDING * squares));
  }

  @Property
  void it_lies_between_difference_and_sum_of_the_tensions_and_between_the_legs(
      @ForAll @Scale(9) @DoubleRange(min = 0, max = 1e5) double first,
      @ForAll @Scale(9) @DoubleRange(min = 0, max = 1e5) double second,
      @ForAll @Scale(15) @DoubleRange(min = 0, max = Math.PI) double legs) {
    TwoLegForce force =
        TwoLegForce.of(newtons(first), newtons(second), IncludedAngle.of(radians(legs)));
    double room = ROUNDING * (first + second);
    assertThat(n(force.magnitude()))
        .isBetween(Math.abs(first - second) - room, first + second + room);
    assertThat(rad(force.angleFromFirst())).isBetween(0.0, legs);
  }

  @Property
  void it_leans_toward_the_tighter_leg(
      @ForAll @Scale(9) @DoubleRange(min = 1, max = 1e4) double slack,
      @ForAll @Scale(9) @DoubleRange(min = 1.001, max = 10) double ratio,
      @ForAll @Scale(15) @DoubleRange(min = 0.01, max = 3.1) double legs) {
    // Friction at the point: the force no longer halves the angle (derived; the halving rule
    // leaves friction out).
    IncludedAngle angle = IncludedAngle.of(radians(legs));
    double tighterFirst =
        rad(TwoLegForce.of(newtons(slack * ratio), newtons(slack), angle).angleFromFirst());
    double tighterSecond =
        rad(TwoLegForce.of(newtons(slack), newtons(slack * ratio), angle).angleFromFirst());
    assertThat(tighterFirst).isLessThan(legs / 2);
    assertThat(tighterSecond).isGreaterThan(legs / 2);
    assertThat(tighterFirst + tighterSecond).isCloseTo(legs, absolute(ROUNDING_ABSOLUTE));
  }

  @Property
  void over_a_ring_the_force_on_the_point_is_least_lowering_and_greatest_raising(
      @ForAll @Scale(9) @DoubleRange(min = 0.05, max = 0.5) double friction,
      @ForAll @Scale(15) @DoubleRange(min = 0, max = 1.5) double legs) {
    // One load: lowering leaves the tail slacker, raising makes it tighter (derived).
    IncludedAngle angle = IncludedAngle.of(radians(legs));
    HoldRange tail =
        HoldRange.of(newtons(1000)).past(new FrictionRing(friction), Turn.between(angle));
    double lowering = n(TwoLegForce.of(newtons(1000), tail.least(), angle).magnitude());
    double equal = n(TwoLegForce.withEqualTensions(newtons(1000), angle).magnitude());
    double raising = n(TwoLegForce.of(newtons(1000), tail.most(), angle).magnitude());
    assertThat(lowering).isLessThan(equal);
    assertThat(raising).isGreaterThan(equal);
  }

  @Property
  void the_textbook_multiplier_is_the_special_case_of_equal_tensions(
      @ForAll @Scale(9) @DoubleRange(min = 0, max = 1e5) double tension,
      @ForAll @Scale(15) @DoubleRange(min = 0, max = Math.PI) double legs) {
    IncludedAngle angle = IncludedAngle.of(radians(legs));
    TwoLegForce special = TwoLegForce.withEqualTensions(newtons(tension), angle);
    TwoLegForce general = TwoLegForce.of(newtons(tension), newtons(tension), angle);
    assertThat(n(special.magnitude()))
        .isCloseTo(n(general.magnitude()), absolute(ROUNDING * tension));
    assertThat(rad(special.angleFromFirst()))
        .isCloseTo(rad(general.angleFromFirst()), absolute(ROUNDING_ABSOLUTE));
    assertThat(n(special.magnitude()))
        .isCloseTo(
            TwoLegForce.equalTensionMultiplier(angle) * tension, absolute(ROUNDING * tension));
  }

  @Property
  void wider_legs_load_the_point_less(
      @ForAll @Scale(15) @DoubleRange(min = 0, max = 3) double legs) {
    assertThat(TwoLegForce.equalTensionMultiplier(IncludedAngle.of(radians(legs + 0.1))))
        .isLessThan(TwoLegForce.equalTensionMultiplier(IncludedAngle.of(radians(legs))));
  }

  @Test
  void nearly_opposite_legs_lose_no_digits() {
    // pi - 1e-9 between the legs: the force is 1e-9 of the tension, across the legs. The double
    // next to pi is short of it by its sine.
    IncludedAngle angle = IncludedAngle.of(radians(Math.PI - 1e-9));
    double turn = Math.PI - (Math.PI - 1e-9) + Math.sin(Math.PI);
    assertThat(n(TwoLegForce.of(newtons(1000), newtons(1000), angle).magnitude()))
        .isCloseTo(1000 * turn, relative(EXACT));
  }

  @Property
  void in_space_it_is_the_same_force(
      @ForAll @Scale(9) @DoubleRange(min = 1, max = 1e4) double first,
      @ForAll @Scale(9) @DoubleRange(min = 1, max = 1e4) double second,
      @ForAll @Scale(15) @DoubleRange(min = 0, max = Math.PI) double legs,
      @ForAll @Scale(15) @DoubleRange(min = 0, max = 6) double azimuth) {
    // Legs in a plumb plane of some azimuth: the first level, the second raised by the angle.
    Vector<Force> a =
        Vector.ofSi(Kind.FORCE, first * Math.cos(azimuth), first * Math.sin(azimuth), 0);
    Vector<Force> b =
        Vector.ofSi(
            Kind.FORCE,
            second * Math.cos(legs) * Math.cos(azimuth),
            second * Math.cos(legs) * Math.sin(azimuth),
            second * Math.sin(legs));
    double plane =
        n(
            TwoLegForce.of(newtons(first), newtons(second), IncludedAngle.of(radians(legs)))
                .magnitude());
    assertThat(n(TwoLegForce.vector(a, b).magnitude()))
        .isCloseTo(plane, absolute(ROUNDING * (first + second)));
  }

  @Test
  void numbers_are_those_of_their_steps() {
    IncludedAngle angle = IncludedAngle.of(degrees(60));
    TwoLegForce force = TwoLegForce.of(kilonewtons(2), kilonewtons(1.2), angle);
    assertThat(force.steps().get(0).result()).isEqualTo(n(force.magnitude()));
    assertThat(force.steps().get(1).result()).isEqualTo(rad(force.angleFromFirst()));
    // By hand: sqrt(4 + 1.44 + 2.4) = 2.8 kN.
    assertThat(n(force.magnitude())).isCloseTo(2800, relative(ROUNDING));
    TwoLegForce equal = TwoLegForce.withEqualTensions(kilonewtons(2), angle);
    assertThat(equal.steps().get(1).result()).isEqualTo(n(equal.magnitude()));
    assertThat(equal.steps().get(1).input(1)).isEqualTo(equal.steps().get(0).result());
  }

  @Test
  void without_tension_there_is_no_force() {
    TwoLegForce none = TwoLegForce.of(newtons(0), newtons(0), IncludedAngle.of(radians(1)));
    assertThat(none).hasToString("0 N at 0.5 rad from the first leg");
    assertThat(TwoLegForce.of(newtons(5), newtons(0), IncludedAngle.of(radians(1))))
        .hasToString("5 N at 0 rad from the first leg");
  }

  @Test
  void a_rope_does_not_push() {
    IncludedAngle angle = IncludedAngle.of(degrees(60));
    assertThatIllegalArgumentException()
        .isThrownBy(() -> TwoLegForce.of(newtons(-1), newtons(1), angle))
        .withMessageContaining("first");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> TwoLegForce.of(newtons(1), newtons(-1), angle))
        .withMessageContaining("second");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> TwoLegForce.withEqualTensions(newtons(-1), angle))
        .withMessageContaining("tension");
  }

  @Test
  void equality_is_exact() {
    IncludedAngle angle = IncludedAngle.of(degrees(60));
    TwoLegForce force = TwoLegForce.of(newtons(2000), newtons(1200), angle);
    TwoLegForce same = TwoLegForce.of(kilonewtons(2), newtons(1200), angle);
    assertThat(force).isEqualTo(same).hasSameHashCodeAs(same);
    assertThat(force).isNotEqualTo(TwoLegForce.of(newtons(1200), newtons(2000), angle));
  }

  private static double n(Quantity<Force> force) {
    return Si.value(force, Kind.FORCE, "force");
  }

  private static double rad(Quantity<Angle> angle) {
    return Si.value(angle, Kind.ANGLE, "angle");
  }
}
