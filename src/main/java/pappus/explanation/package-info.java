/**
 * Turns assessments and rankings into sentences. Computes no physics.
 */
@NullMarked
package pappus.explanation;

import org.jspecify.annotations.NullMarked;
