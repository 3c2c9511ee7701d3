/**
 * Sweeps, fronts, frames and what stands in the way: sentences, tables and pages.
 */
@NullMarked
package pappus.answers.whatif;

import org.jspecify.annotations.NullMarked;
