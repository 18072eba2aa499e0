package org.boleline.working.check;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.TreeMap;
import java.util.function.Function;
import org.boleline.explain.Step;
import org.boleline.units.QuantityText;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Slips planted into calculations by plain arithmetic are found, and numbers off by chance are not
 * blamed on one.
 */
class PlantedSlipsTest {
  private static final int CASES = 10_000;
  private static final Tolerance TOLERANCE = Tolerance.relative(0.005);

  private static final Map<String, String> IN_FEET =
      Map.of(
          "m", "ft", "N", "lbf", "Pa", "psi", "kg", "lb", "N.m", "lbf.ft", "m2", "in2", "m3", "ft3",
          "m4", "in4");

  /** What became of many cases. */
  private static final class Tally {
    private int cases;
    private int found;
    private int blamedWrongly;
    private int amongOthers;

    void count(HandCheck check, Slip planted) {
      cases++;
      boolean named = check.causes().stream().anyMatch(cause -> cause.slip() == planted);
      found += named ? 1 : 0;
      blamedWrongly += !named && !check.causes().isEmpty() ? 1 : 0;
      amongOthers += named && check.causes().size() > 1 ? 1 : 0;
    }

    @Override
    public String toString() {
      return "%d cases, %d found (%d among others), %d blamed wrongly%n"
          .formatted(cases, found, amongOthers, blamedWrongly);
    }
  }

  private static Step step(List<Step> steps, String name) {
    String id = name.replace(Planted.SECOND, "");
    return steps.stream()
        .filter(step -> step.formula().id().equals(id))
        .skip(id.equals(name) ? 0 : 1)
        .findFirst()
        .orElseThrow();
  }

  private static HandCheck check(
      Planted.Sheet sheet, Planted.Plant plant, double wrong, int figures, boolean feet) {
    List<HandStep> steps = new ArrayList<>();
    List<Step> ours = new ArrayList<>(sheet.worksheet.steps());
    for (String name : plant.before()) {
      Step step = step(ours, name);
      ours.remove(step);
      steps.add(written(name, step, step.result(), figures, feet));
    }
    Step last = step(plant.isCounted() ? sheet.worksheet.steps() : ours, plant.name());
    steps.add(written(plant.name(), last, wrong, figures, feet));
    return HandCheck.of(sheet.worksheet, steps, TOLERANCE);
  }

  private static HandStep written(String name, Step step, double value, int figures, boolean feet) {
    String si = step.formula().result().unit();
    // a volume and a section modulus share their SI unit
    boolean volume = step.formula().result().meaning().contains("volume");
    String unit = feet && (!si.equals("m3") || volume) ? IN_FEET.getOrDefault(si, si) : si;
    double factor = unit.equals(si) ? 1 : QuantityText.factor(unit).doubleValue();
    String text = Planted.written(value / factor, unit, figures);
    return HandStep.of(name, text).roundedTo(figures);
  }

  /** Half of the cases in feet and pounds, where the slip itself does not hang on metres. */
  @Test
  void planted_slips_are_found_and_hardly_ever_another_one() {
    SplittableRandom random = new SplittableRandom(7);
    Tally all = new Tally();
    Map<Slip, Tally> bySlip = new EnumMap<>(Slip.class);
    Map<String, Tally> byKind = new TreeMap<>();
    Map<String, Set<Slip>> slips = new TreeMap<>();
    while (all.cases < CASES) {
      for (Map.Entry<String, Function<SplittableRandom, Planted.Sheet>> kind :
          Planted.KINDS.entrySet()) {
        Planted.Sheet sheet = kind.getValue().apply(random);
        for (Planted.Plant plant : sheet.plants) {
          boolean ofUnits = plant.slip() == Slip.CONVERSION || plant.slip() == Slip.WRONG_POWER;
          boolean feet = random.nextBoolean() && !ofUnits;
          int figures = 4 + random.nextInt(2);
          if (!Double.isFinite(plant.wrong())) {
            continue;
          }
          HandCheck check = check(sheet, plant, plant.wrong(), figures, feet);
          if (check.departure().isEmpty()) {
            continue; // the slip makes no difference here
          }
          assertThat(check.departure().get()).isEqualTo(check.rows().get(plant.before().size()));
          all.count(check, plant.slip());
          bySlip.computeIfAbsent(plant.slip(), s -> new Tally()).count(check, plant.slip());
          byKind.computeIfAbsent(kind.getKey(), k -> new Tally()).count(check, plant.slip());
          slips.computeIfAbsent(kind.getKey(), k -> EnumSet.noneOf(Slip.class)).add(plant.slip());
        }
      }
    }
    String report = all + "" + bySlip + byKind;
    assertThat(bySlip.keySet()).isEqualTo(EnumSet.allOf(Slip.class));
    assertThat(byKind.keySet()).isEqualTo(new TreeMap<>(Planted.KINDS).keySet());
    assertThat(slips.values()).allSatisfy(some -> assertThat(some.size()).isGreaterThan(1));
    assertThat(all.found).as(report).isGreaterThanOrEqualTo((int) (0.95 * all.cases));
    assertThat(all.blamedWrongly).as(report).isLessThanOrEqualTo((int) (0.01 * all.cases));
    assertThat(bySlip.values())
        .as(report)
        .allSatisfy(tally -> assertThat(tally.found).isGreaterThan((int) (0.9 * tally.cases)));
  }

  /**
   * A number of unknown cause, anywhere from a tenth to ten times the right one: of ten thousand as
   * many match a slip as CHK-3 tells, to four standard deviations; of four figures, less than one
   * in a hundred.
   */
  @ParameterizedTest
  @CsvSource({"3, 0.02", "4, 0.01", "5, 0.01"})
  void numbers_off_by_chance_match_a_slip_as_rarely_as_told(int figures, double most) {
    SplittableRandom random = new SplittableRandom(11);
    int cases = 0;
    int blamed = 0;
    double told = 0;
    while (cases < CASES) {
      for (Function<SplittableRandom, Planted.Sheet> kind : Planted.KINDS.values()) {
        Planted.Sheet sheet = kind.apply(random);
        for (Planted.Plant plant : sheet.plants) {
          Step step = step(sheet.worksheet.steps(), plant.name());
          double off = step.result() * Math.pow(10, 2 * random.nextDouble() - 1);
          HandCheck check = check(sheet, plant, off, figures, false);
          if (check.departure().isPresent()) {
            cases++;
            blamed += check.causes().isEmpty() ? 0 : 1;
            told += check.byChanceShare();
          }
        }
      }
    }
    assertThat((double) blamed).isCloseTo(told, within(4 * Math.sqrt(told) + 1));
    assertThat(blamed).isLessThanOrEqualTo((int) (most * cases));
  }
}
