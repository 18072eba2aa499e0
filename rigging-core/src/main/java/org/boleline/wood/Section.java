package org.boleline.wood;

import java.util.List;
import javax.measure.Quantity;
import javax.measure.quantity.Angle;
import javax.measure.quantity.Area;
import javax.measure.quantity.Length;
import org.boleline.explain.Step;
import org.boleline.units.Kind;
import org.boleline.units.SecondMomentOfArea;
import org.boleline.units.SectionModulus;
import org.boleline.units.Si;

/**
 * The cross section of a round stem: solid, or with one round closed cavity that may lie off
 * centre.
 *
 * <p>An off-centre cavity moves the centroid away from it and makes the section weakest for bending
 * in the plane through both centres. Directions are measured from there: zero points from the outer
 * centre to the cavity's.
 *
 * <p>Immutable and thread-safe; equality is exact, on the SI measures.
 *
 * <pre>{@code
 * Section section = Section.offCentre(centimetres(40), centimetres(28), centimetres(3));
 * section.sectionModulusShare(); // 0.589: of the section modulus of solid wood
 * Section hollow = Section.shell(centimetres(36), centimetres(7)); // 7 cm of sound wood all around
 * }</pre>
 */
public final class Section {
  private final double outer;
  private final double cavity;
  private final double offset;

  private Section(double outer, double cavity, double offset) {
    this.outer = outer;
    this.cavity = cavity;
    this.offset = offset;
  }

  /**
   * Obtains a solid section.
   *
   * @param outer diameter of the wood without bark, from 1 mm to 20 m, not null
   * @return the section
   * @throws IllegalArgumentException if the diameter is outside its range
   */
  public static Section solid(Quantity<Length> outer) {
    return new Section(outer(outer), 0, 0);
  }

  /**
   * Obtains a section with a cavity in the centre.
   *
   * @param outer diameter of the wood without bark, from 1 mm to 20 m, not null
   * @param cavity diameter of the cavity, zero or more and below the outer one, not null
   * @return the section
   * @throws IllegalArgumentException if a diameter is outside its range
   */
  public static Section hollow(Quantity<Length> outer, Quantity<Length> cavity) {
    double d = outer(outer);
    return new Section(d, cavity(cavity, d), 0);
  }

  /**
   * Obtains a section with a cavity in the centre, from the thickness of the sound wood around it.
   *
   * @param outer diameter of the wood without bark, from 1 mm to 20 m, not null
   * @param thickness thickness of the sound shell, above zero and at most the radius, not null
   * @return the section
   * @throws IllegalArgumentException if a measure is outside its range
   */
  public static Section shell(Quantity<Length> outer, Quantity<Length> thickness) {
    double d = outer(outer);
    double t = Si.valueAboveZero(thickness, Kind.LENGTH, "thickness");
    if (t > d / 2) {
      String wants = "at most the radius, " + Bounds.text(d / 2, Kind.LENGTH);
      throw Bounds.outside("thickness", wants, t, Kind.LENGTH);
    }
    return new Section(d, d - 2 * t, 0);
  }

  /**
   * Obtains a section with a cavity off centre.
   *
   * @param outer diameter of the wood without bark, from 1 mm to 20 m, not null
   * @param cavity diameter of the cavity, zero or more and below the outer one, not null
   * @param offset distance of the cavity's centre from the outer centre, zero or more and below
   *     what would open the cavity, not null
   * @return the section
   * @throws IllegalArgumentException if a measure is outside its range, or the cavity would touch
   *     the outside
   */
  public static Section offCentre(
      Quantity<Length> outer, Quantity<Length> cavity, Quantity<Length> offset) {
    double d = outer(outer);
    double hole = cavity(cavity, d);
    double e = Si.valueZeroOrMore(offset, Kind.LENGTH, "offset");
    if (hole > 0 && !(e < (d - hole) / 2)) {
      String wants = "sound wood all around, less than " + Bounds.text((d - hole) / 2, Kind.LENGTH);
      throw Bounds.outside("offset", wants, e, Kind.LENGTH);
    }
    return new Section(d, hole, hole > 0 ? e : 0);
  }

  private static double outer(Quantity<Length> outer) {
    return Bounds.between(outer, Kind.LENGTH, Bounds.LEAST_DIAMETER, Bounds.DIAMETER, "outer");
  }

  private static double cavity(Quantity<Length> cavity, double outer) {
    double d = Si.valueZeroOrMore(cavity, Kind.LENGTH, "cavity");
    if (d >= outer) {
      String wants = "less than the outer diameter, " + Bounds.text(outer, Kind.LENGTH);
      throw Bounds.outside("cavity", wants, d, Kind.LENGTH);
    }
    return d;
  }

  /**
   * Returns the outer diameter.
   *
   * @return the diameter in metres
   */
  public Quantity<Length> outer() {
    return Si.of(outer, Kind.LENGTH);
  }

  /**
   * Returns the diameter of the cavity.
   *
   * @return the diameter in metres, zero if the section is solid
   */
  public Quantity<Length> cavity() {
    return Si.of(cavity, Kind.LENGTH);
  }

  /**
   * Returns how far the cavity lies off centre.
   *
   * @return the distance of the cavity's centre from the outer centre in metres, zero or more; zero
   *     if there is no cavity
   */
  public Quantity<Length> offset() {
    return Si.of(offset, Kind.LENGTH);
  }

  /**
   * Returns the thinnest sound wood between cavity and outside.
   *
   * @return the thickness in metres, above zero; the radius if the section is solid
   */
  public Quantity<Length> leastShell() {
    return Si.of(shellStep().result() * (outer / 2), Kind.LENGTH);
  }

  /**
   * Returns the area of the wood.
   *
   * @equation A = pi / 4 * (D^2 - d^2) (SEC-1)
   * @validity round outside, one round cavity
   * @source difference of two circles
   * @accuracy rounding only
   * @return the area in square metres
   */
  public Quantity<Area> area() {
    return Si.of(WoodFormulas.AREA.value(outer, cavity), Kind.AREA);
  }

  /**
   * Returns where the centroid lies on the line through both centres.
   *
   * @equation x_c = -d^2 * e / (D^2 - d^2) (SEC-2)
   * @validity round outside, one round cavity
   * @source difference of two circles
   * @accuracy rounding only
   * @return the distance from the outer centre toward the cavity in metres: zero or less, since the
   *     centroid moves away from the cavity
   */
  public Quantity<Length> centroid() {
    return Si.of(centroidStep().result(), Kind.LENGTH);
  }

  /**
   * Returns the greatest second moment of area: for bending across the line through both centres.
   *
   * @equation I_max = pi / 64 * (D^4 - d^4) (SEC-3)
   * @validity plane sections; a thin shell may buckle or go out of round first
   * @source difference of two circles
   * @accuracy rounding only
   * @return the second moment in metres to the fourth power
   */
  public Quantity<SecondMomentOfArea> greatestSecondMoment() {
    return Si.of(greatestStep().result(), Kind.SECOND_MOMENT_OF_AREA);
  }

  /**
   * Returns the least second moment of area: for bending along the line through both centres.
   *
   * @equation I_min = pi / 64 * (D^4 - d^4) - pi / 4 * d^2 * e^2 * D^2 / (D^2 - d^2) (SEC-4)
   * @validity plane sections; a thin shell may buckle or go out of round first
   * @source theorem of parallel axes
   * @accuracy rounding only
   * @return the second moment in metres to the fourth power
   */
  public Quantity<SecondMomentOfArea> leastSecondMoment() {
    return Si.of(leastStep().result(), Kind.SECOND_MOMENT_OF_AREA);
  }

  /**
   * Returns the section modulus in the worst direction: bending toward or away from the cavity.
   *
   * <p>A bending moment over it is the greatest fibre stress, which stands on the cavity's side.
   *
   * @equation W_min = I_min / (D / 2 - x_c) (SEC-5)
   * @validity plane sections; a thin shell may buckle or go out of round first
   * @source skew bending with both principal second moments
   * @accuracy rounding only
   * @return the section modulus in cubic metres
   */
  public Quantity<SectionModulus> sectionModulus() {
    return Si.of(sectionModulusStep().result(), Kind.SECTION_MODULUS);
  }

  /**
   * Returns the section modulus for bending in a given direction.
   *
   * <p>The lesser one of both edges. Where the direction is neither along nor across the line
   * through both centres, the stress is that of skew bending.
   *
   * @equation W = 1 / (D / 2 * sqrt((cos(q) / I_min)^2 + (sin(q) / I_max)^2) + |x_c * cos(q)| /
   *     I_min) (SEC-6)
   * @validity plane sections; a thin shell may buckle or go out of round first
   * @source skew bending with both principal second moments
   * @accuracy rounding only
   * @param direction where the stem is bent toward, from the direction of the cavity's centre, not
   *     null
   * @return the section modulus in cubic metres, at least {@link #sectionModulus()}
   * @throws IllegalArgumentException if the direction is not finite
   */
  public Quantity<SectionModulus> sectionModulus(Quantity<Angle> direction) {
    return Si.of(sectionModulusStep(direction).result(), Kind.SECTION_MODULUS);
  }

  /**
   * Returns the share of the area of solid wood that is left.
   *
   * @equation a = 1 - (d / D)^2 (SEC-7)
   * @validity round outside, one round cavity
   * @source ratio to solid wood of the same diameter
   * @accuracy rounding only
   * @return the share, above 0 and at most 1
   */
  public double areaShare() {
    return areaShareStep().result();
  }

  /**
   * Returns the share of the second moment of area of solid wood that is left, in the worst
   * direction.
   *
   * @equation i = I_min / (pi / 64 * D^4) (SEC-8)
   * @validity plane sections; a thin shell may buckle or go out of round first
   * @source ratio to solid wood of the same diameter
   * @accuracy rounding only
   * @return the share, above 0 and at most 1
   */
  public double secondMomentShare() {
    return secondMomentShareStep().result();
  }

  /**
   * Returns the share of the section modulus of solid wood that is left, in the worst direction.
   *
   * @equation w = W_min / (pi / 32 * D^3) (SEC-9)
   * @validity plane sections; a thin shell may buckle or go out of round first
   * @source ratio to solid wood of the same diameter
   * @accuracy rounding only
   * @return the share, above 0 and at most 1
   */
  public double sectionModulusShare() {
    return sectionModulusShareStep().result();
  }

  /**
   * Returns the steps from the measures to the section modulus in the worst direction and to the
   * shares left.
   *
   * @return the steps, in order
   */
  public List<Step> steps() {
    return List.of(
        WoodFormulas.AREA.step(outer, cavity),
        centroidStep(),
        greatestStep(),
        leastStep(),
        sectionModulusStep(),
        areaShareStep(),
        secondMomentShareStep(),
        sectionModulusShareStep());
  }

  /**
   * Returns the steps from the measures to the section modulus in a given direction.
   *
   * @param direction as for {@link #sectionModulus(Quantity)}
   * @return the steps, in order
   * @throws IllegalArgumentException if the direction is not finite
   */
  public List<Step> steps(Quantity<Angle> direction) {
    return List.of(centroidStep(), greatestStep(), leastStep(), sectionModulusStep(direction));
  }

  Step shellStep() {
    return WoodFormulas.SHELL_RATIO.step(outer, cavity, offset);
  }

  Step areaShareStep() {
    return WoodFormulas.AREA_SHARE.step(outer, cavity);
  }

  Step secondMomentShareStep() {
    return WoodFormulas.SECOND_MOMENT_SHARE.step(leastStep().result(), outer);
  }

  Step sectionModulusShareStep() {
    return WoodFormulas.MODULUS_SHARE.step(sectionModulusStep().result(), outer);
  }

  private Step centroidStep() {
    return WoodFormulas.CENTROID_POSITION.step(outer, cavity, offset);
  }

  private Step greatestStep() {
    return WoodFormulas.GREATEST_SECOND_MOMENT.step(outer, cavity);
  }

  private Step leastStep() {
    return WoodFormulas.LEAST_SECOND_MOMENT.step(outer, cavity, offset);
  }

  private Step sectionModulusStep() {
    return WoodFormulas.LEAST_MODULUS.step(leastStep().result(), outer, centroidStep().result());
  }

  private Step sectionModulusStep(Quantity<Angle> direction) {
    return WoodFormulas.MODULUS.step(
        outer,
        Si.value(direction, Kind.ANGLE, "direction"),
        leastStep().result(),
        greatestStep().result(),
        centroidStep().result());
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof Section s
        && Double.compare(outer, s.outer) == 0
        && Double.compare(cavity, s.cavity) == 0
        && Double.compare(offset, s.offset) == 0;
  }

  @Override
  public int hashCode() {
    return 31 * (31 * Double.hashCode(outer) + Double.hashCode(cavity)) + Double.hashCode(offset);
  }

  @Override
  public String toString() {
    return Bounds.text(outer, Kind.LENGTH)
        + (cavity == 0 ? ", solid" : ", cavity " + Bounds.text(cavity, Kind.LENGTH))
        + (offset == 0 ? "" : ", " + Bounds.text(offset, Kind.LENGTH) + " off centre");
  }
}
