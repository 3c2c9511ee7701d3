/**
 * Turns results into text and JSON.
 */
@NullMarked
package pappus.report;

import org.jspecify.annotations.NullMarked;
