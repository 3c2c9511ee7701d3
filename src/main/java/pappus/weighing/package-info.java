/**
 * What scale and flights say against the estimate, and what a builder's own folder learns from it.
 */
@NullMarked
package pappus.weighing;

import org.jspecify.annotations.NullMarked;
