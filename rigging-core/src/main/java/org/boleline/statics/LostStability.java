package org.boleline.statics;

import static java.util.Objects.requireNonNull;

import java.util.List;
import org.boleline.explain.Caution;

/**
 * The loading path from rest loses stability before the full load: an answer, not a failure.
 *
 * <p>Immutable and thread-safe.
 */
public final class LostStability implements ArrangementResult {
  private final String id;
  private final double loadFactor;
  private final double ownWeightFactor;
  private final List<Caution> cautions;

  LostStability(String id, double loadFactor, double ownWeightFactor, List<Caution> cautions) {
    this.id = requireNonNull(id);
    this.loadFactor = loadFactor;
    this.ownWeightFactor = ownWeightFactor;
    this.cautions = List.copyOf(cautions);
  }

  @Override
  public String id() {
    return id;
  }

  @Override
  public Outcome outcome() {
    return Outcome.UNSTABLE;
  }

  @Override
  public List<Caution> cautions() {
    return cautions;
  }

  /**
   * Returns the share of the full rig load at which stability is lost.
   *
   * @return from 0 (own weight alone) to 1
   */
  public double loadFactor() {
    return loadFactor;
  }

  /**
   * Returns the share of own weight at which stability is lost.
   *
   * @return below 1 if own weight alone is too much, else 1
   */
  public double ownWeightFactor() {
    return ownWeightFactor;
  }
}
