package pappus.whatif.sweep;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import pappus.change.Asked;
import pappus.files.Closest;
import pappus.files.Shown;
import pappus.files.json.Altered;
import pappus.part.Frame;
import pappus.part.FrameDrawing;
import pappus.part.MountingHoles;
import pappus.part.OrderedFrames;
import pappus.part.Part;
import pappus.part.Role;
import pappus.part.Span;
import pappus.part.StackPattern;
import pappus.scenario.Scenario;
import pappus.structure.DrawnMass;
import pappus.whatif.sweep.Axis.Tightens;

/**
 * Properties of a frame that can be swept. All else of the frame stays as it is, but for its mass: where its arms are
 * drawn, it goes with them, and what the heights of the drawing add to it tells what any other adds.
 */
final class FrameAxes {
  private static final String PREFIX = "frame.";

  /** Boards of 30.5 mm have holes for M3, smaller ones for M2 (common practice, no published source). */
  private static final double M3_FROM_MM = 30;

  private static final double M2_HOLE_MM = 2.2;
  private static final double M3_HOLE_MM = 3.2;

  private FrameAxes() {}

  /** Fields of a frame with a value in them. */
  private interface Fields {
    Map<String, Object> of(Frame frame, String value);
  }

  /**
   * One property.
   *
   * @param unit of its values
   */
  private record Property(String unit, Fields fields) {
    /** One of which the mass of the arms depends on. */
    static Property ofArms(Fields fields) {
      return new Property("mm", (frame, value) -> weighed(frame, fields.of(frame, value)));
    }
  }

  private static final Map<String, Property> PROPERTIES = new TreeMap<>(Map.of(
      "spacing",
      Property.ofArms(FrameAxes::spacing),
      "mass",
      new Property("g", (frame, value) -> Map.of("mass.grams", number(value))),
      "arm-thickness",
      Property.ofArms(FrameAxes::thickness),
      "arm-width",
      Property.ofArms(FrameAxes::width),
      "inner-height",
      new Property("mm", FrameAxes::height),
      "camera-width",
      new Property(
          "mm", (frame, value) -> Map.of("cameraWidthsMillimetres", List.of(number(value)))),
      "largest-propeller",
      new Property("in", (frame, value) -> Map.of("largestPropellerInches", number(value))),
      "bolt-circle",
      new Property(
          "mm",
          (frame, value) -> Map.of(
              "motorBoltCirclesMillimetres", List.of(new Span(number(value), number(value))))),
      "drag-area",
      new Property("m²", (frame, value) -> Map.of("dragAreaSquareMetres", number(value))),
      "stack-pattern",
      new Property("", FrameAxes::patterns)));

  static boolean isOne(String id) {
    return id.startsWith(PREFIX);
  }

  static Axis of(String id, String values, Asked asked) {
    var name = id.substring(PREFIX.length());
    var property = PROPERTIES.get(name);
    if (property == null) {
      throw new IllegalArgumentException("must be over frame.%s, but is over %s.%s"
          .formatted(
              String.join(", frame.", PROPERTIES.keySet()),
              Shown.text(id),
              Closest.advice(name, PROPERTIES.keySet())));
    }
    var frame = frame(asked);
    return new Axis(
        id,
        property.unit(),
        name.equals("stack-pattern") ? words(values) : Axes.numbers(values),
        Tightens.NEITHER,
        Optional.empty(),
        (from, value) -> {
          var now = asItIs(from, frame.id());
          return with(from, now, property.fields().of(now, value));
        });
  }

  /** The frame with what another axis changed of it before. */
  private static Frame asItIs(Asked asked, String id) {
    var draft = asked.scenario().draftFrame();
    return draft != null ? draft : (Frame) asked.supply().catalog().part(id).orElseThrow();
  }

  /**
   * The frame that is designed: the scenario's draft, else the only one that it leaves.
   *
   * @throws IllegalArgumentException if there is none
   */
  static Frame frame(Asked asked) {
    var draft = asked.scenario().draftFrame();
    if (draft != null) {
      return draft;
    }
    var left = asked.question().options(Role.FRAME);
    if (left.size() != 1) {
      throw new IllegalArgumentException(
          "must be over a limit where the scenario has no draftFrame and leaves %s frames open."
              .formatted(left.size()));
    }
    return (Frame) left.get(0);
  }

  /** What is asked with a frame changed; no other is left, not even one that it stood for. */
  static Asked with(Asked asked, Frame frame, Map<String, Object> fields) {
    var changed = Altered.record(Frame.class, frame, fields);
    var scenario = asked.scenario();
    if (scenario.draftFrame() != null) {
      scenario = Altered.record(Scenario.class, scenario, Map.of("draftFrame", changed));
    }
    List<Part> others = new ArrayList<>(asked.supply().catalog().parts().stream()
        .filter(part -> !(part instanceof Frame))
        .toList());
    others.addAll(OrderedFrames.of(changed));
    return new Asked(scenario, asked.supply().with(others));
  }

  /** The lesser distance between neighbouring motors; the other keeps its proportion. */
  private static Map<String, Object> spacing(Frame frame, String value) {
    var least = Math.min(frame.frontSpacingMillimetres(), frame.sideSpacingMillimetres());
    var factor = number(value) / least;
    var fields = new HashMap<String, Object>();
    fields.put("frontSpacingMillimetres", rounded(frame.frontSpacingMillimetres() * factor));
    fields.put("sideSpacingMillimetres", rounded(frame.sideSpacingMillimetres() * factor));
    fields.put("diagonalMillimetres", null);
    var longer = (factor - 1) * frame.diagonal() / 2;
    drawn(frame, arm -> arm.longerBy(longer)).ifPresent(drawing -> fields.put("drawing", drawing));
    return fields;
  }

  /** Its drawing with other arms; empty where it has none. */
  private static Optional<FrameDrawing> drawn(Frame frame, UnaryOperator<FrameDrawing.Arm> other) {
    return Optional.ofNullable(frame.drawing()).map(drawing -> drawing.withArms(other));
  }

  private static Map<String, Object> thickness(Frame frame, String value) {
    var fields = new HashMap<String, Object>();
    fields.put("armThicknessMillimetres", number(value));
    drawn(frame, arm -> arm.withThickness(number(value)))
        .ifPresent(drawing -> fields.put("drawing", drawing));
    return fields;
  }

  /** Where the arm leaves the plate; under the motor it keeps its proportion. */
  private static Map<String, Object> width(Frame frame, String value) {
    var now = frame.armWidthMillimetres();
    if (now == null) {
      throw new IllegalArgumentException(
          "armWidthMillimetres must be there to be varied, but is not.");
    }
    return Map.of(
        "armWidthMillimetres",
        Map.of("root", number(value), "tip", rounded(now.tip() / now.root() * number(value))));
  }

  /** With the mass that follows, where the arms are drawn. */
  private static Map<String, Object> weighed(Frame frame, Map<String, Object> fields) {
    if (frame.drawing() == null) {
      return fields;
    }
    var changed = Altered.record(Frame.class, frame, fields);
    var all = new HashMap<>(fields);
    all.put("mass", DrawnMass.massAfter(frame, changed));
    all.put("centreOfMassXMillimetres", DrawnMass.centreAfter(frame, changed));
    return all;
  }

  /** That height alone, with the mass that the drawing gives it, at the price of the next taller one or the tallest. */
  private static Map<String, Object> height(Frame frame, String value) {
    var millimetres = number(value);
    var rising = frame.heights().stream()
        .sorted(Comparator.comparingDouble(Frame.PlateHeight::millimetres))
        .toList();
    var price = rising.stream()
        .filter(height -> height.millimetres() >= millimetres)
        .findFirst()
        .or(() -> rising.stream().skip(Math.max(0, rising.size() - 1)).findFirst())
        .map(Frame.PlateHeight::price)
        .orElse(null);
    return Map.of(
        "heights",
        List.of(new Frame.PlateHeight(millimetres, addedGrams(frame, millimetres), price)));
  }

  /**
   * What a height between the plates adds to the mass of a frame, g, to the hundredth: as drawn where it is drawn;
   * between two drawn heights in proportion, since the plates stay and the standoffs grow by the millimetre; beyond
   * them as the two nearest go on. One drawn height alone tells of others by the standoffs that are drawn; without
   * these, its mass is kept. Of equal heights the lightest counts, as it is the one that is ordered.
   */
  private static double addedGrams(Frame frame, double millimetres) {
    var lightest = new TreeMap<Double, Frame.PlateHeight>();
    frame.heights().stream()
        .sorted(Comparator.comparingDouble(Frame.PlateHeight::addedGrams))
        .forEach(height -> lightest.putIfAbsent(height.millimetres(), height));
    var drawn = List.copyOf(lightest.values());
    for (var height : drawn) {
      if (height.millimetres() == millimetres) {
        return height.addedGrams();
      }
      if (drawn.size() == 1) {
        var more =
            DrawnMass.gramsPerMillimetre(frame).orElse(0.0) * (millimetres - height.millimetres());
        return rounded(height.addedGrams() + more) + 0.0;
      }
    }
    if (drawn.isEmpty()) {
      return 0;
    }
    var stretch = 0;
    while (stretch < drawn.size() - 2 && drawn.get(stretch + 1).millimetres() < millimetres) {
      stretch++;
    }
    var low = drawn.get(stretch);
    var high = drawn.get(stretch + 1);
    var perMillimetre =
        (high.addedGrams() - low.addedGrams()) / (high.millimetres() - low.millimetres());
    // Zero is added so that nothing is not told as less than nothing.
    return rounded(low.addedGrams() + perMillimetre * (millimetres - low.millimetres())) + 0.0;
  }

  /** Each of its positions with these patterns of holes. */
  private static Map<String, Object> patterns(Frame frame, String value) {
    var holes = Stream.of(value.split("\\+", -1)).map(FrameAxes::holes).toList();
    return Map.of(
        "positions",
        frame.positions().stream()
            .map(position -> new Frame.Position(
                position.name(), position.xMillimetres(), holes, position.open()))
            .toList());
  }

  /** Holes as boards of a pattern have them. */
  static MountingHoles holes(StackPattern pattern) {
    return new MountingHoles(
        pattern, pattern.sideMillimetres() >= M3_FROM_MM ? M3_HOLE_MM : M2_HOLE_MM, false);
  }

  private static MountingHoles holes(String label) {
    return Stream.of(StackPattern.values())
        .filter(pattern -> pattern.label().equals(label))
        .findFirst()
        .map(FrameAxes::holes)
        .orElseThrow(() -> new IllegalArgumentException(
            "must have stack patterns such as 20x20 or 20x20+30.5x30.5, but has %s."
                .formatted(Shown.text(label))));
  }

  private static List<String> words(String values) {
    var words = List.of(values.split(",", -1));
    words.forEach(word -> Stream.of(word.split("\\+", -1)).forEach(FrameAxes::holes));
    return words;
  }

  private static double number(String value) {
    return Double.parseDouble(value);
  }

  /** To the hundredth, as drawings have it. */
  private static double rounded(double value) {
    return Math.rint(value * 100) / 100;
  }
}
