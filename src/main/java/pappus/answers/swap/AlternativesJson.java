package pappus.answers.swap;

import com.fasterxml.jackson.annotation.JsonPropertyDescription;
import com.fasterxml.jackson.annotation.JsonUnwrapped;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import pappus.answers.result.BriefJson;
import pappus.answers.result.FlightJson;
import pappus.answers.result.NamedParts;
import pappus.answers.result.SaidJson;
import pappus.answers.result.SwapJson;
import pappus.change.Alternative;
import pappus.change.HardwareChange;
import pappus.part.Role;
import pappus.scenario.Scenario;

/** What could take the place of a part, with every digit. */
public record AlternativesJson(
    @JsonPropertyDescription("How far it can be trusted.") SaidJson standing,

    @JsonPropertyDescription("Whose part is to be replaced.")
    Role role,

    @JsonPropertyDescription("The quad as it is.") BriefJson quad,

    @JsonPropertyDescription("Other parts, what asks least first.")
    List<One> alternatives) {
  /** Another part. */
  record One(
      @JsonUnwrapped SwapJson swap,
      @JsonPropertyDescription("How much it asks.") String asks,

      @JsonPropertyDescription("Whether as many can be had as are needed.")
      boolean inStock,

      @JsonPropertyDescription("What is to buy for it, cents.")
      long centsToBuy,

      @JsonPropertyDescription(
          "What it gains for one unit of money, s, or m where the goal is range.")
      Optional<Double> gainedPerUnitOfMoney,

      @JsonPropertyDescription("How far the pack has to move, mm forward.")
      Optional<Double> packForwardMillimetres,

      @JsonPropertyDescription("Small hardware that changes with it.")
      List<Hardware> hardware,

      @JsonPropertyDescription("What changes, in words.") String text) {
    static One of(Alternative one, Scenario scenario, NamedParts parts) {
      return new One(
          SwapJson.of(one.swap(), scenario, parts),
          FlightJson.key(one.grade()),
          one.inStock(),
          one.cents(),
          some(one.gainedForMoney()),
          some(one.packMillimetres()),
          one.hardware().stream().map(change -> Hardware.of(change, parts)).toList(),
          AlternativeWords.what(one));
    }

    private static Optional<Double> some(OptionalDouble value) {
      return value.isPresent() ? Optional.of(value.getAsDouble()) : Optional.empty();
    }
  }

  /** A change of small hardware. */
  record Hardware(
      @JsonPropertyDescription("What it is.") String what,
      @JsonPropertyDescription("Id of the part before.") Optional<String> before,
      @JsonPropertyDescription("Id of the part after.") Optional<String> after) {
    static Hardware of(HardwareChange change, NamedParts parts) {
      return new Hardware(
          change.label(), change.before().map(parts::id), change.after().map(parts::id));
    }
  }
}
