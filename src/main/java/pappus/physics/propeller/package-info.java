/**
 * Thrust and torque of a propeller standing still, from a measured table or from its geometry.
 */
@NullMarked
package pappus.physics.propeller;

import org.jspecify.annotations.NullMarked;
