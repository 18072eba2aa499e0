package org.boleline.benchmarks;

import static java.util.Objects.requireNonNull;

import java.util.Collections;
import java.util.List;
import java.util.concurrent.TimeUnit;
import javax.measure.quantity.Length;
import org.boleline.drop.CatchInTime;
import org.boleline.drop.FallingPiece;
import org.boleline.drop.LinearStretch;
import org.boleline.drop.RopeLine;
import org.boleline.drop.RopeStretch;
import org.boleline.drop.TimedCatch;
import org.boleline.explain.Source;
import org.boleline.geometry.Vector;
import org.boleline.plan.Plan;
import org.boleline.rope.FrictionRing;
import org.boleline.statics.RigAtRest;
import org.boleline.units.Amounts;
import org.boleline.units.Kind;
import org.jspecify.annotations.Nullable;
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

/** A locked catch over five rings along the curved stem, followed through 5 s. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.SampleTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 5, time = 2)
@Measurement(iterations = 5, time = 2)
@Fork(1)
public class CatchInTimeBenchmark {
  /** Time between samples, in milliseconds; 0 for none. */
  @Param({"0", "5"})
  public int samplingMilliseconds;

  private @Nullable Plan plan;
  private @Nullable CatchInTime piece;

  /** Makes the catch. */
  @Setup
  public void make() {
    Plan five = Rigs.plan(5, 1, 0, false);
    plan = five;
    piece = stated(RigAtRest.of(five, "only").orElseThrow());
  }

  private CatchInTime stated(RigAtRest rig) {
    RopeLine line = RopeLine.over(rig, Collections.nCopies(5, new FrictionRing(0.2)));
    Vector<Length> top = rig.points().get(0);
    double[] at = top.in(Kind.LENGTH);
    CatchInTime.Builder builder =
        CatchInTime.builder(
                FallingPiece.point(
                    Amounts.kilograms(95), Vector.ofSi(Kind.LENGTH, at[0], at[1], at[2] - 1)),
                RopeStretch.forDrop(LinearStretch.of(Amounts.kilonewtons(110)), Source.PLAN),
                line,
                Amounts.metres(2))
            .onStems(rig, 0.03);
    if (samplingMilliseconds > 0) {
      builder.sampled(Amounts.seconds(samplingMilliseconds / 1000.0));
    }
    return builder.build();
  }

  /**
   * Follows the catch.
   *
   * @return what it came to
   */
  @Benchmark
  public TimedCatch follow() {
    return requireNonNull(piece).follow();
  }

  /**
   * Looks at the stem at rest and its modes, and states the catch.
   *
   * @return the frequencies and the catch
   */
  @Benchmark
  public List<Object> state() {
    RigAtRest rig = RigAtRest.of(requireNonNull(plan), "only").orElseThrow();
    return List.of(rig.frequencies("stem 0"), stated(rig));
  }
}
