package org.boleline.internal.coupled;

import org.boleline.internal.path.RopePath;
import org.boleline.internal.rod.Rod;

/**
 * One arrangement, ready for the solver: stems cut into cells, and what the rope hangs on.
 *
 * @param rods the stems
 * @param standing whether the given shapes of the stems already bend under own weight
 * @param contactRod stem of each contact; one entry more for a lowering device on a stem
 * @param contactNode node of each contact on its stem; one entry more for the device
 * @param contactArm rigid arm of each contact from the axis, in the given shape
 * @param path the rope
 * @param load tension of the load leg at full load, N
 */
@SuppressWarnings("ArrayRecordComponent") // kernel data, never compared
public record Rig(
    Rod[] rods,
    boolean[] standing,
    int[] contactRod,
    int[] contactNode,
    double[][] contactArm,
    RopePath path,
    double load) {

  /** Stem of a contact. */
  public int contactStem(int contact) {
    return contactRod[contact];
  }

  /** Station of a contact, m. */
  public double contactAt(int contact) {
    return rods[contactRod[contact]].nodeAt(contactNode[contact]);
  }

  /** Number of unknowns of the curvature vector. */
  int unknowns() {
    int n = 0;
    for (Rod rod : rods) {
      n += rod.unknowns();
    }
    return n;
  }
}
