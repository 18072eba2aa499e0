package org.boleline.examples.planner;

import java.util.Map;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.Semaphore;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.function.BooleanSupplier;
import org.boleline.explain.PlanRefusedException;

/**
 * Solves so many plans at once and no more, each for so long and no longer.
 *
 * <p>A solve that is given up is told so and ends at its next look. Until then it keeps its place:
 * the number of threads at work stays within the bounds.
 */
final class Solves implements AutoCloseable {
  private static final Map<String, String> LATER = Map.of("Retry-After", "2");

  private final Bounds bounds;
  private final Semaphore places;
  private final ExecutorService workers =
      Executors.newCachedThreadPool(
          work -> {
            Thread thread = new Thread(work, "solve");
            thread.setDaemon(true);
            return thread;
          });

  Solves(Bounds bounds) {
    this.bounds = bounds;
    places = new Semaphore(bounds.parallel(), true);
  }

  /** Something to work out that looks now and then whether it is still wanted. */
  @FunctionalInterface
  interface Work<T> {
    T run(BooleanSupplier givenUp) throws Exception;
  }

  /**
   * Returns what the work gives.
   *
   * @throws Problem if there is no place, the work takes too long, or it refuses the plan
   */
  <T> T run(Work<T> work) throws Problem {
    AtomicBoolean givenUp = new AtomicBoolean();
    try {
      if (!places.tryAcquire(bounds.turn().toMillis(), TimeUnit.MILLISECONDS)) {
        throw Problem.named(
            503,
            "busy",
            "All places are taken",
            "The server solves " + bounds.parallel() + " plans at once. Ask again.",
            LATER);
      }
      Future<T> result = submit(work, givenUp::get);
      return result.get(bounds.time().toMillis(), TimeUnit.MILLISECONDS);
    } catch (TimeoutException e) {
      throw Problem.named(
          503,
          "too-long",
          "The plan takes too long",
          "The server gives a plan "
              + bounds.time().toMillis()
              + " ms. Send fewer arrangements or drops.",
          LATER);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw Problem.of(503, "The server stops", "Ask again later.", LATER);
    } catch (ExecutionException e) {
      if (e.getCause() instanceof PlanRefusedException) {
        throw Problem.of((PlanRefusedException) e.getCause());
      }
      throw new IllegalStateException("solving", e.getCause());
    } finally {
      givenUp.set(true);
    }
  }

  private <T> Future<T> submit(Work<T> work, BooleanSupplier givenUp) {
    boolean taken = false;
    try {
      Future<T> result =
          workers.submit(
              () -> {
                try {
                  return work.run(givenUp);
                } finally {
                  places.release();
                }
              });
      taken = true;
      return result;
    } finally {
      if (!taken) {
        places.release();
      }
    }
  }

  @Override
  public void close() {
    workers.shutdownNow();
  }
}
