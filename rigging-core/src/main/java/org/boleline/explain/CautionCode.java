package org.boleline.explain;

/**
 * The registry of cautions: stable codes, each with one English sentence.
 *
 * <p>Words in braces are filled from {@link Caution#values()}.
 */
public enum CautionCode {
  /** A number lies outside the range a formula was shown to hold for. */
  OUTSIDE_RANGE(
      "{symbol} = {value} lies outside the range {least} to {most} that formula {formula} is known"
          + " for; it was computed all the same."),
  /** A leg of the rope passes through a stem. */
  ROPE_THROUGH_STEM(
      "The leg from {from} to {to} passes {distance} from the axis of stem {stem} at station {at},"
          + " nearer than its radius {radius}: the rope would bear on bark there, which this"
          + " calculation leaves out."),
  /** The tail comes down close to the line of the load. */
  TAIL_UNDER_LOAD(
      "The tail comes down {distance} from the line of the load: whoever works it stands under the"
          + " piece."),
  /** The greatest compression exceeds the strength of the wood. */
  STRENGTH_REACHED(
      "Stem {stem} reaches the stated strength of its wood at {factor} times this load, before the"
          + " full load."),
  /** Stability is lost before the strength is reached. */
  STABILITY_BEFORE_STRENGTH(
      "Stem {stem}: the loading path loses stability at {factor} times this load, before the"
          + " stated strength is reached."),
  /** The loaded stem has little stiffness left. */
  LOW_STIFFNESS(
      "Only {ratio} of the unloaded stiffness is left: movements grow fast with a little more load,"
          + " and small errors of the inputs weigh much."),
  /** The stem moves so far that the plan's geometry is no longer what a crew would see. */
  LARGE_MOVEMENT(
      "The end of stem {stem} moves {movement}, more than a tenth of its length: check that the plan"
          + " is meant so."),
  /** A point or the piece's attachment comes to lie below the ground the stem stands on. */
  BELOW_BASE("Contact {contact} comes to lie below the base of its stem."),
  /** Raising through the wraps of a lowering device. */
  RAISING_THROUGH_WRAPS(
      "Raising through the wraps of the device ({wraps}) takes {hand} at the hand: take wraps off before raising."),
  /** The hold needed at the ground is above what the plan says a worker can hold. */
  HOLD_ABOVE_HAND_FORCE(
      "The ground worker must hold {needed}, more than the {stated} that the plan states: {wraps}"
          + " wraps would do at this friction."),
  /** A held load can run: the lower end of the held interval. */
  HELD_IS_A_RANGE(
      "Held at rest, every tension may lie anywhere between the lowering and the raising value; the"
          + " lowering end is the one about to run."),
  /** Static result: a piece that falls or swings loads the rope far more. */
  SLOW_AND_STEADY(
      "These are forces of slow, steady motion. A piece that drops, swings or is stopped short loads"
          + " rope, points and stem far beyond them."),
  /** A drop is stated in the plan but was not worked out. */
  DROP_NOT_ANALYSED("The plan states a drop that is not worked out here: {why}."),
  /** A catch by energy balance. */
  CATCH_BY_ENERGY(
      "These are forces of an energy balance: rope without mass and damping, a piece that falls"
          + " straight and does not break up. They were not compared with measured drops."),
  /** A catch that was followed in time. */
  CATCH_IN_TIME(
      "These are forces of a catch followed step by step: rope and hardware without mass, stems that"
          + " bend by their lowest modes, nothing that breaks or is struck. They were not compared"
          + " with measured drops."),
  /** The modes that count leave out much of how far the stems give way. */
  FEW_MODES(
      "The modes of the stems that are counted make up only {share} of how far the points give way:"
          + " the forces of a sudden pull may be too high."),
  /** The stretch curve was used beyond its last point. */
  STRETCH_EXTRAPOLATED(
      "The rope carries {tension}, beyond the last point of its stretch curve ({last}): the curve"
          + " was continued at its last slope."),
  /** The stretch curve is of a slow pull. */
  SLOW_STRETCH_CURVE(
      "The stretch curve is of a slow pull. Pulled fast, a rope is mostly stiffer and the force"
          + " higher: state a curve or a factor for drops."),
  /** The stretch curve is of new rope. */
  NEW_ROPE_CURVE(
      "The stretch curve is of new rope. A worked rope is mostly stiffer and the force higher."),
  /** Points or the load hang on springs without mass. */
  SPRINGS_WITHOUT_MASS(
      "What holds the points gives way as springs without mass. That is no bound: the forces may be"
          + " higher or lower."),
  /** The rope would not slip toward the load all the time. */
  SLIP_NOT_TOWARD_LOAD(
      "Point {point} moves so that the rope would slip over it away from the load for a while; the"
          + " calculation takes it as slipping toward the load."),
  /** Letting it run may fail. */
  LET_RUN_MAY_FAIL(
      "A worker may fail to let the rope run, or a device to slip: then the load leg takes {locked},"
          + " not {running}."),
  /** Friction of slow motion stands for that of a catch. */
  CATCH_FRICTION_SLOW(
      "How the {hardware} acts in a catch is not stated: its friction of slow motion was taken. In a"
          + " catch it may differ much; a sheave may not spin up."),
  /** Limits are stated in the plan but this analysis did not check them. */
  LIMITS_NOT_CHECKED(
      "The plan states limits; this analysis did not compare them with the demands."),
  /** A factor is asked for, and no part was compared that it is asked of. */
  FACTOR_ASKED_OF_NOTHING(
      "The plan asks the factor {factor} of \"{part}\"; nothing that was compared is asked for it. A"
          + " working load limit is asked for a factor by its own name alone."),
  /** A limit for the peak of a catch, and no catch. */
  LIMIT_WITHOUT_PEAK(
      "The limit \"{name}\" is for the peak of a catch. None is worked out here, so it was not"
          + " compared."),
  /** A limit for a rope that runs was compared with the locked catch. */
  LIMIT_TAKES_LOCKED(
      "The limit \"{name}\" is for a rope that is let run, but {why}: the catch with the rope made"
          + " fast was taken."),
  /** Nothing is taken off the strength of a rope or sling. */
  STRENGTH_NOT_REDUCED(
      "For \"{name}\" nothing is taken off the strength for knots, splices, bends, wear or wet: in"
          + " use a rope or sling has less."),
  /** The peak of a catch was put on a stem at rest. */
  PEAK_ON_STEM_AT_REST(
      "For \"{name}\" the peak of the rope was put on the stem at rest in the shape of the slow"
          + " load: how it gives way further, and its mass in motion, are left out."),
  /** A value was taken from memory by the authors of the data. */
  DATUM_FROM_MEMORY("{name} = {value} was taken from data that is from memory: replace it."),
  /** Wood data of small clear specimens stand for a whole green stem. */
  CLEAR_WOOD_DATA(
      "Wood values of stem {stem} come from small clear specimens; a living stem with knots, decay"
          + " or reaction wood may lie well below."),
  /** No wood strength is known, so no load factor to strength is given. */
  NO_STRENGTH("No strength is stated for stem {stem}: its stress is given but not judged."),
  /** The rope's own weight is left out of the forces. */
  ROPE_WEIGHT_LEFT_OUT(
      "The rope's own weight ({weight} for the legs whose length is known, {share} of the load) is"
          + " left out of the forces."),
  /** A leg whose weight counts is far from straight. */
  ROPE_SAGS(
      "The leg from {from} to {to} weighs {weight} at a tension of only {tension}: it sags more than"
          + " this calculation of a taut rope follows."),
  /** The hand leg behind a lowering device is left out of the pull on the stem. */
  HAND_LEG_LEFT_OUT(
      "The pull of the hand behind the lowering device ({hand}) is left out of the forces on stem"
          + " {stem}: its direction is not stated."),
  /** A slack rope comes taut with the piece moving along it. */
  ROPE_COMES_TAUT(
      "The rope goes slack and comes taut {count} times, at most with {speed} along it, like a fall"
          + " of {height}: how hard it pulls then is not in the tensions of the swing."),
  /** Some ranges are intervals. */
  RANGE_OF_A_BOX(
      "Some ranges of {arrangement} are intervals: its least and greatest figures are those found at"
          + " corners and samples, and no chance follows from them."),
  /** Samples of a study have no result. */
  SAMPLES_WITHOUT_RESULT(
      "{lost} of {samples} samples of {arrangement} have no result ({unstable} unstable, {refused}"
          + " refused, {notSolved} not solved): its figures are those of the others.");

  private final String sentence;

  CautionCode(String sentence) {
    this.sentence = sentence;
  }

  /**
   * Returns the English sentence with its blanks in braces.
   *
   * @return the sentence
   */
  public String sentence() {
    return sentence;
  }
}
