package org.boleline.rope;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.boleline.Tolerances.FOUR_FIGURES;
import static org.boleline.Tolerances.ROUNDING;
import static org.boleline.Tolerances.TACKLE_TABLE;
import static org.boleline.Tolerances.THREE_FIGURES;
import static org.boleline.Tolerances.absolute;
import static org.boleline.Tolerances.printedTo;
import static org.boleline.Tolerances.relative;
import static org.boleline.units.Amounts.newtons;
import static org.boleline.units.Amounts.poundsForce;

import javax.measure.Quantity;
import javax.measure.quantity.Force;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Scale;
import org.boleline.units.Kind;
import org.boleline.units.Si;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class TackleTest {
  /**
   * Load over line pull for 1 to 8 parts: the same table in two rigging handbooks, of a block maker
   * and of a sling supplier. Bronze bushed sheaves fit K = 1.045, anti-friction bearings K = 1.02.
   */
  @ParameterizedTest
  @CsvSource({
    "1.045, 1, 0.96",
    "1.045, 2, 1.87",
    "1.045, 3, 2.75",
    "1.045, 4, 3.59",
    "1.045, 5, 4.39",
    "1.045, 6, 5.16",
    "1.045, 7, 5.90",
    "1.045, 8, 6.60",
    "1.02, 1, 0.98",
    "1.02, 2, 1.94",
    "1.02, 3, 2.88",
    "1.02, 4, 3.81",
    "1.02, 5, 4.71",
    "1.02, 6, 5.60",
    "1.02, 7, 6.47",
    "1.02, 8, 7.32"
  })
  void printed_tables_of_parts_of_line_are_met(double factor, int parts, double printed) {
    Tackle tackle = Tackle.of(parts, SheaveConvention.FRICTION_FACTOR.sheave(factor));
    assertThat(tackle.loadRatio()).isCloseTo(printed, absolute(TACKLE_TABLE));
  }

  @Test
  void lead_line_factors_of_a_wire_rope_manual_are_met() {
    // Wire Rope Users Manual, 4th ed., p. 88: plain bearings K = 1.09, 4 parts: 0.309; with two
    // more lead sheaves 0.367, so 2202 lb for 6000 lb.
    Tackle tackle = Tackle.of(4, SheaveConvention.FRICTION_FACTOR.sheave(1.09));
    assertThat(1 / tackle.loadRatio()).isCloseTo(0.309, printedTo(0.001));
    assertThat(1 / tackle.withLeadSheaves(2).loadRatio()).isCloseTo(0.367, printedTo(0.001));
    assertThat(pounds(tackle.withLeadSheaves(2).linePull(poundsForce(6000))))
        .isCloseTo(2202, relative(FOUR_FIGURES));
  }

  @Test
  void the_efficiency_form_of_a_pipeline_handbook_is_met() {
    // Pipeline Rules of Thumb Handbook, p. 6: E = 0.917, 4 parts, printed 3.25 and 1000 lb for
    // 3250 lb.
    Tackle tackle = Tackle.of(4, new Sheave(0.917));
    assertThat(tackle.loadRatio()).isCloseTo(3.25, relative(THREE_FIGURES));
    assertThat(pounds(tackle.linePull(poundsForce(3250)))).isCloseTo(1000, relative(THREE_FIGURES));
  }

  @Property
  void both_closed_forms_of_the_handbooks_are_the_same_sum(
      @ForAll @Scale(9) @DoubleRange(min = 0.5, max = 0.99) double efficiency,
      @ForAll @IntRange(min = 1, max = 12) int parts,
      @ForAll @IntRange(min = 0, max = 4) int leads) {
    double k = 1 / efficiency;
    double manual = (Math.pow(k, parts) * (k - 1)) / (Math.pow(k, parts) - 1) * Math.pow(k, leads);
    double handbook =
        efficiency
            * (1 - Math.pow(efficiency, parts))
            / (1 - efficiency)
            * Math.pow(efficiency, leads);
    Tackle tackle = Tackle.of(parts, new Sheave(efficiency)).withLeadSheaves(leads);
    assertThat(tackle.loadRatio()).isCloseTo(1 / manual, relative(100 * ROUNDING));
    assertThat(tackle.loadRatio()).isCloseTo(handbook, relative(100 * ROUNDING));
  }

  @Property
  void without_friction_the_load_is_shared_by_the_parts(
      @ForAll @IntRange(min = 1, max = 100) int parts) {
    assertThat(Tackle.of(parts, new Sheave(1)).loadRatio()).isEqualTo(parts);
    // US Navy, Builder 2&3: gun tackle, 200 lb over 2 parts; single luff, 600 lb over 3 parts,
    // both without friction.
    assertThat(pounds(Tackle.linePullByTenPercentRule(poundsForce(200), 0, 2)))
        .isCloseTo(100, relative(ROUNDING));
    assertThat(pounds(Tackle.linePullByTenPercentRule(poundsForce(600), 0, 3)))
        .isCloseTo(200, relative(ROUNDING));
  }

  @Test
  void the_naval_rule_adds_a_tenth_of_the_load_for_each_sheave() {
    // US Navy, Builder 2&3, the rule in words; 200 lb over two sheaves and two parts by hand.
    assertThat(pounds(Tackle.linePullByTenPercentRule(poundsForce(200), 2, 2)))
        .isCloseTo(120, relative(ROUNDING));
  }

  @Test
  void the_additive_rule_and_compounding_losses_are_different_conventions() {
    double additive = pounds(Tackle.linePullByTenPercentRule(poundsForce(1000), 6, 6));
    double compounding =
        pounds(
            Tackle.of(6, SheaveConvention.FRICTION_PERCENT.sheave(10)).linePull(poundsForce(1000)));
    assertThat(additive).isGreaterThan(compounding);
  }

  @Test
  void the_pull_is_the_result_of_its_step() {
    Tackle tackle = Tackle.of(3, new Sheave(0.9));
    assertThat(tackle.linePullStep(newtons(1000)).result())
        .isEqualTo(Si.value(tackle.linePull(newtons(1000)), Kind.FORCE, "pull"));
    assertThat(tackle.steps().get(0).result()).isEqualTo(tackle.loadRatio());
  }

  @ParameterizedTest
  @ValueSource(ints = {0, -1, 101})
  void a_count_of_parts_outside_its_range_is_refused(int parts) {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> Tackle.of(parts, new Sheave(0.9)))
        .withMessageContaining("parts");
  }

  @Test
  void other_arguments_outside_their_range_are_refused() {
    Tackle tackle = Tackle.of(2, new Sheave(0.9));
    assertThatIllegalArgumentException()
        .isThrownBy(() -> tackle.withLeadSheaves(-1))
        .withMessageContaining("lead sheaves");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> tackle.linePull(newtons(-1)))
        .withMessageContaining("load");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> Tackle.linePullByTenPercentRule(newtons(1), -1, 2))
        .withMessageContaining("sheaves");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> Tackle.linePullByTenPercentRule(newtons(1), 1, 0))
        .withMessageContaining("parts");
  }

  @Test
  void equality_is_exact() {
    assertThat(Tackle.of(3, new Sheave(0.9)))
        .isEqualTo(Tackle.of(3, new Sheave(0.9)).withLeadSheaves(0))
        .hasSameHashCodeAs(Tackle.of(3, new Sheave(0.9)))
        .isNotEqualTo(Tackle.of(4, new Sheave(0.9)))
        .isNotEqualTo(Tackle.of(3, new Sheave(0.9)).withLeadSheaves(1));
    assertThat(Tackle.of(3, new Sheave(0.9)).toString()).startsWith("[TAC-1]");
  }

  private static double pounds(Quantity<Force> force) {
    return Si.value(force, Kind.FORCE, "force") / 4.4482216152605;
  }
}
