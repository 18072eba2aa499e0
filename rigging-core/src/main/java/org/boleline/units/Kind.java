package org.boleline.units;

import static java.util.Objects.requireNonNull;

import javax.measure.Quantity;
import javax.measure.Unit;
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

/**
 * What a quantity is of, with its coherent SI unit and that unit's UCUM code.
 *
 * <p>A kind says more than a dimension: moment and energy share a dimension, and so do angle and a
 * pure number, yet one must not stand for the other.
 *
 * @param <Q> the quantity type
 */
public final class Kind<Q extends Quantity<Q>> {
  /** Length, in metres. */
  public static final Kind<Length> LENGTH = new Kind<>("length", Units.METRE, "m");

  /** Plane angle, in radians; written in degrees. */
  public static final Kind<Angle> ANGLE = new Kind<>("angle", Units.RADIAN, "rad");

  /** Mass, in kilograms. */
  public static final Kind<Mass> MASS = new Kind<>("mass", Units.KILOGRAM, "kg");

  /** Time, in seconds. */
  public static final Kind<Time> TIME = new Kind<>("time", Units.SECOND, "s");

  /** Force, in newtons. */
  public static final Kind<Force> FORCE = new Kind<>("force", Units.NEWTON, "N");

  /** Stress or modulus of elasticity, in pascals. */
  public static final Kind<Pressure> PRESSURE = new Kind<>("stress", Units.PASCAL, "Pa");

  /** Energy, in joules. */
  public static final Kind<Energy> ENERGY = new Kind<>("energy", Units.JOULE, "J");

  /** Area, in square metres. */
  public static final Kind<Area> AREA = new Kind<>("area", Units.SQUARE_METRE, "m2");

  /** Volume, in cubic metres. */
  public static final Kind<Volume> VOLUME = new Kind<>("volume", Units.CUBIC_METRE, "m3");

  /** Speed, in metres per second. */
  public static final Kind<Speed> SPEED = new Kind<>("speed", Units.METRE_PER_SECOND, "m/s");

  /** Acceleration, in metres per second squared. */
  public static final Kind<Acceleration> ACCELERATION =
      new Kind<>("acceleration", Units.METRE_PER_SQUARE_SECOND, "m/s2");

  /** Frequency: turns or swings in a time. */
  public static final Kind<Frequency> FREQUENCY = new Kind<>("frequency", Units.HERTZ, "Hz");

  /** Moment of a force, in newton metres. */
  public static final Kind<Moment> MOMENT = new Kind<>("moment", Units.NEWTON_METRE, "N.m");

  /** Rotational stiffness, in newton metres per radian. */
  public static final Kind<RotationalStiffness> ROTATIONAL_STIFFNESS =
      new Kind<>("rotational stiffness", Units.NEWTON_METRE_PER_RADIAN, "N.m/rad");

  /** Stiffness, in newtons per metre. */
  public static final Kind<Stiffness> STIFFNESS =
      new Kind<>("stiffness", Units.NEWTON_PER_METRE, "N/m");

  /** Flexural rigidity, in newton square metres. */
  public static final Kind<FlexuralRigidity> FLEXURAL_RIGIDITY =
      new Kind<>("flexural rigidity", Units.NEWTON_SQUARE_METRE, "N.m2");

  /** Mass for each length, in kilograms per metre. */
  public static final Kind<LinearDensity> LINEAR_DENSITY =
      new Kind<>("linear density", Units.KILOGRAM_PER_METRE, "kg/m");

  /** Mass for each volume, in kilograms per cubic metre. */
  public static final Kind<Density> DENSITY =
      new Kind<>("density", Units.KILOGRAM_PER_CUBIC_METRE, "kg/m3");

  /** Section modulus, in cubic metres. */
  public static final Kind<SectionModulus> SECTION_MODULUS =
      new Kind<>("section modulus", Units.METRE_CUBED, "m3");

  /** Second moment of area, in metres to the fourth power. */
  public static final Kind<SecondMomentOfArea> SECOND_MOMENT_OF_AREA =
      new Kind<>("second moment of area", Units.METRE_TO_THE_FOURTH, "m4");

  private final String name;
  private final Unit<Q> siUnit;
  private final String ucum;

  private Kind(String name, Unit<Q> siUnit, String ucum) {
    this.name = requireNonNull(name);
    this.siUnit = requireNonNull(siUnit);
    this.ucum = requireNonNull(ucum);
  }

  /**
   * Returns the name of the kind, such as "length".
   *
   * @return the name, lower case
   */
  public String name() {
    return name;
  }

  /**
   * Returns the coherent SI unit of the kind.
   *
   * @return the unit
   */
  public Unit<Q> siUnit() {
    return siUnit;
  }

  /**
   * Returns the UCUM code of the SI unit, such as "N.m".
   *
   * @return the code
   */
  public String ucum() {
    return ucum;
  }

  @Override
  public String toString() {
    return name;
  }
}
