package org.boleline.benchmarks;

import java.util.concurrent.TimeUnit;
import org.boleline.plan.Plan;
import org.boleline.statics.Solution;
import org.boleline.statics.StaticResult;
import org.boleline.statics.Statics;
import org.boleline.units.Amounts;
import org.boleline.units.Kind;
import org.boleline.units.Si;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import org.openjdk.jmh.infra.Blackhole;

/**
 * What the typed edge costs beside a solve of six contacts: quantities in, when the plan is made
 * and when its numbers are taken out of it, and quantities out, when the result is read.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.SampleTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Warmup(iterations = 5, time = 2)
@Measurement(iterations = 5, time = 2)
@Fork(1)
public class TypedEdgeBenchmark {
  private final Plan plan = Rigs.plan(6, 1, 0, false);
  private final StaticResult result = Statics.analyse(plan);

  /**
   * Solves a plan that was made before.
   *
   * @return the result
   */
  @Benchmark
  public StaticResult analyse() {
    return Statics.analyse(plan);
  }

  /**
   * Makes a plan from quantities and solves it.
   *
   * @return the result
   */
  @Benchmark
  public StaticResult makePlanAndAnalyse() {
    return Statics.analyse(Rigs.plan(6, 1, 0, false));
  }

  /**
   * Makes a plan from quantities.
   *
   * @return the plan
   */
  @Benchmark
  public Plan makePlan() {
    return Rigs.plan(6, 1, 0, false);
  }

  /**
   * Makes the quantities that the plan states and converts each: the typed edge without the plan.
   *
   * @param reader takes them
   */
  @Benchmark
  public void quantitiesIn(Blackhole reader) {
    for (int i = 0; i < 5; i++) {
      reader.consume(Si.value(Amounts.metres(3.0 * i), Kind.LENGTH, "at"));
      reader.consume(Si.value(Amounts.degrees(16.0 + i), Kind.ANGLE, "lean"));
      reader.consume(Si.value(Amounts.degrees(i), Kind.ANGLE, "azimuth"));
      reader.consume(Si.value(Amounts.metres(3.0 * i), Kind.LENGTH, "at"));
      reader.consume(Si.value(Amounts.metres(0.36 - 0.03 * i), Kind.LENGTH, "outer"));
    }
    for (int i = 0; i < 6; i++) {
      reader.consume(Si.value(Amounts.metres(11.5 - i), Kind.LENGTH, "at"));
    }
    reader.consume(Si.value(Amounts.metres(0.8), Kind.LENGTH, "at"));
    reader.consume(Si.value(Amounts.kilograms(95), Kind.MASS, "mass"));
    reader.consume(Si.value(Amounts.gigapascals(8), Kind.PRESSURE, "modulusOfElasticity"));
    reader.consume(Si.value(Amounts.kilogramsPerCubicMetre(990), Kind.DENSITY, "density"));
    reader.consume(
        Si.value(
            Amounts.newtonMetresPerRadian(0.8e6),
            Kind.ROTATIONAL_STIFFNESS,
            "rotationalStiffness"));
  }

  /**
   * Reads the usual quantities of a result.
   *
   * @param reader takes them
   */
  @Benchmark
  public void readResult(Blackhole reader) {
    Solution solution = result.arrangements().get(0).solution().orElseThrow();
    reader.consume(solution.tailTension());
    reader.consume(solution.handTension());
    solution
        .contacts()
        .forEach(
            contact -> {
              reader.consume(contact.turn().angle());
              reader.consume(contact.tensionIn());
              reader.consume(contact.tensionOut());
              reader.consume(contact.forceMagnitude());
              reader.consume(contact.along());
              reader.consume(contact.across());
              reader.consume(contact.movement().magnitude());
            });
    solution
        .stems()
        .forEach(
            stem -> {
              reader.consume(stem.tipMovement().magnitude());
              reader.consume(stem.base().momentMagnitude());
              reader.consume(stem.compressionStress().value());
              reader.consume(stem.compressionStress().at());
            });
  }
}
