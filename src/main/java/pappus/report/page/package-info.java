/** Pages of one file each: no network, readable on a phone and on paper, with a table beside every chart. */
@NullMarked
package pappus.report.page;

import org.jspecify.annotations.NullMarked;
