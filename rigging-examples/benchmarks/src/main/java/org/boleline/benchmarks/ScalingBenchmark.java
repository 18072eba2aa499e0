package org.boleline.benchmarks;

import java.util.concurrent.TimeUnit;
import org.boleline.plan.Plan;
import org.boleline.statics.StaticResult;
import org.boleline.statics.Statics;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** How the cost of a solve grows with contacts and stems. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.SampleTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Warmup(iterations = 6, time = 1)
@Measurement(iterations = 3, time = 1)
@Fork(1)
public class ScalingBenchmark {
  /** Number of contacts. */
  @Param({"1", "3", "6", "12", "24"})
  public int contacts;

  /** Number of stems that they are dealt out to. */
  @Param({"1", "2", "3", "4"})
  public int stems;

  private Plan plan = Rigs.plan(1, 1, 0, false);

  /** Makes the plan. */
  @Setup
  public void plan() {
    plan = Rigs.plan(contacts, stems, 0, false);
  }

  /**
   * Solves.
   *
   * @return the result
   */
  @Benchmark
  public StaticResult solve() {
    return Statics.analyse(plan);
  }
}
