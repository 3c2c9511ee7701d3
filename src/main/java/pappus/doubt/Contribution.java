package pappus.doubt;

/**
 * What one uncertain number does to the endurance.
 *
 * @param source what the number belongs to; the same for two builds that share it
 * @param label in words
 * @param seconds change of endurance at one standard deviation, with its sign; metres of range where that is
 *     the goal
 */
public record Contribution(String source, String label, double seconds) {}
