/**
 * What the pilot's camera of a build sees past its propellers.
 */
@NullMarked
package pappus.sight;

import org.jspecify.annotations.NullMarked;
