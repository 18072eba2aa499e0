/**
 * A piece on a rope over points on stems, step by step in time: SI doubles in, SI doubles out.
 *
 * <p>Arguments are not checked: the public types above do that.
 */
@NullMarked
package org.boleline.internal.motion;

import org.jspecify.annotations.NullMarked;
