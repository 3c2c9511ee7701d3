/** A spreadsheet's rows as records: columns by their titles, units, and cells named by row and column. */
@NullMarked
package pappus.spreadsheet;

import org.jspecify.annotations.NullMarked;
