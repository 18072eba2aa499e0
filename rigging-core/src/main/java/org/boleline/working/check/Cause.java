package org.boleline.working.check;

import static java.util.Objects.requireNonNull;

import java.util.List;
import java.util.stream.Collectors;

/**
 * A slip that gives the number a person wrote.
 *
 * @param slip the slip
 * @param places where it would give the number, the likeliest first; at least one
 */
public record Cause(Slip slip, List<Place> places) {
  /**
   * Makes a cause.
   *
   * @param slip the slip
   * @param places where it would give the number, the likeliest first; at least one
   */
  public Cause {
    requireNonNull(slip, "slip");
    places = List.copyOf(places);
    if (places.isEmpty()) {
      throw new IllegalArgumentException("places: wants one or more, got none");
    }
  }

  /**
   * A place where a slip can be made.
   *
   * @param formula id of the formula, with a count where it stands several times, for instance
   *     {@code FRI-2 (2)}
   * @param how what was done there, for instance {@code T1 for both}
   */
  public record Place(String formula, String how) {
    /**
     * Makes a place.
     *
     * @param formula id of the formula
     * @param how what was done there
     */
    public Place {
      requireNonNull(formula, "formula");
      requireNonNull(how, "how");
    }

    @Override
    public String toString() {
      return formula + ": " + how;
    }
  }

  /**
   * Obtains a cause with one place.
   *
   * @param slip the slip
   * @param formula id of the formula
   * @param how what was done there
   * @return the cause
   */
  public static Cause at(Slip slip, String formula, String how) {
    return new Cause(slip, List.of(new Place(formula, how)));
  }

  @Override
  public String toString() {
    return places.stream()
        .map(Place::toString)
        .collect(Collectors.joining("; or ", "as if " + slip.words() + " (", ")"));
  }
}
