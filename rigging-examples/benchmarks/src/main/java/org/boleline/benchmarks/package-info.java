/**
 * Benchmarks of a solve and of what stands around it.
 *
 * <p>Run them with the jar {@code benchmarks.jar}; what they found is in {@code docs/benchmarks}.
 */
@NullMarked
package org.boleline.benchmarks;

import org.jspecify.annotations.NullMarked;
