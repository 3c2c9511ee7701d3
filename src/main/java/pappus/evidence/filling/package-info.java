/**
 * What a record leaves out, filled by what parts of its class have.
 *
 * <p>A seller's page prints a fraction of what a flight depends on. Where a record of a catalogue lacks a field that its
 * class can fill, it is filled right behind the reading, so that search, physics and rules see whole parts; what was
 * filled is listed in the part, and records are written as they were read. A quantity counts half a spread the harmful
 * way: else leaving a fact out would pay.
 */
@NullMarked
package pappus.evidence.filling;

import org.jspecify.annotations.NullMarked;
