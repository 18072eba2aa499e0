package org.boleline.drop;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.Force;
import javax.measure.quantity.Length;
import javax.measure.quantity.Time;
import org.boleline.explain.Caution;
import org.boleline.internal.motion.MotionRecord;
import org.boleline.units.Kind;
import org.boleline.units.Moment;
import org.boleline.units.QuantityText;
import org.boleline.units.Si;
import org.jspecify.annotations.Nullable;

/**
 * What a catch that was followed in time came to.
 *
 * <p>Immutable and thread-safe.
 */
public abstract sealed class TimedCatch {
  private TimedCatch() {}

  /** The steps became too small or too many, or left the energy account open. */
  public static final class NotFollowed extends TimedCatch {
    private final String reason;

    NotFollowed(String reason) {
      this.reason = reason;
    }

    /**
     * Returns why.
     *
     * @return a sentence
     */
    public String reason() {
      return reason;
    }

    @Override
    public String toString() {
      return "not followed: " + reason;
    }
  }

  /** The catch was followed to the end of the time. */
  public static final class Followed extends TimedCatch {
    private final MotionRecord record;
    private final int legs;
    private final int stems;
    private final @Nullable Followed locked;
    private final List<Caution> cautions;

    Followed(
        MotionRecord record,
        int legs,
        int stems,
        @Nullable Followed locked,
        List<Caution> cautions) {
      this.record = record;
      this.legs = legs;
      this.stems = stems;
      this.locked = locked;
      this.cautions = List.copyOf(cautions);
    }

    /**
     * Returns the same catch with the rope made fast: a worker may fail to let it run.
     *
     * @return the locked catch; this one if it is locked itself
     */
    public Followed locked() {
      return locked == null ? this : locked;
    }

    /**
     * Returns whether rope still runs through the device when the time is up.
     *
     * @return true if the piece has not stopped
     */
    public boolean ropeStillRuns() {
      return record.ending() == MotionRecord.Ending.RUNNING;
    }

    /**
     * Returns when the rope first comes taut.
     *
     * @return the time in seconds since the start; empty if it never does
     */
    public Optional<Quantity<Time>> tautAt() {
      double at = record.tautAt();
      return Double.isNaN(at) ? Optional.empty() : Optional.of(Si.of(at, Kind.TIME));
    }

    private <Q extends Quantity<Q>> TimedPeak<Q> peak(int i, Kind<Q> kind) {
      return new TimedPeak<>(
          kind,
          record.firstPeaks()[i],
          record.firstPeakTimes()[i],
          record.peaks()[i],
          record.peakTimes()[i]);
    }

    private <Q extends Quantity<Q>> List<TimedPeak<Q>> peaks(int from, int count, Kind<Q> kind) {
      List<TimedPeak<Q>> out = new ArrayList<>();
      for (int i = from; i < from + count; i++) {
        out.add(peak(i, kind));
      }
      return List.copyOf(out);
    }

    /**
     * Returns the greatest tension of every leg, from the load leg on.
     *
     * @return the tensions in newtons
     */
    public List<TimedPeak<Force>> legs() {
      return peaks(0, legs, Kind.FORCE);
    }

    /**
     * Returns the greatest tension of the load leg.
     *
     * @return the tension in newtons
     */
    public TimedPeak<Force> loadLeg() {
      return peak(0, Kind.FORCE);
    }

    /**
     * Returns the greatest force on every point, from the piece on, and last that on the end.
     *
     * @return the forces in newtons
     */
    public List<TimedPeak<Force>> points() {
      return peaks(legs, legs, Kind.FORCE);
    }

    /**
     * Returns the greatest moment at the base of every stem, own weight included.
     *
     * @return the moments in newton metres, in the plan's order; empty if the points do not move
     */
    public List<TimedPeak<Moment>> baseMoments() {
      return peaks(2 * legs, stems, Kind.MOMENT);
    }

    /**
     * Returns how far the centre of gravity comes down below its start.
     *
     * @return the depth in metres
     */
    public TimedPeak<Length> depth() {
      return peak(2 * legs + stems, Kind.LENGTH);
    }

    /**
     * Returns the rope that has run through the device.
     *
     * @return its length in metres, without stretch
     */
    public Quantity<Length> run() {
      return Si.of(record.run(), Kind.LENGTH);
    }

    /**
     * Returns where the energy has gone.
     *
     * @return the account
     */
    public MotionAccount energy() {
      return new MotionAccount(record, legs - 1);
    }

    /**
     * Returns the catch at evenly spaced times.
     *
     * @return the samples; none if no sampling was asked for
     */
    public CatchHistory history() {
      return new CatchHistory(record.samples());
    }

    /**
     * Returns what to read with care.
     *
     * @return the cautions
     */
    public List<Caution> cautions() {
      return cautions;
    }

    @Override
    public String toString() {
      return (ropeStillRuns() ? "rope still runs, so far with " : "caught with ")
          + QuantityText.print(loadLeg().overall(), Kind.FORCE);
    }
  }
}
