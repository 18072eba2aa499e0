package org.boleline.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.boleline.units.Amounts.kilonewtons;
import static org.boleline.units.Amounts.metres;
import static org.boleline.units.Amounts.newtons;

import java.util.List;
import org.boleline.Tolerances;
import org.boleline.drop.Drops;
import org.boleline.explain.PlanRefusedException;
import org.boleline.explain.Source;
import org.boleline.limits.Checks;
import org.boleline.plan.Arrangement;
import org.boleline.plan.DropSpec;
import org.boleline.plan.Plan;
import org.boleline.rope.Motion;
import org.boleline.statics.Statics;
import org.boleline.units.Kind;
import org.junit.jupiter.api.Test;

/** Records repeat what was worked out: each line is held to the result it comes from. */
class RecordsTest {
  private static final Source USER =
      new Source("the user", "a curve of the user", Source.Reading.STATED);
  private static final LifeCurve CURVE =
      LifeCurve.of(
          List.of(
              new LifeCurve.Point(0.1, 100_000),
              new LifeCurve.Point(0.2, 1000),
              new LifeCurve.Point(0.5, 10)),
          USER);

  private static Checks checks(Plan plan) {
    return Checks.of(Drops.analyse(Statics.analyse(plan)));
  }

  private static RangeResult massOf(Plan plan, String arrangement) {
    return RangeStudy.of(
            plan,
            arrangement,
            List.of(
                Range.of(
                    Input.pieceMass(),
                    Spread.interval(Figure.of(80, Kind.MASS), Figure.of(130, Kind.MASS)),
                    new Source("the climber", "a guess", Source.Reading.STATED))),
            List.of(Reading.loadLeg()))
        .withSamples(16)
        .run();
  }

  @Test
  void a_briefing_tells_mass_wraps_hold_worst_point_and_cautions() {
    Plan plan = Plans.bending();
    Evaluation evaluation = Evaluation.of(plan, "two points");
    List<String> lines = Briefing.of("P1", checks(plan), massOf(plan, "two points")).lines();

    assertThat(lines.get(0)).isEqualTo("Cut: P1");
    assertThat(lines)
        .contains(
            "  Arrangement: two points, raising",
            // 100 kg times 9.80665 m/s2
            "  Mass: 100 kg as planned, weighs 980.7 N; mass of the piece interval, 80 kg to"
                + " 130 kg, by the climber",
            "  Run or hold: no drop stated: slow and steady, raising",
            "  load leg: 784.5 N to 1275 N found over the box");
    String hand = Reading.hand().value(evaluation).figure().orElseThrow().rounded();
    assertThat(lines).contains("  Wraps: 1.5 on the device, hand " + hand);
    double first = Reading.contactForce(0).value(evaluation).si();
    double second = Reading.contactForce(1).value(evaluation).si();
    assertThat(lines)
        .anyMatch(
            line ->
                line.startsWith(
                    "  Worst point: "
                        + Figure.of(Math.max(first, second), Kind.FORCE).rounded()
                        + " on point "
                        + (first > second ? 1 : 2)));
    assertThat(lines).anyMatch(line -> line.startsWith("  Caution: These are forces of slow"));
  }

  @Test
  void without_a_range_a_briefing_says_so() {
    assertThat(Briefing.of("P1", checks(Plans.bending()), "away").lines())
        .contains("  Mass: 100 kg as planned, weighs 980.7 N; no range stated")
        .anyMatch(line -> line.startsWith("  Wraps: no device, tail to "));
    assertThatThrownBy(() -> Briefing.of("P1", checks(Plans.bending()), "nowhere"))
        .isInstanceOf(PlanRefusedException.class);
  }

  @Test
  void a_briefing_of_an_unstable_arrangement_has_no_figures_and_says_why() {
    Plan soft = Input.modulusOfElasticity(0).with(Plans.bending(), Figure.of(1e7, Kind.PRESSURE));

    List<String> lines = Briefing.of("P1", checks(soft), "away").lines();

    assertThat(lines).anyMatch(line -> line.startsWith("  No figures: unstable"));
    assertThat(lines).noneMatch(line -> line.startsWith("  Worst point"));
  }

  /** The rigid plan with a drop caught by a rope made fast, whose stretch is stated. */
  private static Plan dropping() {
    Plan plan = Plans.rigid();
    Arrangement rigged = plan.arrangements().get(0);
    return plan.toBuilder()
        .arrangements(
            List.of(
                rigged.toBuilder()
                    .motion(Motion.LOWERING)
                    .drop(DropSpec.of(metres(1), DropSpec.Locked.LOCKED))
                    .build()))
        .build();
  }

  @Test
  void a_log_takes_the_peak_of_a_catch_and_its_share_of_the_strength() {
    Plan plan = dropping();
    String id = plan.arrangements().get(0).id();
    Evaluation evaluation = Evaluation.of(plan, id);
    double peak = Reading.lockedLoadLeg().value(evaluation).si();

    RopeLog.Pull pull = RopeLog.of("blue", kilonewtons(50)).with("P1", evaluation).pulls().get(0);

    assertThat(pull.state()).isEqualTo("catch, made fast");
    assertThat(pull.peak().si()).isCloseTo(peak, Tolerances.relative(Tolerances.EXACT));
    assertThat(pull.strengthShare().si())
        .isCloseTo(peak / 50_000, Tolerances.relative(Tolerances.EXACT));
    assertThat(Briefing.of("P1", checks(plan), id).lines())
        .anyMatch(line -> line.startsWith("  Run or hold: hold: the rope is made fast"))
        .anyMatch(line -> line.startsWith("  Worst point: ") && line.contains("(catch, made"));
  }

  @Test
  void damage_adds_up_along_the_users_curve() {
    // at 0.15 the logarithm is halfway between 1e5 and 1e3 pulls: 1e4
    RopeLog log =
        RopeLog.of("blue", kilonewtons(50))
            .with("P1", newtons(7500))
            .with("P2", newtons(10_000))
            .with("P3", newtons(1000))
            .withCurve(CURVE);

    assertThat(log.damage().si())
        .isCloseTo(1e-4 + 1e-3 + 1e-5, Tolerances.relative(Tolerances.ROUNDING));
    assertThat(log.lines())
        .contains(
            "Rope: blue",
            "  Cut P1: 7500 N, 0.15 of the strength (measured)",
            "  Damage by the curve of the user: 0.00111")
        .last()
        .asString()
        .contains("inspection");
  }

  @Test
  void without_a_curve_or_above_it_there_is_no_sum() {
    RopeLog log = RopeLog.of("blue", kilonewtons(50)).with("P1", newtons(30_000));

    assertThat(log.damage().reason().orElseThrow()).contains("no curve");
    assertThat(log.withCurve(CURVE).damage().reason().orElseThrow())
        .isEqualTo("cut P1: the curve ends at 0.5 of the strength, this pull is 0.6");
    assertThat(RopeLog.of("new", kilonewtons(50)).withCurve(CURVE).damage().si()).isZero();
  }

  @Test
  void a_cut_without_a_figure_is_kept_with_its_reason() {
    Plan soft = Input.modulusOfElasticity(0).with(Plans.bending(), Figure.of(1e7, Kind.PRESSURE));
    RopeLog log =
        RopeLog.of("blue", kilonewtons(50))
            .with("P1", Evaluation.of(soft, "away"))
            .withCurve(CURVE);

    assertThat(log.pulls().get(0).peak().reason().orElseThrow()).startsWith("unstable");
    assertThat(log.damage().reason().orElseThrow()).startsWith("cut P1: unstable");
  }

  @Test
  void curves_and_strengths_without_meaning_are_refused() {
    assertThatThrownBy(() -> LifeCurve.of(List.of(new LifeCurve.Point(0.1, 100)), USER))
        .hasMessageStartingWith("points: wants");
    assertThatThrownBy(
            () ->
                LifeCurve.of(
                    List.of(new LifeCurve.Point(0.1, 100), new LifeCurve.Point(0.2, 100)), USER))
        .hasMessageStartingWith("points: wants");
    assertThatThrownBy(
            () ->
                LifeCurve.of(
                    List.of(new LifeCurve.Point(0.1, Double.NaN), new LifeCurve.Point(0.2, 1)),
                    USER))
        .hasMessageStartingWith("points: wants");
    assertThatThrownBy(() -> CURVE.damage(-0.1)).hasMessageStartingWith("strengthShare: wants");
    assertThatThrownBy(() -> RopeLog.of("blue", newtons(0)))
        .hasMessageStartingWith("breakingStrength: wants");
    assertThatThrownBy(() -> RopeLog.of("blue", newtons(1)).with("P1", newtons(-1)))
        .hasMessageStartingWith("measured: wants");
  }

  @Test
  void a_plan_record_holds_inputs_assumptions_results_cautions_versions_and_a_blank() {
    Plan plan = Plans.bending();
    List<RangeResult> ranges = List.of(massOf(plan, "device"));
    PlanRecord kept = PlanRecord.of(checks(plan), ranges, List.of("Boleline 1.2.3"));

    assertThat(kept.sections())
        .extracting(RecordSection::title)
        .containsExactly(
            "Plan",
            "Inputs",
            "Assumptions",
            "Results of away",
            "Results of device",
            "Results of two points",
            "Cautions",
            "Versions",
            "For the competent person on site");
    List<String> lines = kept.lines();
    assertThat(lines)
        .contains(
            "  mass of the piece (/piece/mass): 100 kg",
            "  diameter of stem at 12 m: 0.15 m",
            "  Boleline 1.2.3",
            "  Signature: ____________________")
        .anyMatch(line -> line.startsWith("  /piece/mass: 100 kg; interval, 80 kg to 130 kg"))
        .anyMatch(line -> line.startsWith("  range of load leg: 784.5 N to 1275 N"))
        .anyMatch(line -> line.startsWith("  samples: 16 (seed 1): 16 solved"));
    Found moment = Reading.baseMoment(0).value(Evaluation.of(plan, "away"));
    assertThat(lines)
        .contains(
            "  " + Reading.baseMoment(0).name() + ": " + moment.figure().orElseThrow().rounded());
    assertThat(String.join("\n", lines).toLowerCase(java.util.Locale.ROOT))
        .doesNotContain("safe", "approved", "compliant", "nan");
  }

  @Test
  void every_input_of_a_plan_is_found_with_its_value() {
    for (Plan plan : List.of(Plans.bending(), Plans.rigid(), dropping())) {
      assertThat(Input.all(plan)).contains(Input.pieceMass()).doesNotHaveDuplicates();
      for (Input input : Input.all(plan)) {
        assertThat(input.value(plan)).isEqualTo(Input.at(plan, input.pointer()).value(plan));
      }
    }
  }
}
