package org.boleline.working.check;

import static java.util.Objects.requireNonNull;

/** A way of going wrong in a hand calculation that has a name. */
public enum Slip {
  /** Steps were rounded before the end, and the rounding grew. */
  EARLY_ROUNDING("rounded too early"),
  /** The angle between the legs stands for the turn of the rope, or the turn for that angle. */
  ANGLE_FOR_TURN("the angle between the legs and the turn of the rope were mixed up"),
  /** Friction acts the wrong way: the tight side of a point was taken for its slack side. */
  FRICTION_REVERSED("friction was taken the wrong way round, raising for lowering or the reverse"),
  /** The two legs of a point with friction were taken to pull alike. */
  NO_FRICTION("friction was left out"),
  /** Degrees went where the equation wants radians. */
  DEGREES_FOR_RADIANS("degrees were put in where radians are wanted"),
  /** The tension of one leg was taken for both. */
  ONE_TENSION("one tension was used for both legs"),
  /** The two tensions were added as numbers, as if both legs pulled the same way. */
  LEGS_ADDED("the tensions of the legs were added as if both pulled the same way"),
  /** The angle between the legs was halved, or its half not taken. */
  HALF_ANGLE("the angle between the legs was halved once too often, or not at all"),
  /** A count of wraps went where an angle is wanted, or the reverse. */
  WRAPS_FOR_RADIANS("wraps and radians were mixed up"),
  /** A diameter stands for a radius, or a radius for a diameter. */
  DIAMETER_FOR_RADIUS("diameter and radius were mixed up"),
  /** A mass in kilograms stands for a force in newtons, or the reverse. */
  MASS_FOR_FORCE("mass and force were mixed up (the acceleration of gravity left out or put in)"),
  /** The acceleration of gravity is another one, such as a rounded one. */
  OTHER_GRAVITY("another acceleration of gravity was taken"),
  /** Pounds of mass and pounds of force, with the gravity in feet between them. */
  POUND_MASS_FOR_FORCE("pounds of mass and of force were mixed up (32.174 left out or put in)"),
  /** The resting load stands for the peak. */
  STATIC_FOR_PEAK("the load at rest was taken for the peak"),
  /** The weight of the body itself was left out. */
  NO_OWN_WEIGHT("the own weight was left out"),
  /** Only the rope on one side of a point was counted. */
  ROPE_ON_ONE_SIDE("only the rope on one side of the point was counted"),
  /** A sine stands for a cosine, or the reverse. */
  SINE_FOR_COSINE("sine and cosine were mixed up"),
  /** A sum stands for a difference, or a number has the other sign. */
  WRONG_SIGN("a sign was turned round"),
  /** A power one too low or too high, such as squared for cubed. */
  WRONG_POWER("a power is one too low or too high, such as squared for cubed"),
  /** Pi was taken as three. */
  PI_IS_THREE("pi was taken as 3"),
  /** A force stands for a moment: its arm was left out. */
  NO_ARM("a force was taken for a moment: its arm was left out"),
  /** A factor between units is missing or the wrong way round. */
  CONVERSION("a conversion between units was left out or turned round");

  private final String words;

  Slip(String words) {
    this.words = requireNonNull(words);
  }

  /**
   * Returns the slip in words that follow "as if".
   *
   * @return the words, for instance {@code pi was taken as 3}
   */
  public String words() {
    return words;
  }
}
