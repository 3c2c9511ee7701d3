package pappus.answers.sheet;

import pappus.part.Part;

/** How cells of a bench sheet name things. */
final class BenchTable {
  private BenchTable() {}

  /** Name and id, so that it is found on the bench and in the catalogue. */
  static String named(Part part) {
    return part.name() + " [" + part.id() + "]";
  }
}
