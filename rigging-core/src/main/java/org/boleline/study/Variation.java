package org.boleline.study;

import java.util.Optional;
import org.boleline.explain.Source;
import org.boleline.explain.Source.Reading;
import org.boleline.wood.SpeciesPack;
import org.boleline.wood.SpeciesProperty;
import org.jspecify.annotations.Nullable;

/**
 * Coefficients of variation that were read in a source: standard deviation over mean.
 *
 * <p>Those of wood are of small clear specimens of one species; trees with knots and decay differ
 * by more. None is taken unless a plan asks for it by name.
 */
public enum Variation {
  /** Modulus of elasticity of clear wood. */
  MODULUS_OF_ELASTICITY(SpeciesProperty.APPARENT_MODULUS, 0),
  /** Modulus of rupture of clear wood. */
  BENDING_STRENGTH(SpeciesProperty.MODULUS_OF_RUPTURE, 0),
  /** Strength of clear wood in compression along the grain. */
  COMPRESSION_STRENGTH(SpeciesProperty.CRUSHING_STRENGTH, 0),
  /** Basic specific gravity of clear wood: that of green density without the spread of moisture. */
  BASIC_DENSITY(SpeciesProperty.BASIC_SPECIFIC_GRAVITY, 0),
  /** Strength of whole poles at the ground line. */
  POLE_STRENGTH(null, 0.20);

  private static final Source CLEAR_WOOD =
      new Source(
          "FPL T5-6",
          "Forest Products Laboratory, Wood Handbook, Table 5-6; ASTM D2555 carries the same ratios",
          Reading.READ);
  private static final Source POLES =
      new Source(
          "FPL-GTR-158",
          "scatter of the strength of poles at the ground line, ANSI O5.1 and FPL-GTR-158, in an"
              + " abstract",
          Reading.READ);

  private final @Nullable SpeciesProperty property;
  private final double ratio;

  Variation(@Nullable SpeciesProperty property, double ratio) {
    this.property = property;
    this.ratio = ratio;
  }

  /**
   * Returns the coefficient.
   *
   * @return standard deviation over mean
   */
  public double ratio() {
    SpeciesProperty wanted = property;
    return wanted == null
        ? ratio
        : SpeciesPack.standard().all().stream()
            .flatMap(species -> species.spreadRatio(wanted).stream().boxed())
            .findFirst()
            .orElseThrow();
  }

  /**
   * Returns where it was read.
   *
   * @return the source
   */
  public Source source() {
    return property == null ? POLES : CLEAR_WOOD;
  }

  /**
   * Finds the coefficient of clear wood for an input.
   *
   * @param input the input, not null
   * @return the coefficient; empty if none was read for such an input
   */
  public static Optional<Variation> ofClearWood(Input input) {
    String pointer = input.pointer();
    return Optional.ofNullable(
        switch (pointer.substring(pointer.lastIndexOf('/') + 1)) {
          case "modulusOfElasticity" -> MODULUS_OF_ELASTICITY;
          case "bendingStrength" -> BENDING_STRENGTH;
          case "compressionStrength" -> COMPRESSION_STRENGTH;
          case "density" -> BASIC_DENSITY;
          default -> null;
        });
  }
}
