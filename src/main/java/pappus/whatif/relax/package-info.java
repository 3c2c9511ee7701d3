/**
 * What stands in the way where nothing is feasible, and the smallest change of each demand that helps.
 */
@NullMarked
package pappus.whatif.relax;

import org.jspecify.annotations.NullMarked;
