package pappus.order.timefold;

import pappus.order.Ware;
import pappus.order.choice.Choice;

/** A ware as what it serves as: spares depend on both. Each is made once for a choice, and is equal to itself alone. */
final class Slot {
  private final Choice choice;
  private final Ware ware;
  private final String label;

  Slot(Choice choice, Ware ware, String label) {
    this.choice = choice;
    this.ware = ware;
    this.label = label;
  }

  Ware ware() {
    return ware;
  }

  /** Pieces beyond what flies where so many builds have it. */
  int spares(int builds) {
    return choice.spares(label, ware, builds);
  }

  /** What one build takes of it. */
  record Use(Slot slot, int pieces) {}
}
