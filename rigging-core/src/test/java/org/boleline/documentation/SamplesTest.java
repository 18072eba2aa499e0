package org.boleline.documentation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.boleline.Tolerances.THREE_FIGURES;
import static org.boleline.Tolerances.relative;

import java.io.IOException;
import org.boleline.json.PlanReader;
import org.boleline.plan.Plan;
import org.boleline.units.Kind;
import org.boleline.units.Si;
import org.boleline.wood.Species;
import org.boleline.wood.WoodProperties;
import org.boleline.working.check.Cause;
import org.boleline.working.check.Slip;
import org.junit.jupiter.api.Test;

/** What lessons and guides say of their samples. */
class SamplesTest {
  @Test
  void the_file_of_the_second_lesson_is_the_plan_of_the_first() throws IOException {
    assertThat(PlanReader.read(PlanFiles.firstPlan())).isEqualTo(FirstPlan.comparison());
  }

  @Test
  void the_sheet_goes_wrong_by_the_multiplier_for_equal_tensions() {
    // The sheet's 1800 N on the ring, with both legs at 931.6 N, 30 degrees apart.
    double textbook = 2 * 931.6 * Math.cos(Math.toRadians(15));

    assertThat(textbook).isCloseTo(1800, relative(THREE_FIGURES));
    assertThat(CheckByHand.checked().departure())
        .hasValueSatisfying(row -> assertThat(row.step().formula().id()).isEqualTo("FOR-1"));
    assertThat(CheckByHand.checked().causes())
        .extracting(Cause::slip)
        .containsExactly(Slip.ONE_TENSION);
  }

  @Test
  void stated_values_win_over_the_species() {
    WoodProperties wood = OwnSpecies.stated();

    assertThat(Si.value(wood.density(), Kind.DENSITY, "density")).isEqualTo(1050);
    assertThat(wood.taken())
        .extracting("name")
        .doesNotContain("density", "compressionStrength")
        .contains("modulusOfElasticity");
  }

  @Test
  void one_pack_is_asked_and_then_the_other() {
    assertThat(OwnSpecies.either("garden hornbeam")).map(Species::botanicalName).isPresent();
    assertThat(OwnSpecies.either("white oak")).isPresent();
    assertThat(OwnSpecies.either("no such tree")).isEmpty();
  }

  @Test
  void a_plan_file_may_name_a_species_of_a_pack() {
    String text =
        Docs.read(PlanFiles.firstPlan())
            .replaceFirst(
                "(?s)\"wood\": \\{.*?\\}", "\"wood\": {\"species\": \"garden hornbeam\"}");
    Plan plan = OwnSpecies.plan(text);

    WoodProperties wood = plan.stems().get(0).wood();
    assertThat(Si.value(wood.density(), Kind.DENSITY, "density")).isEqualTo(990);
  }
}
