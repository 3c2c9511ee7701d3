package pappus.answers.offer;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Stream;
import pappus.answers.build.Figures;
import pappus.answers.drawing.Plan;
import pappus.answers.drawing.PlanDrawing;
import pappus.document.Pages;
import pappus.document.Shell;
import pappus.document.Spoken;
import pappus.offer.Offer;
import pappus.offer.OfferedBuild;
import pappus.quantity.Money;

/** An offer as a page for a customer. */
public final class OfferPage {
  /** How wide the largest of the small plans is, mm. */
  private static final double WIDE = 48;

  /** What a plan of that size can show. */
  private static final Set<String> LOOKS =
      Set.of("arm", "disc", "bell", "pack", "camera", "payload");

  private final Offer offer;
  private final OfferReport report;
  private final List<Plan> plans;

  /** How many times smaller all plans are drawn. */
  private final int smaller;

  private OfferPage(Offer offer, OfferReport report) {
    this.offer = offer;
    this.report = report;
    this.plans = offer.builds().stream()
        .map(build -> PlanDrawing.of(build.scenario(), build.delivered()))
        .toList();
    this.smaller =
        (int) Math.ceil(plans.stream().mapToDouble(Plan::width).max().orElse(WIDE) / WIDE);
  }

  /**
   * A number of a build, and how it stands to the first one's.
   *
   * @param against signed; empty for the first build, and where the two cannot be compared
   */
  public record Row(String what, String figure, String against) {}

  /**
   * One build as the customer sees it.
   *
   * @param title a letter, and what it is best at
   * @param names its main parts
   * @param price what the customer pays
   * @param tax how much of it is tax; empty where none is told
   * @param standing whether all of it is there; empty where that was not looked at
   * @param overBudget by how much it is too dear; empty where it is not
   * @param plan from above
   * @param rows flight, mass and price
   * @param notes thrust, what is built in, how far links reach, what is hard to believe, then what takes the place of what is out
   */
  public record Card(
      String title,
      String names,
      String price,
      String tax,
      String standing,
      String overBudget,
      Plan plan,
      List<Row> rows,
      List<String> notes) {
    public Card {
      rows = List.copyOf(rows);
      notes = List.copyOf(notes);
    }

    /** What of the plan is drawn small. */
    public List<Plan.Shape> shapes() {
      return plan.shapes().stream()
          .filter(shape -> LOOKS.contains(shape.look()))
          .toList();
    }
  }

  /**
   * The page.
   *
   * @param tool its version, told at the foot
   */
  public static String of(Offer offer, OfferReport report, String tool) {
    return new OfferPage(offer, report).page(tool);
  }

  private String page(String tool) {
    var cards = new ArrayList<Card>();
    for (var i = 0; i < offer.builds().size(); i++) {
      cards.add(card(i));
    }
    var content = new LinkedHashMap<String, Object>();
    content.put("shell", Shell.still(title(), "offer.css"));
    content.put("offer", offer);
    content.put(
        "purposes",
        offer.builds().stream()
            .map(build -> Objects.requireNonNullElse(build.scenario().note(), ""))
            .filter(note -> !note.isEmpty())
            .distinct()
            .toList());
    content.put("cards", cards);
    content.put("smaller", smaller);
    content.put("report", report);
    content.put("tool", tool);
    return Pages.of("offer", content);
  }

  /** What tells it from other offers among open pages. */
  private String title() {
    return "Offer"
        + offer.number().map(number -> " " + number).orElse("")
        + offer.customer().map(customer -> " for " + customer).orElse("")
        + ", "
        + offer.shop().settings().shop();
  }

  private Card card(int index) {
    var build = offer.builds().get(index);
    return new Card(
        report.title(index),
        report.names(build),
        report.price(build.deliveredTotals().gross()),
        report.tax(build).orElse(""),
        Spoken.sentence(report.standing(build) + " ").strip(),
        report.overBudget(build).orElse(""),
        plans.get(index),
        rows(build, offer.builds().get(0)),
        Stream.of(
                Stream.of(Spoken.sentence(report.thrust(build)) + "."),
                report.builtIn(build).stream(),
                report.links(build).stream(),
                report.disbelief(build).stream(),
                report.standIns(build).stream())
            .flatMap(notes -> notes)
            .toList());
  }

  /** Printed width of a small plan, and its height. */
  public static String printed(double millimetres, int smaller) {
    return Plan.plain(millimetres / smaller) + "mm";
  }

  private List<Row> rows(OfferedBuild build, OfferedBuild first) {
    var figures = new Figures(build.scenario().isForRange());
    var isFirst = build.equals(first);
    var areAlike = build.scenario().equals(first.scenario());
    var grams = build.delivered().mass().grams();
    var less = build.deliveredTotals().gross() - first.deliveredTotals().gross();
    return List.of(
        new Row(
            "Plan with",
            OfferReport.promised(build, build.deliveredPlanWith())
                + (build.scenario().isForRange() ? " over ground" : " in the air"),
            isFirst || !areAlike
                ? ""
                : figures.change(first.deliveredPlanWith(), build.deliveredPlanWith())),
        new Row(
            "Ready to fly",
            Spoken.number(grams, 0) + " g",
            isFirst
                ? ""
                : Spoken.change(
                    Math.rint(grams) - Math.rint(first.delivered().mass().grams()), 0)),
        new Row(
            "Price",
            report.price(build.deliveredTotals().gross()),
            isFirst ? "" : (less > 0 ? "+" : "") + Money.sum(less).toPlainString()));
  }
}
