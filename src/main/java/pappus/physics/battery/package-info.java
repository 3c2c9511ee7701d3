/**
 * Volts of a cell and a pack under load, its usable charge, and how long a load can be carried.
 */
@NullMarked
package pappus.physics.battery;

import org.jspecify.annotations.NullMarked;
