package pappus.compatibility;

import static org.assertj.core.api.Assertions.assertThat;
import static pappus.part.Parts.with;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import pappus.catalog.Catalog;
import pappus.part.AntennaConnector;
import pappus.part.Connector;
import pappus.part.Part;
import pappus.part.Parts;
import pappus.part.Sundry;

final class LonersTest {
  private static Map<Part, String> among(Part... more) {
    var parts = new ArrayList<Part>(List.of(more));
    parts.addAll(Parts.build().parts().values());
    parts.addAll(Parts.hardware());
    return new Loners(Catalog.of(parts)).among(List.of(more));
  }

  private static <P extends Record & Part> P other(P part, String field, Object value) {
    return with(with(part, "id", "other"), field, value);
  }

  @Test
  void nothingIsLonelyAmongPartsThatFit() {
    assertThat(among(Parts.build().parts().values().stream()
            .map(part -> (Part) with((Record) part, "id", part.id() + "-twin"))
            .toArray(Part[]::new)))
        .isEmpty();
    assertThat(among(Parts.sundry(Sundry.Purpose.BATTERY_PAD, 1))).isEmpty();
  }

  @Test
  void aMotorThatNoFrameIsDrilledFor() {
    var lonely = other(Parts.motor(), "boltCirclesMillimetres", List.of(33.0));

    assertThat(among(lonely))
        .containsExactly(
            Map.entry(
                lonely,
                "fits no frame of the catalogue, such as: Motor other needs a bolt circle of 33 mm, but frame frame offers 12 mm."));
  }

  @Test
  void aPackWithAPlugOfItsOwnUntilALeadJoinsIt() {
    var lonely = other(Parts.battery(), "connector", Connector.XT60);

    assertThat(among(lonely).get(lonely)).startsWith("fits no flight board of the catalogue");
    assertThat(among(lonely, Parts.lead(Connector.XT30, Connector.XT60))).isEmpty();
    assertThat(among(lonely, Parts.lead(Connector.XT30, Connector.XT30))).containsOnlyKeys(lonely);
  }

  @Test
  void aBoardWithBarePadsUntilAPigtailJoinsIt() {
    var lonely = with(with(Parts.board(), "id", "other"), "plug", null);

    assertThat(among(lonely)).containsOnlyKeys(lonely);
    assertThat(among(lonely, Parts.lead(null, Connector.XT30))).isEmpty();
  }

  @Test
  void anAntennaForNoPort() {
    var lonely = other(Parts.videoAntenna(), "connector", AntennaConnector.MMCX);

    assertThat(among(lonely))
        .containsExactly(Map.entry(
            lonely, "fits no port of any transmitter, receiver or board of the catalogue."));
    // Of nothing but antennas nothing is known.
    assertThat(new Loners(Catalog.of(List.of(lonely))).among(List.of(lonely))).isEmpty();
  }
}
