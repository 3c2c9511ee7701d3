/**
 * What parts of a class are like: priors with their deviation, and hard bounds. Each names its source.
 */
@NullMarked
package pappus.evidence.prior;

import org.jspecify.annotations.NullMarked;
