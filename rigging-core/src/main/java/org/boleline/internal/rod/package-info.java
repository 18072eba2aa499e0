/**
 * The bending stem: a slender rod in space, in SI doubles.
 *
 * <p>The unknown is the change of curvature at Gauss points; the shape follows by integrating it
 * upward, and the internal moment follows by adding up, from the top down, what hangs above. Both
 * passes cost as much as the rod has points.
 */
@NullMarked
package org.boleline.internal.rod;

import org.jspecify.annotations.NullMarked;
