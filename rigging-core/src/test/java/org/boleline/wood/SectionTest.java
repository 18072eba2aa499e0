package org.boleline.wood;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.boleline.Tolerances.ROUNDING;
import static org.boleline.Tolerances.absolute;
import static org.boleline.Tolerances.relative;
import static org.boleline.units.Amounts.centimetres;
import static org.boleline.units.Amounts.degrees;
import static org.boleline.units.Amounts.inches;
import static org.boleline.units.Amounts.metres;
import static org.boleline.units.Amounts.millimetres;
import static org.boleline.units.Amounts.radians;
import static org.boleline.wood.WoodTolerances.EDGE_SEARCH;
import static org.boleline.wood.WoodTolerances.QUADRATURE;

import java.util.function.DoubleUnaryOperator;
import javax.measure.Quantity;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.boleline.explain.Step;
import org.boleline.units.Kind;
import org.boleline.units.Si;
import org.hipparchus.analysis.integration.gauss.GaussIntegrator;
import org.hipparchus.analysis.integration.gauss.GaussIntegratorFactory;
import org.junit.jupiter.api.Test;

class SectionTest {
  private static final GaussIntegrator GAUSS =
      new GaussIntegratorFactory().legendre(200, 0, Math.PI);

  private static <Q extends Quantity<Q>> double si(Quantity<Q> quantity, Kind<Q> kind) {
    return Si.value(quantity, kind, kind.name());
  }

  private static double least(Section section) {
    return si(section.leastSecondMoment(), Kind.SECOND_MOMENT_OF_AREA);
  }

  private static double greatest(Section section) {
    return si(section.greatestSecondMoment(), Kind.SECOND_MOMENT_OF_AREA);
  }

  private static double worst(Section section) {
    return si(section.sectionModulus(), Kind.SECTION_MODULUS);
  }

  private static double toward(Section section, double angle) {
    return si(section.sectionModulus(radians(angle)), Kind.SECTION_MODULUS);
  }

  /** Cavity and offset as shares: of the outer diameter, and of the room that is left. */
  private static Section section(double outer, double cavityShare, double roomShare) {
    double cavity = cavityShare * outer;
    double offset = roomShare * (outer - cavity) / 2;
    return Section.offCentre(metres(outer), metres(cavity), metres(offset));
  }

  /** Textbook values of the solid circle: pi D^2/4, pi D^4/64, pi D^3/32. */
  @Test
  void solid_circle_has_the_textbook_values() {
    Section solid = Section.solid(metres(2));
    assertThat(si(solid.area(), Kind.AREA)).isCloseTo(Math.PI, relative(ROUNDING));
    assertThat(least(solid)).isCloseTo(Math.PI / 4, relative(ROUNDING));
    assertThat(greatest(solid)).isCloseTo(Math.PI / 4, relative(ROUNDING));
    assertThat(worst(solid)).isCloseTo(Math.PI / 4, relative(ROUNDING));
    assertThat(solid.areaShare()).isEqualTo(1);
    assertThat(solid.secondMomentShare()).isEqualTo(1);
    assertThat(solid.sectionModulusShare()).isEqualTo(1);
    assertThat(si(solid.leastShell(), Kind.LENGTH)).isEqualTo(1);
  }

  /** Second route: the wood between both circles in polar coordinates about the cavity's centre. */
  @Property(tries = 60)
  void closed_forms_agree_with_quadrature_over_the_wood(
      @ForAll @DoubleRange(min = 0.05, max = 3) double outer,
      @ForAll @DoubleRange(min = 0.01, max = 0.9) double cavityShare,
      @ForAll @DoubleRange(min = 0, max = 0.9) double roomShare) {
    Section section = section(outer, cavityShare, roomShare);
    double r = si(section.cavity(), Kind.LENGTH) / 2;
    double e = si(section.offset(), Kind.LENGTH);
    DoubleUnaryOperator far =
        f -> -e * Math.cos(f) + Math.sqrt(outer * outer / 4 - e * e * Math.sin(f) * Math.sin(f));
    double area = around(f -> (power(far, f, 2) - Math.pow(r, 2)) / 2);
    double first = around(f -> (power(far, f, 3) - Math.pow(r, 3)) / 3 * Math.cos(f));
    double alongX = around(f -> (power(far, f, 4) - Math.pow(r, 4)) / 4 * Math.pow(Math.cos(f), 2));
    double alongY = around(f -> (power(far, f, 4) - Math.pow(r, 4)) / 4 * Math.pow(Math.sin(f), 2));
    double centroid = first / area; // from the cavity's centre

    assertThat(si(section.area(), Kind.AREA)).isCloseTo(area, relative(QUADRATURE));
    assertThat(si(section.centroid(), Kind.LENGTH))
        .isCloseTo(e + centroid, absolute(QUADRATURE * outer));
    assertThat(greatest(section)).isCloseTo(alongY, relative(QUADRATURE));
    assertThat(least(section)).isCloseTo(alongX - area * centroid * centroid, relative(QUADRATURE));
  }

  private static double power(DoubleUnaryOperator function, double at, int exponent) {
    return Math.pow(function.applyAsDouble(at), exponent);
  }

  private static double around(DoubleUnaryOperator function) {
    double half = GAUSS.integrate(function::applyAsDouble);
    return 2 * half; // symmetric about the line through both centres
  }

  /** Second route: stress of a unit moment at points around the edge, the greatest one taken. */
  @Property(tries = 60)
  void section_modulus_is_moment_over_the_greatest_stress_on_the_edge(
      @ForAll @DoubleRange(min = 0.05, max = 3) double outer,
      @ForAll @DoubleRange(min = 0, max = 0.95) double cavityShare,
      @ForAll @DoubleRange(min = 0, max = 0.95) double roomShare,
      @ForAll @DoubleRange(min = -7, max = 7) double direction) {
    Section section = section(outer, cavityShare, roomShare);
    double centroid = si(section.centroid(), Kind.LENGTH);
    int points = 20_000;
    double greatestStress = 0;
    for (int i = 0; i < points; i++) {
      double at = 2 * Math.PI * i / points;
      double x = outer / 2 * Math.cos(at) - centroid;
      double y = outer / 2 * Math.sin(at);
      double stress =
          Math.cos(direction) * x / least(section) + Math.sin(direction) * y / greatest(section);
      greatestStress = Math.max(greatestStress, Math.abs(stress));
    }
    assertThat(toward(section, direction)).isCloseTo(1 / greatestStress, relative(EDGE_SEARCH));
  }

  @Property
  void no_direction_is_worse_than_the_worst(
      @ForAll @DoubleRange(min = 0, max = 0.95) double cavityShare,
      @ForAll @DoubleRange(min = 0, max = 0.95) double roomShare,
      @ForAll @DoubleRange(min = -7, max = 7) double direction) {
    Section section = section(0.4, cavityShare, roomShare);
    assertThat(toward(section, direction)).isGreaterThanOrEqualTo(worst(section) * (1 - ROUNDING));
    assertThat(toward(section, 0)).isCloseTo(worst(section), relative(ROUNDING));
    assertThat(toward(section, Math.PI)).isCloseTo(worst(section), relative(ROUNDING));
  }

  @Property
  void a_bigger_cavity_never_raises_the_section_modulus(
      @ForAll @DoubleRange(min = 0, max = 0.9) double cavityShare,
      @ForAll @DoubleRange(min = 0, max = 0.9) double biggerBy,
      @ForAll @DoubleRange(min = 0, max = 0.99) double roomShare,
      @ForAll @DoubleRange(min = -7, max = 7) double direction) {
    double outer = 0.4;
    double bigger = cavityShare + biggerBy * (0.99 - cavityShare);
    double offset = roomShare * (outer - bigger * outer) / 2;
    Section one = Section.offCentre(metres(outer), metres(cavityShare * outer), metres(offset));
    Section other = Section.offCentre(metres(outer), metres(bigger * outer), metres(offset));
    assertThat(worst(other)).isLessThanOrEqualTo(worst(one) * (1 + ROUNDING));
    assertThat(toward(other, direction))
        .isLessThanOrEqualTo(toward(one, direction) * (1 + ROUNDING));
  }

  @Property
  void an_off_centre_cavity_is_never_better_than_a_centred_one(
      @ForAll @DoubleRange(min = 0, max = 0.95) double cavityShare,
      @ForAll @DoubleRange(min = 0, max = 0.95) double roomShare) {
    Section off = section(0.4, cavityShare, roomShare);
    Section centred = Section.hollow(off.outer(), off.cavity());
    assertThat(worst(off)).isLessThanOrEqualTo(worst(centred) * (1 + ROUNDING));
    assertThat(off.areaShare()).isEqualTo(centred.areaShare());
  }

  /** For a concentric hole the fourth power is the loss of I and of W: hollow shaft, textbooks. */
  @Property
  void a_centred_cavity_takes_the_fourth_power_of_the_diameters(
      @ForAll @DoubleRange(min = 0, max = 0.99) double cavityShare) {
    Section section = Section.hollow(metres(0.4), metres(0.4 * cavityShare));
    double left = 1 - Math.pow(cavityShare, 4);
    assertThat(section.secondMomentShare()).isCloseTo(left, relative(1e2 * ROUNDING));
    assertThat(section.sectionModulusShare()).isCloseTo(left, relative(1e2 * ROUNDING));
    assertThat(toward(section, 1)).isCloseTo(worst(section), relative(ROUNDING));
    assertThat(section).isEqualTo(section(0.4, cavityShare, 0));
  }

  @Property
  void scaling_lengths_scales_area_and_moments_by_their_powers(
      @ForAll @DoubleRange(min = 0, max = 0.95) double cavityShare,
      @ForAll @DoubleRange(min = 0, max = 0.95) double roomShare,
      @ForAll @DoubleRange(min = 0.1, max = 10) double scale) {
    Section one = section(0.5, cavityShare, roomShare);
    Section other =
        Section.offCentre(
            metres(0.5 * scale),
            metres(si(one.cavity(), Kind.LENGTH) * scale),
            metres(si(one.offset(), Kind.LENGTH) * scale));
    assertThat(least(other)).isCloseTo(least(one) * Math.pow(scale, 4), relative(1e2 * ROUNDING));
    assertThat(worst(other)).isCloseTo(worst(one) * Math.pow(scale, 3), relative(1e2 * ROUNDING));
  }

  @Test
  void the_same_section_in_other_units_is_the_same() {
    Section inMillimetres =
        Section.offCentre(millimetres(508), millimetres(254), millimetres(25.4));
    Section inInches = Section.offCentre(inches(20), inches(10), inches(1));
    assertThat(worst(inInches)).isCloseTo(worst(inMillimetres), relative(ROUNDING));
    assertThat(Section.solid(centimetres(40))).isEqualTo(Section.solid(millimetres(400)));
    assertThat(toward(inInches, Math.PI / 6))
        .isCloseTo(
            si(inInches.sectionModulus(degrees(30)), Kind.SECTION_MODULUS), relative(ROUNDING));
  }

  @Test
  void a_sound_shell_is_the_same_as_its_cavity() {
    assertThat(Section.shell(metres(0.5), metres(0.125)))
        .isEqualTo(Section.hollow(metres(0.5), metres(0.25)));
    assertThat(Section.shell(metres(0.5), metres(0.25))).isEqualTo(Section.solid(metres(0.5)));
  }

  @Test
  void steps_end_in_the_numbers_that_are_returned() {
    Section section = section(0.4, 0.6, 0.5);
    assertThat(section.steps().stream().map(step -> step.formula().id()))
        .containsExactly("SEC-1", "SEC-2", "SEC-3", "SEC-4", "SEC-5", "SEC-7", "SEC-8", "SEC-9");
    assertThat(section.steps().get(4).result()).isEqualTo(worst(section));
    assertThat(section.steps().get(7).result()).isEqualTo(section.sectionModulusShare());
    Step given = section.steps(degrees(50)).get(3);
    assertThat(given.result())
        .isEqualTo(si(section.sectionModulus(degrees(50)), Kind.SECTION_MODULUS));
  }

  @Test
  void a_cavity_that_touches_the_outside_is_refused() {
    assertThatThrownBy(() -> Section.offCentre(metres(0.4), metres(0.2), metres(0.1)))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage("offset: wants sound wood all around, less than 0.1 m, got 0.1 m");
    assertThatThrownBy(() -> Section.hollow(metres(0.4), metres(0.4)))
        .hasMessage("cavity: wants less than the outer diameter, 0.4 m, got 0.4 m");
    assertThatThrownBy(() -> Section.shell(metres(0.4), metres(0.21)))
        .hasMessage("thickness: wants at most the radius, 0.2 m, got 0.21 m");
    assertThatThrownBy(() -> Section.solid(metres(0)))
        .hasMessage("outer: wants a length from 0.001 m to 20 m, got 0 m");
    assertThatThrownBy(() -> Section.solid(null)).isInstanceOf(NullPointerException.class);
  }
}
