/** How far a radio link reaches over flat ground in line of sight. */
@NullMarked
package pappus.physics.link;

import org.jspecify.annotations.NullMarked;
