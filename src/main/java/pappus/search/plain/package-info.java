/** A second, simpler way to the best builds: slow, and easy to follow. */
@NullMarked
package pappus.search.plain;

import org.jspecify.annotations.NullMarked;
