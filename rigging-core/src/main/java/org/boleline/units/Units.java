package org.boleline.units;

import java.math.BigInteger;
import javax.measure.Quantity;
import javax.measure.Unit;
import javax.measure.UnitConverter;
import javax.measure.quantity.Acceleration;
import javax.measure.quantity.Angle;
import javax.measure.quantity.Area;
import javax.measure.quantity.Energy;
import javax.measure.quantity.Force;
import javax.measure.quantity.Frequency;
import javax.measure.quantity.Length;
import javax.measure.quantity.Mass;
import javax.measure.quantity.Pressure;
import javax.measure.quantity.Speed;
import javax.measure.quantity.Time;
import javax.measure.quantity.Volume;
import tech.units.indriya.AbstractUnit;
import tech.units.indriya.function.MultiplyConverter;
import tech.units.indriya.unit.ProductUnit;
import tech.units.indriya.unit.TransformedUnit;

/**
 * Unit constants, each exact by its definition.
 *
 * <p>Foot (0.3048 m), pound (0.45359237 kg) and inch (0.0254 m) are exact by the international yard
 * and pound agreement of 1959; standard gravity (9.80665 m/s2) is exact by the third General
 * Conference on Weights and Measures of 1901; pound-force follows from the two.
 */
public final class Units {
  /** Metre, SI unit of length. */
  public static final Unit<Length> METRE = tech.units.indriya.unit.Units.METRE;

  /** Kilogram, SI unit of mass. */
  public static final Unit<Mass> KILOGRAM = tech.units.indriya.unit.Units.KILOGRAM;

  /** Second, SI unit of time. */
  public static final Unit<Time> SECOND = tech.units.indriya.unit.Units.SECOND;

  /** Newton, SI unit of force. */
  public static final Unit<Force> NEWTON = tech.units.indriya.unit.Units.NEWTON;

  /** Pascal, SI unit of stress and of modulus of elasticity. */
  public static final Unit<Pressure> PASCAL = tech.units.indriya.unit.Units.PASCAL;

  /** Joule, SI unit of energy. */
  public static final Unit<Energy> JOULE = tech.units.indriya.unit.Units.JOULE;

  /** Radian, SI unit of plane angle. */
  public static final Unit<Angle> RADIAN = tech.units.indriya.unit.Units.RADIAN;

  /** Square metre, SI unit of area. */
  public static final Unit<Area> SQUARE_METRE = tech.units.indriya.unit.Units.SQUARE_METRE;

  /** Cubic metre, SI unit of volume. */
  public static final Unit<Volume> CUBIC_METRE = tech.units.indriya.unit.Units.CUBIC_METRE;

  /** Metre per second, SI unit of speed. */
  public static final Unit<Speed> METRE_PER_SECOND = tech.units.indriya.unit.Units.METRE_PER_SECOND;

  /** Metre per second squared, SI unit of acceleration. */
  public static final Unit<Acceleration> METRE_PER_SQUARE_SECOND =
      tech.units.indriya.unit.Units.METRE_PER_SQUARE_SECOND;

  /** Hertz, SI unit of frequency. */
  public static final Unit<Frequency> HERTZ = tech.units.indriya.unit.Units.HERTZ;

  /** Newton metre, SI unit of moment. */
  public static final Unit<Moment> NEWTON_METRE = product(NEWTON.multiply(METRE));

  /** Newton metre per radian, SI unit of rotational stiffness. */
  public static final Unit<RotationalStiffness> NEWTON_METRE_PER_RADIAN =
      product(NEWTON.multiply(METRE).divide(RADIAN));

  /** Newton per metre, SI unit of stiffness. */
  public static final Unit<Stiffness> NEWTON_PER_METRE = product(NEWTON.divide(METRE));

  /** Newton square metre, SI unit of flexural rigidity. */
  public static final Unit<FlexuralRigidity> NEWTON_SQUARE_METRE =
      product(NEWTON.multiply(METRE.pow(2)));

  /** Kilogram per metre, SI unit of linear density. */
  public static final Unit<LinearDensity> KILOGRAM_PER_METRE = product(KILOGRAM.divide(METRE));

  /** Kilogram per cubic metre, SI unit of density. */
  public static final Unit<Density> KILOGRAM_PER_CUBIC_METRE =
      product(KILOGRAM.divide(METRE.pow(3)));

  /** Cubic metre, SI unit of section modulus. */
  public static final Unit<SectionModulus> METRE_CUBED = product(METRE.pow(3));

  /** Metre to the fourth power, SI unit of second moment of area. */
  public static final Unit<SecondMomentOfArea> METRE_TO_THE_FOURTH = product(METRE.pow(4));

  /** Centimetre, 0.01 m. */
  public static final Unit<Length> CENTIMETRE = scaled("cm", "Centimetre", METRE, 1, 100);

  /** Millimetre, 0.001 m. */
  public static final Unit<Length> MILLIMETRE = scaled("mm", "Millimetre", METRE, 1, 1000);

  /** International foot, 0.3048 m. */
  public static final Unit<Length> FOOT = scaled("ft", "Foot", METRE, 3048, 10000);

  /** International inch, 0.0254 m. */
  public static final Unit<Length> INCH = scaled("in", "Inch", METRE, 254, 10000);

  /** Degree of angle, pi / 180 rad. */
  public static final Unit<Angle> DEGREE =
      new TransformedUnit<>(
          "deg",
          "Degree",
          RADIAN,
          MultiplyConverter.ofPiExponent(1).concatenate(MultiplyConverter.ofRational(1, 180)));

  /** Tonne, 1000 kg. */
  public static final Unit<Mass> TONNE = scaled("t", "Tonne", KILOGRAM, 1000, 1);

  /** International pound, 0.45359237 kg. */
  public static final Unit<Mass> POUND = scaled("lb", "Pound", KILOGRAM, 45359237, 100000000);

  /** Kilonewton, 1000 N. */
  public static final Unit<Force> KILONEWTON = scaled("kN", "Kilonewton", NEWTON, 1000, 1);

  /** Pound-force, 4.4482216152605 N. */
  public static final Unit<Force> POUND_FORCE =
      new TransformedUnit<>(
          "lbf",
          "Pound-force",
          NEWTON,
          MultiplyConverter.ofRational(
              new BigInteger("44482216152605"), new BigInteger("10000000000000")));

  /** Kilogram-force, 9.80665 N. */
  public static final Unit<Force> KILOGRAM_FORCE =
      scaled("kgf", "Kilogram-force", NEWTON, 980665, 100000);

  /** Megapascal, 1e6 Pa. */
  public static final Unit<Pressure> MEGAPASCAL = scaled("MPa", "Megapascal", PASCAL, 1000000, 1);

  /** Gigapascal, 1e9 Pa. */
  public static final Unit<Pressure> GIGAPASCAL =
      scaled("GPa", "Gigapascal", PASCAL, 1000000000, 1);

  /** Pound-force per square inch, 4.4482216152605 N over (0.0254 m) squared. */
  public static final Unit<Pressure> PSI =
      new TransformedUnit<>(
          "psi",
          "Pound-force per square inch",
          PASCAL,
          MultiplyConverter.ofRational(
              new BigInteger("44482216152605"), new BigInteger("6451600000")));

  /** Kilonewton metre, 1000 N.m. */
  public static final Unit<Moment> KILONEWTON_METRE =
      scaled("kN.m", "Kilonewton metre", NEWTON_METRE, 1000, 1);

  /** Pound-force foot, 1.3558179483314004 N.m. */
  public static final Unit<Moment> POUND_FORCE_FOOT =
      new TransformedUnit<>(
          "lbf.ft",
          "Pound-force foot",
          NEWTON_METRE,
          MultiplyConverter.ofRational(
              new BigInteger("13558179483314004"), new BigInteger("10000000000000000")));

  /** Pound per cubic foot, 0.45359237 kg over (0.3048 m) cubed. */
  public static final Unit<Density> POUND_PER_CUBIC_FOOT =
      new TransformedUnit<>(
          "lb/ft3",
          "Pound per cubic foot",
          KILOGRAM_PER_CUBIC_METRE,
          MultiplyConverter.ofRational(
              new BigInteger("45359237000000000000"), new BigInteger("2831684659200000000")));

  /** Pound per foot, 0.45359237 kg over 0.3048 m. */
  public static final Unit<LinearDensity> POUND_PER_FOOT =
      new TransformedUnit<>(
          "lb/ft",
          "Pound per foot",
          KILOGRAM_PER_METRE,
          MultiplyConverter.ofRational(new BigInteger("45359237"), new BigInteger("30480000")));

  private Units() {}

  private static <Q extends Quantity<Q>> Unit<Q> scaled(
      String symbol, String name, Unit<Q> si, long numerator, long denominator) {
    UnitConverter factor = MultiplyConverter.ofRational(numerator, denominator);
    return new TransformedUnit<>(symbol, name, si, factor);
  }

  /** The dimension of each such unit is compared with a hand-written one in the tests. */
  @SuppressWarnings("unchecked")
  private static <Q extends Quantity<Q>> Unit<Q> product(Unit<?> unit) {
    return unit instanceof AbstractUnit<?> ? (Unit<Q>) unit : (Unit<Q>) ProductUnit.ofPow(unit, 1);
  }
}
