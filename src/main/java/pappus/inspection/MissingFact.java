package pappus.inspection;

import java.util.ArrayList;
import java.util.List;
import pappus.part.Battery;
import pappus.part.Board;
import pappus.part.Frame;
import pappus.part.Motor;
import pappus.part.Part;
import pappus.part.Propeller;

/**
 * A fact that a record may leave out.
 *
 * @param field where it would stand
 * @param cost what is assumed instead, or cannot be told; a sentence without its beginning
 */
record MissingFact(String field, String cost) {
  private static final String BURST = "1.3 times the continuous current is assumed.";

  /** That it is missing, as the beginning of a sentence. */
  String missing() {
    return field + (field.contains(" and ") ? " are missing" : " is missing");
  }

  /** What a part leaves out that an answer would be better for. */
  static List<MissingFact> of(Part part) {
    var facts = new ArrayList<MissingFact>();
    if (part instanceof Motor motor) {
      addMotor(motor, facts);
    } else if (part instanceof Propeller propeller && propeller.test() == null) {
      facts.add(
          new MissingFact(
              "test",
              "it flies by blade elements of its size, half a spread worse, with more doubt in the minutes."));
    } else if (part instanceof Battery battery) {
      addBattery(battery, facts);
    } else if (part instanceof Frame frame) {
      addFrame(frame, facts);
    } else if (part instanceof Board board && board.burstAmpsPerMotor() == null) {
      facts.add(new MissingFact("burstAmpsPerMotor", BURST));
    }
    return List.copyOf(facts);
  }

  private static void addMotor(Motor motor, List<MissingFact> facts) {
    if (motor.boltCirclesMillimetres().isEmpty()) {
      facts.add(
          new MissingFact("boltCirclesMillimetres", "whether it bolts to a frame cannot be told."));
    }
    if (motor.threadDepthMillimetres() == null) {
      facts.add(new MissingFact(
          "threadDepthMillimetres", "as usual for the thread; try its screws by hand."));
    }
    if (motor.continuousAmps() == null) {
      facts.add(new MissingFact("continuousAmps", "whether it can hover all day cannot be told."));
    }
    if (motor.burstAmps() == null) {
      facts.add(new MissingFact(
          "burstAmps",
          motor.continuousAmps() == null ? "full throttle is not held to a rating." : BURST));
    }
  }

  private static void addBattery(Battery battery, List<MissingFact> facts) {
    if (battery.resistance() == null || battery.assumed("resistance").isPresent()) {
      facts.add(new MissingFact(
          "resistance", "as usual for its chemistry and size, with more doubt in the minutes."));
    }
    if (battery.labelRating() == null && battery.continuousAmps() == null) {
      facts.add(new MissingFact(
          "labelRating and continuousAmps", "only its resistance tells what current it can take."));
    }
  }

  private static void addFrame(Frame frame, List<MissingFact> facts) {
    if (frame.motorBoltCirclesMillimetres().isEmpty()) {
      facts.add(new MissingFact(
          "motorBoltCirclesMillimetres", "whether a motor bolts to it cannot be told."));
    }
    if (frame.cameraWidthsMillimetres().isEmpty()) {
      facts.add(
          new MissingFact("cameraWidthsMillimetres", "whether a camera fits it cannot be told."));
    }
  }
}
