package org.boleline.statics;

/** Vectors and rotations as plain arrays, for checks that share no code with the library. */
final class Plain {
  private Plain() {}

  static double dot(double[] a, double[] b) {
    return a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
  }

  static double size(double[] a) {
    return Math.sqrt(dot(a, a));
  }

  static double[] plus(double[] a, double[] b) {
    return new double[] {a[0] + b[0], a[1] + b[1], a[2] + b[2]};
  }

  static double[] minus(double[] a, double[] b) {
    return new double[] {a[0] - b[0], a[1] - b[1], a[2] - b[2]};
  }

  static double[] times(double by, double[] a) {
    return new double[] {by * a[0], by * a[1], by * a[2]};
  }

  static double[] unit(double[] a) {
    return times(1 / size(a), a);
  }

  static double[] cross(double[] a, double[] b) {
    return new double[] {
      a[1] * b[2] - a[2] * b[1], a[2] * b[0] - a[0] * b[2], a[0] * b[1] - a[1] * b[0]
    };
  }

  /** Direction with a lean from plumb toward an azimuth. */
  static double[] direction(double lean, double azimuth) {
    return new double[] {
      Math.sin(lean) * Math.cos(azimuth), Math.sin(lean) * Math.sin(azimuth), Math.cos(lean)
    };
  }

  /** A vector turned by a rotation vector (Rodrigues). */
  static double[] turned(double[] rotation, double[] v) {
    double angle = size(rotation);
    if (angle == 0) {
      return v.clone();
    }
    double[] axis = times(1 / angle, rotation);
    double cosine = Math.cos(angle);
    return plus(
        plus(times(cosine, v), times(Math.sin(angle), cross(axis, v))),
        times((1 - cosine) * dot(axis, v), axis));
  }

  /** A vector turned about the vertical. */
  static double[] turned(double angle, double[] v) {
    return turned(new double[] {0, 0, angle}, v);
  }

  /** A frame as rows of its three axes: each turned by a rotation vector. */
  static double[][] turned(double[] rotation, double[][] frame) {
    return new double[][] {
      turned(rotation, frame[0]), turned(rotation, frame[1]), turned(rotation, frame[2])
    };
  }

  /** The vector with given components along a frame's axes. */
  static double[] outOf(double[][] frame, double[] components) {
    return plus(
        plus(times(components[0], frame[0]), times(components[1], frame[1])),
        times(components[2], frame[2]));
  }

  /** A vector's components along a frame's axes. */
  static double[] into(double[][] frame, double[] v) {
    return new double[] {dot(frame[0], v), dot(frame[1], v), dot(frame[2], v)};
  }
}
