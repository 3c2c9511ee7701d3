package pappus.compatibility;

import pappus.fitting.Discs;
import pappus.part.Frame;

/** What is said of things near to the propeller discs. */
final class TooNear {
  private TooNear() {}

  /** Says that something is too near to the discs, or in them. */
  static Verdict toDiscs(String what, double clearanceMillimetres, Frame frame) {
    return clearanceMillimetres < 0
        ? Verdict.clashes(
            "%s reaches %s mm into the propeller discs on frame %s, but must stay %s mm clear.",
            what, -clearanceMillimetres, frame.id(), Discs.LEAST_MM)
        : Verdict.clashes(
            "%s comes within %s mm of the propellers on frame %s, but must stay %s mm clear.",
            what, clearanceMillimetres, frame.id(), Discs.LEAST_MM);
  }
}
