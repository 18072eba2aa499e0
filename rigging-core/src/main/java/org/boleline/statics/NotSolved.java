package org.boleline.statics;

import static java.util.Objects.requireNonNull;

import java.util.List;
import org.boleline.explain.Caution;

/**
 * The solver gave up on this arrangement: a defect of the library, said plainly.
 *
 * <p>Immutable and thread-safe.
 */
public final class NotSolved implements ArrangementResult {
  private final String id;
  private final String reason;
  private final double residual;
  private final List<Caution> cautions;

  NotSolved(String id, String reason, double residual, List<Caution> cautions) {
    this.id = requireNonNull(id);
    this.reason = requireNonNull(reason);
    this.residual = residual;
    this.cautions = List.copyOf(cautions);
  }

  @Override
  public String id() {
    return id;
  }

  @Override
  public Outcome outcome() {
    return Outcome.NOT_SOLVED;
  }

  @Override
  public List<Caution> cautions() {
    return cautions;
  }

  /**
   * Returns why.
   *
   * @return a sentence
   */
  public String reason() {
    return reason;
  }

  /**
   * Returns how far from balance the last state was.
   *
   * @return unbalanced moment over load times length of the longest stem, finite
   */
  public double residual() {
    return residual;
  }
}
