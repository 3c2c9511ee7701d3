/**
 * The ranking: text, JSON, table and page.
 */
@NullMarked
package pappus.answers.ranking;

import org.jspecify.annotations.NullMarked;
