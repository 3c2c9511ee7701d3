/**
 * The bench sheet of a build and the card for its first flights.
 */
@NullMarked
package pappus.answers.sheet;

import org.jspecify.annotations.NullMarked;
