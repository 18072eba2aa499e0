package org.boleline.drop;

import java.util.List;
import javax.measure.Quantity;
import javax.measure.quantity.Acceleration;
import javax.measure.quantity.Force;
import javax.measure.quantity.Length;
import javax.measure.quantity.Speed;
import org.boleline.explain.Caution;
import org.boleline.explain.Step;
import org.boleline.units.Kind;
import org.boleline.units.QuantityText;
import org.boleline.units.Si;

/**
 * A piece that was let run: the rope slips through a device before the force gets as high as on a
 * locked rope.
 *
 * <p>It stops, or it never does; both are answers. The catch on a locked rope stands beside each,
 * because a worker may fail to let it run. All kinds are immutable and thread-safe.
 */
public abstract sealed class LetRun {
  private final RunAnswer answer;

  private LetRun(RunAnswer answer) {
    this.answer = answer;
  }

  /**
   * Returns the catch of the same piece with the rope made fast.
   *
   * @return the locked catch
   */
  public final Caught locked() {
    return answer.locked();
  }

  /**
   * Returns the greatest tensions and forces.
   *
   * @return the loads
   */
  public final CatchLoads loads() {
    return answer.loads();
  }

  /**
   * Returns the tension of the leg into the device at which the rope slips.
   *
   * @return the tension in newtons, zero or more
   */
  public final Quantity<Force> slipTension() {
    return Si.of(answer.slip(), Kind.FORCE);
  }

  /**
   * Returns the steps that gave the numbers.
   *
   * @return the steps
   */
  public final List<Step> steps() {
    return answer.steps();
  }

  /**
   * Returns what to read with care.
   *
   * @return the cautions
   */
  public final List<Caution> cautions() {
    return answer.cautions();
  }

  /** The piece stops. */
  public static final class Stopped extends LetRun {
    private final double freeRun;
    private final double slipRun;
    private final double stretch;
    private final double fall;
    private final EnergyAccount energy;

    Stopped(
        RunAnswer answer,
        double freeRun,
        double slipRun,
        double stretch,
        double fall,
        EnergyAccount energy) {
      super(answer);
      this.freeRun = freeRun;
      this.slipRun = slipRun;
      this.stretch = stretch;
      this.fall = fall;
      this.energy = energy;
    }

    /**
     * Returns how far the rope ran, measured at the load.
     *
     * @return the length in metres, zero if the tension never came up to slipping
     */
    public Quantity<Length> run() {
      return Si.of(freeRun + slipRun, Kind.LENGTH);
    }

    /**
     * Returns how far the rope ran before the worker held it: part of {@link #run}.
     *
     * @return the length in metres, zero without a delay
     */
    public Quantity<Length> runBeforeHold() {
      return Si.of(freeRun, Kind.LENGTH);
    }

    /**
     * Returns how far the piece came down because rope and springs gave way.
     *
     * @return the travel in metres, above zero
     */
    public Quantity<Length> stretch() {
      return Si.of(stretch, Kind.LENGTH);
    }

    /**
     * Returns the room that the piece needs below where it starts: fall, stretch and run, without
     * any margin.
     *
     * @return the length in metres
     */
    public Quantity<Length> clearanceNeeded() {
      return Si.of(fall + freeRun + slipRun + stretch, Kind.LENGTH);
    }

    /**
     * Returns where the energy has gone.
     *
     * @return the account
     */
    public EnergyAccount energy() {
      return energy;
    }

    @Override
    public String toString() {
      return "stops after a run of "
          + QuantityText.print(run(), Kind.LENGTH)
          + " with "
          + QuantityText.print(loads().loadLeg(), Kind.FORCE);
    }
  }

  /** The piece never stops: the rope slips before it pulls harder than the weight. */
  public static final class NeverStops extends LetRun {
    private final double freeRun;
    private final double speed;
    private final double acceleration;

    NeverStops(RunAnswer answer, double freeRun, double speed, double acceleration) {
      super(answer);
      this.freeRun = freeRun;
      this.speed = speed;
      this.acceleration = acceleration;
    }

    /**
     * Returns how far the rope ran before the worker held it.
     *
     * @return the length in metres, zero without a delay
     */
    public Quantity<Length> runBeforeHold() {
      return Si.of(freeRun, Kind.LENGTH);
    }

    /**
     * Returns the speed of the piece when the device begins to slip; it grows from there, or stays.
     *
     * @return the speed in metres per second, zero or more
     */
    public Quantity<Speed> speedAtSlip() {
      return Si.of(speed, Kind.SPEED);
    }

    /**
     * Returns how fast its speed grows while the rope runs.
     *
     * @return the acceleration downward in metres per second squared, zero or more
     */
    public Quantity<Acceleration> acceleration() {
      return Si.of(acceleration, Kind.ACCELERATION);
    }

    @Override
    public String toString() {
      return "never stops";
    }
  }
}
