package org.boleline.units;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.boleline.Tolerances.ROUNDING;
import static org.boleline.Tolerances.relative;

import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Method;
import java.lang.reflect.Modifier;
import java.math.BigDecimal;
import java.util.Arrays;
import java.util.Map;
import java.util.stream.Stream;
import javax.measure.Quantity;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

class AmountsTest {
  /** Which unit symbol each factory speaks of, written by hand. */
  private static final Map<String, String> SYMBOLS =
      Map.ofEntries(
          Map.entry("metres", "m"),
          Map.entry("centimetres", "cm"),
          Map.entry("millimetres", "mm"),
          Map.entry("feet", "ft"),
          Map.entry("inches", "in"),
          Map.entry("degrees", "deg"),
          Map.entry("radians", "rad"),
          Map.entry("kilograms", "kg"),
          Map.entry("pounds", "lb"),
          Map.entry("newtons", "N"),
          Map.entry("kilonewtons", "kN"),
          Map.entry("poundsForce", "lbf"),
          Map.entry("pascals", "Pa"),
          Map.entry("megapascals", "MPa"),
          Map.entry("gigapascals", "GPa"),
          Map.entry("poundsPerSquareInch", "psi"),
          Map.entry("kilogramsPerCubicMetre", "kg/m3"),
          Map.entry("poundsPerCubicFoot", "lb/ft3"),
          Map.entry("kilogramsPerMetre", "kg/m"),
          Map.entry("newtonMetres", "N.m"),
          Map.entry("newtonMetresPerRadian", "N.m/rad"),
          Map.entry("seconds", "s"),
          Map.entry("metresPerSecond", "m/s"));

  static Stream<Method> factories() {
    return Arrays.stream(Amounts.class.getDeclaredMethods())
        .filter(method -> Modifier.isPublic(method.getModifiers()));
  }

  @ParameterizedTest
  @MethodSource("factories")
  void a_factory_makes_an_amount_of_the_unit_it_names(Method factory)
      throws ReflectiveOperationException {
    String symbol = SYMBOLS.get(factory.getName());
    assertThat(symbol).as("symbol of " + factory.getName()).isNotNull();
    Quantity<?> made = (Quantity<?>) factory.invoke(null, 12.75);
    double inSi = made.toSystemUnit().getValue().doubleValue();
    // kg, not g, is the system unit of mass; the factor of the text form is checked in UnitsTest.
    double expected = QuantityText.factor(symbol).multiply(BigDecimal.valueOf(12.75)).doubleValue();
    assertThat(inSi).isCloseTo(expected, relative(ROUNDING));
  }

  @ParameterizedTest
  @MethodSource("factories")
  void a_factory_refuses_a_number_that_is_not_finite(Method factory) {
    for (double bad : new double[] {Double.NaN, Double.POSITIVE_INFINITY}) {
      assertThatThrownBy(() -> factory.invoke(null, bad))
          .isInstanceOf(InvocationTargetException.class)
          .cause()
          .isInstanceOf(IllegalArgumentException.class)
          .hasMessageContaining("finite");
    }
  }

  @Test
  void every_factory_is_checked() {
    assertThat(factories().map(Method::getName))
        .containsExactlyInAnyOrderElementsOf(SYMBOLS.keySet());
  }

  @ParameterizedTest
  @ValueSource(doubles = {0, -3.5, 1e-9, 1e12})
  void an_amount_in_the_si_unit_keeps_its_number(double value) {
    assertThat(Si.value(Amounts.newtons(value), Kind.FORCE, "force")).isEqualTo(value);
  }
}
