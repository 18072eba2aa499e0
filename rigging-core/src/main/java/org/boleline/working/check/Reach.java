package org.boleline.working.check;

/** What a slip changes, the likeliest first. */
enum Reach {
  /** A number that is given, or the formula. */
  GIVEN,
  /** The number that the person wrote. */
  WRITTEN,
  /** A number on the way to it. */
  BETWEEN,
  /** Several numbers at once. */
  SEVERAL
}
