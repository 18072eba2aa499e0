package org.boleline.drop;

import java.util.List;
import javax.measure.Quantity;
import javax.measure.quantity.Angle;
import javax.measure.quantity.Energy;
import javax.measure.quantity.Force;
import javax.measure.quantity.Length;
import javax.measure.quantity.Speed;
import javax.measure.quantity.Time;
import org.boleline.explain.Step;
import org.boleline.geometry.Vector;
import org.boleline.units.Kind;
import org.boleline.units.QuantityText;
import org.boleline.units.Si;

/**
 * The moment at which a slack rope comes taut with the piece moving along it.
 *
 * <p>The rope of a {@link Swing} cannot stretch, so how hard this catch pulls is not known here. It
 * is the catch of a fall of {@link #fallHeight} on a stretching rope.
 *
 * <p>Immutable and thread-safe; equality is exact, on the steps' numbers.
 */
public final class SwingCatch {
  private final double angle;
  private final Vector<Length> position;
  private final Step flight;
  private final Step radial;
  private final Step tangential;
  private final Step height;
  private final Step energy;
  private final Step tension;

  SwingCatch(
      double angle,
      Vector<Length> position,
      Step flight,
      Step radial,
      Step tangential,
      Step height,
      Step energy,
      Step tension) {
    this.angle = angle;
    this.position = position;
    this.flight = flight;
    this.radial = radial;
    this.tangential = tangential;
    this.height = height;
    this.energy = energy;
    this.tension = tension;
  }

  /**
   * Returns how long the piece flew before.
   *
   * @return the time since the release or since the rope went slack, in seconds, zero or more
   */
  public Quantity<Time> flightTime() {
    return Si.of(flight.result(), Kind.TIME);
  }

  /**
   * Returns the angle of the rope from plumb.
   *
   * @return the angle in radians, positive on the side of the release
   */
  public Quantity<Angle> angle() {
    return Si.of(angle, Kind.ANGLE);
  }

  /**
   * Returns where the centre of gravity is.
   *
   * @return its position, in metres
   */
  public Vector<Length> position() {
    return position;
  }

  /**
   * Returns the speed along the rope, which the rope ends.
   *
   * @return the speed in metres per second, zero or more but for rounding
   */
  public Quantity<Speed> radialSpeed() {
    return Si.of(radial.result(), Kind.SPEED);
  }

  /**
   * Returns the speed square to the rope, with which the swing goes on.
   *
   * @return the speed in metres per second, positive toward larger angles
   */
  public Quantity<Speed> tangentialSpeed() {
    return Si.of(tangential.result(), Kind.SPEED);
  }

  /**
   * Returns the fall from rest that ends with the same speed along the rope.
   *
   * @return the height in metres, zero or more
   */
  public Quantity<Length> fallHeight() {
    return Si.of(height.result(), Kind.LENGTH);
  }

  /**
   * Returns the energy of the speed along the rope, which the catch has to take up.
   *
   * @return the energy in joules, zero or more
   */
  public Quantity<Energy> energy() {
    return Si.of(energy.result(), Kind.ENERGY);
  }

  /**
   * Returns the tension just after the catch, from the swing alone.
   *
   * @return the tension in newtons; zero if the rope goes slack again at once
   */
  public Quantity<Force> tensionAfter() {
    return Si.of(Math.max(0, tension.result()), Kind.FORCE);
  }

  /**
   * Returns the steps that gave the numbers: flight time, speed along and square to the rope, fall,
   * energy, tension after.
   *
   * @return six steps
   */
  public List<Step> steps() {
    return List.of(flight, radial, tangential, height, energy, tension);
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof SwingCatch c
        && Double.compare(angle, c.angle) == 0
        && position.equals(c.position)
        && Double.compare(flight.result(), c.flight.result()) == 0
        && Double.compare(radial.result(), c.radial.result()) == 0
        && Double.compare(tangential.result(), c.tangential.result()) == 0
        && Double.compare(height.result(), c.height.result()) == 0
        && Double.compare(energy.result(), c.energy.result()) == 0
        && Double.compare(tension.result(), c.tension.result()) == 0;
  }

  @Override
  public int hashCode() {
    return 31 * (31 * Double.hashCode(angle) + position.hashCode())
        + Double.hashCode(radial.result());
  }

  @Override
  public String toString() {
    return "rope taut at "
        + QuantityText.print(angle(), Kind.ANGLE)
        + " with "
        + QuantityText.print(radialSpeed(), Kind.SPEED)
        + " along it, like a fall of "
        + QuantityText.print(fallHeight(), Kind.LENGTH);
  }
}
