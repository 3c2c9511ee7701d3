/**
 * How sure the endurance is, and which numbers make it unsure.
 */
@NullMarked
package pappus.doubt;

import org.jspecify.annotations.NullMarked;
