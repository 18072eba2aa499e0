package org.boleline.internal.drop;

/** A rope at one tension of the load leg; made by {@link CatchRope}. */
public final class CatchState {
  final double[] strains;
  final double[] energies;
  private final double tension;
  private final double travel;
  private final double work;
  private final double rate;

  CatchState(
      double tension,
      double[] strains,
      double[] energies,
      double travel,
      double work,
      double rate) {
    this.tension = tension;
    this.strains = strains;
    this.energies = energies;
    this.travel = travel;
    this.work = work;
    this.rate = rate;
  }

  /**
   * Returns the tension of the load leg.
   *
   * @return T in newtons
   */
  public double tension() {
    return tension;
  }

  /**
   * Returns how far the load has come down since the rope was taut.
   *
   * @return x in metres
   */
  public double travel() {
    return travel;
  }

  /**
   * Returns the work that the load leg has done on the mass: the integral of T over x.
   *
   * @return A in joules
   */
  public double work() {
    return work;
  }

  /**
   * Returns how fast the travel grows with the tension.
   *
   * @return dx/dT in metres per newton
   */
  public double rate() {
    return rate;
  }
}
