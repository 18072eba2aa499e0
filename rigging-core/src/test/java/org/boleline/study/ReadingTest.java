package org.boleline.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.boleline.Tolerances.SOLVED_CASE;
import static org.boleline.Tolerances.relative;

import org.boleline.plan.Plan;
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
        .hasValue("there is no contact 4, only 1");
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
}
