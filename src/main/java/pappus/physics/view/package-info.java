/**
 * What a camera between propellers sees.
 */
@NullMarked
package pappus.physics.view;

import org.jspecify.annotations.NullMarked;
