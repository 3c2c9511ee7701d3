/**
 * What each step of a limit or of a frame's measure brings.
 */
@NullMarked
package pappus.whatif.sweep;

import org.jspecify.annotations.NullMarked;
