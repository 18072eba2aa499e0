package org.boleline.internal.motion;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * What a catch in time came to: peaks with their times, samples, and where the energy has gone.
 *
 * <p>Quantities, one after the other: tension of each leg, force on each point and on the end,
 * moment at the base of each stem, depth of the centre of gravity below its start.
 */
public final class MotionRecord {
  /** How a catch ended. */
  public enum Ending {
    /** The time was up, and no rope ran through the device any more. */
    HELD,
    /** The time was up, and rope still ran. */
    RUNNING,
    /** The steps became too many or too small. */
    GAVE_UP
  }

  /**
   * One sample.
   *
   * @param time since the start
   * @param position centre of gravity
   * @param attitude unit quaternion (w, x, y, z) from body to space
   * @param tension of each leg
   * @param place of each point and the end
   * @param pull force of the rope on them
   * @param run rope that has passed the device
   * @param baseMoment moment of all above on the base of each stem, three components each
   * @param stress greatest fibre stress of each stem
   * @param stressAt its station
   * @param modes modal coordinates
   */
  @SuppressWarnings("ArrayRecordComponent") // kernel data, never compared
  public record Sample(
      double time,
      double[] position,
      double[] attitude,
      double[] tension,
      double[] place,
      double[] pull,
      double run,
      double[] baseMoment,
      double[] stress,
      double[] stressAt,
      double[] modes) {}

  /** Share of the time between samples by which a time may be off. */
  private static final double ROUNDING = 1e-9;

  private final CatchSystem system;
  private final List<StemSide> stems;
  private final double every;
  private final double weight;
  private final double startHeight;
  private final double startEnergy;
  private final double[] scratch;
  private final List<Sample> samples = new ArrayList<>();
  private final double[] best;
  private final double[] bestTime;
  private double[] firstBest = {};
  private double[] firstTime = {};
  private final double[] before;
  private final double[] middle;
  private final double[] after;
  private boolean pulled;
  private boolean firstOver;
  private long nextSample;
  private double worstAccount;
  private double deepest;
  private double given;

  Ending ending = Ending.HELD;
  double tautAt = Double.NaN;
  double[] energies = {};
  double run;
  double[] heats = {};
  int steps;
  int events;

  MotionRecord(CatchSystem system, List<StemSide> stems, double every, double[] y) {
    this.system = system;
    this.stems = stems;
    this.every = every;
    weight = system.spec.mass() * system.spec.gravity();
    startHeight = y[CatchSystem.POSITION + 2];
    scratch = new double[system.size];
    int n = 2 * system.legs + stems.size() + 1;
    best = new double[n];
    bestTime = new double[n];
    before = new double[n];
    middle = new double[n];
    after = new double[n];
    system.of(y, scratch);
    startEnergy = system.mechanicalEnergy(y);
    read(y, before);
    sample(0, y);
    nextSample = 1;
  }

  private void read(double[] y, double[] out) {
    int legs = system.legs;
    for (int i = 0; i < legs; i++) {
      out[i] = system.rope.tension[i];
      double x = system.pull[3 * i];
      double yy = system.pull[3 * i + 1];
      double z = system.pull[3 * i + 2];
      out[legs + i] = Math.sqrt(x * x + yy * yy + z * z);
    }
    for (int s = 0; s < stems.size(); s++) {
      double[] m = moment(s, 0, y);
      out[2 * legs + s] = Math.sqrt(m[0] * m[0] + m[1] * m[1] + m[2] * m[2]);
    }
    out[out.length - 1] = startHeight - y[CatchSystem.POSITION + 2];
  }

  private double[] moment(int s, int node, double[] y) {
    StemSide stem = stems.get(s);
    return stem.reading()
        .moment(
            node,
            y,
            CatchSystem.MODES + stem.firstMode(),
            system.acceleration,
            stem.firstMode(),
            stem.pointNode(),
            system.place,
            system.pull);
  }

  /** Notes a step that was made; the system's rates at its end come last. */
  void step(DormandPrince steps, double t, double h) {
    double[] y = steps.read(h, 0.5);
    system.of(y, scratch);
    read(y, middle);
    while (every > 0 && nextSample * every <= t + h + ROUNDING * every) {
      double at = nextSample * every;
      double[] there = steps.read(h, Math.min(1, (at - t) / h));
      system.of(there, scratch);
      sample(at, there);
      nextSample++;
    }
    system.of(steps.end(), scratch);
    read(steps.end(), after);
    double over = 1 + 1e-13;
    for (int i = 0; i < best.length; i++) {
      take(i, middle[i], t + 0.5 * h);
      take(i, after[i], t + h);
      double bend = 2 * (before[i] - 2 * middle[i] + after[i]);
      double slope = -3 * before[i] + 4 * middle[i] - after[i];
      double x = -slope / (2 * bend);
      if (bend < 0 && x > 0 && x < 1 && before[i] - slope * slope / (4 * bend) > best[i] * over) {
        double[] there = steps.read(h, x);
        system.of(there, scratch);
        double[] values = new double[best.length];
        read(there, values);
        take(i, values[i], t + x * h);
        system.of(steps.end(), scratch);
      }
    }
    System.arraycopy(after, 0, before, 0, after.length);
    if (!firstOver) {
      pulled |= after[0] > weight;
      if (pulled && after[0] < weight) {
        endFirst();
      }
    }
    account(steps.end());
  }

  private void endFirst() {
    firstOver = true;
    firstBest = best.clone();
    firstTime = bestTime.clone();
  }

  /** Reads again after the rope's state has changed at once. */
  void restart(double[] y) {
    system.of(y, scratch);
    read(y, before);
  }

  private void take(int i, double value, double time) {
    if (value > best[i]) {
      best[i] = value;
      bestTime[i] = time;
    }
  }

  private void account(double[] y) {
    deepest = Math.max(deepest, startHeight - y[CatchSystem.POSITION + 2]);
    double now =
        system.mechanicalEnergy(y)
            + system.stemEnergy(y)
            + system.ropeEnergy()
            + system.lostEnergy(y);
    worstAccount = Math.max(worstAccount, Math.abs(now - startEnergy));
  }

  private void sample(double time, double[] y) {
    if (every <= 0) {
      return;
    }
    int legs = system.legs;
    double[] base = new double[3 * stems.size()];
    double[] stress = new double[stems.size()];
    double[] stressAt = new double[stems.size()];
    for (int s = 0; s < stems.size(); s++) {
      for (int n = stems.get(s).reading().nodes() - 1; n >= 0; n--) {
        double[] m = moment(s, n, y);
        double here = stems.get(s).reading().stress(n);
        if (here > stress[s]) {
          stress[s] = here;
          stressAt[s] = stems.get(s).reading().at(n);
        }
        if (n == 0) {
          System.arraycopy(m, 0, base, 3 * s, 3);
        }
      }
    }
    samples.add(
        new Sample(
            time,
            Arrays.copyOfRange(y, 0, 3),
            Arrays.copyOfRange(y, CatchSystem.ATTITUDE, CatchSystem.ATTITUDE + 4),
            system.rope.tension.clone(),
            system.place.clone(),
            system.pull.clone(),
            y[system.passed + legs - 1] + system.freeRun(y),
            base,
            stress,
            stressAt,
            Arrays.copyOfRange(y, CatchSystem.MODES, CatchSystem.MODES + system.modes)));
  }

  void finish(double[] y) {
    system.of(y, scratch);
    account(y);
    if (!firstOver) {
      endFirst();
    }
    energies =
        new double[] {
          system.mechanicalEnergy(y), system.stemEnergy(y), system.ropeEnergy(), startEnergy
        };
    heats = Arrays.copyOfRange(y, system.heats, system.size);
    run = y[system.passed + system.legs - 1];
    double[] v = system.spec.velocity();
    double speed2 = v[0] * v[0] + v[1] * v[1] + v[2] * v[2];
    given = weight * deepest + 0.5 * system.spec.mass() * speed2;
  }

  /** How the catch ended. */
  public Ending ending() {
    return ending;
  }

  /** When the rope was first taut, s; not a number if never. */
  public double tautAt() {
    return tautAt;
  }

  /** Greatest values of all quantities. */
  public double[] peaks() {
    return best;
  }

  /** Their times, s. */
  public double[] peakTimes() {
    return bestTime;
  }

  /** Greatest values until the load leg's tension first fell below the weight again. */
  public double[] firstPeaks() {
    return firstBest;
  }

  /** Their times, s. */
  public double[] firstPeakTimes() {
    return firstTime;
  }

  /** The samples. */
  public List<Sample> samples() {
    return samples;
  }

  /** Greatest gap in the energy account over the energy that the fall has given. */
  public double residualShare() {
    return given > 0 ? worstAccount / given : 0;
  }

  /** Energy that weight and speed at the start gave until the lowest place, J. */
  public double given() {
    return given;
  }

  /** At the end: motion and height, stems, rope, all at the start; J. */
  public double[] energies() {
    return energies;
  }

  /** Heat at each point and the device, loss in rope, loss in stems; J. */
  public double[] heats() {
    return heats;
  }

  /** Rope that has passed the device, m. */
  public double run() {
    return run;
  }

  /** Steps that were made. */
  public int steps() {
    return steps;
  }

  /** Events that were located. */
  public int events() {
    return events;
  }
}
