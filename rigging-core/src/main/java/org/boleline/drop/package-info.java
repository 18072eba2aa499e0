/**
 * Pieces that fall, swing or are caught: what loads the rope far beyond the weight.
 *
 * <pre>{@code
 * Swing swing = Swing.of(Amounts.kilograms(120), Amounts.metres(6), Amounts.degrees(60));
 * swing.greatestTension(); // 2 times the weight, at the bottom
 * }</pre>
 *
 * <p>z is up; tensions are zero or more. Every result lists the steps that made it. Thread-safe:
 * all types are immutable.
 */
@NullMarked
package org.boleline.drop;

import org.jspecify.annotations.NullMarked;
