package org.boleline.picture;

/** Light or dark. */
public enum Theme {
  /** Dark ink on white, by attributes alone: a page's own style sheet may change all of it. */
  LIGHT,
  /** Light ink on near black, by attributes alone. */
  DARK,
  /** Light, and dark on a screen whose reader prefers dark; needs style rules in the picture. */
  AUTO
}
