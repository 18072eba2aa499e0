package org.boleline.benchmarks;

import static java.util.Objects.requireNonNull;

import java.util.List;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.TimeUnit;
import org.boleline.explain.Source;
import org.boleline.study.Figure;
import org.boleline.study.Input;
import org.boleline.study.Range;
import org.boleline.study.RangeResult;
import org.boleline.study.RangeStudy;
import org.boleline.study.RangeWatch;
import org.boleline.study.Reading;
import org.boleline.study.Spread;
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
import org.openjdk.jmh.annotations.TearDown;
import org.openjdk.jmh.annotations.Warmup;

/** A study of ranges: a curved stem with its own weight and rings, five inputs drawn anew. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.SingleShotTime)
@OutputTimeUnit(TimeUnit.SECONDS)
@Warmup(iterations = 1)
@Measurement(iterations = 3)
@Fork(1)
public class RangesBenchmark {
  /** Threads that the host lends. */
  @Param({"1", "2"})
  public int threads;

  /** Number of samples. */
  @Param({"100000"})
  public int samples;

  /** Number of rings. */
  @Param({"6"})
  public int rings;

  private @Nullable RangeStudy study;
  private @Nullable ExecutorService executor;

  /** Makes the study and the threads. */
  @Setup
  public void make() {
    study =
        RangeStudy.of(
                Rigs.plan(rings, 1, 0, false),
                "only",
                List.of(
                    range(
                        Input.pieceMass(),
                        Spread.normal(Figure.of(Amounts.kilograms(95), Kind.MASS), 0.1)),
                    range(
                        Input.modulusOfElasticity(0),
                        Spread.lognormal(Figure.of(Amounts.gigapascals(8), Kind.PRESSURE), 0.2)),
                    range(
                        Input.parse("/stems/0/diameters"),
                        Spread.triangular(
                            Figure.ofRatio(0.95), Figure.ofRatio(1), Figure.ofRatio(1.05))),
                    range(
                        Input.ringFriction(0, 0),
                        Spread.uniform(Figure.ofRatio(0.15), Figure.ofRatio(0.25))),
                    range(
                        Input.deviceFriction(0),
                        Spread.uniform(Figure.ofRatio(0.12), Figure.ofRatio(0.25)))),
                List.of(
                    Reading.loadLeg(),
                    Reading.contactForce(0),
                    Reading.tail(),
                    Reading.baseMoment(0),
                    Reading.tipMovement(0)))
            .withSamples(samples);
    executor = Executors.newFixedThreadPool(threads);
  }

  private static Range range(Input input, Spread spread) {
    return Range.of(input, spread, Source.PLAN);
  }

  /** Ends the threads. */
  @TearDown
  public void end() {
    requireNonNull(executor).shutdown();
  }

  /**
   * Runs the study.
   *
   * @return what it found
   * @throws InterruptedException if it is interrupted
   */
  @Benchmark
  public RangeResult run() throws InterruptedException {
    return requireNonNull(study).run(RangeWatch.NONE, requireNonNull(executor));
  }
}
