package pappus.whatif.relax;

import pappus.part.Role;

/**
 * How many pairs of parts a fit rule sets apart.
 *
 * @param rule its id
 * @param one role of the first parts
 * @param other role of the second ones
 * @param clashes pairs set apart
 * @param pairs of all
 */
public record ClashCount(String rule, Role one, Role other, int clashes, int pairs) {
  /** Share of all pairs. */
  public double share() {
    return (double) clashes / pairs;
  }
}
