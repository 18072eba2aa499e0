/** Benchmarks: run them with the jar {@code benchmarks.jar}. */
@NullMarked
package org.boleline.benchmarks;

import org.jspecify.annotations.NullMarked;
