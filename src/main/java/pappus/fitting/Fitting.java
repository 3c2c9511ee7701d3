package pappus.fitting;

import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import pappus.links.Reach;
import pappus.part.Battery;
import pappus.part.Build;
import pappus.part.OutputPower;
import pappus.part.Part;
import pappus.part.Role;
import pappus.part.VideoSender;
import pappus.quantity.Sentence;
import pappus.scenario.Scenario;

/**
 * One build as it goes together: what each rule looks at, and what reports show. Made by {@link
 * Fitter}; each part of it is worked out when first asked for.
 */
public final class Fitting {
  private final Build build;
  private final Scenario scenario;
  private final Fitter fitter;
  private StackPlanner.@Nullable Outcome stack;
  private PowerPlanner.@Nullable Outcome power;
  private @Nullable Hardware hardware;
  private @Nullable Reach reach;

  Fitting(Build build, Scenario scenario, Fitter fitter) {
    this.build = build;
    this.scenario = scenario;
    this.fitter = fitter;
  }

  public Build build() {
    return build;
  }

  public Scenario scenario() {
    return scenario;
  }

  /** Where the boards stand, if there is a way and frame and board are chosen. */
  public Optional<StackPlan> stackPlan() {
    return Optional.ofNullable(stack().plan());
  }

  /** Why the boards find no place, if they do not. */
  public Optional<Sentence> stackObstacle() {
    return Optional.ofNullable(stack().obstacle());
  }

  /** Who is fed from where, if there is a way and board and battery are chosen. */
  public Optional<PowerPlan> powerPlan() {
    return Optional.ofNullable(power().plan());
  }

  public PowerPlanner.Outcome power() {
    if (power == null) {
      power = fitter.power(build);
    }
    return power;
  }

  /** The small things. */
  public Hardware hardware() {
    if (hardware == null) {
      hardware = fitter.hardware(build, stackPlan());
    }
    return hardware;
  }

  /** Whether motor screws or a strap that are there already would do, even if lighter ones did too. */
  public boolean serves(Part hardware) {
    return HardwarePlanner.serves(hardware, build);
  }

  /** Which part is on which serial port, as far as ports reach. */
  public Optional<PortPlan> portPlan() {
    return PortPlanner.plan(build);
  }

  /** Where the pack sits and where that brings the centre of mass, if frame and battery are chosen. */
  public Optional<Placing> placing() {
    return BalancePlanner.place(this);
  }

  /** How far its links reach. */
  public Reach reach() {
    if (reach == null) {
      reach = fitter.links().of(build);
    }
    return reach;
  }

  /** What a video sender of it is set to. */
  public OutputPower setting(VideoSender sender) {
    return fitter.links().setting(sender, build);
  }

  public Fitter fitter() {
    return fitter;
  }

  private StackPlanner.Outcome stack() {
    if (stack == null) {
      stack = fitter.stack(build);
    }
    return stack;
  }

  /** Masses along x that do not depend on where the pack is: mass in g by role. */
  Map<Role, Double> gramsByRole() {
    var grams = new EnumMap<Role, Double>(Role.class);
    build
        .parts()
        .forEach((role, part) -> grams.put(role, build.count(role) * part.mass().grams()));
    return grams;
  }

  Optional<Battery> battery() {
    return build.battery();
  }
}
