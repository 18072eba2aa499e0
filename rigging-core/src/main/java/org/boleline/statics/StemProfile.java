package org.boleline.statics;

import javax.measure.quantity.Force;
import javax.measure.quantity.Length;
import javax.measure.quantity.Pressure;
import org.boleline.units.Kind;
import org.boleline.units.Moment;

/**
 * Shape and internal forces along a stem, at many stations from its base to its tip.
 *
 * <p>Bulk data: every method takes the kind whose SI unit the numbers are in, and returns a fresh
 * array. At a station where a contact pulls, the values are those just below it.
 *
 * <p>Immutable and thread-safe.
 */
public final class StemProfile {
  private final double[] stations;
  private final double[][] unloaded;
  private final double[][] positions;
  private final double[][] directions;
  private final double[][] forces;
  private final double[][] moments;
  private final double[] bendingStress;
  private final double[] axialStress;

  StemProfile(
      double[] stations,
      double[][] unloaded,
      double[][] positions,
      double[][] directions,
      double[][] forces,
      double[][] moments,
      double[] bendingStress,
      double[] axialStress) {
    this.stations = stations;
    this.unloaded = unloaded;
    this.positions = positions;
    this.directions = directions;
    this.forces = forces;
    this.moments = moments;
    this.bendingStress = bendingStress;
    this.axialStress = axialStress;
  }

  /**
   * Returns the number of stations.
   *
   * @return the count
   */
  public int count() {
    return stations.length;
  }

  /**
   * Returns the stations.
   *
   * @param kind {@link Kind#LENGTH}: metres
   * @return the stations, rising from zero to the length
   */
  public double[] stations(Kind<Length> kind) {
    return stations.clone();
  }

  /**
   * Returns where the axis is under own weight alone.
   *
   * @param kind {@link Kind#LENGTH}: metres
   * @return x, y and z for each station
   */
  public double[][] unloadedPositions(Kind<Length> kind) {
    return copy(unloaded);
  }

  /**
   * Returns where the axis is, loaded.
   *
   * @param kind {@link Kind#LENGTH}: metres
   * @return x, y and z for each station
   */
  public double[][] positions(Kind<Length> kind) {
    return copy(positions);
  }

  /**
   * Returns the direction of the loaded axis.
   *
   * @return a unit vector, toward the tip, for each station
   */
  public double[][] directions() {
    return copy(directions);
  }

  /**
   * Returns the force of the part above on the part below.
   *
   * @param kind {@link Kind#FORCE}: newtons
   * @return x, y and z for each station
   */
  public double[][] forces(Kind<Force> kind) {
    return copy(forces);
  }

  /**
   * Returns the moment of the part above on the part below, about the axis point.
   *
   * @param kind {@link Kind#MOMENT}: newton metres
   * @return x, y and z for each station
   */
  public double[][] moments(Kind<Moment> kind) {
    return copy(moments);
  }

  /**
   * Returns the bending stress of the outermost fibre.
   *
   * @param kind {@link Kind#PRESSURE}: pascals
   * @return the stress, zero or more, for each station
   */
  public double[] bendingStress(Kind<Pressure> kind) {
    return bendingStress.clone();
  }

  /**
   * Returns the axial stress.
   *
   * @param kind {@link Kind#PRESSURE}: pascals
   * @return the stress, tension positive, for each station
   */
  public double[] axialStress(Kind<Pressure> kind) {
    return axialStress.clone();
  }

  private static double[][] copy(double[][] rows) {
    double[][] out = new double[rows.length][];
    for (int i = 0; i < rows.length; i++) {
      out[i] = rows[i].clone();
    }
    return out;
  }
}
