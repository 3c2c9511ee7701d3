package pappus.fitting;

import java.util.List;
import java.util.Optional;
import pappus.part.Known;
import pappus.part.Mass;
import pappus.part.Part;
import pappus.part.Screw;
import pappus.part.Strap;

/**
 * The small things of a build, which follow from its chosen parts.
 *
 * @param items everything, with count and mass
 * @param motorScrew screws that hold the motors, if some length suits
 * @param strap strap that goes round the pack, if one suits
 * @param motorWire how long the motors' wires must be, if frame and motor are chosen
 */
public record Hardware(
    List<Item> items,
    Optional<Screw> motorScrew,
    Optional<Strap> strap,
    Optional<MotorWire> motorWire) {
  /** Label of leads and plug where the pack's record is without them. */
  public static final String PACK_LEADS = "pack leads and plug";

  public Hardware {
    items = List.copyOf(items);
  }

  /**
   * The wires from the motors to the board, all of one length.
   *
   * @param gauge AWG
   * @param wires how many
   * @param neededMillimetres length of each along its arm to the pads, mm
   * @param includedMillimetres length that the motors come with, mm
   */
  public record MotorWire(
      int gauge, int wires, double neededMillimetres, double includedMillimetres) {
    /** To be added to each, mm; below zero: to be cut off. */
    public double missingMillimetres() {
      return neededMillimetres - includedMillimetres;
    }
  }

  /**
   * One kind of small thing.
   *
   * @param label what it is
   * @param part its catalogue part; empty: none in stock, counted at a usual mass and no price
   * @param pieces how many fly
   * @param each mass of one; negative corrections for wire cut off are items of their own
   */
  public record Item(String label, Optional<Part> part, int pieces, Mass each, boolean cutOff) {
    /** A catalogue part in a number. */
    static Item of(String label, Part part, int pieces) {
      return new Item(label, Optional.of(part), pieces, part.mass(), false);
    }

    /** Something without a record, at a usual mass (common practice, no published source). */
    static Item usual(String label, double grams) {
      return new Item(label, Optional.empty(), 1, Mass.of(grams, Known.ESTIMATED), false);
    }

    /** Something cut off and not flown. */
    static Item cutOff(String label, double grams) {
      return new Item(label, Optional.empty(), 1, Mass.of(grams, Known.ESTIMATED), true);
    }

    /** Mass of all pieces, g; below zero for what is cut off. */
    public double grams() {
      return (cutOff ? -1 : 1) * pieces * each.grams();
    }
  }
}
