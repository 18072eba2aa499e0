package org.boleline.examples.compare;

/** Arithmetic of vectors as plain arrays. */
final class Triple {
  private Triple() {}

  static double dot(double[] a, double[] b) {
    return a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
  }

  static double size(double[] a) {
    return Math.sqrt(dot(a, a));
  }

  static double[] plus(double[] a, double[] b) {
    return new double[] {a[0] + b[0], a[1] + b[1], a[2] + b[2]};
  }

  static double[] times(double by, double[] a) {
    return new double[] {by * a[0], by * a[1], by * a[2]};
  }

  static double[] minus(double[] a, double[] b) {
    return plus(a, times(-1, b));
  }

  /** Size of what is left of a vector without its part along a unit vector. */
  static double across(double[] a, double[] unit) {
    double along = dot(a, unit);
    return Math.sqrt(Math.max(0, dot(a, a) - along * along));
  }
}
