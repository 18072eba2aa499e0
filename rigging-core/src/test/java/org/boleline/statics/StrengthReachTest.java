package org.boleline.statics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.boleline.units.Amounts.kilogramsPerCubicMetre;
import static org.boleline.units.Amounts.megapascals;
import static org.boleline.units.Amounts.pascals;

import java.util.Optional;
import net.jqwik.api.Assume;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.domains.Domain;
import net.jqwik.api.domains.DomainContext;
import org.boleline.Tolerances;
import org.boleline.plan.Arrangement;
import org.boleline.rope.FrictionRing;
import org.boleline.stem.ShapeIs;
import org.boleline.stem.Stem;
import org.boleline.wood.WoodProperties;
import org.junit.jupiter.api.Test;

/** The share of the load at which a stem reaches its strength. */
@Domain(LeaningRig.Domain.class)
@Domain(DomainContext.Global.class)
class StrengthReachTest {
  private static Stem.Builder stem(LeaningRig rig, ShapeIs shape, WoodProperties wood) {
    return rig.stem().shapeIs(shape).wood(wood);
  }

  private static WoodProperties.Builder wood() {
    return WoodProperties.builder()
        .modulusOfElasticity(pascals(LeaningRig.MODULUS))
        .density(kilogramsPerCubicMetre(LeaningRig.DENSITY));
  }

  /** A piece of that share of the mass brings the stem to its strength and not beyond. */
  @Property(tries = 60)
  void solved_at_the_load_factor_the_strength_is_reached(
      @ForAll LeaningRig rig,
      @ForAll ShapeIs shape,
      @ForAll @DoubleRange(min = 8, max = 40) double compression,
      @ForAll @DoubleRange(min = 8, max = 40) double bending) {
    WoodProperties wood =
        wood()
            .compressionStrength(megapascals(compression))
            .bendingStrength(megapascals(bending))
            .build();
    Arrangement.Builder arrangement = rig.aside(new FrictionRing(0.2));
    Solution full = Rigs.sound(stem(rig, shape, wood), arrangement, rig.weight());
    Assume.that(full.stems().get(0).strengthReach().isPresent());
    StrengthReach reach = full.stems().get(0).strengthReach().get();
    Assume.that(reach.loadFactor() > 0);
    StemResult there =
        Rigs.sound(stem(rig, shape, wood), arrangement, reach.loadFactor() * rig.weight())
            .stems()
            .get(0);
    double compressed = Rigs.stress(there.compressionStress()) / (1e6 * compression);
    double stretched = Rigs.stress(there.tensionStress()) / (1e6 * bending);
    assertThat(Math.max(compressed, stretched)).isCloseTo(1, within(Tolerances.SOLVED_CASE));
    if (Math.abs(compressed - stretched) > Tolerances.SOLVED_CASE) {
      assertThat(reach.governing())
          .isEqualTo(
              compressed > stretched
                  ? StrengthReach.Governing.COMPRESSION
                  : StrengthReach.Governing.BENDING);
    }
    assertThat(there.strengthReach().orElseThrow().loadFactor())
        .isCloseTo(1, within(Tolerances.SOLVED_CASE));
  }

  @Property(tries = 30)
  void stronger_wood_bears_more(
      @ForAll LeaningRig rig,
      @ForAll @DoubleRange(min = 10, max = 30) double strength,
      @ForAll @DoubleRange(min = 1.05, max = 2) double more) {
    Arrangement.Builder arrangement = rig.over(new FrictionRing(0.2));
    Optional<StrengthReach> weaker = reach(rig, arrangement, strength);
    Optional<StrengthReach> stronger = reach(rig, arrangement, strength * more);
    Assume.that(weaker.isPresent() && stronger.isPresent());
    // where own weight alone is too much for both, both bear none of the load
    Assume.that(stronger.get().loadFactor() > 0);
    assertThat(stronger.get().loadFactor()).isGreaterThan(weaker.get().loadFactor());
  }

  private static Optional<StrengthReach> reach(
      LeaningRig rig, Arrangement.Builder arrangement, double strength) {
    Solution found =
        Rigs.sound(
            rig.stem().wood(wood().compressionStrength(megapascals(strength)).build()),
            arrangement,
            rig.weight());
    return found.stems().get(0).strengthReach();
  }

  @Test
  void without_a_strength_there_is_nothing_to_reach() {
    Solution found =
        Rigs.sound(Rigs.straight(10, 0.5, 0, 0.3, 0.2, Rigs.wood(9e9, 900)), Rigs.ideal(10), 1000);
    assertThat(found.stems().get(0).strengthReach()).isEmpty();
  }

  @Test
  void own_weight_alone_may_reach_it() {
    Solution found =
        Rigs.sound(
            Rigs.straight(20, 0.8, 0, 0.3, 0.3, wood().compressionStrength(megapascals(5)).build())
                .shapeIs(ShapeIs.AS_STANDING),
            Rigs.ideal(20),
            100);
    assertThat(found.stems().get(0).strengthReach().orElseThrow().loadFactor()).isZero();
  }
}
