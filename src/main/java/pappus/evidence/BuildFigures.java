package pappus.evidence;

import java.util.ArrayList;
import java.util.List;
import pappus.part.Build;
import pappus.part.Part;

/** What counts of the parts of a build. */
public record BuildFigures(
    MotorFigures motor, PropellerFigures propeller, BatteryFigures battery, BoardFigures board) {

  /** A figure and the part whose it is. */
  public record Of(Part part, Figure figure) {}

  /** Every figure, motor first. */
  public List<Of> all(Build build) {
    var figures = new ArrayList<Of>();
    var motorPart = build.motor().orElseThrow();
    figures.add(new Of(motorPart, motor.winding()));
    figures.add(new Of(motorPart, motor.noLoad()));
    var propellerPart = build.propeller().orElseThrow();
    figures.add(new Of(propellerPart, propeller.thrust()));
    figures.add(new Of(propellerPart, propeller.merit()));
    var batteryPart = build.battery().orElseThrow();
    figures.add(new Of(batteryPart, battery.cellResistance()));
    figures.add(new Of(batteryPart, battery.delivered()));
    board
        .controllerLoss()
        .ifPresent(loss -> figures.add(new Of(build.board().orElseThrow(), loss)));
    return figures;
  }
}
