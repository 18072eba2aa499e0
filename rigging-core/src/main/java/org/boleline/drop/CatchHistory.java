package org.boleline.drop;

import java.util.List;
import java.util.function.ToDoubleFunction;
import javax.measure.quantity.Angle;
import javax.measure.quantity.Force;
import javax.measure.quantity.Length;
import javax.measure.quantity.Pressure;
import javax.measure.quantity.Time;
import org.boleline.internal.motion.MotionRecord;
import org.boleline.units.Kind;
import org.boleline.units.Moment;

/**
 * A catch at evenly spaced times, for plots and moving pictures; all in SI.
 *
 * <p>Immutable and thread-safe; every call gives arrays of its own.
 */
public final class CatchHistory {
  private final List<MotionRecord.Sample> samples;

  CatchHistory(List<MotionRecord.Sample> samples) {
    this.samples = List.copyOf(samples);
  }

  /**
   * Returns how many samples there are.
   *
   * @return the count; zero if no sampling was asked for
   */
  public int count() {
    return samples.size();
  }

  private double[] each(ToDoubleFunction<MotionRecord.Sample> reading) {
    return samples.stream().mapToDouble(reading).toArray();
  }

  private double[][] vectors(int from, VectorReading reading) {
    double[][] out = new double[samples.size()][];
    for (int i = 0; i < out.length; i++) {
      double[] v = reading.of(samples.get(i));
      out[i] = new double[] {v[from], v[from + 1], v[from + 2]};
    }
    return out;
  }

  private interface VectorReading {
    double[] of(MotionRecord.Sample sample);
  }

  /**
   * Returns the times.
   *
   * @param kind says that they are in seconds
   * @return the times since the start
   */
  public double[] times(Kind<Time> kind) {
    return each(MotionRecord.Sample::time);
  }

  /**
   * Returns the tension of a leg.
   *
   * @param leg number of the leg, 0 is the load leg
   * @param kind says that it is in newtons
   * @return the tension at every time
   * @throws ArrayIndexOutOfBoundsException if there is no such leg
   */
  public double[] tensions(int leg, Kind<Force> kind) {
    return each(sample -> sample.tension()[leg]);
  }

  /**
   * Returns the force of the rope on a point.
   *
   * @param point number of the point, 0 is the first from the piece, the last is the end
   * @param kind says that it is in newtons
   * @return x, y and z at every time
   * @throws ArrayIndexOutOfBoundsException if there is no such point
   */
  public double[][] forces(int point, Kind<Force> kind) {
    return vectors(3 * point, MotionRecord.Sample::pull);
  }

  /**
   * Returns where a point is.
   *
   * @param point number of the point, 0 is the first from the piece, the last is the end
   * @param kind says that it is in metres
   * @return x, y and z at every time
   * @throws ArrayIndexOutOfBoundsException if there is no such point
   */
  public double[][] places(int point, Kind<Length> kind) {
    return vectors(3 * point, MotionRecord.Sample::place);
  }

  /**
   * Returns where the centre of gravity of the piece is.
   *
   * @param kind says that it is in metres
   * @return x, y and z at every time
   */
  public double[][] piece(Kind<Length> kind) {
    return vectors(0, MotionRecord.Sample::position);
  }

  /**
   * Returns the angle of the piece's axis from plumb.
   *
   * @param kind says that it is in radians
   * @return the angle at every time, from 0 (top up) to pi
   */
  public double[] lean(Kind<Angle> kind) {
    return each(
        sample -> {
          double[] q = sample.attitude();
          double size = q[0] * q[0] + q[1] * q[1] + q[2] * q[2] + q[3] * q[3];
          double up = 1 - 2 * (q[1] * q[1] + q[2] * q[2]) / size;
          return Math.acos(Math.max(-1, Math.min(1, up)));
        });
  }

  /**
   * Returns the rope that has run through the device.
   *
   * @param kind says that it is in metres
   * @return its length at every time
   */
  public double[] runs(Kind<Length> kind) {
    return each(MotionRecord.Sample::run);
  }

  /**
   * Returns the moment that all above the base of a stem exerts on it, own weight included.
   *
   * @param stem number of the stem in the plan
   * @param kind says that it is in newton metres
   * @return x, y and z at every time
   * @throws ArrayIndexOutOfBoundsException if there is no such stem
   */
  public double[][] baseMoments(int stem, Kind<Moment> kind) {
    return vectors(3 * stem, MotionRecord.Sample::baseMoment);
  }

  /**
   * Returns the greatest fibre stress of a stem, |N| / A + M / Z, at the stations where something
   * changes and between them.
   *
   * @param stem number of the stem in the plan
   * @param kind says that it is in pascals
   * @return the stress at every time
   * @throws ArrayIndexOutOfBoundsException if there is no such stem
   */
  public double[] stresses(int stem, Kind<Pressure> kind) {
    return each(sample -> sample.stress()[stem]);
  }

  /**
   * Returns where the stress of {@link #stresses} is.
   *
   * @param stem number of the stem in the plan
   * @param kind says that it is in metres
   * @return the station at every time
   * @throws ArrayIndexOutOfBoundsException if there is no such stem
   */
  public double[] stressStations(int stem, Kind<Length> kind) {
    return each(sample -> sample.stressAt()[stem]);
  }
}
