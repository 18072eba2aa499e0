package org.boleline.stem;

import static java.util.Objects.requireNonNull;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.boleline.explain.Datum;
import org.boleline.explain.Refusal;
import org.boleline.explain.Refusals;
import org.boleline.explain.Source;
import org.boleline.geometry.Heading;
import org.boleline.geometry.Vector;
import org.boleline.units.Amounts;
import org.boleline.units.Kind;
import org.boleline.units.Si;
import org.boleline.wood.WoodProperties;
import org.jspecify.annotations.Nullable;

/**
 * A standing stem: where it starts, its centre line, diameters and wood, how its base is held, and
 * what hangs on it.
 *
 * <p>Immutable and thread-safe. Equality is exact, on what was stated: a value that was left to its
 * default is not equal to the same value stated, since results list the defaults they took.
 */
public final class Stem {
  private static final Vector<Length> ORIGIN = Vector.ofSi(Kind.LENGTH, 0, 0, 0);

  private final String id;
  private final @Nullable Vector<Length> base;
  private final StemShape shape;
  private final @Nullable ShapeIs shapeIs;
  private final Diameters diameters;
  private final WoodProperties wood;
  private final @Nullable Boolean ownWeight;
  private final @Nullable Root root;
  private final List<PointMass> masses;
  private final List<Mark> marks;

  private Stem(Builder builder, Refusals refusals) {
    this.id = refusals.at("id").name(builder.id);
    this.base = builder.base;
    this.shape =
        refusals.at("shape").present(builder.shape, "the centre line of the stem", StandIn.SHAPE);
    this.shapeIs = builder.shapeIs;
    this.diameters =
        refusals.at("diameters").present(builder.diameters, "diameters", StandIn.DIAMETERS);
    this.wood = refusals.at("wood").present(builder.wood, "wood", StandIn.WOOD);
    this.ownWeight = builder.ownWeight;
    this.root = builder.root;
    this.masses = List.copyOf(builder.masses);
    this.marks = List.copyOf(builder.marks);
    check(refusals);
  }

  private void check(Refusals refusals) {
    if (base != null) {
      Bounds.position(base, refusals.at("base"));
    }
    if (base != null && shape instanceof StemShape.ByPoints line && !line.startsAt(base)) {
      refusals
          .at("base")
          .add(
              Refusal.Code.CONFLICT,
              "the first point of the measured centre line to be the base or [0, 0, 0]",
              base.toString());
    }
    if (!diameters.entries().isEmpty()) {
      diameters.checkSpan(shape, refusals.at("diameters"));
    }
    for (int i = 0; i < masses.size(); i++) {
      checkStation(masses.get(i).atMetres(), Kind.LENGTH, refusals.at("masses").at(i).at("at"));
    }
    Set<String> names = new HashSet<>();
    for (int i = 0; i < marks.size(); i++) {
      Refusals at = refusals.at("marks").at(i);
      checkStation(marks.get(i).atMetres(), Kind.LENGTH, at.at("at"));
      if (!names.add(marks.get(i).name())) {
        at.at("name")
            .add(
                Refusal.Code.DUPLICATE,
                "a name that no other mark of this stem has",
                "\"" + marks.get(i).name() + "\" again");
      }
    }
  }

  /** What stands in a stem that is refused, so that further rules can run. */
  private static final class StandIn {
    static final StemShape SHAPE =
        StemShape.Straight.stated(
            Heading.of(Amounts.radians(0), Amounts.radians(0)), null, Refusals.none());
    static final Diameters DIAMETERS = Diameters.stated(List.of(), Refusals.none());
    static final WoodProperties WOOD =
        WoodProperties.of(Amounts.gigapascals(1), Amounts.kilogramsPerCubicMetre(1000));
  }

  /**
   * Obtains a builder of a stem.
   *
   * @param id name of the stem, unique in its plan, one line of at most 80 characters, not null
   * @return the builder
   */
  public static Builder builder(String id) {
    return new Builder().id(id);
  }

  /**
   * Obtains a builder that holds nothing yet, not even an id.
   *
   * @return the builder
   */
  public static Builder builder() {
    return new Builder();
  }

  /**
   * Returns a builder that holds all of this stem.
   *
   * @return the builder
   */
  public Builder toBuilder() {
    Builder builder = builder(id).shape(shape).diameters(diameters).wood(wood);
    builder.base = base;
    builder.shapeIs = shapeIs;
    builder.ownWeight = ownWeight;
    builder.root = root;
    return builder.masses(masses).marks(marks);
  }

  /**
   * Notes a refusal if a station is not on this stem.
   *
   * @param at the station, in metres; NaN is let through
   * @param kind {@link Kind#LENGTH}: names the unit at the place of use
   * @param refusals notes it, at the station
   */
  public void checkStation(double at, Kind<Length> kind, Refusals refusals) {
    double length = shape.length(kind);
    double allowance = Si.value(shape.allowance(), Kind.LENGTH, "allowance");
    if (at < 0 || at > length + allowance) {
      refusals.add(
          Refusal.Code.STATION_OFF_STEM,
          "a station from 0 m to the length of the stem, " + Bounds.metres(length),
          Bounds.metres(at));
    }
  }

  /**
   * Returns the name of the stem.
   *
   * @return the id, unique in its plan
   */
  public String id() {
    return id;
  }

  /**
   * Returns where the stem starts.
   *
   * @return the position of its base in the plan's axes, in metres; by default the first point of a
   *     measured centre line, else the origin
   */
  public Vector<Length> base() {
    if (base != null) {
      return base;
    }
    return shape instanceof StemShape.ByPoints line ? line.points().get(0) : ORIGIN;
  }

  /**
   * Returns the centre line.
   *
   * @return the shape, from the base
   */
  public StemShape shape() {
    return shape;
  }

  /**
   * Returns the length of the centre line.
   *
   * @return the length in metres, above zero
   */
  public Quantity<Length> length() {
    return shape.length();
  }

  /**
   * Returns in which state the stem has its shape.
   *
   * @return as standing by default
   */
  public ShapeIs shapeIs() {
    return shapeIs == null ? ShapeIs.AS_STANDING : shapeIs;
  }

  /**
   * Returns the diameters.
   *
   * @return the diameters, over the whole length
   */
  public Diameters diameters() {
    return diameters;
  }

  /**
   * Returns the wood.
   *
   * @return the properties of the wood
   */
  public WoodProperties wood() {
    return wood;
  }

  /**
   * Tells whether the stem's own weight loads it.
   *
   * @return true by default
   */
  public boolean ownWeight() {
    return ownWeight == null || ownWeight;
  }

  /**
   * Returns how the base is held.
   *
   * @return the root, clamped by default
   */
  public Root root() {
    return root == null ? Root.Clamped.CLAMPED : root;
  }

  /**
   * Returns the masses that hang on the stem.
   *
   * @return the masses, as stated
   */
  public List<PointMass> masses() {
    return masses;
  }

  /**
   * Returns the stations whose movement is wanted.
   *
   * @return the marks, as stated
   */
  public List<Mark> marks() {
    return marks;
  }

  /**
   * Returns what was left to defaults or taken from data.
   *
   * @return the data; the names are JSON pointers from this stem, such as {@code /root}
   */
  public List<Datum> taken() {
    List<Datum> taken = new ArrayList<>();
    if (base == null) {
      taken.add(
          new Datum(
              "/base",
              base().toString(),
              shape instanceof StemShape.ByPoints ? Source.PLAN : Source.DEFAULT,
              null));
    }
    if (shapeIs == null) {
      taken.add(new Datum("/shapeIs", "asStanding", Source.DEFAULT, null));
    }
    for (Datum datum : wood.taken()) {
      taken.add(new Datum("/wood/" + datum.name(), datum.value(), datum.source(), datum.spread()));
    }
    if (ownWeight == null) {
      taken.add(new Datum("/ownWeight", "true", Source.DEFAULT, null));
    }
    if (root == null) {
      taken.add(new Datum("/root", "clamped", Source.DEFAULT, null));
    }
    return List.copyOf(taken);
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof Stem s
        && id.equals(s.id)
        && Objects.equals(base, s.base)
        && shape.equals(s.shape)
        && shapeIs == s.shapeIs
        && diameters.equals(s.diameters)
        && wood.equals(s.wood)
        && Objects.equals(ownWeight, s.ownWeight)
        && Objects.equals(root, s.root)
        && masses.equals(s.masses)
        && marks.equals(s.marks);
  }

  @Override
  public int hashCode() {
    return Objects.hash(id, base, shape, shapeIs, diameters, wood, ownWeight, root, masses, marks);
  }

  @Override
  public String toString() {
    return "stem " + id + ", " + shape;
  }

  /** Builds a stem. Belongs to one thread. */
  public static final class Builder {
    private @Nullable String id;
    private @Nullable Vector<Length> base;
    private @Nullable StemShape shape;
    private @Nullable ShapeIs shapeIs;
    private @Nullable Diameters diameters;
    private @Nullable WoodProperties wood;
    private @Nullable Boolean ownWeight;
    private @Nullable Root root;
    private List<PointMass> masses = List.of();
    private List<Mark> marks = List.of();

    private Builder() {}

    /**
     * States the name.
     *
     * @param id unique in its plan, one line of at most 80 characters, not null
     * @return this builder
     */
    public Builder id(String id) {
      this.id = requireNonNull(id, "id");
      return this;
    }

    /**
     * States where the stem starts.
     *
     * @param base position in the plan's axes, not null
     * @return this builder
     */
    public Builder base(Vector<Length> base) {
      this.base = requireNonNull(base, "base");
      return this;
    }

    /**
     * States the centre line.
     *
     * @param shape the shape from the base, not null
     * @return this builder
     */
    public Builder shape(StemShape shape) {
      this.shape = requireNonNull(shape, "shape");
      return this;
    }

    /**
     * States in which state the stem has its shape.
     *
     * @param shapeIs the state, not null
     * @return this builder
     */
    public Builder shapeIs(ShapeIs shapeIs) {
      this.shapeIs = requireNonNull(shapeIs, "shapeIs");
      return this;
    }

    /**
     * States the diameters.
     *
     * @param diameters diameters from the base to the end of the stem, not null
     * @return this builder
     */
    public Builder diameters(Diameters diameters) {
      this.diameters = requireNonNull(diameters, "diameters");
      return this;
    }

    /**
     * States the wood.
     *
     * @param wood properties of the wood, not null
     * @return this builder
     */
    public Builder wood(WoodProperties wood) {
      this.wood = requireNonNull(wood, "wood");
      return this;
    }

    /**
     * States whether the stem's own weight loads it.
     *
     * @param ownWeight true if it does
     * @return this builder
     */
    public Builder ownWeight(boolean ownWeight) {
      this.ownWeight = ownWeight;
      return this;
    }

    /**
     * States how the base is held.
     *
     * @param root the root, not null
     * @return this builder
     */
    public Builder root(Root root) {
      this.root = requireNonNull(root, "root");
      return this;
    }

    /**
     * States the masses that hang on the stem, in place of those stated before.
     *
     * @param masses the masses, not null
     * @return this builder
     */
    public Builder masses(List<PointMass> masses) {
      this.masses = List.copyOf(masses);
      return this;
    }

    /**
     * States the stations whose movement is wanted, in place of those stated before.
     *
     * @param marks the marks, not null
     * @return this builder
     */
    public Builder marks(List<Mark> marks) {
      this.marks = List.copyOf(marks);
      return this;
    }

    /**
     * Returns the stem.
     *
     * @return the stem
     * @throws org.boleline.explain.PlanRefusedException if what was stated describes no stem: with
     *     all reasons, their places relative to the stem
     */
    public Stem build() {
      return Refusals.check(this::stated);
    }

    /**
     * Returns the stem as stated, for readers of files.
     *
     * @param refusals notes what is wrong, at the stem
     * @return the stem
     */
    public Stem stated(Refusals refusals) {
      return new Stem(this, refusals);
    }
  }
}
