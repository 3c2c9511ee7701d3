package pappus.assessment;

import java.util.Optional;
import java.util.OptionalDouble;
import pappus.assessment.flight.Avionics;
import pappus.assessment.flight.Draw;
import pappus.assessment.flight.FlightModels;
import pappus.assessment.flight.Flights;
import pappus.assessment.flight.FrameAir;
import pappus.assessment.flight.PartialBound;
import pappus.fitting.Fitter;
import pappus.part.Battery;
import pappus.part.Board;
import pappus.part.Build;
import pappus.part.Frame;
import pappus.part.Part;
import pappus.scenario.Scenario;

/** What builds only begun weigh, cost and can come to, for searches that bound them. Safe for use by several threads. */
public final class Prospects {
  private final Scenario scenario;
  private final Fitter fitter;
  private final Purse purse;
  private final boolean onlyBelieved;
  private final Flights bounding;
  private final Flights flights;

  /**
   * @param onlyBelieved whether no other builds count
   * @param bounding figures by which builds are bounded: where the figure to plan with counts, the likeliest, since a cautious
   *     outlook promises no more than these
   * @param flights figures by which builds are assessed
   */
  Prospects(
      Scenario scenario,
      Fitter fitter,
      Purse purse,
      boolean onlyBelieved,
      Flights bounding,
      Flights flights) {
    this.scenario = scenario;
    this.fitter = fitter;
    this.purse = purse;
    this.onlyBelieved = onlyBelieved;
    this.bounding = bounding;
    this.flights = flights;
  }

  /** What a build only begun weighs and costs; it need not have any part. */
  public PartialBuild begun(Build begun) {
    var fitting = fitter.fit(begun);
    var mass = MassTable.of(fitting);
    var cost = CostTable.of(fitting, purse);
    // Before a board is there nobody knows which height the frame is ordered with: it may be the
    // lightest.
    var height = begun.board().isPresent()
        ? 0
        : begun.frame().map(Frame::leastAddedGrams).orElse(0.0);
    return new PartialBuild(
        mass.grams() + height,
        mass.doubtGrams() * mass.doubtGrams(),
        cost.cents(),
        cost.piecesToBuy(),
        Avionics.draws(fitting).stream().mapToDouble(Draw::watts).sum());
  }

  /** Least watts at the battery that a part can add to a build with a battery, however it is fed in the end. */
  public double leastWatts(Part part, Battery battery) {
    return Avionics.least(part, battery, fitter.links());
  }

  /** The same with the most that a video transmitter may be set to where its power follows from how far it must reach. */
  public double leastWattsWithMostVideo(Part part, Battery battery) {
    return Avionics.leastWithMostVideo(part, battery, fitter.links());
  }

  /** Ripple of a board's controllers over that of the law, if anything is known of them. */
  public OptionalDouble rippleShare(Board board) {
    return bounding.models().rippleShare(board);
  }

  /** What a frame does to the air about an aircraft. */
  public FrameAir air(Frame frame) {
    return flights.air(frame);
  }

  /** Whether it is flown in the wind of the place. */
  public boolean isWindy() {
    return scenario.air().windOrCalm() > 0;
  }

  /** Whether the drag of a frame matters. */
  public boolean asksForDrag() {
    return flights.asksForDrag();
  }

  /**
   * What a build only begun can reach at most, whatever is added.
   *
   * @param begun has motor, propeller and battery; its board and lead count if they are chosen
   * @return empty if the physics refuses what it was not made for, as it will of every build with these parts
   */
  public Optional<PartialBound> of(Build begun) {
    try {
      return Optional.of(bounding.prospect(begun));
    } catch (IllegalArgumentException outsideTheModel) {
      return Optional.empty();
    }
  }

  /** Whether an aircraft is flown at speeds of its own choice, which are found to a tolerance only. */
  public boolean choosesSpeeds() {
    return flights.choosesSpeeds();
  }

  /** What builds are ranked by of one round of legs at least, seconds or metres; 0 where none is asked for. */
  public double leastOfRound() {
    return flights.leastOfRound();
  }

  /** Whether charge is kept back for what follows a stay, by the figure to plan with. */
  public boolean keepsBack() {
    return flights.keepsBack();
  }

  /** The physics' models of parts, by the outlook of the scenario or else what surpasses it. */
  public FlightModels models() {
    return bounding.models();
  }

  /** Whether what builds can reach is bounded by the same figures as with another. */
  public boolean boundsLike(Prospects other) {
    return bounding == other.bounding;
  }

  /** Whether only builds count that are believed, and those are told by the figures that bound what they reach. */
  public boolean boundsBelief() {
    return onlyBelieved && bounding == flights;
  }
}
