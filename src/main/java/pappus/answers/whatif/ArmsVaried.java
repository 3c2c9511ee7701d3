package pappus.answers.whatif;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import pappus.answers.build.ArmWords;
import pappus.assessment.Assessment;
import pappus.whatif.sweep.Axis;
import pappus.whatif.sweep.Step;
import pappus.whatif.sweep.Sweep;

/** What a sweep of a frame does to its arms. */
final class ArmsVaried {
  /** Axes on which what arms weigh depends. */
  private static final List<String> OF_ARMS =
      List.of("frame.arm-thickness", "frame.arm-width", "frame.spacing");

  private final Sweep sweep;

  ArmsVaried(Sweep sweep) {
    this.sweep = sweep;
  }

  /** Whether arms are told of at each step: the frame is swept, and they are drawn. */
  boolean areTold() {
    return sweep.axes().stream().anyMatch(axis -> axis.id().startsWith("frame."))
        && sweep.steps().stream().anyMatch(step -> hertz(step).isPresent());
  }

  /** First bending frequency of the best build's softest arms, Hz. */
  static Optional<Double> hertz(Step step) {
    return step.best().build().flatMap(ArmWords::hertz);
  }

  /** In sentences: what the last step's arms stand beside the first's, and where a frequency asks for a word. */
  List<String> said() {
    var said = new ArrayList<String>();
    if (!areTold()) {
      if (sweep.axes().stream().map(Axis::id).anyMatch(OF_ARMS::contains)) {
        said.add(
            "The frame's arms are not drawn: its mass is the same at each step, and nothing is told of their stiffness.");
      }
      return said;
    }
    strength().ifPresent(said::add);
    remarks().forEach((remark, steps) -> said.add(steps + ": " + remark));
    return said;
  }

  private Optional<String> strength() {
    var found = sweep.steps().stream().filter(step -> hertz(step).isPresent()).toList();
    var first = found.get(0);
    var last = found.get(found.size() - 1);
    return ArmWords.beside(build(last), build(first), "that at " + at(first))
        .filter(words -> !first.equals(last))
        .map(words ->
            "An arm's root at %s %s, each loaded by the same multiple of its build's weight: beams by the textbook, no promise of what they stand."
                .formatted(at(last), words));
  }

  private static Assessment build(Step step) {
    return step.best().build().orElseThrow();
  }

  /** Each remark, with the steps where it holds. */
  private Map<String, String> remarks() {
    var remarks = new LinkedHashMap<String, String>();
    for (var step : sweep.steps()) {
      step.best().build().stream()
          .flatMap(build -> ArmWords.remarks(build).stream())
          .forEach(remark -> remarks.merge(
              remark, "At " + at(step), (one, other) -> one + ", " + other.substring(3)));
    }
    return remarks;
  }

  private String at(Step step) {
    var told = new ArrayList<String>();
    for (var i = 0; i < sweep.axes().size(); i++) {
      told.add((step.values().get(i) + " " + sweep.axes().get(i).unit()).strip());
    }
    return told.stream().collect(Collectors.joining(" and "));
  }
}
