/**
 * Plans an order: meets builds, chooses among them, and says how far from the best it may be.
 */
@NullMarked
package pappus.order.plan;

import org.jspecify.annotations.NullMarked;
