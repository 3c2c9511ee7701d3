/**
 * Mass and stiffness of plates and arms.
 */
@NullMarked
package pappus.physics.structure;

import org.jspecify.annotations.NullMarked;
