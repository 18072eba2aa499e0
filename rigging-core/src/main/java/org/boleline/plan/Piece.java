package org.boleline.plan;

import static java.util.Objects.requireNonNull;

import java.util.Objects;
import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.Mass;
import org.boleline.explain.Refusals;
import org.boleline.units.Kind;
import org.boleline.units.QuantityText;
import org.boleline.units.Si;
import org.boleline.wood.Log;
import org.jspecify.annotations.Nullable;

/**
 * The piece that hangs on the rope: a stated mass, or a log with its foliage.
 *
 * <p>Immutable and thread-safe.
 */
public final class Piece {
  private final double mass;
  private final @Nullable Log log;
  private final @Nullable Double foliage;

  private Piece(double mass, @Nullable Log log, @Nullable Double foliage) {
    this.mass = mass;
    this.log = log;
    this.foliage = foliage;
  }

  /**
   * Obtains a piece of a stated mass.
   *
   * @param mass all that hangs on the rope, above zero, at most 1000 t, not null
   * @return the piece
   * @throws org.boleline.explain.PlanRefusedException if the mass is outside its range
   */
  public static Piece of(Quantity<Mass> mass) {
    requireNonNull(mass, "mass");
    return Refusals.check(refusals -> stated(mass, refusals));
  }

  /**
   * Obtains a piece that is a bare log.
   *
   * @param log the log, not null
   * @return the piece
   * @throws org.boleline.explain.PlanRefusedException if its mass is outside the range of a piece
   */
  public static Piece of(Log log) {
    requireNonNull(log, "log");
    return Refusals.check(refusals -> stated(log, null, refusals));
  }

  /**
   * Obtains a piece that is a log with twigs and leaves.
   *
   * @param log the log, not null
   * @param foliage mass of twigs and leaves, zero or more, at most 1000 t, not null
   * @return the piece
   * @throws org.boleline.explain.PlanRefusedException if a mass is outside its range
   */
  public static Piece of(Log log, Quantity<Mass> foliage) {
    requireNonNull(log, "log");
    requireNonNull(foliage, "foliage");
    return Refusals.check(refusals -> stated(log, foliage, refusals));
  }

  /**
   * Obtains a piece of a stated mass as stated, for readers of files.
   *
   * @param mass the mass, or null if that could not be had
   * @param refusals notes what is wrong, at the piece
   * @return the piece
   */
  public static Piece stated(@Nullable Quantity<Mass> mass, Refusals refusals) {
    return new Piece(refusals.at("mass").aboveZero(mass, Kind.MASS, Bounds.MASS), null, null);
  }

  /**
   * Obtains a piece that is a log as stated, for readers of files.
   *
   * @param log the log, or null if that could not be had
   * @param foliage mass of twigs and leaves, or null if none is stated
   * @param refusals notes what is wrong, at the piece
   * @return the piece
   */
  public static Piece stated(
      @Nullable Log log, @Nullable Quantity<Mass> foliage, Refusals refusals) {
    @Nullable Double leaves =
        foliage == null
            ? null
            : (Double) refusals.at("foliage").between(foliage, Kind.MASS, 0, Bounds.MASS);
    double wood =
        refusals.at("log").aboveZero(log == null ? null : log.mass(), Kind.MASS, Bounds.MASS);
    return new Piece(wood + (leaves == null ? 0 : leaves), log, leaves);
  }

  /**
   * Returns all that hangs on the rope.
   *
   * @return the mass in kilograms, above zero
   */
  public Quantity<Mass> mass() {
    return Si.of(mass, Kind.MASS);
  }

  /**
   * Returns the log, if the piece is stated as one.
   *
   * @return the log; empty if the mass itself is stated
   */
  public Optional<Log> log() {
    return Optional.ofNullable(log);
  }

  /**
   * Returns the mass of twigs and leaves, if it is stated.
   *
   * @return the mass in kilograms, zero or more; empty if none is stated
   */
  public Optional<Quantity<Mass>> foliage() {
    return foliage == null ? Optional.empty() : Optional.of(Si.of(foliage, Kind.MASS));
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof Piece p
        && Double.compare(mass, p.mass) == 0
        && Objects.equals(log, p.log)
        && Objects.equals(foliage, p.foliage);
  }

  @Override
  public int hashCode() {
    return Objects.hash(mass, log, foliage);
  }

  @Override
  public String toString() {
    return "piece of " + QuantityText.print(mass(), Kind.MASS);
  }
}
