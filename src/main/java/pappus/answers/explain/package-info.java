/**
 * Why a build is as it is, why not another part, and builds beside each other.
 */
@NullMarked
package pappus.answers.explain;

import org.jspecify.annotations.NullMarked;
