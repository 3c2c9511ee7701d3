/**
 * Builds that an order may give to a learner, and bounds on what any order can reach: a linear program over them puts
 * prices on what is scarce, the exact search answers which builds are worth most at those prices.
 *
 * <p>Why: src/site/markdown/decisions.md#one-search-prices-every-order
 */
@NullMarked
package pappus.order.column;

import org.jspecify.annotations.NullMarked;
