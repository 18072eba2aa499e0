package org.boleline.json;

import static org.assertj.core.api.Assertions.assertThat;
import static org.boleline.json.PlanTexts.EVERYTHING;
import static org.boleline.json.PlanTexts.changed;
import static org.boleline.json.PlanTexts.refusals;

import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.boleline.drop.Drops;
import org.boleline.limits.Checks;
import org.boleline.statics.Statics;
import org.boleline.study.BiggestPiece;
import org.boleline.study.NoAnswer;
import org.boleline.study.Study;
import org.boleline.study.StudyPlan;
import org.boleline.study.WhatChanged;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Studies in plan files, and their answers in result files. */
class StudyFilesTest {
  private static Schema schema(String name) throws IOException {
    return SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
        .getSchema(Files.readString(Path.of("..", "docs", "reference", name)), InputFormat.JSON);
  }

  @Test
  void every_kind_is_read_and_written_back_the_same() throws IOException {
    StudyPlan read = PlanReader.readWithStudies(EVERYTHING);
    assertThat(read.studies().stream().map(Study::kind))
        .containsExactly(
            "sweep",
            "biggestPiece",
            "whatChanged",
            "window",
            "bestStations",
            "cutPlan",
            "runNeeded",
            "forkPull",
            "trial",
            "frictionTrial");
    String written = PlanWriter.write(read);
    assertThat(PlanReader.readWithStudies(written)).isEqualTo(read);
    assertThat(schema("rigging-plan-1.schema.json").validate(written, InputFormat.JSON)).isEmpty();
  }

  @Test
  void answers_stand_in_the_result_as_its_schema_says() throws IOException {
    StudyPlan plan = PlanReader.readWithStudies(EVERYTHING);
    var answers = plan.answers();
    assertThat(answers).hasSize(10).noneMatch(NoAnswer.class::isInstance);
    Checks checks = Checks.of(Drops.analyse(Statics.analyse(plan.plan())));
    String result = ResultWriter.write(checks, answers, List.of());
    Schema schema = schema("rigging-result-1.schema.json");
    assertThat(schema.validate(result, InputFormat.JSON)).isEmpty();
    assertThat(schema.validate(result.replace("\"isEmpty\"", "\"empty\""), InputFormat.JSON))
        .isNotEmpty();
    BiggestPiece.Answer biggest = (BiggestPiece.Answer) answers.get(1);
    assertThat(biggest.outcome()).isEqualTo(BiggestPiece.Outcome.FOUND);
    assertThat(result).contains("\"outcome\": \"found\"", "\"unit\": \"N.m\"");
    WhatChanged.Answer changed = (WhatChanged.Answer) answers.get(2);
    assertThat(changed.rows().get(0).parts()).isNotEmpty();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      value = {
        "\"kind\": \"sweep\"; \"kind\": \"sweeps\"; /studies/0/kind; OUT_OF_RANGE",
        "\"from\": 0.1; \"from\": \"0.1 m\"; /studies/0/from; WRONG_TYPE",
        "ring/friction; ring/fiction; /studies/0/input; UNKNOWN_REFERENCE",
        "hardware/ring; hardware/bark; /studies/0/input; UNKNOWN_REFERENCE",
        "\"steps\": 2; \"steps\": 2.5; /studies/0/steps; OUT_OF_RANGE",
        "\"steps\": 2; \"steps\": 0; /studies/0/steps; OUT_OF_RANGE",
        "[\"/tail/tension\"; [\"/tail/tensions\"; /studies/0/readings/0; UNKNOWN_REFERENCE",
        "\"least\": \"0.2 m\"; \"least\": \"0.2 kg\"; /studies/1/least; WRONG_QUANTITY",
        "\"atMost\": \"500 N\"; \"above\": \"500 N\"; /studies/1/keeps/0/above; UNKNOWN_MEMBER",
        "\"from\": \"down\"; \"from\": \"up\"; /studies/2/from; UNKNOWN_REFERENCE",
        "\"behind\": \"5 N\"; \"behind\": \"0 N\"; /studies/3/behind; OUT_OF_RANGE",
        "\"mostPoints\": 1; \"mostPoints\": 9; /studies/4/mostPoints; OUT_OF_RANGE",
        "\"mostPoints\": 1; \"mostPoints\": 4294967297; /studies/4/mostPoints; OUT_OF_RANGE",
        "\"80 cm\"; \"80 kg\"; /studies/5/lengths/1; WRONG_QUANTITY",
        "\"80 cm\"; \"-80 cm\"; /studies/5/lengths; OUT_OF_RANGE",
        "[\"1 m\", \"80 cm\"]; []; /studies/5/lengths; MISSING",
        "\"attachment\": \"0.2 m\"; \"attach\": \"0.2 m\"; /studies/5/attachment; MISSING",
        "\"4 kN\"; \"-4 kN\"; /studies/6/atMost; OUT_OF_RANGE",
        "/drop/locked/loadLeg\", \"atMost; /legs/0/tension\", \"atMost; /studies/6/reading; OUT_OF_RANGE",
        "\"second\": 1; \"second\": 0; /studies/7/second; OUT_OF_RANGE",
        "\"measured\": \"2 cm\"; \"measured\": \"2 kN\"; /studies/8/measured; WRONG_QUANTITY",
        "\"4 GPa\"; \"40 GPa\"; /studies/8/to; OUT_OF_RANGE",
        "/stems/0/wood/modulusOfElasticity\", \"from; /stems/9/wood/modulusOfElasticity\", \"from; /studies/8/input; UNKNOWN_REFERENCE",
        "\"slack\": \"700 N\"; \"slack\": \"7 kN\"; /studies/9/slack; OUT_OF_RANGE"
      })
  void what_is_wrong_is_refused_at_its_place(String from, String to, String place, String code) {
    assertThat(refusals(changed(EVERYTHING, from, to)))
        .anyMatch(r -> r.place().equals(place) && r.code().name().equals(code));
  }
}
