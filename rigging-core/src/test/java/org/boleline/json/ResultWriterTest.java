package org.boleline.json;

import static org.assertj.core.api.Assertions.assertThat;
import static org.boleline.json.PlanTexts.EVERYTHING;
import static org.boleline.json.PlanTexts.LEAST;
import static org.boleline.json.PlanTexts.changed;

import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import org.boleline.explain.Refusals;
import org.boleline.statics.Outcome;
import org.boleline.statics.Solution;
import org.boleline.statics.StaticResult;
import org.boleline.statics.Statics;
import org.boleline.units.Kind;
import org.boleline.units.Si;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

class ResultWriterTest {
  private static final Schema SCHEMA = schema();

  private static Schema schema() {
    try {
      return SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
          .getSchema(
              Files.readString(Path.of("..", "docs", "reference", "rigging-result-1.schema.json")),
              InputFormat.JSON);
    } catch (IOException e) {
      throw new java.io.UncheckedIOException(e);
    }
  }

  private static StaticResult result(String plan) {
    return Statics.analyse(PlanReader.read(plan));
  }

  private static Json tree(String text) {
    Refusals refusals = Refusals.none();
    Json tree = JsonText.parse(text, refusals);
    refusals.throwIfAny();
    return tree;
  }

  /** Returns what stands at a place of a tree. */
  private static Json at(Json tree, Object... steps) {
    Json here = tree;
    for (Object step : steps) {
      here =
          step instanceof Integer index
              ? ((Json.Elements) here).list().get(index)
              : ((Json.Members) here).byName().get((String) step);
      assertThat(here).as(String.valueOf(step)).isNotNull();
    }
    return here;
  }

  private static double number(Json tree, Object... steps) {
    return Double.parseDouble(((Json.Numeral) at(tree, steps)).text());
  }

  private static String text(Json tree, Object... steps) {
    return ((Json.Text) at(tree, steps)).text();
  }

  private static boolean has(Json object, String name) {
    return ((Json.Members) object).byName().containsKey(name);
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("org.boleline.json.SchemaTest#demos")
  void what_is_written_of_the_demos_keeps_to_the_schema(String name, String plan) {
    assertThat(SCHEMA.validate(ResultWriter.write(result(plan)), InputFormat.JSON)).isEmpty();
  }

  @Test
  void what_is_written_of_every_form_keeps_to_the_schema() {
    String text = ResultWriter.write(result(EVERYTHING));

    assertThat(SCHEMA.validate(text, InputFormat.JSON)).isEmpty();
    assertThat(text).contains("\"otherEnd\"", "\"least\"", "\"hand\"");
  }

  @Test
  void writes_the_very_numbers_of_the_result() {
    StaticResult result = result(LEAST);
    Solution solution = (Solution) result.arrangements().get(0);
    Json answer = at(tree(ResultWriter.write(result)), "arrangements", 0);

    assertThat(text(answer, "id")).isEqualTo("one");
    assertThat(text(answer, "outcome")).isEqualTo("stable");
    assertThat(number(answer, "stiffnessRatio")).isEqualTo(solution.stiffnessRatio());
    assertThat(number(answer, "residual", "force")).isEqualTo(solution.residualForceRatio());
    assertThat(number(answer, "tail", "tension", "value"))
        .isEqualTo(Si.value(solution.tailTension(), Kind.FORCE, "tension"));
    assertThat(text(answer, "tail", "tension", "unit")).isEqualTo("N");
    assertThat(number(answer, "contacts", 0, "turn", "value"))
        .isEqualTo(
            Math.toDegrees(
                Si.value(solution.contacts().get(0).turn().angle(), Kind.ANGLE, "turn")));
    assertThat(text(answer, "contacts", 0, "turn", "unit")).isEqualTo("deg");
    assertThat(number(answer, "contacts", 0, "force", "z"))
        .isEqualTo(solution.contacts().get(0).force().in(Kind.FORCE)[2]);
    assertThat(number(answer, "stems", 0, "base", "momentMagnitude", "value"))
        .isEqualTo(
            Si.value(solution.stems().get(0).base().momentMagnitude(), Kind.MOMENT, "moment"));
    assertThat(number(answer, "stems", 0, "bendingStress", "at", "value"))
        .isEqualTo(Si.value(solution.stems().get(0).bendingStress().at(), Kind.LENGTH, "at"));
    assertThat(text(answer, "legs", 0, "from")).isEqualTo("piece");
    assertThat(number(answer, "legs", 0, "tension", "value"))
        .isEqualTo(Si.value(solution.legs().get(0).tension(), Kind.FORCE, "tension"));
    assertThat(has(answer, "hand")).isFalse();
  }

  @Test
  void gives_both_ends_of_every_tension_of_a_held_load() {
    StaticResult result = result(EVERYTHING);
    Solution held = (Solution) result.arrangements().get(0);
    Json answer = at(tree(ResultWriter.write(result)), "arrangements", 0);

    assertThat(number(answer, "tail", "tension", "least", "value"))
        .isEqualTo(Si.value(held.tailTension(), Kind.FORCE, "tension"))
        .isLessThan(number(answer, "tail", "tension", "most", "value"));
    assertThat(number(answer, "tail", "tension", "most", "value"))
        .isEqualTo(Si.value(held.otherEnd().orElseThrow().tailTension(), Kind.FORCE, "tension"))
        .isEqualTo(number(answer, "otherEnd", "tail", "tension", "value"));
  }

  @Test
  void lists_for_an_arrangement_what_it_took_and_not_what_others_took() {
    Json answer = at(tree(ResultWriter.write(result(EVERYTHING))), "arrangements", 2);
    Json.Elements taken = (Json.Elements) at(answer, "taken");

    assertThat(taken.list())
        .extracting(datum -> text(datum, "name"))
        .contains("/stems/1/root", "/arrangements/2/contacts/0/sling")
        .noneMatch(name -> name.startsWith("/arrangements/0/"));
  }

  @Test
  void says_where_stability_is_lost_and_nothing_that_pretends_to_be_a_solution() {
    // a thin plumb stem pressed along its axis: the rope ends at its base
    String plan =
        changed(
            LEAST,
            "\"lean\": \"25 deg\"",
            "\"lean\": \"0 deg\"",
            "\"outer\": \"0.36 m\"",
            "\"outer\": \"0.06 m\"",
            "\"outer\": \"0.16 m\"",
            "\"outer\": \"0.05 m\"",
            "[\"4.86 m\", \"0 m\", \"1 m\"]",
            "[\"0 m\", \"0 m\", \"0 m\"]");
    StaticResult result = result(plan);
    String text = ResultWriter.write(result);
    Json answer = at(tree(text), "arrangements", 0);

    assertThat(result.arrangements().get(0).outcome()).isEqualTo(Outcome.UNSTABLE);
    assertThat(SCHEMA.validate(text, InputFormat.JSON)).isEmpty();
    assertThat(text(answer, "outcome")).isEqualTo("unstable");
    assertThat(number(answer, "loadFactor")).isBetween(0.0, 1.0);
    for (String name : new String[] {"legs", "contacts", "tail", "stems", "stiffnessRatio"}) {
      assertThat(has(answer, name)).as(name).isFalse();
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"de", "tr", "ar-EG"})
  void writes_the_same_bytes_in_every_country(String language) {
    String expected = ResultWriter.write(result(EVERYTHING));
    Locale before = Locale.getDefault();
    try {
      Locale.setDefault(Locale.forLanguageTag(language));
      assertThat(ResultWriter.write(result(EVERYTHING))).isEqualTo(expected);
    } finally {
      Locale.setDefault(before);
    }
  }
}
