/**
 * What can be bought: one record a kind of part, in the units of data sheets, what a part does in a build, and the
 * build made of them.
 */
@NullMarked
package pappus.part;

import org.jspecify.annotations.NullMarked;
