/**
 * The one opinion on a build: whether it goes together, what it weighs and costs, how long it flies.
 * Searches, explanations, reports and tests all ask here.
 */
@NullMarked
package pappus.assessment;

import org.jspecify.annotations.NullMarked;
