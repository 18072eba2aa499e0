package org.boleline.internal.drop;

import java.util.ArrayList;
import java.util.List;

/**
 * When a swinging piece is where: the phases of a {@link SwingMotion} at even times.
 *
 * <p>Flights in closed form; a taut swing by steps of Runge and Kutta's fourth order on a'' = -(g /
 * L) sin a. The phases themselves, and where a rope slackens, come from the energy.
 */
public final class SwingTimes {
  /**
   * Steps in the time of a small swing through one radian: the error is below 1e-9 of the angle.
   */
  private static final int STEPS = 400;

  private static final int HALVINGS = 60;

  /**
   * A moment of the motion.
   *
   * @param time time since the release
   * @param x level place, from the point
   * @param z height over the point, negative below it
   * @param angle angle from plumb on the circle, or of the line to the piece in a flight
   * @param speed speed along the circle where the rope is taut, positive toward larger angles
   * @param taut whether the rope pulls
   */
  public record Moment(double time, double x, double z, double angle, double speed, boolean taut) {}

  private final double len;
  private final double g;
  private final double step;

  private SwingTimes(double len, double g) {
    this.len = len;
    this.g = g;
    this.step = Math.sqrt(len / g) / STEPS;
  }

  /**
   * Returns the motion at even times from the release on.
   *
   * @param phases the phases, as far as they were followed
   * @param len length of the rope
   * @param g gravity
   * @param every time between moments
   * @param until the last time
   * @return the moments; fewer where the phases end before
   */
  public static List<Moment> along(
      List<SwingMotion.Phase> phases, double len, double g, double every, double until) {
    SwingTimes times = new SwingTimes(len, g);
    List<Moment> found = new ArrayList<>();
    double start = 0;
    for (SwingMotion.Phase phase : phases) {
      start =
          phase instanceof SwingMotion.Flight flight
              ? times.fly(flight, start, every, until, found)
              : times.swing((SwingMotion.Taut) phase, start, every, until, found);
      if (start > until) {
        break;
      }
    }
    return found;
  }

  private static boolean isDue(List<Moment> found, double every, double end, double until) {
    return found.size() * every < end && found.size() * every <= until * (1 + 1e-12);
  }

  private double fly(
      SwingMotion.Flight flight, double start, double every, double until, List<Moment> found) {
    double end = start + flight.time();
    while (isDue(found, every, end, until)) {
      double time = found.size() * every;
      double t = time - start;
      double x = flight.x() + flight.u() * t;
      double z = flight.z() + flight.w() * t - g * t * t / 2;
      found.add(new Moment(time, x, z, Math.atan2(x, -z), 0, false));
    }
    return end;
  }

  private double swing(
      SwingMotion.Taut taut, double start, double every, double until, List<Moment> found) {
    double end = start;
    double[] state = {taut.angle(), taut.speed() / len};
    boolean slackens = taut.end() == SwingMotion.End.SLACK;
    double limit = taut.speed() > 0 ? taut.high() : taut.low();
    while (end <= until * (1 + 1e-12)) {
      double time = found.size() * every;
      double next = Math.min(step, Math.max(0, time - end));
      boolean due = next < step;
      double[] moved = stepped(state, next);
      if (slackens && (moved[0] - limit) * Math.signum(limit - taut.angle()) >= 0) {
        return end + until(state, limit, next);
      }
      state = moved;
      end += next;
      if (due) {
        found.add(
            new Moment(
                time,
                len * Math.sin(state[0]),
                -len * Math.cos(state[0]),
                state[0],
                len * state[1],
                true));
        if (time + every > until * (1 + 1e-12)) {
          return Double.POSITIVE_INFINITY;
        }
      }
    }
    return end;
  }

  /** How much of a step brings the angle to a limit. */
  private double until(double[] state, double limit, double most) {
    double low = 0;
    double high = most;
    boolean below = state[0] < limit;
    for (int i = 0; i < HALVINGS; i++) {
      double middle = (low + high) / 2;
      if (stepped(state, middle)[0] < limit == below) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return high;
  }

  private double[] stepped(double[] y, double h) {
    double[] a = slope(y[0], y[1]);
    double[] b = slope(y[0] + h / 2 * a[0], y[1] + h / 2 * a[1]);
    double[] c = slope(y[0] + h / 2 * b[0], y[1] + h / 2 * b[1]);
    double[] d = slope(y[0] + h * c[0], y[1] + h * c[1]);
    return new double[] {
      y[0] + h / 6 * (a[0] + 2 * b[0] + 2 * c[0] + d[0]),
      y[1] + h / 6 * (a[1] + 2 * b[1] + 2 * c[1] + d[1])
    };
  }

  private double[] slope(double angle, double rate) {
    return new double[] {rate, -g / len * Math.sin(angle)};
  }
}
