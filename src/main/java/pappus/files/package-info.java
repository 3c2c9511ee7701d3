/**
 * Strict JSON in, checked files out, every error with its line.
 *
 * <p>Knows records but no parts: which record a file holds is the caller's business.
 */
@NullMarked
package pappus.files;

import org.jspecify.annotations.NullMarked;
