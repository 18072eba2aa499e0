package org.boleline.statics;

import java.util.List;
import java.util.Optional;
import org.boleline.explain.Caution;

/** What the analysis says of one arrangement. */
public sealed interface ArrangementResult permits Solution, LostStability, NotSolved {
  /**
   * Returns the id of the arrangement.
   *
   * @return the id
   */
  String id();

  /**
   * Returns how the analysis ended.
   *
   * @return the outcome
   */
  Outcome outcome();

  /**
   * Returns what is to be read with care.
   *
   * @return the cautions
   */
  List<Caution> cautions();

  /**
   * Returns the stable state, if there is one.
   *
   * @return the solution; empty unless the outcome is {@link Outcome#STABLE}
   */
  default Optional<Solution> solution() {
    return this instanceof Solution s ? Optional.of(s) : Optional.empty();
  }
}
