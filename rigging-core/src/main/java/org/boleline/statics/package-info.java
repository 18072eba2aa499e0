/**
 * Slow, steady rigging: rope and bending stems in equilibrium.
 *
 * <p>{@link org.boleline.statics.Statics} takes a plan and gives, for every arrangement, either a
 * stable state with all its forces and movements, or the load at which stability is lost, or the
 * plain admission that the solver gave up. A result can {@linkplain
 * org.boleline.statics.Solution#check() check itself}.
 *
 * <pre>{@code
 * StaticResult result = Statics.analyse(plan);
 * result.arrangements().forEach(a -> System.out.println(a.id() + ": " + a.outcome()));
 * }</pre>
 *
 * <p>Axes are right-handed, z up. Forces "on the stem" are what acts on the stem. Axial force is
 * positive in tension. Thread-safe: all types are immutable, and the analysis keeps no state.
 */
@NullMarked
package org.boleline.statics;

import org.jspecify.annotations.NullMarked;
