package org.boleline.json;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.boleline.json.PlanTexts.EVERYTHING;
import static org.boleline.json.PlanTexts.LEAST;
import static org.boleline.json.PlanTexts.changed;

import com.networknt.schema.InputFormat;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.boleline.drop.DropResult;
import org.boleline.drop.Drops;
import org.boleline.explain.PlanRefusedException;
import org.boleline.limits.Checks;
import org.boleline.plan.Plan;
import org.boleline.statics.Statics;
import org.boleline.study.PlannedRanges;
import org.boleline.study.Range;
import org.boleline.study.RangeResult;
import org.boleline.study.RangeStudy;
import org.boleline.study.ReadingRange;
import org.boleline.study.Variation;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Ranges from plan file to result file. */
class RangesFilesTest {
  private static final String MASS =
      "\"ranges\": [{\"input\": \"/piece/mass\", \"distribution\": {\"normal\": {\"variation\":"
          + " 0.1}}, \"source\": \"a guess\"}], \"rangeStudy\": {\"samples\": 32, \"shares\": 16,"
          + " \"readings\": [\"/tail/tension\"], \"over\": [{\"reading\": \"/legs/0/tension\","
          + " \"limit\": \"1 kN\"}]}, \"piece\"";
  private static final String PLAN = changed(LEAST, "\"piece\"", MASS);

  private static RangeStudy study(String plan) {
    return PlannedRanges.of(PlanReader.read(plan)).orElseThrow().studies().get(0);
  }

  private static String result(String text) {
    Plan plan = PlanReader.read(text);
    DropResult drops = Drops.analyse(Statics.analyse(plan));
    return ResultWriter.write(
        Checks.of(drops), List.of(), PlannedRanges.of(plan).orElseThrow().run());
  }

  private static void fitsItsSchema(String result) throws IOException {
    String schema =
        Files.readString(Path.of("..", "docs", "reference", "rigging-result-1.schema.json"));
    assertThat(
            SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
                .getSchema(schema, InputFormat.JSON)
                .validate(result, InputFormat.JSON))
        .isEmpty();
  }

  @Test
  void a_study_is_read_as_it_stands() {
    RangeStudy study = study(EVERYTHING);
    List<Range> ranges = study.ranges();

    assertThat(study.samples()).isEqualTo(64);
    assertThat(study.seed()).isEqualTo(7);
    assertThat(study.readings())
        .extracting(reading -> reading.pointer())
        .containsExactly("/legs/0/tension", "/stems/0/base/momentMagnitude");
    assertThat(ranges.get(0).source()).isEqualTo(Variation.MODULUS_OF_ELASTICITY.source());
    // 0.22 in the Wood Handbook, Table 5-6: the median is the mean over sqrt(1 + 0.22^2)
    assertThat(ranges.get(0).spread().words()).contains("median 8.79 GPa");
    assertThat(ranges.get(1).inputs()).hasSize(2);
    assertThat(ranges.get(4).spread().isInterval()).isTrue();
    assertThat(ranges.get(4).source().id()).isEqualTo("a look from below");
    assertThat(PlannedRanges.of(PlanReader.read(LEAST))).isEmpty();
  }

  @Test
  void what_is_written_of_distributions_is_what_was_found() throws IOException {
    String written = result(PLAN);
    RangeResult found = study(PLAN).run();
    ReadingRange tail = found.readings().get(0);

    fitsItsSchema(written);
    assertThat(written).isEqualTo(result(PLAN));
    for (String text :
        List.of(
            "\"basis\": \"distributions\"",
            "\"samples\": 32",
            "\"name\": \"" + tail.reading().name() + "\"",
            "\"share\": 0.95",
            "\"shareWithLost\"",
            "\"totalError\"")) {
      assertThat(written).contains(text);
    }
    String median = tail.quantile(0.5).orElseThrow().value().text();
    assertThat(written).contains("\"value\": " + median.substring(0, median.indexOf(' ')));
  }

  @Test
  void of_a_box_no_quantile_is_written() throws IOException {
    String written = result(EVERYTHING);

    fitsItsSchema(written);
    assertThat(written)
        .contains("\"basis\": \"box\"", "\"foundAt\": \"corner\"", "\"code\": \"RANGE_OF_A_BOX\"")
        .doesNotContain("\"quantiles\"", "\"mean\"");
  }

  @ParameterizedTest(name = "{0} -> {1} at {3}")
  @CsvSource(
      delimiter = ';',
      value = {
        "\"/piece/mass\"; \"/piece/moss\"; UNKNOWN_REFERENCE; /ranges/0/input",
        "\"/piece/mass\"; \"/stems/9/wood/density\"; UNKNOWN_REFERENCE; /ranges/0/input",
        "\"variation\": 0.1; \"variation\": -0.1; OUT_OF_RANGE; /ranges/0/distribution/normal/variation",
        "\"variation\": 0.1; \"variation\": \"clear wood\"; OUT_OF_RANGE; /ranges/0/distribution/normal/variation",
        "\"variation\": 0.1; \"spread\": 0.1; UNKNOWN_MEMBER; /ranges/0/distribution/normal/spread",
        "\"variation\": 0.1; \"deviation\": \"3 m\"; WRONG_QUANTITY; /ranges/0/distribution/normal/deviation",
        "\"variation\": 0.1; \"variation\": 0.1, \"deviation\": \"3 kg\"; CONFLICT; /ranges/0/distribution/normal/variation",
        "\"samples\": 32; \"samples\": 8; OUT_OF_RANGE; /rangeStudy/samples",
        "\"samples\": 32; \"samples\": 32.5; OUT_OF_RANGE; /rangeStudy/samples",
        "\"shares\": 16; \"shares\": 64; OUT_OF_RANGE; /rangeStudy/shares",
        "\"/tail/tension\"; \"/tail/tensions\"; UNKNOWN_REFERENCE; /rangeStudy/readings/0",
        "\"limit\": \"1 kN\"; \"limit\": \"1 kg\"; WRONG_QUANTITY; /rangeStudy/over/0/limit",
        "\"distribution\": {\"normal\": {\"variation\": 0.1}}; \"interval\": [\"80 kg\", \"90 kg\"]; CONFLICT; /rangeStudy/over",
        "\"distribution\": {\"normal\": {\"variation\": 0.1}}; \"interval\": [\"90 kg\"]; WRONG_TYPE; /ranges/0/interval",
        "\"source\": \"a guess\"; \"note\": \"a guess\"; MISSING; /ranges/0/source"
      })
  void what_is_wrong_is_refused_at_its_place(String from, String to, String code, String place) {
    assertThatThrownBy(() -> PlanReader.read(changed(PLAN, from, to)))
        .isInstanceOfSatisfying(
            PlanRefusedException.class,
            e ->
                assertThat(e.refusals())
                    .anySatisfy(
                        refusal -> {
                          assertThat(refusal.place()).isEqualTo(place);
                          assertThat(refusal.code().name()).isEqualTo(code);
                        }));
  }
}
