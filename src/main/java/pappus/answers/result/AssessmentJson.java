package pappus.answers.result;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import pappus.answers.build.Cautions;
import pappus.answers.build.Hints;
import pappus.answers.build.Journey;
import pappus.answers.build.Reasons;
import pappus.assessment.Assessment;
import pappus.assessment.Limit;
import pappus.assessment.MassTable;
import pappus.assessment.flight.Course;
import pappus.assessment.flight.FlightEstimate;
import pappus.part.Part;
import pappus.scenario.Scenario;

/** One build with every digit. */
public final class AssessmentJson {
  private final Scenario scenario;

  public AssessmentJson(Scenario scenario) {
    this.scenario = scenario;
  }

  /**
   * Everything.
   *
   * @param planWith share of the estimate to plan with
   * @param parts gains those that are named by id
   */
  public Map<String, Object> content(
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
      content.put("flight", FlightJson.of(flight, assessment, scenario, planWith));
      content.put("figures", DoubtJson.figures(assessment.build()));
    });
    assessment.whyNoFlight().ifPresent(why -> content.put("whyNoFlight", why));
    content.put(
        "limits", assessment.limits().stream().map(AssessmentJson::limit).toList());
    assessment.tightest().ifPresent(limit -> content.put("binds", limit.id()));
    content.put("findings", findings(assessment));
    content.put("installation", InstallationJson.of(assessment));
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
      reasons.addAll(Hints.of(assessment));
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

  private static Map<String, Object> massLine(MassTable.Line line, Map<String, Part> parts) {
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
      content.put("atHand", line.fromHand());
      content.put("units", line.units());
      content.put("cents", line.cents());
      content.put("currency", line.part().price().currency());
      content.put("owned", line.owned());
      lines.add(content);
    }
    cost.put("lines", lines);
    return cost;
  }

  /** Parts by role. */
  public static Map<String, Object> roles(Assessment assessment, Map<String, Part> parts) {
    var roles = new LinkedHashMap<String, Object>();
    assessment.build().parts().forEach((role, part) -> {
      parts.put(part.id(), part);
      roles.put(role.key(), part.id());
    });
    return roles;
  }

  /** Metres over ground, where the flight leads anywhere. */
  public static Optional<Double> range(Assessment assessment) {
    return assessment
        .flight()
        .filter(flight -> flight.course().filter(Course::coversGround).isPresent())
        .map(FlightEstimate::rangeMetres);
  }

  static Map<String, Object> limit(Limit limit) {
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
}
