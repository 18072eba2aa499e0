package org.boleline.plan;

import static java.util.Objects.requireNonNull;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.Force;
import javax.measure.quantity.Length;
import javax.measure.quantity.Time;
import org.boleline.explain.Datum;
import org.boleline.explain.Refusal;
import org.boleline.explain.Refusals;
import org.boleline.explain.Source;
import org.boleline.units.Kind;
import org.boleline.units.QuantityText;
import org.boleline.units.Si;
import org.jspecify.annotations.Nullable;

/**
 * How the piece drops before the rope takes it, how the rope is held then, and how it is to be
 * worked out.
 *
 * <p>The analysis of slow motion does not use it. Immutable and thread-safe; equality is exact, on
 * what was stated.
 */
public final class DropSpec {
  /** How the rope is held at the device when the piece comes into it. */
  public sealed interface Hold {}

  /** The rope is made fast: nothing runs. */
  public enum Locked implements Hold {
    /** The only one. */
    LOCKED
  }

  /** The rope slips through the device at a set tension. Immutable and thread-safe. */
  public static final class Slipping implements Hold {
    private final double tension;

    private Slipping(double tension) {
      this.tension = tension;
    }

    /**
     * Obtains a hold that slips.
     *
     * @param slipTension tension of the leg into the device while it slips, above zero, at most 1
     *     GN, not null
     * @return the hold
     * @throws org.boleline.explain.PlanRefusedException if the tension is outside its range
     */
    public static Slipping of(Quantity<Force> slipTension) {
      requireNonNull(slipTension, "slipTension");
      return Refusals.check(refusals -> stated(slipTension, refusals));
    }

    /**
     * Obtains a hold that slips as stated, for readers of files.
     *
     * @param slipTension the tension, or null if that could not be had
     * @param refusals notes what is wrong, at the hold
     * @return the hold
     */
    public static Slipping stated(@Nullable Quantity<Force> slipTension, Refusals refusals) {
      return new Slipping(
          refusals.at("slipTension").aboveZero(slipTension, Kind.FORCE, Bounds.FORCE));
    }

    /**
     * Returns the tension while the device slips.
     *
     * @return the tension in newtons, above zero
     */
    public Quantity<Force> slipTension() {
      return Si.of(tension, Kind.FORCE);
    }

    @Override
    public boolean equals(Object other) {
      return other instanceof Slipping s && Double.compare(tension, s.tension) == 0;
    }

    @Override
    public int hashCode() {
      return Double.hashCode(tension);
    }

    @Override
    public String toString() {
      return "slips at " + QuantityText.print(slipTension(), Kind.FORCE);
    }
  }

  /** A worker lets the rope run and then holds it by hand. Immutable and thread-safe. */
  public static final class ByHand implements Hold {
    private final double force;
    private final double delay;

    private ByHand(double force, double delay) {
      this.force = force;
      this.delay = delay;
    }

    /**
     * Obtains a hold by hand.
     *
     * @param handForce force of the hand behind the wraps, zero or more, at most 1 GN, not null
     * @param delay time after which the hand holds, zero or more, at most 60 s, not null
     * @return the hold
     * @throws org.boleline.explain.PlanRefusedException if a value is outside its range
     */
    public static ByHand of(Quantity<Force> handForce, Quantity<Time> delay) {
      requireNonNull(handForce, "handForce");
      requireNonNull(delay, "delay");
      return Refusals.check(refusals -> stated(handForce, delay, refusals));
    }

    /**
     * Obtains a hold by hand as stated, for readers of files.
     *
     * @param handForce the force, or null if that could not be had
     * @param delay the time, or null if that could not be had
     * @param refusals notes what is wrong, at the hold
     * @return the hold
     */
    public static ByHand stated(
        @Nullable Quantity<Force> handForce, @Nullable Quantity<Time> delay, Refusals refusals) {
      return new ByHand(
          refusals.at("handForce").between(handForce, Kind.FORCE, 0, Bounds.FORCE),
          refusals.at("delay").between(delay, Kind.TIME, 0, Bounds.DELAY));
    }

    /**
     * Returns the force of the hand behind the wraps.
     *
     * @return the force in newtons, zero or more
     */
    public Quantity<Force> handForce() {
      return Si.of(force, Kind.FORCE);
    }

    /**
     * Returns the time after which the hand holds.
     *
     * @return the time in seconds, zero or more
     */
    public Quantity<Time> delay() {
      return Si.of(delay, Kind.TIME);
    }

    @Override
    public boolean equals(Object other) {
      return other instanceof ByHand h
          && Double.compare(force, h.force) == 0
          && Double.compare(delay, h.delay) == 0;
    }

    @Override
    public int hashCode() {
      return 31 * Double.hashCode(force) + Double.hashCode(delay);
    }

    @Override
    public String toString() {
      return "held by hand with "
          + QuantityText.print(handForce(), Kind.FORCE)
          + " after "
          + QuantityText.print(delay(), Kind.TIME);
    }
  }

  /** How a drop is worked out, from plain to full. */
  public enum Level {
    /** A constant force over a stated distance. */
    CONSTANT_FORCE("constantForce"),
    /** Energy balance of a rope over points that do not move. */
    RIGID_POINTS("rigidPoints"),
    /** Energy balance of a rope over points that give way as springs. */
    GIVING_POINTS("givingPoints"),
    /** Step by step in time. */
    IN_TIME("inTime");

    private final String text;

    Level(String text) {
      this.text = text;
    }

    /**
     * Returns the name of the level as in plan files.
     *
     * @return for instance {@code givingPoints}
     */
    public String text() {
      return text;
    }

    /**
     * Reads the name of a level.
     *
     * @param text the name, not null
     * @return the level
     * @throws IllegalArgumentException if there is no such level
     */
    public static Level parse(String text) {
      requireNonNull(text, "text");
      for (Level level : values()) {
        if (level.text.equals(text)) {
          return level;
        }
      }
      throw new IllegalArgumentException("level: wants " + WANTS + ", got \"" + text + "\"");
    }

    /** What a level may be, for messages. */
    private static final String WANTS =
        "\"constantForce\", \"rigidPoints\", \"givingPoints\" or \"inTime\"";
  }

  private static final double LEAST_LOAD_LEG_M = 0.5;
  private static final double STEM_DAMPING_RATIO = 0.03;
  private static final double DURATION_S = 5;
  private static final Source DAMPING =
      new Source(
          "Moore and Maguire 2005",
          "Moore and Maguire 2005, Trees 19, abstract: 0.01 to 0.08 for stems without branches; a"
              + " value between was chosen",
          Source.Reading.DEFAULT);
  private static final Source LOAD_LEG =
      new Source(
          "assumption",
          "assumption of the plan format, no source: as long as the fall, at least 0.5 m",
          Source.Reading.DEFAULT);

  private final double fall;
  private final Hold hold;
  private final Options options;

  /** What may be left out; SI. */
  private record Options(
      @Nullable Double loadLeg,
      @Nullable Double tieToCentre,
      @Nullable Level level,
      @Nullable Double stopOver,
      @Nullable Double stemDamping,
      @Nullable Double duration) {}

  private DropSpec(double fall, Hold hold, Options options) {
    this.fall = fall;
    this.hold = hold;
    this.options = options;
  }

  /**
   * Obtains a drop.
   *
   * @param fall how far the centre of gravity of the piece falls before the rope is taut, zero or
   *     more, at most 200 m, not null
   * @param hold how the rope is held, not null
   * @return the drop
   * @throws org.boleline.explain.PlanRefusedException if the fall is outside its range
   */
  public static DropSpec of(Quantity<Length> fall, Hold hold) {
    requireNonNull(fall, "fall");
    requireNonNull(hold, "hold");
    return Refusals.check(
        refusals -> stated(fall, hold, null, null, null, null, null, null, refusals));
  }

  /**
   * Obtains a drop as stated, for readers of files.
   *
   * @param fall how far the piece falls, or null if that could not be had
   * @param hold how the rope is held, or null if that could not be had
   * @param loadLeg length of the load leg when it is taut, or null if none is stated
   * @param tieToCentre from where the rope is tied on to the centre of gravity, or null if none is
   *     stated
   * @param level how the drop is worked out, or null if none is stated
   * @param stopOver distance over which a constant force stops the piece, or null if none is stated
   * @param stemDampingRatio damping ratio of the stems, or null if none is stated
   * @param duration how long the drop is followed in time, or null if none is stated
   * @param refusals notes what is wrong, at the drop
   * @return the drop
   */
  public static DropSpec stated(
      @Nullable Quantity<Length> fall,
      @Nullable Hold hold,
      @Nullable Quantity<Length> loadLeg,
      @Nullable Quantity<Length> tieToCentre,
      @Nullable Level level,
      @Nullable Quantity<Length> stopOver,
      @Nullable Double stemDampingRatio,
      @Nullable Quantity<Time> duration,
      Refusals refusals) {
    Options options =
        new Options(
            loadLeg == null
                ? null
                : (Double) refusals.at("loadLeg").aboveZero(loadLeg, Kind.LENGTH, Bounds.LEG),
            tieToCentre == null
                ? null
                : (Double)
                    refusals.at("tieToCentre").between(tieToCentre, Kind.LENGTH, 0, Bounds.FALL),
            level,
            stopOver == null
                ? null
                : (Double) refusals.at("stopOver").aboveZero(stopOver, Kind.LENGTH, Bounds.LEG),
            stemDampingRatio == null
                ? null
                : (Double) refusals.at("stemDamping").number(stemDampingRatio, 0, 1),
            duration == null
                ? null
                : (Double) refusals.at("duration").aboveZero(duration, Kind.TIME, Bounds.DURATION));
    DropSpec drop =
        new DropSpec(
            refusals.at("fall").between(fall, Kind.LENGTH, 0, Bounds.FALL),
            refusals
                .at("device")
                .present(
                    hold,
                    "\"locked\", {\"slipTension\"} or {\"handForce\", \"delay\"}",
                    Locked.LOCKED),
            options);
    drop.check(refusals);
    return drop;
  }

  private void check(Refusals refusals) {
    double most = 2 * (loadLegMetres() + tieToCentreMetres());
    if (fall > most) {
      refusals
          .at("fall")
          .add(
              Refusal.Code.CONFLICT,
              "at most twice loadLeg and tieToCentre together, "
                  + Bounds.metres(most)
                  + ": the rope is taut before",
              Bounds.metres(fall));
    }
    @Nullable Level level = options.level();
    if (level == Level.CONSTANT_FORCE && options.stopOver() == null) {
      refusals
          .at("stopOver")
          .add(Refusal.Code.MISSING, "the distance of the stop, such as \"0.5 m\"", "nothing");
    } else if (level != Level.CONSTANT_FORCE && options.stopOver() != null) {
      onlyBeside("stopOver", Level.CONSTANT_FORCE, refusals);
    }
    if (level != Level.IN_TIME && options.stemDamping() != null) {
      onlyBeside("stemDamping", Level.IN_TIME, refusals);
    }
    if (level != Level.IN_TIME && options.duration() != null) {
      onlyBeside("duration", Level.IN_TIME, refusals);
    }
  }

  private void onlyBeside(String member, Level wanted, Refusals refusals) {
    @Nullable Level level = options.level();
    refusals
        .at(member)
        .add(
            Refusal.Code.CONFLICT,
            member + " beside the level \"" + wanted.text() + "\" only",
            level == null ? "no level" : "the level \"" + level.text() + "\"");
  }

  private DropSpec with(Options changed) {
    Double time = changed.duration();
    return Refusals.check(
        refusals ->
            stated(
                fall(),
                hold,
                length(changed.loadLeg()),
                length(changed.tieToCentre()),
                changed.level(),
                length(changed.stopOver()),
                changed.stemDamping(),
                time == null ? null : Si.of(time, Kind.TIME),
                refusals));
  }

  private static double metres(Quantity<Length> length) {
    return Si.value(length, Kind.LENGTH, "length");
  }

  private static @Nullable Quantity<Length> length(@Nullable Double metres) {
    return metres == null ? null : Si.of(metres, Kind.LENGTH);
  }

  /**
   * Returns this drop with a length of the load leg, from the piece to the first point, when the
   * rope is just taut.
   *
   * @param newLoadLeg the length, above zero, at most 1 km, not null
   * @return the drop
   * @throws org.boleline.explain.PlanRefusedException if it is outside its range, or the fall is
   *     more than twice this and the distance from tie to centre of gravity together
   */
  public DropSpec withLoadLeg(Quantity<Length> newLoadLeg) {
    requireNonNull(newLoadLeg, "newLoadLeg");
    return with(
        new Options(
            metres(newLoadLeg),
            options.tieToCentre(),
            options.level(),
            options.stopOver(),
            options.stemDamping(),
            options.duration()));
  }

  /**
   * Returns this drop with a distance from where the rope is tied on to the centre of gravity of
   * the piece, which may turn over as it falls.
   *
   * @param newTieToCentre the distance, from zero to 200 m, not null
   * @return the drop
   * @throws org.boleline.explain.PlanRefusedException if it is outside its range, or the fall is
   *     more than twice this and the load leg together
   */
  public DropSpec withTieToCentre(Quantity<Length> newTieToCentre) {
    requireNonNull(newTieToCentre, "newTieToCentre");
    return with(
        new Options(
            options.loadLeg(),
            metres(newTieToCentre),
            options.level(),
            options.stopOver(),
            options.stemDamping(),
            options.duration()));
  }

  /**
   * Returns this drop to be worked out in another way.
   *
   * @param newLevel rigid points, giving points or in time, not null; for a constant force see
   *     {@link #withConstantForceOver}
   * @return the drop
   * @throws org.boleline.explain.PlanRefusedException if the level is a constant force, whose
   *     distance is not stated
   */
  public DropSpec withLevel(Level newLevel) {
    requireNonNull(newLevel, "newLevel");
    boolean inTime = newLevel == Level.IN_TIME;
    return with(
        new Options(
            options.loadLeg(),
            options.tieToCentre(),
            newLevel,
            null,
            inTime ? options.stemDamping() : null,
            inTime ? options.duration() : null));
  }

  /**
   * Returns this drop to be worked out as a stop by a constant force.
   *
   * @param distance distance over which the piece stops, above zero, at most 1 km, not null
   * @return the drop
   * @throws org.boleline.explain.PlanRefusedException if the distance is outside its range
   */
  public DropSpec withConstantForceOver(Quantity<Length> distance) {
    requireNonNull(distance, "distance");
    return with(
        new Options(
            options.loadLeg(),
            options.tieToCentre(),
            Level.CONSTANT_FORCE,
            metres(distance),
            null,
            null));
  }

  /**
   * Returns this drop to be followed in time.
   *
   * @param modalDampingRatio damping ratio of the stems, from 0 to 1
   * @param time how long to follow, above zero, at most 600 s, not null
   * @return the drop
   * @throws org.boleline.explain.PlanRefusedException if a value is outside its range
   */
  public DropSpec inTime(double modalDampingRatio, Quantity<Time> time) {
    requireNonNull(time, "time");
    return with(
        new Options(
            options.loadLeg(),
            options.tieToCentre(),
            Level.IN_TIME,
            null,
            modalDampingRatio,
            Si.value(time, Kind.TIME, "time")));
  }

  /**
   * Returns how far the centre of gravity of the piece falls before the rope is taut.
   *
   * @return the height in metres, zero or more
   */
  public Quantity<Length> fall() {
    return Si.of(fall, Kind.LENGTH);
  }

  /**
   * Returns how the rope is held when the piece comes into it.
   *
   * @return the hold
   */
  public Hold hold() {
    return hold;
  }

  private double loadLegMetres() {
    Double stated = options.loadLeg();
    return stated == null ? Math.max(fall, LEAST_LOAD_LEG_M) : stated;
  }

  private double tieToCentreMetres() {
    Double stated = options.tieToCentre();
    return stated == null ? 0 : stated;
  }

  /**
   * Returns the length of the load leg when the rope is just taut.
   *
   * @return the length in metres, above zero; by default as long as the fall, at least 0.5 m
   */
  public Quantity<Length> loadLeg() {
    return Si.of(loadLegMetres(), Kind.LENGTH);
  }

  /**
   * Returns the distance from where the rope is tied on to the centre of gravity of the piece.
   *
   * @return the distance in metres, zero or more; zero by default
   */
  public Quantity<Length> tieToCentre() {
    return Si.of(tieToCentreMetres(), Kind.LENGTH);
  }

  /**
   * Returns how the drop is to be worked out.
   *
   * @return the level; by default with points that give way
   */
  public Level level() {
    Level stated = options.level();
    return stated == null ? Level.GIVING_POINTS : stated;
  }

  /**
   * Returns the distance over which a constant force stops the piece.
   *
   * @return the distance in metres, above zero; empty at other levels
   */
  public Optional<Quantity<Length>> stopOver() {
    return Optional.ofNullable(length(options.stopOver()));
  }

  /**
   * Returns the damping ratio of the stems when the drop is followed in time.
   *
   * @return the ratio; 0.03 by default
   */
  public double stemDampingRatio() {
    Double stated = options.stemDamping();
    return stated == null ? STEM_DAMPING_RATIO : stated;
  }

  /**
   * Returns how long the drop is followed in time.
   *
   * @return the time in seconds, above zero; 5 s by default
   */
  public Quantity<Time> duration() {
    Double stated = options.duration();
    return Si.of(stated == null ? DURATION_S : stated, Kind.TIME);
  }

  /**
   * Returns what was left to defaults.
   *
   * @return the data; the names are JSON pointers from this drop, such as {@code /loadLeg}
   */
  public List<Datum> taken() {
    List<Datum> taken = new ArrayList<>();
    if (options.loadLeg() == null) {
      taken.add(new Datum("/loadLeg", QuantityText.print(loadLeg(), Kind.LENGTH), LOAD_LEG, null));
    }
    if (options.tieToCentre() == null) {
      taken.add(new Datum("/tieToCentre", "0 m", Source.DEFAULT, null));
    }
    if (options.level() == null) {
      taken.add(new Datum("/level", level().text(), Source.DEFAULT, null));
    }
    if (level() == Level.IN_TIME && options.stemDamping() == null) {
      taken.add(new Datum("/stemDamping", QuantityText.number(STEM_DAMPING_RATIO), DAMPING, null));
    }
    if (level() == Level.IN_TIME && options.duration() == null) {
      taken.add(
          new Datum("/duration", QuantityText.print(duration(), Kind.TIME), Source.DEFAULT, null));
    }
    return List.copyOf(taken);
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof DropSpec d
        && Double.compare(fall, d.fall) == 0
        && hold.equals(d.hold)
        && options.equals(d.options);
  }

  @Override
  public int hashCode() {
    return Objects.hash(fall, hold, options);
  }

  @Override
  public String toString() {
    return "drop of " + QuantityText.print(fall(), Kind.LENGTH) + ", " + hold;
  }
}
