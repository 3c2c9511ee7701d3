/** One class per command: arguments, one call, output, exit code. */
@NullMarked
package pappus.cli;

import org.jspecify.annotations.NullMarked;
