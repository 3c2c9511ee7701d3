package pappus.offer;

import java.util.Optional;
import pappus.change.Swap;
import pappus.part.Role;

/**
 * What is to be done about a part that is short.
 *
 * @param line of the part
 * @param role of it in the build; empty for small things that come along
 * @param swap the best build with another in its place; absent if that is not needed, or none that is in stock keeps
 *     every rule and limit
 * @param totals what the whole build costs after it, and after those before it
 * @param planWith what to plan with after it, seconds or metres
 */
public record StandIn(
    OfferLine line, Optional<Role> role, Optional<Swap> swap, Totals totals, double planWith) {}
