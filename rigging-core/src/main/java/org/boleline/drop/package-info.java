/**
 * Pieces that fall, swing or are caught: what loads rope and points far beyond the weight.
 *
 * <p>A ladder of models, each equal to its neighbours where they overlap: a stop by a constant
 * force ({@link org.boleline.drop.Stop}), an energy balance with one linear spring ({@link
 * org.boleline.drop.LinearCatch}, {@link org.boleline.drop.StandardFall}), and a rope with a
 * stretch curve that slips over points with friction ({@link org.boleline.drop.RopeCatch}), locked
 * or let run.
 *
 * <pre>{@code
 * CatchPath path =
 *     CatchPath.of(metres(2)).over(CatchPoint.of(new FrictionRing(0.2), Turn.HALF), metres(13));
 * RopeStretch rope = RopeStretch.forDrop(LinearStretch.of(kilonewtons(250)), Source.PLAN);
 * Caught caught = RopeCatch.of(kilograms(200), metres(2), rope, path).locked();
 * caught.loads().loadLeg(); // 16.9 kN
 * }</pre>
 *
 * <p>{@link org.boleline.drop.Drops} works out the drops that a plan states.
 *
 * <p>{@link org.boleline.drop.Swing} is a piece released off plumb, {@link
 * org.boleline.drop.CutGeometry} how far one falls that is cut above the point.
 *
 * <p>All but one are energy models: rope without mass and damping, a piece that falls straight;
 * their results list the steps that made them. {@link org.boleline.drop.CatchInTime} follows piece,
 * rope and stems step by step. Tensions are zero or more. Thread-safe: all types but builders are
 * immutable.
 */
@NullMarked
package org.boleline.drop;

import org.jspecify.annotations.NullMarked;
