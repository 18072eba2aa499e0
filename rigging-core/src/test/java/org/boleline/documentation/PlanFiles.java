package org.boleline.documentation;

import static java.util.Locale.ROOT;
import static org.boleline.units.Amounts.metres;

import java.io.IOException;
import java.io.PrintStream;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.Locale;
import org.boleline.drop.CatchLoads;
import org.boleline.drop.DropAnswer;
import org.boleline.drop.DropFound;
import org.boleline.drop.Drops;
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

  static Path spruce() {
    return hornbeam().resolveSibling("spruce.json");
  }

  static Path firstPlan() {
    return Docs.file("docs/learn/first-plan.json");
  }

  static void readme(PrintStream out) {
    PrintStream console = System.out;
    try {
      System.setOut(out);
      compare(hornbeam());
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    } finally {
      System.setOut(console);
    }
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

  static void catches(PrintStream out) {
    try {
      catches(PlanReader.read(spruce()), out);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static void catches(Plan plan, PrintStream out) {
    // region catches
    for (DropAnswer answer : Drops.analyse(Statics.analyse(plan)).answers()) {
      if (answer instanceof DropFound drop) {
        double locked = drop.loads().loadLeg().getValue().doubleValue();
        out.printf(ROOT, "%-17s  locked %4.0f N", drop.id(), locked);
        for (int metres = 1; metres <= 3; metres++) {
          CatchLoads loads = drop.running(metres(metres)).orElseThrow().loads();
          out.printf(ROOT, ", run %d m %4.0f N", metres, loads.loadLeg().getValue().doubleValue());
        }
        out.printf(ROOT, "%n");
      }
    }
    // endregion
  }

  static void refused(String text, PrintStream out) {
    // region refused
    try {
      Plan plan = PlanReader.read(text);
      out.printf(ROOT, "read: %s%n", plan.title());
    } catch (PlanRefusedException e) {
      for (Refusal refusal : e.refusals()) {
        out.printf(ROOT, "%s at %s%n", refusal.code(), refusal.place());
        out.printf(ROOT, "  wants %s%n", refusal.wants());
        out.printf(ROOT, "  got   %s%n", refusal.got());
      }
    }
    // endregion
  }

  static void refusedFirstPlan(PrintStream out) {
    String text =
        Docs.read(firstPlan())
            .replace("\"outer\": \"33 cm\"", "\"outer\": \"33 kg\"")
            .replace("\"at\": \"4.5 m\"", "\"at\": \"45 m\"")
            .replace("\"piece\"", "\"peice\"");
    refused(text, out);
  }
}
