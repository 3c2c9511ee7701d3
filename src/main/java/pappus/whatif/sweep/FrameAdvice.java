package pappus.whatif.sweep;

import java.util.List;
import java.util.Optional;
import pappus.change.Rates;
import pappus.compatibility.PropellerRoom;
import pappus.part.Frame;
import pappus.ranking.Best;

/**
 * What a designer of a frame asks next.
 *
 * @param frame as it is drawn
 * @param best the best build with it
 * @param rates what a gram of it is worth; absent without a build
 * @param rooms the spacing that each size of propeller needs
 * @param additions what one more hole pattern or bolt circle would add, what gains most first
 */
public record FrameAdvice(
    Frame frame,
    Best best,
    Optional<Rates> rates,
    List<PropellerRoom> rooms,
    List<Addition> additions) {
  public FrameAdvice {
    rooms = List.copyOf(rooms);
    additions = List.copyOf(additions);
  }

  /**
   * One more hole pattern or bolt circle.
   *
   * @param what it is, with its size
   * @param parts what goes on it: boards or motors
   * @param fitBefore how many parts of the catalogue go on the frame as it is drawn, with an adapter where one is there
   * @param fitAfter how many go on it with the addition
   * @param of all of them
   * @param best the best build with it
   * @param gained of what builds are ranked by, seconds or metres; 0 without a build
   */
  public record Addition(
      String what, String parts, int fitBefore, int fitAfter, int of, Best best, double gained) {}
}
