package org.boleline.units;

import java.math.BigDecimal;
import java.util.List;
import javax.measure.Unit;
import org.jspecify.annotations.Nullable;

/**
 * The factor of a unit of {@link Units} to its SI unit, for a quick way through the gateway.
 *
 * <p>Kept as the sum of two doubles, to more than 100 bits, so that a product is rounded once, as
 * the exact conversion is.
 */
final class Factor {
  private static final List<Factor> ALL =
      List.of(
          new Factor(Units.DEGREE, Units.RADIAN),
          new Factor(Units.CENTIMETRE, Units.METRE),
          new Factor(Units.MILLIMETRE, Units.METRE),
          new Factor(Units.FOOT, Units.METRE),
          new Factor(Units.INCH, Units.METRE),
          new Factor(Units.KILONEWTON, Units.NEWTON),
          new Factor(Units.POUND_FORCE, Units.NEWTON),
          new Factor(Units.KILOGRAM_FORCE, Units.NEWTON),
          new Factor(Units.GIGAPASCAL, Units.PASCAL),
          new Factor(Units.MEGAPASCAL, Units.PASCAL),
          new Factor(Units.PSI, Units.PASCAL),
          new Factor(Units.POUND, Units.KILOGRAM),
          new Factor(Units.TONNE, Units.KILOGRAM),
          new Factor(Units.POUND_PER_CUBIC_FOOT, Units.KILOGRAM_PER_CUBIC_METRE),
          new Factor(Units.POUND_PER_FOOT, Units.KILOGRAM_PER_METRE),
          new Factor(Units.KILONEWTON_METRE, Units.NEWTON_METRE),
          new Factor(Units.POUND_FORCE_FOOT, Units.NEWTON_METRE));

  private final Unit<?> unit;
  private final Unit<?> si;
  private final double high;
  private final double low;

  private Factor(Unit<?> unit, Unit<?> si) {
    this.unit = unit;
    this.si = si;
    BigDecimal exact = QuantityText.factor(unit.getSymbol());
    high = exact.doubleValue();
    low = exact.subtract(new BigDecimal(high)).doubleValue();
  }

  /** The factor of a unit to an SI unit; null if it is not one of this package. */
  static @Nullable Factor of(Unit<?> unit, Unit<?> si) {
    for (Factor factor : ALL) {
      if (factor.unit == unit) {
        return factor.si == si ? factor : null;
      }
    }
    return null;
  }

  double times(double value) {
    return Math.fma(high, value, low * value);
  }
}
