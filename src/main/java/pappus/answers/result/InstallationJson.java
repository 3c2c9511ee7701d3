package pappus.answers.result;

import com.fasterxml.jackson.annotation.JsonPropertyDescription;
import java.util.List;
import java.util.Optional;
import pappus.assessment.Assessment;
import pappus.fitting.Placing;
import pappus.fitting.PortPlan;
import pappus.fitting.PowerPlan;
import pappus.fitting.StackPlan;
import pappus.part.Frame;
import pappus.part.Part;
import pappus.part.Role;

/** How a build is put together: places, balance, ports, feeds, screws, strap. */
record InstallationJson(
    @JsonPropertyDescription("Parts one above the other.") Optional<List<Column>> columns,

    @JsonPropertyDescription("Height between the plates to order, mm.")
    Optional<Double> innerHeightMillimetres,

    @JsonPropertyDescription("Height left under the top plate, mm.")
    Optional<Double> heightLeftMillimetres,

    @JsonPropertyDescription("Where the pack goes.") Optional<Balance> balance,
    @JsonPropertyDescription("Serial ports in use.") Optional<List<Port>> serialPorts,
    @JsonPropertyDescription("Serial ports left.") Optional<Integer> serialPortsFree,
    @JsonPropertyDescription("What feeds what.") Optional<List<Feed>> feeds,
    @JsonPropertyDescription("Screws of the motors.") Optional<MotorScrew> motorScrew,
    @JsonPropertyDescription("Id of the strap.") Optional<String> strap) {
  /** Parts one above the other on four screws. */
  record Column(
      @JsonPropertyDescription("Front, middle, rear, ….") String position,

      @JsonPropertyDescription("Its middle, mm forward of the motor centre.")
      double xMillimetres,

      @JsonPropertyDescription("Height it needs, mm.") double neededMillimetres,
      @JsonPropertyDescription("Ids of what makes it fit.") List<String> adapters,
      @JsonPropertyDescription("Boards from bottom to top.") List<Layer> fromBottom) {
    static Column of(StackPlan.Column column) {
      return new Column(
          column.position().name(),
          column.position().xMillimetres(),
          column.neededMillimetres(),
          column.adapters().stream().map(Part::id).toList(),
          column.layers().stream().map(Layer::of).toList());
    }
  }

  /** One board in a column. */
  record Layer(
      @JsonPropertyDescription("What it does.") Role role,
      @JsonPropertyDescription("Id of the part.") String part,

      @JsonPropertyDescription("Whether it stands on its corner.")
      boolean turned) {
    static Layer of(StackPlan.Layer layer) {
      return new Layer(layer.what(), layer.partId(), layer.turned());
    }
  }

  /** Where the pack goes, mm forward of the motor centre. */
  record Balance(
      @JsonPropertyDescription("Middle of the pack, mm forward.")
      double packXMillimetres,

      @JsonPropertyDescription("Centre of mass then, mm forward.")
      double centreOfMassXMillimetres,

      @JsonPropertyDescription("How far the pack reaches beyond the bay, mm.")
      double overhangMillimetres,

      @JsonPropertyDescription("In plan from the pack to the nearest propeller disc, mm.")
      Optional<Double> discClearanceMillimetres) {
    static Balance of(Placing placing) {
      return new Balance(
          placing.packXMillimetres(),
          placing.centreOfMassXMillimetres(),
          placing.overhangMillimetres(),
          placing.discClearanceMillimetres());
    }
  }

  /** A serial port in use. */
  record Port(
      @JsonPropertyDescription("Its number.") int port,
      @JsonPropertyDescription("What is on it.") Role role,

      @JsonPropertyDescription("Whether it uses one direction only.")
      boolean half) {
    static Port of(PortPlan.Assigned assigned) {
      return new Port(assigned.port(), assigned.role(), assigned.half());
    }
  }

  /** What feeds one consumer. */
  record Feed(
      @JsonPropertyDescription("What is fed.") Role role,
      @JsonPropertyDescription("What it draws, W.") double watts,

      @JsonPropertyDescription("Of the rail that feeds it, V.")
      Optional<Double> railVolts,

      @JsonPropertyDescription("\"pack\" where no rail does.")
      Optional<String> from) {
    static Feed of(PowerPlan.Feed feed) {
      return new Feed(
          feed.consumer(),
          feed.watts(),
          feed.railVolts(),
          feed.railVolts().isPresent() ? Optional.empty() : Optional.of("pack"));
    }
  }

  /** Screws that hold the motors. */
  record MotorScrew(
      @JsonPropertyDescription("Id of the part.") String part,
      @JsonPropertyDescription("Thread.") String thread,
      @JsonPropertyDescription("Length, mm.") double lengthMillimetres,
      @JsonPropertyDescription("Into the motor, mm.") double intoMotorMillimetres) {}

  static InstallationJson of(Assessment assessment) {
    var fitting = assessment.fitting();
    var stack = fitting.stackPlan();
    var ports = fitting.portPlan();
    var arm = assessment.build().frame().map(Frame::armThicknessMillimetres);
    return new InstallationJson(
        stack.map(plan -> plan.columns().stream().map(Column::of).toList()),
        stack.flatMap(StackPlan::height).map(Frame.PlateHeight::millimetres),
        stack.flatMap(StackPlan::heightLeftMillimetres),
        fitting.placing().map(Balance::of),
        ports.map(plan -> plan.assigned().stream().map(Port::of).toList()),
        ports.map(PortPlan::free),
        fitting.powerPlan().map(plan -> plan.feeds().stream().map(Feed::of).toList()),
        fitting
            .hardware()
            .motorScrew()
            .map(screw -> new MotorScrew(
                screw.id(),
                screw.thread().label(),
                screw.lengthMillimetres(),
                screw.lengthMillimetres() - arm.orElseThrow())),
        fitting.hardware().strap().map(Part::id));
  }
}
