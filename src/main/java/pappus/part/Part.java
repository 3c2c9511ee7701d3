package pappus.part;

import com.fasterxml.jackson.annotation.JsonIgnore;
import java.util.List;
import java.util.Optional;
import pappus.quantity.Money;
import pappus.quantity.Require;

/** One entry of a catalogue. */
public sealed interface Part
    permits Frame,
        Motor,
        Propeller,
        Battery,
        Board,
        Transmitter,
        Camera,
        Receiver,
        Antenna,
        Gps,
        Buzzer,
        PayloadCamera,
        Capacitor,
        Lead,
        Screw,
        Strap,
        Adapter,
        Sundry {

  /** Catalogue key, unique over all kinds: as {@link Require#id} says. */
  String id();

  /** Id under which a shop lists it, whatever it is ordered with. */
  default String listedId() {
    return id();
  }

  /** Who makes it. */
  String maker();

  /** What it is called. */
  String name();

  /** Price of one selling unit. */
  Money price();

  /** How it is sold. */
  Sale sold();

  /** Mass of one piece. */
  Mass mass();

  /** Where the numbers come from. */
  String source();

  /** What its record left out and its class filled; empty if nothing. */
  List<Assumed> assumed();

  /** What was assumed of a field, if it was left out. */
  default Optional<Assumed> assumed(String path) {
    return assumed().stream().filter(one -> one.path().equals(path)).findFirst();
  }

  /** The kind of part, which is also its file. */
  @JsonIgnore
  Kind kind();

  /** Every role this part fills where it is built in, its own first; none for small hardware. */
  @JsonIgnore
  List<Role> fills();

  /**
   * Checks what every record holds.
   *
   * @throws IllegalArgumentException naming the first field that is missing or impossible
   */
  static void check(
      String id, String maker, String name, Money price, Sale sold, Mass mass, String source) {
    Require.id("id", id);
    Require.name("maker", maker);
    Require.name("name", name);
    Require.present("price", price);
    Require.present("sold", sold);
    Require.present("mass", mass);
    Require.text("source", source);
  }
}
