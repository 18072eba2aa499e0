package org.boleline.units;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.assertThatNullPointerException;
import static org.boleline.Tolerances.ROUNDING;
import static org.boleline.Tolerances.relative;

import java.lang.reflect.Proxy;
import java.math.BigDecimal;
import java.util.List;
import java.util.Random;
import javax.measure.Quantity;
import javax.measure.Unit;
import javax.measure.quantity.Energy;
import javax.measure.quantity.Force;
import javax.measure.quantity.Length;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import tech.units.indriya.quantity.Quantities;

class SiTest {
  @Test
  void other_units_are_converted() {
    // By definition: 1 ft = 0.3048 m, 1 lbf = 4.4482216152605 N, half a turn = 180 degrees.
    assertThat(Si.value(Amounts.feet(10), Kind.LENGTH, "length"))
        .isCloseTo(3.048, relative(ROUNDING));
    assertThat(Si.value(Amounts.poundsForce(2), Kind.FORCE, "force"))
        .isCloseTo(8.896443230521, relative(ROUNDING));
    assertThat(Si.value(Amounts.degrees(180), Kind.ANGLE, "angle"))
        .isCloseTo(Math.PI, relative(ROUNDING));
  }

  /** Exact decimal arithmetic, rounded to a double once. */
  @Test
  void units_of_this_package_are_converted_with_one_rounding() {
    Random random = new Random(1959);
    for (int i = 0; i < 2000; i++) {
      double wide = (random.nextDouble() - 0.5) * Math.pow(10, random.nextInt(20) - 10);
      double value = i % 4 == 0 ? random.nextInt(2000) - 1000 : wide;
      assertExact(value, Units.CENTIMETRE, Kind.LENGTH);
      assertExact(value, Units.MILLIMETRE, Kind.LENGTH);
      assertExact(value, Units.FOOT, Kind.LENGTH);
      assertExact(value, Units.INCH, Kind.LENGTH);
      assertExact(value, Units.DEGREE, Kind.ANGLE);
      assertExact(value, Units.TONNE, Kind.MASS);
      assertExact(value, Units.POUND, Kind.MASS);
      assertExact(value, Units.KILONEWTON, Kind.FORCE);
      assertExact(value, Units.POUND_FORCE, Kind.FORCE);
      assertExact(value, Units.KILOGRAM_FORCE, Kind.FORCE);
      assertExact(value, Units.MEGAPASCAL, Kind.PRESSURE);
      assertExact(value, Units.GIGAPASCAL, Kind.PRESSURE);
      assertExact(value, Units.PSI, Kind.PRESSURE);
      assertExact(value, Units.KILONEWTON_METRE, Kind.MOMENT);
      assertExact(value, Units.POUND_FORCE_FOOT, Kind.MOMENT);
      assertExact(value, Units.POUND_PER_CUBIC_FOOT, Kind.DENSITY);
      assertExact(value, Units.POUND_PER_FOOT, Kind.LINEAR_DENSITY);
    }
  }

  private static <Q extends Quantity<Q>> void assertExact(
      double value, Unit<Q> unit, Kind<Q> kind) {
    BigDecimal exact = new BigDecimal(value).multiply(QuantityText.factor(unit.getSymbol()));
    assertThat(Si.value(Quantities.getQuantity(value, unit), kind, unit.getSymbol()))
        .as(value + " " + unit.getSymbol())
        .isEqualTo(exact.doubleValue());
    assertThat(Si.value(Quantities.getQuantity(value, unit), kind, unit.getSymbol()))
        .as("the converter of the units library for " + value + " " + unit.getSymbol())
        .isCloseTo(
            unit.getConverterTo(kind.siUnit()).convert((Number) value).doubleValue(),
            relative(ROUNDING));
  }

  @Test
  void a_unit_of_another_kind_slipped_in_through_raw_types_is_refused_as_well() {
    Quantity<Length> wrong = slippedIn(Amounts.degrees(1));
    assertThatIllegalArgumentException()
        .isThrownBy(() -> Si.value(wrong, Kind.LENGTH, "reach"))
        .withMessageContaining("reach");
  }

  @Test
  void a_unit_built_elsewhere_is_converted() {
    Unit<Force> kilogramMetrePerSquareSecond =
        Units.KILOGRAM.multiply(Units.METRE).divide(Units.SECOND.pow(2)).asType(Force.class);
    Quantity<Force> pull = foreign(Force.class, 7.5, kilogramMetrePerSquareSecond);
    assertThat(Si.value(pull, Kind.FORCE, "pull")).isCloseTo(7.5, relative(ROUNDING));
  }

  @Test
  void a_quantity_of_another_kind_slipped_in_through_raw_types_is_refused() {
    Quantity<Length> wrong = slippedIn(Amounts.newtons(1));
    assertThatIllegalArgumentException()
        .isThrownBy(() -> Si.value(wrong, Kind.LENGTH, "reach"))
        .withMessageContaining("reach")
        .withMessageContaining("length");
  }

  @Test
  void a_moment_and_an_energy_share_a_dimension_and_cannot_be_told_apart_by_it() {
    // What the type system keeps apart, the dimension does not: a documented limit.
    Quantity<Energy> energy = slippedIn(Amounts.newtonMetres(3));
    assertThat(Si.value(energy, Kind.ENERGY, "energy")).isEqualTo(3);
  }

  @ParameterizedTest
  @ValueSource(doubles = {Double.NaN, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY})
  void a_value_that_is_not_finite_is_refused_whoever_made_the_quantity(double bad) {
    for (Unit<Length> unit : List.of(Units.METRE, Units.FOOT)) {
      Quantity<Length> quantity = foreign(Length.class, bad, unit);
      assertThatIllegalArgumentException()
          .isThrownBy(() -> Si.value(quantity, Kind.LENGTH, "reach"));
    }
    assertThatIllegalArgumentException().isThrownBy(() -> Si.of(bad, Kind.LENGTH));
  }

  @Test
  void a_conversion_that_overflows_is_refused() {
    assertThatIllegalArgumentException()
        .isThrownBy(
            () -> Si.value(Amounts.gigapascals(Double.MAX_VALUE), Kind.PRESSURE, "modulus"));
  }

  @Test
  void null_is_refused_with_the_name() {
    assertThatNullPointerException()
        .isThrownBy(() -> Si.value(null, Kind.LENGTH, "reach"))
        .withMessage("reach");
  }

  @Test
  void a_sign_that_has_no_meaning_is_refused_with_name_and_value() {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> Si.valueZeroOrMore(Amounts.metres(-1.5), Kind.LENGTH, "sling"))
        .withMessage("sling: wants zero or more, got -1.5 m");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> Si.valueAboveZero(Amounts.centimetres(0), Kind.LENGTH, "radius"))
        .withMessage("radius: wants more than zero, got 0 m");
    assertThat(Si.valueZeroOrMore(Amounts.metres(0), Kind.LENGTH, "sling")).isZero();
    assertThat(Si.valueAboveZero(Amounts.metres(2), Kind.LENGTH, "radius")).isEqualTo(2);
  }

  @Test
  void a_refusal_can_be_written_for_every_kind() {
    Quantity<SectionModulus> negative = Si.of(-1, Kind.SECTION_MODULUS);
    assertThatIllegalArgumentException()
        .isThrownBy(() -> Si.valueAboveZero(negative, Kind.SECTION_MODULUS, "section modulus"))
        .withMessage("section modulus: wants more than zero, got -1 m3");
  }

  @Test
  void what_goes_out_is_in_the_si_unit_of_the_kind() {
    Quantity<Length> reach = Si.of(0.1, Kind.LENGTH);
    assertThat(reach.getUnit()).isEqualTo(Units.METRE);
    assertThat(reach.getValue().doubleValue()).isEqualTo(0.1);
  }

  @SuppressWarnings("unchecked")
  private static <Q extends Quantity<Q>> Quantity<Q> slippedIn(Quantity<?> quantity) {
    return (Quantity<Q>) quantity;
  }

  /** A quantity of an implementation that lets any number through. */
  @SuppressWarnings("unchecked")
  private static <Q extends Quantity<Q>> Quantity<Q> foreign(
      Class<Q> type, double value, Unit<Q> unit) {
    return (Quantity<Q>)
        Proxy.newProxyInstance(
            type.getClassLoader(),
            new Class<?>[] {type},
            (proxy, method, arguments) ->
                switch (method.getName()) {
                  case "getValue" -> value;
                  case "getUnit" -> unit;
                  default -> throw new UnsupportedOperationException(method.getName());
                });
  }
}
