package org.boleline.examples.compare;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.lang.reflect.Constructor;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.regex.Matcher;
import org.boleline.json.PlanReader;
import org.boleline.plan.Arrangement;
import org.boleline.plan.Plan;
import org.boleline.statics.ArrangementResult;
import org.boleline.statics.NotSolved;
import org.boleline.statics.StaticResult;
import org.boleline.statics.Statics;
import org.boleline.study.StudyPlan;

/** The demo plans, and plans of the tests. All of them are invented. */
final class Plans {
  static final Plan HORNBEAM = plan("hornbeam.json");
  static final Plan SYCAMORE = plan("sycamore.json");
  static final Plan SPRUCE = plan("spruce.json");

  /** Every kind of difference, held loads, a slack sling, names that are hard to print. */
  static final Plan MIXED = plan("mixed.json");

  /** A pole that loses stability if it is pressed at its top. */
  static final Plan POLE = plan("pole.json");

  /** The spruce with one study of nearly each kind. */
  static final StudyPlan ASKING = asking("spruce.json", text("studies.json"));

  static final List<Plan> ALL = List.of(HORNBEAM, SYCAMORE, SPRUCE, MIXED, POLE);

  private Plans() {}

  static String text(String resource) {
    try (InputStream stream = Plans.class.getResourceAsStream(resource)) {
      return new String(
          Objects.requireNonNull(stream, resource).readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static Plan plan(String resource) {
    return PlanReader.read(text(resource));
  }

  /** A plan of a file with studies in front. */
  static StudyPlan asking(String resource, String studies) {
    return PlanReader.readWithStudies(
        text(resource)
            .replaceFirst("\\{", Matcher.quoteReplacement("{\"studies\": " + studies + ",")));
  }

  /** A plan that asks for no studies. */
  static StudyPlan asked(Plan plan) {
    return new StudyPlan(plan, List.of());
  }

  static StaticResult with(Plan plan, Arrangement... arrangements) {
    return Statics.analyse(plan.toBuilder().arrangements(List.of(arrangements)).build());
  }

  /** A result whose first arrangement was given up; the solver is not meant to, so by force. */
  static StaticResult notSolved(Plan plan) {
    StaticResult result = Statics.analyse(plan);
    try {
      Constructor<NotSolved> given =
          NotSolved.class.getDeclaredConstructor(
              String.class, String.class, double.class, List.class);
      given.setAccessible(true);
      Constructor<StaticResult> whole =
          StaticResult.class.getDeclaredConstructor(Plan.class, List.class, List.class);
      whole.setAccessible(true);
      List<ArrangementResult> answers = new ArrayList<>(result.arrangements());
      answers.set(0, given.newInstance(answers.get(0).id(), "no luck", 0.25, List.of()));
      return whole.newInstance(plan, answers, result.cautions());
    } catch (ReflectiveOperationException e) {
      throw new LinkageError("another signature", e);
    }
  }
}
