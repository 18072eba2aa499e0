/** Answers rigging plans over HTTP, with a page to change them by hand. */
@NullMarked
package org.boleline.examples.planner;

import org.jspecify.annotations.NullMarked;
