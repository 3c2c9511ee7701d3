/**
 * Air at the place of flight, from the standard atmosphere or with its actual temperature.
 */
@NullMarked
package pappus.physics.atmosphere;

import org.jspecify.annotations.NullMarked;
