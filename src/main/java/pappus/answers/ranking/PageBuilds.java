package pappus.answers.ranking;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import pappus.assessment.Assessment;
import pappus.assessment.flight.FlightEstimate;
import pappus.document.Numbered;
import pappus.part.Part;
import pappus.part.Role;
import pappus.ranking.Candidate;
import pappus.ranking.Picks;
import pappus.ranking.Ranking;

/**
 * Every build that a page tells of, by number and each once: the front first, what can be planned with for longest or farthest first, then
 * what else is picked, saves something or is ranked.
 */
final class PageBuilds {
  /** The largest that a browser reads. */
  private static final int BASE = 36;

  private final Map<String, Integer> numbers = new LinkedHashMap<>();
  private final List<Assessment> builds = new ArrayList<>();
  private final int onFront;
  private final double deviations;

  /**
   * @param front of it what the page shows, the longest or farthest to plan with first
   * @param found what its sliders find
   * @param deviations of mass kept below the cap
   */
  PageBuilds(Ranking ranking, List<Assessment> front, List<Assessment> found, double deviations) {
    this.deviations = deviations;
    front.forEach(this::add);
    this.onFront = builds.size();
    ranking.picks().picks().forEach(pick -> add(pick.build()));
    ranking.picks().givingUp().stream().map(Picks.GivenUp::build).forEach(this::add);
    ranking.candidates().stream().map(Candidate::assessment).forEach(this::add);
    found.forEach(this::add);
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

  /**
   * For the page's script: parts by number, sets of them by number, then the builds, a text a column: hundreds of them have
   * to be light, so their numbers are whole, to the base of 36.
   */
  Map<String, Object> content() {
    var parts = new Numbered();
    var sets = new Numbered();
    var rows = new ArrayList<List<Long>>();
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
          Math.round(10 * build.mass().grams()),
          Math.round(100 * flight.map(FlightEstimate::thrustToWeight).orElse(0.0)),
          Math.round(10 * flight.map(FlightEstimate::flownW).orElse(0.0)),
          build.isBeyondBelief() ? 1L : 0L,
          (long) sets.of(main),
          (long) sets.of(others)));
    }
    var content = new LinkedHashMap<String, Object>();
    content.put("onFront", onFront);
    content.put("parts", parts.all());
    content.put("sets", sets.all());
    content.put(
        "builds",
        IntStream.range(0, rows.isEmpty() ? 0 : rows.get(0).size())
            .mapToObj(column -> rows.stream()
                .map(row -> Long.toString(row.get(column), BASE))
                .collect(Collectors.joining(" ")))
            .toList());
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
