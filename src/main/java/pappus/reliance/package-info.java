/**
 * Which numbers of a build are not known for sure, and how much of an estimate can be relied on for that.
 */
@NullMarked
package pappus.reliance;

import org.jspecify.annotations.NullMarked;
