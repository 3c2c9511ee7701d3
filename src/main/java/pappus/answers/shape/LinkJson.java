package pappus.answers.shape;

import com.fasterxml.jackson.annotation.JsonPropertyDescription;
import java.util.List;
import pappus.assessment.Assessment;
import pappus.links.Link;

/** How far one radio link reaches, in line of sight. */
record LinkJson(
    @JsonPropertyDescription("video, to the pilot, or control, from the pilot.")
    String link,

    @JsonPropertyDescription("Power sent, mW.") double milliwatts,

    @JsonPropertyDescription("What may be lost on the way by the likeliest figures, dB.")
    double lossDecibels,

    @JsonPropertyDescription("Lost between the polarisations of both antennas, dB.")
    double mismatchDecibels,

    @JsonPropertyDescription("By the likeliest figures, m.") double reachMetres,

    @JsonPropertyDescription("Where all is one standard deviation worse, m.")
    double lowMetres,

    @JsonPropertyDescription("Where all is one standard deviation better, m.")
    double highMetres,

    @JsonPropertyDescription("Behind the pilot's body or where an antenna hears nothing, m.")
    double shadowedMetres,

    @JsonPropertyDescription("What of it nobody said.") List<String> assumed) {
  static LinkJson of(Link link) {
    return new LinkJson(
        link.way().label(),
        link.milliwatts(),
        link.budget().hundredths() / 100.0,
        link.budget().mismatchDb(),
        link.metres(),
        link.lowMetres(),
        link.highMetres(),
        link.shadowedMetres(),
        link.assumed());
  }

  static List<LinkJson> of(Assessment assessment) {
    return assessment.fitting().reach().links().map(LinkJson::of).toList();
  }
}
