package org.boleline.plan;

import static java.util.Objects.requireNonNull;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.boleline.explain.Refusal;
import org.boleline.explain.Refusals;
import org.boleline.units.Kind;
import org.boleline.units.QuantityText;
import org.boleline.units.Si;
import org.jspecify.annotations.Nullable;

/**
 * Something that takes strength off a rope or a sling: a knot, a splice, a bend, wear, water.
 *
 * <p>Either the share that is kept is stated, or, for a bend, a table of shares by the ratio D:d of
 * bend and rope. The library knows no such figure itself. Immutable and thread-safe; equality is
 * exact.
 */
public final class Reduction {
  /** How several reductions act together. */
  public enum Combined {
    /** Multiplied: each takes off what the others left. */
    STACKED("stacked"),
    /** The worst alone counts. */
    WORST_ONLY("worstOnly");

    private final String text;

    Combined(String text) {
      this.text = text;
    }

    /**
     * Returns the word of plan files.
     *
     * @return the word
     */
    public String text() {
      return text;
    }

    /**
     * Obtains the choice that a word of plan files stands for.
     *
     * @param word the word, not null
     * @return the choice; empty if there is none of that name
     */
    public static Optional<Combined> named(String word) {
      return List.of(values()).stream().filter(c -> c.text.equals(word)).findFirst();
    }
  }

  /**
   * A row of the table of a bend.
   *
   * @param ratio diameter of the bend over diameter of the rope, above zero
   * @param keptShare share of the strength that is kept there, above zero, at most 1
   */
  public record AtRatio(double ratio, double keptShare) {}

  private final String by;
  private final @Nullable Double keptShare;
  private final @Nullable Double diameter;
  private final List<AtRatio> table;
  private final String source;

  private Reduction(
      String by,
      @Nullable Double keptShare,
      @Nullable Double diameter,
      List<AtRatio> table,
      String source) {
    this.by = by;
    this.keptShare = keptShare;
    this.diameter = diameter;
    this.table = List.copyOf(table);
    this.source = source;
  }

  /**
   * Obtains a reduction whose kept share is stated.
   *
   * @param by what takes the strength off, one line of at most 80 characters, not null
   * @param keptShare share of the strength that is kept, above zero, at most 1
   * @return the reduction
   * @throws org.boleline.explain.PlanRefusedException if a value is outside its range
   */
  public static Reduction of(String by, double keptShare) {
    requireNonNull(by, "by");
    return Refusals.check(refusals -> stated(by, keptShare, null, List.of(), null, refusals));
  }

  /**
   * Obtains a reduction by a bend, from a table by D:d.
   *
   * @param by what it is, one line of at most 80 characters, not null
   * @param diameter diameter of what the rope is bent over, from 1 mm to 20 m, not null
   * @param table rows with rising ratios, linear in between, not null; above the last ratio the
   *     last share holds, below the first the plan is refused
   * @return the reduction
   * @throws org.boleline.explain.PlanRefusedException if a value is outside its range
   */
  public static Reduction ofBend(String by, Quantity<Length> diameter, List<AtRatio> table) {
    requireNonNull(by, "by");
    requireNonNull(diameter, "diameter");
    return Refusals.check(refusals -> stated(by, null, diameter, table, null, refusals));
  }

  /**
   * Obtains a reduction as stated, for readers of files.
   *
   * @param by what takes the strength off, or null if that could not be had
   * @param keptShare the kept share, or null if none is stated
   * @param diameter diameter of a bend, or null if none is stated
   * @param table rows of a bend; empty if none is stated
   * @param source where the figure comes from, or null if that is not stated
   * @param refusals notes what is wrong, at the reduction
   * @return the reduction
   */
  public static Reduction stated(
      @Nullable String by,
      @Nullable Double keptShare,
      @Nullable Quantity<Length> diameter,
      List<AtRatio> table,
      @Nullable String source,
      Refusals refusals) {
    boolean bend = diameter != null || !table.isEmpty();
    if (bend && keptShare != null) {
      refusals
          .at("kept")
          .add(
              Refusal.Code.CONFLICT,
              "either the share that is kept, or diameter and table of a bend",
              "both");
    }
    double least = 0;
    for (int i = 0; i < table.size(); i++) {
      Refusals at = refusals.at("table").at(i);
      double ratio = at.at("ratio").number(table.get(i).ratio(), Bounds.LEAST_RATIO, Bounds.RATIO);
      kept(table.get(i).keptShare(), at.at("kept"));
      if (ratio <= least) {
        at.at("ratio")
            .add(
                Refusal.Code.OUT_OF_RANGE,
                "a ratio above that of the row before",
                QuantityText.number(ratio));
      }
      least = ratio;
    }
    if (bend && table.isEmpty()) {
      refusals.at("table").add(Refusal.Code.MISSING, "at least one row", "none");
    }
    return new Reduction(
        refusals.at("by").name(by),
        bend ? null : (Double) kept(keptShare, refusals.at("kept")),
        bend
            ? (Double)
                refusals
                    .at("diameter")
                    .between(diameter, Kind.LENGTH, Bounds.LEAST_DIAMETER, Bounds.DIAMETER)
            : null,
        table,
        source == null ? "" : refusals.at("source").name(source));
  }

  private static double kept(@Nullable Double share, Refusals refusals) {
    return refusals.number(share, Bounds.LEAST_SHARE, 1);
  }

  /**
   * Returns this reduction with word of where its figure comes from.
   *
   * @param newSource one line of at most 80 characters, not null
   * @return the reduction
   * @throws org.boleline.explain.PlanRefusedException if the text is no such line
   */
  public Reduction withSource(String newSource) {
    requireNonNull(newSource, "source");
    return Refusals.check(
        refusals ->
            new Reduction(by, keptShare, diameter, table, refusals.at("source").name(newSource)));
  }

  /** Notes if the table does not reach down to the ratio of the rope. */
  void checkRope(double ropeDiameter, Refusals refusals) {
    if (diameter == null || table.isEmpty()) {
      return;
    }
    if (Double.isNaN(ropeDiameter)) {
      refusals
          .at("diameter")
          .add(
              Refusal.Code.CONFLICT,
              "the member diameter in /rope, for the ratio of bend and rope",
              "a bend without it");
    } else if (diameter / ropeDiameter < table.get(0).ratio()) {
      refusals
          .at("table")
          .add(
              Refusal.Code.OUT_OF_RANGE,
              "a table that begins at or below D:d = "
                  + QuantityText.number(diameter / ropeDiameter),
              "a first ratio of " + QuantityText.number(table.get(0).ratio()));
    }
  }

  /**
   * Returns what takes the strength off.
   *
   * @return the words
   */
  public String by() {
    return by;
  }

  /**
   * Returns the stated share of the strength that is kept.
   *
   * @return the share, above zero, at most 1; empty for a bend with a table
   */
  public OptionalDouble keptShare() {
    return keptShare == null ? OptionalDouble.empty() : OptionalDouble.of(keptShare);
  }

  /**
   * Returns the diameter of what the rope is bent over.
   *
   * @return the diameter in metres; empty unless this is a bend with a table
   */
  public Optional<Quantity<Length>> diameter() {
    return diameter == null ? Optional.empty() : Optional.of(Si.of(diameter, Kind.LENGTH));
  }

  /**
   * Returns the table of a bend.
   *
   * @return rows with rising ratios; empty unless this is a bend with a table
   */
  public List<AtRatio> table() {
    return table;
  }

  /**
   * Returns where the figure comes from.
   *
   * @return the words; empty if none are stated
   */
  public String source() {
    return source;
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof Reduction r
        && by.equals(r.by)
        && Objects.equals(keptShare, r.keptShare)
        && Objects.equals(diameter, r.diameter)
        && table.equals(r.table)
        && source.equals(r.source);
  }

  @Override
  public int hashCode() {
    return Objects.hash(by, keptShare, diameter, table, source);
  }

  @Override
  public String toString() {
    return by + (keptShare == null ? "" : " keeps " + QuantityText.number(keptShare));
  }
}
