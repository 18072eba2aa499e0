package org.boleline.statics;

import static java.util.Objects.requireNonNull;

import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.Force;
import javax.measure.quantity.Length;
import org.boleline.geometry.Vector;
import org.boleline.units.Kind;
import org.boleline.units.Si;
import org.jspecify.annotations.Nullable;

/**
 * One leg of the rope, between two places it runs through.
 *
 * <p>Immutable and thread-safe.
 */
public final class Leg {
  private final String from;
  private final String to;
  private final double tension;
  private final double tensionAtEnd;
  private final Vector<Force> pull;
  private final Vector<Force> pullAtEnd;
  private final double weight;
  private final @Nullable Vector<Length> begin;
  private final @Nullable Vector<Length> end;

  Leg(
      String from,
      String to,
      double tension,
      double tensionAtEnd,
      Vector<Force> pull,
      Vector<Force> pullAtEnd,
      double weight,
      @Nullable Vector<Length> begin,
      @Nullable Vector<Length> end) {
    this.from = requireNonNull(from);
    this.to = requireNonNull(to);
    this.tension = tension;
    this.tensionAtEnd = tensionAtEnd;
    this.pull = requireNonNull(pull);
    this.pullAtEnd = requireNonNull(pullAtEnd);
    this.weight = weight;
    this.begin = begin;
    this.end = end;
  }

  /**
   * Returns where the leg begins, on the side of the piece.
   *
   * @return {@code piece}, or a contact such as {@code contacts/0}
   */
  public String from() {
    return from;
  }

  /**
   * Returns where the leg ends, on the side of the tail.
   *
   * @return a contact such as {@code contacts/0}, {@code tail} or {@code device}
   */
  public String to() {
    return to;
  }

  /**
   * Returns the tension at the beginning.
   *
   * @return the tension, in newtons, above zero
   */
  public Quantity<Force> tension() {
    return Si.of(tension, Kind.FORCE);
  }

  /**
   * Returns the tension at the end, which differs if the leg's weight counts.
   *
   * @return the tension, in newtons, above zero
   */
  public Quantity<Force> tensionAtEnd() {
    return Si.of(tensionAtEnd, Kind.FORCE);
  }

  /**
   * Returns the leg's pull at its beginning: the tension there along the leg, toward its end.
   *
   * @return the pull, in newtons
   */
  public Vector<Force> pull() {
    return pull;
  }

  /**
   * Returns the leg's pull at its end: the tension there along the leg, toward its beginning.
   *
   * @return the pull, in newtons; with {@link #pull()} and the weight it adds up to nothing
   */
  public Vector<Force> pullAtEnd() {
    return pullAtEnd;
  }

  /**
   * Returns the weight of the rope in the leg, as far as it counts.
   *
   * @return the weight, in newtons; zero if it is left out
   */
  public Quantity<Force> weight() {
    return Si.of(weight, Kind.FORCE);
  }

  /**
   * Returns the position of the beginning.
   *
   * @return the position, in metres; empty for the leg to the piece, whose length is not stated
   */
  public Optional<Vector<Length>> begin() {
    return Optional.ofNullable(begin);
  }

  /**
   * Returns the position of the end.
   *
   * @return the position, in metres; empty for a tail that is pulled straight down
   */
  public Optional<Vector<Length>> end() {
    return Optional.ofNullable(end);
  }
}
