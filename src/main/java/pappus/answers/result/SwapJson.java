package pappus.answers.result;

import com.fasterxml.jackson.annotation.JsonPropertyDescription;
import java.util.List;
import java.util.Optional;
import pappus.change.Changed;
import pappus.change.Swap;
import pappus.part.Role;
import pappus.scenario.Scenario;

/** A swap and what it does. */
public record SwapJson(
    @JsonPropertyDescription("Whose part is swapped.") Role role,
    @JsonPropertyDescription("Id of the new one.") String part,

    @JsonPropertyDescription("What is gained, s, or m where the goal is range; below 0 for a loss.")
    double gained,

    @JsonPropertyDescription("Mass added, g; below 0 for less.")
    double gramsMore,

    @JsonPropertyDescription("Price added, cents; below 0 for less.")
    long centsMore,

    @JsonPropertyDescription("Other roles that change with it.")
    List<Difference> alongside,

    @JsonPropertyDescription("The build after it.") BriefJson build) {
  /** One role that differs. */
  public record Difference(
      @JsonPropertyDescription("Which.") Role role,

      @JsonPropertyDescription("Id of the part before; left out where there was none.")
      Optional<String> before,

      @JsonPropertyDescription("Id of the part after; left out where there is none.")
      Optional<String> after) {
    public static Difference of(Changed changed, NamedParts parts) {
      return new Difference(
          changed.role(), changed.before().map(parts::id), changed.after().map(parts::id));
    }
  }

  /**
   * What a swap does.
   *
   * @param parts gains those that are named by id
   */
  public static SwapJson of(Swap swap, Scenario scenario, NamedParts parts) {
    return new SwapJson(
        swap.role(),
        parts.id(swap.part()),
        swap.gained(),
        swap.gramsMore(),
        swap.centsMore(),
        swap.alongside().stream().map(changed -> Difference.of(changed, parts)).toList(),
        BriefJson.of(swap.assessment(), scenario, parts));
  }
}
