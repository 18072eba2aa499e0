package org.boleline.internal.drop;

import java.util.Arrays;
import java.util.function.DoubleUnaryOperator;
import org.apache.commons.math3.analysis.integration.gauss.GaussIntegrator;
import org.apache.commons.math3.analysis.integration.gauss.GaussIntegratorFactory;

/**
 * Rope that is counted where it is: what passes a contact stretches as the leg does that it comes
 * into.
 *
 * <p>Contacts stay where they are. So a leg behind one holds L / (1 + e) of rope, counted without
 * load, and the load leg all the rest; q of it has passed a contact. A metre of it brings G = T (1
 * + e) - U over from its leg: the work of the tension, less what goes along as stored energy.
 */
public final class PassingRope extends CatchRope {
  private static final double RELATIVE = 1e-13;
  private static final int DEEPEST = 40;
  private static final GaussIntegrator RULE = new GaussIntegratorFactory().legendre(10);

  /**
   * Makes a rope.
   *
   * @param curve stretch curve
   * @param lengths L of each leg, in metres
   * @param products P of each leg
   * @param give c of a spring between rope and mass
   */
  public PassingRope(StretchKernel curve, double[] lengths, double[] products, double give) {
    super(curve, lengths, products, give);
  }

  @Override
  CatchState state(double tension, double[] strains) {
    double[] energies = energies(strains);
    double e0 = strains[0];
    double held = lengths[0];
    double heldRate = 0;
    for (int i = 1; i < strains.length; i++) {
      double longer = 1 + strains[i];
      held += lengths[i] * strains[i] / longer;
      heldRate += lengths[i] * strainRate(i, strains[i]) / (longer * longer);
    }
    double travel = held * e0 + (held - lengths[0]);
    double rate = held * strainRate(0, e0) + (1 + e0) * heldRate;
    double springs = give * tension;
    // By parts: the integral of T over x is T x less that of x over T, and the load leg's own share
    // of the latter is known.
    double others = strains.length == 1 ? 0 : integral(this::othersShare, tension);
    double work = tension * (travel - lengths[0] * e0) + lengths[0] * energies[0] - others;
    return new CatchState(
        tension, strains, energies, travel + springs, work + springs * tension / 2, rate + give);
  }

  private double othersShare(double tension) {
    return (1 + curve.strain(tension)) * passedAt(0, tension);
  }

  private double passedAt(int contact, double tension) {
    double passed = 0;
    for (int i = contact + 1; i < lengths.length; i++) {
      double strain = curve.strain(tension / products[i]);
      passed += lengths[i] * strain / (1 + strain);
    }
    return passed;
  }

  @Override
  public double passed(int contact, CatchState state) {
    double passed = 0;
    for (int i = contact + 1; i < lengths.length; i++) {
      passed += lengths[i] * state.strains[i] / (1 + state.strains[i]);
    }
    return passed;
  }

  /** The integral of G before less G behind over q, by parts: dG is (1 + e) times dT of the leg. */
  @Override
  public double heat(int contact, CatchState state) {
    double before = products[contact];
    double behind = products[contact + 1];
    if (before == behind) {
      return 0;
    }
    double drop = brought(contact, state) - brought(contact + 1, state);
    return passed(contact, state) * drop
        - integral(
            t ->
                passedAt(contact, t)
                    * ((1 + curve.strain(t / before)) / before
                        - (1 + curve.strain(t / behind)) / behind),
            state.tension());
  }

  @Override
  public double stored(CatchState state) {
    double stored = held(state) * state.energies[0];
    for (int i = 1; i < lengths.length; i++) {
      stored += lengths[i] / (1 + state.strains[i]) * state.energies[i];
    }
    return stored;
  }

  private double held(CatchState state) {
    return lengths[0] + passed(0, state);
  }

  @Override
  public double brought(int leg, CatchState state) {
    return state.tension() / products[leg] * (1 + state.strains[leg]) - state.energies[leg];
  }

  /** From no tension on; smooth between the tensions at which the curve of a leg changes. */
  private double integral(DoubleUnaryOperator f, double tension) {
    double[] knots = curve.knots();
    double[] ends = new double[knots.length * products.length + 2];
    int count = 0;
    ends[count++] = 0;
    for (double product : products) {
      for (double knot : knots) {
        if (knot * product < tension) {
          ends[count++] = knot * product;
        }
      }
    }
    ends[count++] = tension;
    Arrays.sort(ends, 0, count);
    double[] pieces = new double[count - 1];
    double scale = 0;
    for (int i = 0; i < pieces.length; i++) {
      pieces[i] = gauss(f, ends[i], ends[i + 1]);
      scale += Math.abs(pieces[i]);
    }
    double sum = 0;
    for (int i = 0; i < pieces.length; i++) {
      sum += finer(f, ends[i], ends[i + 1], pieces[i], RELATIVE * scale, DEEPEST);
    }
    return sum;
  }

  private static double finer(
      DoubleUnaryOperator f, double from, double to, double whole, double error, int deeper) {
    double middle = from + (to - from) / 2;
    double left = gauss(f, from, middle);
    double right = gauss(f, middle, to);
    if (deeper == 0 || Math.abs(left + right - whole) <= error) {
      return left + right;
    }
    return finer(f, from, middle, left, error, deeper - 1)
        + finer(f, middle, to, right, error, deeper - 1);
  }

  private static double gauss(DoubleUnaryOperator f, double from, double to) {
    double half = (to - from) / 2;
    double sum = 0;
    for (int i = 0; i < RULE.getNumberOfPoints(); i++) {
      sum += RULE.getWeight(i) * f.applyAsDouble(from + half * (1 + RULE.getPoint(i)));
    }
    return half * sum;
  }
}
