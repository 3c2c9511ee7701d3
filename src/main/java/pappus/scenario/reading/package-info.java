/**
 * Scenario files, and what in them contradicts itself or the catalogue.
 */
@NullMarked
package pappus.scenario.reading;

import org.jspecify.annotations.NullMarked;
