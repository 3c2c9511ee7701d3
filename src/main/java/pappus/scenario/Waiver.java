package pappus.scenario;

import com.fasterxml.jackson.annotation.JsonPropertyDescription;
import java.util.List;
import pappus.quantity.Require;

/** A rule the builder sets aside for named parts, and why. The result shows it. */
public record Waiver(
    @JsonPropertyDescription("Id of the fit rule.") String rule,

    @JsonPropertyDescription(
        "Ids of the parts; the rule is set aside where one of them is built in.")
    List<String> parts,

    @JsonPropertyDescription("Why.") String reason) {
  public Waiver {
    Require.text("rule", rule);
    parts = Require.notEmpty("parts", Require.list("parts", parts));
    Require.text("reason", reason);
  }
}
