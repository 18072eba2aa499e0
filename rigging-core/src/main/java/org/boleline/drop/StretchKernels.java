package org.boleline.drop;

import org.boleline.internal.drop.StretchKernel;

/** The kernels behind the stretch curves. */
final class StretchKernels {
  private StretchKernels() {}

  static StretchKernel of(StretchCurve curve) {
    // Sealed: no other kinds. A switch over types is not in Java 17.
    if (curve instanceof LinearStretch linear) {
      return linear.kernel();
    }
    if (curve instanceof PowerStretch power) {
      return power.kernel();
    }
    return ((TabulatedStretch) curve).kernel();
  }
}
