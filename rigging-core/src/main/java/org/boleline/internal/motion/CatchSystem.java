package org.boleline.internal.motion;

/**
 * Piece, rope and stems as a system of rates of one state vector.
 *
 * <p>The vector holds, one after the other: centre of gravity and its velocity, attitude and spin
 * of the piece, modal coordinates and their rates, rope that has passed each point and the device,
 * missing shares of tension, heat at each point and the device, loss in the rope, loss in the
 * stems.
 */
final class CatchSystem implements DormandPrince.Rates {
  static final int POSITION = 0;
  static final int VELOCITY = 3;
  static final int ATTITUDE = 6;
  static final int SPIN = 10;
  static final int MODES = 13;

  final MotionSpec spec;
  final RopeLegs rope;
  final int legs;
  final int modes;
  final int passed;
  final int missing;
  final int heats;
  final int size;

  /** Whether the rope pulls; if not it is slack or runs free. */
  boolean taut;

  final double[] length;
  final double[] lengthRate;
  final double[] place;
  final double[] pull;
  final double[] tie = new double[3];
  final double[] acceleration;

  private final boolean rigid;
  private final double[] direction;
  private final double[] speed;
  private final double[] tieSpeed = new double[3];
  private final double[] turned = new double[9];

  CatchSystem(MotionSpec spec) {
    this.spec = spec;
    rope = new RopeLegs(spec);
    legs = rope.legs;
    modes = spec.modes();
    passed = MODES + 2 * modes;
    missing = passed + legs;
    heats = missing + (spec.loss() > 0 ? legs : 0);
    size = heats + legs + 2;
    length = new double[legs];
    lengthRate = new double[legs];
    direction = new double[3 * legs];
    place = new double[3 * legs];
    speed = new double[3 * legs];
    pull = new double[3 * legs];
    acceleration = new double[modes];
    double[] t = spec.tie();
    double[] s = spec.spin();
    rigid = t[0] != 0 || t[1] != 0 || t[2] != 0 || s[0] != 0 || s[1] != 0 || s[2] != 0;
  }

  double[] initial() {
    double[] y = new double[size];
    System.arraycopy(spec.position(), 0, y, POSITION, 3);
    System.arraycopy(spec.velocity(), 0, y, VELOCITY, 3);
    System.arraycopy(spec.attitude(), 0, y, ATTITUDE, 4);
    System.arraycopy(spec.spin(), 0, y, SPIN, 3);
    return y;
  }

  @Override
  public void of(double[] y, double[] out) {
    geometry(y);
    if (taut) {
      rope.tensions(length, y, passed, missing);
      rope.flows(lengthRate);
    } else {
      rope.loose();
    }
    pulls();
    piece(y, out);
    stems(y, out);
    double lost = 0;
    for (int i = 0; i < legs; i++) {
      out[passed + i] = rope.flow[i];
      out[heats + i] = taut ? rope.heat(i) : 0;
      if (spec.loss() > 0) {
        out[missing + i] = taut ? rope.missingRate(i, y[missing + i]) : 0;
        lost += taut ? rope.lost(i) : 0;
      }
    }
    out[heats + legs] = lost;
  }

  /** Places, speeds and lengths of the legs. */
  void geometry(double[] y) {
    System.arraycopy(y, POSITION, tie, 0, 3);
    System.arraycopy(y, VELOCITY, tieSpeed, 0, 3);
    if (rigid) {
      rotation(y);
      double[] t = spec.tie();
      double wx = y[SPIN];
      double wy = y[SPIN + 1];
      double wz = y[SPIN + 2];
      double vx = wy * t[2] - wz * t[1];
      double vy = wz * t[0] - wx * t[2];
      double vz = wx * t[1] - wy * t[0];
      for (int d = 0; d < 3; d++) {
        tie[d] += turned[3 * d] * t[0] + turned[3 * d + 1] * t[1] + turned[3 * d + 2] * t[2];
        tieSpeed[d] += turned[3 * d] * vx + turned[3 * d + 1] * vy + turned[3 * d + 2] * vz;
      }
    }
    System.arraycopy(spec.place(), 0, place, 0, place.length);
    java.util.Arrays.fill(speed, 0);
    for (int k = 0; k < modes; k++) {
      double[] shape = spec.shape()[k];
      double q = y[MODES + k];
      double v = y[MODES + modes + k];
      for (int d = 0; d < place.length; d++) {
        place[d] += q * shape[d];
        speed[d] += v * shape[d];
      }
    }
    for (int i = 0; i < legs; i++) {
      double sum = 0;
      double rate = 0;
      for (int d = 0; d < 3; d++) {
        double from = i == 0 ? tie[d] : place[3 * i - 3 + d];
        double fromSpeed = i == 0 ? tieSpeed[d] : speed[3 * i - 3 + d];
        double gap = place[3 * i + d] - from;
        direction[3 * i + d] = gap;
        sum += gap * gap;
        rate += gap * (speed[3 * i + d] - fromSpeed);
      }
      double size = Math.sqrt(sum);
      double inverse = size > 1e-12 ? 1 / size : 0;
      length[i] = size;
      lengthRate[i] = rate * inverse;
      for (int d = 0; d < 3; d++) {
        direction[3 * i + d] *= inverse;
      }
    }
  }

  /** Rope that the legs are longer than, where there is no tension, at the last geometry. */
  double freeRun(double[] y) {
    return taut ? 0 : Math.max(0, -rope.slack(length, y, passed));
  }

  /** Forces of the rope on points and end. */
  private void pulls() {
    double[] t = rope.tension;
    for (int i = 0; i < legs; i++) {
      double behind = i + 1 < legs ? t[i + 1] : 0;
      for (int d = 0; d < 3; d++) {
        double next = i + 1 < legs ? direction[3 * i + 3 + d] : 0;
        pull[3 * i + d] = behind * next - t[i] * direction[3 * i + d];
      }
    }
  }

  private void piece(double[] y, double[] out) {
    double t = rope.tension[0];
    for (int d = 0; d < 3; d++) {
      out[POSITION + d] = y[VELOCITY + d];
      out[VELOCITY + d] = t * direction[d] / spec.mass();
    }
    out[VELOCITY + 2] -= spec.gravity();
    if (!rigid) {
      return;
    }
    double w = y[ATTITUDE];
    double x = y[ATTITUDE + 1];
    double yy = y[ATTITUDE + 2];
    double z = y[ATTITUDE + 3];
    double a = y[SPIN];
    double b = y[SPIN + 1];
    double c = y[SPIN + 2];
    out[ATTITUDE] = 0.5 * (-x * a - yy * b - z * c);
    out[ATTITUDE + 1] = 0.5 * (w * a + yy * c - z * b);
    out[ATTITUDE + 2] = 0.5 * (w * b + z * a - x * c);
    out[ATTITUDE + 3] = 0.5 * (w * c + x * b - yy * a);
    // Force of the rope in axes of the body.
    double fx = 0;
    double fy = 0;
    double fz = 0;
    for (int d = 0; d < 3; d++) {
      double f = t * direction[d];
      fx += turned[3 * d] * f;
      fy += turned[3 * d + 1] * f;
      fz += turned[3 * d + 2] * f;
    }
    double[] arm = spec.tie();
    double cross = spec.crossInertia();
    double along = spec.axialInertia();
    out[SPIN] = (arm[1] * fz - arm[2] * fy - (along - cross) * b * c) / cross;
    out[SPIN + 1] = (arm[2] * fx - arm[0] * fz - (cross - along) * a * c) / cross;
    out[SPIN + 2] = (arm[0] * fy - arm[1] * fx) / along;
  }

  private void stems(double[] y, double[] out) {
    double lost = 0;
    for (int k = 0; k < modes; k++) {
      double[] shape = spec.shape()[k];
      double force = 0;
      for (int d = 0; d < pull.length; d++) {
        force += shape[d] * pull[d];
      }
      double w = spec.circularFrequency()[k];
      double v = y[MODES + modes + k];
      double drag = 2 * spec.damping()[k] * w * v;
      out[MODES + k] = v;
      acceleration[k] = force - drag - w * w * y[MODES + k];
      out[MODES + modes + k] = acceleration[k];
      lost += drag * v;
    }
    out[heats + legs + 1] = lost;
  }

  /** Rotation matrix of the attitude, which need not be of unit size. */
  private void rotation(double[] y) {
    double w = y[ATTITUDE];
    double x = y[ATTITUDE + 1];
    double yy = y[ATTITUDE + 2];
    double z = y[ATTITUDE + 3];
    double s = 2 / (w * w + x * x + yy * yy + z * z);
    turned[0] = 1 - s * (yy * yy + z * z);
    turned[1] = s * (x * yy - w * z);
    turned[2] = s * (x * z + w * yy);
    turned[3] = s * (x * yy + w * z);
    turned[4] = 1 - s * (x * x + z * z);
    turned[5] = s * (yy * z - w * x);
    turned[6] = s * (x * z - w * yy);
    turned[7] = s * (yy * z + w * x);
    turned[8] = 1 - s * (x * x + yy * yy);
  }

  /** Energy of motion and height, and what rope and stems store, J, at the last rates. */
  double mechanicalEnergy(double[] y) {
    double sum = 0;
    for (int d = 0; d < 3; d++) {
      sum += 0.5 * spec.mass() * y[VELOCITY + d] * y[VELOCITY + d];
    }
    sum += spec.mass() * spec.gravity() * y[POSITION + 2];
    if (rigid) {
      double a = y[SPIN];
      double b = y[SPIN + 1];
      double c = y[SPIN + 2];
      sum += 0.5 * (spec.crossInertia() * (a * a + b * b) + spec.axialInertia() * c * c);
    }
    return sum;
  }

  /** Energy of motion and of bending in the stems' modes, J. */
  double stemEnergy(double[] y) {
    double sum = 0;
    for (int k = 0; k < modes; k++) {
      double v = y[MODES + modes + k];
      double bent = spec.circularFrequency()[k] * y[MODES + k];
      sum += 0.5 * (v * v + bent * bent);
    }
    return sum;
  }

  /** Energy stored in the rope, J, at the last rates. */
  double ropeEnergy() {
    return taut ? rope.stored() : 0;
  }

  /** All energy that has turned to heat or been taken by the device, J. */
  double lostEnergy(double[] y) {
    double sum = 0;
    for (int i = heats; i < size; i++) {
      sum += y[i];
    }
    return sum;
  }
}
