/**
 * A build drawn: the plan to scale, and its charts.
 */
@NullMarked
package pappus.answers.drawing;

import org.jspecify.annotations.NullMarked;
