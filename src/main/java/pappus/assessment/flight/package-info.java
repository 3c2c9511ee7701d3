/**
 * A build as an aircraft: its parts as physics, what they draw and stand, and the flight that a scenario asks for.
 */
@NullMarked
package pappus.assessment.flight;

import org.jspecify.annotations.NullMarked;
