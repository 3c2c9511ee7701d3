package pappus.answers.result;

import com.fasterxml.jackson.annotation.JsonPropertyDescription;
import java.util.List;
import java.util.Optional;
import pappus.assessment.Finding;
import pappus.quantity.Sentence;
import pappus.scenario.Waiver;

/** What a fit rule says of a build. */
record FindingJson(
    @JsonPropertyDescription("Id of the rule.") String rule,
    @JsonPropertyDescription("Fits, clashes or unknown.") String verdict,

    @JsonPropertyDescription("What to know all the same, where it fits.")
    Optional<List<String>> notes,

    @JsonPropertyDescription("Why it clashes.") Optional<String> reason,

    @JsonPropertyDescription("What has to be looked up, where it is unknown.")
    Optional<String> missing,

    @JsonPropertyDescription("Why the scenario sets a clash aside.")
    Optional<String> setAside,

    @JsonPropertyDescription("Whether it keeps the build from being a candidate.")
    boolean breaks) {
  static FindingJson of(Finding finding) {
    return finding
        .verdict()
        .match(
            fits -> of(
                finding,
                "fits",
                Optional.of(fits.notes().stream().map(Sentence::text).toList()),
                Optional.empty(),
                Optional.empty()),
            clash -> of(
                finding,
                "clashes",
                Optional.empty(),
                Optional.of(clash.reason().text()),
                Optional.empty()),
            unknown -> of(
                finding,
                "unknown",
                Optional.empty(),
                Optional.empty(),
                Optional.of(unknown.missingFact().text())));
  }

  private static FindingJson of(
      Finding finding,
      String verdict,
      Optional<List<String>> notes,
      Optional<String> reason,
      Optional<String> missing) {
    return new FindingJson(
        finding.rule(),
        verdict,
        notes,
        reason,
        missing,
        finding.waiver().map(Waiver::reason),
        finding.breaks());
  }
}
