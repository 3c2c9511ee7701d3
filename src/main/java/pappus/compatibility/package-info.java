/**
 * Whether parts go together: places on the frame, screws, rails, ports, and one class per fit rule.
 */
@NullMarked
package pappus.compatibility;

import org.jspecify.annotations.NullMarked;
