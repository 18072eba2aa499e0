/**
 * The text of an equation as a tree: read, evaluated, printed as text, LaTeX and MathML.
 *
 * <p>The grammar, from weak to strong:
 *
 * <pre>
 * equation   = name "=" cases with | name "such that" sum "=" sum with
 * with       = [ "with" name "=" sum { "," name "=" sum } ]
 * cases      = sum [ "where" condition { "," sum "where" condition } "," "else" sum ]
 * condition  = sum ( "&lt;" | "&gt;" | "&lt;=" | "&gt;=" | "=" ) sum
 * sum        = [ "-" ] product { ( "+" | "-" ) product } ; x + x^2 + ... + x^n is read as one
 * product    = power { ( "*" | "/" ) power }
 * power      = atom [ "!" | "^" atom ]
 * atom       = number [ "deg" ] | name | function "(" sum { "," sum } ")" | "|" sum "|" | "(" sum ")"
 *            | "sum" "(" name "=" sum "to" sum "," sum ")"
 * </pre>
 *
 * <p>Names that the equation does not define are its symbols; {@code pi} is the number.
 */
@NullMarked
package org.boleline.internal.notation;

import org.jspecify.annotations.NullMarked;
