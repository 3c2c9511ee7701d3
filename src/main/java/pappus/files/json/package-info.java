/**
 * Strict JSON in, with the line of every error, and deterministic JSON out.
 *
 * <p>Knows records but no parts: which record a file holds is the caller's business.
 */
@NullMarked
package pappus.files.json;

import org.jspecify.annotations.NullMarked;
