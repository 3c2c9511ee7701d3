/**
 * What could take the place of a part.
 */
@NullMarked
package pappus.answers.swap;

import org.jspecify.annotations.NullMarked;
