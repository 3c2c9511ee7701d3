/**
 * What is said of one build: what binds it, how it flies, how sure that is, what a change does to it.
 */
@NullMarked
package pappus.answers.build;

import org.jspecify.annotations.NullMarked;
