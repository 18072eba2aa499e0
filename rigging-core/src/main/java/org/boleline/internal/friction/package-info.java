/**
 * Kernels of rope friction at a contact: static methods on SI doubles, without units and without
 * allocation.
 *
 * <pre>{@code
 * double t = FrictionKernel.ratio(FrictionKernel.ROUND, 0.25, Math.PI); // tight over slack
 * }</pre>
 *
 * <p>Turns in radians, tensions in newtons, lengths in metres. Arguments are not checked: the
 * public types above do that. Thread-safe: no state.
 */
@NullMarked
package org.boleline.internal.friction;

import org.jspecify.annotations.NullMarked;
