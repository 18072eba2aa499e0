/**
 * Questions asked of a solved plan: what changed it, why, how it moves with an input, how big, how
 * far, where.
 *
 * <p>A study evaluates a plan many times. An {@link org.boleline.study.Input} is a number of a plan
 * that can be replaced, a {@link org.boleline.study.Reading} a number of a result; both have the
 * names that plan and result files give them. Every answer is a number or a reason why there is
 * none ({@link org.boleline.study.Found}).
 *
 * <pre>{@code
 * Input mass = Input.pieceMass();
 * Reading moment = Reading.parse("/stems/0/base/momentMagnitude");
 * Plan heavier = mass.with(plan, Figure.of(kilograms(250), Kind.MASS));
 * Found found = moment.value(Evaluation.of(heavier, "one ring"));
 * }</pre>
 *
 * <p>Studies evaluate slow motion, and the energy balance of drops where a reading is of a drop. SI
 * units throughout; pure numbers are ratios. Thread-safe: all types are immutable.
 */
@NullMarked
package org.boleline.study;

import org.jspecify.annotations.NullMarked;
