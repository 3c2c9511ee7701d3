package pappus.answers.offer;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
import pappus.answers.build.BuildLines;
import pappus.document.Pages;
import pappus.document.Shell;
import pappus.document.Spoken;
import pappus.offer.Offer;
import pappus.scenario.Scenario;

/** An offer as a page for a customer. */
public final class OfferPage {
  private OfferPage() {}

  /**
   * One build as the customer sees it.
   *
   * @param title a letter, and what it is best at
   * @param names its main parts
   * @param plan what to plan with
   * @param figures mass and thrust
   * @param price what the customer pays
   * @param tax how much of it is tax; empty where none is told
   * @param notes what is built in, what is hard to believe, then what takes the place of what is out
   */
  public record Card(
      String title,
      String names,
      String plan,
      String figures,
      String price,
      String tax,
      List<String> notes) {
    public Card {
      notes = List.copyOf(notes);
    }
  }

  /**
   * The page.
   *
   * @param tool its version, told at the foot
   */
  public static String of(Scenario scenario, Offer offer, OfferReport report, String tool) {
    var cards = new ArrayList<Card>();
    for (var i = 0; i < offer.builds().size(); i++) {
      var build = offer.builds().get(i);
      cards.add(new Card(
          report.title(i),
          BuildLines.names(build.assessment()),
          Spoken.sentence(report.plan(build))
              + (report.isForRange() ? " over ground" : " in the air"),
          report.figures(build),
          report.price(build.totals().gross()),
          report.tax(build).orElse(""),
          Stream.of(
                  report.builtIn(build).stream(),
                  report.disbelief(build).stream(),
                  report.standIns(build).stream())
              .flatMap(notes -> notes)
              .toList()));
    }
    var content = new LinkedHashMap<String, Object>();
    content.put("shell", Shell.still("Offer of " + offer.shop().settings().shop(), "offer.css"));
    content.put("settings", offer.shop().settings());
    content.put("logo", offer.shop().logo().orElse(""));
    content.put("purpose", Objects.requireNonNullElse(scenario.note(), ""));
    content.put("date", offer.date().toString());
    content.put("validUntil", offer.validUntil().toString());
    content.put("cards", cards);
    content.put("parts", report.parts());
    content.put("report", report);
    content.put("tool", tool);
    return Pages.of("offer", content);
  }
}
