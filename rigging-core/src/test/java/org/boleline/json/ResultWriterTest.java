package org.boleline.json;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.boleline.json.PlanTexts.EVERYTHING;
import static org.boleline.json.PlanTexts.LEAST;
import static org.boleline.json.PlanTexts.changed;

import java.lang.reflect.Constructor;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.boleline.Tolerances;
import org.boleline.drop.DropFound;
import org.boleline.drop.DropResult;
import org.boleline.drop.Drops;
import org.boleline.drop.LetRun;
import org.boleline.explain.Refusals;
import org.boleline.plan.Plan;
import org.boleline.statics.ContactResult;
import org.boleline.statics.LostStability;
import org.boleline.statics.NotSolved;
import org.boleline.statics.Solution;
import org.boleline.statics.StaticResult;
import org.boleline.statics.Statics;
import org.boleline.statics.StemResult;
import org.boleline.units.Kind;
import org.boleline.units.Si;
import org.junit.jupiter.api.Test;

class ResultWriterTest {
  /** A thin plumb stem pressed along its axis: the rope ends at its base. Invented. */
  private static final String SLENDER =
      changed(
          LEAST,
          "\"25 deg\"",
          "\"0 deg\"",
          "\"0.36 m\"",
          "\"0.06 m\"",
          "\"0.16 m\"",
          "\"0.05 m\"",
          "[\"4.86 m\", \"0 m\", \"1 m\"]",
          "[\"0 m\", \"0 m\", \"0 m\"]");

  private static final Pattern NUMBER =
      Pattern.compile("(?<![\\w.])-?[0-9]+(\\.[0-9]+)?(e-?[0-9]+)?(?![\\w.])");

  private static StaticResult result(String plan) {
    return Statics.analyse(PlanReader.read(plan));
  }

  private static Json tree(String text) {
    Refusals refusals = Refusals.none();
    Json tree = JsonText.parse(text, refusals);
    refusals.throwIfAny();
    return tree;
  }

  /** Follows names and indexes into a tree. */
  private static Json at(Json tree, Object... path) {
    Json here = tree;
    for (Object step : path) {
      here =
          step instanceof Integer index
              ? ((Json.Elements) here).list().get(index)
              : ((Json.Members) here).byName().get(step);
      assertThat(here).as(step.toString()).isNotNull();
    }
    return here;
  }

  private static double number(Json tree, Object... path) {
    return Double.parseDouble(((Json.Numeral) at(tree, path)).text());
  }

  private static String text(Json tree, Object... path) {
    return ((Json.Text) at(tree, path)).text();
  }

  private static List<String> texts(Json tree, String member, Object... path) {
    return ((Json.Elements) at(tree, path)).list().stream().map(e -> text(e, member)).toList();
  }

  private static Solution solution(StaticResult result, int index) {
    return result.arrangements().get(index).solution().orElseThrow();
  }

  @Test
  void writes_the_golden_text_with_the_same_numbers() {
    String expected = PlanTexts.resource("everything.result.json");
    String found =
        ResultWriter.write(Drops.analyse(result(EVERYTHING)))
            .replace(ResultWriter.libraryVersion(), "VERSION");

    // The length of its numbers decides whether a value stands on one line.
    assertThat(NUMBER.matcher(found).replaceAll("#"))
        .isEqualToIgnoringWhitespace(NUMBER.matcher(expected).replaceAll("#"));
    Matcher ours = NUMBER.matcher(found);
    Matcher golden = NUMBER.matcher(expected);
    while (golden.find()) {
      assertThat(ours.find()).isTrue();
      double value = Double.parseDouble(golden.group());
      assertThat(Double.parseDouble(ours.group()))
          .isCloseTo(value, within(Tolerances.RESIDUAL + Tolerances.SOLVED_CASE * Math.abs(value)));
    }
  }

  @Test
  void gives_every_number_of_a_solution_as_it_is() {
    StaticResult result = result(LEAST);
    Solution solution = solution(result, 0);
    ContactResult contact = solution.contacts().get(0);
    StemResult stem = solution.stems().get(0);
    Json answer = at(tree(ResultWriter.write(result)), "arrangements", 0);
    Json point = at(answer, "contacts", 0);
    Json trunk = at(answer, "stems", 0);

    assertThat(text(answer, "outcome")).isEqualTo("stable");
    assertThat(number(answer, "stiffnessRatio")).isEqualTo(solution.stiffnessRatio());
    assertThat(number(answer, "residual", "force")).isEqualTo(solution.residualForceRatio());
    assertThat(number(answer, "residual", "moment")).isEqualTo(solution.residualMomentRatio());
    assertThat(number(answer, "tail", "tension", "value"))
        .isEqualTo(Si.value(solution.tailTension(), Kind.FORCE, "tail"));
    assertThat(number(point, "along", "value"))
        .isEqualTo(Si.value(contact.along(), Kind.FORCE, "along"));
    assertThat(number(point, "across", "value"))
        .isEqualTo(Si.value(contact.across(), Kind.FORCE, "across"));
    assertThat(number(point, "force", "z")).isEqualTo(contact.force().in(Kind.FORCE)[2]);
    assertThat(number(point, "movement", "x")).isEqualTo(contact.movement().in(Kind.LENGTH)[0]);
    assertThat(number(point, "turn", "value"))
        .isEqualTo(Math.toDegrees(Si.value(contact.turn().angle(), Kind.ANGLE, "turn")));
    assertThat(text(point, "turn", "unit")).isEqualTo("deg");
    assertThat(number(trunk, "base", "moment", "y"))
        .isEqualTo(stem.base().moment().in(Kind.MOMENT)[1]);
    assertThat(text(trunk, "base", "moment", "unit")).isEqualTo("N.m");
    assertThat(number(trunk, "compressionStress", "value"))
        .isEqualTo(Si.value(stem.compressionStress().value(), Kind.PRESSURE, "stress"));
    assertThat(number(trunk, "compressionStress", "at", "value"))
        .isEqualTo(Si.value(stem.compressionStress().at(), Kind.LENGTH, "at"));
  }

  @Test
  void shares_add_up_to_what_the_ground_answers() {
    Json written = tree(ResultWriter.write(result(EVERYTHING)));
    for (int a = 0; a < 3; a++) {
      for (int s = 0; s < 3; s++) {
        Json stem = at(written, "arrangements", a, "stems", s);
        for (String axis : List.of("x", "y", "z")) {
          double sum =
              ((Json.Elements) at(stem, "shares"))
                  .list().stream().mapToDouble(share -> number(share, "moment", axis)).sum();
          assertThat(sum)
              .isCloseTo(
                  -number(stem, "base", "moment", axis),
                  within(
                      Tolerances.EXACT * (1 + number(stem, "base", "momentMagnitude", "value"))));
        }
      }
    }
  }

  @Test
  void a_held_load_has_both_ends_of_every_tension_and_the_whole_other_state() {
    StaticResult result = result(EVERYTHING);
    Solution run = solution(result, 0);
    Solution rise = run.otherEnd().orElseThrow();
    Json answer = at(tree(ResultWriter.write(result)), "arrangements", 0);

    for (int j = 0; j < run.contacts().size(); j++) {
      double least = Si.value(run.contacts().get(j).tensionOut(), Kind.FORCE, "out");
      double most = Si.value(rise.contacts().get(j).tensionOut(), Kind.FORCE, "out");
      assertThat(least).isLessThan(most);
      for (Json tension :
          List.of(at(answer, "contacts", j, "tensionOut"), at(answer, "legs", j + 1, "tension"))) {
        assertThat(number(tension, "least", "value")).isEqualTo(least);
        assertThat(number(tension, "most", "value")).isEqualTo(most);
      }
      assertThat(number(answer, "aboutToRise", "contacts", j, "tensionOut", "value"))
          .isEqualTo(most);
    }
    assertThat(number(answer, "tail", "tension", "most", "value"))
        .isEqualTo(Si.value(rise.tailTension(), Kind.FORCE, "tail"));
    assertThat(number(answer, "aboutToRise", "stems", 0, "base", "momentMagnitude", "value"))
        .isEqualTo(Si.value(rise.stems().get(0).base().momentMagnitude(), Kind.MOMENT, "moment"));
    assertThat(number(answer, "contacts", 0, "forceMagnitude", "value"))
        .isEqualTo(Si.value(run.contacts().get(0).forceMagnitude(), Kind.FORCE, "force"));
  }

  @Test
  void a_drop_is_given_as_it_is_with_the_locked_rope_beside_the_run() {
    DropResult result = Drops.analyse(result(EVERYTHING));
    DropFound found = (DropFound) result.drop("device").orElseThrow();
    LetRun.Stopped run = (LetRun.Stopped) found.letRun().orElseThrow();
    Json drop = at(tree(ResultWriter.write(result)), "arrangements", 1, "drop");

    assertThat(text(drop, "outcome")).isEqualTo("analysed");
    assertThat(text(drop, "level")).isEqualTo("givingPoints");
    assertThat(text(drop, "levelUsed")).isEqualTo("givingPoints");
    assertThat(text(drop, "knownBias")).isEqualTo(found.knownBias());
    assertThat(number(drop, "locked", "loadLeg", "value"))
        .isEqualTo(Si.value(found.loads().loadLeg(), Kind.FORCE, "load leg"));
    assertThat(number(drop, "locked", "overWeight")).isEqualTo(found.overWeightRatio());
    assertThat(number(drop, "locked", "contacts", 0, "forceMagnitude", "value"))
        .isEqualTo(Si.value(found.loads().points().get(0).magnitude(), Kind.FORCE, "force"));
    assertThat(number(drop, "locked", "clearanceNeeded", "value"))
        .isEqualTo(Si.value(found.clearanceNeeded(), Kind.LENGTH, "clearance"));
    assertThat(text(drop, "locked", "legs", 1, "to")).isEqualTo("device");
    assertThat(text(drop, "letRun", "outcome")).isEqualTo("stopped");
    assertThat(number(drop, "letRun", "slipTension", "value"))
        .isEqualTo(Si.value(run.slipTension(), Kind.FORCE, "slip"));
    assertThat(number(drop, "letRun", "run", "value"))
        .isEqualTo(Si.value(run.run(), Kind.LENGTH, "run"));
    double parts =
        number(drop, "locked", "energy", "storedInRope", "value")
            + number(drop, "locked", "energy", "storedInSprings", "value")
            + number(drop, "locked", "contacts", 0, "heat", "value");
    assertThat(parts)
        .isCloseTo(
            number(drop, "locked", "energy", "given", "value"), within(Tolerances.EXACT * parts));
  }

  @Test
  void that_it_never_stops_and_that_it_was_not_worked_out_are_outcomes() {
    String slips =
        changed(
            EVERYTHING,
            "{\"slipTension\": \"3 kN\"}, \"level\": \"constantForce\", \"stopOver\": \"0.8 m\"",
            "{\"slipTension\": \"300 N\"}");
    Json never =
        at(
            tree(ResultWriter.write(Drops.analyse(result(slips)))),
            "arrangements",
            2,
            "drop",
            "letRun");
    String unstretched =
        changed(
            LEAST, "\"tail\":", "\"drop\": {\"fall\": \"1 m\", \"device\": \"locked\"}, \"tail\":");
    Json not = at(tree(ResultWriter.write(Drops.analyse(result(unstretched)))), "arrangements", 0);

    assertThat(text(never, "outcome")).isEqualTo("neverStops");
    assertThat(number(never, "speedAtSlip", "value")).isPositive();
    assertThat(((Json.Members) never).byName()).doesNotContainKeys("run", "clearanceNeeded");
    assertThat(((Json.Members) at(not, "drop")).byName()).containsOnlyKeys("outcome", "reason");
    assertThat(text(not, "drop", "outcome")).isEqualTo("notAnalysed");
    assertThat(texts(not, "code", "cautions")).contains("DROP_NOT_ANALYSED");
  }

  @Test
  void lost_stability_holds_nothing_that_pretends_to_be_a_solution() {
    StaticResult result = result(SLENDER);
    LostStability lost = (LostStability) result.arrangements().get(0);
    Json answer = at(tree(ResultWriter.write(result)), "arrangements", 0);

    assertThat(text(answer, "outcome")).isEqualTo("unstable");
    assertThat(number(answer, "loadFactor")).isEqualTo(lost.loadFactor()).isBetween(0.0, 1.0);
    assertThat(number(answer, "ownWeightFactor")).isEqualTo(lost.ownWeightFactor());
    assertThat(((Json.Members) answer).byName())
        .containsOnlyKeys("id", "outcome", "loadFactor", "ownWeightFactor", "cautions", "taken");
  }

  @Test
  void an_arrangement_that_was_not_solved_says_why() {
    Json answer =
        at(tree(ResultWriter.write(notSolved(result(LEAST), "no luck", 0.25))), "arrangements", 0);

    assertThat(text(answer, "outcome")).isEqualTo("notSolved");
    assertThat(text(answer, "reason")).isEqualTo("no luck");
    assertThat(number(answer, "residual", "moment")).isEqualTo(0.25);
    assertThat(((Json.Members) answer).byName())
        .containsOnlyKeys("id", "outcome", "reason", "residual", "cautions", "taken");
  }

  /** The solver is not meant to give up, so such a result is made by force. */
  static StaticResult notSolved(StaticResult result, String reason, double residual) {
    try {
      Constructor<NotSolved> given =
          NotSolved.class.getDeclaredConstructor(
              String.class, String.class, double.class, List.class);
      given.setAccessible(true);
      Constructor<StaticResult> whole =
          StaticResult.class.getDeclaredConstructor(Plan.class, List.class, List.class);
      whole.setAccessible(true);
      return whole.newInstance(
          result.plan(),
          List.of(
              given.newInstance(result.arrangements().get(0).id(), reason, residual, List.of())),
          result.cautions());
    } catch (ReflectiveOperationException e) {
      throw new LinkageError("another signature", e);
    }
  }

  @Test
  void each_answer_carries_what_concerns_it_and_nothing_of_the_others() {
    Json written = tree(ResultWriter.write(result(EVERYTHING)));

    assertThat(texts(written, "place", "cautions"))
        .contains("", "/arrangements/0/drop", "/arrangements/1/drop");
    assertThat(texts(written, "code", "arrangements", 1, "cautions"))
        .contains("SLOW_AND_STEADY", "DROP_NOT_ANALYSED", "LIMITS_NOT_CHECKED");
    assertThat(texts(written, "place", "arrangements", 1, "cautions"))
        .contains("/arrangements/1/drop")
        .noneMatch(place -> place.startsWith("/arrangements/0"));
    assertThat(texts(written, "name", "taken"))
        .contains("/stems/1/wood/shearModulus", "/arrangements/0/contacts/1/sling");
    assertThat(texts(written, "name", "arrangements", 0, "taken"))
        .contains("/stems/1/wood/shearModulus", "/arrangements/0/contacts/1/sling");
    assertThat(texts(written, "name", "arrangements", 1, "taken"))
        .contains("/stems/1/wood/shearModulus")
        .noneMatch(name -> name.startsWith("/arrangements/0"));
  }

  @Test
  void data_say_where_they_come_from_and_how_that_is_known() {
    Json written =
        tree(
            ResultWriter.write(
                result(
                    changed(
                        LEAST,
                        "\"wood\": {",
                        "\"wood\": {\"species\": \"Quercus alba\", \"bendingStrength\":"
                            + " \"40 MPa\", "))));
    List<Json> taken = ((Json.Elements) at(written, "taken")).list();

    assertThat(taken)
        .anySatisfy(
            datum -> {
              assertThat(text(datum, "name")).isEqualTo("/stems/0/wood/compressionStrength");
              assertThat(text(datum, "source")).contains("Wood Handbook");
              assertThat(text(datum, "reading")).isEqualTo("read");
              assertThat(text(datum, "spread")).isNotEmpty();
            });
  }

  @Test
  void names_the_library_with_its_version() {
    Json written = tree(ResultWriter.write(result(LEAST)));

    assertThat(text(written, "library", "name")).isEqualTo("Boleline");
    assertThat(text(written, "library", "version"))
        .isEqualTo(ResultWriter.libraryVersion())
        .matches("[0-9]+\\.[0-9]+\\.[0-9]+(-.+)?");
  }

  @Test
  void the_same_plan_gives_the_same_bytes_in_every_language_and_thread() throws Exception {
    String first = ResultWriter.write(result(EVERYTHING));
    Locale before = Locale.getDefault();
    ExecutorService threads = Executors.newFixedThreadPool(8);
    try {
      for (String language : List.of("de", "tr", "ar-EG")) {
        Locale.setDefault(Locale.forLanguageTag(language));
        List<Future<String>> written = new ArrayList<>();
        for (int i = 0; i < 8; i++) {
          written.add(threads.submit(() -> ResultWriter.write(result(EVERYTHING))));
        }
        for (Future<String> text : written) {
          assertThat(text.get()).as(language).isEqualTo(first);
        }
      }
    } finally {
      Locale.setDefault(before);
      threads.shutdownNow();
    }
  }
}
