/**
 * The question as a Timefold model: the only place that knows that solver.
 */
@NullMarked
package pappus.search.timefold;

import org.jspecify.annotations.NullMarked;
