/**
 * What is written of builds as JSON, and read back.
 */
@NullMarked
package pappus.answers.result;

import org.jspecify.annotations.NullMarked;
