/**
 * What can be bought: one record per kind of part, in the units of data sheets, and the build made
 * of them.
 */
@NullMarked
package pappus.catalog;

import org.jspecify.annotations.NullMarked;
