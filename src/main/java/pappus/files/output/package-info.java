/**
 * Files put in their place whole or not at all, and nobody else's replaced.
 */
@NullMarked
package pappus.files.output;

import org.jspecify.annotations.NullMarked;
