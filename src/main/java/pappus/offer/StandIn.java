package pappus.offer;

import java.util.Optional;
import pappus.catalog.Part;
import pappus.catalog.Role;
import pappus.change.Swap;

/**
 * What takes the place of a part that is out of stock.
 *
 * @param role of both
 * @param out the part that is short
 * @param swap the best build with another in its place; absent if none that is in stock keeps every rule and limit
 * @param inStock selling units there are of what is short
 * @param totals what the whole build costs after it, and after those before it
 * @param planWith what to plan with after it, seconds or metres; 0 without a swap
 */
public record StandIn(
    Role role, Part out, Optional<Swap> swap, int inStock, Totals totals, double planWith) {}
