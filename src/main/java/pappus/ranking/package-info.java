/**
 * Runs a search, gives every candidate its best accessories, and orders the candidates.
 */
@NullMarked
package pappus.ranking;

import org.jspecify.annotations.NullMarked;
