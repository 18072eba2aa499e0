package org.boleline.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.boleline.Tolerances.ALL_BUT_RIGID;
import static org.boleline.Tolerances.SOLVED_CASE;
import static org.boleline.Tolerances.relative;
import static org.boleline.units.Amounts.newtons;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.boleline.drop.Drops;
import org.boleline.json.PlanReader;
import org.boleline.limits.ArrangementChecks;
import org.boleline.limits.Checks;
import org.boleline.plan.Limits;
import org.boleline.plan.Plan;
import org.boleline.rope.Motion;
import org.boleline.statics.Statics;
import org.boleline.units.Amounts;
import org.boleline.units.Kind;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class ReadingTest {
  @ParameterizedTest
  @ValueSource(
      strings = {
        "/legs/0/tension",
        "/tail/tension",
        "/hand/tension",
        "/contacts/0/forceMagnitude",
        "/contacts/0/tensionIn",
        "/contacts/0/tensionOut",
        "/stems/0/base/momentMagnitude",
        "/stems/0/riggingBase/momentMagnitude",
        "/stems/0/bendingStress/value",
        "/stems/0/compressionStress/value",
        "/stems/0/tensionStress/value",
        "/stems/0/tip/movementMagnitude",
        "/stiffnessRatio",
        "/residual/force",
        "/residual/moment",
        "/drop/locked/loadLeg",
        "/drop/locked/clearanceNeeded",
        "/drop/locked/stretch",
        "/drop/locked/overWeight",
        "/drop/locked/contacts/0/forceMagnitude",
        "/drop/locked/stems/0/baseMomentMagnitude"
      })
  void every_reading_keeps_its_name_and_finds_a_number(String pointer) {
    Reading reading = Reading.parse(pointer);
    assertThat(reading.pointer()).isEqualTo(pointer);
    assertThat(reading.value(Plans.rigid(), Plans.RIGID).figure()).isPresent();
  }

  @ParameterizedTest
  @ValueSource(strings = {"/checks/0/used", "/mostUsed", "/mostUsedOfAsked"})
  void checks_of_limits_can_be_read_too(String pointer) {
    Reading reading = Reading.parse(pointer);
    assertThat(reading.pointer()).isEqualTo(pointer);
    assertThat(reading.value(Plans.rigid(), Plans.RIGID).reason().orElseThrow())
        .startsWith("the plan states no limits");
    Found found = reading.value(Plans.limited(), Plans.RIGID);
    // the rope at the piece carries the weight; the hand less of what it can
    double rope = 100 * Plans.G / 50e3;
    double hand = 100 * Plans.G * Math.exp(-0.2 * (Math.PI + 3 * Math.PI)) / 400;
    switch (pointer) {
      case "/checks/0/used" -> assertThat(found.si()).isCloseTo(rope, relative(SOLVED_CASE));
      case "/mostUsed" ->
          assertThat(found.si()).isCloseTo(Math.max(rope, hand), relative(ALL_BUT_RIGID));
      default -> assertThat(found.si()).isCloseTo(10 * rope, relative(SOLVED_CASE));
    }
  }

  @Test
  void checks_are_those_of_the_result() throws Exception {
    Plan plan =
        PlanReader.read(Files.readString(Path.of("src/test/resources/plans/everything.json")));
    Checks checks = Checks.of(Drops.analyse(Statics.analyse(plan)));
    for (ArrangementChecks of : checks.arrangements()) {
      Evaluation alone = Evaluation.of(plan, of.id());
      for (int i = 0; i < of.checks().size(); i++) {
        assertThat(Reading.checkUsed(i).value(alone).si())
            .isEqualTo(of.checks().get(i).usedShare());
      }
      assertThat(Reading.mostUsed().value(alone).si())
          .isEqualTo(of.weakest().orElseThrow().usedShare());
      assertThat(Reading.mostUsedOfAsked().value(alone).si() > 1).isEqualTo(!of.notMet().isEmpty());
    }
  }

  @Test
  void what_was_not_checked_has_a_reason() {
    Plan plan = Plans.limited();
    assertThat(Reading.checkUsed(9).value(plan, Plans.RIGID).reason())
        .hasValue("there is no check 10, only 2");
    Plan held = Plans.bending().toBuilder().limits(Limits.of(newtons(400), List.of())).build();
    Plan heavy = Input.lean(0).with(Input.pieceMass().with(held, 3e5), 0.0);
    assertThat(Reading.mostUsed().value(heavy, "device").reason().orElseThrow())
        .contains("loses stability");
    assertThat(Reading.mostUsedOfAsked().value(held, "device").reason().orElseThrow())
        .contains("no factor");
  }

  @Test
  void the_load_leg_of_a_hanging_piece_carries_its_weight() {
    // statics: no tagline, so the load leg carries the weight alone
    assertThat(Reading.loadLeg().value(Plans.rigid(), Plans.RIGID).si())
        .isCloseTo(100 * Plans.G, relative(SOLVED_CASE));
  }

  @Test
  void what_runs_for_ever_has_no_run() {
    Plan plan = Input.handForce(0).with(Plans.rigid(), Figure.of(Amounts.newtons(1), Kind.FORCE));
    assertThat(Reading.run().value(plan, Plans.RIGID).reason()).hasValue("the piece never stops");
  }

  @Test
  void what_is_not_there_has_a_reason() {
    Plan plan = Plans.bending();
    assertThat(Reading.contactForce(4).value(plan, "away").reason())
        .hasValue("there is no point 5, only 1");
    assertThat(Reading.hand().value(plan, "away").reason())
        .hasValue("the tail ends on no lowering device");
    assertThat(Reading.lockedLoadLeg().value(plan, "away").reason()).isPresent();
    assertThat(Reading.tail().aboutToRise().value(plan, "away").reason()).isPresent();
    assertThat(Reading.tail().value(plan, "nowhere").reason().orElseThrow())
        .contains("\"nowhere\"");
  }

  @Test
  void an_unstable_stem_has_no_numbers() {
    Plan heavy = Input.pieceMass().with(Plans.bending(), 3e5);
    Found found = Reading.baseMoment(0).value(Input.lean(0).with(heavy, 0.0), "device");
    assertThat(found.figure()).isEmpty();
    assertThat(found.reason().orElseThrow()).contains("unstable");
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "/stems/0", "/contacts/0/turn", "/legs/1/tension", "/drop/locked"})
  void what_names_no_number_is_refused(String pointer) {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> Reading.parse(pointer))
        .withMessageStartingWith("reading: wants ");
  }

  @Test
  void the_end_of_a_held_load_that_is_read_is_named() {
    assertThat(Reading.tail().end(Motion.HELD)).hasValue("about to run");
    assertThat(Reading.tail().aboutToRise().end(Motion.HELD)).hasValue("about to rise");
    assertThat(Reading.tail().end(Motion.LOWERING)).isEmpty();
    assertThat(Reading.lockedLoadLeg().end(Motion.HELD)).isEmpty();
    assertThat(Reading.mostUsed().end(Motion.HELD)).isEmpty();
  }
}
