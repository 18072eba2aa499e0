package org.boleline.drop;

import static org.assertj.core.api.Assertions.assertThat;
import static org.boleline.Tolerances.LAID_ROPE;
import static org.boleline.Tolerances.STEPS_OF_RANDOM_CATCHES;
import static org.boleline.Tolerances.absolute;

import java.util.Arrays;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.boleline.drop.ReferenceMotion.Given;

/** Laws that every catch in small steps keeps. */
class RandomMotionsTest {
  @Provide
  Arbitrary<Given> catches() {
    return RandomMotions.catches();
  }

  @Provide
  Arbitrary<Given> inPlane() {
    return RandomMotions.inPlane();
  }

  @Property(tries = 40)
  void the_account_closes_and_no_tension_passes_its_bounds(@ForAll("catches") Given given) {
    ReferenceMotion motion = new ReferenceMotion(given, 2e-5, 1, 1 << 20);

    assertThat(motion.worstGap).isLessThan(STEPS_OF_RANDOM_CATCHES);
    assertThat(motion.worstExcess).isLessThan(LAID_ROPE);
    if (given.hysteresis == 0) {
      // Legs at one tension but with another past differ in stored energy: no law for them.
      assertThat(Arrays.stream(motion.energies().points()).min().orElseThrow())
          .isGreaterThan(-LAID_ROPE);
    }
    assertThat(motion.energies().damping()).isNotNegative();
    assertThat(motion.energies().device()).isNotNegative();
    if (given.device != ReferenceMotion.Device.LOCKED) {
      assertThat(motion.greatestTension[given.points.length])
          .isLessThanOrEqualTo(given.slipTension * (1 + STEPS_OF_RANDOM_CATCHES));
    }
  }

  @Property(tries = 15)
  void half_the_step_leaves_the_first_pull(@ForAll("catches") Given given) {
    ReferenceMotion coarse = new ReferenceMotion(given, 4e-5, 0.7, 1 << 20);
    ReferenceMotion fine = new ReferenceMotion(given, 2e-5, 0.7, 1 << 20);

    // A hand's delay runs from a step that may be late: an error of first order in the step.
    double late = given.device == ReferenceMotion.Device.BY_HAND ? 10 : 2;
    for (int i = 0; i <= given.points.length; i++) {
      assertThat(coarse.greatestTension[i])
          .isCloseTo(
              fine.greatestTension[i],
              absolute(late * STEPS_OF_RANDOM_CATCHES * fine.greatestTension[0]));
    }
  }

  @Property(tries = 10)
  void what_lies_in_a_plane_stays_in_it(@ForAll("inPlane") Given given) {
    ReferenceMotion motion = new ReferenceMotion(given, 1e-4, 1, 100);

    for (ReferenceMotion.Moment moment : motion.moments) {
      assertThat(moment.centre()[1]).isZero();
      assertThat(moment.axis()[1]).isZero();
    }
  }
}
