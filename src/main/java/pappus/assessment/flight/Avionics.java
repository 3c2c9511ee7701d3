package pappus.assessment.flight;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;
import org.jspecify.annotations.Nullable;
import pappus.fitting.Fitting;
import pappus.fitting.PowerPlanner;
import pappus.links.Links;
import pappus.part.Battery;
import pappus.part.Board;
import pappus.part.Build;
import pappus.part.Buzzer;
import pappus.part.Camera;
import pappus.part.Gps;
import pappus.part.Part;
import pappus.part.PayloadCamera;
import pappus.part.Receiver;
import pappus.part.Role;
import pappus.part.Transmitter;
import pappus.part.VideoSender;
import pappus.part.VoltWindow;
import pappus.physics.flight.Aircraft;
import pappus.scenario.Scenario;

/** What everything beside the motors draws. */
public final class Avionics {
  private Avionics() {}

  /** Watts at the battery: what hangs on a rail passes the regulator, what hangs on the pack does not. */
  public static List<Draw> draws(Fitting fitting) {
    var scenario = fitting.scenario();
    var build = fitting.build();
    var draws = new ArrayList<Draw>();
    build.board().ifPresent(board -> {
      var inside = board.transmitter();
      var sending = inside == null ? 0 : fitting.setting(inside).watts();
      draws.add(new Draw(Role.BOARD.label(), behindRegulator(board.watts() + sending)));
    });
    build
        .transmitter()
        .ifPresent(
            part -> draws.add(draw(Role.TRANSMITTER, fitting.setting(part).watts(), fitting)));
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
    var lump = scenario.lump();
    if (lump != null && lump.watts() > 0) {
      draws.add(new Draw(lump.name(), lump.watts()));
    }
    var payload = scenario.payload();
    if (payload != null && payload.watts() > 0) {
      draws.add(new Draw("payload", payload.watts()));
    }
    return draws;
  }

  /** Least watts at the battery that a part can add, however it is fed in the end. */
  public static double least(Part part, Battery battery, Links links) {
    return watts(
        part, battery, links, sender -> links.setting(sender, Build.empty()).watts());
  }

  /** The same with the most that a video transmitter may be set to. */
  public static double leastWithMostVideo(Part part, Battery battery, Links links) {
    return watts(part, battery, links, links::mostWatts);
  }

  private static double watts(
      Part part, Battery battery, Links links, ToDoubleFunction<VideoSender> sending) {
    var scenario = links.scenario();
    if (part instanceof Board board) {
      var inside = board.transmitter();
      return behindRegulator(board.watts() + (inside == null ? 0 : sending.applyAsDouble(inside)));
    }
    if (part instanceof Transmitter sender) {
      return least(sending.applyAsDouble(sender), sender.input(), battery, scenario);
    }
    if (part instanceof Camera camera) {
      return least(camera.watts(), camera.input(), battery, scenario);
    }
    if (part instanceof Receiver receiver) {
      return least(receiver.watts(), receiver.input(), battery, scenario);
    }
    if (part instanceof Gps gps) {
      return least(gps.watts(), gps.input(), battery, scenario);
    }
    if (part instanceof PayloadCamera camera) {
      return least(camera.watts(), camera.input(), battery, scenario);
    }
    return part instanceof Buzzer buzzer ? behindRegulator(buzzer.watts()) : 0;
  }

  private static double least(
      double watts, @Nullable VoltWindow input, Battery battery, Scenario scenario) {
    return input != null && PowerPlanner.takesPack(input, battery, scenario)
        ? watts
        : behindRegulator(watts);
  }

  private static Draw draw(Role role, double watts, Fitting fitting) {
    var straight = fitting.powerPlan().map(plan -> plan.fromPack(role)).orElse(false);
    return new Draw(role.label(), straight ? watts : behindRegulator(watts));
  }

  private static double behindRegulator(double watts) {
    return watts / Aircraft.DEFAULT_REGULATOR_EFFICIENCY;
  }
}
