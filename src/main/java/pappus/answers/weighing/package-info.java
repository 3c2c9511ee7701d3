/**
 * The estimate against scale and flights.
 */
@NullMarked
package pappus.answers.weighing;

import org.jspecify.annotations.NullMarked;
