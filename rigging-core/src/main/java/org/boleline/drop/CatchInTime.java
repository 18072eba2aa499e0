package org.boleline.drop;

import static java.util.Objects.requireNonNull;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.function.BooleanSupplier;
import javax.measure.Quantity;
import javax.measure.quantity.Acceleration;
import javax.measure.quantity.Force;
import javax.measure.quantity.Length;
import javax.measure.quantity.Time;
import org.boleline.explain.Caution;
import org.boleline.explain.CautionCode;
import org.boleline.explain.Refusal;
import org.boleline.explain.Refusals;
import org.boleline.geometry.Turn;
import org.boleline.internal.coupled.RestingRig;
import org.boleline.internal.coupled.SmallMotions;
import org.boleline.internal.coupled.StemReading;
import org.boleline.internal.motion.CatchMotion;
import org.boleline.internal.motion.MotionRecord;
import org.boleline.internal.motion.MotionSpec;
import org.boleline.internal.motion.StemSide;
import org.boleline.plan.DropSpec;
import org.boleline.rope.Hardware;
import org.boleline.statics.RigAtRest;
import org.boleline.units.Kind;
import org.boleline.units.QuantityText;
import org.boleline.units.Si;
import org.jspecify.annotations.Nullable;

/**
 * A catch that is followed step by step in time: the piece as a rigid body in space, rope that
 * sticks or slips at every point, stems that bend and swing, a device that holds or runs.
 *
 * <p>Left out: mass of the rope and the hardware, air, friction of a turn that changes, slings that
 * turn (they move with their stem), breaking of anything. The stem bends by its lowest modes, about
 * its rest. What the piece does to the stem before the hinge lets go, and whether it strikes
 * anything, is not looked at. No comparison with measured drops is claimed.
 *
 * <p>Immutable and thread-safe.
 *
 * <pre>{@code
 * CatchInTime stepByStep =
 *     CatchInTime.builder(piece, rope, line, metres(2)).onStems(rig, 0.03).build();
 * if (stepByStep.follow() instanceof TimedCatch.Followed caught) {
 *   caught.loadLeg().firstPulse();
 * }
 * }</pre>
 */
public final class CatchInTime {
  private final MotionSpec spec;
  private final List<StemSide> stems;
  private final double duration;
  private final double every;
  private final List<Caution> cautions;
  private final @Nullable Double lastKnownTension;

  private CatchInTime(
      MotionSpec spec,
      List<StemSide> stems,
      double duration,
      double every,
      List<Caution> cautions,
      @Nullable Double lastKnownTension) {
    this.spec = spec;
    this.stems = stems;
    this.duration = duration;
    this.every = every;
    this.cautions = List.copyOf(cautions);
    this.lastKnownTension = lastKnownTension;
  }

  /**
   * Begins the statement of a catch.
   *
   * @param piece the piece at its start, not null
   * @param rope stretch of the rope while the tension rises, not null
   * @param line where the rope runs, not null
   * @param loadLeg length of rope between tie and first point, above zero, at most 1 km, not null
   * @return the builder
   */
  public static Builder builder(
      FallingPiece piece, RopeStretch rope, RopeLine line, Quantity<Length> loadLeg) {
    return new Builder(piece, rope, line, loadLeg);
  }

  /**
   * Follows the catch to the end of its time.
   *
   * @equation see docs/theory/catch-in-time.md
   * @validity see the class
   * @source mechanics of rigid bodies, Coulomb friction, modes of a bar; integration by the method
   *     of Dormand and Prince with located events
   * @accuracy peaks to about 1e-7; energy account closed to 1e-6 of what was given
   * @return what it came to; with the locked catch beside it if the rope may run
   */
  public TimedCatch follow() {
    return follow(() -> false);
  }

  /**
   * Follows the catch to the end of its time, unless it is cancelled.
   *
   * @param cancelled asked now and then whether to stop, not null
   * @return as {@link #follow()}
   * @throws java.util.concurrent.CancellationException if it was cancelled
   */
  public TimedCatch follow(BooleanSupplier cancelled) {
    requireNonNull(cancelled, "cancelled");
    TimedCatch.@Nullable Followed locked = null;
    boolean isLocked = spec.slip() == Double.POSITIVE_INFINITY && spec.delay() == 0;
    if (!isLocked) {
      CatchInTime fast =
          new CatchInTime(locked(), stems, duration, every, cautions, lastKnownTension);
      TimedCatch beside = fast.follow(cancelled);
      if (!(beside instanceof TimedCatch.Followed followed)) {
        return beside;
      }
      locked = followed;
    }
    MotionRecord record = CatchMotion.follow(spec, stems, duration, every, cancelled);
    if (record.ending() == MotionRecord.Ending.GAVE_UP) {
      return new TimedCatch.NotFollowed(
          "the steps became too small or too many, or left the energy account open");
    }
    return new TimedCatch.Followed(
        record, spec.lengths().length, stems.size(), locked, cautions(record, locked));
  }

  private MotionSpec locked() {
    return new MotionSpec(
        spec.mass(),
        spec.axialInertia(),
        spec.crossInertia(),
        spec.tie(),
        spec.position(),
        spec.velocity(),
        spec.attitude(),
        spec.spin(),
        spec.rope(),
        spec.lengths(),
        spec.passing(),
        spec.loss(),
        spec.memory(),
        spec.ratio(),
        spec.place(),
        spec.circularFrequency(),
        spec.damping(),
        spec.shape(),
        Double.POSITIVE_INFINITY,
        0,
        0,
        spec.gravity());
  }

  private List<Caution> cautions(MotionRecord record, TimedCatch.@Nullable Followed locked) {
    List<Caution> found = new ArrayList<>(cautions);
    double peak = record.peaks()[0];
    if (lastKnownTension != null && peak > lastKnownTension) {
      found.add(
          new Caution(
              CautionCode.STRETCH_EXTRAPOLATED,
              "/rope",
              Map.of("tension", newtons(peak), "last", newtons(lastKnownTension))));
    }
    if (locked != null) {
      double fast = Si.value(locked.loadLeg().overall(), Kind.FORCE, "peak");
      found.add(
          new Caution(
              CautionCode.LET_RUN_MAY_FAIL,
              "",
              Map.of("locked", newtons(fast), "running", newtons(peak))));
    }
    return found;
  }

  private static String newtons(double value) {
    return QuantityText.number(value, 3) + " N";
  }

  /** States a catch step by step. Not thread-safe. */
  public static final class Builder {
    private final FallingPiece piece;
    private final RopeStretch rope;
    private final RopeLine line;
    private final double loadLeg;
    private @Nullable RigAtRest rig;
    private double dampingRatio;
    private boolean passing = true;
    private double lossRatio;
    private double memoryStrain = 0.01;
    private double slip = Double.POSITIVE_INFINITY;
    private double idle;
    private double delay;
    private double duration = 5;
    private double every;
    private double gravity = CatchBounds.STANDARD_GRAVITY_M_PER_S2;
    private final Refusals refusals = Refusals.none();

    private Builder(FallingPiece piece, RopeStretch rope, RopeLine line, Quantity<Length> loadLeg) {
      this.piece = requireNonNull(piece, "piece");
      this.rope = requireNonNull(rope, "rope");
      this.line = requireNonNull(line, "line");
      requireNonNull(loadLeg, "loadLeg");
      this.loadLeg = refusals.at("loadLeg").aboveZero(loadLeg, Kind.LENGTH, CatchBounds.LEG);
    }

    /**
     * Lets the points move with the stems of an arrangement; without this they do not move.
     *
     * @param restingRig the arrangement that the line was made of, not null
     * @param modalDampingRatio damping ratio of every mode, from 0 to 1; published values for bare
     *     stems lie between 0.01 and 0.08 (Moore and Maguire 2005)
     * @return this builder
     */
    public Builder onStems(RigAtRest restingRig, double modalDampingRatio) {
      rig = requireNonNull(restingRig, "restingRig");
      dampingRatio = refusals.at("modalDampingRatio").number(modalDampingRatio, 0, 1);
      return this;
    }

    /**
     * Counts rope that passes a point where it lay, as the catch by energy does unless told
     * otherwise: it adds to the length of the leg, and its own stretch is left out.
     *
     * @return this builder
     */
    public Builder countingRopeWhereItLay() {
      passing = false;
      return this;
    }

    /**
     * Lets the rope unload below its curve. The tension is T = curve(e) (1 - loss * z); z goes
     * toward 1 while the strain falls, and toward 0 while it grows, over the strain of memory.
     *
     * @param fullLossRatio share of the tension that is missing after long unloading, from 0 to 0.9
     * @param overStrainRatio strain over which z comes and goes, from 1e-4 to 1
     * @return this builder
     */
    public Builder losing(double fullLossRatio, double overStrainRatio) {
      lossRatio = refusals.at("fullLossRatio").number(fullLossRatio, 0, 0.9);
      memoryStrain = refusals.at("overStrainRatio").number(overStrainRatio, 1e-4, 1);
      return this;
    }

    /**
     * Lets the rope slip through the device at a set tension. Without this or {@link #byHand} it is
     * made fast.
     *
     * @param device the device, not null
     * @return this builder
     */
    public Builder slipping(DropSpec.Slipping device) {
      slip = Si.value(device.slipTension(), Kind.FORCE, "slipTension");
      delay = 0;
      return this;
    }

    /**
     * Lets the rope run until a hand behind wraps holds it, which it does a time after the rope has
     * first come taut; then the device slips at the hand's force times the ratio of the wraps.
     *
     * @param hand force and delay of the hand, not null
     * @param device what the wraps lie on, as it acts in a catch, not null
     * @param wraps turn of the rope on the device, not null
     * @return this builder
     * @throws IllegalArgumentException if the tension at the device exceeds the largest double
     */
    public Builder byHand(DropSpec.ByHand hand, Hardware device, Turn wraps) {
      slip = Si.value(hand.handForce(), Kind.FORCE, "handForce") * device.tensionRatio(wraps);
      delay = Si.value(hand.delay(), Kind.TIME, "delay");
      return this;
    }

    /**
     * States the tension into the device before the hand holds; none unless stated.
     *
     * @param tension the tension, zero or more, at most 1 GN, not null
     * @return this builder
     */
    public Builder idling(Quantity<Force> tension) {
      idle = refusals.at("idle").between(tension, Kind.FORCE, 0, CatchBounds.FORCE);
      return this;
    }

    /**
     * States how long to follow; 5 s unless stated.
     *
     * @param time the time, above zero, at most 600 s, not null
     * @return this builder
     */
    public Builder over(Quantity<Time> time) {
      duration = refusals.at("duration").aboveZero(time, Kind.TIME, 600);
      return this;
    }

    /**
     * Asks for samples at even times; none unless asked for.
     *
     * @param time time between samples, from 10 us to 600 s, not null
     * @return this builder
     */
    public Builder sampled(Quantity<Time> time) {
      every = refusals.at("sampling").between(time, Kind.TIME, 1e-5, 600);
      return this;
    }

    /**
     * States another gravity than standard.
     *
     * @param acceleration acceleration of gravity, above zero, not null
     * @return this builder
     * @throws org.boleline.explain.PlanRefusedException if it is outside its range
     */
    public Builder gravity(Quantity<Acceleration> acceleration) {
      gravity = CatchBounds.gravity(acceleration);
      return this;
    }

    /**
     * Ends the statement.
     *
     * @return the catch
     * @throws org.boleline.explain.PlanRefusedException if a value is outside its range, the load
     *     leg is shorter than the piece is away from the first point, the idle tension is above the
     *     one at which the device slips, or the line is not of the arrangement
     */
    public CatchInTime build() {
      double[] place = line.places();
      double[] tie = piece.tiePlace();
      double away =
          Math.sqrt(
              Math.pow(place[0] - tie[0], 2)
                  + Math.pow(place[1] - tie[1], 2)
                  + Math.pow(place[2] - tie[2], 2));
      if (away > loadLeg * (1 + 1e-9)) {
        refusals
            .at("loadLeg")
            .add(
                Refusal.Code.CONFLICT,
                "at least as long as the tie is away from the first point, "
                    + QuantityText.number(away, 4)
                    + " m",
                QuantityText.number(loadLeg, 4) + " m");
      }
      if (idle > slip) {
        refusals
            .at("idle")
            .add(
                Refusal.Code.CONFLICT,
                "at most the tension at which the device slips",
                QuantityText.number(idle, 4) + " N");
      }
      if (rig != null && rig.bearing().size() != line.points().size()) {
        refusals
            .at("line")
            .add(
                Refusal.Code.CONFLICT,
                rig.bearing().size() + " points, as the arrangement has that bear",
                String.valueOf(line.points().size()));
      }
      refusals.throwIfAny();
      double[] lengths = new double[line.points().size() + 1];
      lengths[0] = loadLeg;
      System.arraycopy(line.lengths(), 0, lengths, 1, lengths.length - 1);
      List<StemSide> sides = new ArrayList<>();
      List<double[]> shapes = new ArrayList<>();
      List<Double> frequencies = new ArrayList<>();
      if (rig != null) {
        modes(rig.kernel(), sides, shapes, frequencies);
      }
      double[] damping = new double[frequencies.size()];
      Arrays.fill(damping, dampingRatio);
      MotionSpec spec =
          new MotionSpec(
              piece.massKilograms(),
              piece.axialInertia(),
              piece.crossInertia(),
              new double[] {0, 0, piece.tie()},
              piece.centre().in(Kind.LENGTH),
              piece.velocity().in(Kind.SPEED),
              piece.attitude(),
              piece.spin(),
              StretchKernels.of(rope.curve()),
              lengths,
              passing,
              lossRatio,
              memoryStrain,
              line.ratios(),
              place,
              frequencies.stream().mapToDouble(Double::doubleValue).toArray(),
              damping,
              shapes.toArray(double[][]::new),
              slip,
              delay > 0 ? idle : 0,
              delay,
              gravity);
      return new CatchInTime(spec, sides, duration, every, stated(), lastKnown());
    }

    private static void modes(
        RestingRig kernel, List<StemSide> sides, List<double[]> shapes, List<Double> frequencies) {
      int points = kernel.stemOf().length;
      for (int i = 0; i < kernel.stems().size(); i++) {
        SmallMotions motions = kernel.stems().get(i);
        int modes = kernel.modes()[i];
        sides.add(
            new StemSide(new StemReading(motions, modes), frequencies.size(), kernel.nodesOn(i)));
        for (int k = 0; k < modes; k++) {
          double[] shape = new double[3 * points];
          for (int d = 0; d < shape.length; d++) {
            shape[d] = kernel.shape(i, k, d / 3, d % 3);
          }
          shapes.add(shape);
          frequencies.add(motions.circularFrequency()[k]);
        }
      }
    }

    private List<Caution> stated() {
      List<Caution> found = new ArrayList<>();
      found.add(new Caution(CautionCode.CATCH_IN_TIME, "", Map.of()));
      if (rope.pull() == RopeStretch.Pull.SLOW) {
        found.add(new Caution(CautionCode.SLOW_STRETCH_CURVE, "/rope", Map.of()));
      }
      if (rope.wear() == RopeStretch.Wear.NEW) {
        found.add(new Caution(CautionCode.NEW_ROPE_CURVE, "/rope", Map.of()));
      }
      if (rig != null && rig.kernel().shareByModes() < RestingRig.GIVE_BY_MODES) {
        found.add(
            new Caution(
                CautionCode.FEW_MODES,
                "",
                Map.of("share", QuantityText.number(rig.kernel().shareByModes(), 3))));
      }
      List<CatchPoint> points = line.friction();
      for (int j = 0; j < points.size(); j++) {
        for (var step : points.get(j).steps()) {
          found.addAll(step.cautions("/points/" + j));
        }
      }
      return found;
    }

    private @Nullable Double lastKnown() {
      return rope.curve() instanceof TabulatedStretch table
          ? Si.value(table.last().tension(), Kind.FORCE, "tension")
          : null;
    }
  }
}
