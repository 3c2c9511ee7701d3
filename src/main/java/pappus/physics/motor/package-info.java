/**
 * Current, volts and heat of a brushless motor under load, and what its speed controller loses at part
 * load.
 */
@NullMarked
package pappus.physics.motor;

import org.jspecify.annotations.NullMarked;
