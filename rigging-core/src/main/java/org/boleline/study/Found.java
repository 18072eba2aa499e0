package org.boleline.study;

import static java.util.Objects.requireNonNull;

import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * A figure that was asked for, or why there is none.
 *
 * <p>Immutable and thread-safe; equality is exact.
 */
public final class Found {
  private final @Nullable Figure figure;
  private final String reason;

  private Found(@Nullable Figure figure, String reason) {
    this.figure = figure;
    this.reason = reason;
  }

  /**
   * Obtains a figure that was found.
   *
   * @param figure the figure, not null
   * @return the answer
   */
  public static Found of(Figure figure) {
    return new Found(requireNonNull(figure, "figure"), "");
  }

  /**
   * Obtains the answer that there is none.
   *
   * @param reason why, in words, not null
   * @return the answer
   */
  public static Found none(String reason) {
    return new Found(null, requireNonNull(reason, "reason"));
  }

  /**
   * Returns the figure.
   *
   * @return the figure; empty if there is none
   */
  public Optional<Figure> figure() {
    return Optional.ofNullable(figure);
  }

  /**
   * Returns why there is none.
   *
   * @return the words; empty if there is a figure
   */
  public Optional<String> reason() {
    return figure == null ? Optional.of(reason) : Optional.empty();
  }

  /** Returns the SI value, or NaN if there is none. */
  double si() {
    return figure == null ? Double.NaN : figure.si();
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof Found f && figure().equals(f.figure()) && reason.equals(f.reason);
  }

  @Override
  public int hashCode() {
    return 31 * figure().hashCode() + reason.hashCode();
  }

  @Override
  public String toString() {
    return figure == null ? "none: " + reason : figure.text();
  }
}
