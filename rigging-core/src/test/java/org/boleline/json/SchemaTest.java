package org.boleline.json;

import static org.assertj.core.api.Assertions.assertThat;
import static org.boleline.json.PlanTexts.EVERYTHING;
import static org.boleline.json.PlanTexts.LEAST;
import static org.boleline.json.PlanTexts.changed;

import com.networknt.schema.Error;
import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.boleline.Tolerances;
import org.boleline.drop.DropAnswer;
import org.boleline.drop.DropFound;
import org.boleline.drop.DropResult;
import org.boleline.drop.Drops;
import org.boleline.explain.PlanRefusedException;
import org.boleline.explain.Refusals;
import org.boleline.limits.Checks;
import org.boleline.plan.Plan;
import org.boleline.statics.ArrangementResult;
import org.boleline.statics.Solution;
import org.boleline.statics.StaticResult;
import org.boleline.statics.Statics;
import org.boleline.units.Kind;
import org.boleline.units.QuantityText;
import org.boleline.units.Si;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** The published schemas say what the reader says, checked with a schema library. */
class SchemaTest {
  private static final Path REFERENCE = Path.of("..", "docs", "reference");
  private static final Path DEMOS =
      Path.of(
          "..",
          "rigging-examples",
          "compare-arrangements",
          "src",
          "main",
          "resources",
          "org",
          "boleline",
          "examples",
          "compare");
  private static final Json PLAN_TREE = tree("rigging-plan-1.schema.json");
  private static final Schema PLAN = schema("rigging-plan-1.schema.json");
  private static final Schema RESULT = schema("rigging-result-1.schema.json");

  /** A drop that is not worked out. */
  private static final String LEAST_WITH_DROP =
      changed(
          LEAST, "\"tail\":", "\"drop\": {\"fall\": \"1 m\", \"device\": \"locked\"}, \"tail\":");

  private static String text(Path file) {
    try {
      return Files.readString(file);
    } catch (IOException e) {
      throw new java.io.UncheckedIOException(e);
    }
  }

  private static Schema schema(String name) {
    return SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
        .getSchema(text(REFERENCE.resolve(name)), InputFormat.JSON);
  }

  private static Json tree(String name) {
    Refusals refusals = Refusals.none();
    Json tree = JsonText.parse(text(REFERENCE.resolve(name)), refusals);
    refusals.throwIfAny();
    return tree;
  }

  private static List<Error> errors(String plan) {
    return PLAN.validate(plan, InputFormat.JSON);
  }

  static Stream<Arguments> demos() throws IOException {
    List<Arguments> demos = new ArrayList<>();
    try (Stream<Path> files = Files.list(DEMOS)) {
      files
          .filter(file -> file.toString().endsWith(".json"))
          .sorted()
          .forEach(file -> demos.add(Arguments.of(file.getFileName().toString(), text(file))));
    }
    assertThat(demos).hasSizeGreaterThanOrEqualTo(3);
    return demos.stream();
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("demos")
  void takes_the_demo_plans_and_what_is_written_of_them(String name, String plan) {
    assertThat(errors(plan)).isEmpty();
    assertThat(errors(PlanWriter.write(PlanReader.read(plan)))).isEmpty();
  }

  @Test
  void the_demo_plans_state_what_their_notes_say() {
    Plan spruce = PlanReader.read(text(DEMOS.resolve("spruce.json")));
    Plan hornbeam = PlanReader.read(text(DEMOS.resolve("hornbeam.json")));
    double[] outer = hornbeam.stems().get(0).diameters().outer(Kind.LENGTH);
    double[] cavity = hornbeam.stems().get(0).diameters().cavity(Kind.LENGTH);

    assertThat(spruce.notes()).contains("58.6 kg");
    assertThat(Si.value(spruce.piece().mass(), Kind.MASS, "mass"))
        .isCloseTo(58.6, Tolerances.printedTo(0.1));
    assertThat(hornbeam.notes()).contains("sound shell of 70 mm");
    for (int hollow = 2; hollow <= 3; hollow++) {
      assertThat((outer[hollow] - cavity[hollow]) / 2)
          .isCloseTo(0.070, Tolerances.relative(Tolerances.ROUNDING));
    }
    for (Plan plan : List.of(spruce, hornbeam)) {
      assertThat(plan.notes()).startsWith("Invented site").contains("from memory");
    }
  }

  @Test
  void takes_the_plans_of_the_tests_and_what_is_written_of_them() {
    for (String plan : List.of(EVERYTHING, LEAST)) {
      assertThat(errors(plan)).isEmpty();
      assertThat(errors(PlanWriter.write(PlanReader.read(plan)))).isEmpty();
    }
  }

  private static void takesTheResultOf(Plan plan) {
    DropResult result;
    try {
      result = Drops.analyse(Statics.analyse(plan));
    } catch (PlanRefusedException e) {
      return; // points that the rope pulls together: no result, and so none to check
    }
    assertThat(RESULT.validate(ResultWriter.write(result), InputFormat.JSON)).isEmpty();
    assertThat(RESULT.validate(ResultWriter.write(Checks.of(result)), InputFormat.JSON)).isEmpty();
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("demos")
  void takes_the_results_of_the_demo_plans(String name, String plan) {
    takesTheResultOf(PlanReader.read(plan));
  }

  @Test
  void takes_the_results_of_the_plans_of_the_tests() {
    takesTheResultOf(PlanReader.read(EVERYTHING));
    takesTheResultOf(PlanReader.read(LEAST));
    takesTheResultOf(PlanReader.read(LEAST_WITH_DROP));
    takesTheResultOf(
        PlanReader.read(
            changed(
                EVERYTHING,
                "{\"slipTension\": \"3 kN\"}, \"level\": \"constantForce\", \"stopOver\":"
                    + " \"0.8 m\"",
                "{\"slipTension\": \"300 N\"}")));
    String notSolved =
        ResultWriter.write(
            ResultWriterTest.notSolved(Statics.analyse(PlanReader.read(LEAST)), "no luck", 0.25));
    assertThat(RESULT.validate(notSolved, InputFormat.JSON)).isEmpty();
  }

  @Property(tries = 100)
  void takes_the_results_of_random_plans(@ForAll long seed) {
    takesTheResultOf(new RandomRig(seed).plan());
  }

  @Test
  void random_plans_have_every_outcome_and_held_loads() {
    Set<String> seen = new TreeSet<>();
    for (long seed = 0; seed < 150; seed++) {
      try {
        StaticResult result = Statics.analyse(new RandomRig(seed).plan());
        for (DropAnswer drop : Drops.analyse(result).answers()) {
          seen.add(
              drop instanceof DropFound found
                  ? "drop " + found.letRun().map(run -> run.getClass().getSimpleName())
                  : "drop not analysed");
        }
        for (ArrangementResult answer : result.arrangements()) {
          boolean held = answer.solution().flatMap(Solution::otherEnd).isPresent();
          seen.add(held ? "held" : answer.outcome().text());
        }
      } catch (PlanRefusedException e) {
        seen.add("refused");
      }
    }
    assertThat(seen)
        .containsExactly(
            "drop Optional.empty",
            "drop Optional[NeverStops]",
            "drop Optional[Stopped]",
            "drop not analysed",
            "held",
            "refused",
            "stable",
            "unstable");
  }

  @Test
  void refuses_results_that_pretend() {
    String stable = ResultWriter.write(Statics.analyse(PlanReader.read(LEAST)));
    assertThat(RESULT.validate(stable, InputFormat.JSON)).isEmpty();
    for (String wrong :
        List.of(
            stable.replace("\"stable\"", "\"unstable\""),
            stable.replace("\"stable\"", "\"notSolved\""),
            stable.replace("\"unit\": \"N.m\"", "\"unit\": \"J\""),
            stable.replace("\"bears\": true", "\"bears\": \"yes\""),
            stable.replace("\"across\"", "\"accross\""))) {
      assertThat(RESULT.validate(wrong, InputFormat.JSON)).isNotEmpty();
    }
  }

  @Test
  void refuses_drops_that_pretend() {
    String drops = ResultWriter.write(Drops.analyse(Statics.analyse(PlanReader.read(EVERYTHING))));
    assertThat(RESULT.validate(drops, InputFormat.JSON)).isEmpty();
    for (String wrong :
        List.of(
            drops.replace("\"analysed\"", "\"notAnalysed\""),
            drops.replace("\"locked\"", "\"loose\""),
            drops.replace("\"outcome\": \"stopped\"", "\"outcome\": \"neverStops\""),
            drops.replace("\"unit\": \"J\"", "\"unit\": \"N.m\""),
            drops.replace("\"knownBias\"", "\"knownbias\""))) {
      assertThat(RESULT.validate(wrong, InputFormat.JSON)).isNotEmpty();
    }
  }

  @Test
  void its_own_example_is_read() {
    Json.Elements examples = (Json.Elements) member(PLAN_TREE, "examples");
    for (Json example : examples.list()) {
      String plan = JsonText.print(example);
      assertThat(errors(plan)).isEmpty();
      assertThat(PlanReader.read(plan).arrangements()).isNotEmpty();
    }
  }

  /** What needs more than one member, or arithmetic, is beyond a schema. */
  private static final Set<String> BEYOND_A_SCHEMA =
      Set.of(
          "DUPLICATE",
          "UNKNOWN_REFERENCE",
          "STATION_OFF_STEM",
          "STATIONS_NOT_IN_ORDER",
          "SAME_PLACE",
          "NOT_JSON",
          "TOO_LARGE",
          "OUT_OF_RANGE");

  static Stream<Arguments> changesASchemaCanRefuse() {
    return PlanReaderTest.refusedChanges()
        .filter(
            change ->
                !BEYOND_A_SCHEMA.contains(change.get()[2].toString())
                    && !change.get()[1].equals("\"1e999 kg\"")
                    && !change.get()[3].equals("/stems/2/base"));
  }

  @ParameterizedTest(name = "{0} -> {1}: {2} at {3}")
  @MethodSource("changesASchemaCanRefuse")
  void refuses_what_the_reader_refuses(String from, String to, Object code, String place) {
    assertThat(errors(changed(EVERYTHING, from, to))).as(from + " -> " + to).isNotEmpty();
  }

  @Test
  void refuses_negative_sizes_and_numbers_outside_their_bounds() {
    assertThat(errors(changed(EVERYTHING, "\"outer\": \"36 cm\"", "\"outer\": \"-36 cm\"")))
        .isNotEmpty();
    assertThat(errors(changed(EVERYTHING, "\"efficiency\": 0.95", "\"efficiency\": 1.05")))
        .isNotEmpty();
    assertThat(errors(changed(EVERYTHING, "\"wraps\": 2.5", "\"wraps\": 21"))).isNotEmpty();
    assertThat(errors(changed(EVERYTHING, "\"held\"", "\"hold\""))).isNotEmpty();
    assertThat(errors(changed(EVERYTHING, "\"id\": \"down\"", "\"id\": \"\""))).isNotEmpty();
  }

  @Test
  void knows_the_units_that_the_reader_knows() {
    Map<String, Kind<?>> kinds =
        Map.ofEntries(
            Map.entry("length", Kind.LENGTH),
            Map.entry("distance", Kind.LENGTH),
            Map.entry("angle", Kind.ANGLE),
            Map.entry("lean", Kind.ANGLE),
            Map.entry("mass", Kind.MASS),
            Map.entry("time", Kind.TIME),
            Map.entry("force", Kind.FORCE),
            Map.entry("stress", Kind.PRESSURE),
            Map.entry("acceleration", Kind.ACCELERATION),
            Map.entry("moment", Kind.MOMENT),
            Map.entry("rotationalStiffness", Kind.ROTATIONAL_STIFFNESS),
            Map.entry("stiffness", Kind.STIFFNESS),
            Map.entry("linearDensity", Kind.LINEAR_DENSITY),
            Map.entry("density", Kind.DENSITY));
    kinds.forEach(
        (definition, kind) -> {
          String pattern =
              ((Json.Text) member(member(member(PLAN_TREE, "$defs"), definition), "pattern"))
                  .text();
          String units = pattern.substring(pattern.lastIndexOf('(') + 1, pattern.lastIndexOf(')'));
          assertThat(units.replace("\\.", ".").split("\\|"))
              .as(definition)
              .containsExactlyElementsOf(QuantityText.symbols(kind));
        });
  }

  @Test
  void the_pages_name_every_member_of_their_schemas() {
    namesEveryMember("plan-format.md", PLAN_TREE);
    namesEveryMember("result-format.md", tree("rigging-result-1.schema.json"));
  }

  private static void namesEveryMember(String page, Json schema) {
    String text = text(REFERENCE.resolve(page));
    Set<String> names = new LinkedHashSet<>();
    propertyNames(schema, names);
    assertThat(names).hasSizeGreaterThan(40);
    for (String name : names) {
      assertThat(text).as(name).containsAnyOf("`" + name + "`", "\"" + name + "\"");
    }
  }

  @Test
  void every_part_of_both_schemas_has_a_description() {
    for (Schema schema : List.of(PLAN, RESULT)) {
      assertThat(schema).isNotNull();
    }
    List<String> without = new ArrayList<>();
    describe("", PLAN_TREE, without);
    describe("", tree("rigging-result-1.schema.json"), without);
    assertThat(without).isEmpty();
  }

  private static void describe(String place, Json part, List<String> without) {
    if (part instanceof Json.Members members) {
      boolean isObject =
          members.byName().get("type") instanceof Json.Text type && type.text().equals("object");
      if (isObject && !members.byName().containsKey("description")) {
        without.add(place);
      }
      members.byName().forEach((name, value) -> describe(place + "/" + name, value, without));
    } else if (part instanceof Json.Elements elements) {
      for (int i = 0; i < elements.list().size(); i++) {
        describe(place + "/" + i, elements.list().get(i), without);
      }
    }
  }

  private static void propertyNames(Json part, Set<String> names) {
    if (part instanceof Json.Members members) {
      members
          .byName()
          .forEach(
              (name, value) -> {
                if (name.equals("properties")) {
                  names.addAll(((Json.Members) value).byName().keySet());
                }
                if (!name.equals("examples")) {
                  propertyNames(value, names);
                }
              });
    } else if (part instanceof Json.Elements elements) {
      elements.list().forEach(element -> propertyNames(element, names));
    }
  }

  private static Json member(Json object, String name) {
    Json value = ((Json.Members) object).byName().get(name);
    assertThat(value).as(name).isNotNull();
    return value;
  }
}
