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

/** One arrangement with six contacts on one stem, from plan to result: the median counts. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.SampleTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Warmup(iterations = 5, time = 2)
@Measurement(iterations = 5, time = 2)
@Fork(1)
public class SolveBenchmark {
  /**
   * The stem and the rig: straight, clamped and without own weight; or curved like the demo's, with
   * own weight and a root that turns, and then with slings, and with a stated strength, so that the
   * load that reaches it is searched for as well.
   */
  @Param({"straight", "curved", "curved slings", "curved strength", "curved slings strength"})
  public String rig = "straight";

  private Plan plan = Rigs.straight(6);

  /** Makes the plan. */
  @Setup
  public void plan() {
    plan =
        rig.equals("straight")
            ? Rigs.straight(6)
            : Rigs.plan(6, 1, rig.contains("slings") ? 0.2 : 0, rig.contains("strength"));
  }

  /**
   * Solves.
   *
   * @return the result
   */
  @Benchmark
  public StaticResult sixContacts() {
    return Statics.analyse(plan);
  }
}
