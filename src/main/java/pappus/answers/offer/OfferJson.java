package pappus.answers.offer;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.Map;
import pappus.answers.result.FlightJson;
import pappus.files.json.JsonText;
import pappus.offer.Offer;
import pappus.offer.ShopSettings;
import pappus.offer.StandIn;
import pappus.scenario.Goal;
import pappus.scenario.Scenario;

/** An offer with every digit. */
final class OfferJson {
  private final Scenario scenario;
  private final Offer offer;
  private final OfferReport report;
  private final boolean isForRange;

  /**
   * @param report the same in words
   */
  OfferJson(Scenario scenario, Offer offer, OfferReport report) {
    this.scenario = scenario;
    this.offer = offer;
    this.report = report;
    this.isForRange = scenario.goalOrEndurance() == Goal.RANGE;
  }

  /** With every digit. */
  String of(String version) {
    var document = new LinkedHashMap<String, Object>();
    document.put("status", "offered");
    document.put("tool", version);
    document.put("scenario", scenario.name());
    document.put("shop", offer.shop().settings().shop());
    document.put("date", offer.date().toString());
    document.put("validUntil", offer.validUntil().toString());
    document.put("currency", offer.shop().settings().currency());
    var builds = new ArrayList<Object>();
    for (var i = 0; i < offer.builds().size(); i++) {
      builds.add(build(i));
    }
    document.put("builds", builds);
    document.put("pricesIncludeTax", offer.shop().settings().pricesIncludeTax());
    document.put(
        "added", offer.shop().settings().added().stream().map(OfferJson::added).toList());
    document.put("notIncluded", offer.shop().settings().leftOut());
    document.put("cautions", report.cautions());
    return JsonText.of(document);
  }

  private static Map<String, Object> added(ShopSettings.Extra extra) {
    var content = new LinkedHashMap<String, Object>();
    content.put("text", extra.text());
    content.put("cents", extra.price().cents());
    return content;
  }

  private Map<String, Object> build(int index) {
    var build = offer.builds().get(index);
    var content = new LinkedHashMap<String, Object>();
    content.put("letter", report.letter(index));
    content.put("rank", build.rank());
    content.put("labels", build.labels());
    content.put("build", build.assessment().build().toString());
    content.put(isForRange ? "planWithMetres" : "planWithSeconds", build.planWith());
    content.put("grams", build.assessment().mass().grams());
    content.put("netCents", build.totals().net());
    content.put("taxCents", build.totals().tax());
    content.put("grossCents", build.totals().gross());
    var lines = new ArrayList<Object>();
    for (var line : build.lines()) {
      var one = new LinkedHashMap<String, Object>();
      one.put("part", line.part().id());
      one.put("name", line.part().name());
      one.put("pieces", line.pieces());
      one.put("unit", OfferReport.unit(line));
      one.put("units", line.units());
      one.put("spareUnits", line.spareUnits());
      one.put("cents", line.cents());
      one.put("standing", FlightJson.key(line.standing()));
      lines.add(one);
    }
    content.put("lines", lines);
    content.put("standIns", build.standIns().stream().map(this::standInJson).toList());
    return content;
  }

  private Map<String, Object> standInJson(StandIn one) {
    var content = new LinkedHashMap<String, Object>();
    one.role().ifPresent(role -> content.put("role", role.key()));
    content.put("out", one.line().part().id());
    content.put("inStock", one.line().inStock());
    one.swap().ifPresent(swap -> {
      content.put("in", swap.part().id());
      content.put("build", swap.assessment().build().toString());
      content.put(isForRange ? "planWithMetres" : "planWithSeconds", one.planWith());
      content.put("gramsMore", swap.gramsMore());
      content.put("grossCents", one.totals().gross());
    });
    content.put("text", report.standIn(one));
    return content;
  }
}
