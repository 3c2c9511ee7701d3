package pappus.answers.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import pappus.assessment.Assessment;
import pappus.document.Table;
import pappus.fitting.Fitting;
import pappus.fitting.PowerPlan;
import pappus.part.Antenna;
import pappus.part.AntennaPort;
import pappus.part.Battery;
import pappus.part.Board;
import pappus.part.Role;

/** What is wired to what. */
final class Wiring {
  private final Fitting fitting;

  Wiring(Assessment assessment) {
    this.fitting = assessment.fitting();
  }

  /** Serial ports, taken and free. */
  SheetSection ports() {
    var rows = new ArrayList<List<Object>>();
    fitting.portPlan().ifPresent(plan -> {
      for (var one : plan.assigned()) {
        rows.add(List.of(one.port(), one.half() ? "one direction" : "both", part(one.role())));
      }
      for (var i = 1; i <= plan.free(); i++) {
        rows.add(List.of(plan.assigned().size() + i, "", "free"));
      }
    });
    return new SheetSection(
        "ports",
        "Serial ports",
        new Table(
            List.of(
                Table.Column.number("port", "port", 0),
                Table.Column.text("directions", "directions"),
                Table.Column.text("what", "what")),
            rows),
        List.of(BenchWords.PORTS));
  }

  private String part(Role role) {
    return role.label()
        + fitting.build().part(role).map(part -> ", " + BenchTable.named(part)).orElse("");
  }

  /** Rails of the board, and what hangs straight on the pack. */
  SheetSection rails() {
    var rows = new ArrayList<List<Object>>();
    var build = fitting.build();
    if (build.board().isPresent() && fitting.powerPlan().isPresent()) {
      addRails(build.board().get(), fitting.powerPlan().get(), rows);
    }
    return new SheetSection(
        "rails",
        "Who is fed from where",
        new Table(
            List.of(
                Table.Column.text("from", "source"),
                Table.Column.number("V", "volts", 1),
                Table.Column.number("W", "watts", 1),
                Table.Column.number("A", "amps", 2),
                Table.Column.number("A, a fifth more", "amps_with_margin", 2),
                Table.Column.number("delivers A", "delivers_amps", 1),
                Table.Column.number("A left", "left_amps", 2),
                Table.Column.text("who", "who")),
            rows),
        List.of(BenchWords.RAILS));
  }

  private static void addRails(Board board, PowerPlan plan, List<List<Object>> rows) {
    var used = plan.rails(board);
    for (var rail : used) {
      rows.add(List.of(
          "rail",
          rail.volts(),
          rail.amps() * rail.volts(),
          rail.amps(),
          rail.ampsWithMargin(),
          rail.deliversAmps(),
          rail.deliversAmps() - rail.ampsWithMargin(),
          rail.consumers().stream().map(Role::label).collect(Collectors.joining(", "))));
    }
    for (var idle : board.regulators()) {
      if (used.stream().noneMatch(rail -> rail.volts() == idle.volts())) {
        rows.add(List.of(
            "rail",
            idle.volts(),
            0.0,
            0.0,
            0.0,
            idle.continuousAmps(),
            idle.continuousAmps(),
            "nobody"));
      }
    }
    var straight =
        plan.feeds().stream().filter(feed -> feed.railVolts().isEmpty()).toList();
    var labels = new ArrayList<>(List.of(Role.BOARD.label(), Role.MOTOR.label() + "s"));
    straight.forEach(feed -> labels.add(feed.consumer().label()));
    rows.add(List.of(
        "pack",
        "",
        board.watts() + straight.stream().mapToDouble(PowerPlan.Feed::watts).sum(),
        "",
        "",
        "",
        "",
        String.join(", ", labels)));
  }

  /** Wires by gauge and length. */
  SheetSection wires() {
    var rows = new ArrayList<List<Object>>();
    var build = fitting.build();
    fitting
        .hardware()
        .motorWire()
        .ifPresent(wire -> rows.add(List.of(
            "motor to board",
            wire.gauge(),
            wire.wires(),
            wire.neededMillimetres(),
            wire.includedMillimetres(),
            BenchWords.cut(wire.missingMillimetres()))));
    build
        .battery()
        .ifPresent(pack -> rows.add(List.of(
            "pack to its plug",
            pack.leadGauge(),
            2,
            pack.leadMillimetres(),
            pack.leadMillimetres(),
            pack.massIncludesLeads() ? "" : "not in the pack's mass as listed")));
    build
        .board()
        .map(Board::plug)
        .ifPresent(plug -> rows.add(List.of(
            "board to its plug", plug.gauge(), 2, plug.millimetres(), plug.millimetres(), "")));
    build
        .lead()
        .ifPresent(lead -> rows.add(List.of(
            "battery lead",
            lead.gauge(),
            2,
            lead.millimetres(),
            lead.millimetres(),
            BenchTable.named(lead))));
    return new SheetSection(
        "wires",
        "Wires",
        new Table(
            List.of(
                Table.Column.text("from and to", "what"),
                Table.Column.number("AWG", "awg", 0),
                Table.Column.number("wires", "wires", 0),
                Table.Column.number("mm needed", "needed_mm", 0),
                Table.Column.number("mm it comes with", "included_mm", 0),
                Table.Column.text("to do", "to_do")),
            rows),
        List.of(BenchWords.WIRES));
  }

  /** Between pack and board, from plug to plug. */
  SheetSection connectors() {
    var rows = new ArrayList<List<Object>>();
    var build = fitting.build();
    build
        .battery()
        .map(Battery::connector)
        .ifPresent(plug -> rows.add(List.of("pack", plug.label(), plug.continuousAmps(), "")));
    build.lead().ifPresent(lead -> {
      var atBoard = lead.boardSide();
      rows.add(List.of(
          "lead, towards the pack",
          lead.batterySide().label(),
          lead.batterySide().continuousAmps(),
          BenchTable.named(lead)));
      rows.add(List.of(
          "lead, towards the board",
          atBoard == null ? "soldered to the pads" : atBoard.label(),
          atBoard == null ? "" : (Object) atBoard.continuousAmps(),
          BenchTable.named(lead)));
    });
    build.board().ifPresent(board -> {
      var plug = board.plug();
      rows.add(List.of(
          "board",
          plug == null ? "bare pads" : plug.connector().label(),
          plug == null ? "" : (Object) plug.connector().continuousAmps(),
          ""));
    });
    build
        .capacitor()
        .ifPresent(part -> rows.add(
            List.of("capacitor", "soldered at the battery pads", "", BenchTable.named(part))));
    return new SheetSection(
        "connectors",
        "Battery connectors",
        new Table(
            List.of(
                Table.Column.text("at", "at"),
                Table.Column.text("plug", "plug"),
                Table.Column.number("A continuous", "continuous_amps", 0),
                Table.Column.text("part", "part")),
            rows),
        List.of(BenchWords.CONNECTORS));
  }

  /** Every antenna port, and what goes on it. */
  SheetSection antennas() {
    var rows = new ArrayList<List<Object>>();
    var build = fitting.build();
    build
        .videoSender()
        .ifPresent(sender -> addAntennas(
            Role.TRANSMITTER.label(),
            sender.antenna(),
            build.videoAntenna(),
            "comes with its transmitter",
            rows));
    build
        .radioReceiver()
        .ifPresent(radio -> addAntennas(
            Role.RECEIVER.label(),
            radio.antenna(),
            build.radioAntenna(),
            radio.antennaFixed() ? "fixed to its receiver" : "none chosen",
            rows));
    return new SheetSection(
        "antennas",
        "Antennas",
        new Table(
            List.of(
                Table.Column.text("port of", "at"),
                Table.Column.number("port", "port", 0),
                Table.Column.text("plug", "plug"),
                Table.Column.text("band", "band"),
                Table.Column.text("polarisation", "polarisation"),
                Table.Column.text("antenna", "antenna")),
            rows),
        rows.isEmpty() ? List.of() : List.of(BenchWords.ANTENNAS));
  }

  private static void addAntennas(
      String label,
      AntennaPort port,
      Optional<Antenna> antenna,
      String without,
      List<List<Object>> rows) {
    var plug = port.connector();
    for (var i = 1; i <= port.count(); i++) {
      rows.add(List.of(
          label,
          i,
          plug == null ? "not known" : plug.label(),
          port.band().label(),
          antenna.map(part -> part.polarisation().label()).orElse(""),
          antenna.map(BenchTable::named).orElse(without)));
    }
  }
}
