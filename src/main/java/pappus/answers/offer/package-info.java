/**
 * The page for a customer, and what the till needs of it.
 */
@NullMarked
package pappus.answers.offer;

import org.jspecify.annotations.NullMarked;
