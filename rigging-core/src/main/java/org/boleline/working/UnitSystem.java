package org.boleline.working;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Map;
import java.util.regex.Pattern;
import org.boleline.explain.Symbol;
import org.boleline.units.QuantityText;

/** The units in which a worksheet shows its numbers. The formulas work in SI either way. */
public enum UnitSystem {
  /** Units of the SI; angles in radians, as the formulas take them, with degrees beside them. */
  SI,
  /** Foot, inch, pound and pound-force, with the conversion of every number. */
  FOOT_POUND;

  private static final MathContext DIGITS = new MathContext(34);

  /** Lengths that people measure in inches. */
  private static final Pattern ACROSS =
      Pattern.compile("(?i).*\\b(diameter|radius|cavity|thickness|width|off centre)\\b.*");

  private static final Map<String, String> SHOWN =
      Map.ofEntries(
          Map.entry("N", "lbf"),
          Map.entry("m", "ft"),
          Map.entry("m2", "in2"),
          Map.entry("m3", "ft3"),
          Map.entry("m4", "in4"),
          Map.entry("Pa", "psi"),
          Map.entry("N.m", "lbf.ft"),
          Map.entry("J", "ft.lbf"),
          Map.entry("J/m", "ft.lbf/ft"),
          Map.entry("kg", "lb"),
          Map.entry("kg/m3", "lb/ft3"),
          Map.entry("m/s", "ft/s"),
          Map.entry("m/s2", "ft/s2"),
          Map.entry("N/m", "lbf/ft"),
          Map.entry("m/N", "ft/lbf"),
          Map.entry("rad", "deg"));

  /** The unit that a symbol's number is shown in, as its code and its size in the SI unit. */
  record Shown(String code, BigDecimal factor) {
    boolean isSi() {
      return factor.compareTo(BigDecimal.ONE) == 0;
    }

    double of(double siValue) {
      return BigDecimal.valueOf(siValue).divide(factor, DIGITS).doubleValue();
    }
  }

  Shown shown(Symbol symbol) {
    return shown(symbol.unit(), symbol.meaning());
  }

  Shown shown(String unit, String meaning) {
    if (this == SI || !SHOWN.containsKey(unit)) {
      return new Shown(unit, BigDecimal.ONE);
    }
    String code = SHOWN.get(unit);
    if (unit.equals("m") && ACROSS.matcher(meaning).matches()) {
      code = "in";
    } else if (unit.equals("m3") && meaning.contains("modulus")) {
      code = "in3";
    }
    return new Shown(code, factor(code));
  }

  private static BigDecimal factor(String code) {
    BigDecimal pound = QuantityText.factor("lbf");
    BigDecimal foot = QuantityText.factor("ft");
    return switch (code) {
      case "in3" -> QuantityText.factor("in").pow(3);
      case "in4" -> QuantityText.factor("in").pow(4);
      case "ft.lbf/ft" -> pound;
      case "ft/lbf" -> foot.divide(pound, DIGITS);
      default -> QuantityText.factor(code);
    };
  }
}
