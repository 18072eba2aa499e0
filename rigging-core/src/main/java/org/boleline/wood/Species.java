package org.boleline.wood;

import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import javax.measure.Quantity;
import javax.measure.quantity.Pressure;
import org.boleline.explain.Datum;
import org.boleline.explain.Source;
import org.boleline.units.Density;
import org.boleline.units.Kind;
import org.boleline.units.QuantityText;
import org.boleline.units.Si;
import org.jspecify.annotations.Nullable;

/**
 * What a pack knows of the green wood of a species: each figure with its source and its spread.
 *
 * <p>What is not known is empty; nothing is guessed. Both moduli of elasticity are kept: the one of
 * the table, which has the shear of the test beam in it, and the one for bending without shear.
 *
 * <p>Immutable and thread-safe; equality is exact, on names, figures and sources.
 *
 * <pre>{@code
 * Species oak = SpeciesPack.standard().species("Quercus alba");
 * oak.apparentModulus(); // 8.62 GPa, as tabulated
 * oak.modulusOfElasticity(); // 9.48 GPa, for bending without shear
 * oak.greenDensity().orElseThrow(); // 984 to 1068 kg/m3
 * oak.datum(SpeciesProperty.CRUSHING_STRENGTH); // with source and coefficient of variation
 * }</pre>
 */
public final class Species {
  /** A figure: SI value, the text it was read from, source, and what is known of its spread. */
  record Entry(double value, String text, Source source, @Nullable Spread spread) {}

  /** Coefficient of variation of a property and its source. */
  record Spread(double coefficient, Source source) {
    String words() {
      return "coefficient of variation "
          + QuantityText.number(coefficient)
          + " ("
          + source.id()
          + ")";
    }
  }

  private final String commonName;
  private final String botanicalName;
  private final List<String> otherNames;
  private final WoodGroup group;
  private final Map<SpeciesProperty, Entry> entries;

  Species(
      String commonName,
      String botanicalName,
      List<String> otherNames,
      WoodGroup group,
      Map<SpeciesProperty, Entry> entries) {
    this.commonName = commonName;
    this.botanicalName = botanicalName;
    this.otherNames = List.copyOf(otherNames);
    this.group = group;
    Map<SpeciesProperty, Entry> copy = new EnumMap<>(SpeciesProperty.class);
    copy.putAll(entries);
    this.entries = Collections.unmodifiableMap(copy);
  }

  @Nullable Entry entry(SpeciesProperty property) {
    return entries.get(property);
  }

  /**
   * Returns the common name.
   *
   * @return the name, such as {@code white oak}
   */
  public String commonName() {
    return commonName;
  }

  /**
   * Returns the botanical name.
   *
   * @return the name, such as {@code Quercus alba}
   */
  public String botanicalName() {
    return botanicalName;
  }

  /**
   * Returns other common names that the pack finds the species by.
   *
   * @return the names; may be empty
   */
  public List<String> otherNames() {
    return otherNames;
  }

  /**
   * Tells whether the tree is broadleaved or a conifer.
   *
   * @return the group
   */
  public WoodGroup group() {
    return group;
  }

  /**
   * Returns the basic density: oven-dry mass over green volume.
   *
   * <p>It is the basic specific gravity of the tables times 1000 kg/m3.
   *
   * @return the density in kilograms per cubic metre; empty if not known
   */
  public Optional<Quantity<Density>> basicDensity() {
    Entry entry = entry(SpeciesProperty.BASIC_SPECIFIC_GRAVITY);
    return entry == null
        ? Optional.empty()
        : Optional.of(Si.of(1000 * entry.value(), Kind.DENSITY));
  }

  /**
   * Returns the modulus of elasticity as tabulated, with the shear of the test beam in it.
   *
   * <p>Too low for calculations that leave shear out: those take {@link #modulusOfElasticity()}.
   *
   * @return the modulus in pascals; empty if not known
   */
  public Optional<Quantity<Pressure>> apparentModulus() {
    return pressure(SpeciesProperty.APPARENT_MODULUS);
  }

  /**
   * Returns the modulus of elasticity for bending without shear.
   *
   * @equation E = 1.10 * E_a (WOO-2), where the pack has the apparent one
   * @validity small clear beams loaded at the centre, span 14 times the depth
   * @source Wood Handbook, FPL-GTR-282, 2021, Table 5-3b, footnote
   * @accuracy rounding only; single trees spread by the coefficient of variation
   * @return the modulus in pascals; empty if not known
   */
  public Optional<Quantity<Pressure>> modulusOfElasticity() {
    Entry entry = modulusEntry();
    return entry == null ? Optional.empty() : Optional.of(Si.of(entry.value(), Kind.PRESSURE));
  }

  /**
   * Returns the modulus of rupture, the bending strength of the tables.
   *
   * @return the stress in pascals; empty if not known
   */
  public Optional<Quantity<Pressure>> modulusOfRupture() {
    return pressure(SpeciesProperty.MODULUS_OF_RUPTURE);
  }

  /**
   * Returns the greatest compression along the grain.
   *
   * @return the stress in pascals; empty if not known
   */
  public Optional<Quantity<Pressure>> crushingStrength() {
    return pressure(SpeciesProperty.CRUSHING_STRENGTH);
  }

  /**
   * Returns the compression along the grain at the elastic limit.
   *
   * @return the stress in pascals; empty if not known
   */
  public Optional<Quantity<Pressure>> compressionElasticLimit() {
    return pressure(SpeciesProperty.COMPRESSION_ELASTIC_LIMIT);
  }

  /**
   * Returns the compression across the grain.
   *
   * @return the stress in pascals; empty if not known
   */
  public Optional<Quantity<Pressure>> compressionAcross() {
    return pressure(SpeciesProperty.COMPRESSION_ACROSS);
  }

  /**
   * Returns the shear strength along the grain.
   *
   * @return the stress in pascals; empty if not known
   */
  public Optional<Quantity<Pressure>> shearAlong() {
    return pressure(SpeciesProperty.SHEAR_ALONG);
  }

  /**
   * Returns the moisture of green heartwood.
   *
   * @return percent of the oven-dry mass; empty if not known
   */
  public OptionalDouble heartwoodMoisturePercent() {
    return number(SpeciesProperty.HEARTWOOD_MOISTURE);
  }

  /**
   * Returns the moisture of green sapwood.
   *
   * @return percent of the oven-dry mass; empty if not known
   */
  public OptionalDouble sapwoodMoisturePercent() {
    return number(SpeciesProperty.SAPWOOD_MOISTURE);
  }

  /**
   * Returns the green density as an interval.
   *
   * @return the interval with the figures that make it; empty if neither moisture nor a published
   *     green density is known: then a plan has to state the density
   */
  public Optional<GreenDensity> greenDensity() {
    return Optional.ofNullable(GreenDensity.from(this));
  }

  /**
   * Returns the coefficient of variation of a property: standard deviation over mean, of clear
   * wood.
   *
   * @param property which property, not null
   * @return the ratio; empty if the property or its spread is not known
   */
  public OptionalDouble spreadRatio(SpeciesProperty property) {
    Entry entry = entry(property);
    return entry == null || entry.spread() == null
        ? OptionalDouble.empty()
        : OptionalDouble.of(entry.spread().coefficient());
  }

  /**
   * Returns a figure as the pack states it, with its source and its spread.
   *
   * @param property which property, not null
   * @return the figure; empty if not known
   */
  public Optional<Datum> datum(SpeciesProperty property) {
    Entry entry = entry(property);
    return entry == null
        ? Optional.empty()
        : Optional.of(datum(property.column(), entry.text(), entry));
  }

  /**
   * Returns all figures as the pack states them.
   *
   * @return the figures, in the order of the properties
   */
  public List<Datum> data() {
    List<Datum> data = new ArrayList<>();
    entries.forEach((property, entry) -> data.add(datum(property.column(), entry.text(), entry)));
    return List.copyOf(data);
  }

  /** The modulus for bending without shear; null if neither modulus is known. */
  @Nullable Entry modulusEntry() {
    Entry stated = entry(SpeciesProperty.MODULUS);
    Entry apparent = entry(SpeciesProperty.APPARENT_MODULUS);
    if (stated != null || apparent == null) {
      return stated;
    }
    Source table = apparent.source();
    Source source =
        new Source(table.id(), table.title() + "; times 1.10 for shear (WOO-2)", table.reading());
    double value = WoodFormulas.SHEAR_FREE_MODULUS.value(apparent.value());
    return new Entry(value, Bounds.text(value, Kind.PRESSURE), source, apparent.spread());
  }

  /** What stands for the strength in compression: the crushing strength, else the elastic limit. */
  @Nullable Entry compressionEntry() {
    Entry crushing = entry(SpeciesProperty.CRUSHING_STRENGTH);
    Entry limit = entry(SpeciesProperty.COMPRESSION_ELASTIC_LIMIT);
    if (crushing != null || limit == null) {
      return crushing;
    }
    Source table = limit.source();
    Source source =
        new Source(
            table.id(),
            table.title() + "; the elastic limit stands for the strength",
            table.reading());
    return new Entry(limit.value(), limit.text(), source, limit.spread());
  }

  static Datum datum(String name, String value, Entry entry) {
    Spread spread = entry.spread();
    return new Datum(name, value, entry.source(), spread == null ? null : spread.words());
  }

  private Optional<Quantity<Pressure>> pressure(SpeciesProperty property) {
    Entry entry = entry(property);
    return entry == null ? Optional.empty() : Optional.of(Si.of(entry.value(), Kind.PRESSURE));
  }

  private OptionalDouble number(SpeciesProperty property) {
    Entry entry = entry(property);
    return entry == null ? OptionalDouble.empty() : OptionalDouble.of(entry.value());
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof Species s
        && commonName.equals(s.commonName)
        && botanicalName.equals(s.botanicalName)
        && otherNames.equals(s.otherNames)
        && group == s.group
        && entries.equals(s.entries);
  }

  @Override
  public int hashCode() {
    return Objects.hash(commonName, botanicalName);
  }

  @Override
  public String toString() {
    return commonName + " (" + botanicalName + ")";
  }
}
