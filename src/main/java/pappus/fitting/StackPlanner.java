package pappus.fitting;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.jspecify.annotations.Nullable;
import pappus.part.Adapter;
import pappus.part.Board;
import pappus.part.CameraUnit;
import pappus.part.Frame;
import pappus.part.MountingHoles;
import pappus.part.Role;
import pappus.part.Transmitter;
import pappus.quantity.Sentence;

/**
 * Finds places for flight board and transmitter.
 *
 * <p>A position holds a column of parts of one pattern while their heights fit. Of all ways the one
 * that weighs least is taken: the lowest plates first, then the lightest adapters, then the
 * transmitter above the board, then the positions in the order of the frame. The clearances are
 * common practice without a published source.
 */
final class StackPlanner {
  /** From carbon to the lowest board. */
  private static final double TO_CARBON_MM = 2;

  private static final double BETWEEN_BOARDS_MM = 1.5;
  private static final double PLUG_ROOM_MM = 2;

  /** Left free under the top plate. */
  private static final double SPARE_MM = 1;

  /** A hole of less than this takes M2 at most, a larger one M3. */
  private static final double M3_HOLE_MM = 2.7;

  private final Stock stock;

  StackPlanner(Stock stock) {
    this.stock = stock;
  }

  /** Either a plan, or why there is none. */
  record Outcome(@Nullable StackPlan plan, @Nullable Sentence obstacle) {}

  Outcome plan(
      Frame frame, Board board, @Nullable Transmitter transmitter, @Nullable CameraUnit camera) {
    var mounted = transmitter != null && transmitter.mount() != null ? transmitter : null;
    var ways = ways(frame, board, mounted);
    if (ways.isEmpty()) {
      return new Outcome(null, noPattern(frame, board, mounted));
    }
    var cameraMillimetres =
        camera == null || frame.heights().isEmpty() ? 0 : camera.leastInnerHeightMillimetres();
    var heights = frame.heights().stream()
        .sorted(Comparator.comparingDouble(Frame.PlateHeight::addedGrams)
            .thenComparingDouble(Frame.PlateHeight::millimetres))
        .toList();
    StackPlan best = null;
    var bestGrams = Double.POSITIVE_INFINITY;
    for (var way : ways) {
      var needed = Math.max(cameraMillimetres, neededBetweenPlates(way));
      var height =
          heights.stream().filter(offered -> offered.millimetres() >= needed).findFirst();
      if (height.isEmpty() && !heights.isEmpty()) {
        continue;
      }
      var grams = height.map(Frame.PlateHeight::addedGrams).orElse(0.0)
          + way.stream()
              .flatMap(column -> column.adapters().stream())
              .mapToDouble(adapter -> adapter.mass().grams())
              .sum();
      if (grams < bestGrams - 1e-9) {
        bestGrams = grams;
        best = new StackPlan(way, height, notes(way));
      }
    }
    return best == null
        ? new Outcome(null, tooLow(frame, ways, cameraMillimetres))
        : new Outcome(best, null);
  }

  /** Every way to place the two, preferred ones first. */
  private List<List<StackPlan.Column>> ways(
      Frame frame, Board board, @Nullable Transmitter transmitter) {
    var ways = new ArrayList<List<StackPlan.Column>>();
    for (var position : frame.positions()) {
      for (var plate : position.patterns()) {
        addWays(ways, frame, position, plate, board, transmitter);
      }
    }
    ways.sort(Comparator.comparingInt(List::size));
    return ways;
  }

  /** With the board on certain holes; what stands above it is on the same screws. */
  private void addWays(
      List<List<StackPlan.Column>> ways,
      Frame frame,
      Frame.Position position,
      MountingHoles plate,
      Board board,
      @Nullable Transmitter transmitter) {
    var under = seat(plate, board.mount());
    if (under == null) {
      return;
    }
    var boardStacked = new Stacked(Role.BOARD, board.id(), board.heightMillimetres(), under);
    if (transmitter == null || transmitter.mount() == null) {
      ways.add(List.of(column(position, List.of(boardStacked))));
      return;
    }
    var above = seat(plate, transmitter.mount());
    if (above != null) {
      ways.add(List.of(column(position, List.of(boardStacked, stacked(transmitter, above)))));
    }
    for (var other : frame.positions()) {
      var apart = other.equals(position) ? null : seat(other, transmitter.mount());
      if (apart != null) {
        ways.add(List.of(
            column(position, List.of(boardStacked)),
            column(other, List.of(stacked(transmitter, apart)))));
      }
    }
  }

  private static Stacked stacked(Transmitter transmitter, SeatOn seat) {
    return new Stacked(Role.TRANSMITTER, transmitter.id(), transmitter.heightMillimetres(), seat);
  }

  private static StackPlan.Column column(Frame.Position position, List<Stacked> stacked) {
    var needed = TO_CARBON_MM + PLUG_ROOM_MM + SPARE_MM + BETWEEN_BOARDS_MM * (stacked.size() - 1);
    var adapters = new ArrayList<Adapter>();
    var layers = new ArrayList<StackPlan.Layer>();
    for (var one : stacked) {
      needed += one.heightMillimetres();
      for (var adapter : one.seat().adapters()) {
        needed += adapter.heightMillimetres();
        adapters.add(adapter);
      }
      layers.add(new StackPlan.Layer(one.role(), one.partId(), one.seat().turned()));
    }
    return new StackPlan.Column(position, layers, needed, adapters, slices(stacked));
  }

  private static List<StackPlan.Slice> slices(List<Stacked> stacked) {
    var slices = new ArrayList<StackPlan.Slice>();
    for (var one : stacked) {
      slices.add(
          slices.isEmpty()
              ? new StackPlan.Slice(StackPlan.Filling.SPACER_TO_CARBON, "", TO_CARBON_MM)
              : new StackPlan.Slice(
                  StackPlan.Filling.SPACER_BETWEEN_BOARDS, "", BETWEEN_BOARDS_MM));
      for (var adapter : one.seat().adapters()) {
        slices.add(new StackPlan.Slice(
            StackPlan.Filling.ADAPTER, adapter.id(), adapter.heightMillimetres()));
      }
      slices.add(
          new StackPlan.Slice(StackPlan.Filling.BOARD, one.partId(), one.heightMillimetres()));
    }
    slices.add(new StackPlan.Slice(StackPlan.Filling.PLUG_ROOM, "", PLUG_ROOM_MM));
    slices.add(new StackPlan.Slice(StackPlan.Filling.SPARE, "", SPARE_MM));
    return slices;
  }

  private static double neededBetweenPlates(List<StackPlan.Column> way) {
    var needed = 0.0;
    for (var column : way) {
      if (!column.position().open()) {
        needed = Math.max(needed, column.neededMillimetres());
      }
    }
    return needed;
  }

  /** How holes of a part go onto a position: directly, else with the lightest adapter there is. */
  private @Nullable SeatOn seat(Frame.Position position, MountingHoles part) {
    SeatOn best = null;
    for (var plate : position.patterns()) {
      var seat = seat(plate, part);
      if (seat != null && (best == null || seat.grams() < best.grams())) {
        best = seat;
      }
    }
    return best;
  }

  private @Nullable SeatOn seat(MountingHoles plate, MountingHoles part) {
    var adapters = new ArrayList<Adapter>();
    if (!plate.pattern().takes(part.pattern())) {
      var between = stock.adapter(
          Adapter.Purpose.STACK_PLATE,
          adapter -> adapter.stackPattern() != null
              && adapter.partPattern() != null
              && plate.pattern().takes(adapter.stackPattern())
              && part.pattern().takes(adapter.partPattern()));
      if (between.isEmpty()) {
        return null;
      }
      adapters.add(between.get());
    }
    if (part.holeMillimetres() < M3_HOLE_MM && plate.holeMillimetres() >= M3_HOLE_MM) {
      var grommets = stock.adapter(Adapter.Purpose.STEPPED_GROMMETS, adapter -> true);
      if (grommets.isEmpty()) {
        return null;
      }
      adapters.add(grommets.get());
    }
    return new SeatOn(adapters, plate.turned() != part.turned());
  }

  private record SeatOn(List<Adapter> adapters, boolean turned) {
    double grams() {
      return adapters.stream().mapToDouble(adapter -> adapter.mass().grams()).sum();
    }
  }

  private record Stacked(Role role, String partId, double heightMillimetres, SeatOn seat) {}

  private static List<Sentence> notes(List<StackPlan.Column> way) {
    var notes = new ArrayList<Sentence>();
    for (var column : way) {
      for (var layer : column.layers()) {
        if (layer.turned()) {
          notes.add(Sentence.of(
              "%s stands on its corner at the %s position: tell the flight software, and keep bare carbon off its holes.",
              layer.partId(), column.position().name()));
        }
      }
      for (var adapter : column.adapters()) {
        notes.add(Sentence.of(
            "%s goes between plate and board at the %s position (%s g).",
            adapter.id(), column.position().name(), adapter.mass().grams()));
      }
    }
    return notes;
  }

  private Sentence noPattern(Frame frame, Board board, @Nullable Transmitter transmitter) {
    var boardSeats = frame.positions().stream().anyMatch(at -> seat(at, board.mount()) != null);
    if (!boardSeats || transmitter == null || transmitter.mount() == null) {
      return Sentence.of(
          "Board %s has %s holes, but frame %s takes %s.",
          board.id(), board.mount().pattern().label(), frame.id(), patterns(frame));
    }
    var mount = transmitter.mount();
    if (frame.positions().stream().anyMatch(at -> seat(at, mount) != null)) {
      return Sentence.of(
          "Board %s has %s holes and transmitter %s has %s: they need a place each, but frame %s has one for both.",
          board.id(),
          board.mount().pattern().label(),
          transmitter.id(),
          mount.pattern().label(),
          frame.id());
    }
    return Sentence.of(
        "Transmitter %s has %s holes, but frame %s takes %s.",
        transmitter.id(), mount.pattern().label(), frame.id(), patterns(frame));
  }

  private static String patterns(Frame frame) {
    return String.join(
        ", ",
        frame.positions().stream()
            .flatMap(position -> position.patterns().stream())
            .map(holes -> holes.pattern().label())
            .distinct()
            .toList());
  }

  private static Sentence tooLow(
      Frame frame, List<List<StackPlan.Column>> ways, double cameraMillimetres) {
    var lowest = ways.stream()
        .mapToDouble(way -> Math.max(cameraMillimetres, neededBetweenPlates(way)))
        .min()
        .orElseThrow();
    var highest = frame.heights().stream()
        .mapToDouble(Frame.PlateHeight::millimetres)
        .max()
        .orElseThrow();
    return Sentence.of(
        "The boards and the camera need %s mm between the plates, but frame %s has at most %s mm.",
        lowest, frame.id(), highest);
  }
}
