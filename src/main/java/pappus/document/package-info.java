/**
 * What any answer is written with: tables, wrapped lines, numbers as a person reads them, CSV, Markdown, charts, pages
 * of one file each. Knows no aircraft.
 */
@NullMarked
package pappus.document;

import org.jspecify.annotations.NullMarked;
