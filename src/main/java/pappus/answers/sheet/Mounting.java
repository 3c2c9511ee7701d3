package pappus.answers.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import pappus.answers.build.ArmWords;
import pappus.answers.build.BuildLines;
import pappus.answers.build.OrderWords;
import pappus.answers.build.SightWords;
import pappus.assessment.Assessment;
import pappus.compatibility.Clearance;
import pappus.compatibility.Clearances;
import pappus.document.Table;
import pappus.fitting.Fitting;
import pappus.fitting.Hardware;
import pappus.fitting.StackPlan;
import pappus.part.Adapter;
import pappus.part.Part;
import pappus.part.Role;
import pappus.part.SmallThing;
import pappus.part.Sundry;
import pappus.quantity.Sentence;

/** Where things go on the frame, and what holds them. */
final class Mounting {
  private final Assessment assessment;
  private final Fitting fitting;
  private final List<Clearance> clearances;

  Mounting(Assessment assessment) {
    this.assessment = assessment;
    this.fitting = assessment.fitting();
    this.clearances = Clearances.of(fitting);
  }

  /** Boards from bottom to top, with what is between them. */
  SheetSection stack() {
    var rows = new ArrayList<List<Object>>();
    var says = new ArrayList<String>();
    fitting.stackPlan().ifPresent(plan -> {
      for (var column : plan.columns()) {
        var number = 0;
        for (var slice : column.slices()) {
          number++;
          rows.add(List.of(
              column.position().name(),
              column.position().xMillimetres(),
              number,
              slice.millimetres(),
              what(slice, column)));
        }
        says.add(BenchWords.height(column, plan.height()));
      }
      plan.notes().stream().map(Sentence::text).forEach(says::add);
    });
    return new SheetSection(
        "stack",
        "Stack, from bottom to top",
        new Table(
            List.of(
                Table.Column.text("position", "position"),
                Table.Column.number("mm forward", "x_mm", 0),
                Table.Column.number("from bottom", "from_bottom", 0),
                Table.Column.number("mm high", "height_mm", 1),
                Table.Column.text("what", "what")),
            rows),
        says);
  }

  private String what(StackPlan.Slice slice, StackPlan.Column column) {
    return switch (slice.filling()) {
      case BOARD ->
        column.layers().stream()
            .filter(layer -> layer.partId().equals(slice.partId()))
            .findFirst()
            .map(layer -> layer.what().label()
                + ", "
                + named(fitting.build().part(layer.what()), slice.partId())
                + (layer.turned() ? ", on its corner" : ""))
            .orElse(slice.partId());
      case ADAPTER ->
        "adapter, "
            + named(
                column.adapters().stream()
                    .filter(adapter -> adapter.id().equals(slice.partId()))
                    .map(Part.class::cast)
                    .findFirst(),
                slice.partId());
      case SPACER_TO_CARBON, SPACER_BETWEEN_BOARDS, PLUG_ROOM, SPARE ->
        BenchWords.filling(slice.filling());
    };
  }

  private static String named(Optional<Part> part, String id) {
    return part.map(BenchTable::named).orElse(id);
  }

  /** Where along the frame. */
  SheetSection places() {
    var rows = new ArrayList<List<Object>>();
    var says = new ArrayList<String>();
    var build = fitting.build();
    build.frame().ifPresent(frame -> {
      if (build.fills(Role.CAMERA)) {
        rows.add(List.of(Role.CAMERA.label(), frame.cameraXMillimetres()));
      }
      fitting
          .stackPlan()
          .ifPresent(plan -> plan.columns()
              .forEach(column -> rows.add(List.of(
                  String.join(
                      " and ",
                      column.layers().stream()
                          .map(layer -> layer.what().label())
                          .toList()),
                  column.position().xMillimetres()))));
      fitting.placing().ifPresent(placing -> {
        rows.add(List.of("middle of the pack", placing.packXMillimetres()));
        rows.add(List.of("centre of mass with it there", placing.centreOfMassXMillimetres()));
        says.add(BuildLines.pack(placing.packXMillimetres())
            + " "
            + BenchWords.bay(frame.bay().place(), placing));
      });
      ArmWords.sentence(assessment).ifPresent(says::add);
      SightWords.sentence(assessment).ifPresent(says::add);
    });
    return new SheetSection(
        "places",
        "Where the pack goes, and what else has a place along the frame",
        new Table(
            List.of(
                Table.Column.text("what", "what"),
                Table.Column.number("mm forward of the middle of the motors", "x_mm", 0)),
            rows),
        says);
  }

  /** Screws by place, and what else holds. */
  SheetSection screws() {
    var rows = new ArrayList<List<Object>>();
    var build = fitting.build();
    for (var item : fitting.hardware().items()) {
      var part = item.part();
      if (part.equals(fitting.hardware().motorScrew().map(Part.class::cast)) && part.isPresent()) {
        fitting.hardware().motorScrew().ifPresent(screw -> {
          var depth = clearance("screw-depth");
          rows.add(List.of(
              item.label(),
              screw.thread().label(),
              screw.lengthMillimetres(),
              item.pieces(),
              depth.<Object>map(Clearance::value).orElse(""),
              depth.<Object>map(one -> one.bound() - one.value()).orElse(""),
              BenchTable.named(screw) + ", " + screw.material().name().toLowerCase(Locale.ROOT)));
        });
      } else if (holds(item)) {
        var seat = item.label().startsWith("propeller")
            ? build
                .motor()
                .map(motor -> ", a set for all motors: " + motor.propellerSeat().label())
                .orElse("")
            : "";
        rows.add(List.of(
            item.label(),
            "",
            "",
            item.pieces(),
            "",
            "",
            part.map(BenchTable::named).orElse("none in the catalogue, counted at a usual mass")
                + seat));
      }
    }
    var says = new ArrayList<>(List.of(BenchWords.SCREWS));
    OrderWords.kit(assessment).ifPresent(says::add);
    fitting
        .hardware()
        .strap()
        .ifPresent(strap -> rows.add(List.of(
            SmallThing.BATTERY_STRAP.label(),
            "",
            strap.lengthMillimetres(),
            1,
            "",
            clearance("strap-length")
                .<Object>map(one -> one.bound() - one.value())
                .orElse(""),
            BenchTable.named(strap)
                + clearance("strap-length")
                    .map(one -> BenchWords.strap(one.value()))
                    .orElse(""))));
    return new SheetSection(
        "screws",
        "Screws, and what else holds it together",
        new Table(
            List.of(
                Table.Column.text("place", "place"),
                Table.Column.text("thread", "thread"),
                Table.Column.number("mm long", "length_mm", 0),
                Table.Column.number("pieces", "pieces", 0),
                Table.Column.number("mm into the motor", "depth_mm", 1),
                Table.Column.number("mm left", "left_mm", 1),
                Table.Column.text("what", "what")),
            rows),
        says);
  }

  private static boolean holds(Hardware.Item item) {
    return item.part().isEmpty()
        ? item.label().startsWith("propeller") || item.label().startsWith("stack")
        : item.part().filter(Adapter.class::isInstance).isPresent()
            || item.part()
                .filter(Sundry.class::isInstance)
                .map(Sundry.class::cast)
                .filter(sundry -> sundry.purpose() != Sundry.Purpose.BATTERY_PAD
                    && sundry.purpose() != Sundry.Purpose.SOLDER_AND_TIES)
                .isPresent();
  }

  private Optional<Clearance> clearance(String id) {
    return clearances.stream().filter(one -> one.id().equals(id)).findFirst();
  }
}
