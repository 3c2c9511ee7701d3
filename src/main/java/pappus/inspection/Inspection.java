package pappus.inspection;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Predicate;
import pappus.catalog.ReadCatalog;
import pappus.compatibility.Loners;
import pappus.evidence.Evidence;
import pappus.evidence.prior.Plausibility;
import pappus.files.Problem;
import pappus.part.Part;

/** What is doubtful in data that can be read. */
public final class Inspection {
  private static final int MOST_NAMED = 3;

  private Inspection() {}

  /**
   * Every warning on parts that stand in files asked about, by file and line. The other parts are
   * there to fit them to, and as members of their families.
   *
   * @param isAskedAbout whether a file is, by its name
   */
  public static List<Problem> of(ReadCatalog read, Predicate<String> isAskedAbout) {
    var places = read.places();
    var asked = read.catalog().parts().stream()
        .filter(part -> isAskedAbout.test(place(places, part).file()))
        .toList();
    var warnings = new ArrayList<Problem>();
    for (var part : asked) {
      for (var remark : Plausibility.remarks(part)) {
        warnings.add(warning(places, part, part.id() + ": " + remark));
      }
    }
    addMissing(asked, places, warnings);
    new Loners(read.catalog())
        .among(asked)
        .forEach((part, why) -> warnings.add(warning(places, part, part.id() + ": " + why)));
    Twins.in(read.catalog()).forEach((part, other) -> {
      if (isAskedAbout.test(place(places, part).file())) {
        warnings.add(warning(
            places,
            part,
            "%s: has the maker and name of %s at %s:%s: maybe it is one part entered twice."
                .formatted(
                    part.id(),
                    other.id(),
                    place(places, other).file(),
                    place(places, other).line())));
      }
    });
    MotorFamilies.disagreeing(read.catalog()).forEach((motor, why) -> {
      if (isAskedAbout.test(place(places, motor).file())) {
        warnings.add(warning(places, motor, motor.id() + ": " + why));
      }
    });
    addDoubtful(read, asked, warnings);
    read.strangers().stream()
        .filter(stranger -> isAskedAbout.test(stranger.file()))
        .forEach(warnings::add);
    return warnings.stream().sorted().toList();
  }

  /**
   * What is worth measuring of parts that stand in files asked about, what costs most first.
   *
   * @param isAskedAbout whether a file is, by its name
   */
  public static List<MeasureFirst> measureFirst(ReadCatalog read, Predicate<String> isAskedAbout) {
    return MeasureFirst.of(
        read.catalog().parts().stream()
            .filter(part -> isAskedAbout.test(place(read.places(), part).file()))
            .toList(),
        Evidence.of(read.catalog().parts()));
  }

  /** Makers and records that the catalogue itself makes doubtful. */
  private static void addDoubtful(ReadCatalog read, List<Part> asked, List<Problem> warnings) {
    var places = read.places();
    var evidence = Evidence.of(read.catalog().parts());
    for (var leaning : evidence.leaning()) {
      asked.stream()
          .filter(part -> part.kind() == leaning.kind() && part.maker().equals(leaning.maker()))
          .findFirst()
          .ifPresent(part -> warnings.add(warning(
              places,
              part,
              "%s and others of %s: %s averages %s %% %s what such parts have, over %s records: each is corrected for that."
                  .formatted(
                      part.id(),
                      leaning.maker(),
                      leaning.figure(),
                      percent(leaning.by()),
                      leaning.by() > 0 ? "above" : "below",
                      leaning.records()))));
    }
    for (var part : asked) {
      if (evidence.isDerived(part)) {
        warnings.add(
            warning(
                places,
                part,
                part.id()
                    + ": its figures are called measured, but lie just as far from what is usual as those of another part of its maker: they count as worked out from it."));
      }
      for (var figure : evidence.stated(part)) {
        if (figure.blunder() > 0.5) {
          var away = StrictMath.log(figure.stated().orElse(figure.prior()) / figure.prior());
          warnings.add(warning(
              places,
              part,
              "%s: %s lies %s %% %s what such parts have, further than its doubt and the other records explain: maybe a slip."
                  .formatted(
                      part.id(), figure.name(), percent(away), away > 0 ? "above" : "below")));
        }
      }
    }
  }

  private static long percent(double ln) {
    return Math.round(100 * Math.abs(StrictMath.exp(ln) - 1));
  }

  /** One line for a fact that a file lacks, however many parts lack it. */
  private static void addMissing(
      List<Part> parts, Map<String, ReadCatalog.Place> places, List<Problem> warnings) {
    var byFile = new TreeMap<String, Map<MissingFact, List<Part>>>();
    for (var part : parts) {
      for (var fact : MissingFact.of(part)) {
        byFile
            .computeIfAbsent(place(places, part).file(), file -> new LinkedHashMap<>())
            .computeIfAbsent(fact, key -> new ArrayList<>())
            .add(part);
      }
    }
    byFile
        .values()
        .forEach(byFact -> byFact.forEach((fact, lacking) -> {
          var ids = lacking.stream().map(Part::id).limit(MOST_NAMED).toList();
          var more = lacking.size() - ids.size();
          warnings.add(warning(
              places,
              lacking.get(0),
              "%s%s: %s: %s"
                  .formatted(
                      String.join(", ", ids),
                      more == 0 ? "" : " and " + more + " more",
                      fact.missing(),
                      fact.cost())));
        }));
  }

  private static Problem warning(
      Map<String, ReadCatalog.Place> places, Part part, String sentence) {
    var place = place(places, part);
    return new Problem(place.file(), place.line(), sentence);
  }

  private static ReadCatalog.Place place(Map<String, ReadCatalog.Place> places, Part part) {
    var place = places.get(part.id());
    if (place == null) {
      throw new IllegalStateException("Every part was read from somewhere: " + part.id());
    }
    return place;
  }
}
