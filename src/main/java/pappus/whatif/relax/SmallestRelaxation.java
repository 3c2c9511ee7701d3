package pappus.whatif.relax;

import pappus.assessment.Assessment;

/**
 * A change that makes a build possible by itself.
 *
 * @param demand what is changed
 * @param from what was asked, with its unit; empty where it is given up whole
 * @param to what is asked after it; empty where it is given up whole
 * @param build the best build then
 * @param isBest whether it is proven that no build then is better
 * @param isLeast whether it is proven that no smaller change does
 */
public record SmallestRelaxation(
    Demand demand, String from, String to, Assessment build, boolean isBest, boolean isLeast) {}
