package org.boleline.drop;

import java.util.List;
import javax.measure.quantity.Force;
import javax.measure.quantity.Length;
import javax.measure.quantity.Time;
import org.boleline.geometry.Vector;
import org.boleline.internal.drop.SwingTimes;
import org.boleline.units.Kind;

/**
 * A swing at evenly spaced times, for plots and moving pictures; all in SI.
 *
 * <p>Immutable and thread-safe; every call gives arrays of its own.
 */
public final class SwingHistory {
  private final Vector<Length> point;
  private final double azimuth;
  private final double mass;
  private final double length;
  private final double gravity;
  private final List<SwingTimes.Moment> moments;

  SwingHistory(
      Vector<Length> point,
      double azimuth,
      double mass,
      double length,
      double gravity,
      List<SwingTimes.Moment> moments) {
    this.point = point;
    this.azimuth = azimuth;
    this.mass = mass;
    this.length = length;
    this.gravity = gravity;
    this.moments = List.copyOf(moments);
  }

  /**
   * Returns how many samples there are.
   *
   * @return the count
   */
  public int count() {
    return moments.size();
  }

  /**
   * Returns the point that holds the rope.
   *
   * @return its position in metres
   */
  public Vector<Length> point() {
    return point;
  }

  /**
   * Returns the times.
   *
   * @param kind says that they are in seconds
   * @return the times since the release
   */
  public double[] times(Kind<Time> kind) {
    return moments.stream().mapToDouble(SwingTimes.Moment::time).toArray();
  }

  /**
   * Returns where the centre of gravity of the piece is.
   *
   * @param kind says that it is in metres
   * @return x, y and z at every time
   */
  public double[][] piece(Kind<Length> kind) {
    double[] from = point.in(Kind.LENGTH);
    double[][] out = new double[moments.size()][];
    for (int i = 0; i < out.length; i++) {
      double level = moments.get(i).x();
      out[i] =
          new double[] {
            from[0] + level * Math.cos(azimuth),
            from[1] + level * Math.sin(azimuth),
            from[2] + moments.get(i).z()
          };
    }
    return out;
  }

  /**
   * Returns the tension of the rope.
   *
   * @equation T = m * (v^2 / L + g * cos(a)) (SWI-5, docs/theory/swing.md)
   * @param kind says that it is in newtons
   * @return the tension at every time; zero in a flight. The pull in the moment when a slack rope
   *     comes taut is left out
   */
  public double[] tensions(Kind<Force> kind) {
    return moments.stream()
        .mapToDouble(
            m ->
                m.taut()
                    ? Math.max(
                        0,
                        SwingFormulas.TENSION_AT.value(mass, m.speed(), length, gravity, m.angle()))
                    : 0)
        .toArray();
  }
}
