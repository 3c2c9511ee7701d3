/**
 * An order as a Timefold model: a build for each learner.
 */
@NullMarked
package pappus.order.timefold;

import org.jspecify.annotations.NullMarked;
