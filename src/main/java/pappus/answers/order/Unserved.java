package pappus.answers.order;

import com.fasterxml.jackson.annotation.JsonPropertyDescription;
import java.util.List;
import pappus.answers.whatif.RelaxationReport;
import pappus.files.json.JsonText;
import pappus.order.AskedGroup;
import pappus.whatif.relax.Relaxation;

/**
 * A group for which there is no build, whatever is bought.
 *
 * @param relaxation what stands in its way, for one learner alone
 */
public record Unserved(AskedGroup group, Relaxation relaxation) {
  /**
   * Groups that cannot be served, for a machine.
   *
   * @param groups each
   */
  public record Told(
      @JsonPropertyDescription("What the answer is, in a word.")
      String status,

      @JsonPropertyDescription("The tool that wrote it, with version and commit.")
      String tool,

      @JsonPropertyDescription("Groups that no build can serve.")
      List<Group> groups) {}

  /** One of them. */
  public record Group(
      @JsonPropertyDescription("What it is called.") String name,
      @JsonPropertyDescription("File of its scenario.") String scenario,

      @JsonPropertyDescription("The smallest changes that would serve it, in words.")
      List<String> changes) {}

  /** For a terminal. */
  public static String text(List<Unserved> groups, int width) {
    var text = new StringBuilder();
    for (var one : groups) {
      text.append("No build serves the group ").append(one.group.name()).append(":\n");
      text.append(report(one).text(width));
    }
    return text.toString();
  }

  /** For a machine. */
  public static String json(List<Unserved> groups, String tool) {
    return JsonText.of(new Told(
        "unserved",
        tool,
        groups.stream()
            .map(
                one -> new Group(one.group.name(), one.group.file(), report(one).changes()))
            .toList()));
  }

  private static RelaxationReport report(Unserved one) {
    return new RelaxationReport(one.group.alone().scenario(), one.relaxation);
  }
}
