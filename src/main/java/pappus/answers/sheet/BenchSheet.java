package pappus.answers.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import pappus.answers.build.BuildWords;
import pappus.answers.build.Cautions;
import pappus.answers.build.Heading;
import pappus.answers.build.Hints;
import pappus.answers.build.Reasons;
import pappus.assessment.Assessment;
import pappus.assessment.Assessor;
import pappus.document.Table;
import pappus.doubt.Band;
import pappus.doubt.Doubts;
import pappus.scenario.Scenario;

/**
 * Everything that lies on the bench beside a build, as tables, steps and sentences.
 *
 * @param assessment of the build
 * @param heading what was asked for, and which build this is
 * @param remarks what is otherwise than the result told, and what is missing
 * @param bench tables for building
 * @param steps of the first power-up, in order
 * @param card tables for the first flights; empty for a build that does not fly
 * @param masses a row for each part on the scale, as {@code weigh} reads it
 * @param cautions that go with the build
 */
public record BenchSheet(
    Assessment assessment,
    List<String> heading,
    List<String> remarks,
    List<SheetSection> bench,
    List<String> steps,
    List<SheetSection> card,
    Table masses,
    List<String> cautions) {
  public BenchSheet {
    heading = List.copyOf(heading);
    remarks = List.copyOf(remarks);
    bench = List.copyOf(bench);
    steps = List.copyOf(steps);
    card = List.copyOf(card);
    cautions = List.copyOf(cautions);
  }

  /**
   * The sheet of a build.
   *
   * @param assessor who judged
   * @param name what the build is in its result
   * @param remarks what is otherwise than the result told
   */
  public static BenchSheet of(
      Assessment assessment, Assessor assessor, String name, List<String> remarks) {
    var scenario = assessor.scenario();
    var band = assessment
        .flight()
        .filter(flight -> flight.endurance().seconds() > 0)
        .map(flight -> new Doubts(assessor).band(assessment));
    var heading = new ArrayList<>(Heading.of(scenario));
    heading.add(name + ", " + BuildWords.of(assessment));
    var all = new ArrayList<>(remarks);
    all.addAll(missing(assessment, band));
    var mounting = new Mounting(assessment);
    var wiring = new Wiring(assessment);
    var weighing = new Weighing(assessment);
    return new BenchSheet(
        assessment,
        heading,
        all,
        List.of(
                weighing.purchases(band.map(Band::planWith).orElse(1.0)),
                weighing.section(),
                mounting.stack(),
                mounting.screws(),
                mounting.places(),
                wiring.wires(),
                wiring.connectors(),
                wiring.rails(),
                wiring.ports(),
                wiring.antennas())
            .stream()
            .filter(section -> !section.table().rows().isEmpty())
            .toList(),
        BenchWords.firstPowerUp(assessment, scenario),
        FlightCard.of(scenario, assessment, assessor.curves(assessment), band)
            .map(FlightCard::sections)
            .orElse(List.of()),
        weighing.masses(),
        cautions(assessment, scenario));
  }

  /** Those of every build, then what is to know of this one. */
  private static List<String> cautions(Assessment assessment, Scenario scenario) {
    var cautions = new ArrayList<>(Cautions.of(assessment, scenario));
    cautions.addAll(Reasons.findings(assessment));
    assessment.flight().ifPresent(flight -> cautions.addAll(Hints.of(assessment)));
    return cautions;
  }

  /** What keeps this from being the sheet of a build that flies. */
  private static List<String> missing(Assessment assessment, Optional<Band> band) {
    var missing = new ArrayList<String>();
    if (assessment.isFeasible()) {
      return missing;
    }
    assessment.limits().stream()
        .filter(limit -> !limit.met())
        .forEach(limit -> missing.add("It breaks a limit: " + Reasons.broken(limit) + "."));
    assessment
        .broken()
        .forEach(finding -> missing.add("It breaks the fit rule " + finding.rule() + "."));
    assessment
        .whyNoFlight()
        .ifPresent(
            why -> missing.add("No flight can be computed: " + why.replaceFirst("\\.$", "") + "."));
    if (band.isEmpty()) {
      missing.add("There is no card for the first flights, since it does not fly.");
    }
    return missing;
  }

  /** Whether it is as the result told, and flies. */
  public boolean isSound() {
    return assessment.isFeasible() && !card.isEmpty();
  }
}
