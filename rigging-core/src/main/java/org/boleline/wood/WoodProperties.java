package org.boleline.wood;

import static java.util.Objects.requireNonNull;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.Pressure;
import org.boleline.explain.Datum;
import org.boleline.explain.PlanRefusedException;
import org.boleline.explain.Refusal;
import org.boleline.explain.Refusal.Code;
import org.boleline.units.Density;
import org.boleline.units.Kind;
import org.boleline.units.QuantityText;
import org.boleline.units.Si;
import org.boleline.wood.Species.Entry;
import org.jspecify.annotations.Nullable;

/**
 * The wood of a stem, for its mechanics: stiffness, density and, if known, strength.
 *
 * <p>Stated, taken from a species, or both: what is stated wins. What was not stated is listed in
 * {@link #taken()}, with its source. The modulus of elasticity is the one for bending without
 * shear; a species' tabulated one is corrected for that.
 *
 * <p>Immutable and thread-safe; equality is exact, on the SI values and on what was taken.
 *
 * <pre>{@code
 * WoodProperties stated = WoodProperties.of(gigapascals(8), kilogramsPerCubicMetre(990));
 * Species oak = SpeciesPack.standard().species("white oak");
 * WoodProperties both =
 *     WoodProperties.builder().species(oak).density(kilogramsPerCubicMetre(1050)).build();
 * both.taken(); // moduli and strengths, with their sources; not the density
 * }</pre>
 */
public final class WoodProperties {
  private final @Nullable Species species;
  private final double modulusOfElasticity;
  private final double shearModulus;
  private final double density;
  private final @Nullable Double bendingStrength;
  private final @Nullable Double compressionStrength;
  private final List<Datum> taken;

  private WoodProperties(
      @Nullable Species species,
      double modulusOfElasticity,
      double shearModulus,
      double density,
      @Nullable Double bendingStrength,
      @Nullable Double compressionStrength,
      List<Datum> taken) {
    this.species = species;
    this.modulusOfElasticity = modulusOfElasticity;
    this.shearModulus = shearModulus;
    this.density = density;
    this.bendingStrength = bendingStrength;
    this.compressionStrength = compressionStrength;
    this.taken = List.copyOf(taken);
  }

  /**
   * Obtains wood of stated stiffness and density, of unknown strength.
   *
   * @param modulusOfElasticity modulus for bending without shear, above zero, at most 10 TPa, not
   *     null
   * @param density density of the green wood, above zero, at most 100 000 kg/m3, not null
   * @return the wood; its shear modulus is the default
   * @throws IllegalArgumentException if a value is outside its range
   */
  public static WoodProperties of(
      Quantity<Pressure> modulusOfElasticity, Quantity<Density> density) {
    return builder().modulusOfElasticity(modulusOfElasticity).density(density).build();
  }

  /**
   * Obtains the wood of a species.
   *
   * @param species the species, not null
   * @return the wood, all taken from data
   * @throws PlanRefusedException if the data have no modulus of elasticity or no green density of
   *     the species: then state it, by {@link #builder()}
   */
  public static WoodProperties from(Species species) {
    return builder().species(species).build();
  }

  /**
   * Obtains a builder that knows nothing yet.
   *
   * @return the builder
   */
  public static Builder builder() {
    return new Builder();
  }

  /**
   * Returns the species that values were taken from.
   *
   * @return the species; empty if none was named or everything it could give was stated
   */
  public Optional<Species> species() {
    return Optional.ofNullable(species);
  }

  /**
   * Returns the modulus of elasticity along the grain, for bending without shear.
   *
   * @return the modulus in pascals, above zero
   */
  public Quantity<Pressure> modulusOfElasticity() {
    return Si.of(modulusOfElasticity, Kind.PRESSURE);
  }

  /**
   * Returns the shear modulus along the grain.
   *
   * @equation G = E / 16 (WOO-3), if it was not stated
   * @validity wood along the grain, as an order of size
   * @source common practice, no source
   * @accuracy an order of size
   * @return the modulus in pascals, above zero
   */
  public Quantity<Pressure> shearModulus() {
    return Si.of(shearModulus, Kind.PRESSURE);
  }

  /**
   * Returns the density of the green wood.
   *
   * @return the density in kilograms per cubic metre, above zero
   */
  public Quantity<Density> density() {
    return Si.of(density, Kind.DENSITY);
  }

  /**
   * Returns the bending strength (modulus of rupture).
   *
   * @return the stress in pascals, above zero; empty if not known
   */
  public Optional<Quantity<Pressure>> bendingStrength() {
    return optional(bendingStrength);
  }

  /**
   * Returns the strength in compression along the grain.
   *
   * @return the stress in pascals, above zero; empty if not known
   */
  public Optional<Quantity<Pressure>> compressionStrength() {
    return optional(compressionStrength);
  }

  private static Optional<Quantity<Pressure>> optional(@Nullable Double value) {
    return value == null ? Optional.empty() : Optional.of(Si.of(value, Kind.PRESSURE));
  }

  /**
   * Returns what was not stated but taken: from a species, or as a default.
   *
   * <p>Names are {@code modulusOfElasticity}, {@code shearModulus}, {@code density}, {@code
   * bendingStrength}, {@code compressionStrength}.
   *
   * @return the data with their sources, in that order; empty if all was stated
   */
  public List<Datum> taken() {
    return taken;
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof WoodProperties w
        && Objects.equals(species, w.species)
        && Double.compare(modulusOfElasticity, w.modulusOfElasticity) == 0
        && Double.compare(shearModulus, w.shearModulus) == 0
        && Double.compare(density, w.density) == 0
        && Objects.equals(bendingStrength, w.bendingStrength)
        && Objects.equals(compressionStrength, w.compressionStrength)
        && taken.equals(w.taken);
  }

  @Override
  public int hashCode() {
    return Objects.hash(
        species,
        modulusOfElasticity,
        shearModulus,
        density,
        bendingStrength,
        compressionStrength,
        taken);
  }

  @Override
  public String toString() {
    return "E "
        + Bounds.text(modulusOfElasticity, Kind.PRESSURE)
        + ", G "
        + Bounds.text(shearModulus, Kind.PRESSURE)
        + ", "
        + Bounds.text(density, Kind.DENSITY);
  }

  /** Gathers stated values and a species; belongs to one thread. */
  public static final class Builder {
    private @Nullable Species species;
    private @Nullable Double modulusOfElasticity;
    private @Nullable Double shearModulus;
    private @Nullable Double density;
    private @Nullable Double bendingStrength;
    private @Nullable Double compressionStrength;

    private Builder() {}

    /**
     * Names the species that what is not stated is taken from.
     *
     * @param newSpecies the species, not null
     * @return this builder
     */
    public Builder species(Species newSpecies) {
      this.species = requireNonNull(newSpecies, "species");
      return this;
    }

    /**
     * States the modulus of elasticity for bending without shear.
     *
     * @param newModulus the modulus, above zero, at most 10 TPa, not null
     * @return this builder
     * @throws IllegalArgumentException if it is outside its range
     */
    public Builder modulusOfElasticity(Quantity<Pressure> newModulus) {
      this.modulusOfElasticity = stress(newModulus, "modulusOfElasticity");
      return this;
    }

    /**
     * States the shear modulus along the grain.
     *
     * @param newModulus the modulus, above zero, at most 10 TPa, not null
     * @return this builder
     * @throws IllegalArgumentException if it is outside its range
     */
    public Builder shearModulus(Quantity<Pressure> newModulus) {
      this.shearModulus = stress(newModulus, "shearModulus");
      return this;
    }

    /**
     * States the density of the green wood.
     *
     * @param newDensity the density, above zero, at most 100 000 kg/m3, not null
     * @return this builder
     * @throws IllegalArgumentException if it is outside its range
     */
    public Builder density(Quantity<Density> newDensity) {
      this.density = Bounds.aboveZero(newDensity, Kind.DENSITY, Bounds.DENSITY, "density");
      return this;
    }

    /**
     * States the bending strength.
     *
     * @param newStrength the stress, above zero, at most 10 TPa, not null
     * @return this builder
     * @throws IllegalArgumentException if it is outside its range
     */
    public Builder bendingStrength(Quantity<Pressure> newStrength) {
      this.bendingStrength = stress(newStrength, "bendingStrength");
      return this;
    }

    /**
     * States the strength in compression along the grain.
     *
     * @param newStrength the stress, above zero, at most 10 TPa, not null
     * @return this builder
     * @throws IllegalArgumentException if it is outside its range
     */
    public Builder compressionStrength(Quantity<Pressure> newStrength) {
      this.compressionStrength = stress(newStrength, "compressionStrength");
      return this;
    }

    private static double stress(Quantity<Pressure> quantity, String name) {
      return Bounds.aboveZero(quantity, Kind.PRESSURE, Bounds.STRESS, name);
    }

    /**
     * Makes the wood.
     *
     * @return the wood
     * @throws PlanRefusedException if modulus of elasticity or density is neither stated nor known
     *     of the species; holds all refusals
     */
    public WoodProperties build() {
      List<Datum> taken = new ArrayList<>();
      List<Refusal> refusals = new ArrayList<>();
      double e = modulus(taken, refusals);
      double g = shear(e, taken);
      double rho = density(taken, refusals);
      if (!refusals.isEmpty()) {
        throw new PlanRefusedException(refusals);
      }
      @Nullable Entry rupture =
          species == null ? null : species.entry(SpeciesProperty.MODULUS_OF_RUPTURE);
      @Nullable Entry compression = species == null ? null : species.compressionEntry();
      @Nullable Double bending = strength(bendingStrength, rupture, "bendingStrength", taken);
      @Nullable Double crushing =
          strength(compressionStrength, compression, "compressionStrength", taken);
      boolean tookFromSpecies =
          taken.stream().anyMatch(datum -> !datum.name().equals("shearModulus"));
      return new WoodProperties(
          tookFromSpecies ? species : null, e, g, rho, bending, crushing, taken);
    }

    private double modulus(List<Datum> taken, List<Refusal> refusals) {
      if (modulusOfElasticity != null) {
        return modulusOfElasticity;
      }
      @Nullable Entry entry = species == null ? null : species.modulusEntry();
      if (entry == null) {
        refusals.add(missing("modulusOfElasticity", Kind.PRESSURE));
        return Double.NaN;
      }
      taken.add(datum("modulusOfElasticity", entry));
      return entry.value();
    }

    private double shear(double e, List<Datum> taken) {
      if (shearModulus != null) {
        return shearModulus;
      }
      if (Double.isNaN(e)) {
        return Double.NaN;
      }
      double g = WoodFormulas.SHEAR_MODULUS_DEFAULT.value(e);
      taken.add(
          new Datum(
              "shearModulus",
              Bounds.text(g, Kind.PRESSURE),
              WoodFormulas.SHEAR_MODULUS_DEFAULT.source(),
              null));
      return g;
    }

    private double density(List<Datum> taken, List<Refusal> refusals) {
      if (density != null) {
        return density;
      }
      @Nullable GreenDensity green = species == null ? null : species.greenDensity().orElse(null);
      if (green == null) {
        refusals.add(missing("density", Kind.DENSITY));
        return Double.NaN;
      }
      taken.add(green.datum());
      return Si.value(green.middle(), Kind.DENSITY, "density");
    }

    private static @Nullable Double strength(
        @Nullable Double stated, @Nullable Entry entry, String name, List<Datum> taken) {
      if (stated != null || entry == null) {
        return stated;
      }
      taken.add(datum(name, entry));
      return entry.value();
    }

    private static Datum datum(String name, Entry entry) {
      return Species.datum(name, Bounds.text(entry.value(), Kind.PRESSURE), entry);
    }

    private Refusal missing(String member, Kind<?> kind) {
      String wants = QuantityText.wants(kind);
      return new Refusal(
          Code.MISSING,
          "/" + member,
          species == null ? wants : wants + ", since the data have none of " + species,
          "nothing");
    }
  }
}
