package org.boleline.json;

import static org.assertj.core.api.Assertions.assertThat;
import static org.boleline.json.PlanTexts.EVERYTHING;
import static org.boleline.units.Amounts.kilonewtons;
import static org.boleline.units.Amounts.newtons;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.boleline.drop.Drops;
import org.boleline.limits.Checks;
import org.boleline.plan.Plan;
import org.boleline.statics.Statics;
import org.boleline.study.Briefing;
import org.boleline.study.PlanRecord;
import org.boleline.study.RopeLog;
import org.junit.jupiter.api.Test;

class RecordWriterTest {
  private static final Plan PLAN = PlanReader.read(EVERYTHING);
  private static final Checks CHECKS = Checks.of(Drops.analyse(Statics.analyse(PLAN)));

  private static String schema(String name) {
    try {
      return Files.readString(Path.of("..", "docs", "reference", name + "-1.schema.json"));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static final Schema SCHEMA =
      SchemaRegistry.withDefaultDialect(
              SpecificationVersion.DRAFT_2020_12,
              builder ->
                  builder.schemas(
                      id -> {
                        Matcher m = Pattern.compile("urn:org\\.boleline:([a-z-]+):1").matcher(id);
                        return m.matches() ? schema(m.group(1)) : null;
                      }))
          .getSchema(schema("rigging-record"), InputFormat.JSON);

  private static JsonNode read(String text) throws Exception {
    assertThat(SCHEMA.validate(text, InputFormat.JSON)).isEmpty();
    // the schema can refuse: no other format, no other member, no other result
    for (String broken : List.of("rigging-record/1", "\"record", "\"section", "\"state")) {
      if (text.contains(broken)) {
        assertThat(SCHEMA.validate(text.replace(broken, broken + "s"), InputFormat.JSON))
            .as(broken)
            .isNotEmpty();
      }
    }
    JsonNode node = new ObjectMapper().readTree(text);
    assertThat(node.get("format").asText()).isEqualTo("rigging-record/1");
    assertThat(node.get("library").get("version").asText())
        .isEqualTo(ResultWriter.libraryVersion());
    return node;
  }

  @Test
  void a_plan_record_holds_the_plan_and_its_result_as_their_own_files_have_them() throws Exception {
    PlanRecord kept = PlanRecord.of(CHECKS, List.of(), List.of("a host 3.1"));
    JsonNode node = read(RecordWriter.write(kept));

    assertThat(node.get("plan")).isEqualTo(new ObjectMapper().readTree(PlanWriter.write(PLAN)));
    assertThat(node.get("result"))
        .isEqualTo(new ObjectMapper().readTree(ResultWriter.write(CHECKS)));
    assertThat(node.get("versions").get(0).asText()).isEqualTo("a host 3.1");
    assertThat(node.get("sections")).hasSize(kept.sections().size());
    assertThat(RecordWriter.write(kept)).isEqualTo(RecordWriter.write(kept));
  }

  @Test
  void a_briefing_holds_its_lines() throws Exception {
    Briefing briefing = Briefing.of("P1", CHECKS, PLAN.arrangements().get(0).id());
    JsonNode node = read(RecordWriter.write(briefing));

    assertThat(node.get("section").get("title").asText()).isEqualTo("Cut: P1");
    assertThat(node.get("section").get("lines")).hasSize(briefing.section().lines().size());
  }

  @Test
  void a_log_holds_numbers_and_says_why_there_is_no_sum() throws Exception {
    JsonNode node =
        read(RecordWriter.write(RopeLog.of("blue", kilonewtons(50)).with("P1", newtons(5000))));

    assertThat(node.get("pulls").get(0).get("peak").get("value").asDouble()).isEqualTo(5000);
    assertThat(node.get("pulls").get(0).get("strengthShare").get("value").asDouble())
        .isEqualTo(0.1);
    assertThat(node.get("noDamage").asText()).startsWith("no curve");
  }
}
