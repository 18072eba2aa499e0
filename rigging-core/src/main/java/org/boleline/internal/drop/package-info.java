/**
 * Kernels of falling, swinging and caught pieces: SI doubles in, SI doubles out, without units.
 *
 * <p>Arguments are not checked: the public types above do that. Thread-safe: no state.
 */
@NullMarked
package org.boleline.internal.drop;

import org.jspecify.annotations.NullMarked;
