/**
 * Files read once, with what is wrong in them: every problem with file, place and line.
 */
@NullMarked
package pappus.files;

import org.jspecify.annotations.NullMarked;
