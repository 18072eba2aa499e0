/**
 * Equations as objects, data with their sources, cautions and refusals.
 *
 * <p>A {@link org.boleline.explain.Formula} holds its text, symbols, units, range, source and code
 * in one place, so that a number and its explanation cannot part:
 *
 * <pre>{@code
 * double slack = FrictionFormulas.FIXED_ROUND_SLACK.value(1800, 0.25, 2.094);
 * Step step = FrictionFormulas.FIXED_ROUND_SLACK.step(1800, 0.25, 2.094); // same code, same bits
 * }</pre>
 *
 * <p>Numbers in formulas are in the unit their symbol names. Thread-safe: all types are immutable.
 */
@NullMarked
package org.boleline.explain;

import org.jspecify.annotations.NullMarked;
