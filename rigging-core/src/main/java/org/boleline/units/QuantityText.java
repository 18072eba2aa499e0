package org.boleline.units;

import static java.util.Objects.requireNonNull;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.measure.Quantity;
import org.jspecify.annotations.Nullable;

/**
 * The text form of quantities in plan files: a number, one space, a unit symbol of a closed table.
 *
 * <p>Decimal point, never a comma; no locale; no guess. {@code "12.5 m"}, {@code "14 in"}, {@code
 * "25 deg"}, {@code "9 GPa"}, {@code "2.5 MN.m/rad"}. The number is converted in decimal arithmetic
 * and rounded to a double once, so that {@code "36 cm"} and {@code "0.36 m"} are the same double.
 */
public final class QuantityText {
  private static final Pattern FORM =
      Pattern.compile(
          "([-+]?[0-9]+(?:\\.[0-9]+)?(?:[eE][-+]?[0-9]{1,3})?) ([A-Za-z][A-Za-z0-9./]*)");
  private static final BigDecimal PI =
      new BigDecimal("3.14159265358979323846264338327950288419716939937510582");
  private static final MathContext DIGITS = new MathContext(50);
  private static final BigDecimal FOOT = new BigDecimal("0.3048");
  private static final BigDecimal INCH = new BigDecimal("0.0254");
  private static final BigDecimal POUND = new BigDecimal("0.45359237");
  private static final BigDecimal POUND_FORCE = new BigDecimal("4.4482216152605");
  private static final BigDecimal KILOGRAM_FORCE = new BigDecimal("9.80665");

  /** For each kind its symbols, the usual one first, with their factors to the SI unit. */
  private static final Map<Kind<?>, Map<String, BigDecimal>> TABLE = table();

  private QuantityText() {}

  /**
   * Reads a quantity of a wanted kind.
   *
   * @param <Q> the quantity type
   * @param text the text, such as {@code "12.5 m"}
   * @param kind what is wanted
   * @return the quantity, in the SI unit of the kind
   * @throws IllegalArgumentException if the text does not have the form, the unit is unknown, the
   *     quantity is of another kind, or the number does not fit a double; the message tells what
   *     was wanted and what came
   */
  public static <Q extends Quantity<Q>> Quantity<Q> parse(String text, Kind<Q> kind) {
    Matcher form = FORM.matcher(text);
    @Nullable BigDecimal factor = form.matches() ? factors(kind).get(form.group(2)) : null;
    if (factor == null) {
      throw new IllegalArgumentException("wants " + wants(kind) + ", got \"" + text + "\"");
    }
    double value = new BigDecimal(form.group(1)).multiply(factor, DIGITS).doubleValue();
    if (!Double.isFinite(value)) {
      throw new IllegalArgumentException(
          "wants " + wants(kind) + " that fits a number, got \"" + text + "\"");
    }
    return Si.of(value, kind);
  }

  /**
   * Tells what a place wants, for messages: the kind and a few of its unit symbols.
   *
   * @param kind the kind
   * @return for instance {@code a quantity of length like "12.5 m" (m, cm, mm, ft, in)}
   */
  public static String wants(Kind<?> kind) {
    List<String> symbols = symbols(kind);
    return "a quantity of "
        + kind
        + " like \"12.5 "
        + symbols.get(0)
        + "\" ("
        + String.join(", ", symbols)
        + ")";
  }

  /**
   * Returns the unit symbols that are read for a kind, the usual one first.
   *
   * @param kind the kind
   * @return the symbols
   */
  public static List<String> symbols(Kind<?> kind) {
    return List.copyOf(factors(kind).keySet());
  }

  /**
   * Returns the unit symbols that are read for the kinds with a given SI unit, the usual ones
   * first: for {@code m3} those of volumes and of section moduli.
   *
   * @param siSymbol symbol of an SI unit, such as {@code "N"}
   * @return the symbols; the given one alone if no kind has that SI unit
   */
  public static List<String> symbolsOf(String siSymbol) {
    Set<String> symbols = new LinkedHashSet<>(List.of(siSymbol));
    for (Map<String, BigDecimal> factors : TABLE.values()) {
      if (factors.keySet().iterator().next().equals(siSymbol)) {
        symbols.addAll(factors.keySet());
      }
    }
    return List.copyOf(symbols);
  }

  /**
   * Returns the exact factor of a unit symbol to the SI unit of its kind.
   *
   * @param symbol a symbol of the table, such as {@code "psi"}
   * @return the factor, to 50 digits where it has no finite decimal form
   * @throws IllegalArgumentException if the symbol is not in the table
   */
  public static BigDecimal factor(String symbol) {
    for (Map<String, BigDecimal> factors : TABLE.values()) {
      @Nullable BigDecimal factor = factors.get(symbol);
      if (factor != null) {
        return factor;
      }
    }
    throw new IllegalArgumentException("unknown unit symbol \"" + symbol + "\"");
  }

  private static Map<String, BigDecimal> factors(Kind<?> kind) {
    return requireNonNull(TABLE.get(kind), kind.name());
  }

  /**
   * Writes a quantity in the SI unit of its kind, in the form that {@link #parse} reads back to the
   * same double.
   *
   * @param <Q> the quantity type
   * @param quantity the quantity
   * @param kind its kind
   * @return the text, such as {@code "0.36 m"}
   */
  public static <Q extends Quantity<Q>> String print(Quantity<Q> quantity, Kind<Q> kind) {
    return print(Si.value(quantity, kind, kind.name()), kind);
  }

  static String print(double siValue, Kind<?> kind) {
    return number(siValue) + " " + symbols(kind).get(0);
  }

  /**
   * Writes a number with the fewest digits that read back to the same double.
   *
   * @param value a finite number; minus zero is written as zero
   * @return the text: plain up to 1e21 and down to 1e-6, else with an exponent
   * @throws IllegalArgumentException if the value is not finite
   */
  public static String number(double value) {
    if (!Double.isFinite(value)) {
      throw new IllegalArgumentException("wants a finite number, got " + value);
    }
    if (value == 0) {
      return "0";
    }
    if (value == Math.rint(value) && Math.abs(value) < 1e15) {
      return Long.toString((long) value);
    }
    return text(shortest(value));
  }

  /**
   * Writes a number rounded to a few digits, halves to even.
   *
   * @param value a finite number; minus zero is written as zero
   * @param digits how many digits, at least one
   * @return the text, in the form of {@link #number(double)}
   * @throws IllegalArgumentException if the value is not finite
   */
  public static String number(double value, int digits) {
    if (!Double.isFinite(value)) {
      throw new IllegalArgumentException("wants a finite number, got " + value);
    }
    MathContext few = new MathContext(digits, RoundingMode.HALF_EVEN);
    return value == 0 ? "0" : text(BigDecimal.valueOf(value).round(few).stripTrailingZeros());
  }

  /** Writes a number other than zero that ends with no zero behind the point. */
  private static String text(BigDecimal number) {
    int exponent = number.precision() - number.scale() - 1;
    if (exponent >= -6 && exponent < 21) {
      return number.toPlainString();
    }
    String digits = number.unscaledValue().abs().toString();
    return (number.signum() < 0 ? "-" : "")
        + digits.charAt(0)
        + (digits.length() > 1 ? "." + digits.substring(1) : "")
        + "e"
        + exponent;
  }

  private static BigDecimal shortest(double value) {
    BigDecimal exact = new BigDecimal(value);
    // Above a power of two the doubles lie wider apart than below: away from zero a number may
    // read back where the nearest one of as many digits does not.
    boolean powerOfTwo = Math.abs(value) == Math.scalb(1.0, Math.getExponent(value));
    // Of a normal double, 15 digits tell whether any lower count will do.
    int digits = Math.abs(value) < Double.MIN_NORMAL ? 1 : 15;
    while (true) {
      BigDecimal rounded = exact.round(new MathContext(digits, RoundingMode.HALF_EVEN));
      if (rounded.doubleValue() != value && powerOfTwo) {
        rounded = exact.round(new MathContext(digits, RoundingMode.UP));
      }
      if (rounded.doubleValue() == value) {
        return rounded.stripTrailingZeros();
      }
      digits++;
    }
  }

  private static Map<Kind<?>, Map<String, BigDecimal>> table() {
    Map<Kind<?>, Map<String, BigDecimal>> t = new LinkedHashMap<>();
    put(t, Kind.LENGTH, "m", BigDecimal.ONE);
    put(t, Kind.LENGTH, "cm", new BigDecimal("0.01"));
    put(t, Kind.LENGTH, "mm", new BigDecimal("0.001"));
    put(t, Kind.LENGTH, "ft", FOOT);
    put(t, Kind.LENGTH, "in", INCH);
    put(t, Kind.ANGLE, "rad", BigDecimal.ONE);
    put(t, Kind.ANGLE, "deg", PI.divide(new BigDecimal(180), DIGITS));
    put(t, Kind.MASS, "kg", BigDecimal.ONE);
    put(t, Kind.MASS, "g", new BigDecimal("0.001"));
    put(t, Kind.MASS, "t", new BigDecimal("1000"));
    put(t, Kind.MASS, "lb", POUND);
    put(t, Kind.TIME, "s", BigDecimal.ONE);
    put(t, Kind.TIME, "ms", new BigDecimal("0.001"));
    put(t, Kind.TIME, "min", new BigDecimal("60"));
    put(t, Kind.FORCE, "N", BigDecimal.ONE);
    put(t, Kind.FORCE, "kN", new BigDecimal("1000"));
    put(t, Kind.FORCE, "MN", new BigDecimal("1000000"));
    put(t, Kind.FORCE, "lbf", POUND_FORCE);
    put(t, Kind.FORCE, "kgf", KILOGRAM_FORCE);
    put(t, Kind.PRESSURE, "Pa", BigDecimal.ONE);
    put(t, Kind.PRESSURE, "kPa", new BigDecimal("1000"));
    put(t, Kind.PRESSURE, "MPa", new BigDecimal("1000000"));
    put(t, Kind.PRESSURE, "GPa", new BigDecimal("1000000000"));
    put(t, Kind.PRESSURE, "N/mm2", new BigDecimal("1000000"));
    put(t, Kind.PRESSURE, "psi", POUND_FORCE.divide(INCH.pow(2), DIGITS));
    put(t, Kind.ENERGY, "J", BigDecimal.ONE);
    put(t, Kind.ENERGY, "kJ", new BigDecimal("1000"));
    put(t, Kind.ENERGY, "ft.lbf", POUND_FORCE.multiply(FOOT));
    put(t, Kind.AREA, "m2", BigDecimal.ONE);
    put(t, Kind.AREA, "cm2", new BigDecimal("0.0001"));
    put(t, Kind.AREA, "mm2", new BigDecimal("0.000001"));
    put(t, Kind.AREA, "ft2", FOOT.pow(2));
    put(t, Kind.AREA, "in2", INCH.pow(2));
    put(t, Kind.VOLUME, "m3", BigDecimal.ONE);
    put(t, Kind.VOLUME, "ft3", FOOT.pow(3));
    put(t, Kind.SPEED, "m/s", BigDecimal.ONE);
    put(t, Kind.SPEED, "ft/s", FOOT);
    put(t, Kind.FREQUENCY, "Hz", BigDecimal.ONE);
    put(t, Kind.ACCELERATION, "m/s2", BigDecimal.ONE);
    put(t, Kind.ACCELERATION, "ft/s2", FOOT);
    put(t, Kind.MOMENT, "N.m", BigDecimal.ONE);
    put(t, Kind.MOMENT, "kN.m", new BigDecimal("1000"));
    put(t, Kind.MOMENT, "lbf.ft", POUND_FORCE.multiply(FOOT));
    put(t, Kind.MOMENT, "lbf.in", POUND_FORCE.multiply(INCH));
    put(t, Kind.ROTATIONAL_STIFFNESS, "N.m/rad", BigDecimal.ONE);
    put(t, Kind.ROTATIONAL_STIFFNESS, "kN.m/rad", new BigDecimal("1000"));
    put(t, Kind.ROTATIONAL_STIFFNESS, "MN.m/rad", new BigDecimal("1000000"));
    put(t, Kind.ROTATIONAL_STIFFNESS, "kN.m/deg", new BigDecimal(180000).divide(PI, DIGITS));
    put(t, Kind.ROTATIONAL_STIFFNESS, "lbf.ft/rad", POUND_FORCE.multiply(FOOT));
    put(t, Kind.STIFFNESS, "N/m", BigDecimal.ONE);
    put(t, Kind.STIFFNESS, "kN/m", new BigDecimal("1000"));
    put(t, Kind.STIFFNESS, "lbf/ft", POUND_FORCE.divide(FOOT, DIGITS));
    put(t, Kind.FLEXURAL_RIGIDITY, "N.m2", BigDecimal.ONE);
    put(t, Kind.FLEXURAL_RIGIDITY, "kN.m2", new BigDecimal("1000"));
    put(t, Kind.LINEAR_DENSITY, "kg/m", BigDecimal.ONE);
    put(t, Kind.LINEAR_DENSITY, "g/m", new BigDecimal("0.001"));
    put(t, Kind.LINEAR_DENSITY, "lb/ft", POUND.divide(FOOT, DIGITS));
    put(t, Kind.DENSITY, "kg/m3", BigDecimal.ONE);
    put(t, Kind.DENSITY, "t/m3", new BigDecimal("1000"));
    put(t, Kind.DENSITY, "lb/ft3", POUND.divide(FOOT.pow(3), DIGITS));
    put(t, Kind.SECTION_MODULUS, "m3", BigDecimal.ONE);
    put(t, Kind.SECTION_MODULUS, "cm3", new BigDecimal("1e-6"));
    put(t, Kind.SECTION_MODULUS, "mm3", new BigDecimal("1e-9"));
    put(t, Kind.SECTION_MODULUS, "in3", INCH.pow(3));
    put(t, Kind.SECOND_MOMENT_OF_AREA, "m4", BigDecimal.ONE);
    put(t, Kind.SECOND_MOMENT_OF_AREA, "cm4", new BigDecimal("1e-8"));
    put(t, Kind.SECOND_MOMENT_OF_AREA, "mm4", new BigDecimal("1e-12"));
    put(t, Kind.SECOND_MOMENT_OF_AREA, "in4", INCH.pow(4));
    return Collections.unmodifiableMap(t);
  }

  private static void put(
      Map<Kind<?>, Map<String, BigDecimal>> table, Kind<?> kind, String symbol, BigDecimal factor) {
    table.computeIfAbsent(kind, k -> new LinkedHashMap<>()).put(symbol, factor);
  }
}
