package pappus.fitting;

import java.util.List;
import java.util.Optional;
import pappus.part.Adapter;
import pappus.part.Frame;
import pappus.part.Role;
import pappus.quantity.Sentence;

/**
 * Where boards stand on the frame, at which height between its plates.
 *
 * @param columns one a used position
 * @param height height to order the frame with; empty where no plate is above anything
 * @param notes what the builder should know
 */
public record StackPlan(
    List<Column> columns, Optional<Frame.PlateHeight> height, List<Sentence> notes) {
  public StackPlan {
    columns = List.copyOf(columns);
    notes = List.copyOf(notes);
  }

  /**
   * Parts one above the other on four screws.
   *
   * @param position where
   * @param layers from bottom to top
   * @param neededMillimetres height of all of it with spacers and room for plugs, mm
   * @param adapters what makes it fit; mostly empty
   * @param slices what takes the height, from bottom to top
   */
  public record Column(
      Frame.Position position,
      List<Layer> layers,
      double neededMillimetres,
      List<Adapter> adapters,
      List<Slice> slices) {
    public Column {
      layers = List.copyOf(layers);
      adapters = List.copyOf(adapters);
      slices = List.copyOf(slices);
    }
  }

  /** What a slice of a column's height is for. */
  public enum Filling {
    /** From carbon to the lowest board. */
    SPACER_TO_CARBON,
    SPACER_BETWEEN_BOARDS,
    ADAPTER,
    BOARD,
    PLUG_ROOM,
    /** Left free under the top plate. */
    SPARE
  }

  /**
   * Some of a column's height.
   *
   * @param filling what it is for
   * @param partId the board or adapter; empty text for room and spacers
   * @param millimetres of it, mm
   */
  public record Slice(Filling filling, String partId, double millimetres) {}

  /**
   * One board in a column.
   *
   * @param what board or transmitter
   * @param partId its part
   * @param turned whether it stands on its corner
   */
  public record Layer(Role what, String partId, boolean turned) {}

  /** Height left above the column that is closest to the plate, mm; empty where nothing is above. */
  public Optional<Double> heightLeftMillimetres() {
    return height.flatMap(between -> columns.stream()
        .filter(column -> !column.position().open())
        .map(column -> between.millimetres() - column.neededMillimetres())
        .min(Double::compare));
  }

  /** Adapters of all columns. */
  public List<Adapter> adapters() {
    return columns.stream().flatMap(column -> column.adapters().stream()).toList();
  }

  /** Where a role's part stands, mm forward of the motor centre, if it stands in a column. */
  public Optional<Double> xMillimetres(Role role) {
    return columns.stream()
        .filter(column -> column.layers().stream().anyMatch(layer -> layer.what() == role))
        .map(column -> column.position().xMillimetres())
        .findFirst();
  }
}
