/**
 * Rope and bending stems together: the loading path, its stability and its solution, in SI doubles.
 */
@NullMarked
package org.boleline.internal.coupled;

import org.jspecify.annotations.NullMarked;
