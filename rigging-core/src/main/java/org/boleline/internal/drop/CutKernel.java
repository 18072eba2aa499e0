package org.boleline.internal.drop;

/**
 * Where a piece cut above the point that holds it comes to hang.
 *
 * <p>Symbols: i lean of the stem; along the stem from the cut: b down to the attachment of the
 * point, t up to the tie, c up to the balance point, n length of the piece; o offset of the
 * attachment toward the underside; s sling; e slack; y plumb depth of the point below the cut.
 */
public final class CutKernel {
  private CutKernel() {}

  /**
   * Returns the plumb depth of the point below the cut.
   *
   * @param b attachment below the cut, along the stem
   * @param o offset toward the underside
   * @param s length of the sling
   * @param i lean
   * @return b cos i + o sin i + s
   */
  public static double pointDepth(double b, double o, double s, double i) {
    return b * Math.cos(i) + o * Math.sin(i) + s;
  }

  /**
   * Returns the level distance from the point to the tie, toward the lean.
   *
   * @param t tie above the cut, along the stem
   * @param b attachment below the cut, along the stem
   * @param o offset toward the underside
   * @param i lean
   * @return (t + b) sin i - o cos i
   */
  public static double levelDistance(double t, double b, double o, double i) {
    return (t + b) * Math.sin(i) - o * Math.cos(i);
  }

  /**
   * Returns the straight distance from the point to the tie before the cut.
   *
   * @param t tie above the cut, along the stem
   * @param i lean
   * @param y depth of the point
   * @param x level distance from the point to the tie
   * @return the distance
   */
  public static double straightDistance(double t, double i, double y, double x) {
    return Math.hypot(t * Math.cos(i) + y, x);
  }

  /**
   * Returns how far the tie falls until the rope is taut.
   *
   * @param t tie above the cut, along the stem
   * @param i lean
   * @param y depth of the point
   * @param leg rope from the point to the tie
   * @return t cos i + y + leg
   */
  public static double tieFall(double t, double i, double y, double leg) {
    return t * Math.cos(i) + y + leg;
  }

  /**
   * Returns how far the balance point falls until the rope is taut and the piece hangs plumb.
   *
   * @param c balance point above the cut, along the stem
   * @param t tie above the cut, along the stem
   * @param i lean
   * @param y depth of the point
   * @param leg rope from the point to the tie
   * @return c cos i + y + leg + |c - t|
   */
  public static double balanceFall(double c, double t, double i, double y, double leg) {
    return c * Math.cos(i) + y + leg + Math.abs(c - t);
  }

  /**
   * Returns how far the piece reaches below the tie when it hangs.
   *
   * @param n length of the piece
   * @param t tie above the cut
   * @param c balance point above the cut
   * @return n - t if it has turned over, t if not, the greater of both if it balances at the tie
   */
  public static double reachBelowTie(double n, double t, double c) {
    if (t == c) {
      return Math.max(t, n - t);
    }
    return t < c ? n - t : t;
  }
}
