package org.boleline.benchmarks;

import java.util.concurrent.TimeUnit;
import org.boleline.json.PlanReader;
import org.boleline.json.PlanWriter;
import org.boleline.json.ResultWriter;
import org.boleline.plan.Plan;
import org.boleline.statics.StaticResult;
import org.boleline.statics.Statics;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** Plan files and result files, of one arrangement with six contacts on one stem. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.SampleTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 3, time = 1)
@Fork(1)
public class FilesBenchmark {
  private final Plan plan = Rigs.plan(6, 1, 0.2, true);
  private final String text = PlanWriter.write(plan);
  private final StaticResult result = Statics.analyse(plan);

  /**
   * Reads a plan.
   *
   * @return the plan
   */
  @Benchmark
  public Plan readPlan() {
    return PlanReader.read(text);
  }

  /**
   * Writes a plan.
   *
   * @return the text
   */
  @Benchmark
  public String writePlan() {
    return PlanWriter.write(plan);
  }

  /**
   * Writes a result.
   *
   * @return the text
   */
  @Benchmark
  public String writeResult() {
    return ResultWriter.write(result);
  }
}
