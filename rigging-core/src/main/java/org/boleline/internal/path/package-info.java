/**
 * The rope's path through points on slings, with friction, for given attachments; in SI doubles.
 */
@NullMarked
package org.boleline.internal.path;

import org.jspecify.annotations.NullMarked;
