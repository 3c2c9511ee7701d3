package pappus.answers.result;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import pappus.assessment.Assessment;
import pappus.fitting.PortPlan;
import pappus.fitting.PowerPlan;
import pappus.fitting.StackPlan;
import pappus.part.Part;
import pappus.part.Screw;

/** How a build is put together: places, balance, ports, feeds, screws, strap. */
final class InstallationJson {
  private InstallationJson() {}

  static Map<String, Object> of(Assessment assessment) {
    var content = new LinkedHashMap<String, Object>();
    var fitting = assessment.fitting();
    fitting.stackPlan().ifPresent(plan -> {
      content.put(
          "columns", plan.columns().stream().map(InstallationJson::column).toList());
      plan.height()
          .ifPresent(height -> content.put("innerHeightMillimetres", height.millimetres()));
      plan.heightLeftMillimetres().ifPresent(left -> content.put("heightLeftMillimetres", left));
    });
    fitting.placing().ifPresent(placing -> {
      var pack = new LinkedHashMap<String, Object>();
      pack.put("packXMillimetres", placing.packXMillimetres());
      pack.put("centreOfMassXMillimetres", placing.centreOfMassXMillimetres());
      pack.put("overhangMillimetres", placing.overhangMillimetres());
      placing
          .discClearanceMillimetres()
          .ifPresent(clearance -> pack.put("discClearanceMillimetres", clearance));
      content.put("balance", pack);
    });
    fitting.portPlan().ifPresent(plan -> {
      content.put("serialPorts", ports(plan));
      content.put("serialPortsFree", plan.free());
    });
    fitting.powerPlan().ifPresent(plan -> content.put("feeds", feeds(plan)));
    var armMillimetres = assessment.build().frame().map(frame -> frame.armThicknessMillimetres());
    fitting
        .hardware()
        .motorScrew()
        .ifPresent(
            screw -> content.put("motorScrew", motorScrew(screw, armMillimetres.orElseThrow())));
    fitting.hardware().strap().ifPresent(strap -> content.put("strap", strap.id()));
    return content;
  }

  private static Map<String, Object> column(StackPlan.Column column) {
    var content = new LinkedHashMap<String, Object>();
    content.put("position", column.position().name());
    content.put("xMillimetres", column.position().xMillimetres());
    content.put("neededMillimetres", column.neededMillimetres());
    content.put("adapters", column.adapters().stream().map(Part::id).toList());
    content.put(
        "fromBottom", column.layers().stream().map(InstallationJson::layer).toList());
    return content;
  }

  private static Map<String, Object> layer(StackPlan.Layer layer) {
    var content = new LinkedHashMap<String, Object>();
    content.put("role", layer.what().key());
    content.put("part", layer.partId());
    content.put("turned", layer.turned());
    return content;
  }

  private static List<Map<String, Object>> ports(PortPlan plan) {
    return plan.assigned().stream()
        .map(assigned -> {
          Map<String, Object> content = new LinkedHashMap<>();
          content.put("port", assigned.port());
          content.put("role", assigned.role().key());
          content.put("half", assigned.half());
          return content;
        })
        .toList();
  }

  private static List<Map<String, Object>> feeds(PowerPlan plan) {
    return plan.feeds().stream()
        .map(feed -> {
          Map<String, Object> content = new LinkedHashMap<>();
          content.put("role", feed.consumer().key());
          content.put("watts", feed.watts());
          feed.railVolts()
              .ifPresentOrElse(
                  volts -> content.put("railVolts", volts), () -> content.put("from", "pack"));
          return content;
        })
        .toList();
  }

  private static Map<String, Object> motorScrew(Screw screw, double armMillimetres) {
    var content = new LinkedHashMap<String, Object>();
    content.put("part", screw.id());
    content.put("thread", screw.thread().label());
    content.put("lengthMillimetres", screw.lengthMillimetres());
    content.put("intoMotorMillimetres", screw.lengthMillimetres() - armMillimetres);
    return content;
  }
}
