package org.boleline.internal.motion;

import java.util.Arrays;
import java.util.List;
import java.util.concurrent.CancellationException;
import java.util.function.BooleanSupplier;

/**
 * Follows a catch from event to event: rope comes taut or slack, a point begins or ceases to slip,
 * the device too, a leg begins to unload, the hand holds. Between events all is smooth.
 */
public final class CatchMotion {
  private enum Phase {
    SLACK,
    /** The rope runs through the device without tension until the hold. */
    FREE,
    TAUT
  }

  /** Error of a step over the size of what is computed, at first. */
  private static final double TOLERANCE = 1e-9;

  /** Share of the energy given that may be missing. */
  private static final double CLOSED = 1e-6;

  private static final int ATTEMPTS = 3;
  private static final double FINER = 0.03;
  private static final double MOST_STEP = 0.02;
  private static final double LEAST_STEP = 1e-13;
  private static final int MOST_STEPS = 100_000;

  /** Room below this is used up; that of a slack rope is over {@link #stretch}. */
  private static final double USED_UP = 1e-10;

  /** Least length in metres that slack is measured by: far above the rounding of positions. */
  private static final double LEAST_STRETCH = 0.01;

  private final CatchSystem system;
  private final DormandPrince steps;
  private final MotionRecord record;
  private final double[] y;
  private final double[] scale;
  private final double[] scratch;
  private final double[] startRoom;
  private final double[] endRoom;
  private final double[] middleRoom;
  private final double duration;
  private final BooleanSupplier cancelled;
  private double t;
  private double h;
  private Phase phase = Phase.SLACK;
  private double limit;
  private double hold = Double.POSITIVE_INFINITY;
  private final double stretch;
  private double force;
  private double speed;
  private double startLengthening;
  private double share;

  private CatchMotion(
      MotionSpec spec,
      List<StemSide> stems,
      double tolerance,
      double duration,
      double every,
      BooleanSupplier cancelled) {
    system = new CatchSystem(spec);
    steps = new DormandPrince(system, system.size);
    y = system.initial();
    scratch = new double[system.size];
    record = new MotionRecord(system, stems, every, y);
    this.duration = duration;
    this.cancelled = cancelled;
    startRoom = new double[2 * system.legs + 1];
    endRoom = new double[startRoom.length];
    middleRoom = new double[startRoom.length];
    limit = spec.slip();
    double weight = spec.mass() * spec.gravity();
    force = weight;
    double still = 0;
    for (double length : spec.lengths()) {
      still += length * spec.rope().strain(weight);
    }
    stretch = Math.max(still, LEAST_STRETCH);
    double fall = Math.max(0, system.rope.slack(system.length, y, system.passed));
    double[] v = spec.velocity();
    double start = v[0] * v[0] + v[1] * v[1] + v[2] * v[2];
    speed = Math.sqrt(2 * spec.gravity() * (fall + still) + start);
    scale = scales(tolerance, still + 1e-3 * fall, weight * (fall + still));
  }

  private double[] scales(double tolerance, double length, double energy) {
    MotionSpec spec = system.spec;
    double[] out = new double[system.size];
    double[] tie = spec.tie();
    double arm = Math.max(0.1, Math.sqrt(tie[0] * tie[0] + tie[1] * tie[1] + tie[2] * tie[2]));
    Arrays.fill(out, length);
    Arrays.fill(out, CatchSystem.VELOCITY, CatchSystem.VELOCITY + 3, speed);
    Arrays.fill(out, CatchSystem.ATTITUDE, CatchSystem.ATTITUDE + 4, length / arm);
    Arrays.fill(out, CatchSystem.SPIN, CatchSystem.SPIN + 3, speed / arm);
    for (int k = 0; k < system.modes; k++) {
      double most = 1e-12;
      for (double part : spec.shape()[k]) {
        most = Math.max(most, Math.abs(part));
      }
      out[CatchSystem.MODES + k] = length / most;
      out[CatchSystem.MODES + system.modes + k] = speed / most;
    }
    Arrays.fill(out, system.missing, system.heats, 1);
    Arrays.fill(out, system.heats, system.size, energy);
    for (int i = 0; i < out.length; i++) {
      out[i] *= tolerance;
    }
    return out;
  }

  /**
   * Follows a catch, with finer steps where the energy account does not close: where rates bend
   * sharply, as those of a tabulated rope at its rows.
   *
   * @param spec the catch at its start
   * @param stems stems whose base moments and stresses are read
   * @param duration time to follow
   * @param every time between samples, zero for none
   * @param cancelled asked now and then whether to stop
   * @return what it came to; given up if no steps closed the account
   * @throws CancellationException if it was cancelled
   */
  public static MotionRecord follow(
      MotionSpec spec,
      List<StemSide> stems,
      double duration,
      double every,
      BooleanSupplier cancelled) {
    double tolerance = TOLERANCE;
    for (int attempt = 1; ; attempt++) {
      MotionRecord record =
          new CatchMotion(spec, stems, tolerance, duration, every, cancelled).run();
      if (record.ending() != MotionRecord.Ending.GAVE_UP && record.residualShare() <= CLOSED) {
        return record;
      }
      if (attempt == ATTEMPTS) {
        record.ending = MotionRecord.Ending.GAVE_UP;
        return record;
      }
      tolerance *= FINER;
    }
  }

  private MotionRecord run() {
    h = 1e-4;
    system.of(y, scratch);
    if (system.rope.slack(system.length, y, system.passed) <= 0) {
      comeTaut();
    }
    while (t < duration) {
      if (!phase()) {
        record.ending = MotionRecord.Ending.GAVE_UP;
        break;
      }
    }
    if (phase == Phase.FREE) {
      system.of(y, scratch);
      takeRun();
    }
    record.finish(y);
    boolean runs = phase == Phase.FREE || (phase == Phase.TAUT && isDeviceSlipping());
    if (runs && record.ending == MotionRecord.Ending.HELD) {
      record.ending = MotionRecord.Ending.RUNNING;
    }
    return record;
  }

  private boolean isDeviceSlipping() {
    return system.rope.mode[system.legs - 1] != RopeLegs.STICKS;
  }

  /** Follows a smooth part to its end; false if the steps do not come to one. */
  private boolean phase() {
    system.taut = phase == Phase.TAUT;
    steps.start(y);
    record.restart(y);
    rooms(y, startRoom);
    startLengthening = lengthening();
    while (t < duration) {
      if (record.steps++ > MOST_STEPS) {
        return false;
      }
      if ((record.steps & 63) == 0 && cancelled.getAsBoolean()) {
        throw new CancellationException();
      }
      double end = Math.min(duration, hold > t ? hold : Double.POSITIVE_INFINITY);
      double whole = Math.min(MOST_STEP, end - t);
      double tried = Math.min(h, whole);
      double error = steps.step(tried, scale);
      while (!(error <= 1)) {
        double less = error > 1 ? Math.max(0.2, 0.9 * Math.pow(error, -0.2)) : 0.1;
        tried *= Double.isFinite(error) ? less : 0.1;
        if (tried < LEAST_STEP) {
          return false;
        }
        error = steps.step(tried, scale);
      }
      double grow = error > 1e-8 ? Math.min(5, 0.9 * Math.pow(error, -0.2)) : 5;
      double next = tried < h && grow > 1 ? Math.max(h, tried * grow) : tried * grow;
      h = Math.max(next, 1e-9);
      rooms(steps.end(), endRoom);
      int event = firstOver(tried);
      if (event >= 0) {
        double part = share * tried;
        // What is over by then may not be what was over at the end of the whole step.
        while (part > LEAST_STEP) {
          steps.step(part, scale);
          rooms(steps.end(), endRoom);
          endRoom[event] = 0;
          int sooner = firstOver(part);
          if (sooner < 0) {
            break;
          }
          event = sooner;
          part *= share;
        }
        if (part > LEAST_STEP) {
          record.step(steps, t, part);
          t += part;
          System.arraycopy(steps.end(), 0, y, 0, y.length);
        } else {
          System.arraycopy(steps.start(), 0, y, 0, y.length);
        }
        note();
        record.events++;
        return happens(event);
      }
      record.step(steps, t, tried);
      t = tried == end - t ? end : t + tried;
      System.arraycopy(steps.end(), 0, y, 0, y.length);
      note();
      if (t == hold) {
        return holds();
      }
      steps.goOn();
      system.geometry(y);
      startLengthening = lengthening();
      System.arraycopy(endRoom, 0, startRoom, 0, endRoom.length);
    }
    return true;
  }

  /**
   * Finds the first room of a step that is used up, by looking at its end and its middle; its place
   * goes to {@code share}.
   *
   * @return the index of the room, or minus one if there is none
   */
  private int firstOver(double step) {
    int event = -1;
    share = 1;
    for (int c = 0; c < endRoom.length; c++) {
      if (endRoom[c] < -USED_UP) {
        event = sooner(event, c, crossing(c, step, 1));
      }
    }
    if (phase == Phase.TAUT) {
      double[] middle = steps.read(step, 0.5);
      system.of(middle, scratch);
      rooms(middle, middleRoom);
      for (int c = 0; c < endRoom.length; c++) {
        if (middleRoom[c] < -USED_UP && endRoom[c] >= -USED_UP) {
          event = sooner(event, c, crossing(c, step, 0.5));
        }
      }
    } else if (phase == Phase.SLACK && event < 0) {
      double deepest = leastSlack(step);
      if (deepest < 1) {
        event = sooner(event, 2 * system.legs, crossing(2 * system.legs, step, deepest));
      }
    }
    return event;
  }

  private int sooner(int event, int c, double place) {
    if (event < 0 || place < share) {
      share = place;
      return c;
    }
    return event;
  }

  /** Keeps the sizes that rooms are measured by up with what has been seen. */
  private void note() {
    force = Math.max(force, record.peaks()[0]);
    double sum = 0;
    for (int d = 0; d < 3; d++) {
      sum += y[CatchSystem.VELOCITY + d] * y[CatchSystem.VELOCITY + d];
    }
    speed = Math.max(speed, Math.sqrt(sum));
  }

  /**
   * Where in a step with a slack rope it has least slack; 1 if that is not used up. A rope may come
   * taut for a moment between two slack ends of a step.
   */
  private double leastSlack(double step) {
    system.of(steps.end(), scratch);
    if (!(startLengthening > 0 && lengthening() < 0)) {
      return 1;
    }
    double turns = turning(step, 1, 1);
    double[] there = steps.read(step, turns);
    system.of(there, scratch);
    return system.rope.slack(system.length, there, system.passed) < -USED_UP * stretch ? turns : 1;
  }

  /** Where in a step, up to a share of it, legs that got longer (1) or shorter (-1) cease to. */
  private double turning(double step, int way, double until) {
    double a = 0;
    double b = until;
    for (int i = 0; i < 40; i++) {
      double x = 0.5 * (a + b);
      system.of(steps.read(step, x), scratch);
      if (way * lengthening() > 0) {
        a = x;
      } else {
        b = x;
      }
    }
    return b;
  }

  /** Where in a step a room is used up, which it is at a share of it. */
  private double crossing(int c, double step, double until) {
    double a = 0;
    double b = until;
    double fa = startRoom[c] + USED_UP;
    double[] room = new double[endRoom.length];
    if (fa <= 0 && phase == Phase.SLACK && startLengthening < 0) {
      // The rope went slack with none to spare: it comes taut after it was slackest.
      a = turning(step, -1, until);
      double[] slackest = steps.read(step, a);
      system.of(slackest, scratch);
      rooms(slackest, room);
      fa = room[c] + USED_UP;
    }
    double[] last = steps.read(step, until);
    system.of(last, scratch);
    rooms(last, room);
    double fb = room[c] + USED_UP;
    if (fa <= 0) {
      return a;
    }
    int side = 0;
    for (int i = 0; i < 60 && b - a > 1e-14; i++) {
      double x = (fa * b - fb * a) / (fa - fb);
      if (!(x > a && x < b)) {
        x = 0.5 * (a + b);
      }
      double[] there = steps.read(step, x);
      system.of(there, scratch);
      rooms(there, room);
      double f = room[c] + USED_UP;
      if (Math.abs(f) < 1e-13) {
        return x;
      }
      if (f > 0) {
        a = x;
        fa = f;
        fb = side == 1 ? 0.5 * fb : fb;
        side = 1;
      } else {
        b = x;
        fb = f;
        fa = side == -1 ? 0.5 * fa : fa;
        side = -1;
      }
    }
    return b;
  }

  /** Room of everything that can end this phase, at the system's last rates. */
  private void rooms(double[] state, double[] out) {
    Arrays.fill(out, Double.POSITIVE_INFINITY);
    int legs = system.legs;
    if (phase == Phase.SLACK) {
      out[2 * legs] = system.rope.slack(system.length, state, system.passed) / stretch;
    } else if (phase == Phase.FREE) {
      out[2 * legs] = lengthening() / speed;
    } else if (phase == Phase.TAUT) {
      for (int j = 0; j < legs; j++) {
        out[j] = system.rope.room(j, limit, force, speed);
        if (system.spec.loss() > 0) {
          out[legs + j] = system.rope.directionRoom(j, speed);
        }
      }
      out[2 * legs] = system.rope.tension[0] / force;
    }
  }

  private boolean happens(int event) {
    int legs = system.legs;
    if (phase == Phase.SLACK) {
      return comeTaut();
    }
    system.of(y, scratch);
    if (phase == Phase.FREE) {
      takeRun();
      phase = Phase.SLACK;
      return true;
    }
    if (event == 2 * legs) {
      y[system.heats] += system.ropeEnergy();
      phase = Phase.SLACK;
      return true;
    }
    RopeLegs rope = system.rope;
    rope.turn(event, event < legs && rope.towardFirst(event));
    rope.project(system.length, y, system.passed, system.missing, limit);
    system.of(y, scratch);
    return settle(event, false);
  }

  private boolean settle(int fixed, boolean apex) {
    return system.rope.settle(
        system.lengthRate, fixed, apex, limit, 10 * USED_UP * force, USED_UP * speed);
  }

  private boolean comeTaut() {
    if (Double.isNaN(record.tautAt)) {
      record.tautAt = t;
      if (system.spec.delay() > 0) {
        hold = t + system.spec.delay();
        limit = system.spec.idle();
      }
    }
    system.geometry(y);
    if (lengthening() < 0) {
      phase = Phase.SLACK;
      return true;
    }
    if (limit == 0) {
      phase = Phase.FREE;
      return true;
    }
    RopeLegs rope = system.rope;
    rope.even(system.length, y, system.passed);
    Arrays.fill(rope.mode, RopeLegs.STICKS);
    Arrays.fill(rope.unloading, false);
    phase = Phase.TAUT;
    system.taut = true;
    system.of(y, scratch);
    return settle(-1, true);
  }

  /** How fast all legs together get longer, m/s. */
  private double lengthening() {
    double rate = 0;
    for (double one : system.lengthRate) {
      rate += one;
    }
    return rate;
  }

  /** Counts the rope that has run without tension. */
  private void takeRun() {
    y[system.passed + system.legs - 1] += system.freeRun(y);
  }

  private boolean holds() {
    limit = system.spec.slip();
    hold = Double.POSITIVE_INFINITY;
    system.of(y, scratch);
    if (phase == Phase.FREE) {
      takeRun();
      return comeTaut();
    }
    if (phase == Phase.TAUT) {
      system.rope.mode[system.legs - 1] = RopeLegs.STICKS;
      return settle(-1, false);
    }
    return true;
  }
}
