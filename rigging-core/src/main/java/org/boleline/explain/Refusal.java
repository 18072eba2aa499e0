package org.boleline.explain;

/**
 * One reason why an input describes nothing that can be analysed.
 *
 * @param code what kind of reason
 * @param place where: a JSON pointer into the plan, such as {@code /stems/0/length}
 * @param wants what is wanted there, in words
 * @param got what was found, in words
 */
public record Refusal(Code code, String place, String wants, String got) {
  /** Kinds of refusal: stable codes. */
  public enum Code {
    /** The text is not JSON. */
    NOT_JSON,
    /** The document is larger or deeper than is read. */
    TOO_LARGE,
    /** The format name is missing or another one. */
    WRONG_FORMAT,
    /** A member that the format does not know. */
    UNKNOWN_MEMBER,
    /** A member that must be there is missing. */
    MISSING,
    /** A value of the wrong JSON type. */
    WRONG_TYPE,
    /** A quantity that cannot be read, or is of another kind. */
    WRONG_QUANTITY,
    /** A number or a word outside the values that have a meaning. */
    OUT_OF_RANGE,
    /** A name that is used twice where it must be unique. */
    DUPLICATE,
    /** A reference to something the plan does not hold. */
    UNKNOWN_REFERENCE,
    /** A station that the stem does not have. */
    STATION_OFF_STEM,
    /** Stations that do not increase, or do not span the stem. */
    STATIONS_NOT_IN_ORDER,
    /** Two neighbouring points of the rope at the same place. */
    SAME_PLACE,
    /** Two members that exclude each other, or one that needs another. */
    CONFLICT
  }

  /**
   * Returns the refusal as one English sentence.
   *
   * @return {@code place: wants ..., got ...}
   */
  public String sentence() {
    return (place.isEmpty() ? "/" : place) + ": wants " + wants + ", got " + got;
  }
}
