package pappus.answers.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import pappus.answers.build.LinkWords;
import pappus.answers.build.TurnRound;
import pappus.assessment.Assessment;
import pappus.document.Spoken;
import pappus.document.Table;
import pappus.links.Link;

/**
 * How far links reach and where the pack turns round, as half rings about the pilot on a scale of distance; lengths are
 * those of the drawing.
 *
 * @param bands from the low to the high end of each link
 * @param lines where each link likeliest ends, and where the pack turns round
 * @param ticks of the scale
 * @param reading what to see in it
 * @param table the same in numbers
 */
public record Rings(
    List<Band> bands, List<Line> lines, List<Tick> ticks, String reading, Table table) {
  /** From the pilot to the edge. */
  public static final double RADIUS = 100;

  private static final List<Integer> STEPS = List.of(1, 2, 5);
  private static final int FEWEST_TICKS = 3;

  public Rings {
    bands = List.copyOf(bands);
    lines = List.copyOf(lines);
    ticks = List.copyOf(ticks);
  }

  /** A half ring of some width about a radius; its look is a class of the style sheet. */
  public record Band(double radius, double width, String look) {
    public String path() {
      return half(radius);
    }

    public String across() {
      return Plan.plain(width);
    }
  }

  /** A half circle; its look is a class of the style sheet. */
  public record Line(double radius, String look) {
    public String path() {
      return half(radius);
    }
  }

  /** A distance on the scale. */
  public record Tick(double x, String text) {
    public String at() {
      return Plan.plain(x);
    }
  }

  /**
   * Of a build; empty where nothing is known of its links.
   *
   * @param planWith share of the kilometres to plan with, 0 to 1
   */
  public static Optional<Rings> of(Assessment assessment, double planWith) {
    var links = assessment.fitting().reach().links().toList();
    if (links.isEmpty()) {
      return Optional.empty();
    }
    var turn = TurnRound.of(assessment, planWith);
    var farthest = Math.max(
        links.stream().mapToDouble(Link::highMetres).max().orElse(1),
        turn.map(TurnRound::packMetres).orElse(0.0));
    var scale = RADIUS / (1.05 * farthest);
    var bands = new ArrayList<Band>();
    var lines = new ArrayList<Line>();
    var rows = new ArrayList<List<Object>>();
    for (var link : links) {
      var low = scale * link.lowMetres();
      var high = scale * link.highMetres();
      bands.add(new Band((low + high) / 2, high - low, link.way().label()));
      lines.add(new Line(scale * link.metres(), link.way().label()));
      rows.add(List.of(
          link.way().label(),
          link.milliwatts(),
          link.lowMetres(),
          link.metres(),
          link.highMetres(),
          link.shadowedMetres()));
    }
    turn.ifPresent(found -> {
      lines.add(new Line(scale * found.packMetres(), "pack"));
      rows.add(List.of("the pack turns round", "", found.packMetres(), "", "", ""));
    });
    return Optional.of(new Rings(
        bands,
        lines,
        ticks(farthest, scale),
        reading(assessment, turn),
        new Table(
            List.of(
                Table.Column.text("what", "what"),
                Table.Column.number("mW", "milliwatts", 0),
                Table.Column.number("low, m", "low_metres", 0),
                Table.Column.number("likeliest, m", "metres", 0),
                Table.Column.number("high, m", "high_metres", 0),
                Table.Column.number("in a null, m", "shadowed_metres", 0)),
            rows)));
  }

  private static String reading(Assessment assessment, Optional<TurnRound> turn) {
    return LinkWords.briefly(assessment)
        + turn.map(found -> " " + Spoken.sentence(found.inWords()) + ".").orElse("")
        + " "
        + LinkWords.LAW;
  }

  /** Round distances, at least three. */
  private static List<Tick> ticks(double farthest, double scale) {
    var step = 0.0;
    for (var power = 1.0; power <= farthest; power *= 10) {
      for (var of : STEPS) {
        step = of * power * FEWEST_TICKS <= farthest ? of * power : step;
      }
    }
    var ticks = new ArrayList<Tick>();
    for (var at = step; at <= farthest && step > 0; at += step) {
      ticks.add(new Tick(
          RADIUS + scale * at,
          farthest < 2000
              ? Spoken.number(at, 0) + " m"
              : Spoken.number(at / 1000, step < 1000 ? 1 : 0) + " km"));
    }
    return ticks;
  }

  private static String half(double radius) {
    return "M%s %s A%s %s 0 0 1 %s %s"
        .formatted(
            Plan.plain(RADIUS - radius),
            Plan.plain(RADIUS),
            Plan.plain(radius),
            Plan.plain(radius),
            Plan.plain(RADIUS + radius),
            Plan.plain(RADIUS));
  }
}
