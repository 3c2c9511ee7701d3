/**
 * An order as one choice of a build for each learner: what it takes, costs and is worth, and simple ways to one.
 */
@NullMarked
package pappus.order.choice;

import org.jspecify.annotations.NullMarked;
