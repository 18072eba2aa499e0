package org.boleline.working.check;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.boleline.units.Amounts.degrees;
import static org.boleline.units.Amounts.kilograms;
import static org.boleline.units.Amounts.kilogramsPerCubicMetre;
import static org.boleline.units.Amounts.metres;
import static org.boleline.units.Amounts.newtons;

import java.util.List;
import org.boleline.drop.LinearCatch;
import org.boleline.explain.PlanRefusedException;
import org.boleline.explain.Refusal;
import org.boleline.geometry.IncludedAngle;
import org.boleline.geometry.Turn;
import org.boleline.rope.ContactTensions;
import org.boleline.rope.FrictionRing;
import org.boleline.rope.Motion;
import org.boleline.rope.TwoLegForce;
import org.boleline.rope.Wraps;
import org.boleline.units.Kind;
import org.boleline.units.Units;
import org.boleline.wood.Log;
import org.boleline.working.Worksheet;
import org.boleline.working.Worksheets;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tech.units.indriya.quantity.Quantities;

class HandCheckTest {
  private static final Tolerance HALF_PERCENT = Tolerance.relative(0.005);

  /** t = 1.874456, T_slack = 1066.976 N. */
  private static Worksheet ring() {
    return Worksheets.of(
        ContactTensions.fromTight(new FrictionRing(0.2), Turn.HALF, newtons(2000)));
  }

  /** 2000 N lowered over two rings. */
  private static Worksheet rings(Turn first, Turn second) {
    return Worksheets.ofChain(
        Motion.LOWERING,
        newtons(2000),
        List.of(new FrictionRing(0.2), new FrictionRing(0.2)),
        List.of(first, second));
  }

  /** V = 0.19373 m3, M = 174.36 kg, W = 1709.9 N. */
  private static Worksheet log() {
    return Worksheets.of(Log.of(metres(2), metres(0.4), metres(0.3), kilogramsPerCubicMetre(900)));
  }

  private static HandCheck check(Worksheet sheet, HandStep... steps) {
    return HandCheck.of(sheet, List.of(steps), HALF_PERCENT);
  }

  /**
   * Lowering 100 kg over an aluminium tube, mu 0.175: ratio and what holds it, in kg, as printed to
   * two decimals.
   *
   * <p>Source: Delaney, Physics for Roping Technicians, 2022, p. 88.
   */
  @ParameterizedTest
  @CsvSource({"0.25, 1.32, 75.97", "0.5, 1.73, 57.71", "1, 3.00, 33.30", "3, 27.08, 3.69"})
  void a_published_calculation_agrees(double turns, String ratio, String hold) {
    Worksheet sheet =
        Worksheets.of(
            ContactTensions.fromTight(
                new FrictionRing(0.175), Turn.ofWraps(turns), newtons(100 * 9.80665)));

    HandCheck check =
        check(sheet, HandStep.of("FRI-2", ratio), HandStep.of("T_slack", hold + " kgf"));

    assertThat(check.finding()).isEqualTo("agrees");
    assertThat(check.departure()).isEmpty();
    assertThat(check.causes()).isEmpty();
    assertThat(check.byChanceShare()).isZero();
  }

  /**
   * Two anchors pulled with 1 kN at 90 degrees bear 1.414 kN; read from the row of 45 degrees it
   * would be 1.848 kN.
   *
   * <p>Source: Arboriculture Australia, Tree rescue manual, 2022, p. 118.
   */
  @Test
  void the_wrong_row_of_a_published_table_is_half_the_angle() {
    Worksheet sheet =
        Worksheets.of(TwoLegForce.withEqualTensions(newtons(1000), IncludedAngle.of(degrees(90))));

    assertThat(check(sheet, HandStep.of("FOR-4", "1.414 kN")).finding()).isEqualTo("agrees");
    assertThat(check(sheet, HandStep.of("FOR-4", "1.848 kN")).causes())
        .extracting(Cause::slip)
        .contains(Slip.HALF_ANGLE);
  }

  @Test
  void the_first_departure_is_named_with_its_cause() {
    HandCheck check =
        check(ring(), HandStep.of("t", "1.10517"), HandStep.of("T_slack", "1809.7 N"));

    assertThat(check.departure()).contains(check.rows().get(0));
    assertThat(check.finding())
        .isEqualTo(
            "parts here, as if wraps and radians were mixed up (FRI-2: w as a count of wraps)");
    assertThat(check.rows().get(1).outcome()).isEqualTo(HandRow.Outcome.FOLLOWS);
    assertThat(check.toString()).startsWith("Tension over a contact: parts here, as if");
  }

  @Test
  void a_slip_in_a_step_that_was_not_written_down_is_found_behind_it() {
    double pi = 3;
    String slack = Planted.written(2000 / Math.exp(0.2 * pi), "N", 6);

    assertThat(check(ring(), HandStep.of("T_slack", slack)).causes())
        .startsWith(Cause.at(Slip.PI_IS_THREE, "FRI-2", "w turned into radians"))
        // a half turn is pi, and pi to one figure is three
        .extracting(Cause::slip)
        .containsExactly(Slip.PI_IS_THREE, Slip.EARLY_ROUNDING);
  }

  @Test
  void several_causes_are_all_told() {
    // sine for cosine, and the other angle, give the same
    Worksheet sheet =
        Worksheets.of(TwoLegForce.withEqualTensions(newtons(1000), IncludedAngle.of(degrees(50))));
    HandCheck check =
        check(sheet, HandStep.of("k", Planted.written(2 * Math.sin(Math.toRadians(25)), "1", 6)));

    assertThat(check.causes())
        .extracting(Cause::slip)
        .containsExactly(Slip.ANGLE_FOR_TURN, Slip.SINE_FOR_COSINE);
    assertThat(check.finding()).contains(", or as if ");
  }

  /** Two rings of a half turn each: 2000, 1066.976 and 569.219 N. */
  @Test
  void a_step_that_stands_several_times_may_be_counted() {
    Worksheet sheet = rings(Turn.HALF, Turn.HALF);

    assertThat(check(sheet, HandStep.of("T_slack (2)", "569.2 N")).finding()).isEqualTo("agrees");
    assertThat(check(sheet, HandStep.of("FRI-6(2)", "569.2 N")).finding()).isEqualTo("agrees");
    assertThat(check(sheet, HandStep.of("T_slack", "569.2 N")).departure()).isPresent();
    for (String wrong : List.of("T_slack (0)", "T_slack (3)", "T_slack (x)")) {
      assertThatThrownBy(() -> check(sheet, HandStep.of(wrong, "569.2 N")))
          .hasMessageStartingWith("/step 1/name: wants a step of the worksheet");
    }
  }

  /**
   * Two rings that turn the rope by 150 and 60 degrees: 1.688, 1184.8 N and 3087.5 N, then 1.233,
   * 960.9 N and 1860.4 N. Source: belt friction and the law of cosines, worked out by hand.
   */
  @Test
  void names_that_stand_several_times_are_taken_in_order() {
    Worksheet sheet = rings(Turn.of(degrees(150)), Turn.of(degrees(60)));
    double first = 2000 / Math.exp(0.2 * Math.toRadians(150));
    double second = first / Math.exp(0.2 * Math.toRadians(60));
    HandStep[] inOrder = {
      HandStep.of("t", Planted.written(2000 / first, "1", 5)),
      HandStep.of("T_slack", Planted.written(first, "N", 5)),
      HandStep.of("R", Planted.written(force(2000, first, 30), "N", 5)),
      HandStep.of("t", Planted.written(first / second, "1", 5)),
      HandStep.of("T_slack", Planted.written(second, "N", 5)),
      HandStep.of("R", Planted.written(force(first, second, 120), "N", 5))
    };

    assertThat(check(sheet, inOrder).rows())
        .extracting(HandRow::outcome)
        .containsOnly(HandRow.Outcome.AGREES);
    // all tensions before all forces is an order, too
    assertThat(
            check(sheet, inOrder[0], inOrder[1], inOrder[3], inOrder[4], inOrder[2], inOrder[5])
                .finding())
        .isEqualTo("agrees");
  }

  private static double force(double one, double other, double between) {
    double cosine = Math.cos(Math.toRadians(between));
    return Math.sqrt(one * one + other * other + 2 * one * other * cosine);
  }

  /** The lost factor gives the same wherever it was lost, so each place is told. */
  @Test
  void every_place_where_a_slip_would_give_the_number_is_told() {
    Worksheet sheet = log();

    assertThat(check(sheet, HandStep.of("W", "1.774 N")).causes()).isEmpty();
    // 2 m x pi / 12 (0.16 + 0.12 + 0.09) m2 x 900 kg/m3 is 174.36 kg: the kilograms as newtons
    List<Cause> causes = check(sheet, HandStep.of("W", "174.36 N")).causes();
    assertThat(causes).extracting(Cause::slip).containsExactly(Slip.MASS_FOR_FORCE);
    assertThat(causes.get(0).places())
        .extracting(Cause.Place::toString)
        .containsExactly(
            "LOG-9 (1): W over 9.80665", "LOG-8: M over 9.80665", "LOG-9 (1): M over 9.80665");
    assertThat(causes.get(0).toString())
        .startsWith("as if mass and force were mixed up")
        .contains(" over 9.80665")
        .contains("; or ");
  }

  /** A frustum by the formula of Heron, times 9.81 for 9.80665. */
  @Test
  void a_rounded_gravity_is_told_where_the_figures_show_it() {
    Worksheet sheet = log();
    Tolerance close = Tolerance.relative(1e-5);
    double mass = 900 * 2 * Math.PI / 12 * (0.16 + 0.12 + 0.09);
    List<HandStep> rounded = List.of(HandStep.of("W", Planted.written(mass * 9.81, "N", 6)));

    assertThat(HandCheck.of(sheet, rounded, HALF_PERCENT).finding()).isEqualTo("agrees");
    assertThat(HandCheck.of(sheet, rounded, close).causes())
        .extracting(Cause::slip)
        .contains(Slip.OTHER_GRAVITY);
  }

  /**
   * The square root of 2 x 981 N x 20 kN/m x 1.5 m: 100 kg at 9.81, without the way they stretch.
   */
  @Test
  void a_slip_that_takes_another_gravity_too_says_so() {
    Worksheet sheet =
        Worksheets.of(
            LinearCatch.of(
                kilograms(100), metres(1.5), Quantities.getQuantity(20e3, Units.NEWTON_PER_METRE)));

    assertThat(check(sheet, HandStep.of("DRO-4", "7672.0 N").roundedTo(5)).finding())
        .isEqualTo(
            "parts here, as if the own weight was left out"
                + " (DRO-4: F = sqrt(2 * W * k * h), with gravity as 9.81)");
  }

  @Test
  void a_place_says_which_of_several_points() {
    Worksheet sheet = rings(Turn.of(degrees(150)), Turn.of(degrees(60)));
    String first = Planted.written(2000 / Math.exp(0.2 * Math.toRadians(150)), "N", 5);

    assertThat(check(sheet, HandStep.of("T_slack (2)", first)).causes())
        .filteredOn(cause -> cause.slip() == Slip.NO_FRICTION)
        .flatExtracting(Cause::places)
        .extracting(Cause.Place::formula)
        .isNotEmpty()
        .allSatisfy(formula -> assertThat(formula).endsWith(" (2)"));
  }

  @Test
  void a_zero_is_not_explained_by_what_is_merely_small() {
    HandCheck check = check(ring(), HandStep.of("T_slack", "0 N").roundedTo(1));

    assertThat(check.finding()).isEqualTo("parts here, cause not found");
  }

  @Test
  void a_long_text_is_cut_in_a_refusal() {
    String endless = "9".repeat(5000) + " N";

    assertThatThrownBy(() -> check(ring(), HandStep.of("t", endless)))
        .satisfies(refused -> assertThat(refused.getMessage()).hasSizeLessThan(200));
    assertThatThrownBy(() -> check(ring(), HandStep.of("x".repeat(5000), "1")))
        .satisfies(refused -> assertThat(refused.getMessage()).hasSizeLessThan(300));
  }

  @Test
  void a_second_spread_of_a_symbol_is_refused() {
    Tolerance twice =
        HALF_PERCENT.orWithinSpread("mu", "0.1", "0.2").orWithinSpread("mu", "0.2", "0.3");

    assertThatThrownBy(() -> HandCheck.of(ring(), List.of(HandStep.of("t", "2")), twice))
        .hasMessage("/spread/mu: wants one spread for each symbol, got another one");
  }

  @Test
  void an_unknown_cause_is_not_guessed() {
    HandCheck check = check(ring(), HandStep.of("T_slack", "1234.56 N"));

    assertThat(check.finding()).isEqualTo("parts here, cause not found");
    assertThat(check.causes()).isEmpty();
    assertThat(check.byChanceShare()).isBetween(0.0, 0.01);
  }

  @Test
  void later_numbers_are_held_against_the_persons_own() {
    HandCheck check =
        check(
            log(),
            HandStep.of("V", "0.77493 m3"),
            HandStep.of("M", "697.44 kg"),
            HandStep.of("W", "7000 N"),
            HandStep.of("z", "0.9054 m"));

    assertThat(check.rows())
        .extracting(HandRow::outcome)
        .containsExactly(
            HandRow.Outcome.PARTS,
            HandRow.Outcome.FOLLOWS,
            HandRow.Outcome.PARTS_AGAIN,
            HandRow.Outcome.AGREES);
  }

  @Test
  void rounding_a_step_too_far_shows_as_early_rounding_and_as_drift() {
    // t = 1.874456 is rounded to 2: 2000 / 2 is 6.3 percent below ours
    HandCheck check =
        check(ring(), HandStep.of("t", "2").roundedTo(1), HandStep.of("T_slack", "1000 N"));

    assertThat(check.rows().get(0).outcome()).isEqualTo(HandRow.Outcome.AGREES);
    assertThat(check.causes())
        .containsExactly(
            Cause.at(Slip.EARLY_ROUNDING, "FRI-6", "the numbers written before, carried on"));
    HandRow slack = check.rows().get(1);
    assertThat(slack.driftRatio().orElseThrow()).isCloseTo(1000 / 1066.9762 - 1, within(1e-6));
    assertThat(slack.ownPartRatio().orElseThrow()).isZero();
    assertThat(check.rows().get(0).ownPartRatio().orElseThrow())
        .isCloseTo(2 / 1.874456 - 1, within(1e-6));
    assertThat(check.worksheet().plainText()).contains("What rounding makes of each number");
  }

  @Test
  void a_number_of_too_few_figures_says_so() {
    assertThat(check(ring(), HandStep.of("t", "1.9")).causes())
        .contains(Cause.at(Slip.EARLY_ROUNDING, "FRI-2", "too few figures"));
  }

  @Test
  void a_stated_rounding_is_allowed_and_an_unstated_one_is_not() {
    HandStep coarse = HandStep.of("t", "1.9");

    assertThat(check(ring(), coarse).departure()).isPresent();
    assertThat(check(ring(), coarse.roundedTo(2)).departure()).isEmpty();
    assertThat(check(ring(), HandStep.of("t", "1.8").roundedTo(2)).departure()).isPresent();
  }

  @Test
  void tolerances() {
    HandStep near = HandStep.of("T_slack", "1080 N"); // 13 N, 1.2 percent off
    List<HandStep> steps = List.of(near);

    assertThat(HandCheck.of(ring(), steps, Tolerance.relative(0.012)).departure()).isPresent();
    assertThat(HandCheck.of(ring(), steps, Tolerance.relative(0.013)).departure()).isEmpty();
    assertThat(
            HandCheck.of(ring(), steps, HALF_PERCENT.orAbsolute(newtons(13), Kind.FORCE))
                .departure())
        .isPresent();
    assertThat(
            HandCheck.of(ring(), steps, HALF_PERCENT.orAbsolute(newtons(13.1), Kind.FORCE))
                .departure())
        .isEmpty();
    assertThatThrownBy(() -> Tolerance.relative(-0.1)).hasMessage("ratio: wants 0 to 1, got -0.1");
    assertThatThrownBy(() -> HALF_PERCENT.orAbsolute(newtons(-1), Kind.FORCE))
        .hasMessage("amount: wants 0 or more, got -1.0");
  }

  /** With mu from 0.15 to 0.25 the slack tension lies between 911.9 and 1248.6 N. */
  @ParameterizedTest
  @CsvSource({"911 N, false", "913 N, true", "1248 N, true", "1249.5 N, false"})
  void a_number_may_lie_anywhere_within_the_spread_of_what_goes_in(String value, boolean within) {
    HandCheck check =
        HandCheck.of(
            ring(),
            List.of(HandStep.of("T_slack", value)),
            Tolerance.relative(0).orWithinSpread("mu", "0.15", "0.25"));

    assertThat(check.departure().isEmpty()).isEqualTo(within);
  }

  @Test
  void spreads_work_together() {
    Tolerance both =
        Tolerance.relative(0)
            .orWithinSpread("mu", "0.15", "0.25")
            .orWithinSpread("T_tight", "1.9 kN", "2.1 kN");

    // 2100 / exp(0.15 pi) = 1310.88 N
    assertThat(HandCheck.of(ring(), List.of(HandStep.of("T_slack", "1310.8 N")), both).departure())
        .isEmpty();
    assertThat(HandCheck.of(ring(), List.of(HandStep.of("T_slack", "1311.0 N")), both).departure())
        .isPresent();
  }

  @Test
  void the_peak_at_rest_and_units_in_feet() {
    Worksheet sheet =
        Worksheets.of(
            LinearCatch.of(
                kilograms(200), metres(2), Quantities.getQuantity(25e3, Units.NEWTON_PER_METRE)));

    // 200 kg weigh 440.92 lbf
    assertThat(check(sheet, HandStep.of("DRO-4", "440.92 lbf")).causes())
        .extracting(Cause::slip)
        .containsExactly(Slip.STATIC_FOR_PEAK);
    assertThat(check(sheet, HandStep.of("DRO-4", "3620.0 lbf")).finding()).isEqualTo("agrees");
    assertThat(check(sheet, HandStep.of("DRO-8", "25.359 in")).finding()).isEqualTo("agrees");
  }

  @Test
  void all_that_is_wrong_is_refused_at_once_with_its_place() {
    List<HandStep> steps =
        List.of(
            HandStep.of("FOR-1", "300 N"),
            HandStep.of("t", "1.9 N"),
            HandStep.of("T_slack", "12 kg").roundedTo(3),
            HandStep.of("EQU-17", "1,9"),
            HandStep.of("t", "2").roundedTo(16));

    assertThatThrownBy(() -> HandCheck.of(ring(), steps, HALF_PERCENT))
        .isInstanceOfSatisfying(
            PlanRefusedException.class,
            refused ->
                assertThat(refused.refusals())
                    .extracting(Refusal::sentence)
                    .containsExactly(
                        "/step 1/name: wants a step of the worksheet: FRI-2 or t, FRI-6 or T_slack,"
                            + " EQU-17 or t, got FOR-1",
                        "/step 2/value: wants a number like \"1.25\" without a unit, got \"1.9"
                            + " N\"",
                        "/step 3/value: wants a number with a unit like \"12.5 N\" (N, kN, MN,"
                            + " lbf, kgf), got \"12 kg\"",
                        "/step 4/value: wants a number like \"1.25\" without a unit, got"
                            + " \"1,9\"",
                        "/step 5/name: wants a step of the worksheet: FRI-2 or t, FRI-6 or T_slack,"
                            + " EQU-17 or t, got t"));
    assertThatThrownBy(() -> HandCheck.of(ring(), List.of(), HALF_PERCENT))
        .hasMessage("/: wants at least one number, got nothing");
    assertThatThrownBy(
            () -> HandCheck.of(ring(), List.of(HandStep.of("t", "2").roundedTo(16)), HALF_PERCENT))
        .hasMessage("/step 1/figures: wants 1 to 15, or nothing, got 16");
    Tolerance wrong =
        HALF_PERCENT.orWithinSpread("nu", "1", "2").orWithinSpread("mu", "0.3", "0.2");
    assertThatThrownBy(() -> HandCheck.of(ring(), List.of(HandStep.of("t", "2")), wrong))
        .isInstanceOfSatisfying(
            PlanRefusedException.class,
            refused ->
                assertThat(refused.refusals())
                    .extracting(Refusal::place)
                    .containsExactly("/spread/nu", "/spread/mu"));
  }

  @Test
  void a_zero_of_ours_has_no_ratio_and_is_still_compared() {
    Worksheet sheet = Worksheets.of(Wraps.needed(newtons(100), newtons(150), 0.18));

    assertThat(check(sheet, HandStep.of("n", "0")).finding()).isEqualTo("agrees");
    HandCheck check = check(sheet, HandStep.of("n", "0.36"));
    assertThat(check.departure()).isPresent();
    assertThat(check.rows().get(0).driftRatio()).isEmpty();
    assertThat(check.rows().get(0).ownPartRatio()).isEmpty();
    assertThat(check.worksheet().plainText()).contains("parts here");
  }

  @Test
  void a_table_of_steps_is_read() {
    String text = "\uFEFFstep,value,figures\r\n\"FRI-2\",1.874,4\r\n\r\nT_slack,\"1067 N\",\r\n";

    assertThat(HandSheet.read(text))
        .containsExactly(
            HandStep.of("FRI-2", "1.874").roundedTo(4), HandStep.of("T_slack", "1067 N"));
    assertThat(HandSheet.read("step,value\nt,\"say \"\"2\"\"\"\n"))
        .containsExactly(HandStep.of("t", "say \"2\""));
  }

  @Test
  void a_table_with_mistakes_is_refused_line_by_line() {
    assertThatThrownBy(
            () -> HandSheet.read("step,value,figures\nt,1,x\nt\nt,1,2,3\nt,\"1\nt,2,3\n"))
        .isInstanceOfSatisfying(
            PlanRefusedException.class,
            refused ->
                assertThat(refused.refusals())
                    .extracting(Refusal::place)
                    .containsExactly("/line 2/figures", "/line 3", "/line 4", "/line 5"));
    assertThatThrownBy(() -> HandSheet.read("t;2\n"))
        .hasMessage(
            "/line 1: wants the header \"step,value\" or \"step,value,figures\", got \"t;2\"");
    assertThatThrownBy(() -> HandSheet.read(" \n")).hasMessageContaining("got nothing");
    assertThatThrownBy(() -> HandSheet.read("step,value\nT_slack,484,2 N\n"))
        .hasMessage(
            "/line 2: wants two fields as in the header; a decimal mark is a point, got 3 fields");
    for (String figures : List.of("0", "-1", "100", "1.5", "９")) {
      assertThatThrownBy(() -> HandSheet.read("step,value,figures\nt,1," + figures + "\n"))
          .hasMessage(
              "/line 2/figures: wants a whole number, 1 to 15, or nothing, got \""
                  + figures
                  + "\"");
    }
  }

  @Test
  void every_slip_has_words_of_its_own_that_follow_as_if() {
    assertThat(List.of(Slip.values())).extracting(Slip::words).doesNotHaveDuplicates();
    assertThat(List.of(Slip.values()))
        .allSatisfy(slip -> assertThat(slip.words()).matches("[a-z].*[^.]"));
  }
}
