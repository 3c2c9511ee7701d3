/**
 * Builds as a shop sells them: whole selling units with spares, the shop's prices and tax, what is in stock and what
 * stands in for what is not. Of a shop's stock file it reads ids, stock and prices of sale, and nothing else.
 */
@NullMarked
package pappus.offer;

import org.jspecify.annotations.NullMarked;
