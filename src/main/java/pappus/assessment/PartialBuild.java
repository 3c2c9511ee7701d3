package pappus.assessment;

/**
 * What a build only begun weighs and costs, small hardware that follows from it included; what is added adds to it.
 *
 * @param grams sum of the parts and the payload, g; of a frame without a board with the lightest of its heights, where
 *     that is lighter than the frame as listed
 * @param variance of that sum, g²
 * @param cents price of what has to be bought
 * @param pieces that have to be bought, but for small hardware
 * @param watts what everything beside the motors draws at the battery, W; final once every consumer is chosen, and the
 *     video antenna where the power of video follows from how far it must reach, and before that no more
 */
public record PartialBuild(double grams, double variance, long cents, int pieces, double watts) {}
