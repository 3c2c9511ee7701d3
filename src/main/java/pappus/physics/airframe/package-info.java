/**
 * Weight, drag and the thrust lost to the parts under the propellers.
 */
@NullMarked
package pappus.physics.airframe;

import org.jspecify.annotations.NullMarked;
