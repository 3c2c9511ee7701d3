/**
 * Hover, endurance, full throttle and forward flight: brings propeller, motor, battery and airframe to
 * balance. The only physics package that sees its siblings.
 */
@NullMarked
package pappus.physics.flight;

import org.jspecify.annotations.NullMarked;
