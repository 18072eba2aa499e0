/**
 * Plan files and result files: the only package that reads or writes, and that needs a JSON parser.
 *
 * <pre>{@code
 * Plan plan = PlanReader.read(Path.of("hornbeam.json"));
 * String again = PlanWriter.write(plan); // reads back to an equal plan
 * }</pre>
 *
 * <p>Plan files state quantities as text with a unit, such as {@code "36 cm"}; results give numbers
 * with the UCUM code of their SI unit, angles in degrees. Numbers have a decimal point and the
 * fewest digits that read back to the same double; text is UTF-8; lines end with a line feed.
 *
 * <p>Thread-safe: the public types hold no state.
 */
@NullMarked
package org.boleline.json;

import org.jspecify.annotations.NullMarked;
