package org.boleline.examples.planner;

import java.util.Map;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.Semaphore;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;

/**
 * Solves so many plans at once and no more, each for so long and no longer.
 *
 * <p>The library's solvers cannot be stopped half way. A solve that is given up therefore keeps its
 * place until it ends: the number of threads at work stays within the bounds.
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

  /**
   * Returns what the work gives.
   *
   * @throws Problem if there is no place, or the work takes too long
   */
  <T> T run(Callable<T> work) throws Problem {
    try {
      if (!places.tryAcquire(bounds.turn().toMillis(), TimeUnit.MILLISECONDS)) {
        throw Problem.named(
            503,
            "busy",
            "All places are taken",
            "The server solves " + bounds.parallel() + " plans at once. Ask again.",
            LATER);
      }
      Future<T> result = submit(work);
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
      throw new IllegalStateException("solving", e.getCause());
    }
  }

  private <T> Future<T> submit(Callable<T> work) {
    boolean taken = false;
    try {
      Future<T> result =
          workers.submit(
              () -> {
                try {
                  return work.call();
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
