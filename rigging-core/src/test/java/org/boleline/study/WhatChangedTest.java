package org.boleline.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.boleline.Tolerances.EXACT;
import static org.boleline.Tolerances.relative;
import static org.boleline.units.Amounts.kilogramsPerMetre;
import static org.boleline.units.Amounts.metres;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.function.UnaryOperator;
import java.util.stream.LongStream;
import org.assertj.core.data.Offset;
import org.boleline.explain.PlanRefusedException;
import org.boleline.json.PlanWriter;
import org.boleline.json.RandomPlan;
import org.boleline.plan.Arrangement;
import org.boleline.plan.Contact;
import org.boleline.plan.Plan;
import org.boleline.plan.Tail;
import org.boleline.rope.FrictionRing;
import org.boleline.rope.Motion;
import org.boleline.rope.Rope;
import org.boleline.rope.Sheave;
import org.boleline.statics.RandomPlans;
import org.junit.jupiter.api.Test;

/** Both ends of a difference are the two arrangements themselves, whatever changed. */
class WhatChangedTest {
  /** Pairs that are analysed; some seeds after these lose stability, and take a minute. */
  private static final int PAIRS = 14;

  /** Pairs of which only the mixed plans are made. */
  private static final int PLANS = 100;

  private static final List<Reading> READINGS =
      List.of(
          Reading.baseMoment(0),
          Reading.contactForce(0),
          Reading.tail(),
          Reading.tipMovement(0),
          Reading.lockedLoadLeg());

  /** The plan of {@link Plans#bending()} with its first arrangement, "a", and another one, "b". */
  private static Plan pair(Arrangement a, Arrangement b) {
    return Plans.bending().toBuilder()
        .rope(Rope.UNSTATED.withLinearDensity(kilogramsPerMetre(0.5)))
        .arrangements(List.of(a, b))
        .build();
  }

  private static Arrangement way(String id, Motion motion, Tail tail, Contact... contacts) {
    return Arrangement.builder(id).motion(motion).contacts(List.of(contacts)).tail(tail).build();
  }

  private static Contact ring(double at) {
    return Contact.of("stem", metres(at), new FrictionRing(0.2));
  }

  /** The changes, of which each adds something to the base moment, and both ends are right. */
  private static List<String> changes(Arrangement a, Arrangement b) {
    Plan plan = pair(a, b);
    WhatChanged.Answer answer = new WhatChanged("a", "b", READINGS).answer(plan);
    checkEnds(answer, plan, plan);
    WhatChanged.Row moment = answer.rows().get(0);
    assertThat(moment.before()).isNotEqualTo(moment.after());
    assertThat(moment.parts()).hasSameSizeAs(answer.changes());
    assertThat(moment.parts()).allSatisfy(part -> assertThat(part.share().si()).isNotZero());
    return answer.changes();
  }

  private static void checkEnds(WhatChanged.Answer answer, Plan before, Plan after) {
    List<Found> first = Reading.values(before, answer.study().from(), READINGS);
    List<Found> second = Reading.values(after, answer.study().to(), READINGS);
    for (int k = 0; k < READINGS.size(); k++) {
      WhatChanged.Row row = answer.rows().get(k);
      assertThat(row.before()).isEqualTo(first.get(k));
      assertThat(row.after()).isEqualTo(second.get(k));
      double difference = row.difference().si();
      if (!Double.isNaN(difference)) {
        double sum = row.parts().stream().mapToDouble(part -> part.share().si()).sum();
        Offset<Double> rounding =
            Offset.offset(EXACT * (Math.abs(row.before().si()) + Math.abs(row.after().si())));
        assertThat(sum).isCloseTo(difference, rounding);
      }
    }
  }

  // One change by itself

  @Test
  void a_point_that_only_moves_explains_all_of_the_difference() {
    assertThat(
            changes(
                way("a", Motion.LOWERING, Tail.Down.DOWN, ring(11)),
                way("b", Motion.LOWERING, Tail.Down.DOWN, ring(8))))
        .containsExactly("positions");
  }

  @Test
  void a_longer_sling_is_a_change_of_position() {
    assertThat(
            changes(
                way("a", Motion.LOWERING, Tail.Down.DOWN, ring(11), ring(4)),
                way(
                    "b",
                    Motion.LOWERING,
                    Tail.Down.DOWN,
                    ring(11),
                    ring(4).withSling(metres(0.5)))))
        .containsExactly("positions");
  }

  @Test
  void a_weight_of_the_rope_behind_a_point_is_a_change() {
    assertThat(
            changes(
                way("a", Motion.LOWERING, Tail.Down.DOWN, ring(11), ring(4)),
                way("b", Motion.LOWERING, Tail.Down.DOWN, ring(11).withRopeWeight(true), ring(4))))
        .containsExactly("positions");
  }

  @Test
  void other_hardware_at_the_same_place_is_a_change_of_friction_alone() {
    assertThat(
            changes(
                way("a", Motion.LOWERING, Tail.Down.DOWN, ring(11)),
                way(
                    "b",
                    Motion.LOWERING,
                    Tail.Down.DOWN,
                    Contact.of("stem", metres(11), new Sheave(0.9)))))
        .containsExactly("friction");
  }

  @Test
  void a_point_that_moves_and_is_exchanged_has_two_changes() {
    assertThat(
            changes(
                way("a", Motion.LOWERING, Tail.Down.DOWN, ring(11)),
                way(
                    "b",
                    Motion.LOWERING,
                    Tail.Down.DOWN,
                    Contact.of("stem", metres(8), new Sheave(0.9)))))
        .containsExactly("positions", "friction");
  }

  @Test
  void another_number_of_points_is_a_change() {
    assertThat(
            changes(
                way("a", Motion.LOWERING, Tail.Down.DOWN, ring(11)),
                way("b", Motion.RAISING, Tail.Down.DOWN, ring(11), ring(6), ring(3))))
        .containsExactly("motion", "number of points");
  }

  @Test
  void a_device_that_moves_is_another_place_of_the_tail_and_its_wraps_are_not() {
    Tail.Device low = Tail.Device.of("stem", metres(1), 0.2, 1.5);
    Tail.Device high = Tail.Device.of("stem", metres(3), 0.2, 1.5).withOffset(metres(0.2));
    assertThat(
            changes(
                way("a", Motion.LOWERING, low, ring(11)),
                way("b", Motion.LOWERING, high, ring(11))))
        .containsExactly("place of tail");
    assertThat(
            changes(
                way("a", Motion.LOWERING, Tail.Down.DOWN, ring(11)),
                way("b", Motion.LOWERING, high, ring(11))))
        .containsExactly("place of tail");
  }

  @Test
  void other_wraps_alone_are_a_change_of_the_friction_of_the_device() {
    Plan plan =
        pair(
            way("a", Motion.LOWERING, Tail.Device.of("stem", metres(1), 0.2, 1.5), ring(11)),
            way("b", Motion.LOWERING, Tail.Device.of("stem", metres(1), 0.2, 3), ring(11)));
    WhatChanged.Answer answer = new WhatChanged("a", "b", List.of(Reading.hand())).answer(plan);
    assertThat(answer.changes()).containsExactly("device friction");
    WhatChanged.Row hand = answer.rows().get(0);
    assertThat(hand.before()).isEqualTo(Reading.hand().value(plan, "a"));
    assertThat(hand.after()).isEqualTo(Reading.hand().value(plan, "b"));
    assertThat(hand.after().si())
        .isCloseTo(hand.before().si() * Math.exp(-0.2 * 2 * Math.PI * 1.5), relative(EXACT));
  }

  @Test
  void what_no_reading_depends_on_is_no_change() {
    Contact stated = ring(11).withOpens(true).withSling(metres(0)).withOffset(metres(0));
    Plan plan =
        pair(
            way("a", Motion.LOWERING, Tail.Down.DOWN, ring(11)),
            way("b", Motion.LOWERING, Tail.Down.DOWN, stated));
    assertThat(new WhatChanged("a", "b", READINGS).answer(plan).changes()).isEmpty();
  }

  // Many at once

  @Test
  void both_ends_of_random_changes_are_the_two_arrangements_themselves() {
    List<WhatChanged.Answer> answers =
        LongStream.range(0, PAIRS)
            .parallel()
            .boxed()
            .flatMap(seed -> randomPair(seed).stream())
            .map(
                pair -> {
                  WhatChanged.Answer answer = new WhatChanged("a", "b", READINGS).answer(pair);
                  checkEnds(answer, pair, pair);
                  return answer;
                })
            .toList();
    long split =
        answers.stream()
            .flatMap(answer -> answer.rows().stream().limit(1))
            .filter(moment -> moment.parts().stream().anyMatch(part -> part.share().si() != 0))
            .count();
    assertThat(answers).hasSizeGreaterThan(PAIRS * 9 / 10);
    assertThat(split).isGreaterThan(PAIRS / 2);
  }

  /** A random plan with two arrangements; empty if two points meet, or the stem is too short. */
  private static Optional<Plan> randomPair(long seed) {
    Plan plan = RandomPlans.of(seed);
    Arrangement a = plan.arrangements().get(0).toBuilder().id("a").build();
    try {
      Arrangement b = changed(a, new SplittableRandom(seed));
      return Optional.of(plan.toBuilder().arrangements(List.of(a, b)).build());
    } catch (PlanRefusedException e) {
      return Optional.empty();
    }
  }

  /** The same with one or two changes. */
  private static Arrangement changed(Arrangement a, SplittableRandom random) {
    List<UnaryOperator<Contact>> each =
        List.of(
            c -> Contact.of(c.stem(), c.at().multiply(0.9), c.hardware()).withSling(c.sling()),
            c -> c.withSling(metres(0.3)),
            c -> c.withOffset(metres(0.2)),
            c -> Contact.of(c.stem(), c.at(), new Sheave(0.9)).withSling(c.sling()));
    Arrangement.Builder b = a.toBuilder().id("b");
    List<Contact> contacts = new ArrayList<>(a.contacts());
    int which = random.nextInt(contacts.size());
    contacts.set(which, each.get(random.nextInt(each.size())).apply(contacts.get(which)));
    int more = random.nextInt(3);
    if (more == 1) {
      contacts.add(ring(0.5 + random.nextDouble()).withSling(metres(0.1)));
    }
    if (more == 2) {
      b.tail(Tail.Device.of("stem 0", metres(0.4), 0.2, random.nextInt(4)));
    }
    contacts.replaceAll(c -> c.stem().equals("stem") ? on("stem 0", c) : c);
    return b.contacts(contacts).build();
  }

  private static Contact on(String stem, Contact c) {
    return Contact.of(stem, c.at(), c.hardware()).withSling(c.sling());
  }

  @Test
  void all_changes_between_two_random_plans_lead_from_the_one_to_the_other() {
    LongStream.range(0, PLANS)
        .parallel()
        .forEach(
            seed -> {
              Plan before = RandomPlan.of(2 * seed);
              Plan after = RandomPlan.of(2 * seed + 1);
              Arrangement a = before.arrangements().get(0);
              Arrangement b = after.arrangements().get(after.arrangements().size() - 1);
              MixedPlans mixed = new MixedPlans(before, a, after, b);
              int all = (1 << mixed.changes().size()) - 1;
              assertThat(mixed.changes()).hasSizeGreaterThan(2);
              assertThat(text(mixed, 0)).isEqualTo(text(new MixedPlans(before, a, before, a), 0));
              assertThat(text(mixed, all)).isEqualTo(text(new MixedPlans(after, b, after, b), 0));
            });
  }

  private static String text(MixedPlans mixed, int made) {
    try {
      return PlanWriter.write(mixed.plan(made));
    } catch (PlanRefusedException e) {
      return e.getMessage();
    }
  }
}
