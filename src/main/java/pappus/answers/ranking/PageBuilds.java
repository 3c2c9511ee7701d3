package pappus.answers.ranking;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import pappus.assessment.Assessment;
import pappus.assessment.flight.FlightEstimate;
import pappus.document.Chart;
import pappus.document.Numbered;
import pappus.part.Part;
import pappus.part.Role;
import pappus.ranking.Candidate;
import pappus.ranking.Picks;
import pappus.ranking.Ranking;

/**
 * Every build that a page tells of, by number and each once: the front first, longest or farthest flight first, then
 * what else is picked, saves something or is ranked.
 */
final class PageBuilds {
  private final Map<String, Integer> numbers = new LinkedHashMap<>();
  private final List<Assessment> builds = new ArrayList<>();
  private final int onFront;
  private final double deviations;

  /**
   * @param front of it what the page shows, the longest or farthest flight first
   * @param deviations of mass kept below the cap
   */
  PageBuilds(Ranking ranking, List<Assessment> front, double deviations) {
    this.deviations = deviations;
    front.forEach(this::add);
    this.onFront = builds.size();
    ranking.picks().picks().forEach(pick -> add(pick.build()));
    ranking.picks().givingUp().stream().map(Picks.GivenUp::build).forEach(this::add);
    ranking.candidates().stream().map(Candidate::assessment).forEach(this::add);
  }

  private void add(Assessment build) {
    if (numbers.putIfAbsent(build.build().toString(), builds.size()) == null) {
      builds.add(build);
    }
  }

  /** The number of a build that is told of. */
  int number(Assessment build) {
    var number = numbers.get(build.build().toString());
    if (number == null) {
      throw new IllegalArgumentException("nothing is told of " + build.build());
    }
    return number;
  }

  /** For the page's script: parts by number, sets of them by number, then the builds. */
  Map<String, Object> content() {
    var parts = new Numbered();
    var sets = new Numbered();
    var rows = new ArrayList<Object>();
    for (var build : builds) {
      var main = new ArrayList<Object>();
      var others = new ArrayList<Object>();
      build.build().parts().forEach((role, part) -> {
        var number = parts.of(cells(role, part, build.build().count(role)));
        (Role.MAIN.contains(role) ? main : others).add(number);
      });
      var flight = build.flight();
      rows.add(List.of(
          build.mass().neededMilligrams(deviations),
          build.cost().cents(),
          Math.round(1000 * Assessment.figure(build.flown())),
          build.planned(),
          Math.round(10 * build.mass().grams()) / 10.0,
          Chart.rounded(
              Math.round(100 * flight.map(FlightEstimate::thrustToWeight).orElse(0.0)) / 100.0),
          Math.round(10 * flight.map(FlightEstimate::flownW).orElse(0.0)) / 10.0,
          build.isBeyondBelief() ? 1 : 0,
          sets.of(main),
          sets.of(others)));
    }
    var content = new LinkedHashMap<String, Object>();
    content.put("onFront", onFront);
    content.put("parts", parts.all());
    content.put("sets", sets.all());
    content.put("builds", rows);
    return content;
  }

  private static List<Object> cells(Role role, Part part, int count) {
    return List.of(role.label(), part.name(), part.id(), count);
  }

  /** All builds. */
  Stream<Assessment> all() {
    return builds.stream();
  }
}
