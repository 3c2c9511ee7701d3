/**
 * What goes with a part, as text and as a matrix.
 */
@NullMarked
package pappus.answers.match;

import org.jspecify.annotations.NullMarked;
