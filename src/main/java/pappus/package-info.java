/** The tool as a library: one small entry to reading, ranking, judging and sweeping. */
@NullMarked
package pappus;

import org.jspecify.annotations.NullMarked;
