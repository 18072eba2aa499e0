package org.boleline.wood;

import java.util.List;
import java.util.regex.Pattern;
import javax.measure.Quantity;
import org.boleline.explain.Refusal;
import org.boleline.explain.Refusal.Code;
import org.boleline.units.Kind;
import org.boleline.units.QuantityText;
import org.boleline.units.Si;

/** What a pack of species may know of one, all of green wood. */
public enum SpeciesProperty {
  /** Oven-dry mass over green volume, over the density of water (1000 kg/m3): a pure number. */
  BASIC_SPECIFIC_GRAVITY("basic_specific_gravity", "strength_source", Form.NUMBER, 0.05, 1.5),

  /** Modulus of elasticity as tabulated, from centre-loaded beams: shear is still in it. */
  APPARENT_MODULUS("apparent_modulus", "strength_source", Form.STRESS, 1e6, 1e12),

  /** Modulus of elasticity free of shear. A species has this one or the apparent one. */
  MODULUS("modulus", "strength_source", Form.STRESS, 1e6, 1e12),

  /** Modulus of rupture: bending moment at failure over section modulus. */
  MODULUS_OF_RUPTURE("modulus_of_rupture", "strength_source", Form.STRESS, 1e4, 1e10),

  /** Greatest compression along the grain. */
  CRUSHING_STRENGTH("crushing_strength", "strength_source", Form.STRESS, 1e4, 1e10),

  /** Compression along the grain at the elastic limit. */
  COMPRESSION_ELASTIC_LIMIT("compression_elastic_limit", "strength_source", Form.STRESS, 1e4, 1e10),

  /** Compression across the grain, at the limit of proportionality. */
  COMPRESSION_ACROSS("compression_across", "strength_source", Form.STRESS, 1e3, 1e10),

  /** Shear strength along the grain. */
  SHEAR_ALONG("shear_along", "strength_source", Form.STRESS, 1e3, 1e10),

  /** Moisture of green heartwood, in percent of the oven-dry mass. */
  HEARTWOOD_MOISTURE("heartwood_moisture", "moisture_source", Form.NUMBER, 0, 500),

  /** Moisture of green sapwood, in percent of the oven-dry mass. */
  SAPWOOD_MOISTURE("sapwood_moisture", "moisture_source", Form.NUMBER, 0, 500),

  /** Green density as published, of whole logs. */
  GREEN_DENSITY("green_density", "green_density_source", Form.DENSITY, 50, 2500);

  /** How a cell is written. */
  private enum Form {
    NUMBER,
    STRESS,
    DENSITY
  }

  private static final Pattern NUMBER = Pattern.compile("[0-9]+(\\.[0-9]+)?");

  private final String column;
  private final String sourceColumn;
  private final Form form;
  private final double least;
  private final double most;

  SpeciesProperty(String column, String sourceColumn, Form form, double least, double most) {
    this.column = column;
    this.sourceColumn = sourceColumn;
    this.form = form;
    this.least = least;
    this.most = most;
  }

  /**
   * Returns the name of the property's column in a pack.
   *
   * @return the name, such as {@code crushing_strength}
   */
  public String column() {
    return column;
  }

  /**
   * Returns the name of the column that holds the source of the property.
   *
   * @return the name, such as {@code strength_source}
   */
  public String sourceColumn() {
    return sourceColumn;
  }

  /**
   * Reads a cell.
   *
   * @return the value, in the SI unit for a quantity; NaN if it was refused
   */
  double read(String text, String place, List<Refusal> refusals) {
    return switch (form) {
      case NUMBER -> readNumber(text, place, refusals);
      case STRESS -> read(text, Kind.PRESSURE, place, refusals);
      case DENSITY -> read(text, Kind.DENSITY, place, refusals);
    };
  }

  private double readNumber(String text, String place, List<Refusal> refusals) {
    String wants =
        "a number from " + QuantityText.number(least) + " to " + QuantityText.number(most);
    if (!NUMBER.matcher(text).matches()) {
      refusals.add(new Refusal(Code.WRONG_TYPE, place, wants, "\"" + text + "\""));
      return Double.NaN;
    }
    double value = Double.parseDouble(text);
    if (value < least || value > most) {
      refusals.add(new Refusal(Code.OUT_OF_RANGE, place, wants, text));
      return Double.NaN;
    }
    return value;
  }

  private <Q extends Quantity<Q>> double read(
      String text, Kind<Q> wanted, String place, List<Refusal> refusals) {
    double value;
    try {
      value = Si.value(QuantityText.parse(text, wanted), wanted, column);
    } catch (IllegalArgumentException e) {
      String wants = QuantityText.wants(wanted);
      refusals.add(new Refusal(Code.WRONG_QUANTITY, place, wants, "\"" + text + "\""));
      return Double.NaN;
    }
    if (value < least || value > most) {
      String wants =
          "a "
              + wanted
              + " from "
              + Bounds.text(least, wanted)
              + " to "
              + Bounds.text(most, wanted);
      refusals.add(new Refusal(Code.OUT_OF_RANGE, place, wants, text));
      return Double.NaN;
    }
    return value;
  }
}
