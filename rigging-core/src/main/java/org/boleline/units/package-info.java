/**
 * Units, amounts and their text form: the only floor that knows the units implementation.
 *
 * <p>Everything above this package speaks {@link javax.measure.Quantity} at its public edge and SI
 * doubles within; {@link org.boleline.units.Si} is the one gateway between the two.
 *
 * <pre>{@code
 * Quantity<Length> reach = Amounts.metres(12.5);
 * Quantity<Force> pull = QuantityText.parse("400 lbf", Kind.FORCE);
 * double newtons = Si.value(pull, Kind.FORCE, "pull");
 * }</pre>
 *
 * <p>Thread-safe: all types are immutable. No unit label of the implementation is set or changed.
 */
@NullMarked
package org.boleline.units;

import org.jspecify.annotations.NullMarked;
