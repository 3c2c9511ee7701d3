package pappus.report;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import pappus.assessment.Assessment;
import pappus.assessment.Course;
import pappus.assessment.FlightEstimate;
import pappus.assessment.Heat;
import pappus.assessment.Limit;
import pappus.assessment.MassLine;
import pappus.catalog.Part;
import pappus.doubt.Band;
import pappus.explanation.Cautions;
import pappus.explanation.Journey;
import pappus.explanation.Reasons;
import pappus.files.JsonText;
import pappus.ranking.Candidate;
import pappus.ranking.Ranking;
import pappus.scenario.Scenario;
import pappus.search.Ending;

/** Results as JSON with every digit; later commands work from it. */
public final class RankingJson {
  private final Scenario scenario;
  private final Run run;

  public RankingJson(Scenario scenario, Run run) {
    this.scenario = scenario;
    this.run = run;
  }

  /** The whole answer. */
  public String of(Ranking ranking) {
    var document = head(status(ranking));
    var coverage = ranking.coverage();
    var standing = new LinkedHashMap<String, Object>();
    standing.put("proven", coverage.isProof());
    standing.put("text", RankingText.coverage(coverage, scenario.goalOrEndurance()));
    standing.put("assessed", coverage.assessed());
    standing.put("feasible", coverage.feasible());
    standing.put("combinations", coverage.combinations());
    standing.put("endedBy", key(coverage.ending()));
    document.put("standing", standing);
    var parts = new TreeMap<String, Part>();
    var candidates = new ArrayList<Object>();
    var rows = ranking.candidates();
    for (var i = 0; i < rows.size(); i++) {
      candidates.add(candidate(i, rows, parts));
    }
    document.put("candidates", candidates);
    ranking.closest().ifPresent(closest -> document.put("closest", assessment(closest, 1, parts)));
    return finish(document, parts);
  }

  /** One build. */
  public String of(Assessment assessment, java.util.Optional<Band> band) {
    var document = head(assessment.isFeasible() ? "feasible" : "infeasible");
    var parts = new TreeMap<String, Part>();
    var content = assessment(assessment, band.map(Band::planWith).orElse(1.0), parts);
    band.ifPresent(found -> content.put("band", band(found)));
    document.put("build", content);
    return finish(document, parts);
  }

  /** What a machine reads where the input was refused. */
  public static String refusal(List<String> problems) {
    var document = new LinkedHashMap<String, Object>();
    document.put("status", "bad-data");
    document.put("problems", problems);
    return JsonText.of(document);
  }

  private static String status(Ranking ranking) {
    if (ranking.coverage().ending() == Ending.INTERRUPTED) {
      return "interrupted";
    }
    return ranking.candidates().isEmpty() ? "infeasible" : "found";
  }

  private Map<String, Object> head(String status) {
    var document = new LinkedHashMap<String, Object>();
    document.put("status", status);
    document.put("tool", run.version());
    document.put("seed", run.seed());
    document.put("moves", run.moves());
    document.put("catalogs", run.catalogs());
    document.put("inputs", run.inputs());
    document.put("scenario", scenario);
    return document;
  }

  private String finish(Map<String, Object> document, Map<String, Part> parts) {
    document.put("parts", parts);
    return JsonText.of(document);
  }

  private Object candidate(int index, List<Candidate> rows, Map<String, Part> parts) {
    var row = rows.get(index);
    var content = new LinkedHashMap<String, Object>();
    content.put("rank", index + 1);
    row.equalTo().ifPresent(head -> content.put("equalTo", head));
    content.put("cheapestOfGroup", row.cheapestOfGroup());
    content.putAll(assessment(row.assessment(), row.band().planWith(), parts));
    content.put("band", band(row.band()));
    if (index + 1 < rows.size()) {
      content.put("standsBecause", Reasons.standing(row, rows.get(index + 1)));
    }
    var variants = new ArrayList<Object>();
    for (var variant : row.variants()) {
      var one = new LinkedHashMap<String, Object>();
      one.put("build", variant.build().toString());
      one.put("milliseconds", variant.milliseconds());
      range(variant).ifPresent(metres -> one.put("rangeMetres", metres));
      one.put("grams", variant.mass().grams());
      one.put("cents", variant.cost().cents());
      one.put("roles", roles(variant, parts));
      variants.add(one);
    }
    content.put("variants", variants);
    return content;
  }

  private Map<String, Object> band(Band band) {
    return DoubtJson.band(band, scenario.goalOrEndurance());
  }

  private static Map<String, Object> roles(Assessment assessment, Map<String, Part> parts) {
    var roles = new LinkedHashMap<String, Object>();
    assessment.build().parts().forEach((role, part) -> {
      parts.put(part.id(), part);
      roles.put(role.key(), part.id());
    });
    return roles;
  }

  private Map<String, Object> assessment(
      Assessment assessment, double planWith, Map<String, Part> parts) {
    var content = new LinkedHashMap<String, Object>();
    content.put("build", assessment.build().toString());
    content.put("feasible", assessment.isFeasible());
    content.put("roles", roles(assessment, parts));
    content.put("milliseconds", assessment.milliseconds());
    range(assessment).ifPresent(metres -> content.put("rangeMetres", metres));
    content.put("mass", mass(assessment, parts));
    content.put("cost", cost(assessment, parts));
    assessment.flight().ifPresent(flight -> {
      content.put("flight", flight(flight, assessment, planWith));
      content.put("figures", DoubtJson.figures(assessment.build()));
    });
    assessment.whyNoFlight().ifPresent(why -> content.put("whyNoFlight", why));
    content.put("limits", assessment.limits().stream().map(RankingJson::limit).toList());
    assessment.tightest().ifPresent(limit -> content.put("binds", limit.id()));
    content.put("findings", findings(assessment));
    content.put("installation", installation(assessment));
    content.put("reasons", reasons(assessment, planWith));
    content.put("cautions", Cautions.of(assessment, scenario));
    return content;
  }

  private static List<String> reasons(Assessment assessment, double planWith) {
    var reasons = new ArrayList<String>();
    reasons.add(Reasons.binding(assessment));
    assessment.flight().ifPresent(flight -> {
      reasons.addAll(Journey.of(flight, planWith));
      reasons.add(Reasons.ending(flight));
      Reasons.cap(flight).ifPresent(reasons::add);
      reasons.addAll(flight.hints());
    });
    return reasons;
  }

  private Map<String, Object> mass(Assessment assessment, Map<String, Part> parts) {
    var mass = new LinkedHashMap<String, Object>();
    mass.put("grams", assessment.mass().grams());
    mass.put("doubtGrams", assessment.mass().doubtGrams());
    mass.put("chanceUnderCap", assessment.mass().chanceUnder(scenario.massCap()));
    mass.put(
        "lines",
        assessment.mass().lines().stream().map(line -> massLine(line, parts)).toList());
    return mass;
  }

  private static Map<String, Object> massLine(MassLine line, Map<String, Part> parts) {
    var content = new LinkedHashMap<String, Object>();
    content.put("what", line.label());
    line.part().ifPresent(part -> {
      parts.put(part.id(), part);
      content.put("part", part.id());
    });
    content.put("pieces", line.pieces());
    content.put("grams", line.grams());
    content.put("doubtGrams", line.doubtGrams());
    content.put("known", line.each().known());
    return content;
  }

  private static Map<String, Object> cost(Assessment assessment, Map<String, Part> parts) {
    var cost = new LinkedHashMap<String, Object>();
    cost.put("cents", assessment.cost().cents());
    var lines = new ArrayList<Object>();
    for (var line : assessment.cost().lines()) {
      parts.put(line.part().id(), line.part());
      var content = new LinkedHashMap<String, Object>();
      content.put("what", line.label());
      content.put("part", line.part().id());
      content.put("pieces", line.pieces());
      content.put("units", line.units());
      content.put("cents", line.cents());
      content.put("currency", line.part().price().currency());
      content.put("owned", line.owned());
      lines.add(content);
    }
    cost.put("lines", lines);
    return cost;
  }

  /** Metres over ground, where the flight leads anywhere. */
  private static java.util.Optional<Double> range(Assessment assessment) {
    return assessment
        .flight()
        .filter(flight -> flight.course().filter(Course::coversGround).isPresent())
        .map(FlightEstimate::rangeMetres);
  }

  private Map<String, Object> flight(
      FlightEstimate flight, Assessment assessment, double planWith) {
    var content = new LinkedHashMap<String, Object>();
    var endurance = flight.endurance();
    content.put("seconds", endurance.seconds());
    content.put("endsBy", key(endurance.ending()));
    content.put("usedMilliampHours", endurance.discharge().usedCoulomb() / 3.6);
    content.put("meanWatts", endurance.meanPowerW());
    content.put("startVolts", endurance.discharge().startVolts());
    content.put("endVolts", endurance.discharge().endVolts());
    content.put("startAmps", endurance.discharge().startA());
    content.put("endAmps", endurance.discharge().endA());
    content.put("style", scenario.flight().style());
    flight.course().ifPresent(course -> CourseJson.put(content, flight, course, planWith));
    var hover = new LinkedHashMap<String, Object>();
    hover.put("volts", flight.volts());
    hover.put("amps", flight.amps());
    hover.put("watts", flight.split().totalW());
    hover.put("throttle", flight.duty());
    hover.put("motorAmps", flight.hover().steady().point().currentA());
    hover.put("rpm", flight.hover().steady().point().speedRadPerS() * 30 / Math.PI);
    hover.put("momentumWatts", flight.hover().idealPowerW());
    hover.put("efficiency", flight.efficiency());
    content.put("hover", hover);
    content.put("powerSplit", flight.split());
    content.put("draws", flight.draws());
    content.put("beyondBelief", flight.beyondBelief());
    content.put("thrustToWeight", flight.thrustToWeight());
    content.put("freshThrustToWeight", flight.freshThrustToWeight());
    var full = new LinkedHashMap<String, Object>();
    full.put("thrustNewtons", flight.full().thrustN());
    full.put("throttle", flight.full().duty());
    full.put("cappedBy", key(flight.full().limit()));
    full.put("motorAmps", flight.full().point().currentA());
    full.put("amps", flight.full().busCurrentA());
    full.put("volts", flight.full().busVolts());
    content.put("fullThrottle", full);
    content.put("heat", CourseJson.heat(Heat.of(scenario, assessment)));
    content.put("continuousAmps", amps(flight.continuous()));
    content.put("burstAmps", amps(flight.burst()));
    return content;
  }

  /** Unknown ratings are left out: JSON has no infinity. */
  private static Map<String, Object> amps(pappus.physics.flight.Limits limits) {
    var content = new LinkedHashMap<String, Object>();
    put(content, "motor", limits.motorA());
    put(content, "controller", limits.controllerA());
    put(content, "pack", limits.packA());
    put(content, "plug", limits.connectorA());
    put(content, "lead", limits.leadA());
    return content;
  }

  private static void put(Map<String, Object> content, String name, double amps) {
    if (amps < Double.POSITIVE_INFINITY) {
      content.put(name, amps);
    }
  }

  private static Map<String, Object> limit(Limit limit) {
    var content = new LinkedHashMap<String, Object>();
    content.put("id", limit.id());
    content.put("unit", limit.unit());
    content.put("value", limit.value());
    content.put(limit.most() ? "atMost" : "atLeast", limit.bound());
    content.put("margin", limit.margin());
    content.put("met", limit.met());
    return content;
  }

  private static List<Object> findings(Assessment assessment) {
    var findings = new ArrayList<Object>();
    for (var finding : assessment.findings()) {
      var content = new LinkedHashMap<String, Object>();
      content.put("rule", finding.rule());
      finding
          .verdict()
          .<Void>match(
              fits -> {
                content.put("verdict", "fits");
                content.put(
                    "notes", fits.notes().stream().map(note -> note.text()).toList());
                return null;
              },
              clash -> {
                content.put("verdict", "clashes");
                content.put("reason", clash.reason().text());
                return null;
              },
              unknown -> {
                content.put("verdict", "unknown");
                content.put("missing", unknown.missingFact().text());
                return null;
              });
      finding.waiver().ifPresent(waiver -> content.put("setAside", waiver.reason()));
      content.put("breaks", finding.breaks());
      findings.add(content);
    }
    return findings;
  }

  private static Map<String, Object> installation(Assessment assessment) {
    var content = new LinkedHashMap<String, Object>();
    var fitting = assessment.fitting();
    fitting.stackPlan().ifPresent(plan -> {
      var columns = new ArrayList<Object>();
      for (var column : plan.columns()) {
        var one = new LinkedHashMap<String, Object>();
        one.put("position", column.position().name());
        one.put("xMillimetres", column.position().xMillimetres());
        one.put("neededMillimetres", column.neededMillimetres());
        one.put("adapters", column.adapters().stream().map(Part::id).toList());
        one.put(
            "fromBottom",
            column.layers().stream()
                .map(layer -> {
                  var entry = new LinkedHashMap<String, Object>();
                  entry.put("role", layer.what().key());
                  entry.put("part", layer.partId());
                  entry.put("turned", layer.turned());
                  return entry;
                })
                .toList());
        columns.add(one);
      }
      content.put("columns", columns);
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
      var ports = new ArrayList<Object>();
      plan.assigned().forEach(assigned -> {
        var one = new LinkedHashMap<String, Object>();
        one.put("port", assigned.port());
        one.put("role", assigned.role().key());
        one.put("half", assigned.half());
        ports.add(one);
      });
      content.put("serialPorts", ports);
      content.put("serialPortsFree", plan.free());
    });
    fitting.powerPlan().ifPresent(plan -> {
      var feeds = new ArrayList<Object>();
      plan.feeds().forEach(feed -> {
        var one = new LinkedHashMap<String, Object>();
        one.put("role", feed.consumer().key());
        one.put("watts", feed.watts());
        feed.railVolts()
            .ifPresentOrElse(volts -> one.put("railVolts", volts), () -> one.put("from", "pack"));
        feeds.add(one);
      });
      content.put("feeds", feeds);
    });
    var hardware = fitting.hardware();
    hardware.motorScrew().ifPresent(screw -> {
      var one = new LinkedHashMap<String, Object>();
      one.put("part", screw.id());
      one.put("thread", screw.thread().label());
      one.put("lengthMillimetres", screw.lengthMillimetres());
      one.put(
          "intoMotorMillimetres",
          screw.lengthMillimetres()
              - assessment.build().frame().orElseThrow().armThicknessMillimetres());
      content.put("motorScrew", one);
    });
    hardware.strap().ifPresent(strap -> content.put("strap", strap.id()));
    return content;
  }

  private static String key(Enum<?> constant) {
    return constant.name().toLowerCase(Locale.ROOT).replace('_', '-');
  }
}
