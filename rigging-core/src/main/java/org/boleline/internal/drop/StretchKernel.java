package org.boleline.internal.drop;

/**
 * A stretch curve of rope in SI doubles: tension in newtons, strain as added length over length.
 *
 * <p>Tension rises with strain from nothing at no strain, without end.
 */
public interface StretchKernel {
  /**
   * Returns the tension at a strain.
   *
   * @param strain strain, zero or more
   * @return tension in newtons
   */
  double tension(double strain);

  /**
   * Returns the strain at a tension.
   *
   * @param tension tension in newtons, zero or more
   * @return strain
   */
  double strain(double tension);

  /**
   * Returns the energy stored in each metre: the integral of tension over strain.
   *
   * @param strain strain, zero or more
   * @return energy for each length, in joules per metre
   */
  double energy(double strain);

  /**
   * Returns how fast tension rises with strain.
   *
   * @param strain strain, zero or more
   * @return slope in newtons, zero or more
   */
  double slope(double strain);

  /**
   * Returns where the law changes.
   *
   * @return tensions in newtons, rising; empty if one smooth law holds throughout
   */
  default double[] knots() {
    return new double[0];
  }

  /**
   * Straight line.
   *
   * @param modulus tension over strain, in newtons
   */
  record Linear(double modulus) implements StretchKernel {
    @Override
    public double tension(double strain) {
      return modulus * strain;
    }

    @Override
    public double strain(double tension) {
      return tension / modulus;
    }

    @Override
    public double energy(double strain) {
      return modulus * strain * strain / 2;
    }

    @Override
    public double slope(double strain) {
      return modulus;
    }
  }

  /**
   * Power law through a point: tension grows with a power of strain.
   *
   * @param referenceTension tension at the point, in newtons
   * @param referenceStrain strain at the point
   * @param exponent the power
   */
  record Power(double referenceTension, double referenceStrain, double exponent)
      implements StretchKernel {
    @Override
    public double tension(double strain) {
      return referenceTension * Math.pow(strain / referenceStrain, exponent);
    }

    @Override
    public double strain(double tension) {
      return referenceStrain * Math.pow(tension / referenceTension, 1 / exponent);
    }

    @Override
    public double energy(double strain) {
      return tension(strain) * strain / (exponent + 1);
    }

    @Override
    public double slope(double strain) {
      return exponent * tension(strain) / strain;
    }
  }
}
