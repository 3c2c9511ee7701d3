package pappus.order.column;

import pappus.order.OrderInputs;
import pappus.order.Ware;
import pappus.part.Role;

/** What spares take of wares beside what builds take, as far as it holds for every order. */
final class Charges {
  /** More pieces of one part than any build has. */
  private static final int MOST_PIECES = 64;

  private final OrderInputs inputs;

  Charges(OrderInputs inputs) {
    this.inputs = inputs;
  }

  /** Pieces that are bought once if a ware is used at all; 0 where it differs what uses mean. */
  int once(Ware ware) {
    var pieces = 0;
    for (var spare : inputs.order().sparesOrNone()) {
      if (spare.perBuilds() == null && isOf(spare.label(), ware)) {
        pieces += spare.each(ware.part());
      }
    }
    return pieces;
  }

  /** Pieces that are bought at least for each piece that flies. */
  static double perPiece(Ware ware, OrderInputs inputs) {
    var pieces = 0.0;
    for (var spare : inputs.order().sparesOrNone()) {
      var per = spare.perBuilds();
      if (per != null && isOf(spare.label(), ware)) {
        pieces += spare.each(ware.part()) / (double) (per * ware.perBuild());
      }
    }
    return pieces;
  }

  /** Whether a ware serves as something and all builds have as many of it. */
  private static boolean isOf(String label, Ware ware) {
    return ware.perBuild() > 0 && role(ware).label().equals(label);
  }

  private static Role role(Ware ware) {
    return ware.part().fills().get(0);
  }

  /** Pieces that can fly of what is there: whole builds' worth, after their spares. */
  long most(Ware ware) {
    var each = ware.perBuild();
    if (each == 0) {
      return ware.pieces();
    }
    var builds = (int) Math.min(inputs.learners(), ware.pieces() / each);
    while (builds > 0
        && (long) builds * each + inputs.spares(role(ware).label(), ware, builds) > ware.pieces()) {
      builds--;
    }
    return (long) builds * each;
  }

  /** Pieces that can fly of it in builds of so many learners. */
  long most(Ware ware, int learners) {
    return Math.min(most(ware), (long) ware.perBuild() * learners);
  }

  /** Units that any order may want at most. */
  int mostUnits(Ware ware) {
    var pieces = MOST_PIECES * inputs.learners();
    if (ware.perBuild() > 0) {
      pieces = ware.perBuild() * inputs.learners();
      pieces += inputs.spares(role(ware).label(), ware, inputs.learners());
    }
    return ware.part().sold().unitsFor(pieces);
  }
}
