package pappus.assessment;

import java.util.ArrayList;
import java.util.List;
import pappus.catalog.Role;
import pappus.compatibility.Fitting;
import pappus.physics.flight.Aircraft;

/** What everything beside the motors draws. */
final class Avionics {
  private Avionics() {}

  /** Watts at the battery: what hangs on a rail passes the regulator, what hangs on the pack does not. */
  static List<Draw> draws(Fitting fitting) {
    var scenario = fitting.scenario();
    var build = fitting.build();
    var draws = new ArrayList<Draw>();
    build.board().ifPresent(board -> {
      var inside = board.transmitter();
      var sending =
          inside == null ? 0 : inside.settingFor(scenario.milliwattsOrLowest()).watts();
      draws.add(new Draw(Role.BOARD.label(), behindRegulator(board.watts() + sending)));
    });
    build
        .transmitter()
        .ifPresent(part -> draws.add(draw(
            Role.TRANSMITTER, part.settingFor(scenario.milliwattsOrLowest()).watts(), fitting)));
    build.camera().ifPresent(part -> draws.add(draw(Role.CAMERA, part.watts(), fitting)));
    build.receiver().ifPresent(part -> draws.add(draw(Role.RECEIVER, part.watts(), fitting)));
    build.gps().ifPresent(part -> draws.add(draw(Role.GPS, part.watts(), fitting)));
    build
        .buzzer()
        .filter(part -> part.watts() > 0)
        .ifPresent(part -> draws.add(draw(Role.BUZZER, part.watts(), fitting)));
    build
        .payloadCamera()
        .filter(part -> part.watts() > 0)
        .ifPresent(part -> draws.add(draw(Role.PAYLOAD_CAMERA, part.watts(), fitting)));
    var payload = scenario.payload();
    if (payload != null && payload.watts() > 0) {
      draws.add(new Draw("payload", payload.watts()));
    }
    return draws;
  }

  private static Draw draw(Role role, double watts, Fitting fitting) {
    var straight = fitting.powerPlan().map(plan -> plan.fromPack(role)).orElse(false);
    return new Draw(role.label(), straight ? watts : behindRegulator(watts));
  }

  private static double behindRegulator(double watts) {
    return watts / Aircraft.DEFAULT_REGULATOR_EFFICIENCY;
  }
}
