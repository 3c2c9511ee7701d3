package pappus.search;

import java.util.OptionalLong;

/**
 * How far a search came.
 *
 * @param ending what ended it
 * @param atMost what no build that was not seen surpasses, in units of the objective; empty where nothing is known, or
 *     where builds are ranked by no flight
 * @param looks choices of one part or many that it looked into; 0 for a search that tries changes
 */
public record Proof(Ending ending, OptionalLong atMost, long looks) {

  /** Of a search that tries changes. */
  public static Proof of(Ending ending) {
    return new Proof(ending, OptionalLong.empty(), 0);
  }
}
