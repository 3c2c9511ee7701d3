package pappus.part;

import com.fasterxml.jackson.annotation.JsonPropertyDescription;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import pappus.quantity.Money;
import pappus.quantity.Require;

/**
 * Parts already wired that nobody lists one by one: they weigh, draw and cost in one, and fill their roles. One of a
 * catalogue is named by its name.
 *
 * <p>Why: src/site/markdown/decisions.md#a-lump-is-no-part
 */
public record Lump(
    @JsonPropertyDescription("What it is.") String name,

    @JsonPropertyDescription("Its mass, g, 0.01 to 1000.") double grams,

    @JsonPropertyDescription("What all of it draws from the pack, W, 0 to 100.")
    double watts,

    @JsonPropertyDescription("What it costs; absent: nothing, it is there.") @Nullable
    Money price,

    @JsonPropertyDescription(
        "Roles it fills, none of frame, motor, propeller and battery; with the board goes its battery lead.")
    List<Role> fills) {
  /** Name of its list, its schema and, with .json, its file in a catalogue folder. */
  public static final String LIST = "lumps";

  public static final String FILE_NAME = LIST + ".json";

  public Lump {
    Require.name("name", name);
    Require.inRange("grams", grams, Mass.LEAST_GRAMS, 1000, "Maybe it is not in grams.");
    Require.inRange("watts", watts, 0, 100, "Maybe it was written in milliwatts.");
    fills = Require.notEmpty("fills", Require.list("fills", fills));
    for (var role : fills) {
      if (Role.MAIN.contains(role)) {
        Require.refuse(
            "fills must leave out what decides how it flies, but has %s.".formatted(role.key()));
      }
    }
    if (Set.copyOf(fills).size() < fills.size()) {
      Require.refuse("fills must name each role once, but names one twice.");
    }
  }

  /** Every role that no part is taken for: a board that is wired has its lead. */
  public Set<Role> roles() {
    var roles = EnumSet.copyOf(fills);
    if (roles.contains(Role.BOARD)) {
      roles.add(Role.LEAD);
    }
    return roles;
  }
}
