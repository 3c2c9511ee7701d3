package pappus.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import pappus.Inputs;
import pappus.Pappus;
import pappus.answers.whatif.SweepPage;
import pappus.answers.whatif.SweepReport;
import pappus.ranking.Finder;
import pappus.ranking.ParetoFront;
import pappus.whatif.sweep.Axis;
import pappus.whatif.sweep.FrameAdvice;
import pappus.whatif.sweep.FrameAdvisor;
import pappus.whatif.sweep.Sweep;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;

/** What if a limit, or the frame, were otherwise. */
@Command(
    name = "vary",
    description =
        "Finds the best build at each step of one or two limits, or of a property of the frame; with --front, every build that none beats in flight, mass and price at once.",
    footer = {
      "pappus vary scenarios/bird-survey.json --over mass-cap=200:250:25",
      "pappus vary scenarios/bird-survey.json --over budget=150,200,250 --format csv"
    })
final class VaryCommand extends ScenarioCommand implements Callable<Integer> {
  private static final int MOST_AXES = 2;

  @Option(
      names = "--over",
      paramLabel = "LIMIT=FROM:TO:STEP",
      description =
          "What varies, once or twice: mass-cap, budget, thrust-to-weight, least-minutes, least-kilometres, reach, clear-view, altitude, temperature, transmitter-power, payload, packs or cells; or frame.spacing, .mass, .arm-thickness, .arm-width, .inner-height, .camera-width, .largest-propeller, .bolt-circle, .drag-area or .stack-pattern; or a field of a part, where.ROLE.FIELD, with .atLeast or .atMost if you like. Values may be listed too: cells=2,3,4.")
  private List<String> over = new ArrayList<>();

  @Option(
      names = "--front",
      description =
          "What is traded for what: flight, mass and price, down to half of the best flight.")
  private boolean withFront;

  @Option(names = "--all", description = "With --front: every step, however little it saves.")
  private boolean isAll;

  @Option(
      names = "--effort",
      paramLabel = "N",
      description = "Most choices each search looks into.")
  private @Nullable Long effort;

  @Mixin
  private ReportOption page = new ReportOption();

  /** What was found, as far as it was asked for. */
  private record Found(
      @Nullable Sweep sweep,
      @Nullable ParetoFront front,
      @Nullable FrameAdvice advice) {}

  @Override
  public Integer call() {
    var format = format(Format.CSV, Format.MARKDOWN);
    check(format);
    var inputs = read();
    var axes = axes(inputs);
    var found = finding(
        Finder.Way.AUTO,
        effort == null ? Finder.EFFORT : effort,
        Finder.FEWER_MOVES,
        finder -> find(inputs, axes, finder));
    var currency = inputs.catalog().currency();
    var report = new SweepReport(
        inputs.scenario(),
        currency,
        inputs.assessor().deviations(),
        found.sweep(),
        found.front(),
        found.advice());
    if (page.isWanted()) {
      writePage(
          inputs,
          "variation",
          new SweepPage(inputs.scenario(), currency, inputs.assessor().deviations())
              .of(found.sweep(), found.front(), report, Version.tool()));
    }
    print(
        inputs,
        "variation",
        () -> report.json(run(inputs)),
        () -> report.text(columns(), isAll),
        report::csv,
        report::markdown);
    return isNothing(found) ? ExitCode.NO : ExitCode.OK;
  }

  private static boolean isNothing(Found found) {
    var sweep = found.sweep();
    var front = found.front();
    return (sweep == null
            || sweep.steps().stream().allMatch(step -> step.best().build().isEmpty()))
        && (front == null || front.builds().isEmpty());
  }

  private void check(Format format) {
    if (over.isEmpty() && !withFront) {
      throw usage("--over or --front must be given.");
    }
    if (over.size() > MOST_AXES) {
      throw usage(
          "--over must be given at most twice, but is given %s times.".formatted(over.size()));
    }
    if (effort != null && effort < 1) {
      throw usage("--effort must be at least 1, but is " + effort + ".");
    }
    if (!over.isEmpty() && withFront && format != Format.TEXT && format != Format.JSON) {
      throw usage("--front must be left out where --over is printed as a table.");
    }
  }

  private ParameterException usage(String message) {
    return new ParameterException(spec().commandLine(), message);
  }

  private List<Axis> axes(Inputs inputs) {
    try {
      return Pappus.axes(inputs, over);
    } catch (IllegalArgumentException wrong) {
      throw usage("--over " + wrong.getMessage());
    }
  }

  private Found find(Inputs inputs, List<Axis> axes, Finder finder) {
    Sweep sweep = null;
    FrameAdvice advice = null;
    if (!axes.isEmpty()) {
      try {
        sweep = Pappus.sweep(inputs, axes, finder);
      } catch (IllegalArgumentException wrong) {
        throw usage("--over " + wrong.getMessage());
      }
    }
    if (axes.stream().anyMatch(axis -> axis.id().startsWith("frame."))) {
      advice = FrameAdvisor.of(inputs.asked(), finder);
    }
    return new Found(
        sweep,
        withFront ? finder.front(inputs.question(), RecommendCommand.FRONT_SHARE) : null,
        advice);
  }
}
