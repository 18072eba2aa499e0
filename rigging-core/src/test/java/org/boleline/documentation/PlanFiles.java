package org.boleline.documentation;

import static org.boleline.documentation.FirstPlan.line;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Locale;
import org.boleline.explain.PlanRefusedException;
import org.boleline.explain.Refusal;
import org.boleline.json.PlanReader;
import org.boleline.plan.Plan;
import org.boleline.statics.ArrangementResult;
import org.boleline.statics.Reaction;
import org.boleline.statics.Solution;
import org.boleline.statics.Statics;

/** The code of README.md, docs/learn/02-plan-from-a-file.md and docs/how-to/read-a-plan.md. */
final class PlanFiles {
  private PlanFiles() {}

  static Path hornbeam() {
    return Docs.file(
        "rigging-examples/compare-arrangements/src/main/resources/org/boleline/examples/compare/"
            + "hornbeam.json");
  }

  static Path firstPlan() {
    return Docs.file("docs/learn/first-plan.json");
  }

  static String readme() {
    PrintStream console = System.out;
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (PrintStream out = new PrintStream(bytes, false, StandardCharsets.UTF_8)) {
      System.setOut(out);
      compare(hornbeam());
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    } finally {
      System.setOut(console);
    }
    return bytes.toString(StandardCharsets.UTF_8);
  }

  private static void compare(Path file) throws IOException {
    // region readme
    Plan plan = PlanReader.read(file);
    for (ArrangementResult result : Statics.analyse(plan).arrangements()) {
      System.out.println(result.id() + ": " + result.outcome().text());
      if (result instanceof Solution solution) {
        double tail = solution.tailTension().getValue().doubleValue();
        Reaction base = solution.stems().get(0).base();
        double moment = base.momentMagnitude().getValue().doubleValue();
        System.out.printf(Locale.ROOT, "  tail %.0f N, base moment %.0f N.m%n", tail, moment);
      }
      result.cautions().forEach(caution -> System.out.println("  caution " + caution.code()));
    }
    // endregion
  }

  static String refused(String text) {
    StringBuilder out = new StringBuilder();
    // region refused
    try {
      Plan plan = PlanReader.read(text);
      out.append(line("read: %s", plan.title()));
    } catch (PlanRefusedException e) {
      for (Refusal refusal : e.refusals()) {
        out.append(line("%s at %s", refusal.code(), refusal.place()));
        out.append(line("  wants %s", refusal.wants()));
        out.append(line("  got   %s", refusal.got()));
      }
    }
    // endregion
    return out.toString();
  }

  static String refusedFirstPlan() {
    String text =
        Docs.read(firstPlan())
            .replace("\"outer\": \"33 cm\"", "\"outer\": \"33 kg\"")
            .replace("\"at\": \"4.5 m\"", "\"at\": \"45 m\"")
            .replace("\"piece\"", "\"peice\"");
    return refused(text);
  }
}
