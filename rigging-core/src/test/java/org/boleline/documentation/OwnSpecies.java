package org.boleline.documentation;

import static java.util.Locale.ROOT;
import static org.boleline.units.Amounts.kilogramsPerCubicMetre;
import static org.boleline.units.Amounts.megapascals;

import java.io.IOException;
import java.io.PrintStream;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import org.boleline.explain.Datum;
import org.boleline.explain.PlanRefusedException;
import org.boleline.explain.Refusal;
import org.boleline.json.PlanReader;
import org.boleline.plan.Plan;
import org.boleline.wood.Species;
import org.boleline.wood.SpeciesPack;
import org.boleline.wood.WoodProperties;

/** The code of docs/how-to/add-or-replace-species-data.md. */
final class OwnSpecies {
  private OwnSpecies() {}

  static Path file() {
    return Docs.file("rigging-core/src/test/resources/documentation/garden-pack.csv");
  }

  static SpeciesPack pack() {
    try {
      return read(file());
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static SpeciesPack read(Path file) throws IOException {
    // region read
    SpeciesPack garden;
    try (Reader reader = Files.newBufferedReader(file)) {
      garden = SpeciesPack.parse(reader);
    }
    // endregion
    return garden;
  }

  static void wood(PrintStream out) {
    SpeciesPack garden = pack();
    // region wood
    Species hornbeam = garden.species("Carpinus betulus");
    WoodProperties wood = WoodProperties.from(hornbeam);
    for (Datum datum : wood.taken()) {
      String spread = datum.spread() == null ? "" : "; " + datum.spread();
      out.printf(ROOT, "%s = %s%n", datum.name(), datum.value());
      out.printf(ROOT, "  %s%s%n", datum.source().id(), spread);
    }
    // endregion
  }

  static WoodProperties stated() {
    // region stated
    Species oak = SpeciesPack.standard().species("white oak");
    WoodProperties wood =
        WoodProperties.builder()
            .species(oak)
            .density(kilogramsPerCubicMetre(1050)) // weighed: wins over the data
            .compressionStrength(megapascals(20)) // stated: wins over the data
            .build();
    // endregion
    return wood;
  }

  static Optional<Species> either(String name) {
    SpeciesPack garden = pack();
    // region either
    Optional<Species> species = garden.find(name).or(() -> SpeciesPack.standard().find(name));
    // endregion
    return species;
  }

  static Plan plan(String text) {
    SpeciesPack garden = pack();
    // region plan
    Plan plan = PlanReader.read(text, garden);
    // endregion
    return plan;
  }

  static void refused(PrintStream out) {
    String text = Docs.read(file()).replace("8.0 GPa", "8.0").replace("scales\n", "scale\n");
    try {
      SpeciesPack.parse(text);
    } catch (PlanRefusedException e) {
      for (Refusal refusal : e.refusals()) {
        out.println(refusal.sentence());
      }
    }
  }
}
