/** Compares the arrangements of a rigging plan on the command line. */
@NullMarked
package org.boleline.examples.compare;

import org.jspecify.annotations.NullMarked;
