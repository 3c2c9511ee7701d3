/**
 * Whether a part's figures are those of real parts of its size: class laws with their scatter, and
 * hard bounds. Each names its source.
 */
@NullMarked
package pappus.plausibility;

import org.jspecify.annotations.NullMarked;
