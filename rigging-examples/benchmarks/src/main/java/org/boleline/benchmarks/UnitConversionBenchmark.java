package org.boleline.benchmarks;

import java.util.concurrent.TimeUnit;
import javax.measure.Quantity;
import javax.measure.Unit;
import javax.measure.quantity.Length;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import tech.units.indriya.quantity.Quantities;
import tech.units.indriya.unit.Units;

/** What one typed conversion costs, against the plain arithmetic within a solve. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.NANOSECONDS)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(1)
public class UnitConversionBenchmark {
  private final Unit<Length> foot = Units.METRE.multiply(3048).divide(10000);
  private double feet = 40;

  /**
   * Converts a length by its unit.
   *
   * @return metres
   */
  @Benchmark
  public double typed() {
    Quantity<Length> length = Quantities.getQuantity(feet, foot);
    return length.to(Units.METRE).getValue().doubleValue();
  }

  /**
   * Converts a length by its factor.
   *
   * @return metres
   */
  @Benchmark
  public double plain() {
    return feet * 0.3048;
  }
}
