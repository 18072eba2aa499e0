/**
 * Kernels of demand against capacity. SI doubles in, SI doubles out.
 *
 * <p>Thread-safe: static methods alone. Not an API.
 */
@NullMarked
package org.boleline.internal.limits;

import org.jspecify.annotations.NullMarked;
