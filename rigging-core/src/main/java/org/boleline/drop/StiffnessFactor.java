package org.boleline.drop;

import org.boleline.explain.Refusals;

/** The range of a factor between two stretch curves. */
final class StiffnessFactor {
  private StiffnessFactor() {}

  static double checked(double factor) {
    return Refusals.check(refusals -> refusals.at("stiffnessFactor").number(factor, 0.001, 1000));
  }
}
