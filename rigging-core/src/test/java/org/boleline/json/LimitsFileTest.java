package org.boleline.json;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.boleline.json.PlanTexts.EVERYTHING;
import static org.boleline.json.PlanTexts.changed;

import com.networknt.schema.InputFormat;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.boleline.drop.Drops;
import org.boleline.explain.PlanRefusedException;
import org.boleline.explain.Refusal;
import org.boleline.explain.Refusals;
import org.boleline.limits.Check;
import org.boleline.limits.Checks;
import org.boleline.plan.Plan;
import org.boleline.statics.Statics;
import org.boleline.units.Kind;
import org.boleline.units.Si;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Limits in plan files, and checks in result files. */
class LimitsFileTest {
  private static Json parsed(String text) {
    Refusals refusals = Refusals.none();
    Json tree = JsonText.parse(text, refusals);
    refusals.throwIfAny();
    return tree;
  }

  private static Map<String, Json> members(Json json) {
    return ((Json.Members) json).byName();
  }

  private static List<Json> elements(Json json) {
    return ((Json.Elements) json).list();
  }

  private static double number(Json json) {
    return Double.parseDouble(((Json.Numeral) json).text());
  }

  private static String text(Json json) {
    return ((Json.Text) json).text();
  }

  @Test
  void the_parts_of_limits_read_back_as_they_were_written() {
    Plan plan = PlanReader.read(EVERYTHING);

    assertThat(plan.limits().orElseThrow().parts()).hasSize(9);
    assertThat(PlanReader.read(PlanWriter.write(plan)).limits()).isEqualTo(plan.limits());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "\"part\": \"bends\" | \"part\": \"bend\" | /limits/parts/1/part | OUT_OF_RANGE",
        "\"part\": \"device\" | \"part\": \"hand\" | /limits/parts/6/part | CONFLICT",
        "\"name\": \"root\" | \"name\": \"device\" | /limits/parts/8/name | DUPLICATE",
        "\"80 kN.m\" | \"80 kN\" | /limits/parts/8/capacity | WRONG_QUANTITY",
        "\"80 kN.m\" | \"0 kN.m\" | /limits/parts/8/capacity | OUT_OF_RANGE",
        "\"capacity\": \"80 kN.m\", | '' | /limits/parts/8/capacity | MISSING",
        "\"capacity\": \"20 kN\", \"capacityIs\": \"strength\" | \"capacity\": \"20 kN\" |"
            + " /limits/parts/6/capacityIs | MISSING",
        "\"station\": \"1.5 m\" | \"station\": \"12.5 m\" | /limits/parts/7/station | STATION_OFF_STEM",
        "\"capacity\": \"20 MPa\", \"stem\": \"oak\" | \"capacity\": \"20 MPa\" |"
            + " /limits/parts/7/station | CONFLICT",
        "\"capacity\": \"20 MPa\", \"stem\": \"oak\" | \"capacity\": \"20 MPa\", \"stem\": \"elm\" |"
            + " /limits/parts/7/stem | UNKNOWN_REFERENCE",
        "\"place\": \"contacts/0\" | \"place\": \"contacts/\" | /limits/parts/1/place |"
            + " OUT_OF_RANGE",
        "\"place\": \"contacts/0\" | \"place\": \"contacts/2\" | /limits/parts/1/place |"
            + " UNKNOWN_REFERENCE",
        "\"place\": \"contacts/0\" | \"place\": \"piece\" | /limits/parts/1/place | OUT_OF_RANGE",
        "\"demand\": \"static\" | \"demand\": \"slow\" | /limits/parts/2/demand | OUT_OF_RANGE",
        "\"legs\": \"60 deg\" | \"legs\": \"175 deg\" | /limits/parts/3/hitch/basket/legs |"
            + " OUT_OF_RANGE",
        "{\"vertical\": {}} | {} | /limits/parts/4/hitch | MISSING",
        "\"choker\": {\"kept\": 0.8 | \"choker\": {\"kept\": 1.2 |"
            + " /limits/parts/2/hitch/choker/kept | OUT_OF_RANGE",
        "\"combined\": \"stacked\" | \"combined\": \"both\" | /limits/parts/0/combined |"
            + " OUT_OF_RANGE",
        "\"kept\": 0.7, | \"kept\": 0, | /limits/parts/0/reductions/0/kept | OUT_OF_RANGE",
        "\"kept\": 0.7, | '' | /limits/parts/0/reductions/0/kept | MISSING",
        "\"diameter\": \"56 mm\", \"table\" | \"kept\": 0.7, \"diameter\": \"56 mm\", \"table\" |"
            + " /limits/parts/0/reductions/1/kept | CONFLICT",
        "\"diameter\": \"56 mm\" | \"diameter\": \"55 mm\" | /limits/parts/0/reductions/1/table |"
            + " OUT_OF_RANGE",
        "{\"ratio\": 8, | {\"ratio\": 4, | /limits/parts/0/reductions/1/table/1/ratio |"
            + " OUT_OF_RANGE",
        "{\"ratio\": 8, | { | /limits/parts/0/reductions/1/table/1/ratio | MISSING",
        "\"minimumBreakingStrength\": \"55 kN\", | '' | /limits/parts/0/capacity | MISSING",
      })
  void a_limit_that_means_nothing_is_refused_at_its_place(
      String from, String to, String place, String code) {
    PlanRefusedException refused =
        catchThrowableOfType(
            PlanRefusedException.class, () -> PlanReader.read(changed(EVERYTHING, from, to)));

    assertThat(refused).isNotNull();
    assertThat(refused.refusals())
        .extracting(Refusal::place, refusal -> refusal.code().name())
        .contains(org.assertj.core.api.Assertions.tuple(place, code));
  }

  @Test
  void every_check_stands_in_the_result_with_its_numbers() throws IOException {
    Checks checks = Checks.of(Drops.analyse(Statics.analyse(PlanReader.read(EVERYTHING))));
    String written = ResultWriter.write(checks);
    List<Json> arrangements = elements(members(parsed(written)).get("arrangements"));
    int count = 0;
    for (int i = 0; i < arrangements.size(); i++) {
      List<Json> found = elements(members(arrangements.get(i)).get("checks"));
      List<Check> expected = checks.arrangements().get(i).checks();
      assertThat(found).hasSameSizeAs(expected);
      for (int k = 0; k < found.size(); k++) {
        same(members(found.get(k)), expected.get(k));
        count++;
      }
      int weakest = (int) number(members(arrangements.get(i)).get("weakestCheck"));
      assertThat(expected.get(weakest)).isSameAs(checks.arrangements().get(i).weakest().get());
    }
    assertThat(count).isGreaterThan(20);
    assertThat(
            SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
                .getSchema(
                    Files.readString(
                        Path.of("..", "docs", "reference", "rigging-result-1.schema.json")),
                    InputFormat.JSON)
                .validate(written, InputFormat.JSON))
        .isEmpty();
  }

  private static void same(Map<String, Json> found, Check check) {
    assertThat(text(found.get("name"))).isEqualTo(check.name());
    assertThat(text(found.get("part"))).isEqualTo(check.part().text());
    assertThat(text(found.get("place"))).isEqualTo(check.place());
    Map<String, Json> demand = members(found.get("demand"));
    assertThat(text(demand.get("unit"))).isEqualTo(check.kind().ucum());
    if (check.kind() == Kind.FORCE) {
      assertThat(number(demand.get("value")))
          .isEqualTo(Si.value(check.demand(Kind.FORCE), Kind.FORCE, "demand"));
      assertThat(number(members(found.get("capacity")).get("value")))
          .isEqualTo(Si.value(check.capacity(Kind.FORCE), Kind.FORCE, "capacity"));
    }
    assertThat(number(found.get("used"))).isEqualTo(check.usedShare());
    if (check.factorFound().isPresent()) {
      assertThat(number(found.get("factorFound"))).isEqualTo(check.factorFound().getAsDouble());
    }
    assertThat(found.containsKey("met")).isEqualTo(check.factorAsked().isPresent());
    if (check.factorAsked().isPresent()) {
      assertThat(number(found.get("factorAsked"))).isEqualTo(check.factorAsked().getAsDouble());
      assertThat(text(found.get("askedBy"))).isEqualTo("the crew leader");
      assertThat(((Json.Flag) found.get("met")).value()).isEqualTo(check.met().orElseThrow());
    }
  }
}
