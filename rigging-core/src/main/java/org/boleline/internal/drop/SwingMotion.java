package org.boleline.internal.drop;

import java.util.ArrayList;
import java.util.List;

/**
 * The motion of a point mass on a rope that cannot stretch, from its release: flights with a slack
 * rope and swings with a taut one.
 *
 * <p>Where the rope comes taut, the speed along it is lost at once and the speed square to it is
 * kept. Symbols as in {@link SwingKernel}; places are from the point that holds the rope.
 */
public final class SwingMotion {
  /** What counts as no tension (over the weight), or no height over the point (over the length). */
  private static final double ROUNDING = 1e-12;

  /** A part of the motion. */
  public sealed interface Phase {}

  /**
   * A flight with a slack rope, until the rope comes taut.
   *
   * @param x level place at the start
   * @param z height over the point at the start
   * @param u level speed at the start
   * @param w upward speed at the start
   * @param time how long it lasts; zero where the piece is thrown against a rope that is taut
   * @param angle angle from plumb where the rope comes taut
   */
  public record Flight(double x, double z, double u, double w, double time, double angle)
      implements Phase {}

  /** How a swing ends. */
  public enum End {
    /** It swings to and fro, the rope always taut. */
    TURNS,
    /** It goes round and round, the rope always taut. */
    CIRCLES,
    /** The rope loses its tension on the way up. */
    SLACK
  }

  /**
   * A swing with a taut rope.
   *
   * @param angle angle at its start
   * @param speed speed at its start, positive toward larger angles
   * @param low least angle it comes to
   * @param high greatest angle it comes to
   * @param end how it ends
   */
  public record Taut(double angle, double speed, double low, double high, End end)
      implements Phase {}

  private final double len;
  private final double g;

  private SwingMotion(double len, double g) {
    this.len = len;
    this.g = g;
  }

  /**
   * Follows the motion until the rope stays taut, or through a number of phases.
   *
   * @param angle angle of the release, zero to half a turn
   * @param slack length of the rope less the distance of the piece from the point
   * @param u level speed at the release
   * @param w upward speed at the release
   * @param len length of the rope
   * @param g gravity
   * @param most greatest number of phases
   * @return the phases; the motion was followed to its end if the last one is a swing that does not
   *     end slack
   */
  public static List<Phase> follow(
      double angle, double slack, double u, double w, double len, double g, int most) {
    SwingMotion motion = new SwingMotion(len, g);
    List<Phase> phases = new ArrayList<>();
    double radial = SwingKernel.radialSpeed(u, w, angle);
    Phase next =
        slack == 0 && Math.abs(radial) <= ROUNDING * Math.hypot(u, w)
            ? motion.onTheCircle(angle, SwingKernel.tangentialSpeed(u, w, angle))
            : motion.flight((len - slack) * Math.sin(angle), (slack - len) * Math.cos(angle), u, w);
    phases.add(next);
    while (phases.size() < most && !(next instanceof Taut taut && taut.end() != End.SLACK)) {
      next = motion.after(next);
      phases.add(next);
    }
    return List.copyOf(phases);
  }

  private Phase after(Phase phase) {
    if (phase instanceof Flight flight) {
      double w = flight.w() - g * flight.time();
      return onTheCircle(
          flight.angle(), SwingKernel.tangentialSpeed(flight.u(), w, flight.angle()));
    }
    Taut taut = (Taut) phase;
    double angle = taut.speed() > 0 ? taut.high() : taut.low();
    double speed =
        Math.copySign(SwingKernel.speed(taut.speed(), g, len, taut.angle(), angle), taut.speed());
    return flightAlong(angle, speed);
  }

  /** What follows on the circle with a speed along it. */
  private Phase onTheCircle(double angle, double speed) {
    boolean pulls = speed * speed / (g * len) + Math.cos(angle) >= -ROUNDING;
    return pulls ? taut(angle, speed) : flightAlong(angle, speed);
  }

  private Flight flightAlong(double angle, double speed) {
    return flight(
        len * Math.sin(angle),
        -len * Math.cos(angle),
        speed * Math.cos(angle),
        speed * Math.sin(angle));
  }

  private Flight flight(double x, double z, double u, double w) {
    double time = SwingKernel.flightTime(x, z, u, w, len, g);
    double angle = Math.atan2(x + u * time, -(z + w * time - g * time * time / 2));
    return new Flight(x, z, u, w, time, angle);
  }

  private Taut taut(double angle, double speed) {
    // Energy over the point, as a height over the length of the rope.
    double energy = speed * speed / (2 * g * len) - Math.cos(angle);
    if (energy <= ROUNDING) {
      double turn = SwingKernel.turningAngle(speed, g, len, angle);
      return new Taut(angle, speed, -turn, turn, End.TURNS);
    }
    if (energy >= 1.5) {
      return new Taut(angle, speed, -Math.PI, Math.PI, End.CIRCLES);
    }
    double end = Math.copySign(SwingKernel.slackAngle(speed, g, len, angle), speed);
    return new Taut(angle, speed, Math.min(angle, end), Math.max(angle, end), End.SLACK);
  }
}
