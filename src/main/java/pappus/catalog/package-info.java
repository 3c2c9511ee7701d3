/**
 * Catalogue folders: read, merged by id, with what somebody counted of the parts.
 */
@NullMarked
package pappus.catalog;

import org.jspecify.annotations.NullMarked;
