package org.boleline.units;

import javax.measure.Quantity;
import javax.measure.Unit;
import javax.measure.quantity.Angle;
import javax.measure.quantity.Force;
import javax.measure.quantity.Length;
import javax.measure.quantity.Mass;
import javax.measure.quantity.Pressure;
import javax.measure.quantity.Speed;
import javax.measure.quantity.Time;
import tech.units.indriya.quantity.Quantities;

/**
 * Short factories for amounts, for code that reads like the plan: {@code metres(12.5)}, {@code
 * degrees(25)}.
 *
 * <p>Each factory throws {@link IllegalArgumentException} if the number is not finite.
 */
public final class Amounts {
  private Amounts() {}

  private static <Q extends Quantity<Q>> Quantity<Q> amount(double value, Unit<Q> unit) {
    if (!Double.isFinite(value)) {
      throw new IllegalArgumentException("wants a finite number of " + unit + ", got " + value);
    }
    return Quantities.getQuantity(value, unit);
  }

  /**
   * Makes an amount in metres.
   *
   * @param value how many metres
   * @return the amount
   */
  public static Quantity<Length> metres(double value) {
    return amount(value, Units.METRE);
  }

  /**
   * Makes an amount in centimetres.
   *
   * @param value how many centimetres
   * @return the amount
   */
  public static Quantity<Length> centimetres(double value) {
    return amount(value, Units.CENTIMETRE);
  }

  /**
   * Makes an amount in millimetres.
   *
   * @param value how many millimetres
   * @return the amount
   */
  public static Quantity<Length> millimetres(double value) {
    return amount(value, Units.MILLIMETRE);
  }

  /**
   * Makes an amount in international feet.
   *
   * @param value how many international feet
   * @return the amount
   */
  public static Quantity<Length> feet(double value) {
    return amount(value, Units.FOOT);
  }

  /**
   * Makes an amount in international inches.
   *
   * @param value how many international inches
   * @return the amount
   */
  public static Quantity<Length> inches(double value) {
    return amount(value, Units.INCH);
  }

  /**
   * Makes an amount in degrees.
   *
   * @param value how many degrees
   * @return the amount
   */
  public static Quantity<Angle> degrees(double value) {
    return amount(value, Units.DEGREE);
  }

  /**
   * Makes an amount in radians.
   *
   * @param value how many radians
   * @return the amount
   */
  public static Quantity<Angle> radians(double value) {
    return amount(value, Units.RADIAN);
  }

  /**
   * Makes an amount in kilograms.
   *
   * @param value how many kilograms
   * @return the amount
   */
  public static Quantity<Mass> kilograms(double value) {
    return amount(value, Units.KILOGRAM);
  }

  /**
   * Makes an amount in international pounds.
   *
   * @param value how many international pounds
   * @return the amount
   */
  public static Quantity<Mass> pounds(double value) {
    return amount(value, Units.POUND);
  }

  /**
   * Makes an amount in newtons.
   *
   * @param value how many newtons
   * @return the amount
   */
  public static Quantity<Force> newtons(double value) {
    return amount(value, Units.NEWTON);
  }

  /**
   * Makes an amount in kilonewtons.
   *
   * @param value how many kilonewtons
   * @return the amount
   */
  public static Quantity<Force> kilonewtons(double value) {
    return amount(value, Units.KILONEWTON);
  }

  /**
   * Makes an amount in pounds-force.
   *
   * @param value how many pounds-force
   * @return the amount
   */
  public static Quantity<Force> poundsForce(double value) {
    return amount(value, Units.POUND_FORCE);
  }

  /**
   * Makes an amount in pascals.
   *
   * @param value how many pascals
   * @return the amount
   */
  public static Quantity<Pressure> pascals(double value) {
    return amount(value, Units.PASCAL);
  }

  /**
   * Makes an amount in megapascals.
   *
   * @param value how many megapascals
   * @return the amount
   */
  public static Quantity<Pressure> megapascals(double value) {
    return amount(value, Units.MEGAPASCAL);
  }

  /**
   * Makes an amount in gigapascals.
   *
   * @param value how many gigapascals
   * @return the amount
   */
  public static Quantity<Pressure> gigapascals(double value) {
    return amount(value, Units.GIGAPASCAL);
  }

  /**
   * Makes an amount in pounds-force per square inch.
   *
   * @param value how many pounds-force per square inch
   * @return the amount
   */
  public static Quantity<Pressure> poundsPerSquareInch(double value) {
    return amount(value, Units.PSI);
  }

  /**
   * Makes an amount in kilograms per cubic metre.
   *
   * @param value how many kilograms per cubic metre
   * @return the amount
   */
  public static Quantity<Density> kilogramsPerCubicMetre(double value) {
    return amount(value, Units.KILOGRAM_PER_CUBIC_METRE);
  }

  /**
   * Makes an amount in pounds per cubic foot.
   *
   * @param value how many pounds per cubic foot
   * @return the amount
   */
  public static Quantity<Density> poundsPerCubicFoot(double value) {
    return amount(value, Units.POUND_PER_CUBIC_FOOT);
  }

  /**
   * Makes an amount in kilograms per metre.
   *
   * @param value how many kilograms per metre
   * @return the amount
   */
  public static Quantity<LinearDensity> kilogramsPerMetre(double value) {
    return amount(value, Units.KILOGRAM_PER_METRE);
  }

  /**
   * Makes an amount in newton metres.
   *
   * @param value how many newton metres
   * @return the amount
   */
  public static Quantity<Moment> newtonMetres(double value) {
    return amount(value, Units.NEWTON_METRE);
  }

  /**
   * Makes an amount in newton metres per radian.
   *
   * @param value how many newton metres per radian
   * @return the amount
   */
  public static Quantity<RotationalStiffness> newtonMetresPerRadian(double value) {
    return amount(value, Units.NEWTON_METRE_PER_RADIAN);
  }

  /**
   * Makes an amount in seconds.
   *
   * @param value how many seconds
   * @return the amount
   */
  public static Quantity<Time> seconds(double value) {
    return amount(value, Units.SECOND);
  }

  /**
   * Makes an amount in metres per second.
   *
   * @param value how many metres per second
   * @return the amount
   */
  public static Quantity<Speed> metresPerSecond(double value) {
    return amount(value, Units.METRE_PER_SECOND);
  }
}
