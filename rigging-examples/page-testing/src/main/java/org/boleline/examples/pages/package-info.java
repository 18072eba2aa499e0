/** What the examples' tests look at pages with: a real browser, and a validator. */
@NullMarked
package org.boleline.examples.pages;

import org.jspecify.annotations.NullMarked;
