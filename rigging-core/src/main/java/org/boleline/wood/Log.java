package org.boleline.wood;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.Acceleration;
import javax.measure.quantity.Force;
import javax.measure.quantity.Length;
import javax.measure.quantity.Mass;
import javax.measure.quantity.Volume;
import org.boleline.explain.Datum;
import org.boleline.explain.Source;
import org.boleline.explain.Source.Reading;
import org.boleline.explain.Step;
import org.boleline.units.Density;
import org.boleline.units.Kind;
import org.boleline.units.QuantityText;
import org.boleline.units.Si;
import org.jspecify.annotations.Nullable;

/**
 * A round log that tapers evenly, of one density: volume, mass, weight and balance point.
 *
 * <p>Bark, branches and leaves are not in it. Places along it are measured from the large end.
 *
 * <p>Immutable and thread-safe; equality is exact, on the SI measures and on what was taken from
 * data.
 *
 * <pre>{@code
 * Log log = Log.of(metres(2), centimetres(45), centimetres(40), kilogramsPerCubicMetre(990));
 * log.mass(); // 281 kg, by cone frustum
 * log.balancePoint(); // 0.961 m from the large end
 * log.between(metres(0), metres(1)).mass(); // 149 kg: the half with the large end
 * }</pre>
 */
public final class Log {
  private static final double STANDARD_GRAVITY_M_PER_S2 = 9.80665;
  private static final Source STANDARD_GRAVITY =
      new Source(
          "CGPM-1901",
          "Standard acceleration of gravity, third General Conference on Weights and Measures, 1901",
          Reading.FROM_MEMORY);

  private final double length;
  private final double largeEnd;
  private final double smallEnd;
  private final double density;
  private final @Nullable Double midDiameter;
  private final @Nullable Species species;
  private final List<Datum> taken;

  private Log(
      double length,
      double largeEnd,
      double smallEnd,
      double density,
      @Nullable Double midDiameter,
      @Nullable Species species,
      List<Datum> taken) {
    this.length = length;
    this.largeEnd = largeEnd;
    this.smallEnd = smallEnd;
    this.density = density;
    this.midDiameter = midDiameter;
    this.species = species;
    this.taken = taken;
  }

  /**
   * Obtains a log of stated density.
   *
   * @param length length along the axis, above zero, at most 200 m, not null
   * @param largeEnd diameter of the large end without bark, from 1 mm to 20 m, not null
   * @param smallEnd diameter of the small end without bark, from zero to that of the large end, not
   *     null
   * @param density density of the green wood, above zero, at most 100 000 kg/m3, not null
   * @return the log
   * @throws IllegalArgumentException if a value is outside its range; the message names it
   */
  public static Log of(
      Quantity<Length> length,
      Quantity<Length> largeEnd,
      Quantity<Length> smallEnd,
      Quantity<Density> density) {
    double rho = Bounds.aboveZero(density, Kind.DENSITY, Bounds.DENSITY, "density");
    return of(length, largeEnd, smallEnd, rho, null, List.of());
  }

  /**
   * Obtains a log of a species, with the middle of the green densities known of it.
   *
   * @param length length along the axis, above zero, at most 200 m, not null
   * @param largeEnd diameter of the large end without bark, from 1 mm to 20 m, not null
   * @param smallEnd diameter of the small end without bark, from zero to that of the large end, not
   *     null
   * @param species the species, not null
   * @return the log; {@link #taken()} tells the density and where it comes from
   * @throws IllegalArgumentException if a value is outside its range, or the data have no green
   *     density of the species: then state one
   */
  public static Log of(
      Quantity<Length> length,
      Quantity<Length> largeEnd,
      Quantity<Length> smallEnd,
      Species species) {
    GreenDensity green =
        species
            .greenDensity()
            .orElseThrow(
                () ->
                    new IllegalArgumentException(
                        "density: wants a stated density, since the data have none of "
                            + species.commonName()
                            + ", got nothing"));
    double rho = Si.value(green.middle(), Kind.DENSITY, "density");
    return of(length, largeEnd, smallEnd, rho, species, List.of(green.datum()));
  }

  private static Log of(
      Quantity<Length> length,
      Quantity<Length> largeEnd,
      Quantity<Length> smallEnd,
      double density,
      @Nullable Species species,
      List<Datum> taken) {
    double l = Bounds.aboveZero(length, Kind.LENGTH, Bounds.LENGTH, "length");
    double large =
        Bounds.between(largeEnd, Kind.LENGTH, Bounds.LEAST_DIAMETER, Bounds.DIAMETER, "largeEnd");
    double small = Si.valueZeroOrMore(smallEnd, Kind.LENGTH, "smallEnd");
    if (small > large) {
      String wants = "at most the large end, " + Bounds.text(large, Kind.LENGTH);
      throw Bounds.outside("smallEnd", wants, small, Kind.LENGTH);
    }
    return new Log(l, large, small, density, null, species, taken);
  }

  /**
   * Returns this log with a measured diameter half-way along, for the rules that use one.
   *
   * @param newMidDiameter the diameter without bark, above zero, at most 20 m, not null
   * @return the log; its default volume, balance point and parts stay those of an even taper
   * @throws IllegalArgumentException if the diameter is outside its range
   */
  public Log withMidDiameter(Quantity<Length> newMidDiameter) {
    double m = Bounds.aboveZero(newMidDiameter, Kind.LENGTH, Bounds.DIAMETER, "midDiameter");
    return new Log(length, largeEnd, smallEnd, density, m, species, taken);
  }

  /**
   * Returns the part of this log between two places.
   *
   * @param fromInclusive where the part begins, from the large end, zero or more, not null
   * @param toInclusive where it ends, above the beginning, at most the length, not null
   * @return the part, a log of even taper whose large end is nearer to that of this log
   * @throws IllegalArgumentException if a place is off the log, or they are not in order
   */
  public Log between(Quantity<Length> fromInclusive, Quantity<Length> toInclusive) {
    double from = Bounds.between(fromInclusive, Kind.LENGTH, 0, length, "fromInclusive");
    double to = Bounds.between(toInclusive, Kind.LENGTH, 0, length, "toInclusive");
    if (to <= from) {
      String wants = "a place beyond " + Bounds.text(from, Kind.LENGTH);
      throw Bounds.outside("toInclusive", wants, to, Kind.LENGTH);
    }
    return new Log(to - from, diameter(from), diameter(to), density, null, species, taken);
  }

  /**
   * Returns the length.
   *
   * @return the length in metres, above zero
   */
  public Quantity<Length> length() {
    return Si.of(length, Kind.LENGTH);
  }

  /**
   * Returns the diameter of the large end.
   *
   * @return the diameter in metres, above zero
   */
  public Quantity<Length> largeEnd() {
    return Si.of(largeEnd, Kind.LENGTH);
  }

  /**
   * Returns the diameter of the small end.
   *
   * @return the diameter in metres, from zero to that of the large end
   */
  public Quantity<Length> smallEnd() {
    return Si.of(smallEnd, Kind.LENGTH);
  }

  /**
   * Returns the diameter half-way along: as measured, else by even taper.
   *
   * @return the diameter in metres, above zero
   */
  public Quantity<Length> midDiameter() {
    return Si.of(middle(), Kind.LENGTH);
  }

  /**
   * Returns the density of the wood.
   *
   * @return the density in kilograms per cubic metre, above zero
   */
  public Quantity<Density> density() {
    return Si.of(density, Kind.DENSITY);
  }

  /**
   * Returns the species that the density is taken from.
   *
   * @return the species; empty if the density was stated
   */
  public Optional<Species> species() {
    return Optional.ofNullable(species);
  }

  /**
   * Returns what was taken from data: the density, if the log is stated by its species.
   *
   * @return the data, each with its source; empty if all was stated
   */
  public List<Datum> taken() {
    return taken;
  }

  /**
   * Returns the diameter at a place, by even taper.
   *
   * @equation d_z = D + (d - D) * z / L (LOG-7)
   * @validity even taper
   * @source definition of even taper
   * @accuracy rounding only
   * @param at the place, from the large end, zero to the length, not null
   * @return the diameter in metres
   * @throws IllegalArgumentException if the place is off the log
   */
  public Quantity<Length> diameterAt(Quantity<Length> at) {
    return Si.of(diameter(Bounds.between(at, Kind.LENGTH, 0, length, "at")), Kind.LENGTH);
  }

  /**
   * Returns the volume, as a cone frustum.
   *
   * @equation V = pi / 12 * L * (D^2 + D * d + d^2) (LOG-1)
   * @validity round log, even taper; without bark
   * @source University of Missouri, page on forest measurement
   * @accuracy rounding only
   * @return the volume in cubic metres
   */
  public Quantity<Volume> volume() {
    return volume(VolumeRule.CONE_FRUSTUM);
  }

  /**
   * Returns the volume by a rule of the trade.
   *
   * @param rule which rule, not null
   * @return the volume in cubic metres
   */
  public Quantity<Volume> volume(VolumeRule rule) {
    return Si.of(volumeStep(rule).result(), Kind.VOLUME);
  }

  /**
   * Returns the mass, from the volume as a cone frustum.
   *
   * @equation M = rho * V (LOG-8)
   * @validity one density throughout; without bark, branches and leaves
   * @source definition of density
   * @accuracy rounding only; the density itself is seldom known within 10 percent
   * @return the mass in kilograms
   */
  public Quantity<Mass> mass() {
    return mass(VolumeRule.CONE_FRUSTUM);
  }

  /**
   * Returns the mass, from the volume by a rule of the trade.
   *
   * @param rule which rule, not {@link VolumeRule#HOPPUS}, not null
   * @return the mass in kilograms
   * @throws IllegalArgumentException if the rule is {@link VolumeRule#HOPPUS}: its volume is not
   *     the real one
   */
  public Quantity<Mass> mass(VolumeRule rule) {
    return Si.of(massStep(rule).result(), Kind.MASS);
  }

  /**
   * Returns the mass with branches, twigs and leaves.
   *
   * @equation M_all = M + M_f (LOG-11)
   * @validity both masses as stated
   * @source sum
   * @accuracy rounding only
   * @param foliage mass of branches, twigs and leaves, zero or more, at most 1000 t, not null
   * @return the mass in kilograms
   * @throws IllegalArgumentException if the mass is outside its range
   */
  public Quantity<Mass> massWithFoliage(Quantity<Mass> foliage) {
    double leaves = Bounds.between(foliage, Kind.MASS, 0, Bounds.MASS, "foliage");
    double wood = massStep(VolumeRule.CONE_FRUSTUM).result();
    return Si.of(WoodFormulas.MASS_WITH_FOLIAGE.value(wood, leaves), Kind.MASS);
  }

  /**
   * Returns the weight under standard gravity.
   *
   * @return the weight in newtons
   */
  public Quantity<Force> weight() {
    return weight(standardGravity());
  }

  /**
   * Returns the weight.
   *
   * @equation W = M * g (LOG-9)
   * @validity at rest
   * @source definition of weight
   * @accuracy rounding only
   * @param gravity acceleration of gravity, above zero, at most 1000 m/s2, not null
   * @return the weight in newtons
   * @throws IllegalArgumentException if the gravity is outside its range
   */
  public Quantity<Force> weight(Quantity<Acceleration> gravity) {
    double g = Bounds.aboveZero(gravity, Kind.ACCELERATION, Bounds.GRAVITY, "gravity");
    double mass = massStep(VolumeRule.CONE_FRUSTUM).result();
    return Si.of(WoodFormulas.LOG_WEIGHT.value(mass, g), Kind.FORCE);
  }

  /**
   * Returns the standard acceleration of gravity.
   *
   * @return 9.80665 metres per second squared
   */
  public static Quantity<Acceleration> standardGravity() {
    return Si.of(STANDARD_GRAVITY_M_PER_S2, Kind.ACCELERATION);
  }

  /**
   * Returns the standard acceleration of gravity as a datum that {@link #weight()} takes.
   *
   * @return the value with its source
   */
  public static Datum standardGravityDatum() {
    String value = QuantityText.print(standardGravity(), Kind.ACCELERATION);
    return new Datum("gravity", value, STANDARD_GRAVITY, null);
  }

  /**
   * Returns the place where the log balances.
   *
   * @equation z = L / 4 * (D^2 + 2 * D * d + 3 * d^2) / (D^2 + D * d + d^2) (LOG-10)
   * @validity round log, even taper, one density, no branches
   * @source standard solid: centroid of a cone frustum
   * @accuracy rounding only
   * @return the distance from the large end in metres: from a fourth of the length (cone) to half
   *     of it (cylinder)
   */
  public Quantity<Length> balancePoint() {
    return Si.of(balanceStep().result(), Kind.LENGTH);
  }

  /**
   * Returns the steps from the measures to volume, mass, weight under standard gravity, and balance
   * point.
   *
   * @return the steps, in order
   */
  public List<Step> steps() {
    List<Step> steps = new ArrayList<>(steps(VolumeRule.CONE_FRUSTUM));
    double mass = massStep(VolumeRule.CONE_FRUSTUM).result();
    steps.add(WoodFormulas.LOG_WEIGHT.step(mass, STANDARD_GRAVITY_M_PER_S2));
    steps.add(balanceStep());
    return List.copyOf(steps);
  }

  /**
   * Returns the steps from the measures to the volume by a rule of the trade and to the mass from
   * it.
   *
   * @param rule which rule, not null
   * @return the steps, in order; without a mass for {@link VolumeRule#HOPPUS}
   */
  public List<Step> steps(VolumeRule rule) {
    List<Step> steps = new ArrayList<>();
    boolean usesMiddle =
        switch (rule) {
          case HUBER, NEWTON, HOPPUS -> true;
          case CONE_FRUSTUM, SMALIAN, NEILOID -> false;
        };
    if (usesMiddle && midDiameter == null) {
      steps.add(diameterStep(length / 2));
    }
    steps.add(volumeStep(rule));
    if (rule != VolumeRule.HOPPUS) {
      steps.add(massStep(rule));
    }
    return List.copyOf(steps);
  }

  private Step volumeStep(VolumeRule rule) {
    return switch (rule) {
      case CONE_FRUSTUM, SMALIAN, NEILOID -> rule.formula().step(length, largeEnd, smallEnd);
      case HUBER, HOPPUS -> rule.formula().step(length, middle());
      case NEWTON -> rule.formula().step(length, largeEnd, middle(), smallEnd);
    };
  }

  private Step massStep(VolumeRule rule) {
    if (rule == VolumeRule.HOPPUS) {
      throw new IllegalArgumentException(
          "rule: wants a rule that gives the real volume, got the quarter-girth measure");
    }
    return WoodFormulas.LOG_MASS_FROM_VOLUME.step(density, volumeStep(rule).result());
  }

  private Step balanceStep() {
    return WoodFormulas.BALANCE_POINT.step(length, largeEnd, smallEnd);
  }

  private Step diameterStep(double at) {
    return WoodFormulas.DIAMETER_ALONG.step(length, largeEnd, smallEnd, at);
  }

  private double middle() {
    return midDiameter == null ? diameterStep(length / 2).result() : midDiameter;
  }

  private double diameter(double at) {
    return diameterStep(at).result();
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof Log l
        && Double.compare(length, l.length) == 0
        && Double.compare(largeEnd, l.largeEnd) == 0
        && Double.compare(smallEnd, l.smallEnd) == 0
        && Double.compare(density, l.density) == 0
        && Objects.equals(midDiameter, l.midDiameter)
        && Objects.equals(species, l.species)
        && taken.equals(l.taken);
  }

  @Override
  public int hashCode() {
    return Objects.hash(length, largeEnd, smallEnd, density, midDiameter, species, taken);
  }

  @Override
  public String toString() {
    return Bounds.text(length, Kind.LENGTH)
        + " long, "
        + Bounds.text(largeEnd, Kind.LENGTH)
        + " to "
        + Bounds.text(smallEnd, Kind.LENGTH)
        + ", "
        + Bounds.text(density, Kind.DENSITY);
  }
}
