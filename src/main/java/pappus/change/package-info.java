/**
 * What one change does to a build: another part, a gram, a watt.
 *
 * <p>Everything is assessed anew; nothing is estimated by a rate taken elsewhere.
 */
@NullMarked
package pappus.change;

import org.jspecify.annotations.NullMarked;
