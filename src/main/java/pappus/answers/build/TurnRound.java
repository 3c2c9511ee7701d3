package pappus.answers.build;

import java.util.Optional;
import pappus.assessment.Assessment;
import pappus.assessment.flight.FlightEstimate;
import pappus.links.Link;
import pappus.scenario.Flight.Style;

/**
 * Where a flight out and back turns round: the lesser of half of what the pack is planned with, and of how far both links
 * reach where they are one standard deviation worse than likely.
 *
 * @param metres from the pilot
 * @param packMetres by the pack alone
 * @param link that ends before the pack does; empty where none does
 * @param areLinksKnown whether something is known of both
 */
public record TurnRound(
    double metres, double packMetres, Optional<Link> link, boolean areLinksKnown) {
  /**
   * Of a build; empty where it does not fly out and back.
   *
   * @param planWith share of the kilometres to plan with, 0 to 1
   */
  public static Optional<TurnRound> of(Assessment assessment, double planWith) {
    return assessment
        .flight()
        .flatMap(FlightEstimate::course)
        .filter(course -> course.style() == Style.CRUISE && course.rangeMetres() > 0)
        .map(course -> {
          var pack = planWith * course.rangeMetres() / 2;
          var link =
              assessment.fitting().reach().lesser().filter(lesser -> lesser.lowMetres() < pack);
          return new TurnRound(
              link.map(Link::lowMetres).orElse(pack),
              pack,
              link,
              LinkWords.unknown(assessment).isEmpty());
        });
  }

  /** What ends first, a word for machines. */
  public String by() {
    return link.map(found -> found.way().label()).orElse("pack");
  }

  /** Where, and what ends first. */
  public String inWords() {
    return link.map(found ->
            "turn round after %s, the low end of what %s reaches; the pack alone would go %s km out"
                .formatted(
                    LinkWords.atMost(metres), found.way().label(), Journey.atMost(packMetres)))
        .orElseGet(() -> "turn round after %s km, half of those to plan with, %s"
            .formatted(
                Journey.atMost(metres),
                areLinksKnown
                    ? "which is before a link ends"
                    : "if the link of which nothing is known reaches as far"));
  }
}
