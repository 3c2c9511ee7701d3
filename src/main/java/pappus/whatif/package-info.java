/**
 * What would be if something asked were otherwise: what stands in the way where nothing is feasible, what each step
 * of a limit brings, what is traded for what.
 */
@NullMarked
package pappus.whatif;

import org.jspecify.annotations.NullMarked;
