package org.boleline.working;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.boleline.units.Amounts.degrees;
import static org.boleline.units.Amounts.kilograms;
import static org.boleline.units.Amounts.metres;
import static org.boleline.units.Amounts.newtons;
import static org.boleline.units.Amounts.poundsForce;

import java.util.List;
import org.boleline.drop.LinearCatch;
import org.boleline.drop.Swing;
import org.boleline.explain.Step;
import org.boleline.geometry.IncludedAngle;
import org.boleline.geometry.Turn;
import org.boleline.rope.ContactTensions;
import org.boleline.rope.FrictionRing;
import org.boleline.rope.Motion;
import org.boleline.rope.Sheave;
import org.boleline.rope.Tackle;
import org.boleline.rope.TwoLegForce;
import org.boleline.rope.Wraps;
import org.boleline.units.Units;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tech.units.indriya.quantity.Quantities;

/** Worksheets of published worked examples reach the published steps. */
class PublishedWorkingTest {
  private static final double G = 9.80665;

  private static double result(Worksheet sheet, String id) {
    return sheet.steps().stream()
        .filter(step -> step.formula().id().equals(id))
        .mapToDouble(Step::result)
        .findFirst()
        .orElseThrow();
  }

  /**
   * Lowering 100 kg over an aluminium tube, mu 0.175: turns, ratio, what holds it in kg.
   *
   * <p>Source: Delaney, Physics for Roping Technicians, 2022, p. 88; printed to two decimals.
   */
  @ParameterizedTest
  @CsvSource({"0.25, 1.32, 75.97", "0.5, 1.73, 57.71", "1, 3.00, 33.30", "3, 27.08, 3.69"})
  void lowering_over_a_tube_by_turns(double turns, double ratio, double kilograms) {
    Worksheet sheet =
        Worksheets.of(
            ContactTensions.fromTight(
                new FrictionRing(0.175), Turn.ofWraps(turns), newtons(100 * G)));

    assertThat(result(sheet, "FRI-2")).isCloseTo(ratio, within(0.01));
    assertThat(result(sheet, "FRI-6") / G).isCloseTo(kilograms, within(0.01));
  }

  /**
   * A hawser with two turns: 80 lb hold 5000 lb, so mu = 0.3291; with 20 000 lb it takes 2.670.
   *
   * <p>Source: Beer and Johnston, Vector Mechanics: Statics, problem 8.104, reader copy.
   */
  @Test
  void turns_of_a_hawser() {
    Worksheet sheet = Worksheets.of(Wraps.needed(poundsForce(20000), poundsForce(80), 0.3291));

    assertThat(result(sheet, "FRI-11")).isCloseTo(2.670, within(0.005));
    assertThat(sheet.withUnits(UnitSystem.FOOT_POUND).plainText())
        .contains("(20000 lbf x 4.448221615)")
        .contains("= 80.00 lbf (4 figures)");
  }

  /**
   * 1 kN rope with 45 and 90 degrees between the legs: 1.848 and 1.414 kN.
   *
   * <p>Source: Arboriculture Australia, Tree rescue manual, 2022, p. 118.
   */
  @ParameterizedTest
  @CsvSource({"45, 1848", "90, 1414"})
  void force_of_two_equal_legs(double angle, double printed) {
    Worksheet sheet =
        Worksheets.of(
            TwoLegForce.withEqualTensions(newtons(1000), IncludedAngle.of(degrees(angle))));

    assertThat(result(sheet, "FOR-3")).isCloseTo(printed / 1000, within(0.0005));
    assertThat(sheet.plainText()).contains("= " + (int) printed + " N (4 figures)");
  }

  /**
   * 500 lb line at 90 degrees: 705 lb, printed with the factor 1.41.
   *
   * <p>Source: a block catalogue; to half a percent.
   */
  @Test
  void force_of_two_equal_legs_in_pounds() {
    String text =
        Worksheets.of(
                TwoLegForce.withEqualTensions(poundsForce(500), IncludedAngle.of(degrees(90))))
            .withUnits(UnitSystem.FOOT_POUND)
            .withFigures(3)
            .plainText();

    assertThat(text).contains("= 707 lbf (3 figures)").contains("= 1.41 (3 figures)");
  }

  /**
   * Four parts of line on plain sheaves of 0.917: 3.25 printed, so that 3250 lb take 1000 lb.
   *
   * <p>Source: Pipeline Rules of Thumb Handbook, p. 6; half a percent for its rounding.
   */
  @Test
  void four_parts_of_line() {
    Worksheet sheet = Worksheets.of(Tackle.of(4, new Sheave(0.917)), poundsForce(3250));

    assertThat(result(sheet, "TAC-1")).isCloseTo(3.25, within(0.005 * 3.25));
    assertThat(result(sheet, "TAC-3") / 4.4482216152605).isCloseTo(1000, within(5.0));
  }

  /**
   * A weight on a spring: peak over weight for fall over static stretch.
   *
   * <p>Source: Gere, Mechanics of Materials, 7th ed., solution 9.10-1.
   */
  @ParameterizedTest
  @CsvSource({"0, 2.0000", "2.5, 3.4495", "7.5, 5.0000", "10, 5.5826"})
  void a_falling_weight(double falls, double ratio) {
    double stiffness = 10000;
    double weight = 100 * G;
    Worksheet sheet =
        Worksheets.of(
            LinearCatch.of(
                kilograms(100),
                metres(falls * weight / stiffness),
                Quantities.getQuantity(stiffness, Units.NEWTON_PER_METRE)));

    assertThat(result(sheet, "DRO-4") / result(sheet, "DRO-1")).isCloseTo(ratio, within(5e-5));
  }

  /**
   * Tension at the bottom of a swing over the weight: 1.26795 from 30 degrees, 2 from 60, 3 from
   * 90.
   *
   * <p>Source: the formula of a physics teaching page, evaluated.
   */
  @ParameterizedTest
  @CsvSource({"30, 1.26795", "60, 2.00000", "90, 3.00000"})
  void a_swing(double angle, double ratio) {
    Worksheet sheet = Worksheets.of(Swing.of(kilograms(100), metres(5), degrees(angle)));

    assertThat(result(sheet, "SWI-5") / (100 * G)).isCloseTo(ratio, within(5e-6));
    assertThat(result(sheet, "SWI-1") / (100 * G)).isCloseTo(ratio, within(5e-6));
  }

  /**
   * Half a turn at mu 0.3 with 40 kg: raising takes 1007 N.
   *
   * <p>Source: Meriam, Kraige and Bolton, 9th ed., problem 6/84, reader copy; g = 9.81.
   */
  @Test
  void raising_over_a_half_cylinder() {
    Worksheet sheet =
        Worksheets.ofChain(
            Motion.RAISING, newtons(40 * 9.81), List.of(new FrictionRing(0.3)), List.of(Turn.HALF));

    assertThat(result(sheet, "FRI-7")).isCloseTo(1007.0, within(1.0));
  }
}
