package org.boleline.working.check;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.boleline.explain.Symbol;

/**
 * The units in which a person works, and the factors between them that get lost.
 *
 * @param metric whether the metre and the newton may be meant
 * @param footPound whether the foot and the pound may be meant
 */
record PersonsUnits(boolean metric, boolean footPound) {
  static final double FOOT = 0.3048;
  private static final double INCH = 0.0254;
  private static final double POUND = 0.45359237;
  private static final double POUND_FORCE = 4.4482216152605;

  /** Factors between units of the same system that get lost, by the unit of the number. */
  private static final Map<String, List<Double>> METRIC =
      Map.of(
          "m", List.of(100.0, 1000.0),
          "m2", List.of(1e4, 1e6),
          "m3", List.of(1000.0, 1e6, 1e9),
          "m4", List.of(1e8, 1e12),
          "N", List.of(1000.0),
          "N/m", List.of(1000.0),
          "N.m", List.of(100.0, 1000.0),
          "Pa", List.of(1000.0, 1e6),
          "J", List.of(1000.0),
          "kg", List.of(1000.0));

  /** Centimetres and millimetres: diameters are given in either. */
  private static final double CENTIMETRE_IN_MILLIMETRES = 10;

  private static final Map<String, List<Double>> FOOT_POUND =
      Map.of(
          "m", List.of(12.0),
          "m2", List.of(144.0),
          "m3", List.of(1728.0),
          "m4", List.of(20736.0),
          "N.m", List.of(12.0),
          "J", List.of(12.0),
          "Pa", List.of(144.0),
          "N/m", List.of(12.0));

  /** Factors between both systems. */
  private static final Map<String, List<Double>> BETWEEN =
      Map.of(
          "m", List.of(1 / FOOT, 1 / INCH),
          "N", List.of(POUND_FORCE),
          "kg", List.of(1 / POUND),
          "N.m", List.of(POUND_FORCE * FOOT),
          "J", List.of(POUND_FORCE * FOOT),
          "m/s", List.of(1 / FOOT));

  /** What a wrong power of a number is off by: the size of the unit the person works in. */
  private static final Map<String, List<Double>> METRIC_UNITS =
      Map.of("m", List.of(1.0, 0.01, 0.001), "N", List.of(1.0, 1000.0));

  private static final Map<String, List<Double>> FOOT_POUND_UNITS =
      Map.of("m", List.of(FOOT, INCH), "N", List.of(POUND_FORCE), "m/s", List.of(FOOT));

  /** The units that those of the written numbers tell of; both systems if they tell of none. */
  static PersonsUnits of(Set<String> written) {
    boolean feet = written.stream().anyMatch(PersonsUnits::isFootPound);
    boolean metres =
        written.stream()
            .anyMatch(unit -> !isFootPound(unit) && !Set.of("1", "deg", "rad").contains(unit));
    return new PersonsUnits(metres || !feet, feet || !metres);
  }

  private static boolean isFootPound(String unit) {
    return unit.contains("lb")
        || unit.contains("ft")
        || unit.startsWith("in")
        || unit.equals("psi");
  }

  /** Whether a number is a diameter or a radius. */
  static boolean isAcross(Symbol symbol) {
    return symbol.unit().equals("m")
        && (symbol.meaning().contains("diameter") || symbol.meaning().contains("radius"));
  }

  /** Factors of conversions that get lost or turned round. */
  Set<Double> conversions(Symbol symbol) {
    Set<Double> factors = new LinkedHashSet<>();
    if (metric) {
      factors.addAll(METRIC.getOrDefault(symbol.unit(), List.of()));
      if (isAcross(symbol)) {
        factors.add(CENTIMETRE_IN_MILLIMETRES);
      }
    }
    if (footPound) {
      factors.addAll(FOOT_POUND.getOrDefault(symbol.unit(), List.of()));
    }
    factors.addAll(BETWEEN.getOrDefault(symbol.unit(), List.of()));
    return factors;
  }

  /** Sizes of the units in which a number may be written, in ours. */
  Set<Double> sizes(String unit) {
    Set<Double> sizes = new LinkedHashSet<>();
    if (metric) {
      sizes.addAll(METRIC_UNITS.getOrDefault(unit, List.of(1.0)));
    }
    if (footPound) {
      sizes.addAll(FOOT_POUND_UNITS.getOrDefault(unit, List.of(1.0)));
    }
    return sizes;
  }
}
