package pappus.order;

import com.fasterxml.jackson.annotation.JsonProperty;
import com.fasterxml.jackson.annotation.JsonPropertyDescription;
import java.util.List;
import org.jspecify.annotations.Nullable;
import pappus.part.Build;
import pappus.part.Part;
import pappus.part.RadioReceiver;
import pappus.part.Role;
import pappus.quantity.Require;

/** What builds are to have the same, or of at most so many kinds. */
public record Sameness(
    @JsonPropertyDescription("What is to be the same.") What what,

    @JsonPropertyDescription(
        "Among whom: order, all builds together, or group, within each group alone; absent: order.")
    @Nullable
    Among among,

    @JsonPropertyDescription("Names of the groups that it is asked of; absent: all.") @Nullable
    List<String> groups,

    @JsonPropertyDescription("So many kinds at most, 1 to 50; absent: 1.") @Nullable
    Integer kinds) {
  public Sameness {
    Require.present("what", what);
    groups = groups == null ? null : Require.notEmpty("groups", Require.list("groups", groups));
    if (kinds != null) {
      Require.inRange("kinds", kinds, 1, 50);
    }
  }

  /** What can be the same. */
  public enum What {
    @JsonProperty("propeller")
    PROPELLER,
    @JsonProperty("battery")
    BATTERY,
    /** The plug of the pack: what chargers and leads go with. */
    @JsonProperty("connector")
    CONNECTOR,
    @JsonProperty("cells")
    CELLS,
    @JsonProperty("motor")
    MOTOR,
    @JsonProperty("board")
    BOARD,
    /** What the radio on the ground has to speak. */
    @JsonProperty("radio")
    RADIO;

    /** The kind that a build has of it; empty text where it has none. */
    public String of(Build build) {
      return switch (this) {
        case PROPELLER -> id(build, Role.PROPELLER);
        case BATTERY -> id(build, Role.BATTERY);
        case MOTOR -> id(build, Role.MOTOR);
        case BOARD -> id(build, Role.BOARD);
        case CONNECTOR ->
          build.battery().map(pack -> pack.connector().toString()).orElse("");
        case CELLS ->
          build
              .battery()
              .map(pack -> pack.cellsInSeries() + " " + pack.chemistry())
              .orElse("");
        case RADIO -> build.radioReceiver().map(RadioReceiver::link).orElse("");
      };
    }

    private static String id(Build build, Role role) {
      return build.part(role).map(Part::id).orElse("");
    }
  }

  /** Who is compared. */
  public enum Among {
    @JsonProperty("order")
    ORDER,
    @JsonProperty("group")
    GROUP
  }

  /** Kinds at most. */
  public int most() {
    return kinds == null ? 1 : kinds;
  }

  /** Whether each group is asked by itself. */
  public boolean isWithinGroups() {
    return among == Among.GROUP;
  }

  /** Whether it is asked of a group. */
  public boolean isAskedOf(String group) {
    return groups == null || groups.contains(group);
  }
}
