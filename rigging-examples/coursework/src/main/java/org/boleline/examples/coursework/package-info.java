/** Problem sheets on the mechanics of tree rigging, and checks of what comes back. */
@NullMarked
package org.boleline.examples.coursework;

import org.jspecify.annotations.NullMarked;
