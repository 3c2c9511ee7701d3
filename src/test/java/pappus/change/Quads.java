package pappus.change;

import java.util.List;
import java.util.stream.Stream;
import pappus.assessment.Assessment;
import pappus.catalog.BuildText;
import pappus.catalog.Catalog;
import pappus.search.Question;
import pappus.shop.SmallShop;

/** A workshop with a few parts of every kind, and quads that are put together from them. */
final class Quads {
  /** Some go together with others only, some with none. */
  static final Catalog WORKSHOP = SmallShop.catalog(Stream.of(
          SmallShop.ONE_BUILD,
          SmallShop.MORE,
          List.of(
              "culvert-8",
              "sluice-13",
              "sluice-10",
              "rushlight-50-wire",
              "glowmoss-100",
              "hernlook-14",
              "lumfret-eye-14",
              "osier-t1",
              "thrennel-leaf",
              "tendril-24-u",
              "withy-24-thread",
              "stipule-u",
              "isthmus-30-to-ph",
              "tether-30-20",
              "tether-30-22",
              "cistern-220-25",
              "cistern-330-25",
              "neap-2s-350",
              "neap-2s-450",
              "tidewell-3s-3400"))
      .flatMap(List::stream)
      .toList());

  static final Question QUESTION = SmallShop.question(WORKSHOP, "");

  /** With receiver and transmitter on its board. */
  static final Assessment WHOLE = assess(String.join(",", SmallShop.ONE_BUILD));

  /** With a board of bare pads, and a part of its own for every role. */
  static final Assessment SINGLE =
      assess("cottongrass-4,spikerush-1303-3400,ligule-4x1.9x2,tidewell-2s-3500,sluice-10,"
          + "glowmoss-100,newteye-14-feather,thrennel-leaf,stipule-u,tendril-24-u,"
          + "dewpond-220-16,tether-30-20");

  private Quads() {}

  static Assessment assess(String build) {
    return assess(build, QUESTION);
  }

  static Assessment assess(String build, Question question) {
    return question.assessor().assess(BuildText.parse(build, WORKSHOP));
  }
}
