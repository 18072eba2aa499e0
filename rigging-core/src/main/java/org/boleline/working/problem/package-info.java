/**
 * Problems to practise on: each with its text, its answer, a worked solution and the wrong answers
 * that slips lead to.
 *
 * <p>A kind, a level and a seed make a {@link org.boleline.working.problem.Problem}; the same three
 * make the same problem. All data are invented.
 *
 * <pre>{@code
 * Problem problem = Problem.of(ProblemKind.FRICTION, Level.SECOND, 42);
 * problem.plainText();             // the question
 * problem.check("484 N").finding();  // "agrees", or how it may have gone wrong
 * problem.solution().plainText();  // the worked solution
 * }</pre>
 *
 * <p>Problems are in SI units; an answer may be given in any unit of its kind. Thread-safe: all
 * types are immutable.
 */
@NullMarked
package org.boleline.working.problem;

import org.jspecify.annotations.NullMarked;
