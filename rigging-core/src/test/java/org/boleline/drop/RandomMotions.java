package org.boleline.drop;

import static org.boleline.units.Amounts.newtons;

import java.util.Iterator;
import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import org.boleline.drop.ReferenceMotion.Given;
import org.boleline.drop.ReferenceMotion.Mode;
import org.boleline.rope.StretchPoint;

/**
 * Catches drawn at random, for the small steps and for whatever is compared with them.
 *
 * <p>A stem of 12 m carries one to five points and the end; the piece hangs beside the uppermost
 * with a slack rope or one that is just taut. Each is drawn from numbers between 0 and 1, so that
 * jqwik can make a failing one plainer: zeros stand for no friction, no speed, a tie at the centre.
 * Invented, as wide as practice and somewhat wider.
 */
final class RandomMotions {
  private static final double STEM = 12;

  /** What is drawn; the numbers are dealt in a fixed order. */
  record Choice(
      int points,
      boolean space,
      int modes,
      ReferenceMotion.Device device,
      int curve,
      boolean whereItLay,
      boolean lossy,
      List<Double> numbers) {}

  private RandomMotions() {}

  /** All of them. */
  static Arbitrary<Given> catches() {
    return choices().map(RandomMotions::given);
  }

  /** Those whose end holds. */
  static Arbitrary<Given> locked() {
    return catches().filter(given -> given.device == ReferenceMotion.Device.LOCKED);
  }

  /** Those that stay in one plane. */
  static Arbitrary<Given> inPlane() {
    return choices().filter(choice -> !choice.space()).map(RandomMotions::given);
  }

  private static Arbitrary<Choice> choices() {
    return Combinators.combine(
            Arbitraries.integers().between(1, 5),
            Arbitraries.of(false, true),
            Arbitraries.integers().between(0, 3),
            Arbitraries.of(ReferenceMotion.Device.class),
            Arbitraries.integers().between(0, 2),
            Arbitraries.of(false, true),
            Arbitraries.of(false, true),
            Arbitraries.doubles().between(0, 1).list().ofSize(60))
        .as(Choice::new);
  }

  /** Deals numbers in ranges. */
  private record Deal(Iterator<Double> numbers) {
    double between(double from, double to) {
      return from + (to - from) * numbers.next();
    }
  }

  static Given given(Choice choice) {
    Deal deal = new Deal(choice.numbers().iterator());
    double sideways = choice.space() ? 1 : 0;
    double mass = deal.between(50, 500);
    double[][] nodes = nodes(choice, deal);
    int points = choice.points();

    // The knot below and beside the uppermost point, the body any way about it.
    double under = deal.between(1.5, 3);
    double aside = deal.between(0.2, 0.8);
    double round = sideways * deal.between(-1.5, 1.5);
    double slack = deal.between(0, 2);
    double[] knot = {
      nodes[0][0] + aside * Math.cos(round),
      nodes[0][1] + aside * Math.sin(round),
      nodes[0][2] - under
    };
    double tilt = deal.between(0, Math.PI / 2);
    double[] axis = {
      Math.sin(tilt) * Math.cos(round), Math.sin(tilt) * Math.sin(round), Math.cos(tilt)
    };
    double half = deal.between(0.5, 2);
    double radius = deal.between(0.1, 0.3);
    double[] tie =
        ReferenceMotion.plus(
            ReferenceMotion.times(half * deal.between(0, 0.9), axis),
            sideways * radius,
            deal.between(0, 1) < 0.5 ? new double[3] : new double[] {0, 1, 0});
    double speed = Math.sqrt(2 * ReferenceMotion.GRAVITY * deal.between(0, 2));
    Given given =
        Given.piece(mass, ReferenceMotion.plus(knot, -1, tie))
            .moving(deal.between(0, 1), sideways * deal.between(-1, 1), -speed)
            .body(
                mass * radius * radius / 2,
                mass * (radius * radius / 4 + half * half / 3),
                axis,
                tie);
    given.name = choice.toString();
    double swing = deal.between(-1, 1);
    given.spin = new double[] {-swing * Math.sin(round), swing * Math.cos(round), 0};

    double[] natural = new double[points + 1];
    double[] from = knot;
    for (int j = 0; j <= points; j++) {
      double[] leg = ReferenceMotion.plus(nodes[j], -1, from);
      natural[j] = ReferenceMotion.size(leg) + (j == 0 ? slack : 0);
      if (j < points) {
        double[] next = ReferenceMotion.plus(nodes[j + 1], -1, nodes[j]);
        double cos =
            ReferenceMotion.dot(leg, next)
                / (ReferenceMotion.size(leg) * ReferenceMotion.size(next));
        double turn = Math.acos(Math.max(-1, Math.min(1, cos)));
        given.over(Math.exp(deal.between(0, 0.4) * turn), nodes[j]);
        from = nodes[j];
      }
    }
    given.to(nodes[points]).rope(curve(choice, deal), natural);
    if (choice.whereItLay()) {
      given.countedWhereItLay(natural);
    }
    // Some hold and some run: from half the weight to eight weights.
    double slip = mass * ReferenceMotion.GRAVITY * deal.between(0.5, 8);
    double delay = deal.between(0, 0.5);
    if (choice.device() == ReferenceMotion.Device.SLIPS) {
      given.slips(slip);
    } else if (choice.device() == ReferenceMotion.Device.BY_HAND) {
      given.byHand(slip, delay);
    }
    given.hysteresis = choice.lossy() ? deal.between(0, 0.6) : 0;
    given.hysteresisStrain = deal.between(0.002, 0.02);
    for (int k = 0; k < choice.modes(); k++) {
      given.mode(mode(nodes, k, sideways, deal));
    }
    return given;
  }

  /** The points from the top of the stem to the end, on both sides of it. */
  private static double[][] nodes(Choice choice, Deal deal) {
    int points = choice.points();
    double top = deal.between(0.7, 1) * STEM;
    double[][] nodes = new double[points + 1][];
    for (int j = 0; j <= points; j++) {
      double height = top * (1 - (j + (j == 0 ? 0 : deal.between(0, 0.5))) / (points + 1));
      nodes[j] =
          new double[] {
            deal.between(-0.4, 0.4) - (j == points ? deal.between(0, 3) : 0),
            choice.space() ? deal.between(-0.4, 0.4) : 0,
            height
          };
    }
    return nodes;
  }

  private static StretchCurve curve(Choice choice, Deal deal) {
    double strength = deal.between(40e3, 120e3);
    double stretch = deal.between(0.02, 0.1);
    return switch (choice.curve()) {
      case 0 -> LinearStretch.of(newtons(0.3 * strength / stretch));
      case 1 ->
          TabulatedStretch.of(
              List.of(
                  StretchPoint.of(newtons(0.1 * strength), 0.45 * stretch),
                  StretchPoint.of(newtons(0.2 * strength), 0.75 * stretch),
                  StretchPoint.of(newtons(0.3 * strength), stretch)));
      default ->
          PowerStretch.of(StretchPoint.of(newtons(0.3 * strength), stretch), deal.between(1, 1.8));
    };
  }

  /** A bending mode: the k-th in its own plane, its movement a power of height. */
  private static Mode mode(double[][] nodes, int k, double sideways, Deal deal) {
    double frequency = 2 * Math.PI * deal.between(0.4, 2) * (1 + 5 * k);
    double modal = deal.between(100, 600);
    double plane = sideways * deal.between(-Math.PI / 2, Math.PI / 2);
    double[][] moves = new double[nodes.length - 1][];
    double[] atEnd = new double[3];
    for (int j = 0; j < nodes.length; j++) {
      double s = nodes[j][2] / STEM;
      double shape = s * s * Math.cos(Math.PI * k * (1 - s)) / Math.sqrt(modal);
      double[] move = {shape * Math.cos(plane), shape * Math.sin(plane), 0};
      if (j < moves.length) {
        moves[j] = move;
      } else {
        atEnd = move;
      }
    }
    return new Mode(frequency, deal.between(0.005, 0.1), moves, atEnd);
  }
}
