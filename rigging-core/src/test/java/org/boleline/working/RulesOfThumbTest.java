package org.boleline.working;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;
import static org.boleline.units.Amounts.degrees;
import static org.boleline.units.Amounts.gigapascals;
import static org.boleline.units.Amounts.kilograms;
import static org.boleline.units.Amounts.kilogramsPerCubicMetre;
import static org.boleline.units.Amounts.metres;

import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;
import org.boleline.Tolerances;
import org.boleline.drop.DropFound;
import org.boleline.drop.Drops;
import org.boleline.geometry.Heading;
import org.boleline.geometry.Vector;
import org.boleline.plan.Arrangement;
import org.boleline.plan.Contact;
import org.boleline.plan.Piece;
import org.boleline.plan.Plan;
import org.boleline.plan.Tail;
import org.boleline.rope.FrictionRing;
import org.boleline.rope.Hardware;
import org.boleline.rope.Ideal;
import org.boleline.rope.Motion;
import org.boleline.rope.Sheave;
import org.boleline.statics.Solution;
import org.boleline.statics.Statics;
import org.boleline.stem.Diameters;
import org.boleline.stem.Stem;
import org.boleline.stem.StemShape;
import org.boleline.units.Kind;
import org.boleline.wood.Log;
import org.boleline.wood.WoodProperties;
import org.junit.jupiter.api.Test;

/** Rules of thumb beside the model, where one knows which of them is right. Invented plans. */
class RulesOfThumbTest {
  private static final double ALIKE = 1e-6;

  /** A stiff stem that leans by 30 degrees, with one point at its tip. */
  private static Solution solution(Hardware hardware, Motion motion, Tail tail) {
    Stem stem =
        Stem.builder("stem")
            .shape(StemShape.Straight.of(Heading.of(degrees(30), degrees(0)), metres(10)))
            .diameters(Diameters.tapering(metres(10), metres(1), metres(1)))
            .wood(WoodProperties.of(gigapascals(1000), kilogramsPerCubicMetre(500)))
            .ownWeight(false)
            .build();
    Plan plan =
        Plan.builder()
            .title("rules")
            .stems(List.of(stem))
            .piece(Piece.of(kilograms(100)))
            .arrangements(
                List.of(
                    Arrangement.builder("one")
                        .motion(motion)
                        .contacts(List.of(Contact.of("stem", metres(10), hardware)))
                        .tail(tail)
                        .build()))
            .build();
    return Statics.analyse(plan).arrangements().get(0).solution().orElseThrow();
  }

  private static RuleCompared compared(Solution solution, RuleOfThumb rule) {
    return RulesOfThumb.of(solution).stream()
        .filter(one -> one.rule() == rule)
        .findFirst()
        .orElseThrow();
  }

  @Test
  void without_friction_and_with_a_plumb_tail_the_point_carries_twice_the_piece() {
    RuleCompared rule =
        compared(
            solution(Ideal.INSTANCE, Motion.LOWERING, Tail.Down.DOWN), RuleOfThumb.DOUBLE_LOAD);

    assertThat(rule.ratioToModel()).isCloseTo(1, within(ALIKE));
    assertThat(rule.step().result()).isCloseTo(2 * 980.665, within(ALIKE));
  }

  @Test
  void friction_puts_the_rule_of_twice_the_piece_on_the_high_side_lowering_and_low_raising() {
    FrictionRing ring = new FrictionRing(0.3);
    RuleCompared down =
        compared(solution(ring, Motion.LOWERING, Tail.Down.DOWN), RuleOfThumb.DOUBLE_LOAD);
    RuleCompared up =
        compared(solution(ring, Motion.RAISING, Tail.Down.DOWN), RuleOfThumb.DOUBLE_LOAD);

    assertThat(down.side()).isEqualTo(RuleCompared.Side.HIGH);
    assertThat(down.ratioToModel()).isCloseTo(2 / (1 + Math.exp(-0.3 * Math.PI)), within(ALIKE));
    assertThat(up.side()).isEqualTo(RuleCompared.Side.LOW);
    assertThat(up.ratioToModel()).isCloseTo(2 / (1 + Math.exp(0.3 * Math.PI)), within(ALIKE));
    assertThat(up.sentence()).contains("LOW side").contains("hides load");
  }

  @Test
  void a_plumb_tail_doubles_the_moment_that_weight_times_reach_foresees() {
    RuleCompared rule =
        compared(
            solution(Ideal.INSTANCE, Motion.LOWERING, Tail.Down.DOWN),
            RuleOfThumb.WEIGHT_TIMES_REACH);

    assertThat(rule.step().input(1)).isCloseTo(5, within(Tolerances.EXACT));
    assertThat(rule.ratioToModel()).isCloseTo(0.5, within(1e-3));
    assertThat(rule.side()).isEqualTo(RuleCompared.Side.LOW);
    assertThat(rule.model(Kind.MOMENT).getValue().doubleValue()).isPositive();
    assertThatIllegalArgumentException().isThrownBy(() -> rule.model(Kind.FORCE));
  }

  @Test
  void a_ring_halves_the_tension_at_a_friction_of_ln_2_over_pi() {
    RuleCompared rule =
        compared(
            solution(new FrictionRing(Math.log(2) / Math.PI), Motion.LOWERING, Tail.Down.DOWN),
            RuleOfThumb.HALF_BY_RING);

    assertThat(rule.ratioToModel()).isCloseTo(1, within(ALIKE));
  }

  @Test
  void a_tenth_for_each_sheave_is_a_sheave_of_ten_elevenths() {
    RuleCompared rule =
        compared(
            solution(new Sheave(1 / 1.1), Motion.RAISING, Tail.Down.DOWN),
            RuleOfThumb.TENTH_BY_SHEAVE);

    assertThat(rule.ratioToModel()).isCloseTo(1, within(ALIKE));
    assertThat(rule.where()).isEqualTo("tail of arrangement one");
  }

  @Test
  void one_tension_for_both_legs_is_right_without_friction_at_any_angle() {
    Tail out = Tail.Point.of(Vector.ofSi(Kind.LENGTH, -6, 3, 0));
    RuleCompared rule =
        compared(solution(Ideal.INSTANCE, Motion.LOWERING, out), RuleOfThumb.ONE_TENSION);

    assertThat(rule.ratioToModel()).isCloseTo(1, within(Tolerances.EXACT));
  }

  /** 500 lb that fall 4 ft: 2500 lbf. Common practice, no source (a forum thread). */
  @Test
  void feet_and_one() {
    double pounds = 500 * 4.4482216152605;

    assertThat(RuleFormulas.FEET_AND_ONE.value(pounds, 4 * 0.3048))
        .isCloseTo(5 * pounds, within(Tolerances.EXACT * pounds));
  }

  /**
   * A trunk piece 1 m thick and 2 m long is 1.5 m3 with 3 for pi: 1500 kg at 1000 kg/m3.
   *
   * <p>Source: Olley, training article on dismantling.
   */
  @Test
  void three_for_pi_makes_a_log_too_light() {
    Log log = Log.of(metres(2), metres(1), metres(1), kilogramsPerCubicMetre(1000));
    RuleCompared rule = RulesOfThumb.of(log).get(0);

    assertThat(rule.step().result()).isCloseTo(1500 * 9.80665, within(Tolerances.EXACT * 1500));
    assertThat(rule.ratioToModel()).isCloseTo(3 / Math.PI, within(Tolerances.EXACT));
    assertThat(rule.side()).isEqualTo(RuleCompared.Side.LOW);
    assertThat(
            RulesOfThumb.of(Log.of(metres(2), metres(1), metres(0.6), log.density()))
                .get(0)
                .ratioToModel())
        .isLessThan(3 / Math.PI);
  }

  @Test
  void the_drops_of_a_plan_are_compared() {
    List<DropFound> drops =
        Drops.analyse(Sheets.solved()).answers().stream()
            .filter(DropFound.class::isInstance)
            .map(DropFound.class::cast)
            .toList();

    assertThat(drops).isNotEmpty();
    for (DropFound drop : drops) {
      RuleCompared one = RulesOfThumb.of(drop).get(0);
      assertThat(one.model(Kind.FORCE)).isEqualTo(drop.loads().loadLeg());
      assertThat(one.side() == RuleCompared.Side.HIGH).isEqualTo(one.ratioToModel() > 1);
    }
  }

  @Test
  void every_rule_says_what_it_assumes_and_where_it_comes_from() {
    for (RuleOfThumb rule : RuleOfThumb.values()) {
      assertThat(rule.words()).isNotBlank();
      assertThat(rule.assumes()).isNotBlank();
      assertThat(rule.source().id()).isNotBlank();
    }
    Worksheet sheet =
        RulesOfThumb.worksheet(
            RulesOfThumb.of(solution(new FrictionRing(0.2), Motion.LOWERING, Tail.Down.DOWN)));
    assertThat(sheet.plainText()).contains("The rule gives").contains("RUL-1");
    assertThat(
            Arrays.stream(RuleOfThumb.values()).map(RuleOfThumb::words).collect(Collectors.toSet()))
        .hasSize(RuleOfThumb.values().length);
  }
}
