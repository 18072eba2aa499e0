package org.boleline.benchmarks;

import static java.util.Objects.requireNonNull;

import java.util.List;
import java.util.concurrent.TimeUnit;
import org.boleline.drop.CatchPath;
import org.boleline.drop.CatchPoint;
import org.boleline.drop.Caught;
import org.boleline.drop.LinearStretch;
import org.boleline.drop.RopeCatch;
import org.boleline.drop.RopeStretch;
import org.boleline.drop.StretchCurve;
import org.boleline.drop.TabulatedStretch;
import org.boleline.explain.Source;
import org.boleline.geometry.Turn;
import org.boleline.rope.FrictionRing;
import org.boleline.rope.StretchPoint;
import org.boleline.units.Amounts;
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

/** A locked catch by energy balance: peak, every leg and point, energy account, steps, cautions. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.SampleTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Warmup(iterations = 5, time = 2)
@Measurement(iterations = 5, time = 2)
@Fork(1)
public class CatchBenchmark {
  /** Stretch curve of the rope. */
  @Param({"linear", "tabulated"})
  public String curve = "linear";

  /** Number of points that the rope runs over. */
  @Param({"1", "5"})
  public int points;

  /** Whether rope is counted where it is. */
  @Param("false")
  public boolean passing;

  private @Nullable RopeCatch piece;

  /** Makes the catch. */
  @Setup
  public void make() {
    StretchCurve stretch =
        curve.equals("linear")
            ? LinearStretch.of(Amounts.kilonewtons(180))
            : TabulatedStretch.of(
                List.of(
                    StretchPoint.of(Amounts.kilonewtons(4), 0.03),
                    StretchPoint.of(Amounts.kilonewtons(11), 0.05),
                    StretchPoint.of(Amounts.kilonewtons(40), 0.1)));
    CatchPath path = CatchPath.of(Amounts.metres(3));
    for (int i = 0; i < points; i++) {
      path =
          path.over(
              CatchPoint.of(
                  new FrictionRing(0.1 + 0.02 * i), Turn.of(Amounts.degrees(150 - 20 * i))),
              Amounts.metres(4 - 0.5 * i));
    }
    piece =
        RopeCatch.of(
                Amounts.kilograms(200),
                Amounts.metres(2),
                RopeStretch.forDrop(stretch, Source.PLAN),
                path)
            .withPassingRope(passing);
  }

  /**
   * Catches the piece.
   *
   * @return the catch
   */
  @Benchmark
  public Caught locked() {
    return requireNonNull(piece).locked();
  }
}
