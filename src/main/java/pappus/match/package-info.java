/**
 * What goes with a part, whatever the scenario.
 */
@NullMarked
package pappus.match;

import org.jspecify.annotations.NullMarked;
