/**
 * What a frame's drawing tells of its mass and of its arms.
 */
@NullMarked
package pappus.structure;

import org.jspecify.annotations.NullMarked;
