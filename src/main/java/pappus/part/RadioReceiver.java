package pappus.part;

/** What hears the pilot's radio: a part of its own, or one built into a board. */
public sealed interface RadioReceiver permits Receiver, BuiltInReceiver {
  /** Radio link family it speaks. */
  String link();

  /** Its antenna ports. */
  AntennaPort antenna();

  /** Whether its antennas are fixed to it. */
  boolean antennaFixed();

  /** The weakest signal that it follows. */
  Sensitivity sensitivity();
}
