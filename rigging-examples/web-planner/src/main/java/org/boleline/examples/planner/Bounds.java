package org.boleline.examples.planner;

import java.time.Duration;

/**
 * How much one server takes on.
 *
 * @param bytes greatest size of a request's body
 * @param time how long one request may take to solve
 * @param parallel how many requests are solved at once
 * @param turn how long a request waits for its turn
 */
record Bounds(int bytes, Duration time, int parallel, Duration turn) {
  /** For one machine that serves a few people. */
  static Bounds standard() {
    return new Bounds(
        256 * 1024,
        Duration.ofSeconds(20),
        Math.max(2, Runtime.getRuntime().availableProcessors()),
        Duration.ofSeconds(2));
  }
}
