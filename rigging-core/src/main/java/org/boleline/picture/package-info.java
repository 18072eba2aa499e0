/**
 * Pictures of results, as SVG text: plain drawings that stand alone, print on one page and are read
 * out by a screen reader.
 *
 * <pre>{@code
 * StaticResult result = Statics.analyse(plan);
 * String svg = ForcePicture.of(result, "three rings", PictureSpec.STANDARD).svg();
 * }</pre>
 *
 * <p>Lengths on the sheet are CSS pixels, 96 to the inch; the standard sheet fits A4 and Letter.
 * Places of the site are drawn at the scale that the picture states, by the attributes of its
 * views. The same result and the same wishes give the same text, byte for byte.
 *
 * <p>Thread-safe: all types are immutable.
 */
@NullMarked
package org.boleline.picture;

import org.jspecify.annotations.NullMarked;
