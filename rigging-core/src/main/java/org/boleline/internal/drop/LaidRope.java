package org.boleline.internal.drop;

/** Rope that is counted in the leg where it lay when it was taut. */
public final class LaidRope extends CatchRope {
  /**
   * Makes a rope.
   *
   * @param curve stretch curve
   * @param lengths L of each leg, in metres
   * @param products P of each leg
   * @param give c
   */
  public LaidRope(StretchKernel curve, double[] lengths, double[] products, double give) {
    super(curve, lengths, products, give);
  }

  /** Leg by leg T is P times the tension of the leg, so the work is P times what it stores. */
  @Override
  CatchState state(double tension, double[] strains) {
    double[] energies = energies(strains);
    double travel = give * tension;
    double work = give * tension * tension / 2;
    double rate = give;
    for (int i = 0; i < strains.length; i++) {
      travel += lengths[i] * strains[i];
      work += products[i] * lengths[i] * energies[i];
      rate += lengths[i] * strainRate(i, strains[i]);
    }
    return new CatchState(tension, strains, energies, travel, work, rate);
  }

  @Override
  public double passed(int contact, CatchState state) {
    double passed = 0;
    for (int i = contact + 1; i < lengths.length; i++) {
      passed += lengths[i] * state.strains[i];
    }
    return passed;
  }

  @Override
  public double heat(int contact, CatchState state) {
    double heat = 0;
    for (int i = contact + 1; i < lengths.length; i++) {
      heat += products[i] / products[contact + 1] * lengths[i] * state.energies[i];
    }
    return (products[contact + 1] / products[contact] - 1) * heat;
  }

  @Override
  public double stored(CatchState state) {
    double stored = 0;
    for (int i = 0; i < lengths.length; i++) {
      stored += lengths[i] * state.energies[i];
    }
    return stored;
  }

  @Override
  public double brought(int leg, CatchState state) {
    return state.tension() / products[leg];
  }
}
