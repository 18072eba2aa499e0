package org.boleline.internal.path;

import org.boleline.internal.friction.FrictionKernel;

/**
 * The rope from the load through its contacts to its end, for given attachments.
 *
 * <p>All tensions and forces are relative to the tension of the load leg. A contact may sit on a
 * sling, which can only pull: the contact lies in a ball around its attachment, and bears only if
 * the straight rope would leave that ball. Unknowns of a bearing contact: its place c, the sling's
 * pull for each length of sling, and the tension behind it. For equal tensions the problem is the
 * minimum of a convex function (the rope's length less the load's height), so the set of bearing
 * contacts is unique there; with friction it is solved the same way.
 *
 * <p>Legs are straight. A leg whose weight counts is taut enough to hang as a parabola: at each end
 * half its weight adds to the tension along its chord. Friction then acts between the tensions at
 * the ends; what that changes is brought up to date around Newton's method.
 *
 * <p>Not thread-safe: a solver's scratch pad.
 */
public final class RopePath {
  /** How the rope ends behind the last contact. */
  public enum End {
    /** At a point that does not move with a stem. */
    POINT,
    /** Pulled straight down. */
    DOWN,
    /** At a lowering device that moves with a stem. */
    DEVICE
  }

  private static final int BLOCK = 5;
  private static final double TOGETHER = 5e-3;
  private static final double CONVERGED = 1e-12;

  private static final double ROUNDING = 1e-15;
  private static final int WEIGHINGS = 60;
  private static final double WEIGHED = 1e-13;

  /** Movements up to this size, in metres, are followed in linear response. */
  private static final double LITTLE = 0.05;

  private final int contacts;
  private final int[] law;
  private final double[] parameter;
  private final double[] sling;
  private final double[] ropeWeight;
  private final boolean raising;
  private final double[] loadDirection;
  private final End end;

  private final double[] attachment;
  private final boolean[] bears;
  private final double[] place;
  private final double[] force;
  private final double[] tension;
  private final double[] turn;
  private final double[] forceChange;
  private final double[] pull;
  private final double[] half;
  private final double[] correction;
  private final double[] tensionIn;
  private final double[] tensionOut;
  private final int[] chain;
  private int bearing;
  private final double[] in;
  private final double[] out;
  private final double[] perIn;
  private final double[] perOut;
  private final double[] ratio;
  private final double[] slope;
  private final double[] turnIn;
  private final double[] turnOut;
  private final double[] residual;
  private final double[] step;
  private final BandedLu lu = new BandedLu(2 * BLOCK - 1);
  private final double[] lastAttachment;
  private final double[] shift;
  private final double[] nearest = new double[3];
  private boolean anySling;
  private boolean anyWeight;
  private boolean started;

  /** Whether the matrix at the last solution stands factored. */
  private boolean factored;

  private int together = -1;
  private int conflict = -1;
  private int tooHeavy = -1;

  /**
   * Makes a path.
   *
   * @param law friction law of each contact, as in {@link FrictionKernel}
   * @param parameter its parameter
   * @param sling sling length of each contact, m; zero if it sits at its attachment
   * @param ropeWeight weight of each length of the leg behind each contact, over the load's
   *     tension, 1/m; zero where it does not count
   * @param raising true if tension rises toward the tail
   * @param loadDirection unit vector from the first contact toward the load
   * @param end how the rope ends
   */
  public RopePath(
      int[] law,
      double[] parameter,
      double[] sling,
      double[] ropeWeight,
      boolean raising,
      double[] loadDirection,
      End end) {
    contacts = law.length;
    this.law = law.clone();
    this.parameter = parameter.clone();
    this.sling = sling.clone();
    this.ropeWeight = ropeWeight.clone();
    this.raising = raising;
    this.loadDirection = loadDirection.clone();
    this.end = end;
    attachment = new double[3 * contacts + 3];
    bears = new boolean[contacts];
    lastAttachment = new double[3 * contacts + 3];
    shift = new double[3 * contacts + 3];
    place = new double[3 * contacts];
    force = new double[3 * contacts + 3];
    forceChange = new double[3 * contacts + 3];
    tension = new double[contacts];
    turn = new double[contacts];
    pull = new double[contacts];
    half = new double[contacts];
    correction = new double[contacts];
    java.util.Arrays.fill(correction, 1);
    tensionIn = new double[contacts];
    tensionOut = new double[contacts];
    for (double weight : ropeWeight) {
      anyWeight |= weight > 0;
    }
    chain = new int[contacts];
    in = new double[3 * contacts];
    out = new double[3 * contacts];
    perIn = new double[contacts];
    perOut = new double[contacts];
    ratio = new double[contacts];
    slope = new double[contacts];
    turnIn = new double[3 * contacts];
    turnOut = new double[3 * contacts];
    residual = new double[BLOCK * contacts];
    step = new double[BLOCK * contacts];
  }

  /** Places of the attachments, and of the rope's end behind them; the caller writes into it. */
  public double[] attachment() {
    return attachment;
  }

  /** Whether each contact bears; the live array. */
  public boolean[] bears() {
    return bears;
  }

  /** Places of the contacts; of those that do not bear, the last place they had; the live array. */
  public double[] place() {
    return place;
  }

  /** Force of the rope on each attachment; the last entry is that on the device; the live array. */
  public double[] force() {
    return force;
  }

  /** Tension along the chord of the leg behind each contact; the live array. */
  public double[] tension() {
    return tension;
  }

  /** Tension just before each contact; the live array. */
  public double[] tensionIn() {
    return tensionIn;
  }

  /** Tension just behind each contact; the live array. */
  public double[] tensionOut() {
    return tensionOut;
  }

  /** Half the weight of the leg behind a contact. */
  public double halfWeight(int contact) {
    return bears[contact] ? half[contact] : 0;
  }

  /** Turn at each contact; the live array. */
  public double[] turn() {
    return turn;
  }

  /** Change of the forces, from {@link #change}; the live array. */
  public double[] forceChange() {
    return forceChange;
  }

  /** Number of contacts. */
  public int contacts() {
    return contacts;
  }

  /** How the rope ends. */
  public End end() {
    return end;
  }

  /** Tension at the tail, relative to that of the load leg. */
  public double tailTension() {
    if (bearing == 0) {
      return 1;
    }
    int last = chain[bearing - 1];
    double h = half[last];
    double along = tension[last];
    if (h == 0) {
      return along;
    }
    return Math.sqrt(along * along + 2 * h * along * out[3 * bearing - 1] + h * h);
  }

  /**
   * The contact that comes to lie at the one before it, if that is why no path was found: their
   * slings let the rope pull them together. The number of contacts stands for the rope's end. Minus
   * one otherwise.
   */
  public int together() {
    return together;
  }

  /**
   * Lets go of one contact that bears although the straight rope would pass within its sling's
   * reach. Friction can keep such a point bearing: the rope drags its sling along. It is taken as
   * slack.
   *
   * @param first the first contact to look at
   * @return the contact, a solve has to follow; minus one if there is none
   */
  public int letGo(int first) {
    double[] start = new double[3];
    double[] direction = new double[3];
    for (int i = 0; i < bearing; i++) {
      int j = chain[i];
      boolean last = i == bearing - 1;
      if (j < first || sling[j] == 0 || (i == 0 && last)) {
        continue;
      }
      double[] next = last ? attachment : place;
      int n = last ? 3 * contacts : 3 * chain[i + 1];
      boolean endless = i == 0 || (last && end == End.DOWN);
      double size = 0;
      for (int d = 0; d < 3; d++) {
        start[d] = i == 0 ? next[n + d] : place[3 * chain[i - 1] + d];
        double down = d == 2 ? -1 : 0;
        direction[d] = i == 0 ? loadDirection[d] : endless ? down : next[n + d] - start[d];
        size += direction[d] * direction[d];
      }
      size = Math.sqrt(size);
      double to = endless ? Double.POSITIVE_INFINITY : size;
      double along = 0;
      for (int d = 0; d < 3; d++) {
        direction[d] /= size;
        along += (attachment[3 * j + d] - start[d]) * direction[d];
      }
      double at = Math.max(0, Math.min(to, along));
      double gap2 = 0;
      for (int d = 0; d < 3; d++) {
        double gap = start[d] + at * direction[d] - attachment[3 * j + d];
        gap2 += gap * gap;
      }
      if (gap2 <= sling[j] * sling[j]) {
        bears[j] = false;
        link();
        factored = false;
        return j;
      }
    }
    return -1;
  }

  /** A contact that, in the last solve, the rope would have had to come back for; or minus one. */
  public int conflict() {
    return conflict;
  }

  /** The contact behind which a leg weighs more than its tension holds up; or minus one. */
  public int tooHeavy() {
    return tooHeavy;
  }

  /** Where a solve starts from. */
  @SuppressWarnings("ArrayRecordComponent") // kernel data, never compared
  public record Start(
      boolean[] bears,
      double[] place,
      double[] tension,
      double[] pull,
      double[] at,
      boolean known) {}

  /** The present solution, as a start to come back to. */
  public Start start() {
    return new Start(
        bears.clone(),
        place.clone(),
        tension.clone(),
        pull.clone(),
        lastAttachment.clone(),
        started);
  }

  /** Makes the next solve begin from an earlier solution. */
  public void startFrom(Start start) {
    System.arraycopy(start.bears(), 0, bears, 0, contacts);
    System.arraycopy(start.place(), 0, place, 0, place.length);
    System.arraycopy(start.tension(), 0, tension, 0, contacts);
    System.arraycopy(start.pull(), 0, pull, 0, contacts);
    System.arraycopy(start.at(), 0, lastAttachment, 0, lastAttachment.length);
    started = start.known();
    factored = false;
  }

  /**
   * Solves for the given attachments; the last solution is the start.
   *
   * @return false if no solution was found
   */
  public boolean solve() {
    together = -1;
    conflict = -1;
    tooHeavy = -1;
    started = search();
    factored = started;
    if (started) {
      tooHeavy = -1;
    }
    return started;
  }

  private boolean search() {
    if (!started) {
      for (int j = 0; j < contacts; j++) {
        bears[j] = j == 0 || sling[j] == 0;
      }
      link();
      for (int i = 0; i < bearing; i++) {
        guess(chain[i], attachment, 3 * chain[i]);
        tension[chain[i]] = 1;
      }
      firstGuess();
    } else {
      follow();
    }
    System.arraycopy(attachment, 0, lastAttachment, 0, attachment.length);
    boolean relaxed = false;
    int rounds = 40 + 6 * contacts;
    for (int round = 0; round < rounds; round++) {
      boolean found = balance();
      if (!relaxed && (!found || round == 8)) {
        relaxed = true;
        found = relax() && balance();
      }
      if (!found) {
        break;
      }
      if (!release(relaxed) && !engage(relaxed)) {
        finish();
        return apart();
      }
      link();
      if (bearing == 0 && end == End.DOWN) {
        // Something has to carry a rope whose ends are both pulled down.
        if (relaxed) {
          break;
        }
        relaxed = true;
        if (!relax()) {
          break;
        }
      }
    }
    if (together < 0) {
      relax();
      java.util.Arrays.fill(bears, true);
      link();
      apart();
    }
    return false;
  }

  /** Moves the last solution along with the attachments. */
  private void follow() {
    double most = 0;
    for (int d = 0; d < attachment.length; d++) {
      shift[d] = attachment[d] - lastAttachment[d];
      most = Math.max(most, Math.abs(shift[d]));
    }
    for (int d = 0; d < place.length; d++) {
      place[d] += shift[d];
    }
    if (factored && anySling && most < LITTLE) {
      respond(shift);
      for (int i = 0; i < bearing; i++) {
        int j = chain[i];
        for (int d = 0; d < 3; d++) {
          place[3 * j + d] += step[BLOCK * i + d] - shift[3 * j + d];
        }
      }
    }
    factored = false;
    link();
  }

  private void link() {
    bearing = 0;
    anySling = false;
    for (int j = 0; j < contacts; j++) {
      if (bears[j]) {
        chain[bearing++] = j;
        anySling |= sling[j] > 0;
      } else {
        pull[j] = 0;
      }
    }
  }

  /** A first place: at the end of the sling, toward a point. */
  private void guess(int j, double[] toward, int o) {
    double x = toward[o] - attachment[3 * j];
    double y = toward[o + 1] - attachment[3 * j + 1];
    double z = toward[o + 2] - attachment[3 * j + 2];
    double d = Math.sqrt(x * x + y * y + z * z);
    if (d < 1e-12) {
      x = loadDirection[0];
      y = loadDirection[1];
      z = loadDirection[2];
      d = 1;
    }
    double s = sling[j] / d;
    place[3 * j] = attachment[3 * j] + s * x;
    place[3 * j + 1] = attachment[3 * j + 1] + s * y;
    place[3 * j + 2] = attachment[3 * j + 2] + s * z;
  }

  /** Improves the start of a first contact on a sling: along the pull of its two legs. */
  private void firstGuess() {
    if (sling[0] == 0) {
      return;
    }
    for (int pass = 0; pass < 4; pass++) {
      legs();
      double[] toward = new double[3];
      for (int d = 0; d < 3; d++) {
        toward[d] = attachment[d] + in[d] + out[d];
      }
      double size = 0;
      for (int d = 0; d < 3; d++) {
        size += (in[d] + out[d]) * (in[d] + out[d]);
      }
      pull[0] = Math.sqrt(size) / sling[0];
      guess(0, toward, 0);
    }
  }

  /** Unit vectors, inverse lengths, turns and friction at every bearing contact. */
  private boolean legs() {
    boolean fine = true;
    for (int i = 0; i < bearing; i++) {
      int j = 3 * chain[i];
      if (i == 0) {
        System.arraycopy(loadDirection, 0, in, 0, 3);
        perIn[0] = 0;
      } else {
        in[3 * i] = -out[3 * i - 3];
        in[3 * i + 1] = -out[3 * i - 2];
        in[3 * i + 2] = -out[3 * i - 1];
        perIn[i] = perOut[i - 1];
      }
      if (i == bearing - 1 && end == End.DOWN) {
        out[3 * i] = 0;
        out[3 * i + 1] = 0;
        out[3 * i + 2] = -1;
        perOut[i] = 0;
      } else {
        double[] next = i == bearing - 1 ? attachment : place;
        int n = i == bearing - 1 ? 3 * contacts : 3 * chain[i + 1];
        double x = next[n] - place[j];
        double y = next[n + 1] - place[j + 1];
        double z = next[n + 2] - place[j + 2];
        double length = Math.sqrt(x * x + y * y + z * z);
        if (!(length > 1e-9)) {
          length = 1e-9;
          fine = false;
        }
        perOut[i] = 1 / length;
        out[3 * i] = x * perOut[i];
        out[3 * i + 1] = y * perOut[i];
        out[3 * i + 2] = z * perOut[i];
      }
      turnAt(i);
    }
    return fine;
  }

  private void turnAt(int i) {
    int o = 3 * i;
    double cx = in[o + 1] * out[o + 2] - in[o + 2] * out[o + 1];
    double cy = in[o + 2] * out[o] - in[o] * out[o + 2];
    double cz = in[o] * out[o + 1] - in[o + 1] * out[o];
    double sine = Math.sqrt(cx * cx + cy * cy + cz * cz);
    double cosine = in[o] * out[o] + in[o + 1] * out[o + 1] + in[o + 2] * out[o + 2];
    double w = Math.atan2(sine, -cosine);
    int j = chain[i];
    turn[j] = w;
    ratio[i] = correction[j] * FrictionKernel.ratio(law[j], parameter[j], w);
    double perSine = sine > 1e-13 ? 1 / sine : 0;
    slope[i] =
        perSine == 0 ? 0 : correction[j] * FrictionKernel.ratioSlope(law[j], parameter[j], w);
    for (int d = 0; d < 3; d++) {
      turnIn[o + d] = perSine * perIn[i] * (out[o + d] - cosine * in[o + d]);
      turnOut[o + d] = perSine * perOut[i] * (in[o + d] - cosine * out[o + d]);
    }
  }

  private double tensionBefore(int i) {
    return i == 0 ? 1 : tension[chain[i - 1]];
  }

  private void tensionsFromTurns() {
    for (int i = 0; i < bearing; i++) {
      double before = tensionBefore(i);
      tension[chain[i]] = raising ? before * ratio[i] : before / ratio[i];
    }
  }

  /** The pull of each sling that fits the forces best at the present places. */
  private void pullsFromForces() {
    for (int i = 0; i < bearing; i++) {
      int j = chain[i];
      if (sling[j] == 0) {
        continue;
      }
      double before = tensionBefore(i);
      double along = 0;
      for (int d = 0; d < 3; d++) {
        along +=
            (place[3 * j + d] - attachment[3 * j + d])
                * (before * in[3 * i + d] + tension[j] * out[3 * i + d]);
      }
      along -= (place[3 * j + 2] - attachment[3 * j + 2]) * hanging(i);
      pull[j] = along / (sling[j] * sling[j]);
    }
  }

  /** Weight of the legs that hangs on a bearing contact. */
  private double hanging(int i) {
    return half[chain[i]] + (i == 0 ? 0 : half[chain[i - 1]]);
  }

  /** Newton's method, with the weight of the legs brought up to date around it. */
  private boolean balance() {
    if (!anyWeight) {
      return newton();
    }
    for (int pass = 0; pass < WEIGHINGS; pass++) {
      if (!newton()) {
        return false;
      }
      double changed = weigh();
      if (changed < WEIGHED) {
        return true;
      }
      if (Double.isNaN(changed)) {
        break;
      }
    }
    java.util.Arrays.fill(correction, 1);
    java.util.Arrays.fill(half, 0);
    return false;
  }

  /**
   * Notes half the weight of every leg, and how friction between the tensions at the ends differs
   * from friction between those along the chords.
   *
   * @return how much that changed; NaN if a leg weighs more than its tension can hold up
   */
  private double weigh() {
    double most = 0;
    double halfBefore = 0;
    double[] a = new double[3];
    double[] b = new double[3];
    for (int i = 0; i < bearing; i++) {
      int j = chain[i];
      double h = perOut[i] == 0 ? 0 : 0.5 * ropeWeight[j] / perOut[i];
      double before = tensionBefore(i);
      for (int d = 0; d < 3; d++) {
        a[d] = before * in[3 * i + d];
        b[d] = tension[j] * out[3 * i + d];
      }
      a[2] -= halfBefore;
      b[2] -= h;
      double cx = a[1] * b[2] - a[2] * b[1];
      double cy = a[2] * b[0] - a[0] * b[2];
      double cz = a[0] * b[1] - a[1] * b[0];
      double w =
          Math.atan2(
              Math.sqrt(cx * cx + cy * cy + cz * cz), -(a[0] * b[0] + a[1] * b[1] + a[2] * b[2]));
      double t = FrictionKernel.ratio(law[j], parameter[j], w);
      double tight = halfBefore == 0 ? before : Math.sqrt(a[0] * a[0] + a[1] * a[1] + a[2] * a[2]);
      double behind = raising ? tight * t : tight / t;
      double up = out[3 * i + 2];
      double root = behind * behind - h * h * (1 - up * up);
      double along = h == 0 ? behind : h * up + Math.sqrt(root);
      // Less along the chord than half the weight: somewhere the leg would have to push.
      if (!(root > 0 && along > h)) {
        tooHeavy = j;
        return Double.NaN;
      }
      double wanted = raising ? along / before : before / along;
      double next = wanted / ratio[i] * correction[j];
      most = Math.max(most, Math.max(Math.abs(next / correction[j] - 1), Math.abs(h - half[j])));
      correction[j] = next;
      half[j] = h;
      turn[j] = w;
      tensionIn[j] = tight;
      tensionOut[j] = behind;
      halfBefore = h;
    }
    return most;
  }

  private boolean newton() {
    if (!anySling) {
      for (int i = 0; i < bearing; i++) {
        System.arraycopy(attachment, 3 * chain[i], place, 3 * chain[i], 3);
      }
      boolean fine = legs();
      tensionsFromTurns();
      return fine;
    }
    for (int i = 0; i < bearing; i++) {
      if (sling[chain[i]] == 0) {
        System.arraycopy(attachment, 3 * chain[i], place, 3 * chain[i], 3);
      }
    }
    double before = Double.POSITIVE_INFINITY;
    for (int iteration = 0; iteration < 40; iteration++) {
      if (!legs()) {
        return false;
      }
      tensionsFromTurns();
      pullsFromForces();
      double error = residual();
      // Small forces leave places loose: what is left of an earlier solve needs a step of its own.
      boolean converged = error < CONVERGED && (iteration > 0 || error < ROUNDING);
      if (converged || (error < 1e-11 && error > 0.2 * before)) {
        return matrix();
      }
      before = error;
      if (!matrix()) {
        return false;
      }
      int n = BLOCK * bearing;
      for (int i = 0; i < n; i++) {
        step[i] = -residual[i];
      }
      lu.solve(step);
      if (!take(n)) {
        return false;
      }
    }
    return false;
  }

  private boolean take(int n) {
    double scale = 1;
    for (int i = 0; i < bearing; i++) {
      int o = BLOCK * i;
      int j = chain[i];
      double size =
          Math.sqrt(step[o] * step[o] + step[o + 1] * step[o + 1] + step[o + 2] * step[o + 2]);
      double most = 0.7 * Math.max(sling[j], 0.02);
      if (size * scale > most) {
        scale = most / size;
      }
    }
    for (int i = 0; i < n; i++) {
      if (!Double.isFinite(step[i])) {
        return false;
      }
    }
    for (int i = 0; i < bearing; i++) {
      int o = BLOCK * i;
      int j = chain[i];
      for (int d = 0; d < 3; d++) {
        nearest[d] = place[3 * j + d] + scale * step[o + d];
      }
      guess(j, nearest, 0);
    }
    return true;
  }

  private double residual() {
    double most = 0;
    for (int i = 0; i < bearing; i++) {
      int j = chain[i];
      int o = BLOCK * i;
      double before = tensionBefore(i);
      double after = tension[j];
      double square = 0;
      for (int d = 0; d < 3; d++) {
        double arm = place[3 * j + d] - attachment[3 * j + d];
        square += arm * arm;
        residual[o + d] =
            sling[j] > 0 ? before * in[3 * i + d] + after * out[3 * i + d] - pull[j] * arm : arm;
      }
      if (sling[j] > 0) {
        residual[o + 2] -= hanging(i);
      }
      residual[o + 3] = sling[j] > 0 ? 0.5 * (square / sling[j] - sling[j]) : pull[j];
      residual[o + 4] = raising ? after - before * ratio[i] : after * ratio[i] - before;
      double scale = Math.max(1, Math.max(before, after));
      for (int d = 0; d < BLOCK; d++) {
        most = Math.max(most, Math.abs(residual[o + d]) / (d == 3 ? 1 : scale));
      }
    }
    return most;
  }

  /** Sets up and factors the matrix of derivatives at the present legs. */
  private boolean matrix() {
    lu.reset(BLOCK * bearing);
    for (int i = 0; i < bearing; i++) {
      int j = chain[i];
      int o = BLOCK * i;
      double before = tensionBefore(i);
      double after = tension[j];
      if (sling[j] == 0) {
        for (int d = 0; d < 4; d++) {
          lu.add(o + d, o + d, 1);
        }
      } else {
        double sIn = before * perIn[i];
        double sOut = after * perOut[i];
        for (int d = 0; d < 3; d++) {
          for (int f = 0; f < 3; f++) {
            double unit = d == f ? 1 : 0;
            double pIn = sIn * (unit - in[3 * i + d] * in[3 * i + f]);
            double pOut = sOut * (unit - out[3 * i + d] * out[3 * i + f]);
            lu.add(o + d, o + f, -pIn - pOut - (d == f ? pull[j] : 0));
            if (i > 0) {
              lu.add(o + d, o - BLOCK + f, pIn);
            }
            if (i < bearing - 1) {
              lu.add(o + d, o + BLOCK + f, pOut);
            }
          }
          double arm = place[3 * j + d] - attachment[3 * j + d];
          lu.add(o + d, o + 3, -arm);
          lu.add(o + d, o + 4, out[3 * i + d]);
          if (i > 0) {
            lu.add(o + d, o - 1, in[3 * i + d]);
          }
          lu.add(o + 3, o + d, arm / sling[j]);
        }
      }
      double give = raising ? -before * slope[i] : after * slope[i];
      lu.add(o + 4, o + 4, raising ? 1 : ratio[i]);
      if (i > 0) {
        lu.add(o + 4, o - 1, raising ? -ratio[i] : -1);
      }
      for (int d = 0; d < 3; d++) {
        lu.add(o + 4, o + d, -give * (turnIn[3 * i + d] + turnOut[3 * i + d]));
        if (i > 0) {
          lu.add(o + 4, o - BLOCK + d, give * turnIn[3 * i + d]);
        }
        if (i < bearing - 1) {
          lu.add(o + 4, o + BLOCK + d, give * turnOut[3 * i + d]);
        }
      }
    }
    return lu.factor();
  }

  /** Lets go of contacts whose sling would have to push; returns whether there was one. */
  private boolean release(boolean oneAtATime) {
    int worst = -1;
    double least = -1e-13;
    boolean any = false;
    for (int i = 0; i < bearing; i++) {
      int j = chain[i];
      if (sling[j] > 0 && pull[j] * sling[j] < -1e-13 * Math.max(1, tension[j])) {
        any = true;
        if (!oneAtATime) {
          bears[j] = false;
        } else if (pull[j] * sling[j] < least) {
          least = pull[j] * sling[j];
          worst = j;
        }
      }
    }
    if (worst >= 0) {
      bears[worst] = false;
    }
    return any;
  }

  /** Engages contacts whose ball the rope has left; returns whether there was one. */
  private boolean engage(boolean oneAtATime) {
    double[] start = new double[3];
    double[] direction = new double[3];
    boolean any = false;
    int worst = -1;
    double most = 0;
    double[] worstAt = new double[3];
    int i = 0;
    double passed = Double.NEGATIVE_INFINITY;
    int passedBy = -1;
    for (int j = 0; j < contacts; j++) {
      if (bears[j]) {
        i++;
        passed = Double.NEGATIVE_INFINITY;
        passedBy = -1;
        continue;
      }
      double from;
      double to;
      if (i == 0) {
        System.arraycopy(loadDirection, 0, direction, 0, 3);
        for (int d = 0; d < 3; d++) {
          direction[d] = -direction[d];
        }
        if (bearing > 0) {
          System.arraycopy(place, 3 * chain[0], start, 0, 3);
        } else if (end == End.DOWN) {
          continue;
        } else {
          System.arraycopy(attachment, 3 * contacts, start, 0, 3);
        }
        from = Double.NEGATIVE_INFINITY;
        to = 0;
      } else {
        System.arraycopy(place, 3 * chain[i - 1], start, 0, 3);
        System.arraycopy(out, 3 * i - 3, direction, 0, 3);
        from = 0;
        to = perOut[i - 1] == 0 ? Double.POSITIVE_INFINITY : 1 / perOut[i - 1];
      }
      double along = 0;
      for (int d = 0; d < 3; d++) {
        along += (attachment[3 * j + d] - start[d]) * direction[d];
      }
      double off = 0;
      for (int d = 0; d < 3; d++) {
        double gap = attachment[3 * j + d] - start[d] - along * direction[d];
        off += gap * gap;
      }
      double half2 = sling[j] * sling[j] - off;
      double half = half2 > 0 ? Math.sqrt(half2) : 0;
      double low = Math.max(along - half, Math.max(from, passed));
      double high = Math.min(along + half, to);
      boolean misses = half2 < -1e-12 * sling[j] || low > high + 1e-12;
      if (!misses) {
        passedBy = low > passed ? j : passedBy;
        passed = low;
        continue;
      }
      any = true;
      if (half2 >= 0 && passedBy >= 0 && high >= from && low == passed) {
        // The rope would have to come back for this contact: both it and the one before bear. On
        // the way there the two lie at one point.
        conflict = j;
        engage(passedBy, onLine(start, direction, passed));
        engage(j, onLine(start, direction, high));
        return true;
      }
      double at = Math.max(from, Math.min(to, along));
      if (Double.isInfinite(at)) {
        at = along;
      }
      double excess = 0;
      for (int d = 0; d < 3; d++) {
        nearest[d] = start[d] + at * direction[d];
        double gap = nearest[d] - attachment[3 * j + d];
        excess += gap * gap;
      }
      excess = Math.max(Math.sqrt(excess) - sling[j], 1e-15);
      if (!oneAtATime) {
        engage(j, nearest);
      } else if (excess > most) {
        most = excess;
        worst = j;
        System.arraycopy(nearest, 0, worstAt, 0, 3);
      }
    }
    if (worst >= 0) {
      engage(worst, worstAt);
    }
    return any;
  }

  private static double[] onLine(double[] start, double[] direction, double at) {
    return new double[] {
      start[0] + at * direction[0], start[1] + at * direction[1], start[2] + at * direction[2]
    };
  }

  private void engage(int j, double[] nearest) {
    bears[j] = true;
    guess(j, nearest, 0);
    pull[j] = 0.05 / sling[j];
    double before = 1;
    for (int m = 0; m < j; m++) {
      if (bears[m]) {
        before = tension[m];
      }
    }
    tension[j] = before;
  }

  /**
   * Slow and sure: places of all contacts from the minimum of the convex potential, by the barrier
   * method with Newton steps; tensions follow from the turns in an outer loop. Gives Newton's
   * method its start and the bearing set.
   */
  private boolean relax() {
    Potential potential = new Potential(attachment, sling, loadDirection, end);
    double[] leg = new double[contacts + 1];
    java.util.Arrays.fill(leg, 1);
    double[] c = potential.start();
    for (int pass = 0; pass < 60; pass++) {
      double[] before = leg.clone();
      if (!potential.minimise(c, leg)) {
        return false;
      }
      potential.legTensions(c, law, parameter, raising, leg);
      double most = 0;
      for (int i = 0; i <= contacts; i++) {
        most = Math.max(most, Math.abs(leg[i] - before[i]) / before[i]);
        if (pass > 12) {
          leg[i] = 0.5 * (leg[i] + before[i]);
        }
      }
      if (most < 1e-4) {
        break;
      }
    }
    System.arraycopy(c, 0, place, 0, place.length);
    for (int j = 0; j < contacts; j++) {
      bears[j] = sling[j] == 0 || potential.bears(c, j);
      tension[j] = leg[j + 1];
    }
    link();
    return apart();
  }

  /** Whether all legs have some length; notes the contact where one has not. */
  private boolean apart() {
    for (int i = 0; i < bearing; i++) {
      boolean last = i == bearing - 1;
      if (last && end == End.DOWN) {
        break;
      }
      double[] next = last ? attachment : place;
      int a = 3 * chain[i];
      int b = last ? 3 * contacts : 3 * chain[i + 1];
      double gap2 = 0;
      for (int d = 0; d < 3; d++) {
        gap2 += (place[a + d] - next[b + d]) * (place[a + d] - next[b + d]);
      }
      if (gap2 < TOGETHER * TOGETHER) {
        together = last ? contacts : chain[i + 1];
        return false;
      }
    }
    return true;
  }

  private void finish() {
    java.util.Arrays.fill(force, 0);
    double before = 1;
    double behind = 1;
    int i = 0;
    for (int j = 0; j < contacts; j++) {
      if (bears[j]) {
        for (int d = 0; d < 3; d++) {
          force[3 * j + d] = before * in[3 * i + d] + tension[j] * out[3 * i + d];
        }
        force[3 * j + 2] -= hanging(i);
        if (!anyWeight) {
          tensionIn[j] = before;
          tensionOut[j] = tension[j];
        }
        before = tension[j];
        behind = tensionOut[j];
        i++;
      } else {
        tension[j] = before;
        tensionIn[j] = behind;
        tensionOut[j] = behind;
        turn[j] = 0;
      }
    }
    if (end == End.DEVICE) {
      for (int d = 0; d < 3; d++) {
        force[3 * contacts + d] =
            bearing == 0 ? loadDirection[d] : -before * out[3 * (bearing - 1) + d];
      }
      if (bearing > 0) {
        force[3 * contacts + 2] -= half[chain[bearing - 1]];
      }
    }
  }

  /**
   * Linear response of the forces to a change of the attachments (and of the device, behind them).
   */
  public void change(double[] attachmentChange) {
    java.util.Arrays.fill(forceChange, 0);
    if (bearing == 0) {
      return;
    }
    if (anySling) {
      respond(attachmentChange);
    } else {
      for (int i = 0; i < bearing; i++) {
        System.arraycopy(attachmentChange, 3 * chain[i], step, BLOCK * i, 3);
      }
      double dBefore = 0;
      for (int i = 0; i < bearing; i++) {
        double turned = 0;
        for (int d = 0; d < 3; d++) {
          double here = step[BLOCK * i + d];
          if (i > 0) {
            turned += turnIn[3 * i + d] * (step[BLOCK * (i - 1) + d] - here);
          }
          if (perOut[i] != 0) {
            turned += turnOut[3 * i + d] * (next(i, d, attachmentChange) - here);
          }
        }
        double before = tensionBefore(i);
        double dAfter =
            raising
                ? dBefore * ratio[i] + before * slope[i] * turned
                : (dBefore - tension[chain[i]] * slope[i] * turned) / ratio[i];
        step[BLOCK * i + 4] = dAfter;
        dBefore = dAfter;
      }
    }
    for (int i = 0; i < bearing; i++) {
      int j = chain[i];
      double before = tensionBefore(i);
      double after = tension[j];
      double dBefore = i == 0 ? 0 : step[BLOCK * (i - 1) + 4];
      double dAfter = step[BLOCK * i + 4];
      double alongIn = 0;
      double alongOut = 0;
      for (int d = 0; d < 3; d++) {
        double here = step[BLOCK * i + d];
        if (i > 0) {
          alongIn += in[3 * i + d] * (step[BLOCK * (i - 1) + d] - here);
        }
        if (perOut[i] != 0) {
          alongOut += out[3 * i + d] * (next(i, d, attachmentChange) - here);
        }
      }
      for (int d = 0; d < 3; d++) {
        double here = step[BLOCK * i + d];
        double dIn = 0;
        if (i > 0) {
          dIn = perIn[i] * (step[BLOCK * (i - 1) + d] - here - alongIn * in[3 * i + d]);
        }
        double dOut = 0;
        if (perOut[i] != 0) {
          dOut = perOut[i] * (next(i, d, attachmentChange) - here - alongOut * out[3 * i + d]);
        }
        forceChange[3 * j + d] =
            dBefore * in[3 * i + d] + before * dIn + dAfter * out[3 * i + d] + after * dOut;
        if (end == End.DEVICE && i == bearing - 1) {
          forceChange[3 * contacts + d] = -dAfter * out[3 * i + d] - after * dOut;
        }
      }
    }
  }

  /** Writes the linear response of places, pulls and tensions into {@code step}. */
  private void respond(double[] attachmentChange) {
    int n = BLOCK * bearing;
    for (int i = 0; i < bearing; i++) {
      int j = chain[i];
      int o = BLOCK * i;
      double along = 0;
      for (int d = 0; d < 3; d++) {
        double da = attachmentChange[3 * j + d];
        step[o + d] = sling[j] > 0 ? -pull[j] * da : da;
        along += (place[3 * j + d] - attachment[3 * j + d]) * da;
      }
      step[o + 3] = sling[j] > 0 ? along / sling[j] : 0;
      step[o + 4] = 0;
    }
    if (end == End.DEVICE) {
      int i = bearing - 1;
      int o = BLOCK * i;
      int j = chain[i];
      double along = 0;
      double turned = 0;
      for (int d = 0; d < 3; d++) {
        double de = attachmentChange[3 * contacts + d];
        along += out[3 * i + d] * de;
        turned += turnOut[3 * i + d] * de;
      }
      if (sling[j] > 0) {
        for (int d = 0; d < 3; d++) {
          double de = attachmentChange[3 * contacts + d];
          step[o + d] -= tension[j] * perOut[i] * (de - along * out[3 * i + d]);
        }
      }
      step[o + 4] -= (raising ? -tensionBefore(i) : tension[j]) * slope[i] * turned;
    }
    lu.solve(step);
    for (int d = n; d < step.length; d++) {
      step[d] = 0;
    }
  }

  private double next(int i, int d, double[] attachmentChange) {
    if (i < bearing - 1) {
      return step[BLOCK * (i + 1) + d];
    }
    return end == End.DEVICE ? attachmentChange[3 * contacts + d] : 0;
  }
}
