package org.boleline.json;

import static org.assertj.core.api.Assertions.assertThat;
import static org.boleline.json.PlanTexts.EVERYTHING;
import static org.boleline.json.PlanTexts.LEAST;
import static org.boleline.json.PlanTexts.changed;

import java.util.List;
import org.boleline.plan.Plan;
import org.junit.jupiter.api.Test;

class PlanWriterTest {
  @Test
  void what_is_written_reads_back_to_an_equal_plan() {
    for (String text : List.of(EVERYTHING, LEAST)) {
      Plan plan = PlanReader.read(text);
      Plan again = PlanReader.read(PlanWriter.write(plan));

      assertThat(again).isEqualTo(plan).hasSameHashCodeAs(plan);
      assertThat(again.taken()).isEqualTo(plan.taken());
      assertThat(PlanWriter.write(again)).isEqualTo(PlanWriter.write(plan));
    }
  }

  @Test
  void writes_the_golden_text() {
    assertThat(PlanWriter.write(PlanReader.read(EVERYTHING)))
        .isEqualTo(PlanTexts.resource("everything.written.json"));
    assertThat(PlanWriter.write(PlanReader.read(LEAST)))
        .isEqualTo(PlanTexts.resource("least.written.json"));
  }

  @Test
  void leaves_out_what_was_left_to_defaults_and_keeps_what_was_stated() {
    Plan left = PlanReader.read(LEAST);
    Plan stated =
        PlanReader.read(
            changed(
                LEAST,
                "\"stems\"",
                "\"gravity\": \"9.80665 m/s2\", \"stems\"",
                "\"id\": \"stem\",",
                "\"id\": \"stem\", \"root\": \"clamped\", \"ownWeight\": true,"));

    assertThat(PlanWriter.write(left)).doesNotContain("gravity", "root", "ownWeight", "sling");
    assertThat(PlanWriter.write(stated)).contains("gravity", "root", "ownWeight");
    assertThat(stated).isNotEqualTo(left);
  }

  @Test
  void text_of_any_characters_comes_back() {
    String text = "a\u0000b \"c\" \\ / \u2028 \ud83c\udf33 \ud800 \udc00 \t\r\n \u007f";
    Plan plan = PlanReader.read(LEAST).toBuilder().title(text).notes(text).build();

    assertThat(PlanReader.read(PlanWriter.write(plan))).isEqualTo(plan);
    assertThat(PlanWriter.write(plan).chars().filter(c -> c < ' ' && c != '\n')).isEmpty();
  }
}
