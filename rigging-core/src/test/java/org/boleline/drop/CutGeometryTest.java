package org.boleline.drop;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.boleline.Tolerances.EXACT;
import static org.boleline.Tolerances.ROUNDING;
import static org.boleline.Tolerances.absolute;
import static org.boleline.Tolerances.relative;
import static org.boleline.units.Amounts.degrees;
import static org.boleline.units.Amounts.kilogramsPerCubicMetre;
import static org.boleline.units.Amounts.metres;
import static org.boleline.units.Amounts.radians;

import javax.measure.Quantity;
import javax.measure.quantity.Length;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import org.boleline.explain.PlanRefusedException;
import org.boleline.explain.Refusal;
import org.boleline.geometry.Heading;
import org.boleline.units.Kind;
import org.boleline.units.Si;
import org.boleline.wood.Log;
import org.junit.jupiter.api.Test;

class CutGeometryTest {
  private static CutGeometry.Builder plumb() {
    return CutGeometry.builder()
        .cutHeight(metres(12))
        .piece(metres(2), metres(0.9))
        .tie(metres(0.3))
        .attachment(metres(0.25))
        .sling(metres(0.15));
  }

  /**
   * By hand, heights over the cut: point -0.40, tie 0.30, so 0.70 of rope. Hanging: tie at -1.10,
   * balance point 0.60 below at -1.70, from 0.90: it fell 2.60. The far end, 1.70 from the tie, is
   * at -2.80, 9.20 over the ground.
   */
  @Test
  void a_piece_tied_below_its_balance_point_turns_over() {
    CutGeometry cut = plumb().build();
    assertThat(m(cut.pointDepth())).isCloseTo(0.40, relative(ROUNDING));
    assertThat(m(cut.loadLeg())).isCloseTo(0.70, relative(ROUNDING));
    assertThat(m(cut.fall())).isCloseTo(2.60, relative(ROUNDING));
    assertThat(m(cut.tieFall())).isCloseTo(1.40, relative(ROUNDING));
    assertThat(m(cut.groundClearance())).isCloseTo(9.20, relative(ROUNDING));
    assertThat(cut.posture()).isEqualTo(CutPosture.TURNED_OVER);
    assertThat(cut.fallFactor(metres(13))).isCloseTo(0.2, relative(ROUNDING));
    assertThat(cut).hasToString("fall of " + m(cut.fall()) + " m, TURNED_OVER");
  }

  /**
   * By hand: tied at 1.20, 1.60 of rope; tie hangs at -2.00, balance point at -2.30: it fell 3.20.
   * The cut end, 1.20 from the tie, is at -3.20.
   */
  @Test
  void a_piece_tied_above_its_balance_point_stays_upright() {
    CutGeometry cut = plumb().tie(metres(1.2)).build();
    assertThat(m(cut.fall())).isCloseTo(3.20, relative(ROUNDING));
    assertThat(m(cut.groundClearance())).isCloseTo(8.80, relative(ROUNDING));
    assertThat(cut.posture()).isEqualTo(CutPosture.UPRIGHT);
  }

  @Test
  void a_piece_tied_at_its_balance_point_may_hang_any_way() {
    CutGeometry cut = plumb().tie(metres(0.9)).build();
    assertThat(cut.posture()).isEqualTo(CutPosture.ANY);
    // Hanging at -0.40 - 1.30 = -1.70; the longer end, 1.10, may point down.
    assertThat(m(cut.groundClearance())).isCloseTo(12 - 2.80, relative(ROUNDING));
    assertThat(m(cut.fall())).isCloseTo(2.60, relative(ROUNDING));
  }

  /** The slip of taking the distance from cut to point for the fall. */
  @Property
  void the_distance_from_the_cut_to_the_point_is_far_less_than_the_fall(
      @ForAll @Scale(9) @DoubleRange(min = 0, max = 2) double attachment,
      @ForAll @Scale(9) @DoubleRange(min = 0, max = 2) double tie,
      @ForAll @Scale(9) @DoubleRange(min = 0, max = 2) double balance) {
    CutGeometry cut =
        plumb()
            .piece(metres(2), metres(balance))
            .attachment(metres(attachment))
            .tie(metres(tie))
            .build();
    assertThat(m(cut.fall())).isGreaterThanOrEqualTo(2 * m(cut.pointDepth()) - EXACT);
    // On a plumb stem by head: twice the depth of the point and the higher of tie and balance.
    assertThat(m(cut.fall()))
        .isCloseTo(
            CutFormulas.PLUMB_FALL.value(attachment, 0.15, balance, tie, 0), absolute(EXACT));
  }

  @Test
  void a_log_gives_its_length_and_balance_point() {
    Log log = Log.of(metres(1.5), metres(0.265), metres(0.24), kilogramsPerCubicMetre(780));
    CutGeometry cut = plumb().piece(log).build();
    assertThat(cut).isEqualTo(plumb().piece(log.length(), log.balancePoint()).build());
    // By hand: 1.5 / 4 * (D^2 + 2 D d + 3 d^2) / (D^2 + D d + d^2) = 0.7253 above the cut.
    assertThat(m(cut.balanceBefore().z()) - 12).isCloseTo(0.7253, absolute(5e-5));
    assertThat(m(cut.fall())).isCloseTo(2 * (0.40 + 0.7253), absolute(1e-4));
  }

  private static double[] plus(double[] a, double factor, double[] b) {
    return new double[] {a[0] + factor * b[0], a[1] + factor * b[1], a[2] + factor * b[2]};
  }

  /**
   * The same by vectors: every place set out from the stem's direction, the piece hung by the tie
   * so that the way from the tie to the balance point runs down.
   */
  @Property
  void a_leaning_stem_gives_what_the_coordinates_give(
      @ForAll @Scale(9) @DoubleRange(min = 0, max = 1.57) double lean,
      @ForAll @Scale(9) @DoubleRange(min = -3, max = 3) double azimuth,
      @ForAll @Scale(9) @DoubleRange(min = 0, max = 2) double attachment,
      @ForAll @Scale(9) @DoubleRange(min = -0.5, max = 0.5) double offset,
      @ForAll @Scale(9) @DoubleRange(min = 0, max = 1) double sling,
      @ForAll @Scale(9) @DoubleRange(min = 0, max = 2) double tie,
      @ForAll @Scale(9) @DoubleRange(min = 0, max = 2) double balance,
      @ForAll @Scale(9) @DoubleRange(min = 0, max = 3) double slack) {
    CutGeometry cut =
        plumb()
            .heading(Heading.of(radians(lean), radians(azimuth)))
            .piece(metres(2), metres(balance))
            .tie(metres(tie))
            .attachment(metres(attachment))
            .offset(metres(offset))
            .sling(metres(sling))
            .slack(metres(slack))
            .build();

    double[] up = {0, 0, 1};
    double[] along = {
      Math.sin(lean) * Math.cos(azimuth), Math.sin(lean) * Math.sin(azimuth), Math.cos(lean)
    };
    double[] aside = {-Math.sin(azimuth), Math.cos(azimuth), 0};
    double[] under = {
      aside[1] * along[2] - aside[2] * along[1],
      aside[2] * along[0] - aside[0] * along[2],
      aside[0] * along[1] - aside[1] * along[0]
    };
    double[] foot = {0, 0, 12};
    double[] point = plus(plus(plus(foot, -attachment, along), offset, under), -sling, up);
    double[] tied = plus(foot, tie, along);
    double[] balanced = plus(foot, balance, along);
    double[] leg = plus(tied, -1, point);
    double rope = Math.sqrt(leg[0] * leg[0] + leg[1] * leg[1] + leg[2] * leg[2]) + slack;
    double[] tiedAfter = plus(point, -rope, up);
    double axis = balance > tie ? -1 : 1; // the piece points down, or up
    double[] balancedAfter = plus(tiedAfter, axis * (balance - tie), up);
    double[] cutEnd = plus(tiedAfter, -axis * tie, up);
    double[] farEnd = plus(tiedAfter, axis * (2 - tie), up);

    assertThat(cut.point().in(Kind.LENGTH)).containsExactly(point, absolute(EXACT));
    assertThat(cut.tieBefore().in(Kind.LENGTH)).containsExactly(tied, absolute(EXACT));
    assertThat(cut.tieAfter().in(Kind.LENGTH)).containsExactly(tiedAfter, absolute(EXACT));
    assertThat(cut.balanceBefore().in(Kind.LENGTH)).containsExactly(balanced, absolute(EXACT));
    assertThat(cut.balanceAfter().in(Kind.LENGTH)).containsExactly(balancedAfter, absolute(EXACT));
    assertThat(m(cut.loadLeg())).isCloseTo(rope, absolute(EXACT));
    assertThat(m(cut.fall())).isCloseTo(balanced[2] - balancedAfter[2], absolute(EXACT));
    assertThat(m(cut.tieFall())).isCloseTo(tied[2] - tiedAfter[2], absolute(EXACT));
    if (balance != tie) {
      assertThat(m(cut.groundClearance()))
          .isCloseTo(Math.min(cutEnd[2], farEnd[2]), absolute(EXACT));
    }
  }

  @Property
  void slack_adds_itself_to_the_fall_and_no_fall_is_less_than_it(
      @ForAll @Scale(9) @DoubleRange(min = 0, max = 1.57) double lean,
      @ForAll @Scale(9) @DoubleRange(min = -0.5, max = 0.5) double offset,
      @ForAll @Scale(9) @DoubleRange(min = 0, max = 2) double tie,
      @ForAll @Scale(9) @DoubleRange(min = 0, max = 2) double balance,
      @ForAll @Scale(9) @DoubleRange(min = 0, max = 3) double slack) {
    CutGeometry.Builder builder =
        plumb()
            .heading(Heading.of(radians(lean), degrees(20)))
            .offset(metres(offset))
            .piece(metres(2), metres(balance))
            .tie(metres(tie));
    CutGeometry none = builder.build();
    CutGeometry some = builder.slack(metres(slack)).build();
    assertThat(m(none.fall())).isGreaterThanOrEqualTo(-EXACT);
    assertThat(m(some.fall()) - m(none.fall())).isCloseTo(slack, absolute(EXACT));
    assertThat(m(some.tieFall()) - m(none.tieFall())).isCloseTo(slack, absolute(EXACT));
    assertThat(m(none.groundClearance()) - m(some.groundClearance()))
        .isCloseTo(slack, absolute(EXACT));
  }

  @Test
  void a_stem_of_no_lean_is_plumb_whatever_its_azimuth() {
    assertThat(plumb().heading(Heading.of(degrees(0), degrees(77))).build().fall())
        .isEqualTo(plumb().build().fall());
  }

  @Test
  void numbers_are_those_of_their_steps() {
    CutGeometry cut = plumb().slack(metres(0.1)).build();
    assertThat(cut.steps()).hasSize(8);
    assertThat(cut.steps().get(5).result()).isEqualTo(m(cut.fall()));
    assertThat(cut.steps().get(7).result()).isEqualTo(m(cut.groundClearance()));
    assertThat(cut.fallFactorStep(metres(10)).result()).isEqualTo(cut.fallFactor(metres(10)));
  }

  @Test
  void all_that_is_missing_or_wrong_is_said_at_once() {
    assertThat(refused(CutGeometry.builder()::build).refusals())
        .extracting(Refusal::place)
        .containsExactly("/length", "/cutHeight", "/balancePoint", "/tie", "/attachment");
    assertThat(
            refused(
                    plumb()
                            .piece(metres(2), metres(2.1))
                            .tie(metres(-0.1))
                            .sling(metres(21))
                            .offset(metres(-21))
                            .slack(metres(-1))
                            .heading(Heading.of(degrees(91), degrees(0)))
                        ::build)
                .refusals())
        .extracting(Refusal::place)
        .containsExactly("/balancePoint", "/tie", "/sling", "/offset", "/slack", "/lean");
  }

  @Test
  void a_rope_in_service_shorter_than_the_load_leg_is_refused() {
    CutGeometry cut = plumb().build();
    assertThat(refused(() -> cut.fallFactor(metres(0.6))).refusals())
        .extracting(Refusal::code)
        .containsExactly(Refusal.Code.CONFLICT);
    assertThat(refused(() -> cut.fallFactor(metres(0)))).hasMessageContaining("above zero");
  }

  @Test
  void equality_is_exact() {
    assertThat(plumb().build()).isEqualTo(plumb().build()).hasSameHashCodeAs(plumb().build());
    assertThat(plumb().build()).isNotEqualTo(plumb().slack(metres(0.1)).build());
  }

  private static PlanRefusedException refused(
      org.assertj.core.api.ThrowableAssert.ThrowingCallable call) {
    return catchThrowableOfType(PlanRefusedException.class, call);
  }

  private static double m(Quantity<Length> length) {
    return Si.value(length, Kind.LENGTH, "length");
  }
}
