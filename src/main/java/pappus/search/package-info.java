/**
 * The question to a search, its answer, and what every search shares. Knows none of the searches.
 */
@NullMarked
package pappus.search;

import org.jspecify.annotations.NullMarked;
