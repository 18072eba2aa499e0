/**
 * Kernels of studies by samples: low-discrepancy points, inverse distributions, order statistics,
 * shares of variance.
 *
 * <pre>{@code
 * SobolPoints points = SobolPoints.of(3, 1L);       // three inputs, seed 1
 * double u = points.at(4095, 2, 0);                 // point 4095, third input, first scramble
 * double x = 8e9 + 2e9 * NormalKernel.quantile(u);
 * }</pre>
 *
 * <p>Every number follows from seed and index alone, so threads and order change nothing. Arguments
 * are not checked: the public types above do that. Thread-safe: no state that changes.
 */
@NullMarked
package org.boleline.internal.sampling;

import org.jspecify.annotations.NullMarked;
