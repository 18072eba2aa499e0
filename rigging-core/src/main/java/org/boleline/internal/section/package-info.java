/**
 * Kernels of round sections and tapered logs: static methods on SI doubles, without units and
 * without allocation.
 *
 * <pre>{@code
 * double i = SectionKernel.leastSecondMoment(0.40, 0.28, 0.03); // off-centre cavity, in m4
 * double v = LogKernel.coneFrustum(2.0, 0.45, 0.40); // in m3
 * }</pre>
 *
 * <p>Lengths in metres, angles in radians. Arguments are not checked: the public types above do
 * that. Thread-safe: no state.
 */
@NullMarked
package org.boleline.internal.section;

import org.jspecify.annotations.NullMarked;
