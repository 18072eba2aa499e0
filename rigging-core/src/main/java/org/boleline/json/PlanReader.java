package org.boleline.json;

import static java.util.Objects.requireNonNull;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.function.Supplier;
import org.boleline.explain.PlanRefusedException;
import org.boleline.explain.Refusals;
import org.boleline.plan.Plan;
import org.boleline.study.PlannedRanges;
import org.boleline.study.StudyPlan;
import org.boleline.wood.SpeciesPack;

/**
 * Reads plan files of the format {@code rigging-plan/1}.
 *
 * <p>A plan is read whole or refused with every reason at once, each with its JSON pointer, what is
 * wanted there and what came. Nothing is guessed: unknown members, members that stand twice,
 * numbers where a quantity belongs and quantities of another kind are refused. At most 1 MiB of
 * UTF-8 and 16 levels are read; a byte order mark is passed over.
 */
public final class PlanReader {
  private PlanReader() {}

  /**
   * Reads a plan from text, with the species data of this library.
   *
   * @param text the JSON text, not null
   * @return the plan
   * @throws PlanRefusedException if the text is no plan that can be analysed: with all reasons
   */
  public static Plan read(String text) {
    return plan(text, SpeciesPack::standard);
  }

  /**
   * Reads a plan from text.
   *
   * @param text the JSON text, not null
   * @param species where names of species are looked up, not null
   * @return the plan
   * @throws PlanRefusedException if the text is no plan that can be analysed: with all reasons
   */
  public static Plan read(String text, SpeciesPack species) {
    requireNonNull(species, "species");
    return plan(text, () -> species);
  }

  /**
   * Reads a plan and the studies that its file asks for, with the species data of this library.
   *
   * @param text the JSON text, not null
   * @return the plan with its studies
   * @throws PlanRefusedException if the text is no plan that can be analysed: with all reasons
   */
  public static StudyPlan readWithStudies(String text) {
    return studyPlan(text, SpeciesPack::standard);
  }

  /**
   * Reads a plan and the studies that its file asks for, with the species data of this library.
   *
   * @param stream the stream, read to its end or just past 1 MiB and left open, not null
   * @return the plan with its studies
   * @throws IOException if the stream cannot be read
   * @throws PlanRefusedException if its text is no plan that can be analysed: with all reasons
   */
  public static StudyPlan readWithStudies(InputStream stream) throws IOException {
    return readWithStudies(text(stream));
  }

  private static Plan plan(String text, Supplier<SpeciesPack> species) {
    return studyPlan(text, species).plan();
  }

  private static StudyPlan studyPlan(String text, Supplier<SpeciesPack> species) {
    requireNonNull(text, "text");
    Refusals refusals = Refusals.none();
    Json document = JsonText.parse(text, refusals);
    if (document == null) {
      throw new PlanRefusedException(refusals.list());
    }
    PlanReading reading = new PlanReading(species);
    Plan plan = reading.plan(Members.of(document, refusals));
    refusals.throwIfAny();
    PlannedRanges.of(plan); // refuses what is wrong with them
    return new StudyPlan(plan, reading.studies());
  }

  /**
   * Reads a plan from a file, with the species data of this library.
   *
   * @param file the file, not null
   * @return the plan
   * @throws IOException if the file cannot be read
   * @throws PlanRefusedException if its text is no plan that can be analysed: with all reasons
   */
  public static Plan read(Path file) throws IOException {
    try (InputStream stream = Files.newInputStream(file)) {
      return read(stream);
    }
  }

  /**
   * Reads a plan from a file.
   *
   * @param file the file, not null
   * @param species where names of species are looked up, not null
   * @return the plan
   * @throws IOException if the file cannot be read
   * @throws PlanRefusedException if its text is no plan that can be analysed: with all reasons
   */
  public static Plan read(Path file, SpeciesPack species) throws IOException {
    try (InputStream stream = Files.newInputStream(file)) {
      return read(stream, species);
    }
  }

  /**
   * Reads a plan from a stream, with the species data of this library.
   *
   * @param stream the stream, read to its end or just past 1 MiB and left open, not null
   * @return the plan
   * @throws IOException if the stream cannot be read
   * @throws PlanRefusedException if its text is no plan that can be analysed: with all reasons
   */
  public static Plan read(InputStream stream) throws IOException {
    return plan(text(stream), SpeciesPack::standard);
  }

  /**
   * Reads a plan from a stream.
   *
   * @param stream the stream, read to its end or just past 1 MiB and left open, not null
   * @param species where names of species are looked up, not null
   * @return the plan
   * @throws IOException if the stream cannot be read
   * @throws PlanRefusedException if its text is no plan that can be analysed: with all reasons
   */
  public static Plan read(InputStream stream, SpeciesPack species) throws IOException {
    return read(text(stream), species);
  }

  private static String text(InputStream stream) throws IOException {
    return JsonText.decode(stream.readNBytes(JsonText.MOST_BYTES + 1));
  }
}
