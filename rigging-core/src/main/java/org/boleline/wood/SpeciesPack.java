package org.boleline.wood;

import static java.util.Objects.requireNonNull;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.boleline.explain.PlanRefusedException;
import org.boleline.explain.Refusal;
import org.boleline.explain.Refusal.Code;

/**
 * Species and what is known of their green wood: replaceable data, each figure with its source.
 *
 * <p>The form is text: the line {@code species-pack/1}, then three tables of comma-separated
 * values, each after its name in brackets and with a line of column names. Quantities are written
 * as in plan files, in any unit of the right kind. A figure without a source is refused. Empty
 * cells are not known; columns that a pack does not need may be left out. Lines that start with #
 * are comments.
 *
 * <pre>{@code
 * species-pack/1
 * [sources]
 * id,reading,title
 * own tests,read,"Pulling tests in the town park, 2024"
 * [spreads]
 * column,coefficient_of_variation,source
 * modulus,0.15,own tests
 * [species]
 * common_name,botanical_name,other_names,group,modulus,strength_source
 * park beech,Fagus sylvatica,beech of the park,hardwood,8.1 GPa,own tests
 * }</pre>
 *
 * <p>How a source was read is one of {@code read}, {@code derived}, {@code common practice}, {@code
 * from memory}, {@code stated}. Other names are separated by semicolons. The columns of figures are
 * those of {@link SpeciesProperty}.
 *
 * <p>Immutable and thread-safe; equality is exact, on the species.
 */
public final class SpeciesPack {
  /** Greatest length of a pack, in characters. */
  private static final int MOST_CHARACTERS = 4_000_000;

  /** Greatest number of species given in a message whose names hold the word not found. */
  private static final int MOST_SUGGESTIONS = 4;

  private static final class Standard {
    static final SpeciesPack PACK = resource("green-wood.csv");
  }

  private static final class European {
    static final SpeciesPack PACK = resource("green-wood-european-from-memory.csv");
  }

  private final List<Species> all;
  private final Map<String, List<Species>> byName;

  SpeciesPack(List<Species> all) {
    this.all = List.copyOf(all);
    Map<String, List<Species>> names = new LinkedHashMap<>();
    for (Species species : all) {
      Stream.concat(
              Stream.of(species.commonName(), species.botanicalName()),
              species.otherNames().stream())
          .map(SpeciesPack::key)
          .distinct()
          .forEach(key -> names.computeIfAbsent(key, k -> new ArrayList<>()).add(species));
    }
    names.replaceAll((name, species) -> List.copyOf(species));
    this.byName = Collections.unmodifiableMap(names);
  }

  /**
   * Returns the pack of the library: 113 species that grow in North America.
   *
   * <p>Strengths and moduli are those of small clear specimens (Wood Handbook, FPL-GTR-282, 2021,
   * Table 5-3b, green). Moistures and published green densities are there as far as known; some
   * moistures are from memory and say so.
   *
   * @return the pack
   */
  public static SpeciesPack standard() {
    return Standard.PACK;
  }

  /**
   * Returns a pack of 17 trees grown in Europe, every figure from memory: for orientation only.
   *
   * <p>Modulus of elasticity and compression at the elastic limit, of another kind of test than the
   * standard pack: do not mix the two. No densities: a plan states them.
   *
   * @return the pack
   */
  public static SpeciesPack europeanFromMemory() {
    return European.PACK;
  }

  /**
   * Reads a pack.
   *
   * @param text the pack in the form above, not null
   * @return the pack
   * @throws PlanRefusedException if the text is not a pack; holds all refusals, each with its line
   *     and column as its place, such as {@code /lines/12/modulus}
   */
  public static SpeciesPack parse(String text) {
    if (text.length() > MOST_CHARACTERS) {
      throw tooLarge();
    }
    return new SpeciesPack(SpeciesPackReader.read(text));
  }

  /**
   * Reads a pack.
   *
   * @param reader gives the pack in the form above; it is read to its end and not closed; not null
   * @return the pack
   * @throws IOException if the reader throws it
   * @throws PlanRefusedException if the text is not a pack; holds all refusals, each with its line
   *     and column as its place, such as {@code /lines/12/modulus}
   */
  public static SpeciesPack parse(Reader reader) throws IOException {
    StringBuilder text = new StringBuilder();
    char[] buffer = new char[8192];
    for (int count = reader.read(buffer); count >= 0; count = reader.read(buffer)) {
      text.append(buffer, 0, count);
      if (text.length() > MOST_CHARACTERS) {
        throw tooLarge();
      }
    }
    return parse(text.toString());
  }

  private static PlanRefusedException tooLarge() {
    return new PlanRefusedException(
        List.of(
            new Refusal(Code.TOO_LARGE, "", "at most " + MOST_CHARACTERS + " characters", "more")));
  }

  private static SpeciesPack resource(String name) {
    try (InputStream stream =
            requireNonNull(SpeciesPack.class.getResourceAsStream(name), "resource " + name);
        Reader reader = new InputStreamReader(stream, StandardCharsets.UTF_8)) {
      return parse(reader);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** Lower case without regard to country, one blank between words. */
  static String key(String name) {
    return name.strip().replaceAll("\\s+", " ").toLowerCase(Locale.ROOT);
  }

  /**
   * Returns all species.
   *
   * @return the species, in the order of the pack
   */
  public List<Species> all() {
    return all;
  }

  /**
   * Returns the common names of all species.
   *
   * @return the names, in the order of the pack
   */
  public List<String> names() {
    return all.stream().map(Species::commonName).toList();
  }

  /**
   * Returns a species by its name.
   *
   * @param name a common name, another name of the pack or a botanical name, in upper or lower
   *     case, not null
   * @return the species
   * @throws PlanRefusedException if the pack has none of that name, or several
   */
  public Species species(String name) {
    List<Species> found = named(name);
    if (found.size() == 1) {
      return found.get(0);
    }
    String quoted = "\"" + name + "\"";
    throw new PlanRefusedException(
        List.of(
            found.isEmpty()
                ? new Refusal(
                    Code.UNKNOWN_REFERENCE,
                    "",
                    "the name of a species in the data" + suggestions(name),
                    quoted)
                : new Refusal(
                    Code.CONFLICT,
                    "",
                    "one of " + commonNames(found),
                    quoted + ", which is several")));
  }

  /**
   * Looks for a species by its name.
   *
   * @param name a common name, another name of the pack or a botanical name, in upper or lower
   *     case, not null
   * @return the species; empty if the pack has none of that name
   * @throws PlanRefusedException if the pack has several of that name
   */
  public Optional<Species> find(String name) {
    return named(name).isEmpty() ? Optional.empty() : Optional.of(species(name));
  }

  private List<Species> named(String name) {
    return byName.getOrDefault(key(name), List.of());
  }

  private String suggestions(String name) {
    String words = " " + key(name) + " ";
    List<Species> near =
        all.stream()
            .filter(species -> (" " + key(species.commonName()) + " ").contains(words))
            .limit(MOST_SUGGESTIONS)
            .toList();
    return near.isEmpty() ? "" : ", such as " + commonNames(near);
  }

  private static String commonNames(List<Species> species) {
    return species.stream().map(Species::commonName).collect(Collectors.joining(", "));
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof SpeciesPack p && all.equals(p.all);
  }

  @Override
  public int hashCode() {
    return all.hashCode();
  }

  @Override
  public String toString() {
    return all.size() + " species";
  }
}
