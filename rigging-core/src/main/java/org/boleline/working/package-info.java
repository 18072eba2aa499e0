/**
 * The working behind a number, laid out so that a person can follow it with a pocket calculator.
 *
 * <p>A {@link org.boleline.working.Worksheet} lists the steps that the library itself took: formula
 * with id and source, symbols with meaning and unit, the numbers put in, the result unrounded and
 * rounded, and whether each number lies inside the formula's range. Nothing is calculated a second
 * time for it: a line holds the very {@link org.boleline.explain.Step} that gave the number.
 *
 * <pre>{@code
 * ContactTensions tensions =
 *     ContactTensions.fromTight(new FrictionRing(0.2), Turn.HALF, poundsForce(450));
 * Worksheet sheet = Worksheets.of(tensions).withUnits(UnitSystem.FOOT_POUND);
 * sheet.plainText();
 * }</pre>
 *
 * <p>{@link org.boleline.working.Worksheets} makes worksheets of results. Where a number can be had
 * by a second route, a {@link org.boleline.working.Line.TwoRoutes} shows both with their
 * difference. {@link org.boleline.working.RulesOfThumb} sets rules of the trade beside the model.
 *
 * <p>Steps are in SI; foot-pound units are shown beside them with each conversion. Thread-safe: all
 * types are immutable.
 */
@NullMarked
package org.boleline.working;

import org.jspecify.annotations.NullMarked;
