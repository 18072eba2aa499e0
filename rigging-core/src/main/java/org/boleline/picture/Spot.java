package org.boleline.picture;

/** A place on the sheet, in pixels from its left and its upper edge. */
record Spot(double x, double y) {
  Spot plus(double dx, double dy) {
    return new Spot(x + dx, y + dy);
  }

  double distance(Spot other) {
    return Math.hypot(x - other.x, y - other.y);
  }
}
