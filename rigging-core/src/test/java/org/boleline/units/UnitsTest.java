package org.boleline.units;

import static org.assertj.core.api.Assertions.assertThat;
import static org.boleline.Tolerances.ROUNDING;
import static org.boleline.Tolerances.relative;
import static org.junit.jupiter.params.provider.Arguments.arguments;

import java.lang.reflect.Field;
import java.lang.reflect.Modifier;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.HashSet;
import java.util.Set;
import java.util.stream.Stream;
import javax.measure.Dimension;
import javax.measure.Quantity;
import javax.measure.Unit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import tech.units.indriya.unit.UnitDimension;

class UnitsTest {
  private static final MathContext DIGITS = new MathContext(40);

  /** Pi to 40 digits, from memory; its first 16 digits are those of {@link Math#PI}. */
  private static final BigDecimal PI = new BigDecimal("3.141592653589793238462643383279502884197");

  /**
   * Every constant: its name, symbol in the text form ("" where the text form has none), exponents
   * of length, mass and time by hand, and its factor to SI from the definition.
   *
   * <p>Factors: foot, inch and pound by the international yard and pound agreement of 1959;
   * standard gravity by the 3rd General Conference on Weights and Measures, 1901; pound-force = lb
   * x standard gravity; the rest by decimal prefixes (SI brochure).
   */
  static Stream<Arguments> constants() {
    BigDecimal foot = new BigDecimal("0.3048");
    BigDecimal inch = new BigDecimal("0.0254");
    BigDecimal pound = new BigDecimal("0.45359237");
    BigDecimal gravity = new BigDecimal("9.80665");
    BigDecimal poundForce = pound.multiply(gravity);
    return Stream.of(
        arguments("METRE", "m", 1, 0, 0, number("1")),
        arguments("CENTIMETRE", "cm", 1, 0, 0, number("0.01")),
        arguments("MILLIMETRE", "mm", 1, 0, 0, number("0.001")),
        arguments("FOOT", "ft", 1, 0, 0, foot),
        arguments("INCH", "in", 1, 0, 0, inch),
        arguments("KILOGRAM", "kg", 0, 1, 0, number("1")),
        arguments("TONNE", "t", 0, 1, 0, number("1000")),
        arguments("POUND", "lb", 0, 1, 0, pound),
        arguments("SECOND", "s", 0, 0, 1, number("1")),
        arguments("RADIAN", "rad", 0, 0, 0, number("1")),
        arguments("DEGREE", "deg", 0, 0, 0, PI.divide(number("180"), DIGITS)),
        arguments("NEWTON", "N", 1, 1, -2, number("1")),
        arguments("KILONEWTON", "kN", 1, 1, -2, number("1000")),
        arguments("POUND_FORCE", "lbf", 1, 1, -2, poundForce),
        arguments("KILOGRAM_FORCE", "kgf", 1, 1, -2, gravity),
        arguments("PASCAL", "Pa", -1, 1, -2, number("1")),
        arguments("MEGAPASCAL", "MPa", -1, 1, -2, number("1e6")),
        arguments("GIGAPASCAL", "GPa", -1, 1, -2, number("1e9")),
        arguments("PSI", "psi", -1, 1, -2, poundForce.divide(inch.pow(2), DIGITS)),
        arguments("JOULE", "J", 2, 1, -2, number("1")),
        arguments("NEWTON_METRE", "N.m", 2, 1, -2, number("1")),
        arguments("KILONEWTON_METRE", "kN.m", 2, 1, -2, number("1000")),
        arguments("POUND_FORCE_FOOT", "lbf.ft", 2, 1, -2, poundForce.multiply(foot)),
        arguments("NEWTON_METRE_PER_RADIAN", "N.m/rad", 2, 1, -2, number("1")),
        arguments("NEWTON_PER_METRE", "N/m", 0, 1, -2, number("1")),
        arguments("NEWTON_SQUARE_METRE", "N.m2", 3, 1, -2, number("1")),
        arguments("KILOGRAM_PER_METRE", "kg/m", -1, 1, 0, number("1")),
        arguments("POUND_PER_FOOT", "lb/ft", -1, 1, 0, pound.divide(foot, DIGITS)),
        arguments("KILOGRAM_PER_CUBIC_METRE", "kg/m3", -3, 1, 0, number("1")),
        arguments("POUND_PER_CUBIC_FOOT", "lb/ft3", -3, 1, 0, pound.divide(foot.pow(3), DIGITS)),
        arguments("SQUARE_METRE", "m2", 2, 0, 0, number("1")),
        arguments("CUBIC_METRE", "m3", 3, 0, 0, number("1")),
        arguments("METRE_CUBED", "m3", 3, 0, 0, number("1")),
        arguments("METRE_TO_THE_FOURTH", "m4", 4, 0, 0, number("1")),
        arguments("METRE_PER_SECOND", "m/s", 1, 0, -1, number("1")),
        arguments("HERTZ", "Hz", 0, 0, -1, number("1")),
        arguments("METRE_PER_SQUARE_SECOND", "m/s2", 1, 0, -2, number("1")));
  }

  private static BigDecimal number(String text) {
    return new BigDecimal(text);
  }

  @ParameterizedTest
  @MethodSource("constants")
  void a_constant_has_the_dimension_written_by_hand(
      String name, String symbol, int length, int mass, int time, BigDecimal factor)
      throws ReflectiveOperationException {
    Dimension byHand =
        UnitDimension.LENGTH
            .pow(length)
            .multiply(UnitDimension.MASS.pow(mass))
            .multiply(UnitDimension.TIME.pow(time));
    assertThat(constant(name).getDimension()).isEqualTo(byHand);
  }

  @ParameterizedTest
  @MethodSource("constants")
  void a_constant_has_the_factor_of_its_definition_and_of_the_text_form(
      String name, String symbol, int length, int mass, int time, BigDecimal factor)
      throws ReflectiveOperationException {
    assertThat(oneInSi(constant(name))).isCloseTo(factor.doubleValue(), relative(ROUNDING));
    // The text form holds the same to the 40 digits taken here.
    assertThat(QuantityText.factor(symbol).round(new MathContext(35)))
        .isEqualByComparingTo(factor.round(new MathContext(35)));
  }

  @Test
  void no_constant_is_left_out_of_these_checks() {
    Set<String> declared = new HashSet<>();
    for (Field field : Units.class.getFields()) {
      if (Modifier.isStatic(field.getModifiers())) {
        declared.add(field.getName());
      }
    }
    Set<String> checked = new HashSet<>();
    constants().forEach(row -> checked.add((String) row.get()[0]));
    assertThat(checked).isEqualTo(declared);
  }

  @Test
  void the_pound_force_is_a_pound_times_standard_gravity() {
    // NIST SP 811 prints 4.4482216152605 N, exact (from memory).
    assertThat(QuantityText.factor("lbf")).isEqualByComparingTo("4.4482216152605");
  }

  private static <Q extends Quantity<Q>> double oneInSi(Unit<Q> unit) {
    return unit.getConverterTo(unit.getSystemUnit()).convert(1.0);
  }

  private static Unit<?> constant(String name) throws ReflectiveOperationException {
    return (Unit<?>) Units.class.getField(name).get(null);
  }
}
