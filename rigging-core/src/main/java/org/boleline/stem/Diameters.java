package org.boleline.stem;

import static java.util.Objects.requireNonNull;

import java.util.List;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.boleline.explain.Refusal;
import org.boleline.explain.Refusals;
import org.boleline.units.Amounts;
import org.boleline.units.Kind;
import org.boleline.units.QuantityText;
import org.boleline.units.Si;
import org.jspecify.annotations.Nullable;

/**
 * The diameters of a stem along its length: stated at stations, linear in between.
 *
 * <p>A station that is stated twice in a row is a step: the first entry holds below it, the second
 * above it. So a closed cavity is four entries: without and with it at its lower end, with and
 * without it at its upper end. Immutable and thread-safe.
 */
public final class Diameters {
  /** The diameters at a station. */
  public static final class Entry {
    private final double at;
    private final double outer;
    private final double cavity;

    private Entry(double at, double outer, double cavity) {
      this.at = at;
      this.outer = outer;
      this.cavity = cavity;
    }

    /**
     * Obtains an entry of solid wood.
     *
     * @param at the station, zero or more, not null
     * @param outer diameter of the wood, from 1 mm to 20 m, not null
     * @return the entry
     * @throws org.boleline.explain.PlanRefusedException if a value is outside its range
     */
    public static Entry of(Quantity<Length> at, Quantity<Length> outer) {
      return of(at, outer, Amounts.metres(0));
    }

    /**
     * Obtains an entry with a cavity.
     *
     * @param at the station, zero or more, not null
     * @param outer diameter of the wood, from 1 mm to 20 m, not null
     * @param cavity diameter of the concentric hole in it, zero or more and less than the outer
     *     one, not null
     * @return the entry
     * @throws org.boleline.explain.PlanRefusedException if a value is outside its range
     */
    public static Entry of(Quantity<Length> at, Quantity<Length> outer, Quantity<Length> cavity) {
      requireNonNull(at, "at");
      requireNonNull(outer, "outer");
      requireNonNull(cavity, "cavity");
      return Refusals.check(refusals -> stated(at, outer, cavity, refusals));
    }

    /**
     * Obtains an entry as stated, for readers of files.
     *
     * @param at the station, or null if that could not be had
     * @param outer diameter of the wood, or null if that could not be had
     * @param cavity diameter of the hole, zero if there is none
     * @param refusals notes what is wrong, at the entry
     * @return the entry
     */
    public static Entry stated(
        @Nullable Quantity<Length> at,
        @Nullable Quantity<Length> outer,
        Quantity<Length> cavity,
        Refusals refusals) {
      double s = Bounds.station(at, refusals);
      double d =
          refusals.at("outer").between(outer, Kind.LENGTH, Bounds.LEAST_DIAMETER, Bounds.DIAMETER);
      double hole = refusals.at("cavity").between(cavity, Kind.LENGTH, 0, Bounds.DIAMETER);
      if (hole >= d) {
        refusals
            .at("cavity")
            .add(
                Refusal.Code.OUT_OF_RANGE,
                "a cavity smaller than the outer diameter, " + Bounds.metres(d),
                Bounds.metres(hole));
      }
      return new Entry(s, d, hole);
    }

    /**
     * Returns the station.
     *
     * @return where along the stem, in metres from the base
     */
    public Quantity<Length> at() {
      return Si.of(at, Kind.LENGTH);
    }

    /**
     * Returns the diameter of the wood.
     *
     * @return the diameter in metres, above zero
     */
    public Quantity<Length> outer() {
      return Si.of(outer, Kind.LENGTH);
    }

    /**
     * Returns the diameter of the concentric hole.
     *
     * @return the diameter in metres, less than the outer one; zero where the wood is solid
     */
    public Quantity<Length> cavity() {
      return Si.of(cavity, Kind.LENGTH);
    }

    /**
     * Tells whether there is a hole.
     *
     * @return true if the cavity is above zero
     */
    public boolean isHollow() {
      return cavity > 0;
    }

    @Override
    public boolean equals(Object other) {
      return other instanceof Entry e
          && Double.compare(at, e.at) == 0
          && Double.compare(outer, e.outer) == 0
          && Double.compare(cavity, e.cavity) == 0;
    }

    @Override
    public int hashCode() {
      return 31 * (31 * Double.hashCode(at) + Double.hashCode(outer)) + Double.hashCode(cavity);
    }

    @Override
    public String toString() {
      return QuantityText.print(at(), Kind.LENGTH)
          + ": "
          + QuantityText.print(outer(), Kind.LENGTH)
          + (cavity == 0 ? "" : ", hollow " + QuantityText.print(cavity(), Kind.LENGTH));
    }
  }

  private final List<Entry> entries;

  private Diameters(List<Entry> entries) {
    this.entries = List.copyOf(entries);
  }

  /**
   * Obtains diameters.
   *
   * @param entries at least two, in order along the stem, the first at the base; a station may
   *     stand twice in a row, but neither at the base nor at the end; not null
   * @return the diameters
   * @throws org.boleline.explain.PlanRefusedException if there are fewer, or they are not in order
   */
  public static Diameters of(List<Entry> entries) {
    requireNonNull(entries, "entries");
    return Refusals.check(refusals -> stated(entries, refusals));
  }

  /**
   * Obtains the diameters of a solid stem that tapers evenly.
   *
   * @param length length of the stem, above zero, not null
   * @param base diameter at the base, above zero, not null
   * @param end diameter at the other end, above zero, not null
   * @return the diameters
   * @throws org.boleline.explain.PlanRefusedException if a value is outside its range
   */
  public static Diameters tapering(
      Quantity<Length> length, Quantity<Length> base, Quantity<Length> end) {
    return of(List.of(Entry.of(Amounts.metres(0), base), Entry.of(length, end)));
  }

  /**
   * Obtains diameters as stated, for readers of files.
   *
   * @param entries the entries, as stated
   * @param refusals notes what is wrong, at the list
   * @return the diameters
   */
  public static Diameters stated(List<Entry> entries, Refusals refusals) {
    int last = entries.size() - 1;
    if (last < 1) {
      refusals.add(Refusal.Code.MISSING, "at least two entries", "" + entries.size());
    }
    for (int i = 0; i <= last; i++) {
      double at = entries.get(i).at;
      if (i == 0 && at > 0) {
        Bounds.refuseOrder("the first entry at 0 m", at, refusals.at(i));
      }
      if (i == 0) {
        continue;
      }
      double before = entries.get(i - 1).at;
      if (at < before) {
        Bounds.refuseOrder(
            "a station not below the one before it, " + Bounds.metres(before), at, refusals.at(i));
      } else if (at == before && (i == 1 || i == last)) {
        Bounds.refuseOrder(
            "a step within the stem, not at its base or its end", at, refusals.at(i));
      } else if (at == before && at == entries.get(i - 2).at) {
        Bounds.refuseOrder("a station at most twice in a row", at, refusals.at(i));
      }
    }
    return new Diameters(entries);
  }

  /** Notes what is wrong with these diameters for a stem of a shape. */
  void checkSpan(StemShape shape, Refusals refusals) {
    double length = shape.length(Kind.LENGTH);
    double allowance = Si.value(shape.allowance(), Kind.LENGTH, "allowance");
    for (int i = 0; i < entries.size(); i++) {
      double at = entries.get(i).at;
      if (at > length + allowance) {
        refusals
            .at(i)
            .at("at")
            .add(
                Refusal.Code.STATION_OFF_STEM,
                "a station from 0 m to the length of the stem, " + Bounds.metres(length),
                Bounds.metres(at));
      } else if (i == entries.size() - 1 && at < length - allowance) {
        Bounds.refuseOrder(
            "the last entry at the end of the stem, " + Bounds.metres(length), at, refusals.at(i));
      }
    }
  }

  /**
   * Returns the entries.
   *
   * @return at least two, in order along the stem, from its base to its end
   */
  public List<Entry> entries() {
    return entries;
  }

  /**
   * Returns the stations of the entries, for bulk use.
   *
   * @param kind {@link Kind#LENGTH}: names the unit at the place of use
   * @return a new array in metres from the base, not decreasing; a step stands twice
   */
  public double[] stations(Kind<Length> kind) {
    return entries.stream().mapToDouble(e -> e.at).toArray();
  }

  /**
   * Returns the outer diameters of the entries, for bulk use.
   *
   * @param kind {@link Kind#LENGTH}: names the unit at the place of use
   * @return a new array in metres
   */
  public double[] outer(Kind<Length> kind) {
    return entries.stream().mapToDouble(e -> e.outer).toArray();
  }

  /**
   * Returns the diameters of the cavity at the entries, for bulk use.
   *
   * @param kind {@link Kind#LENGTH}: names the unit at the place of use
   * @return a new array in metres, zero where the wood is solid
   */
  public double[] cavity(Kind<Length> kind) {
    return entries.stream().mapToDouble(e -> e.cavity).toArray();
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof Diameters d && entries.equals(d.entries);
  }

  @Override
  public int hashCode() {
    return entries.hashCode();
  }

  @Override
  public String toString() {
    return entries.toString();
  }
}
