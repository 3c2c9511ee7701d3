package pappus.answers.build;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import pappus.assessment.Assessment;
import pappus.assessment.flight.Course;
import pappus.assessment.flight.Stretch;
import pappus.document.Spoken;
import pappus.links.Link;
import pappus.links.Link.Way;
import pappus.part.Role;
import pappus.physics.link.LinkBudget;
import pappus.scenario.Scenario;

/** How far picture and control reach, in sentences. */
public final class LinkWords {
  /** Where power and range are told, since a figure is no permission. */
  public static final String LAW = "Permitted power, band and range are local law.";

  private static final double FAR_METRES = 1000;

  private LinkWords() {}

  /** How far each link reaches, what that rests on, and what is farther away than it is sure to reach. */
  public static List<String> of(Assessment assessment) {
    var reach = assessment.fitting().reach();
    var links = reach.links().toList();
    var said = new ArrayList<String>();
    if (links.isEmpty()) {
      unknown(assessment).ifPresent(said::add);
      return said;
    }
    said.add(briefly(assessment));
    said.addAll(wayOut(assessment));
    var assumed = new LinkedHashSet<String>();
    links.forEach(link -> assumed.addAll(link.assumed()));
    var height = assessment.fitting().scenario().flight().heightMetres();
    said.add("In line of sight%s%s. %s"
        .formatted(
            height == null ? "" : ", " + Spoken.number(height, 0) + " m up",
            assumed.isEmpty() ? "" : "; assumed: " + String.join(", ", assumed),
            LAW));
    return said;
  }

  /** How far each link reaches, in a sentence, and of which nothing is known; empty where no part is there to send or hear. */
  public static String briefly(Assessment assessment) {
    var said = assessment.fitting().reach().links().map(LinkWords::reaches).toList();
    var reaches = said.isEmpty() ? "" : Spoken.sentence(String.join("; ", said)) + ".";
    return (reaches + unknown(assessment).map(words -> " " + words).orElse("")).strip();
  }

  /** Of which links nothing is known, since a lump is in the place of what sends or hears them; empty where all are. */
  public static Optional<String> unknown(Assessment assessment) {
    var lumped = assessment.fitting().scenario().lumped();
    var ways = new ArrayList<String>();
    if (lumped.contains(Role.TRANSMITTER)) {
      ways.add("%s reaches is not known: a lump sends it".formatted(Way.VIDEO.label()));
    }
    if (lumped.contains(Role.RECEIVER)) {
      ways.add("%s reaches is not known: a lump hears it".formatted(Way.CONTROL.label()));
    }
    return ways.isEmpty()
        ? Optional.empty()
        : Optional.of("How far %s.".formatted(String.join(", and how far ", ways)));
  }

  /** How far the picture reaches, without more words; empty where nothing is known of it. */
  public static Optional<String> video(Assessment assessment) {
    return inShort(assessment, Way.VIDEO);
  }

  /** How far control reaches, without more words; empty where nothing is known of it. */
  public static Optional<String> control(Assessment assessment) {
    return inShort(assessment, Way.CONTROL);
  }

  private static Optional<String> inShort(Assessment assessment, Way way) {
    return assessment
        .fitting()
        .reach()
        .links()
        .filter(link -> link.way() == way)
        .map(link -> "%s to %s, likeliest %s"
            .formatted(atMost(link.lowMetres()), about(link.highMetres()), about(link.metres())))
        .findFirst();
  }

  private static String reaches(Link link) {
    return "%s reaches %s to %s, likeliest %s, at %s mW, and behind the body or in a null %s"
        .formatted(
            link.way().label(),
            atMost(link.lowMetres()),
            about(link.highMetres()),
            about(link.metres()),
            Spoken.number(link.milliwatts(), 0),
            about(link.shadowedMetres()));
  }

  /** Of legs that are flown home again: whether they lead farther away than the lesser link is sure to reach. */
  private static List<String> wayOut(Assessment assessment) {
    var reach = assessment.fitting().reach();
    var flight = assessment.fitting().scenario().flight();
    var out = assessment.flight().stream()
        .flatMap(flown -> flown.course().stream())
        .filter(course -> !flight.legsBack().isEmpty())
        .mapToDouble(LinkWords::out)
        .sum();
    return reach
        .lesser()
        .filter(link -> out > link.lowMetres())
        .map(link -> "The legs lead %s away at most, farther than %s is sure to reach."
            .formatted(about(out), link.way().label()))
        .stream()
        .toList();
  }

  private static double out(Course course) {
    return course
        .stay()
        .map(stay -> course.stretches().subList(0, stay.stretch()).stream()
            .mapToDouble(Stretch::metres)
            .sum())
        .orElse(0.0);
  }

  /** Whether an answer in a hurry has a word for them: where a reach is asked for, or the flight leads away. */
  public static boolean matter(Scenario scenario) {
    return scenario.reachMetres() != null || scenario.flight().coversGround();
  }

  /** A distance with two digits. */
  public static String about(double metres) {
    return distance(StrictMath.rint(metres / step(metres)) * step(metres));
  }

  /** A distance with two digits, rounded down, for what somebody relies on. */
  public static String atMost(double metres) {
    return distance(StrictMath.floor(metres / step(metres)) * step(metres));
  }

  private static double step(double metres) {
    return metres < 1 ? 1 : StrictMath.pow(10, StrictMath.floor(StrictMath.log10(metres)) - 1);
  }

  private static String distance(double metres) {
    return metres < FAR_METRES
        ? Spoken.number(metres, 0) + " m"
        : Spoken.number(metres / 1000, metres < 10 * FAR_METRES ? 1 : 0) + " km";
  }

  /** What the band holds, for tables. */
  public static String band() {
    return "Low and high are one standard deviation, %s dB, a factor of two in free space; behind the body or in a null %s dB more are lost (engineering estimates)."
        .formatted(Spoken.number(LinkBudget.DOUBT_DB, 0), Spoken.number(LinkBudget.SHADOW_DB, 0));
  }
}
