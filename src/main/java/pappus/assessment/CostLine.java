package pappus.assessment;

import pappus.catalog.Part;

/**
 * One line of what is bought.
 *
 * @param label what it is
 * @param part the part
 * @param pieces how many fly
 * @param fromHand how many of them are at hand
 * @param units selling units to buy
 * @param cents price of them, whole cents; 0 if owned
 * @param owned whether the builder has all of them already
 */
public record CostLine(
    String label, Part part, int pieces, int fromHand, int units, long cents, boolean owned) {}
