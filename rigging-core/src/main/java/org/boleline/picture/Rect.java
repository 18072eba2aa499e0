package org.boleline.picture;

/** A rectangle on the sheet. */
record Rect(double left, double top, double right, double bottom) {
  static Rect around(double x, double y, double width, double height) {
    return new Rect(x - width / 2, y - height / 2, x + width / 2, y + height / 2);
  }

  double width() {
    return right - left;
  }

  double height() {
    return bottom - top;
  }

  double middleX() {
    return (left + right) / 2;
  }

  double middleY() {
    return (top + bottom) / 2;
  }

  boolean meets(Rect other) {
    return left < other.right && other.left < right && top < other.bottom && other.top < bottom;
  }

  boolean holds(Rect other) {
    return left <= other.left && other.right <= right && top <= other.top && other.bottom <= bottom;
  }

  Rect grown(double by) {
    return new Rect(left - by, top - by, right + by, bottom + by);
  }

  /** The place within nearest to a point. */
  Spot nearest(double x, double y) {
    return new Spot(Math.max(left, Math.min(right, x)), Math.max(top, Math.min(bottom, y)));
  }

  /** The share of a line from a to b that lies within, by cutting it at the four sides. */
  double share(Spot a, Spot b) {
    double from = 0;
    double to = 1;
    double[] start = {a.x(), a.y()};
    double[] way = {b.x() - a.x(), b.y() - a.y()};
    double[] least = {left, top};
    double[] most = {right, bottom};
    for (int i = 0; i < 2; i++) {
      if (way[i] == 0) {
        if (start[i] <= least[i] || start[i] >= most[i]) {
          return 0;
        }
      } else {
        double one = (least[i] - start[i]) / way[i];
        double other = (most[i] - start[i]) / way[i];
        from = Math.max(from, Math.min(one, other));
        to = Math.min(to, Math.max(one, other));
      }
    }
    return Math.max(0, to - from);
  }

  boolean meets(Spot a, Spot b) {
    return share(a, b) > 0;
  }
}
