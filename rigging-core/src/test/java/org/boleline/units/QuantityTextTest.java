package org.boleline.units;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.boleline.Tolerances.EXACT;
import static org.boleline.Tolerances.absolute;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.List;
import java.util.Locale;
import javax.measure.Quantity;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.Tuple;
import net.jqwik.api.Tuple.Tuple2;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class QuantityTextTest {
  private static final List<Locale> LOCALES =
      List.of(
          Locale.GERMANY, Locale.forLanguageTag("tr"), Locale.forLanguageTag("ar-EG"), Locale.ROOT);

  // Reading

  /** Right column: by the definitions of the units, in SI. */
  @ParameterizedTest
  @CsvSource({
    "12.5 m, 12.5",
    "36 cm, 0.36",
    "14 in, 0.3556",
    "-0.25 m, -0.25",
    "+3 m, 3",
    "1.5e3 mm, 1.5",
    "40 ft, 12.192",
    "0 m, 0"
  })
  void a_length_is_read_to_the_nearest_double(String text, double metres) {
    assertThat(length(text)).isEqualTo(metres);
  }

  @Test
  void other_quantities_are_read_to_the_nearest_double() {
    assertThat(si("330 lb", Kind.MASS)).isEqualTo(149.6854821);
    assertThat(si("9 GPa", Kind.PRESSURE)).isEqualTo(9e9);
    assertThat(si("3560 psi", Kind.PRESSURE)).isEqualTo(24545335.9624, near(24545335.9624));
    assertThat(si("1.8 kN", Kind.FORCE)).isEqualTo(1800);
    assertThat(si("400 lbf", Kind.FORCE)).isEqualTo(1779.2886461042);
    assertThat(si("1000 kg/m3", Kind.DENSITY)).isEqualTo(1000);
    assertThat(si("2.5 MN.m/rad", Kind.ROTATIONAL_STIFFNESS)).isEqualTo(2.5e6);
    assertThat(si("0.9 s", Kind.TIME)).isEqualTo(0.9);
    assertThat(si("25 deg", Kind.ANGLE)).isEqualTo(Math.PI * 25 / 180, near(0.44));
  }

  @Test
  void equal_lengths_in_two_units_are_the_same_double() {
    assertThat(length("36 cm")).isEqualTo(length("0.36 m")).isEqualTo(length("360 mm"));
    assertThat(length("1 ft")).isEqualTo(length("12 in"));
  }

  @Test
  void a_right_angle_is_the_double_nearest_to_it() {
    assertThat(si("90 deg", Kind.ANGLE)).isEqualTo(Math.PI / 2);
    assertThat(si("180 deg", Kind.ANGLE)).isEqualTo(Math.PI);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "1,5 m",
        "12.5m",
        "12.5  m",
        " 12.5 m",
        "12.5 m ",
        "12.5\u00a0m",
        "12.5\tm",
        "NaN m",
        "Infinity m",
        "1'000 m",
        "1 000 m",
        "1_000 m",
        "12 kg",
        "12 parsec",
        "12 M",
        "1e999 m",
        "0x10 m",
        "1.5f m",
        ".5 m",
        "5. m",
        "--5 m",
        "1/2 m",
        "1e m",
        "\u0661\u0662 m",
        "12",
        "m",
        ""
      })
  void what_is_not_a_length_is_refused_and_the_message_says_what_was_wanted_and_what_came(
      String text) {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> QuantityText.parse(text, Kind.LENGTH))
        .withMessageContaining("wants a quantity of length like \"12.5 m\" (m, cm, mm, ft, in)")
        .withMessageContaining("got \"" + text + "\"");
  }

  @Test
  void an_energy_does_not_pass_for_a_moment_nor_a_volume_unit_of_another_kind() {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> QuantityText.parse("5 J", Kind.MOMENT))
        .withMessageContaining("moment");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> QuantityText.parse("5 N.m", Kind.ENERGY))
        .withMessageContaining("energy");
  }

  @Test
  void an_unknown_symbol_has_no_factor() {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> QuantityText.factor("furlong"))
        .withMessageContaining("furlong");
  }

  // Round trips

  @Provide
  Arbitrary<Tuple2<Kind<?>, String>> symbols() {
    return Arbitraries.of(KindTest.kinds())
        .flatMap(
            kind ->
                Arbitraries.of(QuantityText.symbols(kind))
                    .map(symbol -> Tuple.<Kind<?>, String>of(kind, symbol)));
  }

  @Property
  void every_symbol_is_read_as_number_times_factor_rounded_once(
      @ForAll("symbols") Tuple2<Kind<?>, String> symbol, @ForAll("numbers") double value) {
    BigDecimal exact =
        new BigDecimal(QuantityText.number(value))
            .multiply(QuantityText.factor(symbol.get2()), new MathContext(50));
    assertThat(si(QuantityText.number(value) + " " + symbol.get2(), symbol.get1()))
        .isEqualTo(exact.doubleValue());
  }

  @Property
  void what_is_printed_is_read_back_to_the_same_double(
      @ForAll("symbols") Tuple2<Kind<?>, String> symbol, @ForAll("numbers") double value) {
    assertThat(printedAndRead(value, symbol.get1())).isEqualTo(value);
  }

  @Property
  void locales_change_nothing(
      @ForAll("symbols") Tuple2<Kind<?>, String> symbol, @ForAll("numbers") double value) {
    Locale before = Locale.getDefault();
    String text = QuantityText.number(value) + " " + symbol.get2();
    double read = si(text, symbol.get1());
    String printed = QuantityText.print(read, symbol.get1());
    try {
      for (Locale locale : LOCALES) {
        Locale.setDefault(locale);
        assertThat(QuantityText.number(value) + " " + symbol.get2()).isEqualTo(text);
        assertThat(si(text, symbol.get1())).isEqualTo(read);
        assertThat(QuantityText.print(read, symbol.get1())).isEqualTo(printed);
      }
    } finally {
      Locale.setDefault(before);
    }
  }

  @Test
  void a_refusal_reads_the_same_in_every_locale() {
    Locale before = Locale.getDefault();
    try {
      for (Locale locale : LOCALES) {
        Locale.setDefault(locale);
        assertThatIllegalArgumentException()
            .isThrownBy(() -> QuantityText.parse("12.5 kg", Kind.LENGTH))
            .withMessage(
                "wants a quantity of length like \"12.5 m\" (m, cm, mm, ft, in), got \"12.5 kg\"");
        assertThatIllegalArgumentException()
            .isThrownBy(() -> Si.valueAboveZero(Amounts.metres(-1234.5), Kind.LENGTH, "reach"))
            .withMessage("reach: wants more than zero, got -1234.5 m");
      }
    } finally {
      Locale.setDefault(before);
    }
  }

  // Numbers

  @Provide
  Arbitrary<Double> numbers() {
    return Arbitraries.oneOf(
        Arbitraries.doubles().between(-1e12, 1e12).ofScale(6),
        Arbitraries.integers().between(-1_000_000, 1_000_000).map(Integer::doubleValue),
        Arbitraries.doubles().between(1e-12, 1).ofScale(16));
  }

  /**
   * Every bit pattern that is a finite number, powers of two and the smallest numbers among them.
   */
  @Provide
  Arbitrary<Double> anyFinite() {
    return Arbitraries.oneOf(
        Arbitraries.longs().map(Double::longBitsToDouble).filter(Double::isFinite),
        Arbitraries.integers().between(-1074, 1023).map(power -> Math.scalb(1.0, power)),
        Arbitraries.longs().between(1, 5000).map(Double::longBitsToDouble));
  }

  @Property(tries = 3000)
  void a_number_reads_back_and_is_never_longer_than_the_digits_of_the_platform(
      @ForAll("anyFinite") double value) {
    String text = QuantityText.number(value);
    assertThat(Double.parseDouble(text)).isEqualTo(value == 0 ? 0.0 : value);
    assertThat(text).matches("-?[0-9]+(\\.[0-9]+)?(e-?[0-9]+)?");
    assertThat(digits(text)).isLessThanOrEqualTo(digits(Double.toString(value)));
  }

  @Property(tries = 3000)
  void no_number_of_fewer_digits_reads_back(@ForAll("anyFinite") double value) {
    int digits = digits(QuantityText.number(value));
    if (digits > 1) {
      BigDecimal exact = new BigDecimal(value);
      for (RoundingMode mode : List.of(RoundingMode.DOWN, RoundingMode.UP)) {
        assertThat(exact.round(new MathContext(digits - 1, mode)).doubleValue())
            .isNotEqualTo(value);
      }
    }
  }

  @ParameterizedTest
  @CsvSource({
    "0.0, 0",
    "-0.0, 0",
    "1.0, 1",
    "0.1, 0.1",
    "-2.5, -2.5",
    "1765.2, 1765.2",
    "1e-6, 0.000001",
    "1e-7, 1e-7",
    "-1.5e-7, -1.5e-7",
    "123456789012345678, 123456789012345680",
    "1e21, 1e21",
    "1.5e300, 1.5e300",
    "4.9e-324, 5e-324",
    "1.5e-323, 1.5e-323",
    "5.684341886080802e-14, 5.684341886080802e-14"
  })
  void a_number_is_plain_within_reach_and_has_an_exponent_beyond(double value, String text) {
    assertThat(QuantityText.number(value)).isEqualTo(text);
  }

  @ParameterizedTest
  @ValueSource(doubles = {Double.NaN, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY})
  void what_is_not_a_number_is_not_written(double value) {
    assertThatIllegalArgumentException().isThrownBy(() -> QuantityText.number(value));
  }

  private static int digits(String number) {
    String mantissa = number.replaceFirst("[eE].*", "").replaceAll("[-.]", "");
    return mantissa.replaceAll("^0+", "").replaceAll("0+$", "").length();
  }

  private static double length(String text) {
    return si(text, Kind.LENGTH);
  }

  private static <Q extends Quantity<Q>> double si(String text, Kind<Q> kind) {
    return Si.value(QuantityText.parse(text, kind), kind, "read");
  }

  private static <Q extends Quantity<Q>> double printedAndRead(double value, Kind<Q> kind) {
    return si(QuantityText.print(Si.of(value, kind), kind), kind);
  }

  private static Offset<Double> near(double scale) {
    return absolute(EXACT * scale);
  }
}
