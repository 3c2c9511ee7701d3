package pappus.assessment;

import java.util.Optional;
import pappus.catalog.Mass;
import pappus.catalog.Part;

/**
 * One line of a mass table.
 *
 * @param label what it is
 * @param part its catalogue part; empty for payload, wire and what is counted at a usual mass
 * @param pieces how many fly
 * @param each mass of one
 * @param grams mass of all, g; below zero for what is cut off or shorter than listed
 * @param doubtGrams one standard deviation of all, g: equal pieces err together
 */
public record MassLine(
    String label, Optional<Part> part, int pieces, Mass each, double grams, double doubtGrams) {}
