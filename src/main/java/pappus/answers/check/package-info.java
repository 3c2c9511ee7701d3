/** What a check of files, an import and a second look at a ranking came to, as JSON. */
@NullMarked
package pappus.answers.check;

import org.jspecify.annotations.NullMarked;
