package pappus.fitting;

import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import pappus.links.Links;
import pappus.part.Build;
import pappus.scenario.Scenario;

/** Puts builds together for one scenario with the hardware at hand. */
public final class Fitter {
  private static final StackPlanner.Outcome NO_STACK = new StackPlanner.Outcome(null, null);
  private static final PowerPlanner.Outcome NO_POWER = new PowerPlanner.Outcome(null, null, null);

  private final Scenario scenario;
  private final Links links;
  private final StackPlanner stackPlanner;
  private final PowerPlanner powerPlanner;
  private final HardwarePlanner hardwarePlanner;

  /** Searches ask for the same few thousand stacks again and again. */
  private final Map<StackKey, StackPlanner.Outcome> stacks = new ConcurrentHashMap<>();

  public Fitter(Scenario scenario, Stock stock) {
    this(stock, new Links(scenario));
  }

  /** @param links for a scenario */
  public Fitter(Stock stock, Links links) {
    this.scenario = links.scenario();
    this.links = links;
    this.stackPlanner = new StackPlanner(stock);
    this.powerPlanner = new PowerPlanner(links);
    this.hardwarePlanner = new HardwarePlanner(stock);
  }

  /** The build as it goes together. */
  public Fitting fit(Build build) {
    return new Fitting(build, scenario, this);
  }

  /** Picture and control, and what the video transmitter is set to. */
  public Links links() {
    return links;
  }

  StackPlanner.Outcome stack(Build build) {
    var frame = build.frame();
    var board = build.board();
    if (frame.isEmpty() || board.isEmpty()) {
      return NO_STACK;
    }
    var transmitter = build.transmitter();
    var camera = build.cameraUnit();
    var key = new StackKey(
        frame.get().id(),
        board.get().id(),
        transmitter.map(part -> part.id()).orElse(""),
        camera.map(unit -> unit.leastInnerHeightMillimetres()).orElse(0.0));
    return stacks.computeIfAbsent(
        key,
        asked -> stackPlanner.plan(
            frame.get(), board.get(), transmitter.orElse(null), camera.orElse(null)));
  }

  PowerPlanner.Outcome power(Build build) {
    return build.board().isEmpty() || build.battery().isEmpty()
        ? NO_POWER
        : powerPlanner.plan(build, build.board().get(), build.battery().get());
  }

  Hardware hardware(Build build, Optional<StackPlan> stack) {
    return hardwarePlanner.plan(build, stack);
  }

  /** Shims the camera would need, if the stock has them. */
  public HardwarePlanner hardwarePlanner() {
    return hardwarePlanner;
  }

  private record StackKey(
      String frame, String board, String transmitter, double cameraMillimetres) {}
}
