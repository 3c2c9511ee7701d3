/**
 * Whether parts go together: one class a fit rule, and what goes with a part whatever the scenario.
 */
@NullMarked
package pappus.compatibility;

import org.jspecify.annotations.NullMarked;
