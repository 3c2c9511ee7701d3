/** Finds the best builds and proves that no other does better. */
@NullMarked
package pappus.search.exact;

import org.jspecify.annotations.NullMarked;
