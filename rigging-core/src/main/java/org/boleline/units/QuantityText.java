package org.boleline.units;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
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
  private static final Map<String, Entry> TABLE = table();

  private record Entry(Kind<?> kind, BigDecimal factor) {}

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
    @Nullable Entry entry = form.matches() ? TABLE.get(form.group(2)) : null;
    if (entry == null || entry.kind() != kind) {
      throw new IllegalArgumentException("wants " + wants(kind) + ", got \"" + text + "\"");
    }
    double value = new BigDecimal(form.group(1)).multiply(entry.factor(), DIGITS).doubleValue();
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
    List<String> symbols = new ArrayList<>();
    TABLE.forEach(
        (symbol, entry) -> {
          if (entry.kind() == kind) {
            symbols.add(symbol);
          }
        });
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
    @Nullable Entry entry = TABLE.get(symbol);
    if (entry == null) {
      throw new IllegalArgumentException("unknown unit symbol \"" + symbol + "\"");
    }
    return entry.factor();
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
    BigDecimal exact = new BigDecimal(value);
    BigDecimal shortest = exact;
    for (int digits = 1; digits <= 17; digits = digits < 15 ? 15 : digits + 1) {
      shortest = exact.round(new MathContext(digits, RoundingMode.HALF_EVEN));
      if (shortest.doubleValue() == value) {
        break;
      }
    }
    shortest = shortest.stripTrailingZeros();
    int exponent = shortest.precision() - shortest.scale() - 1;
    if (exponent >= -6 && exponent < 21) {
      return shortest.toPlainString();
    }
    String digits = shortest.unscaledValue().abs().toString();
    return (value < 0 ? "-" : "")
        + digits.charAt(0)
        + (digits.length() > 1 ? "." + digits.substring(1) : "")
        + "e"
        + exponent;
  }

  private static Map<String, Entry> table() {
    Map<String, Entry> t = new LinkedHashMap<>();
    put(t, Kind.LENGTH, "m", "1");
    put(t, Kind.LENGTH, "cm", "0.01");
    put(t, Kind.LENGTH, "mm", "0.001");
    t.put("ft", new Entry(Kind.LENGTH, FOOT));
    t.put("in", new Entry(Kind.LENGTH, INCH));
    put(t, Kind.ANGLE, "rad", "1");
    t.put("deg", new Entry(Kind.ANGLE, PI.divide(new BigDecimal(180), DIGITS)));
    put(t, Kind.MASS, "kg", "1");
    put(t, Kind.MASS, "g", "0.001");
    put(t, Kind.MASS, "t", "1000");
    t.put("lb", new Entry(Kind.MASS, POUND));
    put(t, Kind.TIME, "s", "1");
    put(t, Kind.TIME, "ms", "0.001");
    put(t, Kind.TIME, "min", "60");
    put(t, Kind.FORCE, "N", "1");
    put(t, Kind.FORCE, "kN", "1000");
    put(t, Kind.FORCE, "MN", "1000000");
    t.put("lbf", new Entry(Kind.FORCE, POUND_FORCE));
    t.put("kgf", new Entry(Kind.FORCE, KILOGRAM_FORCE));
    put(t, Kind.PRESSURE, "Pa", "1");
    put(t, Kind.PRESSURE, "kPa", "1000");
    put(t, Kind.PRESSURE, "MPa", "1000000");
    put(t, Kind.PRESSURE, "GPa", "1000000000");
    put(t, Kind.PRESSURE, "N/mm2", "1000000");
    t.put("psi", new Entry(Kind.PRESSURE, POUND_FORCE.divide(INCH.pow(2), DIGITS)));
    put(t, Kind.ENERGY, "J", "1");
    put(t, Kind.ENERGY, "kJ", "1000");
    t.put("ft.lbf", new Entry(Kind.ENERGY, POUND_FORCE.multiply(FOOT)));
    put(t, Kind.AREA, "m2", "1");
    put(t, Kind.AREA, "cm2", "0.0001");
    put(t, Kind.AREA, "mm2", "0.000001");
    t.put("ft2", new Entry(Kind.AREA, FOOT.pow(2)));
    t.put("in2", new Entry(Kind.AREA, INCH.pow(2)));
    put(t, Kind.VOLUME, "m3", "1");
    t.put("ft3", new Entry(Kind.VOLUME, FOOT.pow(3)));
    put(t, Kind.ACCELERATION, "m/s2", "1");
    t.put("ft/s2", new Entry(Kind.ACCELERATION, FOOT));
    put(t, Kind.MOMENT, "N.m", "1");
    put(t, Kind.MOMENT, "kN.m", "1000");
    t.put("lbf.ft", new Entry(Kind.MOMENT, POUND_FORCE.multiply(FOOT)));
    put(t, Kind.ROTATIONAL_STIFFNESS, "N.m/rad", "1");
    put(t, Kind.ROTATIONAL_STIFFNESS, "kN.m/rad", "1000");
    put(t, Kind.ROTATIONAL_STIFFNESS, "MN.m/rad", "1000000");
    t.put(
        "kN.m/deg",
        new Entry(Kind.ROTATIONAL_STIFFNESS, new BigDecimal(180000).divide(PI, DIGITS)));
    t.put("lbf.ft/rad", new Entry(Kind.ROTATIONAL_STIFFNESS, POUND_FORCE.multiply(FOOT)));
    put(t, Kind.STIFFNESS, "N/m", "1");
    put(t, Kind.STIFFNESS, "kN/m", "1000");
    t.put("lbf/ft", new Entry(Kind.STIFFNESS, POUND_FORCE.divide(FOOT, DIGITS)));
    put(t, Kind.FLEXURAL_RIGIDITY, "N.m2", "1");
    put(t, Kind.FLEXURAL_RIGIDITY, "kN.m2", "1000");
    put(t, Kind.LINEAR_DENSITY, "kg/m", "1");
    put(t, Kind.LINEAR_DENSITY, "g/m", "0.001");
    t.put("lb/ft", new Entry(Kind.LINEAR_DENSITY, POUND.divide(FOOT, DIGITS)));
    put(t, Kind.DENSITY, "kg/m3", "1");
    put(t, Kind.DENSITY, "t/m3", "1000");
    t.put("lb/ft3", new Entry(Kind.DENSITY, POUND.divide(FOOT.pow(3), DIGITS)));
    put(t, Kind.SECOND_MOMENT_OF_AREA, "m4", "1");
    return Collections.unmodifiableMap(t);
  }

  private static void put(Map<String, Entry> table, Kind<?> kind, String symbol, String factor) {
    table.put(symbol, new Entry(kind, new BigDecimal(factor)));
  }
}
