package org.boleline.explain;

/**
 * Where a formula or a datum comes from.
 *
 * @param id short name used in tables, such as {@code FPL-GTR-282}
 * @param title author, title, year and place within, as far as known
 * @param reading how the authors of this library know it
 */
public record Source(String id, String title, Reading reading) {
  /** How a source was read. */
  public enum Reading {
    /** Read in the source itself or in a faithful reprint. */
    READ,
    /** Derived here and checked by a second route. */
    DERIVED,
    /** Common practice of the trade; no published source known. */
    COMMON_PRACTICE,
    /** From memory; not checked against the source. */
    FROM_MEMORY,
    /** Stated by the user of the library. */
    STATED,
    /** Chosen by the authors of this library for what a plan leaves open; not measured. */
    DEFAULT
  }

  /** The user's own statement in a plan. */
  public static final Source PLAN = new Source("plan", "stated in the plan", Reading.STATED);

  /** A default of the plan format. */
  public static final Source DEFAULT =
      new Source("default", "default of the plan format", Reading.DEFAULT);

  /**
   * Obtains a source of the kind "common practice, no source".
   *
   * @param what what the practice is
   * @return the source
   */
  public static Source commonPractice(String what) {
    return new Source("common practice, no source", what, Reading.COMMON_PRACTICE);
  }
}
