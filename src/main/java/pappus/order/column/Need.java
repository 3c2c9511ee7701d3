package pappus.order.column;

import pappus.order.Ware;

/**
 * What one build takes of a ware for one thing.
 *
 * @param label what it serves as
 * @param pieces that have to be there
 */
public record Need(Ware ware, String label, int pieces) {}
